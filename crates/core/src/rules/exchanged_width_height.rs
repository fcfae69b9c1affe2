//! A width that can only be a height, beside a height that may be the width.

use super::{Context, Rule, too_wide};
use crate::bounds::{HEIGHT_USUAL, WIDTH_USUAL};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::say::{Hint, RuleSays};
use crate::spot::{Dimension, Spot};

pub(super) const RULE: Rule = Rule { code: "exchanged-width-height", check };

/// The smallest width and the smallest height, if all of both look exchanged.
fn exchanged(context: &Context<'_>) -> Option<[(Spot, Length); 2]> {
    let survey = context.survey;
    let width = survey.tightest(Dimension::Width)?;
    let height = survey.tightest(Dimension::Height)?;
    let limit = too_wide::limit(survey);
    let widths_are_heights =
        survey.of(Dimension::Width).all(|(_, w)| !limit.holds(w) && HEIGHT_USUAL.holds(w));
    let heights_are_widths =
        survey.of(Dimension::Height).all(|(_, h)| limit.holds(h) && WIDTH_USUAL.holds(h));
    (widths_are_heights && heights_are_widths).then_some([width, height])
}

/// Whether this rule tells what another would tell less well.
pub(super) fn explains(context: &Context<'_>) -> bool {
    exchanged(context).is_some()
}

fn check(context: &Context<'_>) -> Vec<Finding> {
    let Some([(width_spot, width), (height_spot, height)]) = exchanged(context) else {
        return Vec::new();
    };
    let says = RuleSays::Exchanged {
        first: Dimension::Width,
        first_value: width,
        second: Dimension::Height,
        second_value: height,
    };
    let put_back = Hint::PutBack {
        first: Dimension::Width,
        first_value: height,
        second: Dimension::Height,
        second_value: width,
    };
    let spots = vec![width_spot, height_spot];
    vec![RULE.finds(Severity::Stop, spots, says, Hint::list([put_back]))]
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn all_of_both_must_look_exchanged() {
        let mut changes = vec![
            (Spot::WidthLow, 101 * 16),
            (Spot::WidthMiddle, 101 * 16),
            (Spot::WidthHigh, 101 * 16),
            (Spot::HeightLeft, 92 * 16),
            (Spot::HeightCenter, 92 * 16),
            (Spot::HeightRight, 92 * 16),
        ];
        let s = survey(&changes);
        assert_eq!(found(&s, "exchanged-width-height"), ["stop width.low,height.left"]);
        assert!(found(&s, "too-wide").is_empty());
        changes.pop();
        let s = survey(&changes);
        assert!(found(&s, "exchanged-width-height").is_empty());
        assert_eq!(found(&s, "too-wide").len(), 3);
    }
}
