//! Readings of one dimension that differ by more than a frame explains.

use super::{Context, Rule};
use crate::bounds::SPREAD_POSSIBLE;
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::profile::{End, Limited};
use crate::say::{Because, Hint, Message, RuleSays};
use crate::short::sort;
use crate::spot::{Dimension, Spot};

pub(super) const RULE: Rule = Rule { code: "spread", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    Dimension::ALL.into_iter().filter_map(|dimension| one(context, dimension)).collect()
}

fn one(context: &Context<'_>, dimension: Dimension) -> Option<Finding> {
    let mut readings: Vec<(Spot, Length)> = context.survey.of(dimension).collect();
    sort(&mut readings, |a, b| a.1 < b.1);
    let (_, least) = *readings.first()?;
    let (_, most) = *readings.last()?;
    let usual = if dimension == Dimension::Bow { Limited::BowSpread } else { Limited::Spread };
    let usual = context.profile.limit(usual);
    let (severity, bound, because) = match most - least {
        spread if !SPREAD_POSSIBLE.holds(spread) => {
            (Severity::Stop, SPREAD_POSSIBLE.most?, Because::Known(SPREAD_POSSIBLE.reason))
        }
        spread if !usual.holds(spread) => {
            (usual.severity(End::Most), usual.most()?, usual.because(End::Most))
        }
        _ => return None,
    };
    let spots = suspects(&readings);
    let says = RuleSays::Spread { dimension, least, most, bound, because };
    let mut hints: Vec<Message> =
        spots.first().map(|spot| Hint::ReadAgain(*spot).into()).into_iter().collect();
    if severity == Severity::Stop {
        hints.push(Hint::Straighten.into());
    }
    Some(RULE.finds(severity, spots, says, hints))
}

/// The spots, the one furthest from the middle reading first. `readings` is sorted.
fn suspects(readings: &[(Spot, Length)]) -> Vec<Spot> {
    // Of two readings neither is nearer the middle; the file's order decides.
    let middle = |skip: usize| readings.get(skip / 2).map_or(Length::ZERO, |r| r.1);
    let n = readings.len();
    let center = middle(n.saturating_sub(1)) + middle(n);
    let mut by_distance = readings.to_vec();
    let distance = |length: Length| (length.times(2) - center).abs();
    sort(&mut by_distance, |a, b| (distance(b.1), a.0) < (distance(a.1), b.0));
    let mut spots: Vec<Spot> = by_distance.into_iter().map(|(spot, _)| spot).collect();
    let mut seen = Vec::new();
    spots.retain(|spot| {
        let new = !seen.contains(spot);
        seen.push(*spot);
        new
    });
    spots
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::profile::Profile;
    use crate::rules::testing::{check_all, found, survey};
    use crate::say::{Hint, Message};

    #[test]
    fn the_odd_one_is_the_suspect() {
        assert!(found(&survey(&[]), "spread").is_empty());
        assert_eq!(
            found(&survey(&[(Spot::WidthHigh, 93 * 16 + 14)]), "spread"),
            ["recheck width.high,width.middle,width.low"]
        );
        assert_eq!(
            found(&survey(&[(Spot::HeightLeft, 91 * 16 + 8)]), "spread"),
            ["stop height.left,height.center,height.right"]
        );
    }

    #[test]
    fn a_spread_of_exactly_the_limit_is_not_questioned() {
        let with = |high| found(&survey(&[(Spot::WidthHigh, high)]), "spread");
        assert!(with(92 * 16 + 3 + 24).is_empty());
        assert_eq!(with(92 * 16 + 3 + 25).len(), 1);
        let spots = "width.high,width.middle,width.low";
        assert_eq!(with(92 * 16 + 3 + 48), [["recheck ", spots].concat()]);
        assert_eq!(with(92 * 16 + 3 + 49), [["stop ", spots].concat()]);
    }

    #[test]
    fn only_a_bent_frame_is_to_be_straightened() {
        let straighten = |high| {
            let found = check_all(&survey(&[(Spot::WidthHigh, high)]), &Profile::default());
            let spread = found.iter().find(|finding| finding.rule == "spread").unwrap();
            spread.hints.contains(&Message::Hint(Hint::Straighten))
        };
        assert!(!straighten(92 * 16 + 3 + 25));
        assert!(straighten(92 * 16 + 3 + 49));
    }
}
