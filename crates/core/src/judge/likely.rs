//! From weighed guesses to a verdict: how likely damage is, and the best answers.

use super::evidence::{Fit, NOUGHT, Weighed, log_sum, same};
use super::pattern::{About, Pattern};
use super::reading::Reading;
use super::slips::SlipKind;
use super::{Likely, SURE};
use crate::length::Length;
use crate::short::sort;
use crate::spot::{Dimension, Spot};

/// How many answers are given.
const ANSWERS: usize = 5;

/// What Bayes' rule makes of the weighed guesses.
pub(super) struct Verdict {
    /// Log of everything, the clean survey included: what posteriors are shares of.
    pub(super) total: f64,
    /// Posterior probability that an ordered number is damaged.
    pub(super) wrong: f64,
    /// The best answers, the most pressing first.
    pub(super) likely: Vec<Likely>,
}

/// Log of everything, the clean survey included.
pub(super) fn log_total(fit: &Fit<'_>, weighed: &[Weighed]) -> f64 {
    let mut logs = vec![fit.clean()];
    logs.extend(weighed.iter().map(|w| w.log));
    log_sum(&logs)
}

/// Posterior of one guess.
pub(super) fn posterior(weighed: &Weighed, total: f64) -> f64 {
    let log = weighed.log - total;
    if log < NOUGHT { 0.0 } else { libm::exp(log) }
}

/// The guesses on one reading or one set of readings.
struct Answer {
    about: About,
    /// Posterior probability of all its guesses.
    posterior: f64,
    /// Of those that damage an ordered number.
    damage: f64,
    /// What was meant, a guess each.
    values: Vec<Meant>,
}

/// What a reading meant, and by which slip it was written otherwise.
struct Meant {
    /// The reading's place in the list.
    entry: usize,
    value: Length,
    slip: SlipKind,
    /// Posterior probability of just that.
    posterior: f64,
}

/// The same value of the same reading, whichever slip led there.
struct Sum {
    entry: usize,
    value: Length,
    /// The likeliest of the slips, and its share of the posterior.
    slip: SlipKind,
    most: f64,
    posterior: f64,
}

impl Verdict {
    pub(super) fn of(fit: &Fit<'_>, patterns: &[Pattern], weighed: &[Weighed]) -> Self {
        let total = log_total(fit, weighed);
        let mut wrong = 0.0;
        let mut answers: Vec<Answer> = Vec::new();
        for guess in weighed {
            let posterior = posterior(guess, total);
            wrong += posterior * guess.damage;
            let Some(pattern) = patterns.get(guess.pattern) else { continue };
            if posterior < 1e-6 || pattern.about == About::Frame {
                continue;
            }
            let known = answers.iter().position(|a| same(a.about, pattern.about, fit.readings));
            let at = known.unwrap_or(answers.len());
            if known.is_none() {
                let about = pattern.about;
                answers.push(Answer { about, posterior: 0.0, damage: 0.0, values: Vec::new() });
            }
            let Some(answer) = answers.get_mut(at) else { continue };
            answer.posterior += posterior;
            answer.damage += posterior * guess.damage;
            if let Some((entry, value)) = meant(fit.readings, pattern, guess) {
                let slip = guess.guess.slip;
                answer.values.push(Meant {
                    entry,
                    value,
                    slip,
                    posterior: posterior * guess.exact,
                });
            }
        }
        sort(&mut answers, |a, b| rank(a) > rank(b));
        let likely = answers
            .iter()
            .take(ANSWERS)
            .filter_map(|answer| told(fit.readings, patterns, answer))
            .collect();
        Self { total, wrong: wrong.min(1.0), likely }
    }
}

/// What counts for the order of the answers: a slip that damages nothing is less pressing.
fn rank(answer: &Answer) -> f64 {
    answer.posterior + answer.damage
}

/// The reading that speaks for a pattern, and what it meant under a guess.
fn meant(readings: &[Reading], pattern: &Pattern, weighed: &Weighed) -> Option<(usize, Length)> {
    let entry = speaker(readings, pattern)?;
    if let Some(value) = weighed.guess.meant {
        return Some((entry, value));
    }
    let reading = readings.get(entry)?;
    let direction = pattern.direction.get(entry)?;
    let value = Length::from_mm_f64(reading.mm - direction * weighed.change);
    Some((entry, value.round_to(reading.unit.step())))
}

/// The tightest reading of the first dimension in a pattern.
fn speaker(readings: &[Reading], pattern: &Pattern) -> Option<usize> {
    let first = pattern.touches().next()?;
    let group = readings.get(first)?.spot.group();
    pattern
        .touches()
        .filter(|i| readings.get(*i).is_some_and(|r| r.spot.group() == group))
        .min_by_key(|i| {
            let reading = readings.get(*i);
            let sign = if reading.and_then(|r| r.spot.dimension()) == Some(Dimension::Bow) {
                -1
            } else {
                1
            };
            reading.map_or(0, |r| r.length.times(sign).nm())
        })
}

/// The answer as it is told: of its readings the speaker first, and the likeliest value.
fn told(readings: &[Reading], patterns: &[Pattern], answer: &Answer) -> Option<Likely> {
    // Add up slips that lead to the same value of the same entry.
    let mut sums: Vec<Sum> = Vec::new();
    for &Meant { entry, value, slip, posterior } in &answer.values {
        match sums.iter_mut().find(|sum| sum.entry == entry && sum.value == value) {
            Some(sum) => {
                sum.posterior += posterior;
                if posterior > sum.most {
                    (sum.slip, sum.most) = (slip, posterior);
                }
            }
            None => sums.push(Sum { entry, value, slip, most: posterior, posterior }),
        }
    }
    let best = sums.into_iter();
    let best =
        best.reduce(|best, next| if next.posterior > best.posterior { next } else { best })?;
    let reading = readings.get(best.entry)?;
    let mut spots: Vec<Spot> = vec![reading.spot];
    if !matches!(answer.about, About::One(_)) {
        let pattern = patterns.iter().find(|pattern| pattern.about == answer.about)?;
        for i in pattern.touches() {
            let spot = readings.get(i).map(|r| r.spot)?;
            if !spots.contains(&spot) {
                spots.push(spot);
            }
        }
    }
    Some(Likely {
        slip: best.slip,
        spot: reading.spot,
        index: reading.index,
        read: reading.length,
        spots,
        value: (best.posterior >= SURE).then_some(best.value),
        guess: best.value,
        guess_posterior: best.posterior,
        posterior: answer.posterior,
    })
}
