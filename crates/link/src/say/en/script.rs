//! The script for the telephone, in English (US).

use crate::say::script::Script;

pub(crate) static SCRIPT: Script = Script {
    inches: "A rear door order, in inches. I say the numbers digit by digit.",
    millimetres: "A rear door order, in millimeters. I say the numbers digit by digit.",
    build: "The numbers are for the frame after it is built.",
    names: ["Post-to-post width", "Sill-to-header height", "Header depth", "Roof-bow depth"],
    colon: ": ",
    check: "The six check characters",
    and: "and",
    parts: [
        ("sixteenth", "sixteenths"),
        ("eighth", "eighths"),
        ("quarter", "quarters"),
        ("half", "halves"),
    ],
    counts: [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve", "thirteen", "fourteen", "fifteen",
    ],
    figures: ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"],
};
