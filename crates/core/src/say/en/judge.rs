//! What the judge says, in English (US).

use super::{capital, names};
use crate::judge::{SlipKind, Why};
use crate::length::Unit;
use crate::say::JudgeSays;
use crate::spot::Spot;

// Not inlined: it comes with the judge (`crates/xtask/src/split`).
#[inline(never)]
pub(crate) fn say(says: &JudgeSays, unit: Unit) -> String {
    match says {
        JudgeSays::Doubtful { spots, value, slip, alone } => {
            let first = spots.first().map_or("reading", |spot| names::spot(*spot));
            let does = match (spots.as_slice(), slip) {
                ([_, _, ..], Some(SlipKind::Exchange)) => "looks exchanged with another reading",
                ([_, _, ..], _) => "and the readings that go with it do not fit the others",
                _ if *alone => "is unlikely by itself, and no other reading checks it",
                _ => "does not fit what else was read",
            };
            let because = slip.map_or("", slip_clause);
            [&capital(first), " reads ", &value.text(unit), ", which ", does, because, "."]
                .concat()
                .replace("which and the", "and it and the")
        }
        JudgeSays::DidYouMean { meant, .. } => format!("Did you mean {}?", meant.text(unit)),
        JudgeSays::ReadAgain { spots } => {
            ["Read ", &list(spots.iter().map(|spot| the(*spot))), " again."].concat()
        }
        JudgeSays::OrReadAgain { spot } => {
            ["If that stands, read ", &the(*spot), " again."].concat()
        }
        JudgeSays::Next { spot, why, checks } => {
            let what = list(checks.iter().map(|d| ["the ", names::dimension(*d)].concat()));
            match why {
                Why::Missing => ["Read ", &the(*spot), ": the order needs it."].concat(),
                Why::Settles => {
                    ["Read ", &the(*spot), " again: that settles which reading is wrong."].concat()
                }
                Why::ChecksSeveral => {
                    let count = match checks.len() {
                        2 => "two",
                        3 => "three",
                        _ => "all four",
                    };
                    let head = ["Read ", &the(*spot), ": this one reading checks ", count];
                    [&head.concat(), " of your four numbers, ", &what, "."].concat()
                }
                Why::ChecksOne => ["Read ", &the(*spot), ": it checks ", &what, "."].concat(),
                Why::Again => [
                    "Read ",
                    &the(*spot),
                    " again at the chalk mark, without looking at the first number: it checks ",
                    &what,
                    ".",
                ]
                .concat(),
            }
        }
        JudgeSays::Unseen { dimension, least, readings } => {
            let name = names::dimension(*dimension);
            let once = if *readings == 1 { ": it was read once" } else { "" };
            match least {
                Some(least) => format!(
                    "In the {name}, a slip of less than {} might not be noticed{once}.",
                    least.text(unit)
                ),
                None => format!(
                    "A slip in the {name} would not be noticed, as long as the number could be \
                     one of an opening{}.",
                    if *readings == 1 { ": it was read once, and nothing checks it" } else { "" }
                ),
            }
        }
    }
}

fn the(spot: Spot) -> String {
    ["the ", names::spot(spot)].concat()
}

/// a; a and b; a, b and c.
fn list(items: impl Iterator<Item = String>) -> String {
    let items: Vec<String> = items.collect();
    match items.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => [&rest.join(", "), " and ", last].concat(),
    }
}

/// What probably happened, as the end of a sentence.
const fn slip_clause(slip: SlipKind) -> &'static str {
    match slip {
        SlipKind::Digit => "; one digit may be another",
        SlipKind::Transpose => "; two digits may have changed places",
        SlipKind::DropAdd => "; a digit may be missing or written twice",
        SlipKind::FootTen => "; it may be a foot or ten inches off",
        SlipKind::InchMark => {
            "; the tape may have started at the one-inch mark, or the next mark was read"
        }
        SlipKind::HalfInch => "; it may be half an inch off",
        SlipKind::WrongSide => {
            "; the fraction may have been counted from the wrong side of the inch"
        }
        SlipKind::SixteenthsEighths => "; sixteenths may have been counted as eighths",
        SlipKind::Ticks => "; the small marks may have been miscounted",
        SlipKind::FractionDropped => "; the fraction may have been left out",
        SlipKind::Slash => "; the slash of the fraction may have been lost",
        SlipKind::Units => "; it may be another unit's number",
        SlipKind::DecimalFeet => "; decimal feet may have been taken for feet and inches",
        SlipKind::TapeCase => "; the tape's case may not have been added",
        SlipKind::Sag => "; the tape may have sagged or lain aslant",
        SlipKind::WrongEdge => "; it may have been measured to another edge",
        SlipKind::Heard => "; it may have been heard wrong",
        SlipKind::Exchange => "; two readings may have changed places",
        SlipKind::WrongField => "; it may belong in another field",
        SlipKind::Habit => "; every long reading may have started at the same wrong mark",
        SlipKind::Other => "",
    }
}
