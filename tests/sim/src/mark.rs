//! Marking: the product judges invented surveys, and the truth is held beside it.
//!
//! The only part of this crate that knows the product.

use hangtrue_core::check::{Verdict, check};
use hangtrue_core::judge::{Judgement, judge};
use hangtrue_core::profile::Profile;
use hangtrue_core::spot::Spot;
use hangtrue_core::survey::{Entry, Survey};
use hangtrue_core::{Length, Unit};

use crate::reader::Written;
use crate::survey::{Simulated, Taken};

/// The survey as the product takes it.
#[must_use]
pub fn survey(simulated: &Simulated) -> Survey {
    let unit = if simulated.metric { Unit::Millimetre } else { Unit::Inch };
    let mut survey = Survey::new(unit);
    survey.prepared = true;
    for taken in &simulated.readings {
        let Some(spot) = Spot::from_key(taken.spot) else { continue };
        let read = Ok(length(&taken.written));
        survey.push(spot, Entry { text: taken.written.text(), read, struck: false });
    }
    survey
}

fn length(written: &Written) -> Length {
    match written {
        Written::Inch(whole, part) => Length::from_sixteenths(whole * 16 + part),
        Written::Metric(mm) => Length::from_mm(*mm),
        Written::Loose(_, inches) => Length::from_mm_f64(inches * 25.4),
    }
}

/// What the product said of one survey, and how far it was right.
#[derive(Clone, Debug)]
pub struct Marked {
    /// The verdict is recheck or stop: by the rules, or by the judge.
    pub alarm: bool,
    /// By the rules alone.
    pub by_rules: bool,
    /// The rule that alarms first.
    pub rule: Option<&'static str>,
    /// By the judge alone.
    pub by_judge: bool,
    /// The reading named first is one that slipped.
    pub named: bool,
    /// A value was proposed, and it was what the tape had shown.
    pub proposed: Option<bool>,
    /// Posterior of damage.
    pub wrong: f64,
    /// The largest spread of readings of one dimension, mm.
    pub spread: f64,
    /// The largest |w|.
    pub w: f64,
    /// How many further readings are asked for.
    pub asked: usize,
}

/// Judges `simulated` and marks the answer.
#[must_use]
pub fn mark(simulated: &Simulated) -> Marked {
    let survey = survey(simulated);
    let profile = Profile::default();
    let judgement = judge(&survey, &profile);
    let report = check(&survey, &profile);
    let rule = report
        .findings
        .iter()
        .find(|f| f.rule != "slip" && Verdict::from(f.severity) != Verdict::Clear)
        .map(|finding| finding.rule);
    let by_rules = rule.is_some();
    let named = named(simulated, &judgement, || {
        report.findings.first().and_then(|finding| finding.spots.first().copied())
    });
    Marked {
        alarm: by_rules || judgement.alarm,
        by_rules,
        rule,
        by_judge: judgement.alarm,
        named,
        proposed: proposed(simulated, &judgement),
        wrong: judgement.wrong,
        spread: spread(simulated),
        w: judgement.adjusted.iter().map(|a| a.w.abs()).fold(0.0, f64::max),
        asked: judgement.next.len(),
    }
}

fn slipped_at(simulated: &Simulated, spot: Spot) -> bool {
    let key = spot.key();
    simulated.readings.iter().any(|taken| taken.spot == key && taken.slipped())
}

fn named(simulated: &Simulated, judgement: &Judgement, by_rule: impl Fn() -> Option<Spot>) -> bool {
    let suspect = match judgement.likely.first() {
        Some(likely) if judgement.alarm => Some(likely.spot),
        _ => by_rule(),
    };
    suspect.is_some_and(|spot| slipped_at(simulated, spot))
}

fn proposed(simulated: &Simulated, judgement: &Judgement) -> Option<bool> {
    let likely = judgement.likely.first().filter(|_| judgement.alarm)?;
    let value = likely.value?;
    let key = likely.spot.key();
    let of: Vec<&Taken> = simulated.readings.iter().filter(|taken| taken.spot == key).collect();
    Some(of.get(likely.index).is_some_and(|taken| length(&taken.meant) == value))
}

/// The largest spread of the readings of one ordered dimension, mm.
fn spread(simulated: &Simulated) -> f64 {
    let of = |group: &&str| {
        let mm: Vec<f64> = simulated
            .readings
            .iter()
            .filter(|taken| taken.group() == *group)
            .map(|taken| taken.written.mm())
            .collect();
        let most = mm.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let least = mm.iter().copied().fold(f64::INFINITY, f64::min);
        (most - least).max(0.0)
    };
    crate::spots::ORDERED.iter().map(of).filter(|s| s.is_finite()).fold(0.0, f64::max)
}
