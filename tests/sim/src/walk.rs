//! The person goes on: takes the reading that is asked for, until none is.

use hangtrue_core::check::check;
use hangtrue_core::profile::Profile;
use hangtrue_core::spot::Spot;

use crate::mark::{typed, unit};
use crate::rng::Rng;
use crate::spots::ORDERED;
use crate::survey::{Simulated, Taken};
use crate::world::World;

/// Nobody takes more than this many further readings.
const PATIENCE: usize = 24;
/// A spot that was doubted and read again so often is confirmed.
const CONFIRMED: usize = 3;
/// A second look agrees with the first within this, mm: the first then stays, beside it.
const AGREES: f64 = 3.2;

/// How the rest of a survey went.
#[derive(Clone, Copy, Debug)]
pub struct Walked {
    /// Further readings taken.
    pub extra: usize,
    /// A reading was doubted at some time.
    pub doubted: bool,
    /// Something is still doubted at the end: the person had to confirm it.
    pub confirmed: bool,
    /// By how much the worst ordered number is off at the end, mm.
    pub damage: f64,
}

/// One reading in the survey, and whether it was struck.
struct Kept {
    taken: Taken,
    struck: bool,
}

/// Takes the readings that the judge asks for, one at a time. A reading that is doubted is
/// looked at twice, so it comes out right; any other further one shares what is wrong with
/// all of its kind.
#[must_use]
pub fn walk_on(simulated: &Simulated, world: &World, rng: &mut Rng) -> Walked {
    let mut kept: Vec<Kept> = simulated
        .readings
        .iter()
        .map(|taken| Kept { taken: taken.clone(), struck: false })
        .collect();
    let mut walked = Walked { extra: 0, doubted: false, confirmed: false, damage: 0.0 };
    while walked.extra < PATIENCE {
        let readings = kept.iter().map(|kept| (&kept.taken, kept.struck));
        let survey = typed(unit(simulated), readings);
        let judgement = check(&survey, &Profile::default()).judgement;
        let Some(next) = judgement.next.first() else { break };
        let spot = name(next.spot);
        let suspect = judgement.likely.first().filter(|_| judgement.alarm);
        walked.doubted |= suspect.is_some();
        let taken = simulated.read(spot, suspect.is_some(), world, rng);
        if let Some(suspect) = suspect {
            let looks = kept.iter().filter(|kept| kept.taken.spot == spot).count();
            if looks > CONFIRMED {
                walked.confirmed = true;
                break;
            }
            let mut of = kept.iter_mut().filter(|kept| kept.taken.spot == name(suspect.spot));
            if let Some(old) = of.nth(suspect.index) {
                let apart = old.taken.written.mm() - taken.written.mm();
                old.struck = apart.abs() > AGREES;
            }
        }
        kept.push(Kept { taken, struck: false });
        walked.extra += 1;
    }
    walked.damage = ORDERED.iter().map(|group| off(group, &kept)).fold(0.0, f64::max);
    walked
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
