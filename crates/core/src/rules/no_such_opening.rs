//! Openings and headers of a size that no truck body has: a digit was lost or added.

use super::{Context, Rule};
use crate::bounds::{HEADER_POSSIBLE, HEIGHT_POSSIBLE, WIDTH_POSSIBLE};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "no-such-opening", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (dimension, limit) in [
        (Dimension::Width, WIDTH_POSSIBLE),
        (Dimension::Height, HEIGHT_POSSIBLE),
        (Dimension::Header, HEADER_POSSIBLE),
    ] {
        for (spot, value) in context.survey.of(dimension).filter(|(_, v)| *v > Length::ZERO) {
            if let Some(says) = RuleSays::beyond(Subject::Reading(spot), value, &limit) {
                let hints = Hint::list([Hint::ReadAgain(spot), Hint::HowToRead(dimension)]);
                found.push(RULE.finds(Severity::Stop, vec![spot], says, hints));
            }
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn a_lost_digit_stops() {
        assert_eq!(
            found(&survey(&[(Spot::WidthLow, 9 * 16)]), "no-such-opening"),
            ["stop width.low"]
        );
        assert_eq!(
            found(&survey(&[(Spot::HeightCenter, 11 * 16)]), "no-such-opening"),
            ["stop height.center"]
        );
        assert_eq!(
            found(&survey(&[(Spot::HeaderRight, 95 * 16)]), "no-such-opening"),
            ["stop header.right"]
        );
        assert!(found(&survey(&[(Spot::WidthLow, 36 * 16)]), "no-such-opening").is_empty());
    }

    #[test]
    fn nothing_at_all_is_told_elsewhere_and_an_exchange_hides_no_lost_digit() {
        assert!(found(&survey(&[(Spot::WidthLow, 0)]), "no-such-opening").is_empty());
        let headers = [Spot::HeaderLeft, Spot::HeaderCenter, Spot::HeaderRight].map(|at| (at, 20));
        let exchanged = [&headers[..], &[(Spot::BowFirst, 144), (Spot::WidthLow, 144)]].concat();
        assert_eq!(found(&survey(&exchanged), "no-such-opening"), ["stop width.low"]);
    }
}
