//! A tape reads more than nothing.

use super::{Context, Rule};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::say::{Hint, RuleSays};

pub(super) const RULE: Rule = Rule { code: "not-positive", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let readings = context.survey.readings().filter(|(_, value)| *value <= Length::ZERO);
    readings
        .map(|(spot, value)| {
            let hints = Hint::list([Hint::ReadAgain(spot)]);
            RULE.finds(Severity::Stop, vec![spot], RuleSays::NotPositive { spot, value }, hints)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn nothing_and_less_stop_and_a_sixteenth_does_not() {
        for spot in Spot::ALL {
            assert_eq!(found(&survey(&[(spot, 0)]), "not-positive").len(), 1);
            assert_eq!(found(&survey(&[(spot, -16)]), "not-positive").len(), 1);
            assert!(found(&survey(&[(spot, 1)]), "not-positive").is_empty());
        }
    }
}
