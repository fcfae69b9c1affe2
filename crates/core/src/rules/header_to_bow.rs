//! A header depth that is short by the depth of a bow: the tape stopped at the bow.

use super::{Context, Rule};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::say::{Hint, RuleSays};
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

pub(super) const RULE: Rule = Rule { code: "header-to-bow", check };

/// How near the difference must be to a bow's depth: a graduation of the tape.
const NEAR: Length = Length::from_sixteenths(1);

/// A bow shallower than this is within what a frame does by itself.
const TELLING: Length = Length::from_sixteenths(14);

/// What the readings other than those at `spot` make the header depth there.
fn expected(survey: &Survey, spot: Spot) -> Option<Length> {
    let others = survey.of(Dimension::Header).filter(|(other, _)| *other != spot);
    let deepest = others.map(|(_, length)| length).max();
    // From the sill to the roof skin is height and header; only the height need be read.
    let roof = survey.lengths(Spot::LoopSillToRoof).next();
    let height = survey.tightest(Dimension::Height).map(|(_, height)| height);
    let closed = roof.zip(height).map(|(roof, height)| roof - height);
    deepest.or(closed)
}

fn check(context: &Context<'_>) -> Vec<Finding> {
    let survey = context.survey;
    let mut found: Vec<Finding> = Vec::new();
    for (spot, value) in survey.of(Dimension::Header) {
        // Once a place: who confirms it has looked at one number.
        if found.iter().any(|told| told.spots.contains(&spot)) {
            continue;
        }
        let Some(expected) = expected(survey, spot) else { continue };
        let short = expected - value;
        let bow = survey
            .of(Dimension::Bow)
            .find(|(_, bow)| *bow >= TELLING && (short - *bow).abs() <= NEAR);
        if let Some((_, bow)) = bow {
            let says = RuleSays::HeaderToBow { spot, value, expected, bow };
            let hints = Hint::list([Hint::HowToRead(Dimension::Header), Hint::ReadAgain(spot)]);
            found.push(RULE.finds(Severity::Recheck, vec![spot], says, hints));
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn one_header_short_by_the_bow_among_three() {
        let bow = 20;
        let s = survey(&[(Spot::HeaderCenter, 9 * 16 + 8 - bow)]);
        assert_eq!(found(&s, "header-to-bow"), ["recheck header.center"]);
        assert!(found(&survey(&[]), "header-to-bow").is_empty());
        let s = survey(&[(Spot::HeaderCenter, 9 * 16 + 8 - bow / 2)]);
        assert!(found(&s, "header-to-bow").is_empty());
    }

    #[test]
    fn a_place_that_was_read_twice_is_told_once() {
        let mut s = survey(&[(Spot::HeaderCenter, 8 * 16 + 4)]);
        s.set(Spot::HeaderCenter, 1, "8 1/4");
        assert_eq!(found(&s, "header-to-bow"), ["recheck header.center"]);
    }

    #[test]
    fn a_single_header_is_compared_with_the_closing_reading() {
        let mut s = survey(&[(Spot::HeaderCenter, 8 * 16 + 4), (Spot::LoopSillToRoof, 111 * 16)]);
        s.entries_mut(Spot::HeaderLeft).clear();
        s.entries_mut(Spot::HeaderRight).clear();
        assert_eq!(found(&s, "header-to-bow"), ["recheck header.center"]);
    }
}
