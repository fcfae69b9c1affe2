//! One survey: the texts, and what was on the tape.

use crate::frame::Frame;
use crate::reader::{Reader, Written};
use crate::rng::Rng;
use crate::slip::{SLIPS, Weights, apply};
use crate::spots::{Layout, ORDERED};
use crate::world::{Population, World};

/// One reading.
#[derive(Clone, Debug)]
pub struct Taken {
    /// Where, by its name in survey files.
    pub spot: &'static str,
    /// What was on the tape.
    pub meant: Written,
    /// What was written.
    pub written: Written,
}

impl Taken {
    /// The ordered number this is a reading of, or what else it is: `width`, `loop`, …
    #[must_use]
    pub fn group(&self) -> &'static str {
        self.spot.split_once('.').map_or(self.spot, |(group, _)| group)
    }
    /// Whether a slip changed it.
    #[must_use]
    pub fn slipped(&self) -> bool {
        self.meant != self.written
    }
}

/// One survey with its truth.
#[derive(Clone, Debug)]
pub struct Simulated {
    /// On a metric tape.
    pub metric: bool,
    /// The readings, in the order they were taken.
    pub readings: Vec<Taken>,
    /// The slip, by its place in [`SLIPS`]; [`HABIT`] for the one-inch habit.
    pub slip: Option<usize>,
    /// What is wrong with further readings too.
    shared: Shared,
    frame: Frame,
    reader: Reader,
}

/// What a slip does to readings taken later.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Shared {
    /// Nothing: it happened once.
    No,
    /// The same wrong edge: every reading of this group is off by so many mm.
    Group(&'static str, f64),
    /// The same wrong mark: every long reading is.
    Long(f64),
}

/// Readings beyond this are long: a tape is pulled out for them. In mm.
const LONG: f64 = 600.0;

/// The slip that every long reading shares, listed after [`SLIPS`].
pub const HABIT: usize = SLIPS.len();

/// The name of a slip by its place.
#[must_use]
pub fn slip_name(slip: usize) -> &'static str {
    SLIPS.get(slip).map_or("inch-habit", |(name, _)| name)
}

/// The tightest of some readings of `group`, mm.
fn tightest(group: &str, readings: &[Taken], number: impl Fn(&Taken) -> f64) -> Option<f64> {
    let of = readings.iter().filter(|taken| taken.group() == group).map(number);
    if group == "bow" { of.reduce(f64::max) } else { of.reduce(f64::min) }
}

impl Simulated {
    /// By how much the worst ordered number is off, mm.
    #[must_use]
    pub fn damage(&self) -> f64 {
        let off = |group: &&str| {
            let written = tightest(group, &self.readings, |taken| taken.written.mm());
            let meant = tightest(group, &self.readings, |taken| taken.meant.mm());
            written.zip(meant).map_or(0.0, |(w, m)| (w - m).abs())
        };
        ORDERED.iter().map(off).fold(0.0, f64::max)
    }

    /// One more reading at `spot`. With what is wrong with all of its kind, unless the
    /// person has been made to doubt it and looks twice.
    pub fn read(&self, spot: &'static str, doubted: bool, world: &World, rng: &mut Rng) -> Taken {
        let meant = self.reader.read(self.frame.length(spot), world, rng);
        let mut taken = Taken { spot, written: meant.clone(), meant };
        let off = match self.shared {
            Shared::Group(group, off) if group == taken.group() => off,
            Shared::Long(off) if taken.meant.mm() > LONG => off,
            _ => 0.0,
        };
        if !doubted && off != 0.0 {
            taken.written = taken.meant.longer(off);
        }
        taken
    }

    /// Whether it costs a door: an ordered number off by a quarter inch or more.
    #[must_use]
    pub fn damaging(&self) -> bool {
        self.damage() >= 6.35 - 1e-9
    }
}

/// A survey in which nobody slipped.
pub fn clean(layout: &Layout, population: Population, world: &World, rng: &mut Rng) -> Simulated {
    let opening = population.draw(rng);
    let frame = Frame::draw(&opening, world, rng);
    let reader = Reader::draw(world, rng);
    let mut readings = Vec::new();
    for (spot, times) in layout.spots {
        for _ in 0..*times {
            let written = reader.read(frame.length(spot), world, rng);
            readings.push(Taken { spot, meant: written.clone(), written });
        }
    }
    let (metric, shared) = (reader.metric, Shared::No);
    Simulated { metric, readings, slip: None, shared, frame, reader }
}

/// Share of slipped surveys in which every long reading starts at the same wrong mark.
const HABITS: f64 = 0.005;

/// A survey with one damaging slip. Four in five touch one reading, the rest every
/// reading of the dimension.
pub fn slipped(
    layout: &Layout,
    population: Population,
    world: &World,
    weights: Weights,
    rng: &mut Rng,
) -> Simulated {
    let list = weights.list();
    // Fixed before the draw is repeated until it damages: of the slips that cost a
    // door, so many are on one reading alone.
    let all = rng.chance(0.2);
    loop {
        let mut survey = clean(layout, population, world, rng);
        let habit = !matches!(weights, Weights::Only(_)) && rng.chance(HABITS);
        let slip = if habit { HABIT } else { rng.weighted(&list) };
        let done = match slip_name(slip) {
            "inch-habit" => long_habit(&mut survey, rng),
            "exchange" => exchange(&mut survey, all, rng),
            name => one_or_all(&mut survey, name, all, rng),
        };
        survey.slip = Some(slip);
        if done.is_some() && survey.damaging() {
            return survey;
        }
    }
}

fn long_habit(survey: &mut Simulated, rng: &mut Rng) -> Option<()> {
    let off: f64 = if survey.metric { rng.pick(&[10.0, 100.0], 10.0) } else { 25.4 };
    let off = if rng.chance(0.7) { off } else { -off };
    for taken in survey.readings.iter_mut().filter(|taken| taken.meant.mm() > LONG) {
        taken.written = taken.meant.longer(off);
    }
    survey.shared = Shared::Long(off);
    Some(())
}

fn exchange(survey: &mut Simulated, all: bool, rng: &mut Rng) -> Option<()> {
    if rng.chance(0.5) {
        // Another field's number, once.
        let (i, j) = (rng.below(survey.readings.len()), rng.below(survey.readings.len()));
        let other = survey.readings.get(j)?.meant.clone();
        survey.readings.get_mut(i)?.written = other;
        return Some(());
    }
    let (left, right) = if rng.chance(0.5) { ("width", "height") } else { ("header", "bow") };
    let of = |group: &str| -> Vec<usize> {
        let all = survey.readings.iter().enumerate();
        all.filter(|(_, taken)| taken.group() == group).map(|(i, _)| i).collect()
    };
    let (lefts, rights) = (of(left), of(right));
    let pairs = if all { lefts.len().min(rights.len()) } else { 1 };
    let offset = if all { 0 } else { rng.below(lefts.len().min(rights.len())) };
    for pair in 0..pairs {
        let (i, j) = (*lefts.get(pair + offset)?, *rights.get(pair + offset)?);
        let one = survey.readings.get(i)?.meant.clone();
        let other = survey.readings.get(j)?.meant.clone();
        survey.readings.get_mut(i)?.written = other;
        survey.readings.get_mut(j)?.written = one;
    }
    Some(())
}

fn one_or_all(survey: &mut Simulated, name: &str, all: bool, rng: &mut Rng) -> Option<()> {
    let at = rng.below(survey.readings.len());
    let bow = tightest("bow", &survey.readings, |taken| taken.meant.mm())?;
    let chosen = survey.readings.get(at)?.clone();
    let new = apply(name, &chosen.meant, chosen.spot, bow, rng)?;
    let off = new.mm() - chosen.meant.mm();
    for (i, taken) in survey.readings.iter_mut().enumerate() {
        if i == at {
            taken.written = new.clone();
        } else if all && taken.group() == chosen.group() && taken.group() != "loop" {
            // The same wrong edge, the same misread digit: the same way off.
            let loose = matches!(new, Written::Loose(..));
            taken.written = if loose { new.clone() } else { taken.meant.longer(off) };
        }
    }
    if all && chosen.group() != "loop" {
        survey.shared = Shared::Group(chosen.group(), off);
    }
    survey.readings.iter().all(|taken| taken.written.mm() > 0.0).then_some(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spots::{ELEVEN, FOUR};

    #[test]
    fn a_clean_survey_is_as_meant_and_a_slipped_one_damages() {
        let (world, mut rng) = (World::default(), Rng::new(11));
        for _ in 0..200 {
            let clean = clean(&ELEVEN, Population::Yard, &world, &mut rng);
            assert!(clean.damage() == 0.0 && clean.readings.len() == 11);
            let slipped = slipped(&FOUR, Population::Yard, &world, Weights::Assumed, &mut rng);
            assert!(slipped.damaging() && slipped.readings.iter().any(Taken::slipped));
        }
    }
}
