//! The counter desk, in English (US).

mod ask;
mod many;

use crate::text::desk::{Desk, Phone, Sent, Voice};
use hangtrue_core::Unit;

/// The English desk.
pub(in crate::text) static DESK: Desk = Desk {
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
        keep: "Make it an order",
        built: "The numbers are for the frame after it is built: measure again before a door is cut.",
        fresh: "New call",
        before: "Back to the call before",
        ask: "Ask the caller",
        stands: "It is as said",
        cannot: "Not now",
        it_is: |text| ["The caller says ", text].concat(),
        found: "What the numbers say",
        nothing_yet: "Type the width as it is said; Enter goes to the next number.",
        so_far: "Nothing against it so far",
        after_building: "Once the frame is built, the order says:",
    },
    voice: Voice {
        heading: "Read back",
        not_yet: "Once all four numbers are there, read them back digit by digit.",
        heard: "Check characters, as heard",
        heard_hint: "six letters and digits, or their spelling words; ? for one you did not catch",
        agrees: "The six characters agree: the numbers were heard as they were said.",
        refused: "More was misheard than six characters can tell apart. Ask for all four numbers \
                  again, then for the six characters.",
        number: misheard_number,
        frame: |unit, build| {
            let unit = match unit {
                Unit::Inch => "inches",
                Unit::Millimetre => "millimeters",
            };
            let frame = if build { "after it is built" } else { "as it is" };
            format!(
                "The unit or the frame was misheard. Ask: are the numbers in {unit}, of the frame \
                 {frame}?"
            )
        },
        character: |at, likely| {
            format!(
                "Check character {at} was misheard; it is probably {likely}. The numbers are right."
            )
        },
    },
    sent: Sent {
        heading: "What was sent",
        paste: "Paste what was sent",
        another: "Paste another order for the same truck",
        paste_hint: "a link or a whole mail, the thirty characters, a saved order; or drop files \
                     anywhere on this page",
        open: "Open",
        choose: "Choose files",
        look: "Scan with the camera",
        look_away: "Stop the camera",
        asked: "The browser asks whether this page may use the camera.",
        looking: "Hold the code still, as large as the picture allows.",
        camera_refused: "This page may not use the camera. Allow it in the browser's settings for \
                         this site, or take a photo of the code and choose that file.",
        camera_missing: "There is no camera, or another program is using it. Take a photo of the \
                         code and choose that file.",
        no_text: "This file is neither a text nor a picture that is read here, or it is larger \
                  than 64 MB.",
        no_code: "There is no code in this picture that can be read. Take the photo closer, \
                  straight on, without glare.",
        nothing: "There is no order in this. Paste the link or the whole message, the thirty \
                  characters, or a saved order.",
        too_long: |most| {
            format!("This is longer than the {most} bytes that are read of one order.")
        },
        only: "The order",
        first: "First order",
        second: "Second order",
        against: |title| ["Phoned against sent: ", title].concat(),
        agrees: "All four numbers are as they were sent.",
        agrees_so_far: "As sent so far; not every number is there yet.",
        differs: "Phoned and sent differ. Ask the caller before anything is cut.",
        both: "The two orders, reading by reading",
        both_differ: "The two orders differ.",
        both_agree: "No reading stands apart.",
        table: "Comparison, what differs first",
        what: "Number",
        phoned: "Phoned",
        was_sent: "Sent",
        difference: "Difference",
        likely: "What may have happened",
        none: "none",
        same: "the same",
        close: "as close as two careful readings",
        one_only: "only one has it",
        unexplained: "no usual slip makes one out of the other",
        corrected: |at| {
            let at: Vec<String> = at.iter().map(usize::to_string).collect();
            format!(
                "Characters were misheard and put right (number {}). Read the numbers back to the \
                 caller before you take this order.",
                at.join(", ")
            )
        },
        characters: "Check characters:",
        close_order: "Put away",
    },
    many: many::MANY,
    newer: "A newer version of this page is ready. Using it clears this desk: finish what is on it \
            first.",
    ask: ask::say,
    slip: ask::slip_clause,
};

fn misheard_number(name: &str, typed: Option<&str>, likely: &[String]) -> String {
    let likely = likely.join(" or ");
    match typed {
        Some(typed) => format!(
            "{name} was probably misheard: {typed} was typed, it was probably {likely}. Ask the \
             caller."
        ),
        None => format!("{name} was probably {likely}. Ask the caller."),
    }
}
