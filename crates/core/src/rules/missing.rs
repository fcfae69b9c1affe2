//! All four dimensions are needed; a door cannot be cut to three.

use super::{Context, Rule};
use crate::finding::{Finding, Severity};
use crate::say::{Hint, RuleSays};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "missing", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let absent = |dimension: &Dimension| {
        let typed = dimension.spots().into_iter().flat_map(|spot| context.survey.entries(spot));
        typed.filter(|entry| !entry.struck && !entry.is_blank()).count() == 0
    };
    Dimension::ALL
        .into_iter()
        .filter(absent)
        .map(|dimension| {
            let hints = Hint::list([Hint::Read(dimension)]);
            RULE.finds(
                Severity::Stop,
                dimension.spots().into(),
                RuleSays::Missing(dimension),
                hints,
            )
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use crate::rules::testing::{found, survey};
    use crate::{Dimension, Survey, Unit};

    #[test]
    fn each_of_the_four_is_missed_by_itself() {
        assert_eq!(found(&Survey::new(Unit::Inch), "missing").len(), 4);
        for dimension in Dimension::ALL {
            let mut s = survey(&[]);
            assert!(found(&s, "missing").is_empty());
            for spot in dimension.spots() {
                s.entries_mut(spot).clear();
            }
            let [a, b, c] = dimension.spots().map(|spot| spot.key());
            assert_eq!(found(&s, "missing"), [format!("stop {a},{b},{c}")]);
        }
    }

    #[test]
    fn struck_and_blank_is_nothing_and_unreadable_is_something() {
        let mut s = survey(&[]);
        for spot in Dimension::Bow.spots() {
            s.entries_mut(spot).clear();
        }
        s.add(crate::Spot::BowFirst, "1 1/4");
        s.add(crate::Spot::BowSecond, " ");
        assert!(found(&s, "missing").is_empty());
        s.entries_mut(crate::Spot::BowFirst)[0].struck = true;
        assert_eq!(found(&s, "missing").len(), 1);
        s.add(crate::Spot::BowThird, "deep");
        assert!(found(&s, "missing").is_empty(), "it is told as unreadable");
    }
}
