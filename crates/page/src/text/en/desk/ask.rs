//! What to ask the caller next, in English (US).

use crate::desk::ask::{Ask, said_as};
use hangtrue_core::judge::{SlipKind, Why};
use hangtrue_core::say::Speaker;
use hangtrue_core::{Dimension, Spot};

pub(super) fn say(ask: &Ask, speaker: Speaker) -> String {
    let unit = speaker.unit;
    let the = |spot| the(spot, speaker);
    match ask {
        Ask::SayAgain { spot, text } => {
            format!("Ask for {} again: “{text}” is not a reading.", the(*spot))
        }
        Ask::Say(dimension) => {
            let how = match dimension {
                Dimension::Width => "between the inner faces of the posts",
                Dimension::Height => "from the sill up to the underside of the header",
                Dimension::Header => "from the underside of the header up to the roof skin",
                Dimension::Bow => "from the underside of a roof bow up to the roof skin",
            };
            format!("Ask for the {}: {how}.", speaker.dimension(*dimension))
        }
        Ask::Digits { spot, value } => format!(
            "Ask for {} digit by digit, and in which unit: {} is no opening.",
            the(*spot),
            value.text(unit)
        ),
        Ask::Which { first, first_value, second, second_value } => format!(
            "Ask which is which: is the {} {} and the {} {}, or the other way round?",
            speaker.dimension(*first),
            first_value.text(unit),
            speaker.dimension(*second),
            second_value.text(unit)
        ),
        Ask::BetweenPosts(value) => format!(
            "Ask whether {} was measured between the posts or over the outside of the body.",
            value.text(unit)
        ),
        Ask::ToHeader(value) => format!(
            "Ask whether {} was measured up to the underside of the header or up to the roof.",
            value.text(unit)
        ),
        Ask::RoofOrBow { .. } => {
            "Ask whether the header was measured to the roof or to the bow.".to_owned()
        }
        Ask::BowFrom(value) => format!(
            "Ask whether the bow’s {} run from its underside up to the roof skin.",
            value.text(unit)
        ),
        Ask::Build(value) => format!(
            "Ask whether the header of {} is still to be built down, or stays as it is.",
            value.text(unit)
        ),
        Ask::Meant { spot, said, meant, slip } => {
            let why = slip_clause(*slip);
            let stop = if why.is_empty() { "?" } else { "? " };
            format!(
                "Ask for {} again: is it {} or {}{stop}{why}",
                the(*spot),
                said.text(unit),
                meant.text(unit)
            )
        }
        Ask::Misheard { spot, said, meant } => format!(
            "Ask for {} again: {} was typed, by the check characters it was {}.",
            the(*spot),
            said.text(unit),
            meant.text(unit)
        ),
        Ask::ReadAgain(spots) => {
            let names: Vec<String> = spots.iter().take(3).map(|spot| the(*spot)).collect();
            let why = match names.as_slice() {
                [_] => "it does not fit the others",
                _ => "they do not fit together",
            };
            format!("Ask for {} to be read again: {why}.", list(&names))
        }
        Ask::Unusual { spot, value } => format!(
            "Ask whether {} really is {}: few truck bodies are built so.",
            the(*spot),
            value.text(unit)
        ),
        Ask::Take { spot, why, checks } => take(*spot, *why, checks, speaker),
        Ask::Required(spot) => {
            format!("Ask for {} as well: without it no door is made.", the(*spot))
        }
        Ask::Nothing => "Nothing more to ask. Read the numbers back.".to_owned(),
    }
}

fn take(spot: Spot, why: Why, checks: &[Dimension], speaker: Speaker) -> String {
    let the = the(spot, speaker);
    let names: Vec<String> =
        checks.iter().map(|d| ["the ", speaker.dimension(*d)].concat()).collect();
    match why {
        Why::Settles => {
            format!("Ask for {the} to be read once more: that settles which reading is wrong.")
        }
        Why::Again => format!(
            "Ask for {the} to be read once more, without looking at the first number: it checks {}.",
            list(&names)
        ),
        Why::Missing | Why::ChecksSeveral | Why::ChecksOne => {
            format!("Ask for one more reading, {the}: it checks {}.", list(&names))
        }
    }
}

/// The dimension where a number is said without its place, else the spot.
fn the(spot: Spot, speaker: Speaker) -> String {
    let name = said_as(spot).map_or(speaker.spot(spot), |dimension| speaker.dimension(dimension));
    ["the ", name].concat()
}

fn list(items: &[String]) -> String {
    match items.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => [&rest.join(", "), " and ", last].concat(),
    }
}

/// What probably happened, as a sentence for the clerk.
pub(super) const fn slip_clause(slip: SlipKind) -> &'static str {
    match slip {
        SlipKind::Digit => "One digit may be another.",
        SlipKind::Transpose => "Two digits may have changed places.",
        SlipKind::DropAdd => "A digit may be missing or said twice.",
        SlipKind::FootTen => "It may be a foot or ten inches off.",
        SlipKind::InchMark => "The tape may have started at the one-inch mark.",
        SlipKind::HalfInch => "It may be half an inch off.",
        SlipKind::WrongSide => "The fraction may be from the wrong side of the inch.",
        SlipKind::SixteenthsEighths => "Are those sixteenths or eighths?",
        SlipKind::Ticks => "The small marks may have been miscounted.",
        SlipKind::FractionDropped => "The fraction may have been left out.",
        SlipKind::Slash => "It may have been a fraction, not a decimal.",
        SlipKind::Units => "Inches or millimeters?",
        SlipKind::DecimalFeet => "Feet and inches, or decimal feet?",
        SlipKind::TapeCase => "Was the tape’s case added?",
        SlipKind::Sag => "The tape may have sagged or lain aslant.",
        SlipKind::WrongEdge => "From edge to edge of what?",
        SlipKind::Heard => "The two sound alike.",
        SlipKind::Exchange => "It may have changed places with another number.",
        SlipKind::WrongField => "It may belong to another number.",
        SlipKind::Habit => "Every long reading may have started at the same wrong mark.",
        SlipKind::Other => "",
    }
}
