//! Height and header that no legal vehicle with a floor can have.

use super::{Context, Rule, exchanged_width_height};
use crate::bounds::ABOVE_FLOOR;
use crate::finding::{Finding, Severity};
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "too-tall", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    if exchanged_width_height::explains(context) {
        return Vec::new();
    }
    let largest = |dimension| context.survey.of(dimension).max_by_key(|(_, length)| *length);
    let Some((height_spot, height)) = largest(Dimension::Height) else { return Vec::new() };
    let header = largest(Dimension::Header);
    let sum = height + header.map_or(crate::Length::ZERO, |(_, header)| header);
    let Some(says) = RuleSays::beyond(Subject::HeightAndHeader, sum, &ABOVE_FLOOR) else {
        return Vec::new();
    };
    let mut spots = vec![height_spot];
    spots.extend(header.map(|(spot, _)| spot));
    // The one that is further from what is built is the suspect.
    if let Some((_, header)) = header
        && header > height
    {
        spots.reverse();
    }
    let hints = spots.iter().map(|spot| Hint::ReadAgain(*spot).into()).collect();
    vec![RULE.finds(Severity::Stop, spots, says, hints)]
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    /// 4.3 m less a floor of 0.5 m is 3.8 m, 149.6 in; the header takes 9 9/16 of it.
    #[test]
    fn what_stands_above_every_law_stops() {
        assert!(found(&survey(&[(Spot::HeightRight, 140 * 16)]), "too-tall").is_empty());
        assert_eq!(
            found(&survey(&[(Spot::HeightRight, 140 * 16 + 1)]), "too-tall"),
            ["stop height.right,header.center"]
        );
        assert_eq!(
            found(&survey(&[(Spot::HeaderLeft, 950 * 16)]), "too-tall"),
            ["stop header.left,height.center"]
        );
        // As far from what is built as each other: the height is said first.
        assert_eq!(
            found(&survey(&[(Spot::HeaderLeft, 101 * 16 + 9)]), "too-tall"),
            ["stop height.center,header.left"]
        );
    }
}
