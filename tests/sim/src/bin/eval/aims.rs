//! What the judge is to reach, and whether it does.

use hangtrue_sim::row::{Condition, Row};
use hangtrue_sim::share::Share;
use hangtrue_sim::{Population, Weights};

/// An aim that is missed.
pub(crate) struct Missed {
    pub(crate) what: String,
    pub(crate) row: String,
}

/// At least so many found and so many named, in percent, for each of the sets of readings.
pub(crate) const AIMS: [(f64, f64); 5] =
    [(47.0, 95.0), (70.0, 95.0), (87.0, 90.0), (95.0, 95.0), (93.0, 93.0)];
/// At most so many false alarms, in percent: as assumed; with more noise; other openings.
const FALSE_ALARMS: f64 = 1.3;
const FALSE_ALARMS_NOISY: f64 = 3.0;
const FALSE_ALARMS_ELSEWHERE: f64 = 2.0;
/// Points that other weights of the slips may cost.
const WEIGHTS: f64 = 2.0;

/// The most false alarms under `condition`, in percent; none where nothing was set.
fn most_false_alarms(condition: &Condition, first: bool) -> Option<f64> {
    if first {
        return Some(FALSE_ALARMS);
    }
    if condition.name.starts_with("noise") {
        return Some(FALSE_ALARMS_NOISY);
    }
    (condition.population != Population::Yard).then_some(FALSE_ALARMS_ELSEWHERE)
}

/// Each aim that `row`, of the set of readings at `place`, misses. `usual` is the same set
/// under the usual condition.
pub(crate) fn missed(
    condition: &Condition,
    first: bool,
    place: usize,
    row: &Row,
    usual: Option<&Row>,
) -> Vec<String> {
    let mut missed = Vec::new();
    let mut least = |what: &str, share: Share, aim: f64| {
        if share.percent() < aim {
            missed.push(told(
                what,
                share,
                &format!("at least {aim:.1}"),
                share.interval().1 >= aim,
            ));
        }
    };
    let found = row.found();
    if let (true, Some((aim, named))) = (first, AIMS.get(place)) {
        least("found", found, *aim);
        least("named", row.named(), *named);
    }
    least("found beside the range check", found, row.by_range().percent());
    if let (Weights::Equal, Some(usual)) = (condition.weights, usual) {
        least("found with other weights of the slips", found, usual.found().percent() - WEIGHTS);
    }
    let alarms = row.false_alarms();
    if let Some(most) = most_false_alarms(condition, first)
        && alarms.percent() > most
    {
        let near = alarms.interval().0 <= most;
        missed.push(told("false alarms", alarms, &format!("at most {most:.1}"), near));
    }
    missed
}

fn told(what: &str, share: Share, aim: &str, near: bool) -> String {
    let (least, most) = share.interval();
    let near = if near { "; the aim lies within the interval" } else { "" };
    format!(
        "{what} {:.2} %, 95 % interval {least:.2} to {most:.2}, aim {aim}{near}",
        share.percent()
    )
}
