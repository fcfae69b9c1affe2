//! What is wrong with a profile, in English (US).

use hangtrue_core::Unit;
use hangtrue_core::profile::{CONTRAST_LEAST, NumberError, Numbering};
use hangtrue_core::say::decimal;

use super::file;
use crate::json::profile::ProfileFault;
use crate::json::{Fault, FileError};

pub(crate) fn say(error: &FileError) -> String {
    let place = if error.place.is_empty() { "The profile" } else { error.place.as_str() };
    match &error.fault {
        Fault::NotJson { line, column, what } => {
            let reason = file::syntax(*what);
            format!("The profile is not JSON: {reason} at line {line}, column {column}.")
        }
        Fault::TooLong { most } => {
            format!("The profile is larger than {most} bytes. Shorten its texts and lists.")
        }
        fault => file::of(place, fault),
    }
}

/// What is wrong at `place`, of that which only a profile holds.
pub(super) fn of(place: &str, fault: &ProfileFault) -> String {
    match fault {
        ProfileFault::TooMany { most } => format!("{place} has more than {most} items."),
        ProfileFault::Empty => format!("{place} is empty. Write a text, or leave the key out."),
        ProfileFault::TextTooLong { most } => {
            format!("{place} is longer than {most} characters. Shorten it.")
        }
        ProfileFault::Letter { letter } => format!(
            "{place} has a character that nobody sees, U+{:04X}. Take it out.",
            u32::from(*letter)
        ),
        ProfileFault::Range { found, least, most } => {
            format!("{place} is {found}. It can be {least} to {most}.")
        }
        ProfileFault::Length { found } => format!(
            "{place} is \"{found}\". Write a length with its unit, such as 96 1/4 in or 2445 mm."
        ),
        ProfileFault::Weight { found } => format!(
            "{place} is \"{found}\". Write a weight per area, such as 10.5 kg/m2 or 2.15 lb/ft2."
        ),
        ProfileFault::UpsideDown { least, most } => format!(
            "{place} has a least of {} above its most of {}: nothing would pass.",
            least.text(Unit::Inch),
            most.text(Unit::Inch)
        ),
        ProfileFault::NoEnd => {
            format!("{place} has neither \"least\" nor \"most\". Write one of them.")
        }
        ProfileFault::NoInterval => {
            format!("{place} has neither \"months\" nor \"cycles\". Write one of them, or both.")
        }
        ProfileFault::Key { found } => format!(
            "{place} is \"{found}\". A key is a letter and up to 31 more small letters, digits \
             and dashes."
        ),
        ProfileFault::SameKey { list, key } => {
            format!("{place} has \"{key}\" twice in {list}. Give each its own key.")
        }
        ProfileFault::Taken { key } => {
            format!(
                "{place} has the key \"{key}\", which the order keeps for itself. Take another."
            )
        }
        ProfileFault::OtherKind { key } => {
            format!("{place} has {key}, which belongs to another kind of question.")
        }
        ProfileFault::FewChoices => format!("{place} offers fewer than two choices."),
        ProfileFault::Email { found } => {
            format!(
                "{place} is \"{found}\". Write one e-mail address, such as orders@doors.example."
            )
        }
        ProfileFault::Phone { found } => format!(
            "{place} is \"{found}\". Write a telephone number of 3 to 15 digits, such as \
             +1 555 010 0199."
        ),
        ProfileFault::Page { found } => format!(
            "{place} is \"{found}\". Write the address of a page, beginning with https:// and \
             without a #; a script is not opened."
        ),
        ProfileFault::Colour { found } => {
            format!("{place} is \"{found}\". Write a color as # and six digits, such as #ffc914.")
        }
        ProfileFault::Contrast(poor) => format!(
            "{place}: {} on {} has a contrast of {} to 1. Text needs {} to 1 (WCAG 2.2).",
            poor.text,
            poor.ground,
            decimal(downwards(poor.contrast), 2),
            decimal(CONTRAST_LEAST, 1)
        ),
        ProfileFault::NumberFormat(error) => number_format(place, error),
    }
}

/// To two decimals, downwards: 4.499 is not 4.5.
fn downwards(contrast: f64) -> f64 {
    (contrast * 100.0).floor() / 100.0
}

fn number_format(place: &str, error: &NumberError) -> String {
    match error {
        NumberError::Brace => format!("{place} has a brace without its partner."),
        NumberError::Unknown(name) => format!(
            "{place} has {{{name}}}, which is not known. Known are: {}.",
            Numbering::NAMES.map(|name| ["{", name, "}"].concat()).join(", ")
        ),
        NumberError::NoCheck => {
            format!("{place} has no {{check}}: two orders of one day would have the same number.")
        }
        NumberError::Text => format!(
            "{place} has more than 40 characters, or one that is no letter, digit, space, -, . \
             or /."
        ),
    }
}
