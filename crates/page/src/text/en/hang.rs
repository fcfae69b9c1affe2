//! Hanging the door, in English (US).

mod care;
mod names;
mod spring;

use crate::text::hang::{
    Delivery, FitText, Hang, InspectionText, Order, Overhead, RecordText, Tracks,
};
use hangtrue_core::say::Language;

/// The English page.
pub(in crate::text) static HANG: Hang = Hang {
    language: Language::English,
    steps: [
        "Order",
        "Delivery",
        "Tracks",
        "Room overhead",
        "Spring",
        "Latch and seals",
        "Inspection",
        "Care",
        "Record",
    ],
    list: "All steps",
    next: "Continue",
    back: "Back",
    restart: "Another door",
    unread: [
        "Not a length yet: try 92 1/4 or 2343 mm.",
        "Not a weight yet: try 132 lb or 60 kg.",
        "Not a number yet: try 12 or 12 1/4.",
        "Not a day yet: write it as 2026-11-25.",
    ],
    beyond: |least, most| format!("Check it: nothing below {least} or above {most} is taken."),
    yes_no: ["in order", "not in order"],
    no_order: "Open an order first: everything here is worked out from its numbers.",
    order: ORDER,
    delivery: DELIVERY,
    tracks: TRACKS,
    overhead: OVERHEAD,
    spring: spring::SPRING,
    balance: spring::BALANCE,
    fit: FIT,
    inspection: INSPECTION,
    care: care::CARE,
    record: RECORD,
};

const ORDER: Order = Order {
    heading: "Hang the door from its order",
    lede: "The numbers the door was ordered by are the numbers it is hung by. Open the order, or \
           the record of a door that hangs already.",
    paste: "Link of the order or the record",
    paste_hint: "Paste the whole message if you like",
    open: "Open it",
    type_them: "No link? Type the four numbers of the order.",
    unit: "Measured in",
    units: ["inches", "millimeters"],
    numbers: "The door was ordered for",
    caution_heading: "Before you start",
    cautions: [
        "Work on level ground, away from traffic, wheels chocked, key out.",
        "Two people lift the door. Gloves, glasses, firm ladder.",
        "A wound spring can kill. Only trained people wind or loosen it.",
        "Local codes, lockout rules, the maker's instructions and licensed practice come first. \
         Cutting, welding and drilling a vehicle are for licensed practice.",
    ],
    measure: "Measure an opening",
    aside: "Other doors on this device",
    take_up: |door| format!("Go on with {door}"),
    drop_aside: "Throw away",
};

const DELIVERY: Delivery = Delivery {
    heading: "Delivery",
    lede: "Tick what is there and sound. Then measure the opening again: what was built since the \
           order shows now, not when the panels are in.",
    caution: "The halves of a door are heavy and want to fold. Two people, gloves, and nobody \
              under the load. A spring must come unwound: if it is wound, leave it as it is and \
              call the supplier.",
    parts: "Parts",
    part: names::part,
    option: "if it was ordered",
    ordered: "As ordered",
    ticked: |done, of| format!("{done} of {of} are here"),
    tools_heading: "Tools",
    tools: [
        "Two tapes that agree, level, square",
        "Shims: 1/16, 1/8 and 1/4 in",
        "Drill, bits, center punch",
        "Wrenches and sockets, torque wrench",
        "Two winding bars that fit the cone: the size the maker names, and nothing else",
        "Locking pliers, two clamps for the track",
        "Luggage scale",
        "Ladder, gloves, glasses",
    ],
    again: "Measure the opening again",
    again_lede: "At the same places, in the frame as it is built now.",
    spare: |by| format!("fits, {by} to spare"),
    short: |by| format!("too tight by {by}"),
    far: |by| format!("{by} more than ordered"),
    fits: "The opening takes the door that was ordered.",
    stop: "Stop: the door does not fit this opening. Call the supplier before anything is cut or \
           fitted.",
    other: "Recheck: this is much larger than the order says. Is it the same opening?",
};

const TRACKS: Tracks = Tracks {
    heading: "Tracks parallel and square",
    lede: "Fasten the vertical tracks lightly, read the tape between them, and shim as the list \
           says. Then tighten and read again.",
    caution: "Firm ladder, three points of contact, nobody below. Before you drill a post, find \
              out what runs behind it.",
    vertical: "Vertical tracks",
    vertical_how: "Between the inner faces of the tracks, and both diagonals between the same low \
                   and high marks.",
    upper: "Horizontal tracks",
    upper_how: "Between the tracks at the front of the body, half-way, and at the door.",
    place: names::place,
    holds: "These tracks are parallel and square. Nothing has to move.",
    out: "These tracks have to move.",
    stands: |spacing, diagonals| match diagonals {
        Some(by) => format!("Spacing differs by {spacing}, the diagonals by {by}."),
        None => format!("Spacing differs by {spacing}."),
    },
    no_diagonals: "Read both diagonals too: without them nobody knows whether the pair is square.",
    contradict: "These readings contradict each other. Read the diagonals and the height between \
                 the marks again before you shim.",
    shims: "Shims behind the fastenings",
    shim: |side, level, by| {
        let side = if side == 0 { "Left" } else { "Right" };
        let level = ["low", "middle", "high"].get(level).copied().unwrap_or("");
        format!("{side}, {level}: {by}")
    },
    result: |spacing, diagonals| match diagonals {
        Some(by) => format!("Then spacing differs by {spacing} and the diagonals by {by}."),
        None => format!("Then spacing differs by {spacing}."),
    },
    result_holds: [
        "That is inside the limit of 1/8 in.",
        "That is outside the limit of 1/8 in: read again, and mend the posts before you shim.",
    ],
    target: |spacing| format!("The tracks will stand {spacing} apart."),
    station: names::station,
    inward: |left, right| format!("left in {left}, right in {right}"),
    outward: |left, right| format!("left out {left}, right out {right}"),
    as_is: "as it should be",
    square_how: "Square with the upright: lay a straight bar along the straight part of the \
                 vertical track and one along the horizontal track, and find the point where the \
                 two would meet, outside the curve. From that point mark 36 in down the vertical \
                 and 48 in along the horizontal track. Across the marks it is 60 in.",
    on_side: |side, found| format!("{}: {found}", if side == 0 { "Left" } else { "Right" }),
    off: |degrees, up| {
        format!("{degrees}° off: it points too far {}.", if up { "up" } else { "down" })
    },
    off_far: |degrees| {
        format!(
            "{degrees}° off is more than a track is out (common practice, no published source). Bend \
             nothing: check where both marks were measured from, and read across them again."
        )
    },
    square: "Square with the upright.",
    no_triangle: "No triangle has such sides. Read it again.",
    fastenings: "At least four fastenings a side, none loose.",
    source: "Limit: 1/8 in for spacing and diagonals. Common practice, no published source.",
};

const OVERHEAD: Overhead = Overhead {
    heading: "Room overhead",
    lede: "Does the door pass under the roof on its way, and where is it tightest? Move the \
           slider.",
    caution: "Never stand or reach under a door that is not propped or locked open. Keep fingers \
              away from rollers and hinges: they close like scissors.",
    slider: "Open the door",
    ends: ["closed", "open"],
    fit: names::fit,
    left: |against, left, lift| {
        format!("{}: {left} left, with the door lifted by {lift}", names::against(against))
    },
    strikes: |against, by, lift| {
        format!("{}: strikes by {by}, with the door lifted by {lift}", names::against(against))
    },
    reach: |by| format!("The open door reaches {by} into the body."),
    bows: "Where the roof bows are",
    bows_how: "Measure along the roof with the door closed. Bows that are clear of the door's way \
               do not stop it.",
    bow: [
        "From the header's inner face to the near edge of the first bow",
        "From that edge to the same edge of the next bow",
        "Width of a bow, along the body",
    ],
    bows_anywhere: "Bows are taken to hang anywhere along the door's way: the careful answer. Say \
                    below where they are, and only those count.",
    bows_from: |first| {
        format!(
            "Bows are taken to hang anywhere from {first} behind the header on: the careful \
             answer. With the spacing too, only bows where they are count."
        )
    },
    bows_every: |first, spacing| {
        format!(
            "Bows as you placed them: the first {first} behind the header, then every {spacing}."
        )
    },
    figures: "The door and its track",
    assumed: "Figures marked as assumed are common practice with no published source. Take them \
              from the maker's sheet, or measure.",
    figure: names::figure,
    slope: "Fall of the upper track towards the door",
    degrees: "degrees",
    assumed_as: |by| format!("assumed: {by}"),
    no_door: "No door is built like this. Look at the panel's height and the opening's.",
    how: "Rigid panels, every roller on the track, opened in steps until the swept room moves by \
          less than 0.1 mm.",
};

const FIT: FitText = FitText {
    heading: "Latch, side shift, seals",
    caution: "Prop or lock the door before your hands go between panel and post. Nobody touches \
              the spring now.",
    latch: "Latch plate",
    half: |half| {
        format!("Center it {half} from each post. Mark from the left, then from the right.")
    },
    centered: "Both posts say the same center.",
    move_by: |by, right| {
        let side = if right { "right" } else { "left" };
        format!("The two do not agree: move the plate {by} to the {side}, or read the width again.")
    },
    shift: "Side shift",
    shift_how: "Push the closed door hard to the left, mark it, push it hard to the right: the \
                whole way. About 3/8 in is right (common practice, no published source).",
    washer: "Thickness of a washer",
    washers: |left, right, result| {
        let side = |count: i64| match count {
            0 => "none".to_owned(),
            n if n > 0 => format!("add {n}"),
            n => format!("take off {}", -n),
        };
        format!(
            "At each roller: left {}, right {}. Then it shifts {result}.",
            side(left),
            side(right)
        )
    },
    no_washers: "No washers: it shifts as it should.",
    seals: "Seals to cut",
    seals_how: "A seal is never stretched: cut it longer and press it in.",
    seal: ["Left side", "Right side", "Header"],
    source: "One part in a hundred longer, to the next 1/4 in. Common practice, no published \
             source.",
};

const INSPECTION: InspectionText = InspectionText {
    heading: "Last inspection",
    lede: "Measure where there is something to measure. What is left blank stays open.",
    caution: "Before the door moves: nobody under it, hands off tracks, hinges and cables. If \
              anything grinds, sticks or hangs crooked, stop and prop it.",
    check: names::check,
    between: |least, most| format!("{least} to {most}"),
    most: |most| format!("at most {most}"),
    least: |least| format!("at least {least}"),
    as_wound: |turns| format!("{turns}, as wound"),
    finding: ["holds", "does not hold"],
    outcome: [
        "Passed: every point holds.",
        "Open: some points were not looked at yet.",
        "Not passed: do not hand the door over until every point holds.",
    ],
    done: |done, of| format!("{done} of {of} points looked at"),
    source: "The limits are common practice with no published source, but for the pull: 51 lb is \
             the load constant of the NIOSH lifting equation.",
};

const RECORD: RecordText = RecordText {
    heading: "The door's record",
    lede: "A sticker in the body opens this record on any phone, with no server behind it: the \
           numbers, the turns, what was done.",
    serial: "Serial number of the door",
    holds: "What is in it",
    rows: [
        "Vehicle",
        "Opening",
        "Turns on the spring",
        "Weight of the door",
        "Hung on",
        "Last inspection",
        "Due next",
    ],
    none: "not noted",
    copy: "Copy link",
    share: "Share",
    file: "Save as a file",
    print: "Print",
    what: "What to print",
    forms: ["Sticker, 50 × 30 mm", "Card, A6", "Whole record"],
    copied: ["Copied.", "This browser does not copy. Mark the link below and copy it."],
    stick: "Put the sticker inside the body beside the door, where it stays clean and dry, and the \
            card with the vehicle's papers.",
    code: "Code of this record",
    scan: "Door record: scan",
    warning: "Wound spring. Trained people only.",
    too_long: "This record is too long for a code. Shorten the notes.",
    link: "The link",
    lasting: "The link is the record. This device forgets; the link does not.",
};
