//! Openings and headers that few truck bodies have: right, perhaps, but worth a second look.

use super::{Context, Rule};
use crate::bounds::{
    HEADER_POSSIBLE, HEADER_USUAL, HEIGHT_POSSIBLE, HEIGHT_USUAL, WIDTH_POSSIBLE, WIDTH_USUAL,
};
use crate::finding::{Finding, Severity};
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "unusual-opening", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (dimension, possible, usual) in [
        (Dimension::Width, WIDTH_POSSIBLE, WIDTH_USUAL),
        (Dimension::Height, HEIGHT_POSSIBLE, HEIGHT_USUAL),
        (Dimension::Header, HEADER_POSSIBLE, HEADER_USUAL),
    ] {
        // One question a dimension: an unusual opening is unusual at all its places.
        let beyond = context.survey.of(dimension).find_map(|(spot, value)| {
            // What is not even possible is told by the rule for that.
            let says = RuleSays::beyond(Subject::Reading(spot), value, &usual)?;
            possible.holds(value).then_some((spot, says))
        });
        if let Some((spot, says)) = beyond {
            let hints = Hint::list([Hint::ReadAgain(spot)]);
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
    fn unusual_is_asked_once_a_dimension() {
        let narrow = survey(&[
            (Spot::WidthLow, 50 * 16),
            (Spot::WidthMiddle, 50 * 16),
            (Spot::WidthHigh, 50 * 16),
        ]);
        assert_eq!(found(&narrow, "unusual-opening"), ["recheck width.low"]);
        assert_eq!(
            found(&survey(&[(Spot::HeightLeft, 123 * 16)]), "unusual-opening"),
            ["recheck height.left"]
        );
        assert_eq!(
            found(&survey(&[(Spot::HeaderLeft, 25 * 16)]), "unusual-opening"),
            ["recheck header.left"]
        );
        assert!(found(&survey(&[(Spot::WidthLow, 54 * 16)]), "unusual-opening").is_empty());
    }
}
