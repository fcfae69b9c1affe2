//! A post under the least width is built out, and the opening narrows.

use super::{Context, Rule};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::profile::{End, Limited};
use crate::say::{Hint, RuleSays};
use crate::spot::Spot;

pub(super) const RULE: Rule = Rule { code: "narrow-post", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let out = context.preparation;
    let limit = context.profile.limit(Limited::Post);
    let mut found = Vec::new();
    for (spot, by) in [(Spot::PostLeft, out.left_out), (Spot::PostRight, out.right_out)] {
        let (Some(value), Some(least)) = (context.survey.lengths(spot).min(), limit.least()) else {
            continue;
        };
        if value >= least || value <= Length::ZERO {
            continue;
        }
        let (severity, hint) = if context.survey.prepared {
            (limit.severity(End::Least), Hint::ReadAgain(spot))
        } else {
            (Severity::Note, Hint::BuildOut { spot, by })
        };
        let because = limit.because(End::Least);
        let says = RuleSays::NarrowPost { spot, value, least, because };
        found.push(RULE.finds(severity, vec![spot], says, Hint::list([hint])));
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn two_and_a_half_inches_is_enough() {
        let with = |post| survey(&[(Spot::PostRight, post)]);
        assert!(found(&with(40), "narrow-post").is_empty());
        assert_eq!(found(&with(39), "narrow-post"), ["recheck post.right"]);
        let mut as_found = with(39);
        as_found.prepared = false;
        assert_eq!(found(&as_found, "narrow-post"), ["note post.right"]);
    }
}
