//! What the judge has to say, as findings.

use super::Judgement;
use crate::finding::{Finding, Severity};
use crate::say::{JudgeSays, Message};

/// The rule's name in files and links.
const RULE: &str = "slip";

/// The findings of a judgement: one, if there is an alarm.
#[must_use]
pub fn findings(judgement: &Judgement) -> Vec<Finding> {
    if !judgement.alarm {
        return Vec::new();
    }
    let Some(likely) = judgement.likely.first() else { return Vec::new() };
    let message = JudgeSays::Doubtful {
        spots: likely.spots.clone(),
        value: likely.read,
        slip: likely.value.map(|_| likely.slip),
        alone: judgement.is_unchecked(likely.spot, likely.index),
    };
    let mut hints: Vec<Message> = Vec::new();
    if let Some(meant) = likely.value {
        hints.push(JudgeSays::DidYouMean { spot: likely.spot, meant }.into());
    }
    hints.push(JudgeSays::ReadAgain { spots: likely.spots.clone() }.into());
    let mut spots = likely.spots.clone();
    // The runner-up, where it is nearly as likely.
    if let Some(second) = judgement.likely.get(1)
        && second.posterior > 0.3 * likely.posterior
    {
        for spot in &second.spots {
            if !spots.contains(spot) {
                spots.push(*spot);
            }
        }
        // Not the same advice twice: the runner-up may be another slip at the same place.
        if likely.value.is_none() && second.spot != likely.spot {
            hints.push(JudgeSays::OrReadAgain { spot: second.spot }.into());
        }
    }
    vec![Finding { severity: Severity::Recheck, rule: RULE, spots, message: message.into(), hints }]
}
