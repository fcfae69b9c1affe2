//! No profile can switch off what cannot be: every stop of the built-in rules stands
//! under any profile. Shown by an example for each rule that stops, and by any survey
//! under any profile.

use super::RULES;
use super::testing::{check_all, survey};
use crate::finding::Severity;
use crate::length::{Length, Unit};
use crate::profile::{Door, End, Limited, Profile, Ruling, Take, Words};
use crate::say::Because;
use crate::spot::Spot;
use crate::survey::{Entry, Survey};
use proptest::prelude::*;

/// Rule and places of everything that stops.
fn stops(survey: &Survey, profile: &Profile) -> Vec<(&'static str, Vec<Spot>)> {
    let mut found = check_all(survey, profile);
    found.retain(|finding| finding.severity == Severity::Stop);
    found.into_iter().map(|finding| (finding.rule, finding.spots)).collect()
}

fn ruling(what: Limited, end: End, bound: Length, stop: bool) -> Ruling {
    let because = Because::Dealer { name: "Anything goes".into(), reason: Words::plain("so") };
    Ruling { what, end, bound, because, stop }
}

/// As wide as a profile can be made.
fn anything_goes() -> Profile {
    let mut rulings = Vec::new();
    for what in Limited::ALL {
        rulings.push(ruling(what, End::Least, Length::from_nm(i64::MIN), false));
        rulings.push(ruling(what, End::Most, Length::from_nm(i64::MAX), false));
    }
    Profile { name: "Anything goes".into(), take: Take::Mean, rulings, ..Profile::default() }
}

/// A survey for each rule that can stop an order by itself.
fn impossible() -> Vec<(&'static str, Survey)> {
    let inches = |changes: &[(Spot, i64)]| {
        let changes: Vec<_> = changes.iter().map(|(spot, inches)| (*spot, inches * 16)).collect();
        survey(&changes)
    };
    let mut unreadable = survey(&[]);
    unreadable.add(Spot::WidthLow, "about so");
    let mut missing = survey(&[]);
    missing.entries_mut(Spot::BowFirst).clear();
    let all = |group: [Spot; 3], inches| group.map(|spot| (spot, inches));
    let widths = [Spot::WidthLow, Spot::WidthMiddle, Spot::WidthHigh];
    let heights = [Spot::HeightLeft, Spot::HeightCenter, Spot::HeightRight];
    let headers = [Spot::HeaderLeft, Spot::HeaderCenter, Spot::HeaderRight];
    vec![
        ("unreadable", unreadable),
        ("missing", missing),
        ("not-positive", inches(&[(Spot::PostLeft, 0)])),
        ("exchanged-width-height", inches(&[all(widths, 101), all(heights, 92)].concat())),
        ("exchanged-header-bow", inches(&[&all(headers, 1)[..], &[(Spot::BowFirst, 9)]].concat())),
        ("too-wide", inches(&all(widths, 98))),
        ("too-tall", inches(&all(heights, 145))),
        ("no-such-opening", inches(&all(widths, 9))),
        ("bow-fills-header", inches(&[(Spot::BowFirst, 10)])),
        ("spread", inches(&[(Spot::HeightLeft, 91)])),
    ]
}

#[test]
fn every_rule_that_stops_does_so_whatever_a_profile_allows() {
    let profile = anything_goes();
    for (rule, survey) in impossible() {
        assert!(RULES.iter().any(|known| known.code == rule), "{rule}");
        for profile in [&Profile::default(), &profile] {
            let found = stops(&survey, profile);
            assert!(found.iter().any(|(code, _)| *code == rule), "{rule}: {found:?}");
        }
    }
}

fn length() -> impl Strategy<Value = Length> {
    prop_oneof![
        (-10_i64..2600).prop_map(Length::from_sixteenths),
        (0_i64..300).prop_map(Length::from_sixteenths),
        any::<i64>().prop_map(Length::from_nm),
    ]
}

fn any_survey() -> impl Strategy<Value = Survey> {
    let spot = prop::sample::select(Spot::ALL.to_vec());
    let readings = prop::collection::vec((spot, length()), 0..16);
    (readings, any::<bool>(), any::<bool>()).prop_map(|(readings, from_usual, prepared)| {
        let mut s = if from_usual { survey(&[]) } else { Survey::new(Unit::Inch) };
        s.prepared = prepared;
        for (spot, length) in readings {
            if from_usual {
                s.entries_mut(spot).clear();
            }
            s.push(spot, Entry { text: "typed".into(), read: Ok(length), struck: false });
        }
        s
    })
}

fn any_profile() -> impl Strategy<Value = Profile> {
    let what = prop::sample::select(Limited::ALL.to_vec());
    let end = prop_oneof![Just(End::Least), Just(End::Most)];
    let rulings = prop::collection::vec((what, end, length(), any::<bool>()), 0..12);
    let door = (prop::option::of(length()), prop::option::of(length()));
    let take = prop_oneof![Just(Take::Tightest), Just(Take::Mean)];
    let step = prop::option::of(length());
    (rulings, door, take, step).prop_map(|(rulings, (header_least, post_least), take, step)| {
        let ends = rulings.into_iter().map(|(what, end, at, stop)| ruling(what, end, at, stop));
        Profile {
            name: "Any".into(),
            take,
            step,
            rulings: ends.collect(),
            doors: vec![Door { header_least, post_least, ..Door::default() }],
            ..Profile::default()
        }
    })
}

proptest! {
    #[test]
    fn no_profile_takes_a_stop_away(survey in any_survey(), profile in any_profile()) {
        let under = stops(&survey, &profile.chosen(&[]));
        for stop in stops(&survey, &Profile::default()) {
            prop_assert!(under.contains(&stop), "{stop:?} is gone; left: {under:?}");
        }
    }
}
