//! Marking: the product judges invented surveys, and the truth is held beside it.
//!
//! With [`crate::walk`] the only part of this crate that knows the product.

use hangtrue_core::Unit;
use hangtrue_core::check::{Report, Verdict, check};
use hangtrue_core::judge::Judgement;
use hangtrue_core::length::{Length, read};
use hangtrue_core::profile::Profile;
use hangtrue_core::spot::Spot;
use hangtrue_core::survey::Survey;

use crate::baseline::{Measured, measure};
use crate::reader::Written;
use crate::survey::{Simulated, Taken};
use crate::world::World;

/// The survey as a person types it.
#[must_use]
pub fn survey(simulated: &Simulated) -> Survey {
    typed(unit(simulated), simulated.readings.iter().map(|taken| (taken, false)))
}

/// Readings as a person types them, each with whether it was struck.
pub(crate) fn typed<'a>(unit: Unit, readings: impl Iterator<Item = (&'a Taken, bool)>) -> Survey {
    let mut survey = Survey::new(unit);
    survey.prepared = true;
    for (taken, struck) in readings {
        let Some(spot) = Spot::from_key(taken.spot) else { continue };
        survey.add(spot, &taken.written.text());
        if let Some(entry) = survey.entries_mut(spot).last_mut() {
            entry.struck = struck;
        }
    }
    survey
}

/// The unit of the tape.
pub(crate) const fn unit(simulated: &Simulated) -> Unit {
    if simulated.metric { Unit::Millimetre } else { Unit::Inch }
}

fn length(written: &Written, unit: Unit) -> Option<Length> {
    read(&written.text(), unit).ok()
}

/// What the product said of one survey, and how far it was right.
#[derive(Clone, Copy, Debug)]
pub struct Marked {
    /// The verdict is recheck or stop: by the rules, or by the judge.
    pub alarm: bool,
    /// By the rules alone.
    pub by_rules: bool,
    /// By the judge alone.
    pub by_judge: bool,
    /// The rule that alarms first.
    pub rule: Option<&'static str>,
    /// The reading that the first finding names first is one that slipped.
    pub named: bool,
    /// The reading that the judge thinks likeliest is one that slipped.
    pub suspected: bool,
    /// A value was proposed, and it was what the tape had shown.
    pub proposed: Option<bool>,
    /// Posterior of damage.
    pub wrong: f64,
    /// What the baselines measure on the same survey.
    pub baseline: Measured,
    /// By how much the worst ordered number is off, mm.
    pub damage: f64,
    /// The slip, by its place in [`crate::SLIPS`].
    pub slip: Option<usize>,
}

/// Judges `simulated` and marks the answer; the baselines know the noise of `assumed`.
#[must_use]
pub fn mark(simulated: &Simulated, assumed: &World) -> Marked {
    let report = check(&survey(simulated), &Profile::default());
    let rule = report
        .findings
        .iter()
        .find(|f| f.rule != "slip" && Verdict::from(f.severity) != Verdict::Clear)
        .map(|finding| finding.rule);
    Marked {
        alarm: report.verdict != Verdict::Clear,
        by_rules: rule.is_some(),
        by_judge: report.judgement.alarm,
        rule,
        named: named(simulated, &report),
        suspected: report.judgement.likely.first().is_some_and(|l| slipped(simulated, l.spot)),
        proposed: proposed(simulated, &report.judgement),
        wrong: report.judgement.wrong,
        baseline: measure(simulated, assumed),
        damage: simulated.damage(),
        slip: simulated.slip,
    }
}

fn named(simulated: &Simulated, report: &Report) -> bool {
    let suspect = report.findings.first().and_then(|finding| finding.spots.first());
    suspect.is_some_and(|spot| slipped(simulated, *spot))
}

fn slipped(simulated: &Simulated, spot: Spot) -> bool {
    let key = spot.key();
    simulated.readings.iter().any(|taken| taken.spot == key && taken.slipped())
}

fn proposed(simulated: &Simulated, judgement: &Judgement) -> Option<bool> {
    let likely = judgement.likely.first().filter(|_| judgement.alarm)?;
    let value = likely.value?;
    let key = likely.spot.key();
    let of: Vec<&Taken> = simulated.readings.iter().filter(|taken| taken.spot == key).collect();
    let meant = of.get(likely.index).and_then(|taken| length(&taken.meant, unit(simulated)));
    Some(meant == Some(value))
}
