//! What the rules' tests share: a survey that nothing is wrong with, to be changed.

use super::Context;
use crate::frame::Preparation;
use crate::length::{Length, Unit};
use crate::order::Numbers;
use crate::profile::Profile;
use crate::spot::Spot;
use crate::survey::{Entry, Survey};

/// A prepared frame of an invented truck, 92 3/16 × 101 1/2 × 9 1/2 × 1 1/4 in,
/// with each of `changes` (spot, sixteenths) in place of what was there.
pub(crate) fn survey(changes: &[(Spot, i64)]) -> Survey {
    let mut survey = Survey::new(Unit::Inch);
    survey.prepared = true;
    let usual = [
        (Spot::WidthLow, 92 * 16 + 4),
        (Spot::WidthMiddle, 92 * 16 + 3),
        (Spot::WidthHigh, 92 * 16 + 4),
        (Spot::HeightLeft, 101 * 16 + 8),
        (Spot::HeightCenter, 101 * 16 + 9),
        (Spot::HeightRight, 101 * 16 + 8),
        (Spot::HeaderLeft, 9 * 16 + 8),
        (Spot::HeaderCenter, 9 * 16 + 9),
        (Spot::HeaderRight, 9 * 16 + 8),
        (Spot::BowFirst, 20),
        (Spot::PostLeft, 48),
        (Spot::PostRight, 48),
    ];
    for (spot, sixteenths) in usual {
        put(&mut survey, spot, sixteenths);
    }
    for &(spot, sixteenths) in changes {
        survey.entries_mut(spot).clear();
        put(&mut survey, spot, sixteenths);
    }
    survey
}

/// One more reading at `spot`.
pub(crate) fn put(survey: &mut Survey, spot: Spot, sixteenths: i64) {
    let length = Length::from_sixteenths(sixteenths);
    survey.push(spot, Entry { text: length.text(Unit::Inch), read: Ok(length), struck: false });
}

/// Everything the rules find under `profile`.
pub(super) fn check_all(survey: &Survey, profile: &Profile) -> Vec<crate::Finding> {
    let preparation = Preparation::of(survey, profile);
    let numbers = Numbers::of(survey, profile, &preparation);
    super::run(&Context { survey, profile, preparation: &preparation, numbers: &numbers })
}

/// What the rule of `code` finds, as `severity suspect,other,…`.
pub(crate) fn found(survey: &Survey, code: &str) -> Vec<String> {
    found_by(survey, &Profile::default(), code)
}

/// The same under `profile`.
pub(crate) fn found_by(survey: &Survey, profile: &Profile, code: &str) -> Vec<String> {
    check_all(survey, profile)
        .iter()
        .filter(|finding| finding.rule == code)
        .map(|finding| {
            let spots: Vec<String> = finding.spots.iter().map(|spot| spot.key()).collect();
            format!("{} {}", finding.severity.key(), spots.join(","))
        })
        .collect()
}
