//! A bow deeper than the header allows: too little is left under it for the door.

use super::{Context, Rule};
use crate::finding::Finding;
use crate::length::Length;
use crate::profile::Limited;
use crate::say::{Hint, RuleSays, Subject};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "room-under-bow", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let (Some((header_spot, header)), Some((bow_spot, bow))) =
        (context.built(Dimension::Header), context.built(Dimension::Bow))
    else {
        return Vec::new();
    };
    let room = header - bow;
    if room <= Length::ZERO {
        return Vec::new(); // told by bow-fills-header
    }
    let Some(beyond) = context.profile.limit(Limited::UnderBow).beyond(room) else {
        return Vec::new();
    };
    let hints = Hint::list([Hint::ReadAgain(bow_spot), Hint::ReadAgain(header_spot)]);
    let severity = beyond.severity;
    let says = RuleSays::ruled(Subject::UnderBow, room, beyond);
    vec![RULE.finds(severity, vec![bow_spot, header_spot], says, hints)]
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    /// The header's tightest reading is 9 1/2 in, so a bow of 4 1/2 in leaves 5 in.
    #[test]
    fn less_than_five_inches_is_asked() {
        let with = |bow| found(&survey(&[(Spot::BowFirst, bow)]), "room-under-bow");
        assert!(with(4 * 16 + 8).is_empty());
        assert_eq!(with(4 * 16 + 9), ["recheck bow.first,header.left"]);
    }
}
