//! A header that can only be a bow, beneath a bow that may be the header.

use super::{Context, Rule};
use crate::bounds::{BOW_USUAL, HEADER_USUAL};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::say::{Hint, RuleSays};
use crate::spot::{Dimension, Spot};

pub(super) const RULE: Rule = Rule { code: "exchanged-header-bow", check };

/// The smallest header depth and the largest bow, if all of both look exchanged.
fn exchanged(context: &Context<'_>) -> Option<[(Spot, Length); 2]> {
    let survey = context.survey;
    let header = survey.tightest(Dimension::Header)?;
    let bow = survey.tightest(Dimension::Bow)?;
    let headers_are_bows = survey.of(Dimension::Header).all(|(_, h)| BOW_USUAL.holds(h));
    let bows_are_headers =
        survey.of(Dimension::Bow).all(|(_, b)| b > header.1 && HEADER_USUAL.holds(b));
    let not_both_bows = survey.of(Dimension::Bow).any(|(_, b)| !BOW_USUAL.holds(b));
    (headers_are_bows && bows_are_headers && not_both_bows).then_some([header, bow])
}

/// Whether this rule tells what another would tell less well.
pub(super) fn explains(context: &Context<'_>) -> bool {
    exchanged(context).is_some()
}

fn check(context: &Context<'_>) -> Vec<Finding> {
    let Some([(header_spot, header), (bow_spot, bow)]) = exchanged(context) else {
        return Vec::new();
    };
    let says = RuleSays::Exchanged {
        first: Dimension::Header,
        first_value: header,
        second: Dimension::Bow,
        second_value: bow,
    };
    let put_back = Hint::PutBack {
        first: Dimension::Header,
        first_value: bow,
        second: Dimension::Bow,
        second_value: header,
    };
    let spots = vec![header_spot, bow_spot];
    vec![RULE.finds(Severity::Stop, spots, says, Hint::list([put_back]))]
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn a_header_of_an_inch_under_a_bow_of_nine() {
        let s = survey(&[
            (Spot::HeaderLeft, 20),
            (Spot::HeaderCenter, 20),
            (Spot::HeaderRight, 20),
            (Spot::BowFirst, 9 * 16),
        ]);
        assert_eq!(found(&s, "exchanged-header-bow"), ["stop header.left,bow.first"]);
        for other in ["bow-fills-header", "unusual-bow", "no-such-opening"] {
            assert!(found(&s, other).is_empty(), "{other}");
        }
        let one = survey(&[(Spot::HeaderLeft, 20)]);
        assert!(found(&one, "exchanged-header-bow").is_empty());
    }

    #[test]
    fn bows_that_are_no_header_either_are_not_exchanged() {
        let headers = [Spot::HeaderLeft, Spot::HeaderCenter, Spot::HeaderRight].map(|at| (at, 20));
        let with = |bows: &[(Spot, i64)]| {
            found(&survey(&[&headers[..], bows].concat()), "exchanged-header-bow").len()
        };
        assert_eq!(with(&[(Spot::BowFirst, 9 * 16)]), 1);
        // Deeper than any header; and one of two that is as deep as the header itself.
        assert_eq!(with(&[(Spot::BowFirst, 30 * 16)]), 0);
        assert_eq!(with(&[(Spot::BowFirst, 9 * 16), (Spot::BowSecond, 20)]), 0);
    }
}
