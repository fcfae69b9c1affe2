//! A post wider than the legal body leaves it beside the opening: what reads 15 may be 1.5, and
//! that post would be built out.

use super::{Context, Rule, too_wide};
use crate::bounds::{BODY_WIDTH, Limit, POST_LEAST};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::{Dimension, Spot};

pub(super) const RULE: Rule = Rule { code: "wide-post", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let survey = context.survey;
    // Another rule tells of an opening that is no opening, and leaves nothing to hold a post against.
    let possible = too_wide::limit(survey);
    let width = survey.tightest(Dimension::Width).map(|(_, width)| width);
    let Some((most, width)) = BODY_WIDTH.most.zip(width.filter(|width| possible.holds(*width)))
    else {
        return Vec::new();
    };
    let least = POST_LEAST.least.unwrap_or(Length::ZERO);
    let beside = most - width - least;
    let limit = Limit { most: Some(beside.floor_to(survey.unit.step())), ..BODY_WIDTH };
    [Spot::PostLeft, Spot::PostRight]
        .into_iter()
        .filter_map(|spot| {
            let widest = survey.lengths(spot).max()?;
            // A post that is just the least has room in any body.
            let says = RuleSays::beyond(Subject::Reading(spot), widest, &limit)
                .filter(|_| widest > least)?;
            let hints = Hint::list([Hint::ReadAgain(spot)]);
            Some(RULE.finds(Severity::Recheck, vec![spot], says, hints))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::Unit;
    use crate::rules::testing::{found, survey};
    use crate::survey::Survey;

    /// 2.6 m less 92 3/16 in and a post of 2 1/2 in leaves 7.674 in, on the tape 7 10/16.
    #[test]
    fn what_the_body_leaves_is_the_widest() {
        let with = |post| survey(&[(Spot::PostLeft, post)]);
        assert!(found(&with(7 * 16 + 10), "wide-post").is_empty());
        assert_eq!(found(&with(7 * 16 + 11), "wide-post"), ["recheck post.left"]);
        assert!(found(&with(7 * 16 + 11), "narrow-post").is_empty());
    }

    /// Where the opening leaves less than two posts of the least, that post is no slip.
    #[test]
    fn a_post_of_the_least_is_never_asked_about() {
        let with = |width, left| {
            let widths = [Spot::WidthLow, Spot::WidthMiddle, Spot::WidthHigh].map(|at| (at, width));
            let posts = [(Spot::PostLeft, left), (Spot::PostRight, 40)];
            found(&survey(&[&widths[..], &posts[..]].concat()), "wide-post")
        };
        assert!(with(97 * 16 + 5, 40).is_empty());
        assert_eq!(with(97 * 16 + 5, 41), ["recheck post.left"]);
        // Beside a narrow post the opening may be wider, and leaves the other less than the least.
        assert!(with(98 * 16, 24).is_empty());
    }

    #[test]
    fn a_lost_point_is_noticed_on_either_side() {
        let s = survey(&[(Spot::PostLeft, 15 * 16), (Spot::PostRight, 30 * 16)]);
        assert_eq!(found(&s, "wide-post"), ["recheck post.left", "recheck post.right"]);
    }

    #[test]
    fn without_a_width_nothing_is_held_against_a_post() {
        let mut s = Survey::new(Unit::Inch);
        s.set(Spot::PostLeft, 0, "30");
        assert!(found(&s, "wide-post").is_empty());
        // Nor beside a width that cannot be.
        s.set(Spot::WidthMiddle, 0, "923");
        assert!(found(&s, "wide-post").is_empty());
    }
}
