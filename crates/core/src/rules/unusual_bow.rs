//! A roof bow outside the depths bows are made in.

use super::{Context, Rule, exchanged_header_bow};
use crate::finding::Finding;
use crate::length::Length;
use crate::profile::Limited;
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "unusual-bow", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    if exchanged_header_bow::explains(context) {
        return Vec::new();
    }
    let limit = context.profile.limit(Limited::Bow);
    let readings = context.survey.of(Dimension::Bow);
    readings
        .filter(|(_, value)| *value > Length::ZERO && !limit.about_holds(*value))
        .filter_map(|(spot, value)| {
            let beyond = limit.beyond(value)?;
            let severity = beyond.severity;
            let says = RuleSays::ruled(Subject::Reading(spot), value, beyond);
            let hints = Hint::list([Hint::HowToRead(Dimension::Bow), Hint::ReadAgain(spot)]);
            Some(RULE.finds(severity, vec![spot], says, hints))
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn three_quarters_to_two_inches_is_usual_give_or_take_an_eighth() {
        let with = |bow| found(&survey(&[(Spot::BowSecond, bow)]), "unusual-bow");
        assert!(with(10).is_empty() && with(34).is_empty());
        assert_eq!(with(9), ["recheck bow.second"]);
        assert_eq!(with(35), ["recheck bow.second"]);
    }

    #[test]
    fn a_bow_of_nothing_is_told_elsewhere() {
        assert!(found(&survey(&[(Spot::BowFirst, 0)]), "unusual-bow").is_empty());
    }
}
