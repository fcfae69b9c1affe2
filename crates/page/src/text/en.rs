//! English (US).

mod dealer;
pub(super) mod desk;
mod handover;
pub(super) mod hang;
mod kept;

use super::{
    Buttons, Check, DimensionText, FieldText, Frame, Judge, Later, Opened, Proof, Send, Start, Text,
};
use hangtrue_core::short::{digits, fill};
use hangtrue_core::{Dimension, Spot};

/// The English page.
pub(super) static TEXT: Text = Text {
    title: "Hangtrue: measure the rear opening for a roll-up door",
    language: "Language",
    colon: ": ",
    quotes: ["“", "”"],
    progress: |at, of| fill("Step {} of {}", &[&digits(at as u64), &digits(of as u64)]),
    button: Buttons {
        next: "Continue",
        next_all_the_same: "It is right, continue",
        back: "Back",
        change: "Change",
        read_again: "Read again",
        skip: "Leave it out",
        use_text: |text| ["Use ", text].concat(),
        letters: "abc",
        numbers: "123",
        share: "Share",
        print: "Print",
        restart: "Measure another opening",
    },
    start: Start {
        heading: "Measure an opening for a roll-up door",
        lede: "Four dimensions decide what the door is cut to. You take them one at a time; \
               each is checked against the others before the order leaves your hands.",
        bring_heading: "Bring",
        bring: [
            "a steel tape with a sound hook, and a second person to read it with you",
            "a ladder that reaches the header, on firm ground",
            "chalk to mark where you read, and a light",
            "a straight bar to lay across a worn sill",
        ],
        caution_heading: "Before you climb",
        cautions: [
            "Park on level ground, away from traffic. Set the brake and chock the wheels.",
            "A tailgate or lift that is not locked can fall. Do not stand on one to measure.",
            "Stand the ladder on firm ground with its feet level, and keep three points of contact.",
            "Never measure under a door that is not propped or locked open.",
            "A wound spring can kill. It is for trained hands only: leave it wound and untouched.",
        ],
        unit: "What does your tape show?",
        inches: "Inches and sixteenths",
        millimetres: "Millimeters",
        privacy: "Nothing you type leaves this device until you share the link yourself.",
        begin: "Start measuring",
        go_on: "Go on measuring",
        desk: "At the counter? Check orders that are phoned in or sent",
        open_heading: "Open an order",
        open_hint: "A file that was saved here, or any text with an order's link in it.",
        choose_file: "Choose a file",
    },
    frame: Frame {
        heading: "Can the frame take a door?",
        lede: "The vertical tracks are fastened to the posts, the upper track and the spring to \
               the header.",
        old_door: "Is the old door still in?",
        old_door_caution: "Measure the steel, not the old tracks or seals. Leave the old spring \
                           and its cables alone: they are under tension even when the door is \
                           open.",
        prepared: "Is the frame as it will stay?",
        yes: "Yes",
        no: "No",
        prepared_yes: "Yes: built to its minimum, or needs no building",
        prepared_no: "Not yet: tell me what has to be built",
        common_practice: "Common practice",
        minimums: |source, post, header| {
            fill(
                "{}: posts at least {} wide, and a header at least {} deep. A \
                 narrower post is built out; a shallower header is built down with a channel or \
                 formed sheet.",
                &[source, post, header],
            )
        },
        weld_caution: "Cutting and welding on a truck body is for licensed practice; local codes \
                       and the body maker's rules come first.",
        build_heading: "To be built",
    },
    dimension,
    place,
    field: FieldText {
        hint_inch: "Such as 96 1/4, 8' 0 1/4\" or ninety-six and a quarter",
        hint_millimetre: "Such as 2445, 2.445 m or 96 1/4 in",
        problems: "Before you go on",
        questions: "Look at this again",
        keys: "Fraction keys",
        tape: "Compare with your tape",
    },
    coming: "One moment: the rest of the page is on its way.",
    missing: "The rest of the page has not come yet. It is tried again by itself, and sooner \
              with a network. What you have typed stays as long as this page is open.",
    order: "Order for a roll-up door",
};

/// See [`Later`].
pub(super) static LATER: Later = Later {
    proof: Proof {
        heading: "One more reading",
        again_heading: "Read the same spot again",
        again: "Go to your chalk mark and read it without looking at the first number. Better \
                still, let another person read it.",
        hidden: "First reading hidden until this one is in",
        empty: "Enter the reading, or leave it out.",
    },
    check: Check {
        heading: "Check the order",
        numbers: "The order will say",
        tightest: |count, place, reading| match count {
            1 => format!("the one reading, {place}: {reading}"),
            _ => format!("the tightest of {count} readings, {place}: {reading}"),
        },
        as_found: |found| format!("as found {found}"),
        not_read: "not read",
        rounding: |step| format!("Rounded to {step}, to the side on which the door still fits."),
        remeasure: "Re-measure after the frame is built",
        readings: "What you read",
        struck: "read again",
        findings: "What was found",
        clear: "Nothing stands against this order.",
        confirm: "I have looked at it again, and it is right",
        measure: "Measure now",
        confirmed: "confirmed by the writer",
        send: "Make the order",
        verdict: ["Clear", "Recheck", "Stop"],
    },
    judge: Judge {
        fits: "agrees",
        doubtful: "doubtful",
        missing: "missing",
        settles: "settles it",
        next: "One more reading is worth its minute",
        take: "Take it now",
        unseen: "What these readings cannot show",
        never: "No reading shows the wrong truck, a number copied from the first, or the same \
                wrong edge read everywhere.",
        working: "Show the working",
        working_lede: "One least-squares network over all readings, in millimeters. w is the \
                       residual over its standard deviation; the least detectable error shows \
                       in 80 of 100 cases.",
        columns: ["Reading", "Read", "Adjusted", "±", "w", "Least detectable"],
    },
    dealer: dealer::DEALER,
    kept: kept::KEPT,
    send: Send {
        heading: "The order",
        lede: "The link holds the whole order. Send it to your dealer: it opens as the same \
               numbers, with every reading behind them.",
        vehicle: "Truck or trailer",
        note: "Note",
        contact: "How the dealer reaches you",
        optional: "may be left empty",
        room: |count, most| format!("{count} of {most} characters"),
        full: "No more fits. If the end is missing, shorten it.",
        link: "Link to this order",
        lasting: "Keep the link: it is the lasting record. This browser may forget what you typed.",
        copied: "Copied.",
        not_yet: "There is no link yet: something still stands against the order.",
    },
    opened: Opened {
        heading: "An order for a roll-up door",
        lede: "Every rule was run again here: what was sent is a claim, not a proof.",
        disagrees: |claimed, found| {
            format!(
                "The writer was shown “{claimed}”; checked here it is “{found}”. Ask the sender \
                 before anything is cut."
            )
        },
        readings: "What was read",
        damaged: "This link cannot be opened",
        record: "A door's record",
        to_record: "Open the record",
        damaged_file: "This file cannot be opened",
        no_order: "It is no order's link, and no message with one. The counter desk opens other files too: orders \
                   saved there, pictures of a code, tables.",
        adopt: "Work on this order",
        own: "To my own readings",
        written: |date| format!("Written {date}"),
        old_door: |still_in| {
            if still_in {
                "Measured with the old door in"
            } else {
                "Measured with the old door out"
            }
        },
        frame: |prepared| {
            if prepared { "Frame as it will stay" } else { "Frame as found" }
        },
    },
    handover: handover::HANDOVER,
    paper: handover::PAPER,
};

const fn dimension(dimension: Dimension) -> DimensionText {
    match dimension {
        Dimension::Width => DimensionText {
            lede: "The clear opening between the inner faces of the door posts.",
            places: "One place is enough to go on. Low, middle and high together show whether \
                     the posts lean or bulge, and the door is cut to the tightest.",
            wrong_heading: "What goes wrong here",
            wrong: [
                "The tape sags or runs uphill, and reads long: keep it tight and level.",
                "It starts on a weld, a bolt head or a seal: find bare steel.",
            ],
            tape: [
                "It is read from the 1 in mark, or the next inch mark is taken.",
                "It is read from the 10 cm mark, or the next centimeter mark is taken.",
            ],
            caution: Some(
                "The high place is read from the ladder. Face it, and move it rather than lean.",
            ),
        },
        Dimension::Height => DimensionText {
            lede: "From the surface on which the closed door rests up to the underside of the \
                   header.",
            places: "One place is enough to go on. Left, center and right together show a worn \
                     sill or a header that sags.",
            wrong_heading: "What goes wrong here",
            wrong: [
                "The hook stands in a gutter or on a ramp plate instead of where the door rests.",
                "The tape leans: hold it plumb, and take the smallest reading as you swing it.",
            ],
            tape: [
                "A ten or a foot is miscounted far up the tape: read the foot mark too.",
                "Ten centimeters or a meter is miscounted far up the tape: read the meter mark \
                 too.",
            ],
            caution: Some("Step back down before you write. Mind the edge of the sill."),
        },
        Dimension::Header => DimensionText {
            lede: "From the underside of the header up to the roof skin or lining.",
            places: "One place is enough to go on. Left, center and right together show a bent \
                     roof, or a tape that stopped at a bow.",
            wrong_heading: "What goes wrong here",
            wrong: [
                "The tape stops at a roof bow, not at the roof skin.",
                "The tape is bent into the corner and its case is not added.",
            ],
            tape: [
                "Insulation or a liner hides the skin: say so in the note.",
                "Insulation or a liner hides the skin: say so in the note.",
            ],
            caution: Some("Sharp edges and screw points behind the header: wear gloves."),
        },
        Dimension::Bow => DimensionText {
            lede: "From the underside of a roof bow up to the roof skin, at the first bows inside \
                   the door.",
            places: "One bow is enough to go on. The first three together show the deepest, and \
                     the door has to pass under that one.",
            wrong_heading: "What goes wrong here",
            wrong: [
                "The flange of the bow is read, not its whole depth.",
                "A deeper bow further in is missed: look at the first three.",
            ],
            tape: [
                "Sixteenths are counted as eighths on so short a reading.",
                "Centimeters are written for millimeters: 3 cm is 30 mm.",
            ],
            caution: Some(
                "Inside the body, use the ladder or a firm platform, never the load or a rail.",
            ),
        },
    }
}

const fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "a hand above the sill",
        Spot::WidthMiddle => "half-way up the posts",
        Spot::WidthHigh => "a hand below the header",
        Spot::HeightLeft | Spot::HeaderLeft => "beside the left post, seen from behind",
        Spot::HeightCenter | Spot::HeaderCenter => "half-way between the posts",
        Spot::HeightRight | Spot::HeaderRight => "beside the right post, seen from behind",
        Spot::BowFirst => "the one nearest the door",
        Spot::BowSecond => "the next one in",
        Spot::BowThird => "and the one after that",
        Spot::DiagonalRising => "from the low left corner to the high right one",
        Spot::DiagonalFalling => "from the high left corner to the low right one",
        Spot::LoopSillToRoof => "from a bar laid level on the sill, straight up to the roof skin",
        Spot::LoopSillToBow => {
            "from a bar laid level on the sill, straight up to the underside of the first bow"
        }
        Spot::PostLeft | Spot::PostRight => {
            "the width of the face the track is fastened to; may be left empty"
        }
    }
}
