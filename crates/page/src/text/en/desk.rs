//! The counter desk, in English (US).

mod ask;

use crate::text::desk::{Desk, Phone};

/// The English desk.
pub static DESK: Desk = Desk {
    heading: "Counter desk",
    measure: "Measure an opening",
    phone: Phone {
        heading: "On the telephone",
        unit: "Said in",
        inches: "inches",
        millimetres: "millimeters",
        frame: "Of the frame",
        as_it_is: "as it is",
        as_it_will_be: "after it is built",
        again: "(read again)",
        unread: "not a reading yet",
        next: "Next field",
        fresh: "New call",
        ask: "Ask the caller",
        stands: "It is as said",
        cannot: "Not now",
        it_is: |text| ["The caller says ", text].concat(),
        found: "What the numbers say",
        nothing_yet: "Type the width as it is said; Enter goes to the next number.",
        so_far: "Nothing against it so far",
        after_building: "Once the frame is built, the order says:",
    },
    ask: ask::say,
};
