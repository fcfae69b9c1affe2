//! The slip between two numbers that should be one: what was sent and what was heard.

use super::{Candidate, SlipKind, Written, meant};
use crate::length::{Length, Unit};
use crate::spot::Group;

/// How a number came to be another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// It was said and typed: ears and keys.
    Said,
    /// It was read from a tape, once by each.
    Read,
}

/// The share of a stretch that one step of the tape gets.
const STEP_MM: f64 = 1.6;

/// The likeliest single slip that makes `written` of `should`; none where no slip does.
#[must_use]
pub fn between(
    written: Length,
    should: Length,
    group: Group,
    unit: Unit,
    bow: Option<Length>,
    way: Way,
) -> Option<SlipKind> {
    if written == should {
        return None;
    }
    let seen = Written { group, length: written, unit, feet: false, bow };
    let longer = (written - should).to_mm();
    let mut best: Option<(SlipKind, f64)> = None;
    meant(&seen, |slip, candidate, weight| {
        let fits = match candidate {
            Candidate::Value(value, _) if (value - should).abs() < unit.finest() => weight,
            Candidate::Shift(least, most, _) if (least..=most).contains(&longer) => {
                weight * STEP_MM / (most - least).max(STEP_MM)
            }
            Candidate::Value(..) | Candidate::Shift(..) => return,
        };
        let explains = match slip {
            // That something else happened is no explanation.
            SlipKind::Other => false,
            SlipKind::Heard => way == Way::Said,
            _ => true,
        };
        if !explains {
            return;
        }
        if best.is_none_or(|(_, most)| fits > most) {
            best = Some((slip, fits));
        }
    });
    best.map(|(slip, _)| slip)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn inches(written: &str, should: &str, way: Way) -> Option<SlipKind> {
        let read = |text| crate::length::read(text, Unit::Inch).unwrap();
        let bow = Some(read("1 1/4"));
        between(read(written), read(should), Group::Width, Unit::Inch, bow, way)
    }

    #[test]
    fn a_slip_is_named_where_one_explains_it() {
        for (written, should, slip) in [
            ("90 1/4", "90 1/4", None),
            ("95", "99", Some(SlipKind::Heard)),
            ("50", "15", Some(SlipKind::Heard)),
            ("87", "78", Some(SlipKind::Transpose)),
            ("92 3/8", "92 3/16", Some(SlipKind::SixteenthsEighths)),
            ("92", "92 3/16", Some(SlipKind::FractionDropped)),
            ("93 3/16", "92 3/16", Some(SlipKind::InchMark)),
            ("9", "96", Some(SlipKind::DropAdd)),
        ] {
            assert_eq!(inches(written, should, Way::Said), slip, "{written} for {should}");
        }
        assert_ne!(inches("95", "99", Way::Read), Some(SlipKind::Heard));
        assert_eq!(inches("37 5/16", "92 3/16", Way::Read), None);
    }

    #[test]
    fn a_header_read_to_the_bow_is_the_wrong_edge() {
        let read = |text| crate::length::read(text, Unit::Inch).unwrap();
        let bow = Some(read("1 1/4"));
        let slip = between(read("8 1/4"), read("9 1/2"), Group::Header, Unit::Inch, bow, Way::Read);
        assert_eq!(slip, Some(SlipKind::WrongEdge));
    }
}
