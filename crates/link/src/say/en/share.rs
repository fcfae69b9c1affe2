//! An order as text, in English (US).

use crate::say::share::Lines;
use hangtrue_core::Dimension;

pub(crate) static LINES: Lines = Lines {
    short: |dimension| match dimension {
        Dimension::Width => "W",
        Dimension::Height => "H",
        Dimension::Header => "header",
        Dimension::Bow => "bow",
    },
    once_built: " ONCE THE FRAME IS BUILT; found ",
    measure_again: ". Re-measure then.",
    heading: "Rear door order",
    colon: ": ",
    about: ["Vehicle", "Contact", "Note"],
    date: "Date",
    not_read: "not read",
    built: |ordered, found| [ordered, " after the frame is built (as found: ", found, ")"].concat(),
    build: "Build the frame first, then re-measure:",
    build_by: ["header down by", "left post out by", "right post out by"],
    verdict: [
        "Nothing stands against this order.",
        "To recheck before cutting:",
        "This cannot be:",
    ],
    readings: "Readings, as typed:",
    replaced: " (replaced by a later reading)",
};
