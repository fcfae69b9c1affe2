//! Readings at the same marked spot that differ by more than a tape explains.

use super::{Context, Rule};
use crate::finding::Finding;
use crate::profile::{End, Limited};
use crate::say::{Hint, RuleSays};
use crate::spot::Spot;

pub(super) const RULE: Rule = Rule { code: "repeats", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    Spot::ALL.into_iter().filter_map(|spot| one(context, spot)).collect()
}

fn one(context: &Context<'_>, spot: Spot) -> Option<Finding> {
    let least = context.survey.lengths(spot).min()?;
    let most = context.survey.lengths(spot).max()?;
    let limit = context.profile.limit(Limited::Repeat);
    let bound = limit.most()?;
    let apart = most - least;
    // Told once: further apart than that, an ordered dimension is told by `spread`.
    let told = spot.dimension().is_some() && !context.profile.limit(Limited::Spread).holds(apart);
    if apart <= bound || told {
        return None;
    }
    let says = RuleSays::Repeats { spot, least, most, bound, because: limit.because(End::Most) };
    let severity = limit.severity(End::Most);
    Some(RULE.finds(severity, vec![spot], says, Hint::list([Hint::ReadAgain(spot)])))
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, put, survey};

    #[test]
    fn half_an_inch_apart_is_the_last_that_passes() {
        let with = |second| {
            let mut s = survey(&[(Spot::LoopSillToRoof, 1776)]);
            put(&mut s, Spot::LoopSillToRoof, second);
            found(&s, "repeats")
        };
        assert!(with(1776 + 8).is_empty() && with(1776 - 8).is_empty());
        assert_eq!(with(1776 + 9), ["recheck loop.sill_to_roof"]);
    }

    #[test]
    fn what_is_told_by_the_spread_is_told_once() {
        let with = |spot, second| {
            let mut s = survey(&[]);
            put(&mut s, spot, second);
            (found(&s, "repeats").len(), found(&s, "spread").len())
        };
        // 9/16 in apart, then 1 9/16 in, which is more than a frame's usual spread.
        assert_eq!(with(Spot::WidthMiddle, 92 * 16 + 3 + 9), (1, 0));
        assert_eq!(with(Spot::WidthMiddle, 92 * 16 + 3 + 25), (0, 1));
        // A post is no ordered dimension and has no spread.
        assert_eq!(with(Spot::PostLeft, 48 + 25), (1, 0));
    }
}
