//! What only the command says, in English (US).

use hangtrue_core::judge::SlipKind;
use hangtrue_core::say::Language;
use hangtrue_link::code::{HeardError, SmallError};
use hangtrue_link::say;

use crate::input::Wrong;

/// Why characters that were heard cannot be used, and how to type what was not understood.
pub(crate) fn heard(error: &HeardError) -> String {
    let why = say::heard(Language::English, error);
    why + " Write ? for each character that was not understood."
}

/// Why thirty characters are no order.
pub(crate) fn small(error: &SmallError) -> Wrong {
    let (code, message) = match error {
        SmallError::Heard(error) => ("not-thirty", heard(error)),
        SmallError::Refused => ("too-many-misheard", say::small(Language::English, error)),
        SmallError::Contents => ("no-order", say::small(Language::English, error)),
    };
    Wrong { code, place: String::new(), message }
}

/// An order that was made from thirty characters of which some had to be corrected.
pub(crate) fn corrected(places: &[usize]) -> String {
    let list: Vec<String> = places.iter().map(usize::to_string).collect();
    let (character, was) =
        if list.len() == 1 { ("Character", "was") } else { ("Characters", "were") };
    format!(
        "{character} {} of the thirty {was} misheard: this is what was probably said. Read it \
         back to the caller.",
        list.join(" and ")
    )
}

/// What probably happened, where two values differ.
pub(crate) const fn slip(slip: SlipKind) -> &'static str {
    match slip {
        SlipKind::Digit => "one digit may be another",
        SlipKind::Transpose => "two digits may have changed places",
        SlipKind::DropAdd => "a digit may be missing or written twice",
        SlipKind::FootTen => "a foot or ten inches off",
        SlipKind::InchMark => "one may start at the one-inch mark",
        SlipKind::HalfInch => "half an inch off",
        SlipKind::WrongSide => "the fraction may be from the wrong side of the inch",
        SlipKind::SixteenthsEighths => "sixteenths may have been counted as eighths",
        SlipKind::Ticks => "the small marks may have been miscounted",
        SlipKind::FractionDropped => "the fraction may have been left out",
        SlipKind::Slash => "the slash of the fraction may have been lost",
        SlipKind::Units => "one may be in another unit",
        SlipKind::DecimalFeet => "decimal feet may have been taken for feet and inches",
        SlipKind::TapeCase => "the tape’s case may not have been added",
        SlipKind::Sag => "the tape may have sagged or lain aslant",
        SlipKind::WrongEdge => "one may have been measured to another edge",
        SlipKind::Heard => "the two sound alike",
        SlipKind::Exchange => "changed places with another number",
        SlipKind::WrongField => "it may belong to another number",
        SlipKind::Habit => "every long reading may start at the same wrong mark",
        SlipKind::Other => "",
    }
}
