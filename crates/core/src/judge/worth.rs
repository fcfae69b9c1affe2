//! What to read next: the value of one more reading, from the survey so far.
//!
//! For each damaging slip that may still hide, Bayes' rule has left some posterior.
//! One more reading z with the predicted variance s² would move the log odds of a slip
//! of size δ by ½δ²k²/s², give or take its root, where k is how much z's prediction
//! moves with the slip. The chance that this passes the alarm, times the posterior,
//! times what a miss costs, is what the reading is worth.

use super::evidence::{DAMAGE, Fit, Weighed, design, known};
use super::least_squares::{dot, times};
use super::likely::posterior;
use super::network::{UNKNOWNS, placing};
use super::noise::TOLD;
use super::pattern::{About, Pattern};
use super::{ALARM, Judgement, Next, Why, tape};
use crate::bounds::PLAY;
use crate::length::Length;
use crate::profile::Profile;
use crate::short::{sort, within};
use crate::spot::{Dimension, Group, Spot};
use crate::survey::Survey;

/// Sizes of slips are put into bins, each twice as large as the one before.
const BINS: usize = 7;
/// The middle of a bin as a multiple of its beginning: about the root of two.
const BIN_MIDDLE: f64 = 1.4;
/// A repeat of a number shares its slip this often: copied, or the same wrong edge.
const SHARED: f64 = 0.2;

/// Beyond this, mm, a reading shares what is wrong with all long ones: 24 in.
const LONG: f64 = 609.6;

/// The damaging part of one pattern, by size.
struct Hidden<'a> {
    pattern: &'a Pattern,
    /// How every unknown moves with the slip.
    moves: [f64; UNKNOWNS],
    /// Posterior of damage in each bin.
    bins: [f64; BINS],
}

/// What to read next; `total` is what the posteriors of the weighed guesses are shares of.
pub(super) fn next(
    survey: &Survey,
    profile: &Profile,
    fit: &Fit<'_>,
    patterns: &[Pattern],
    (weighed, total): (&[Weighed], f64),
    judgement: &Judgement,
) -> Vec<Next> {
    let costs = &profile.costs;
    let mut list = Vec::new();
    for (dimension, known) in Dimension::ALL.into_iter().zip(known(fit.readings)) {
        if !known {
            let spot = dimension.main_spot();
            let (worth, checks) = (costs.miss, vec![dimension]);
            list.push(Next { spot, repeat: false, worth, checks, why: Why::Missing });
        }
    }
    if judgement.alarm && !judgement.likely.is_empty() {
        if let Some(spot) = suspect(survey, judgement) {
            let checks = spot.dimension().into_iter().collect();
            let worth = costs.miss * judgement.wrong;
            list.push(Next { spot, repeat: true, worth, checks, why: Why::Settles });
        }
        return list;
    }
    if !list.is_empty() {
        return list;
    }
    let hidden = hidden(fit, patterns, weighed, total);
    let mut offers: Vec<Next> = Spot::ALL
        .into_iter()
        .filter(|spot| spot.group() != Group::Post)
        .filter_map(|spot| offer(survey, fit, &hidden, spot, costs.miss))
        .filter(|next| next.worth > costs.minute)
        .collect();
    sort(&mut offers, |a, b| a.worth > b.worth);
    offers
}

/// Where to read again: the likeliest place that was not read alike twice already, else a closing
/// reading that was read once. What two readings say a third settles no better.
fn suspect(survey: &Survey, judgement: &Judgement) -> Option<Spot> {
    let settled = |spot: Spot| {
        let mut before: Vec<Length> = Vec::new();
        survey.lengths(spot).any(|length| {
            let alike = before.iter().any(|other| (length - *other).abs() <= PLAY);
            before.push(length);
            alike
        })
    };
    let likely = judgement.likely.iter().map(|likely| likely.spot);
    let closing = Spot::ALL.into_iter().filter(|spot| {
        matches!(spot.group(), Group::Loop | Group::Diagonal)
            && survey.lengths(*spot).next().is_some()
    });
    likely.chain(closing).find(|spot| !settled(*spot))
}

/// The damaging part of every pattern, by size.
fn hidden<'a>(
    fit: &Fit<'_>,
    patterns: &'a [Pattern],
    weighed: &[Weighed],
    total: f64,
) -> Vec<Hidden<'a>> {
    let Some(network) = fit.told() else { return Vec::new() };
    let mut list: Vec<Hidden<'a>> = patterns
        .iter()
        .map(|pattern| {
            let mut right = [0.0; UNKNOWNS];
            for (row, direction) in network.rows.iter().zip(&pattern.direction) {
                let weight = direction / (row.sigma * row.sigma);
                for (cell, a) in right.iter_mut().zip(&row.design) {
                    *cell += weight * a;
                }
            }
            let moves = times(&network.adjusted.covariance, &right);
            Hidden { pattern, moves, bins: [0.0; BINS] }
        })
        .collect();
    for guess in weighed {
        let damage = posterior(guess, total) * guess.damage;
        if damage <= 1e-9 {
            continue;
        }
        let doublings = libm::floor(libm::log2((guess.change.abs() / DAMAGE).max(1.0)));
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "0 to 6")]
        let bin = within(doublings, 0.0, 6.0) as usize;
        let cell = list.get_mut(guess.pattern).and_then(|hidden| hidden.bins.get_mut(bin));
        if let Some(cell) = cell {
            *cell += damage;
        }
    }
    list
}

/// What a reading at `spot` would be worth.
fn offer(
    survey: &Survey,
    fit: &Fit<'_>,
    hidden: &[Hidden<'_>],
    spot: Spot,
    miss: f64,
) -> Option<Next> {
    let network = fit.told()?;
    let design = design(spot, &fit.sizes)?;
    let repeat = survey.lengths(spot).next().is_some();
    let expected = expected(fit, spot);
    let tape = TOLD.tape * tape::sigma(expected);
    let placing = TOLD.tape * placing(spot.group());
    // Rounding to a sixteenth, or a little coarser.
    let own = tape * tape + placing * placing + 0.5;
    let variance = own + dot(&design, &times(&network.adjusted.covariance, &design));
    let mut worth = 0.0;
    for slip in hidden {
        let moved = dot(&design, &slip.moves);
        let mut found = 0.0;
        for (bin, mass) in slip.bins.iter().enumerate() {
            if *mass > 0.0 {
                #[expect(clippy::cast_precision_loss, reason = "0 to 6")]
                let size = BIN_MIDDLE * DAMAGE * libm::exp2(bin as f64);
                found += mass * uncovers(*mass, size * moved.abs() / variance.sqrt());
            }
        }
        worth += miss * found * (1.0 - shared(fit, slip.pattern.about, spot, expected));
    }
    let checks: Vec<Dimension> = Dimension::ALL
        .into_iter()
        .zip(design)
        .filter(|(_, derivative)| *derivative != 0.0)
        .map(|(dimension, _)| dimension)
        .collect();
    let why = match (repeat, checks.len()) {
        (true, _) => Why::Again,
        (false, 0 | 1) => Why::ChecksOne,
        (false, _) => Why::ChecksSeveral,
    };
    Some(Next { spot, repeat, worth, checks, why })
}

/// The share of a slip that a reading at `spot`, of about `expected` mm, would have too, 0 to 1: a
/// reading of the same dimension shares what is wrong with all of it.
fn shared(fit: &Fit<'_>, about: About, spot: Spot, expected: f64) -> f64 {
    match about {
        About::One(i) => {
            let same = fit.readings.get(i).is_some_and(|r| r.spot.group() == spot.group());
            if same { SHARED } else { 0.0 }
        }
        About::Whole(group) if group == spot.group() => 1.0,
        About::Spot(other) if other == spot => 1.0,
        // Who starts at the wrong mark does so on every long reading.
        About::Long if expected > LONG => 1.0,
        _ => 0.0,
    }
}

/// Chance that a reading which the slip moves by `shift` standard deviations lifts a
/// posterior of `mass` over the alarm.
fn uncovers(mass: f64, shift: f64) -> f64 {
    if shift < 1e-6 {
        return 0.0;
    }
    let log_odds = |p: f64| libm::log(p / (1.0 - p).max(1e-9));
    let z = (log_odds(mass) - log_odds(ALARM) + 0.5 * shift * shift) / shift;
    0.5 * libm::erfc(-z * core::f64::consts::FRAC_1_SQRT_2)
}

/// About what a tape at `spot` will read, mm.
fn expected(fit: &Fit<'_>, spot: Spot) -> f64 {
    super::network::model(spot, &fit.sizes).map_or(0.0, |(value, _)| value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_reading_that_the_slip_does_not_move_uncovers_nothing() {
        assert_eq!([uncovers(0.5, 0.0), uncovers(1e-4, 0.0)], [0.0, 0.0]);
        assert!(uncovers(1e-3, 5.0) > 0.9 && uncovers(1e-3, 1.0) < 0.1);
    }
}
