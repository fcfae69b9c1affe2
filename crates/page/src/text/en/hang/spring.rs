//! Turns, winding, balance.

use crate::text::hang::{Balance, Spring};
use hangtrue_core::hang::spring::{Behaves, Height, Mismatch};

pub(super) const SPRING: Spring = Spring {
    heading: "Spring",
    lede: "Work the turns out here. Winding them is for trained people with the right bars.",
    danger: "A wound spring holds enough energy to break an arm or kill. It gives it all back at \
             once, through whatever holds it.",
    energy: |joules, weight, height| {
        format!(
            "Wound, this spring holds about {joules} joules: as much as {weight} dropped from \
             {height}. It gives them all back at once, through whatever holds it."
        )
    },
    trained: "Not trained for springs? Stop here and have it wound. Nothing on this page makes up \
              for training.",
    turns: "Turns on the spring, door closed",
    count: |turns| format!("{turns} turns"),
    rule: "The rule: inches of door height ÷ 10, plus 3. Common practice, no published source; \
           millimeters give the same number.",
    means: |drum, travelled, preload| {
        format!(
            "About {drum} of door for each turn: opening takes off {travelled} turns, and \
             {preload} are left when it is open."
        )
    },
    own: "By this door's own figures: height ÷ travel for each turn, plus the turns left when open.",
    drum: "Travel of the door for each turn of the drum",
    preload: "Turns left when the door is open",
    weight: "Weight of the door",
    weight_hint: "From the delivery note, or two scales under the halves",
    by_area: |weight| format!("By its area the door weighs about {weight}."),
    heavy: |most| {
        format!(
            "No hand holds this door without its spring: one person should lift at most {most}. \
             Clamp it before the spring is touched."
        )
    },
    wound: "Turns that were wound",
    stripes: "Stripes counted along the spring",
    agree: [
        "The stripes say the same: the line along the coils winds round once for each turn.",
        "The stripes say another number. Stop, secure the cone with a bar, and count again before \
         the door moves.",
    ],
    steps_heading: "Winding, step by step",
    steps: [
        (
            "Lockout rules and local codes first. Doors, liftgate and vehicle cannot move; nobody \
             else is in the body.",
            "Close the door and clamp it to both tracks, above a roller, so that it cannot rise.",
        ),
        (
            "A worn or bent bar slips out of the cone. Bars of the size that the maker names, full \
             depth in the hole. No screwdriver, no rod, no pipe.",
            "Try both bars in the cone. Look at cone, set screws and cables; replace what is worn.",
        ),
        (
            "Look where the spring would send things: your face and body never in line with the \
             bars, the ladder to one side, no loose sleeves.",
            "Seat both cables in their drums, equally tight, and tighten the drums' set screws.",
        ),
        (
            "From the first quarter turn on the spring pushes back. One bar always holds the cone; \
             never let go of a bar that is in it.",
            "Wind upwards a quarter turn at a time: one bar holds, the other goes into the next \
             hole.",
        ),
        (
            "The last turns are the strongest. If a bar does not sit to its full depth, stop and \
             hold.",
            "Count every quarter aloud up to the number above. The stripes on the spring have to \
             say the same.",
        ),
        (
            "Never loosen the winding cone while the spring is wound, unless a bar holds it.",
            "With a bar resting in the cone, tighten its set screws to the maker's torque. Then \
             take the bars out, one after the other.",
        ),
        (
            "Take the clamps off from the side. Nobody stands under the door or in front of it.",
            "Set the anchor bracket 6 1/2 in (165 mm) from the roadside bracket (common practice, no \
             published source), the shaft's ends equal. Then take the clamps off.",
        ),
        (
            "If the door jumps, hangs crooked or a cable goes slack: stop, clamp it, start over.",
            "Raise the door by hand a foot (30 cm), and let it down. Then test the balance below.",
        ),
    ],
    measures: "The spring's own measures",
    wire: ["Wire diameter", "Coil diameter, outside", "Coils"],
    rate: |rate, torque| {
        format!("This spring: {rate} for each turn. Closed, the shaft carries {torque}.")
    },
    rate_off: |percent, stiffer| {
        let how = if stiffer { "stiffer" } else { "softer" };
        format!("It is {percent} % {how} than this door asks for.")
    },
    stress: |stress, share| {
        format!(
            "The wire is stressed to {stress}, {share} % of the strength of oil-tempered wire \
             (ASTM A229, from memory)."
        )
    },
    formula: "Rate d⁴E ÷ 10.8·D·N, the handbook's divisor, which allows for friction between the \
              coils; without it 10.186, 6 % stiffer.",
    no_spring: "No spring is built like this. The coil's diameter is measured over the outside.",
};

pub(super) const BALANCE: Balance = Balance {
    heading: "Balance",
    caution: "A door out of balance drops or flies up. Keep a hand ready, fingers away from \
              hinges and rollers, nobody below.",
    no_weight: "Type what the door weighs: without it nobody knows the forces.",
    open: |weight| format!("Open, the spring still pulls up with {weight}."),
    quarter: |weight| format!("A quarter turn more or less changes the lift by {weight}."),
    hand: |weight| format!("Wound like this, the hand lifts at most {weight}."),
    hand_over: |weight, most| {
        format!(
            "Wound like this, the hand would lift {weight}: more than the {most} that one person \
             should, at best. Do not move the door by hand."
        )
    },
    pulls_up: |weight, lift| {
        format!(
            "Wound like this, with the door {lift} up, the spring pulls up with {weight} more than \
             the door weighs there: hold the door back as it rises."
        )
    },
    pulls_up_over: |weight, lift, most| {
        format!(
            "Wound like this, with the door {lift} up, the spring pulls up with {weight} more than \
             the door weighs there: more than the {most} that one person should hold, at best. Do \
             not move the door by hand."
        )
    },
    flies_up: |weight, lift| {
        format!(
            "Wound like this, with the door {lift} up, the spring pulls up with {weight} more than \
             the door weighs there: the door flies up when it is unclamped. Leave the clamps on, \
             and have trained people take turns off."
        )
    },
    test: "Balance test",
    scale: "Hang a luggage scale on the handle and move the door slowly. Nothing measured up and \
            down? Let it go instead, below.",
    pulls: [
        "At the sill: pull to raise it",
        "At the sill: pull to hold it as it comes down",
        "Half-way: pull to raise it",
        "Half-way: pull to hold it as it comes down",
    ],
    behaves: "Or let the door go, with a hand ready",
    height: |height| match height {
        Height::Low => "Knee-high",
        Height::Middle => "Half-way",
        Height::High => "Three quarters up",
    },
    does: |does| match does {
        Behaves::Drops => "drops",
        Behaves::Stays => "stays",
        Behaves::Rises => "rises",
    },
    contradict: "These pulls contradict each other; read them again.",
    add: |turns, give| format!("Turns to add: {turns}, give or take {give}."),
    take: |turns, give| format!("Turns to take off: {turns}, give or take {give}."),
    holds: |give| format!("Balanced, as far as this test sees: within {give} turns."),
    mismatch: |mismatch| match mismatch {
        Mismatch::TooSoft => {
            "No number of turns mends this: the spring is too soft for the door. Ask the supplier \
             for the right one."
        }
        Mismatch::TooStiff => {
            "No number of turns mends this: the spring is too stiff for the door. Ask the supplier \
             for the right one."
        }
    },
    again: "Changing turns is winding: every caution above holds. Then test again.",
};
