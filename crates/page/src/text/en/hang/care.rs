//! Care of the door.

use crate::text::hang::{Care, Guide};
use hangtrue_core::hang::care::Work;

pub(super) const CARE: Care = Care {
    heading: "Care",
    before: "Before each use",
    before_list: [
        "Cables lie in their drums, no broken wires, equally tight",
        "Rollers run in their tracks, none cracked or missing",
        "Tracks are not bent, nothing is loose",
        "Panels are whole, hinges tight",
        "The latch falls in and holds",
        "Nobody stands under the door",
    ],
    before_stop: "One of these is not so? Leave the door as it is, prop or lock it, and have it \
                  mended.",
    due: "What is due",
    hung: "Hung on",
    day_hint: "Such as 2026\u{2011}11\u{2011}25",
    per_day: "Times it is opened a day",
    no_day: "Type the day it was hung, and what is due is worked out.",
    due_in: |days, day| match days {
        0 => format!("today ({day})"),
        1 => format!("tomorrow ({day})"),
        n if n > 90 => format!("in {} months ({day})", n / 30),
        n if n > 1 => format!("in {n} days ({day})"),
        -1 => format!("since yesterday ({day})"),
        n => format!("{} days late ({day})", n.unsigned_abs()),
    },
    work: |work| match work {
        Work::Lubrication => "Oil",
        Work::CablesChecked => "Look at the cables",
        Work::Cables => "Both cables replaced",
        Work::Rollers => "Rollers replaced",
        Work::Panel => "Panel replaced",
        Work::Spring => "Spring replaced or rewound",
        Work::Tracks => "Tracks set again",
        Work::Inspected => "Whole door inspected",
    },
    source: "By months or by use, whichever comes first. Common practice, no published source: the \
             maker's instructions come first.",
    oil: "Oil",
    oil_list: [
        "Light oil on roller stems, hinges, bearings, and along the coils of the spring",
        "Wipe the tracks clean. No grease in the tracks: it gathers dirt and stops the rollers",
        "Never oil the seals: it eats the rubber. Soap and water",
        "Hands off the spring itself: oil it with the door closed, and touch nothing else",
    ],
    guides_heading: "Replacing parts",
    guides: [
        Guide {
            title: "Cables, always both",
            caution: "The cables carry the whole pull of the spring. The spring has to be unwound \
                      first, by trained people with two bars. Lockout rules come first.",
            steps: &[
                "Close the door and clamp it to both tracks.",
                "Have the spring unwound until the cables are slack.",
                "Take both cables off. Compare their length: the new pair has to match, and each \
                 other.",
                "Fasten the lower ends, lead the cables behind the rollers, seat them in the drums.",
                "Have the spring wound and the balance tested.",
            ],
            stop: "A bottom bracket is bent or cracked, a drum is worn, or the cables do not match.",
        },
        Guide {
            title: "A roller",
            caution: "Never open a bottom bracket while the spring is wound: the cable is fastened \
                      to it. Prop the door so that it cannot fall or rise.",
            steps: &[
                "Prop or clamp the door with the hinge at working height.",
                "Take off the hinge's roller holder, one at a time. Never two.",
                "Change the roller; keep its washers in their number.",
                "Fasten the holder and move the door by hand past the place.",
            ],
            stop: "It is the lowest roller, the track has to be bent open, or the hinge is cracked.",
        },
        Guide {
            title: "A panel",
            caution: "Panels are heavy, and the door loses its balance as they come out. Spring \
                      unwound first, by trained people. Two people lift.",
            steps: &[
                "Close the door, clamp it, and have the spring unwound.",
                "Take the panels off from the top down to the one that is broken.",
                "Compare the new panel: height, thickness, width, hinge holes.",
                "Build up again, hinge by hinge, and check the side shift.",
                "Have the spring wound for the door's new weight, and the balance tested.",
            ],
            stop: "The new panel differs in height or weight, or the frame is bent.",
        },
        Guide {
            title: "The spring",
            caution: "For trained people only, whatever the hurry. A wound or broken spring can \
                      still hold turns on its other end.",
            steps: &[
                "Close the door, clamp it, put a tag on it, and call trained people.",
                "Order by wire, coil diameter, number of coils, and which way it winds.",
                "Afterwards: balance test, stripes, and the new turns in this record.",
            ],
            stop: "Always: do not loosen anything on the shaft yourself.",
        },
    ],
    stop: "Stop if:",
    done: "What was done",
    add_heading: "Add what was done",
    add_fields: ["Work", "Day", "Note"],
    add: "Add to the record",
    drop: "Take out",
    new_link: "Each entry makes a new link. Share it, and print a new sticker.",
    not_here: |rules| {
        format!(
            "It was ordered under: {rules}. They are not here, so what is due goes by the intervals below. \
             Open the record by the dealer's own link to have them."
        )
    },
    sizes: "Sizes to order",
    sizes_list: |[width, height], panels, rollers, [side, head]| {
        [
            format!("Door for an opening of {width} × {height}"),
            format!("{panels} panels (worked out from the panel's height: measure the broken one)"),
            format!("{rollers} rollers, cables in pairs"),
            format!("Seals, cut: two of {side} for the sides, one of {head} for the header"),
        ]
    },
};
