//! A closing reading without which a dealer makes no door.

use super::{Context, Rule};
use crate::finding::{Finding, Severity};
use crate::say::{Hint, RuleSays};

pub(super) const RULE: Rule = Rule { code: "closing", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let mut found = Vec::new();
    for &spot in &context.profile.closing {
        if context.survey.lengths(spot).next().is_none() {
            let says = RuleSays::Closing { spot, dealer: context.profile.name.clone() };
            let hints = Hint::list([Hint::ReadSpot(spot)]);
            found.push(RULE.finds(Severity::Stop, vec![spot], says, hints));
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::profile::Profile;
    use crate::rules::testing::{found, found_by, put, survey};

    #[test]
    fn only_a_dealer_forces_it_and_a_reading_meets_it() {
        let mut s = survey(&[]);
        assert!(found(&s, "closing").is_empty());
        let profile = Profile { closing: vec![Spot::LoopSillToBow], ..Profile::default() };
        assert_eq!(found_by(&s, &profile, "closing"), ["stop loop.sill_to_bow"]);
        put(&mut s, Spot::LoopSillToBow, 109 * 16 + 12);
        assert!(found_by(&s, &profile, "closing").is_empty());
        s.entries_mut(Spot::LoopSillToBow)[0].struck = true;
        assert_eq!(found_by(&s, &profile, "closing").len(), 1);
    }
}
