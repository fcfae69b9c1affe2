//! Openings and headers that few truck bodies have: right, perhaps, but worth a second look.

use super::{Context, Rule};
use crate::bounds::{HEADER_POSSIBLE, HEIGHT_POSSIBLE, WIDTH_POSSIBLE};
use crate::finding::Finding;
use crate::profile::Limited;
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "unusual-opening", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for (dimension, possible, usual) in [
        (Dimension::Width, WIDTH_POSSIBLE, Limited::Width),
        (Dimension::Height, HEIGHT_POSSIBLE, Limited::Height),
        (Dimension::Header, HEADER_POSSIBLE, Limited::Header),
    ] {
        let usual = context.profile.limit(usual);
        // One question a dimension: an unusual opening is unusual at all its places.
        let beyond = context.survey.of(dimension).find_map(|(spot, value)| {
            // What is not even possible is told by the rule for that.
            let beyond = usual.beyond(value)?;
            // A header under the least is told by shallow-header.
            let told = dimension == Dimension::Header && !beyond.above;
            (possible.holds(value) && !told).then_some((spot, value, beyond))
        });
        if let Some((spot, value, beyond)) = beyond {
            let severity = beyond.severity;
            let says = RuleSays::ruled(Subject::Reading(spot), value, beyond);
            let hints = Hint::list([Hint::ReadAgain(spot)]);
            found.push(RULE.finds(severity, vec![spot], says, hints));
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
