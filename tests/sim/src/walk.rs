//! The person goes on: takes the reading that is asked for, until none is.

use hangtrue_core::check::{Report, Verdict, check};
use hangtrue_core::profile::Profile;
use hangtrue_core::spot::Spot;

use crate::mark::{typed, unit};
use crate::rng::Rng;
use crate::spots::ORDERED;
use crate::survey::{Simulated, Taken};
use crate::world::World;

/// Nobody takes more than this many further readings.
const PATIENCE: usize = 24;
/// A spot that was doubted and looked at so often is left as it is.
const LOOKS: usize = 2;
/// A second look agrees with the first within this, mm: the first then stays, beside it.
const AGREES: f64 = 3.2;

/// How the rest of a survey went.
#[derive(Clone, Copy, Debug)]
pub struct Walked {
    /// Further readings taken.
    pub extra: usize,
    /// A reading was doubted at some time.
    pub doubted: bool,
    /// Something is still doubted at the end: the person had to confirm it, or was stopped.
    pub confirmed: bool,
    /// By how much the worst ordered number is off at the end, mm.
    pub damage: f64,
}

/// One reading in the survey, and whether it was struck.
struct Kept {
    taken: Taken,
    struck: bool,
}

/// Takes the readings that are asked for, one at a time. What is doubted is looked at twice,
/// so it comes out right; any other further reading shares what is wrong with all of its kind.
/// Where the doubted readings were all looked at twice, the person insists.
#[must_use]
pub fn walk_on(simulated: &Simulated, world: &World, rng: &mut Rng) -> Walked {
    let mut kept: Vec<Kept> = simulated
        .readings
        .iter()
        .map(|taken| Kept { taken: taken.clone(), struck: false })
        .collect();
    let mut looked: Vec<&'static str> = Vec::new();
    let mut walked = Walked { extra: 0, doubted: false, confirmed: false, damage: 0.0 };
    while walked.extra < PATIENCE {
        let readings = kept.iter().map(|kept| (&kept.taken, kept.struck));
        let report = check(&typed(unit(simulated), readings), &Profile::default());
        if report.verdict == Verdict::Clear {
            let Some(next) = report.judgement.next.first() else { break };
            let taken = simulated.read(name(next.spot), false, world, rng);
            kept.push(Kept { taken, struck: false });
            walked.extra += 1;
            continue;
        }
        walked.doubted = true;
        let again = doubted(&report, &looked);
        walked.confirmed = again.is_empty();
        if walked.confirmed {
            break;
        }
        for spot in again {
            looked.push(spot);
            let taken = simulated.read(spot, true, world, rng);
            for old in kept.iter_mut().filter(|kept| kept.taken.spot == spot) {
                let apart = old.taken.written.mm() - taken.written.mm();
                old.struck |= apart.abs() > AGREES;
            }
            kept.push(Kept { taken, struck: false });
            walked.extra += 1;
        }
    }
    walked.damage = ORDERED.iter().map(|group| off(group, &kept)).fold(0.0, f64::max);
    walked
}

/// What to look at again: all that the judge suspects together, if it is what is told first;
/// else the first reading told of that was not looked at often enough.
fn doubted(report: &Report, looked: &[&'static str]) -> Vec<&'static str> {
    let open = |spot: &&'static str| {
        !spot.is_empty() && looked.iter().filter(|other| *other == spot).count() < LOOKS
    };
    let told = || report.findings.iter().filter(|f| Verdict::from(f.severity) != Verdict::Clear);
    let first = told().find_map(|finding| finding.spots.first());
    if let Some(likely) = report.judgement.likely.first()
        && Some(&likely.spot) == first
    {
        let together: Vec<_> = likely.spots.iter().map(|spot| name(*spot)).filter(&open).collect();
        if !together.is_empty() {
            return together;
        }
    }
    let all = told().flat_map(|finding| &finding.spots).map(|spot| name(*spot));
    all.into_iter().find(&open).into_iter().collect()
}

/// The spot's name, for good.
fn name(spot: Spot) -> &'static str {
    let key = spot.key();
    NAMES.iter().find(|name| **name == key).copied().unwrap_or("")
}

const NAMES: [&str; 16] = [
    "width.low",
    "width.middle",
    "width.high",
    "height.left",
    "height.center",
    "height.right",
    "header.left",
    "header.center",
    "header.right",
    "bow.first",
    "bow.second",
    "bow.third",
    "diagonal.rising",
    "diagonal.falling",
    "loop.sill_to_roof",
    "loop.sill_to_bow",
];

/// How far the ordered number of `group` is from what the same marks show.
fn off(group: &str, kept: &[Kept]) -> f64 {
    let tightest = |number: fn(&Taken) -> f64| {
        let counted = kept.iter().filter(|kept| !kept.struck && kept.taken.group() == group);
        let numbers = counted.map(|kept| number(&kept.taken));
        if group == "bow" { numbers.reduce(f64::max) } else { numbers.reduce(f64::min) }
    };
    let written = tightest(|taken| taken.written.mm());
    let meant = tightest(|taken| taken.meant.mm());
    written.zip(meant).map_or(0.0, |(written, meant)| (written - meant).abs())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spots::FOUR;
    use crate::survey::clean;
    use crate::world::Population;

    #[test]
    fn every_spot_that_can_be_asked_for_has_a_name_here() {
        let named = Spot::ALL.into_iter().filter(|spot| NAMES.contains(&spot.key().as_str()));
        assert_eq!(named.count(), NAMES.len());
        let rest = Spot::ALL.into_iter().filter(|spot| name(*spot).is_empty());
        assert!(rest.into_iter().all(|spot| spot.key().starts_with("post.")));
    }

    #[test]
    fn a_person_is_asked_for_some_readings_and_is_let_go() {
        let (world, mut rng) = (World::default(), Rng::new(12));
        let survey = clean(&FOUR, Population::Yard, &world, &mut rng);
        let walked = walk_on(&survey, &world, &mut rng);
        assert!(walked.extra > 0 && walked.extra < PATIENCE && walked.damage == 0.0, "{walked:?}");
    }
}
