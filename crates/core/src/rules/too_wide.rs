//! An opening wider than the legal body width less two posts.

use super::{Context, Rule, exchanged_width_height};
use crate::bounds::{BODY_WIDTH, Limit, POST_LEAST};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

pub(super) const RULE: Rule = Rule { code: "too-wide", check };

/// The widest clear opening that can stand in a legal body. A post narrower than
/// the least, as found, leaves a little more; a wider one is not held against the
/// opening, since it may be the post that was misread.
pub(super) fn limit(survey: &Survey) -> Limit {
    let least = POST_LEAST.least.unwrap_or(Length::ZERO);
    let post = |spot| {
        let measured = survey.lengths(spot).filter(|length| *length > Length::ZERO).min();
        measured.map_or(least, |measured| measured.min(least))
    };
    let posts = post(Spot::PostLeft) + post(Spot::PostRight);
    Limit { most: BODY_WIDTH.most.map(|most| most - posts), ..BODY_WIDTH }
}

fn check(context: &Context<'_>) -> Vec<Finding> {
    if exchanged_width_height::explains(context) {
        return Vec::new();
    }
    let limit = limit(context.survey);
    let readings = context.survey.of(Dimension::Width);
    readings
        .filter_map(|(spot, value)| {
            let says = RuleSays::beyond(Subject::Reading(spot), value, &limit)?;
            let hints = Hint::list([Hint::HowToRead(Dimension::Width), Hint::ReadAgain(spot)]);
            Some(RULE.finds(Severity::Stop, vec![spot], says, hints))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::testing::{found, survey};

    /// 2.6 m less two posts of 2½ in is 2473 mm, 97.36 in.
    #[test]
    fn the_legal_body_less_two_posts_is_the_last_that_passes() {
        let most = limit(&survey(&[])).most.unwrap();
        assert_eq!(most, Length::from_mm(2473));
        assert!(found(&survey(&[(Spot::WidthLow, 97 * 16 + 5)]), "too-wide").is_empty());
        assert_eq!(
            found(&survey(&[(Spot::WidthLow, 97 * 16 + 6)]), "too-wide"),
            ["stop width.low"]
        );
    }

    #[test]
    fn a_narrow_post_as_found_leaves_room_and_a_wide_one_takes_none() {
        let with = |post| limit(&survey(&[(Spot::PostLeft, post)])).most.unwrap();
        assert_eq!(with(32), Length::from_mm(2473) + Length::from_sixteenths(8));
        assert_eq!(with(80), Length::from_mm(2473));
        // A post of nothing is a slip, told by another rule.
        assert_eq!(with(0), Length::from_mm(2473));
    }
}
