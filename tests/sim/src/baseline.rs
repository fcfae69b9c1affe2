//! What a simpler check would find on the same surveys: three baselines.
//!
//! 1. *Range*: a least and a most for every field.
//! 2. *Scatter*: range, and a limit on how far readings of one number may lie apart.
//! 3. *w*: range, and Baarda's w of every reading in a network of all of them, whose
//!    noise is that of the assumed world, exactly.
//!
//! Code of its own: nothing here comes from the judge. The limits of the second and third
//! are set on development seeds, so that one clean survey in a hundred is questioned.

use crate::matrix::{inverse, product, transposed};
use crate::rng::Rng;
use crate::spots::{Layout, ORDERED};
use crate::survey::{Simulated, clean};
use crate::world::{Population, World};

const INCH: f64 = 25.4;

/// A least and a most for each kind of field, in. Those of the diagonal and of the closing
/// readings follow from the others. Common practice, no source.
const RANGES: [(&str, f64, f64); 6] = [
    ("width", 54.0, 97.5),
    ("height", 54.0, 122.0),
    ("header", 7.0, 24.0),
    ("bow", 0.75, 2.0),
    ("diagonal", 76.0, 156.5),
    ("loop", 59.0, 146.0),
];

/// What the baselines measure on one survey.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Measured {
    /// A field is beyond its least or most.
    pub range: bool,
    /// How far readings of one number lie apart, the largest, mm.
    pub scatter: f64,
    /// The largest |w|.
    pub w: f64,
}

/// The limits of the baselines for one set of readings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Most scatter, mm.
    pub scatter: f64,
    /// Most |w|.
    pub w: f64,
}

impl Limits {
    /// So that one in a hundred of `surveys` clean ones, drawn from `seed`, is questioned,
    /// the range check's included.
    #[must_use]
    pub fn fitted(layout: &Layout, seed: u64, surveys: u64) -> Self {
        let world = World::default();
        let measured: Vec<Measured> = (0..surveys)
            .map(|index| {
                let mut rng = Rng::of(seed, 0, index);
                measure(&clean(layout, Population::Yard, &world, &mut rng), &world)
            })
            .collect();
        let limit = |figure: fn(&Measured) -> f64| {
            let mut figures: Vec<f64> = measured
                .iter()
                .map(|one| if one.range { f64::INFINITY } else { figure(one) })
                .collect();
            figures.sort_by(f64::total_cmp);
            figures.get(figures.len().saturating_sub(figures.len() / 100 + 1)).copied()
        };
        let or_none = |limit: Option<f64>| limit.unwrap_or(f64::INFINITY);
        Self { scatter: or_none(limit(|m| m.scatter)), w: or_none(limit(|m| m.w)) }
    }
}

impl Measured {
    /// Whether range and scatter question it.
    #[must_use]
    pub fn by_scatter(&self, limits: &Limits) -> bool {
        self.range || self.scatter > limits.scatter
    }
    /// Whether range and w question it.
    #[must_use]
    pub fn by_w(&self, limits: &Limits) -> bool {
        self.range || self.w > limits.w
    }
}

/// Measures one survey; the noise of the w-test is that of `world`.
#[must_use]
pub fn measure(survey: &Simulated, world: &World) -> Measured {
    Measured {
        range: survey.readings.iter().any(|taken| beyond(taken.group(), taken.written.mm())),
        scatter: ORDERED.iter().map(|group| apart(survey, group)).fold(0.0, f64::max),
        w: w(survey, world).into_iter().fold(0.0, |most, w| f64::max(most, w.abs())),
    }
}

fn beyond(group: &str, mm: f64) -> bool {
    let range = RANGES.iter().find(|(name, ..)| *name == group);
    range.is_some_and(|(_, least, most)| mm < least * INCH || mm > most * INCH)
}

fn written<'a>(survey: &'a Simulated, group: &str) -> impl Iterator<Item = f64> + 'a {
    let group = group.to_owned();
    let of = survey.readings.iter().filter(move |taken| taken.group() == group);
    of.map(|taken| taken.written.mm())
}

fn apart(survey: &Simulated, group: &str) -> f64 {
    let most = written(survey, group).fold(f64::NEG_INFINITY, f64::max);
    let least = written(survey, group).fold(f64::INFINITY, f64::min);
    if most > least { most - least } else { 0.0 }
}

/// How a reading depends on the four sizes, and on what is drawn once a frame or tape.
struct Dependence {
    sizes: [f64; 4],
    /// (which departure, how many times it)
    departures: Vec<(usize, f64)>,
}

/// Standard deviations of what is drawn once: taper, bulge, tilt, sag, lean, the roof above
/// the header left, center and right, the roof inside, three bows, the tape's scale.
fn departures(world: &World) -> [f64; 13] {
    let World { taper, bulge, tilt, sag, racking, roof, header, bow, scale, .. } = *world;
    [taper, bulge, tilt, sag, racking, header, header, header, roof, bow, bow, bow, scale]
}

fn dependence(spot: &str, mm: f64, [width, height]: [f64; 2]) -> Dependence {
    let d = width.hypot(height);
    let (sizes, mut departures): ([f64; 4], Vec<(usize, f64)>) = match spot {
        "width.low" => ([1.0, 0.0, 0.0, 0.0], vec![(0, -1.0)]),
        "width.middle" => ([1.0, 0.0, 0.0, 0.0], vec![(1, 1.0)]),
        "width.high" => ([1.0, 0.0, 0.0, 0.0], vec![(0, 1.0)]),
        "height.left" => ([0.0, 1.0, 0.0, 0.0], vec![(2, -1.0)]),
        "height.center" => ([0.0, 1.0, 0.0, 0.0], vec![(3, 1.0)]),
        "height.right" => ([0.0, 1.0, 0.0, 0.0], vec![(2, 1.0)]),
        "header.left" => ([0.0, 0.0, 1.0, 0.0], vec![(2, 1.0), (5, 1.0)]),
        "header.center" => ([0.0, 0.0, 1.0, 0.0], vec![(3, -1.0), (6, 1.0)]),
        "header.right" => ([0.0, 0.0, 1.0, 0.0], vec![(2, -1.0), (7, 1.0)]),
        "bow.first" => ([0.0, 0.0, 0.0, 1.0], vec![(9, 1.0)]),
        "bow.second" => ([0.0, 0.0, 0.0, 1.0], vec![(10, 1.0)]),
        "bow.third" => ([0.0, 0.0, 0.0, 1.0], vec![(11, 1.0)]),
        "diagonal.rising" => ([width / d, height / d, 0.0, 0.0], vec![(4, width / d)]),
        "diagonal.falling" => ([width / d, height / d, 0.0, 0.0], vec![(4, -width / d)]),
        "loop.sill_to_roof" => ([0.0, 1.0, 1.0, 0.0], vec![(6, 1.0), (8, 1.0)]),
        "loop.sill_to_bow" => ([0.0, 1.0, 1.0, -1.0], vec![(6, 1.0), (8, 1.0), (9, -1.0)]),
        _ => ([0.0; 4], Vec::new()),
    };
    departures.push((12, mm / 1000.0));
    Dependence { sizes, departures }
}

/// Variance of one reading by itself: the hand, the hook, and rounding as people round.
fn own_variance(world: &World, metric: bool) -> f64 {
    let steps = if metric {
        [1.0, 1.0, 5.0, 10.0]
    } else {
        [1.5875, 2.0 * 1.5875, 4.0 * 1.5875, 8.0 * 1.5875]
    };
    let shares: f64 = world.habit.iter().sum();
    let rounding: f64 = world
        .habit
        .iter()
        .zip(steps)
        .map(|(share, step)| share / shares * step * step / 12.0)
        .sum();
    world.hand * world.hand + world.hook * 1.6 * 1.6 + rounding
}

/// Baarda's w of every reading: e′Pv over its own standard deviation, P the weights with the
/// sizes left free. Linear at the median width and height.
fn w(survey: &Simulated, world: &World) -> Vec<f64> {
    let median = |group| {
        let mut of: Vec<f64> = written(survey, group).collect();
        of.sort_by(f64::total_cmp);
        of.get(of.len() / 2).copied().unwrap_or(0.0)
    };
    let at = [median("width"), median("height")];
    let (sds, own) = (departures(world), own_variance(world, survey.metric));
    let rows: Vec<Dependence> = survey
        .readings
        .iter()
        .map(|taken| dependence(taken.spot, taken.written.mm(), at))
        .collect();
    let covariance: Vec<Vec<f64>> = rows
        .iter()
        .enumerate()
        .map(|(i, row)| {
            let with = |(j, other): (usize, &Dependence)| {
                let shared: f64 = row
                    .departures
                    .iter()
                    .flat_map(|left| other.departures.iter().map(move |right| (left, right)))
                    .filter(|(left, right)| left.0 == right.0)
                    .map(|((which, a), (_, b))| {
                        let sd = sds.get(*which).copied().unwrap_or(0.0);
                        a * b * sd * sd
                    })
                    .sum();
                shared + if i == j { own } else { 0.0 }
            };
            rows.iter().enumerate().map(with).collect()
        })
        .collect();
    // A diagonal is known from the median width and height, and linear from there.
    let [width, height] = at;
    let observed: Vec<Vec<f64>> = survey
        .readings
        .iter()
        .map(|taken| {
            vec![
                taken.written.mm()
                    - if taken.group() == "diagonal" {
                        width.hypot(height)
                            - (width * width + height * height) / width.hypot(height)
                    } else {
                        0.0
                    },
            ]
        })
        .collect();
    // Sizes that no reading of this set says anything of are left out.
    let known: Vec<usize> =
        (0..4).filter(|k| rows.iter().any(|row| row.sizes.get(*k) != Some(&0.0))).collect();
    let design: Vec<Vec<f64>> = rows
        .iter()
        .map(|row| known.iter().filter_map(|k| row.sizes.get(*k).copied()).collect())
        .collect();
    weigh(&covariance, &design, &observed).unwrap_or_default()
}

fn weigh(covariance: &[Vec<f64>], design: &[Vec<f64>], observed: &[Vec<f64>]) -> Option<Vec<f64>> {
    let weights = inverse(covariance)?;
    let weighted = product(&weights, design);
    let normal = inverse(&product(&transposed(design), &weighted))?;
    let taken = product(&product(&weighted, &normal), &transposed(&weighted));
    let precision: Vec<Vec<f64>> = weights
        .iter()
        .zip(&taken)
        .map(|(row, taken)| row.iter().zip(taken).map(|(w, t)| w - t).collect())
        .collect();
    let pull = product(&precision, observed);
    let of = |(i, pull): (usize, &Vec<f64>)| {
        let own = precision.get(i).and_then(|row| row.get(i)).copied().unwrap_or(0.0);
        let pull = pull.first().copied().unwrap_or(0.0);
        if own > 1e-9 { pull / own.sqrt() } else { 0.0 }
    };
    Some(pull.iter().enumerate().map(of).collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spots::{ELEVEN, FOUR};

    /// On clean surveys of frames that nobody knocked, w is a standard normal number.
    #[test]
    fn w_is_standard_normal_where_nobody_slipped() {
        let world = World { knocked: 0.0, ..World::default() };
        let mut squares = 0.0;
        let mut count = 0.0;
        for index in 0..400 {
            let survey = clean(&ELEVEN, Population::Yard, &world, &mut Rng::of(5, 0, index));
            for w in w(&survey, &world) {
                squares += w * w;
                count += 1.0;
            }
        }
        let variance = squares / count;
        assert!((0.9..1.1).contains(&variance), "{variance}");
    }

    #[test]
    fn four_numbers_check_nothing_and_a_reading_too_large_is_beyond() {
        let world = World::default();
        let mut survey = clean(&FOUR, Population::Yard, &world, &mut Rng::of(6, 0, 0));
        let measured = measure(&survey, &world);
        assert!(!measured.range && measured.scatter == 0.0 && measured.w == 0.0);
        if let Some(taken) = survey.readings.first_mut() {
            taken.written = taken.written.longer(40.0 * INCH);
        }
        assert!(measure(&survey, &world).range);
    }
}
