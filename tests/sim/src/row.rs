//! One row of the table: a set of readings under one condition, many surveys of it.

use std::sync::Mutex;
use std::sync::atomic::{AtomicU64, Ordering};
use std::thread;

use crate::baseline::Limits;
use crate::mark::{Marked, mark};
use crate::rng::Rng;
use crate::share::Share;
use crate::slip::Weights;
use crate::spots::{LAYOUTS, Layout};
use crate::survey::{clean, slipped};
use crate::walk::{Walked, walk_on};
use crate::world::{Population, World};

/// What is different from what was assumed.
#[derive(Clone, Copy, Debug)]
pub struct Condition {
    /// What it is called in tables.
    pub name: &'static str,
    /// Which openings.
    pub population: Population,
    /// Which frames and readers.
    pub world: World,
    /// Which slips.
    pub weights: Weights,
}

/// As assumed.
#[must_use]
pub fn usual() -> Condition {
    let world = World::default();
    Condition { name: "usual yard", population: Population::Yard, world, weights: Weights::Assumed }
}

/// All conditions, the usual one first.
#[must_use]
pub fn conditions() -> [Condition; 8] {
    let usual = usual();
    let world = usual.world;
    [
        usual,
        Condition { name: "noise 1.5 times larger", world: world.noisier(1.5), ..usual },
        Condition {
            name: "sizes uniform over all plausible openings",
            population: Population::Uniform,
            ..usual
        },
        Condition { name: "all slips equally likely", weights: Weights::Equal, ..usual },
        Condition { name: "freight containers", population: Population::Container, ..usual },
        Condition { name: "narrow city bodies", population: Population::City, ..usual },
        Condition { name: "metric tapes", world: World { metric: 1.0, ..world }, ..usual },
        Condition {
            name: "bows that differ by design, in half of the bodies",
            world: World { odd_bows: 0.5, ..world },
            ..usual
        },
    ]
}

/// How many surveys.
#[derive(Clone, Copy, Debug)]
pub struct Size {
    /// Surveys in which nobody slipped.
    pub clean: u64,
    /// Surveys with a damaging slip.
    pub slipped: u64,
    /// Of each, those in which the person goes on to take what is asked for.
    pub walked: u64,
}

/// Everything marked of one set of readings under one condition.
#[derive(Clone, Debug)]
pub struct Row {
    /// Of clean surveys.
    pub clean: Vec<Marked>,
    /// Of slipped ones.
    pub slipped: Vec<Marked>,
    /// How clean ones went on.
    pub clean_walks: Vec<Walked>,
    /// How slipped ones went on.
    pub slipped_walks: Vec<Walked>,
}

/// Streams of random numbers: those of the baselines' limits is 0.
const CLEAN: u64 = 1;
const SLIPPED: u64 = 2;
const WALKED: u64 = 3;

impl Row {
    /// Marks `size` surveys of `layout`, on every core; the same whatever their number.
    #[must_use]
    pub fn of(layout: &Layout, condition: &Condition, seed: u64, size: Size) -> Self {
        let (world, population) = (&condition.world, condition.population);
        let assumed = World::default();
        let one_clean = |index| clean(layout, population, world, &mut Rng::of(seed, CLEAN, index));
        let one_slipped = |index| {
            let mut rng = Rng::of(seed, SLIPPED, index);
            slipped(layout, population, world, condition.weights, &mut rng)
        };
        let on = |index, survey| walk_on(&survey, world, &mut Rng::of(seed, WALKED, index));
        Self {
            clean: each(size.clean, |index| mark(&one_clean(index), &assumed)),
            slipped: each(size.slipped, |index| mark(&one_slipped(index), &assumed)),
            clean_walks: each(size.walked, |index| on(index, one_clean(index))),
            slipped_walks: each(size.walked, |index| on(index, one_slipped(index))),
        }
    }

    /// Clean surveys that are questioned.
    #[must_use]
    pub fn false_alarms(&self) -> Share {
        Share::of(&self.clean, |one| one.alarm)
    }
    /// Damaging slips that are questioned.
    #[must_use]
    pub fn found(&self) -> Share {
        Share::of(&self.slipped, |one| one.alarm)
    }
    /// Damaging slips that a range check alone questions.
    #[must_use]
    pub fn by_range(&self) -> Share {
        Share::of(&self.slipped, |one| one.baseline.range)
    }
    /// Of the slips found, those with the right reading named first.
    #[must_use]
    pub fn named(&self) -> Share {
        Share::of(self.slipped.iter().filter(|one| one.alarm), |one| one.named)
    }
    /// Of the slips found, those whose reading is the judge's first suspect, whatever the
    /// rules say before it.
    #[must_use]
    pub fn suspected(&self) -> Share {
        Share::of(self.slipped.iter().filter(|one| one.alarm), |one| one.suspected)
    }
    /// Of the values proposed, those that the tape had shown.
    #[must_use]
    pub fn value_right(&self) -> Share {
        let proposed = self.slipped.iter().filter(|one| one.proposed.is_some());
        Share::of(proposed, |one| one.proposed == Some(true))
    }
}

/// `make` of every index below `count`, in order, by as many threads as there are cores.
pub fn each<T: Send>(count: u64, make: impl Fn(u64) -> T + Sync) -> Vec<T> {
    const AT_ONCE: u64 = 25;
    let next = AtomicU64::new(0);
    let all = Mutex::new(Vec::new());
    let threads = thread::available_parallelism().map_or(1, usize::from);
    thread::scope(|scope| {
        for _ in 0..threads {
            scope.spawn(|| {
                loop {
                    let first = next.fetch_add(AT_ONCE, Ordering::Relaxed);
                    if first >= count {
                        break;
                    }
                    let some: Vec<(u64, T)> = (first..count.min(first + AT_ONCE))
                        .map(|index| (index, make(index)))
                        .collect();
                    let mut all = all.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
                    all.extend(some);
                }
            });
        }
    });
    let mut all = all.into_inner().unwrap_or_else(std::sync::PoisonError::into_inner);
    all.sort_by_key(|(index, _)| *index);
    all.into_iter().map(|(_, one)| one).collect()
}

/// The limits of the baselines for each of [`LAYOUTS`], from development seeds.
#[must_use]
pub fn limits() -> [Limits; 5] {
    /// Never reported on.
    const DEVELOPMENT: u64 = 1;
    LAYOUTS.map(|layout| Limits::fitted(&layout, DEVELOPMENT, 6_000))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_index_is_made_once_and_in_order() {
        assert_eq!(each(107, |index| index), (0..107).collect::<Vec<_>>());
        assert!(each(0, |index| index).is_empty());
    }
}
