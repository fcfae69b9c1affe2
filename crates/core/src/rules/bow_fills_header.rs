//! A header that is not deeper than the roof bow above it.

use super::{Context, Rule, exchanged_header_bow};
use crate::finding::{Finding, Severity};
use crate::frame::Preparation;
use crate::profile::Profile;
use crate::say::{Hint, RuleSays};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "bow-fills-header", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let (Some((header_spot, header)), Some((bow_spot, bow))) =
        (context.built(Dimension::Header), context.built(Dimension::Bow))
    else {
        return Vec::new();
    };
    // Whatever a profile lets be built, the frame must pass as our own limits build it.
    let ours = Preparation::of(context.survey, &Profile::default());
    let unruled =
        header - context.preparation.change(Dimension::Header) + ours.change(Dimension::Header);
    let header = header.min(unruled);
    if header > bow || exchanged_header_bow::explains(context) {
        return Vec::new();
    }
    let hints = Hint::list([
        Hint::HowToRead(Dimension::Bow),
        Hint::ReadAgain(bow_spot),
        Hint::ReadAgain(header_spot),
    ]);
    let says = RuleSays::BowFillsHeader { header, bow };
    vec![RULE.finds(Severity::Stop, vec![bow_spot, header_spot], says, hints)]
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn as_deep_is_not_deeper() {
        let with = |bow| found(&survey(&[(Spot::BowFirst, bow)]), "bow-fills-header");
        assert_eq!(with(9 * 16 + 8), ["stop bow.first,header.left"]);
        assert!(with(9 * 16 + 7).is_empty());
    }

    #[test]
    fn a_header_that_is_to_be_built_counts_as_it_will_be() {
        let shallow = [Spot::HeaderLeft, Spot::HeaderCenter, Spot::HeaderRight].map(|at| (at, 80));
        for bow in [20, 88] {
            let mut survey = survey(&[&shallow[..], &[(Spot::BowFirst, bow)]].concat());
            survey.prepared = false;
            assert!(found(&survey, "bow-fills-header").is_empty(), "{bow}");
        }
    }
}
