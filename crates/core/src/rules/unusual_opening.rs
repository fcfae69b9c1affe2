//! Openings and headers that few truck bodies have: right, perhaps, but worth a second look.

use super::{Context, Rule};
use crate::bounds::{HEADER_POSSIBLE, HEIGHT_POSSIBLE, WIDTH_POSSIBLE};
use crate::finding::Finding;
use crate::length::Length;
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
        let read = context.survey.of(dimension).find_map(|(spot, value)| {
            // What is not even possible is told by the rule for that.
            let beyond = usual.beyond(value)?;
            // A header under the least is told by shallow-header.
            let told = dimension == Dimension::Header && !beyond.above;
            (possible.holds(value) && !told).then_some((
                Subject::Reading(spot),
                spot,
                value,
                beyond,
            ))
        });
        // What building makes of a usual opening is what is ordered.
        let built = || {
            let number = context.numbers.get(dimension)?;
            let changed = context.preparation.change(dimension) != Length::ZERO;
            let was_usual = usual.holds(number.as_found);
            let beyond = usual.beyond(number.ordered).filter(|_| changed && was_usual)?;
            Some((Subject::Built(dimension), number.spot, number.ordered, beyond))
        };
        if let Some((subject, spot, value, beyond)) = read.or_else(built) {
            let severity = beyond.severity;
            let says = RuleSays::ruled(subject, value, beyond);
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

    #[test]
    fn what_building_leaves_is_held_to_the_same() {
        let with = |height: i64, header: i64, prepared| {
            let heights = [Spot::HeightLeft, Spot::HeightCenter, Spot::HeightRight];
            let headers = [Spot::HeaderLeft, Spot::HeaderCenter, Spot::HeaderRight];
            let heights = heights.map(|spot| (spot, height * 16));
            let headers = headers.map(|spot| (spot, header * 16));
            let mut s = survey(&[heights, headers].concat());
            s.prepared = prepared;
            found(&s, "unusual-opening")
        };
        // 55 in less the 2 in that the header is built down is 53 in.
        assert_eq!(with(55, 5, false), ["recheck height.left"]);
        assert!(with(56, 5, false).is_empty());
        assert!(with(55, 5, true).is_empty());
        assert!(with(55, 7, false).is_empty());
        // What no opening can be is not told twice for being built.
        assert!(with(30, 5, false).is_empty());
    }
}
