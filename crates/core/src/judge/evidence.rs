//! Bayes over every way of being wrong, in closed form.
//!
//! With the sizes left free, the readings y have the log density −½ rᵀPr. If they
//! were changed by δg, it is larger by bδ − ½aδ², b = gᵀPr, a = gᵀPg: two numbers a
//! pattern, no adjustment anew. A diagonal is not linear in large changes; what it
//! is off by is exact to second order in the same closed form.

use super::least_squares::Adjusted;
use super::network::{Network, Sizes, UNKNOWNS, diagonal, model};
use super::noise::{SCALES, TOLD, TOLD_AT};
use super::pattern::{About, Guess, Pattern};
use super::reading::Reading;
use super::size::Plausible;
use crate::length::Length;
use crate::short::{sort, within};
use crate::spot::{Dimension, Group};

/// Ordered numbers off by this much are damage, mm: a quarter inch, less what
/// rounding to a mark may hide.
pub(super) const DAMAGE: f64 = 6.0;

/// What is less likely than the likeliest by this power of e counts as nought.
pub(super) const NOUGHT: f64 = -40.0;
/// A guess that is certain to be less likely than the clean survey by this is not weighed:
/// every sum takes it for nought. The unit over [`NOUGHT`] is for rounding.
const UNNOTICED: f64 = NOUGHT - 1.0;

/// The readings under every scale of the noise.
pub(super) struct Fit<'a> {
    pub(super) readings: &'a [Reading],
    pub(super) networks: Vec<(f64, Network)>,
    /// Adjusted sizes at the scale that is told.
    pub(super) sizes: Sizes,
    plausible: &'a Plausible,
    /// Log prior density of `sizes`.
    usual: f64,
    /// What bent diagonals do at every scale; empty where there is none.
    bends: Vec<Bend>,
}

/// What the diagonals' second-order part does at one scale, whatever the pattern.
struct Bend {
    /// 1 for each reading of a diagonal.
    diagonals: Vec<f64>,
    with_itself: f64,
    with_readings: f64,
}

/// One guess, weighed.
#[derive(Clone, Copy, Debug)]
pub(super) struct Weighed {
    pub(super) pattern: usize,
    pub(super) guess: Guess,
    /// Log of prior times likelihood, the clean survey's included.
    pub(super) log: f64,
    /// Share of it that damages an ordered number.
    pub(super) damage: f64,
    /// The likeliest change, mm along the direction.
    pub(super) change: f64,
    /// Share of it that has just the likeliest value, to the mark.
    pub(super) exact: f64,
}

/// log Σ exp, without overflow.
pub(super) fn log_sum(logs: &[f64]) -> f64 {
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if most == f64::NEG_INFINITY {
        return most;
    }
    let share = |log: &f64| match log - most {
        below if below < NOUGHT => 0.0,
        // The likeliest itself.
        0.0 => 1.0,
        below => libm::exp(below),
    };
    most + libm::log(logs.iter().map(share).sum())
}

/// Probability of a standard normal between `from` and `to`.
fn normal_between(from: f64, to: f64) -> f64 {
    let tail = |z: f64| 0.5 * libm::erfc(z * core::f64::consts::FRAC_1_SQRT_2);
    if from > 0.0 { tail(from) - tail(to) } else { tail(-to) - tail(-from) }
}

/// What a pattern does to the fit at one scale.
struct Felt {
    a: f64,
    b: f64,
    /// Of the diagonals' second-order part: with itself, with the pattern, with the readings.
    bend: [f64; 3],
}

/// A pattern, and what it does to the fit.
struct Effect<'p> {
    index: usize,
    pattern: &'p Pattern,
    /// At every scale.
    felt: Vec<Felt>,
    /// How the sizes move with a change of 1 mm.
    moves: Sizes,
    /// The ordered dimensions that it changes readings of.
    touched: [bool; 4],
}

impl<'a> Fit<'a> {
    /// Adjusts `readings` under every scale; none where there is nothing to adjust.
    pub(super) fn of(
        readings: &'a [Reading],
        start: Sizes,
        plausible: &'a Plausible,
    ) -> Option<Self> {
        let mut sizes = start;
        for _ in 0..2 {
            let told = Network::of(readings, &sizes, TOLD)?;
            sizes = moved(&sizes, &told.adjusted);
        }
        let networks = SCALES
            .into_iter()
            .filter_map(|scale| {
                let network = Network::of(readings, &sizes, scale)?;
                Some((libm::log(scale.weight) + network.evidence(), network))
            })
            .collect::<Vec<_>>();
        let diagonals: Vec<f64> = readings
            .iter()
            .map(|r| f64::from(u8::from(r.spot.group() == Group::Diagonal)))
            .collect();
        let bends = if diagonals.iter().any(|d| *d != 0.0) {
            networks.iter().map(|(_, network)| Bend::of(network, &diagonals)).collect()
        } else {
            Vec::new()
        };
        let usual = plausible.log(&sizes);
        Some(Self { readings, networks, sizes, plausible, usual, bends })
    }

    /// Log weight of a survey in which nobody slipped and nothing is knocked.
    pub(super) fn clean(&self) -> f64 {
        let logs: Vec<f64> = self.networks.iter().map(|(log, _)| *log).collect();
        self.usual + log_sum(&logs)
    }

    /// Every guess of every pattern, and the knocked frames, weighed; without the guesses
    /// that no sum would notice, which are most of them where readings check one another.
    pub(super) fn weigh(&self, patterns: &[Pattern]) -> Vec<Weighed> {
        self.weigh_from(self.clean() + UNNOTICED, patterns)
    }

    /// Every guess that may weigh `noticed` or more.
    fn weigh_from(&self, noticed: f64, patterns: &[Pattern]) -> Vec<Weighed> {
        let mut weighed = Vec::with_capacity(patterns.len().saturating_mul(8));
        for (index, pattern) in patterns.iter().enumerate() {
            let effect = self.effect(index, pattern);
            if let Some((prior, sd)) = pattern.knock {
                weighed.push(self.knock(&effect, prior, sd));
            }
            let guesses = pattern.guesses.iter();
            weighed.extend(guesses.filter_map(|guess| self.guess(&effect, guess, noticed)));
        }
        weighed
    }

    fn effect<'p>(&self, index: usize, pattern: &'p Pattern) -> Effect<'p> {
        let felt = self.networks.iter().enumerate();
        let felt =
            felt.map(|(scale, (_, network))| felt_at(network, self.bends.get(scale), pattern));
        let felt = felt.collect();
        let moves =
            self.networks.get(TOLD_AT).map_or([0.0; 4], |(_, n)| n.moves(&pattern.direction));
        let mut touched = [false; 4];
        for reading in pattern.touches().filter_map(|i| self.readings.get(i)) {
            if let Some(touched) =
                reading.spot.dimension().and_then(|dimension| touched.get_mut(dimension.index()))
            {
                *touched = true;
            }
        }
        Effect { index, pattern, felt, moves, touched }
    }

    /// What the diagonals are off by, beyond the first order, when the sizes move by
    /// −`moves`·`change`.
    fn bent(&self, moves: &Sizes, change: f64) -> f64 {
        let [w, h, t, b] = self.sizes;
        let [dw, dh, ..] = moves.map(|m| m * change);
        let d = diagonal(&self.sizes).max(1.0);
        diagonal(&[w - dw, h - dh, t, b]) - d + (w * dw + h * dh) / d
    }

    fn knock(&self, effect: &Effect<'_>, prior: f64, sd: f64) -> Weighed {
        let variance = sd * sd;
        let logs = self.each(&effect.felt, |felt| {
            let over = 1.0 + felt.a * variance;
            0.5 * felt.b * felt.b * variance / over - 0.5 * libm::log(over)
        });
        let guess = Guess {
            slip: super::slips::SlipKind::Other,
            least: 0.0,
            most: 0.0,
            prior,
            meant: None,
        };
        let log = libm::log(prior) + self.usual + log_sum(&logs);
        let pattern = effect.index;
        Weighed { pattern, guess, log, damage: 0.0, change: 0.0, exact: 0.0 }
    }

    /// The log weight of every scale and what it gains; once, because it is dear.
    fn each(&self, felt: &[Felt], gain: impl Fn(&Felt) -> f64) -> [f64; SCALES.len()] {
        let mut logs = [f64::NEG_INFINITY; SCALES.len()];
        for (slot, ((log, _), felt)) in logs.iter_mut().zip(self.networks.iter().zip(felt)) {
            *slot = log + gain(felt);
        }
        logs
    }

    /// `guess`, weighed; none where its weight is certain to be below `noticed`.
    fn guess(&self, effect: &Effect<'_>, guess: &Guess, noticed: f64) -> Option<Weighed> {
        let Effect { felt, moves, .. } = effect;
        let (a, b) = felt.get(TOLD_AT).map_or((0.0, 0.0), |felt| (felt.a, felt.b));
        let best = if a > 1e-12 { b / a } else { 0.5 * (guess.least + guess.most) };
        let change = within(best, guess.least, guess.most);
        let bent = if self.bends.is_empty() { 0.0 } else { self.bent(moves, change) };
        let most = self.each(felt, |felt| gain_at_most(felt, bent, guess.least, guess.most));
        // log p ≤ p − 1, no size is more than usual, and four scales are four times one.
        let ceiling = most.into_iter().fold(f64::NEG_INFINITY, f64::max);
        if ceiling + core::f64::consts::LN_2 * 2.0 + guess.prior - 1.0 < noticed {
            return None;
        }
        let logs = self.each(felt, |felt| gain(felt, bent, guess.least, guess.most));
        let [w, h, t, b] = self.sizes;
        let [dw, dh, dt, db] = moves.map(|m| m * change);
        let sizes = [w - dw, h - dh, t - dt, b - db];
        let log = libm::log(guess.prior) + self.plausible.log(&sizes) + log_sum(&logs);
        let width = guess.most - guess.least;
        let exact = if width > 0.0 {
            let step = self.readings.first().map_or(1.0, |r| r.unit.step().to_mm());
            (step * (a / core::f64::consts::TAU).sqrt().max(1.0 / width)).min(1.0)
        } else {
            1.0
        };
        let damage = if self.damage(effect, change) >= DAMAGE { 1.0 } else { 0.0 };
        let pattern = effect.index;
        Some(Weighed { pattern, guess: *guess, log, damage, change, exact })
    }

    /// How far the worst ordered number is off, mm, if the readings of the pattern are
    /// off by `change`.
    fn damage(&self, effect: &Effect<'_>, change: f64) -> f64 {
        let off = |dimension: Dimension| {
            let sign = if dimension == Dimension::Bow { -1.0 } else { 1.0 };
            let mut written = f64::INFINITY;
            let mut meant = f64::INFINITY;
            for (reading, direction) in self.readings.iter().zip(&effect.pattern.direction) {
                if reading.spot.dimension() == Some(dimension) {
                    written = written.min(sign * reading.mm);
                    meant = meant.min(sign * (reading.mm - direction * change));
                }
            }
            (written - meant).abs()
        };
        let touched =
            Dimension::ALL.into_iter().zip(effect.touched).filter(|(_, touched)| *touched);
        touched.map(|(dimension, _)| off(dimension)).fold(0.0, f64::max)
    }

    /// The adjusted network that figures are told from.
    pub(super) fn told(&self) -> Option<&Network> {
        self.networks.get(TOLD_AT).map(|(_, network)| network)
    }
}

impl Bend {
    fn of(network: &Network, diagonals: &[f64]) -> Self {
        Self {
            with_itself: product(diagonals, &network.felt(diagonals)),
            with_readings: product(diagonals, &network.pull),
            diagonals: diagonals.to_vec(),
        }
    }
}

/// What `pattern` does to the fit at the scale of `network`.
fn felt_at(network: &Network, bend: Option<&Bend>, pattern: &Pattern) -> Felt {
    let push = network.felt(&pattern.direction);
    let a = product(&pattern.direction, &push);
    let b = product(&pattern.direction, &network.pull);
    let bend = bend.map_or([0.0; 3], |bend| {
        [bend.with_itself, product(&bend.diagonals, &push), bend.with_readings]
    });
    Felt { a: a.max(0.0), b, bend }
}

fn product(left: &[f64], right: &[f64]) -> f64 {
    left.iter().zip(right).map(|(l, r)| l * r).sum()
}

/// The log likelihood's gain b·δ − ½a·δ² + fixed of a change δ, once the diagonals are bent.
fn parabola(felt: &Felt, bent: f64) -> (f64, f64, f64) {
    let [own, with_pattern, with_readings] = felt.bend;
    let b = felt.b - bent * with_pattern;
    (felt.a, b, bent * with_readings - 0.5 * bent * bent * own)
}

/// What [`gain`] cannot exceed: the gain of the best change between `least` and `most`.
fn gain_at_most(felt: &Felt, bent: f64, least: f64, most: f64) -> f64 {
    let (a, b, fixed) = parabola(felt, bent);
    let at = |change: f64| b * change - 0.5 * a * change * change;
    fixed + if a > 0.0 { at(within(b / a, least, most)) } else { at(least).max(at(most)) }
}

/// Log of what the likelihood gains when the readings were changed by something
/// between `least` and `most` along a pattern.
fn gain(felt: &Felt, bent: f64, least: f64, most: f64) -> f64 {
    let (a, b, fixed) = parabola(felt, bent);
    let at = |change: f64| b * change - 0.5 * a * change * change;
    let width = most - least;
    let root = a.sqrt();
    if width <= 0.0 || root * width < 1e-3 {
        return fixed + at(0.5 * (least + most));
    }
    let best = b / a;
    let (from, to) = ((least - best) * root, (most - best) * root);
    // Far out in the tail the nearest end is all that counts.
    if from > 6.0 || to < -6.0 {
        let (end, z) = if from > 6.0 { (least, from) } else { (most, -to) };
        return fixed + at(end) - libm::log((z * root * width).max(1.0));
    }
    let mass = normal_between(from, to).max(1e-300);
    fixed + 0.5 * b * best + libm::log(mass * core::f64::consts::TAU.sqrt() / (root * width))
}

/// Sizes after an adjustment.
fn moved(sizes: &Sizes, adjusted: &Adjusted<UNKNOWNS>) -> Sizes {
    let [w, h, t, b] = *sizes;
    let [dw, dh, dt, db, ..] = adjusted.corrections;
    [w + dw, h + dh, t + dt, b + db]
}

/// Where to linearise: the middle reading of each dimension, or what the others say.
pub(super) fn start(readings: &[Reading]) -> Sizes {
    let middle = |group: Group| {
        let mut of: Vec<Length> =
            readings.iter().filter(|r| r.spot.group() == group).map(|r| r.length).collect();
        sort(&mut of, |a, b| a < b);
        of.get(of.len() / 2).map(|length| length.to_mm())
    };
    let diagonal = middle(Group::Diagonal);
    let leg = |other: Option<f64>| {
        let (d, o) = diagonal.zip(other)?;
        (d > o).then(|| (d * d - o * o).sqrt())
    };
    let (width, height) = (middle(Group::Width), middle(Group::Height));
    [
        width.or(leg(height)).unwrap_or(2300.0),
        height.or(leg(width)).unwrap_or(2400.0),
        middle(Group::Header).unwrap_or(250.0),
        middle(Group::Bow).unwrap_or(30.0),
    ]
}

/// Which sizes the readings say anything of.
pub(super) fn known(readings: &[Reading]) -> [bool; 4] {
    Dimension::ALL.map(|d| readings.iter().any(|r| r.spot.dimension() == Some(d)))
}

/// What tells `About` of a pattern apart when posteriors are added up.
pub(super) fn same(about: About, other: About, readings: &[Reading]) -> bool {
    match (about, other) {
        (About::One(i), About::One(j)) => {
            readings.get(i).map(|r| r.spot) == readings.get(j).map(|r| r.spot)
        }
        _ => about == other,
    }
}

/// Design row of a reading that is not there yet.
pub(super) fn design(spot: crate::spot::Spot, sizes: &Sizes) -> Option<[f64; UNKNOWNS]> {
    model(spot, sizes).map(|(_, design)| design)
}

#[cfg(test)]
mod tests;
