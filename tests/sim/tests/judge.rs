//! A small `cargo xtask eval` at a fixed seed, with bounds: a judge that got worse fails here.
//!
//! The surveys are always the same ones, so nothing here is left to chance. The bounds are the
//! aims where those are reached, and what has been reached where they are not, each less (or
//! plus) what so few surveys may be off by: two standard deviations. `cargo xtask eval --check`
//! is the whole of it.

use std::sync::LazyLock;

use hangtrue_sim::baseline::Limits;
use hangtrue_sim::row::{Condition, Row, Size, usual};
use hangtrue_sim::share::Share;
use hangtrue_sim::{LAYOUTS, World};

/// A seed that `cargo xtask eval` does not report on.
const SEED: u64 = 3;
const SIZE: Size = Size { clean: 300, slipped: 300, walked: 20 };

/// In percent, for each of [`LAYOUTS`].
struct Bound {
    /// Of clean surveys, at most so many questioned.
    false_alarms: f64,
    /// Of damaging slips, at least so many questioned.
    found: f64,
    /// Of these, at least so many whose reading the judge suspects first, and the first
    /// finding names first.
    suspected: f64,
}

/// The aims, and what 300 surveys may be off by: 1.3 points on false alarms; 2.5 to 5.8 on
/// the rest. Not the aim but what is reached: found with four numbers (aim 47), and with one
/// diagonal and one closing reading (aim 87).
const BOUNDS: [Bound; 5] = [
    Bound { false_alarms: 2.6, found: 31.0, suspected: 92.0 },
    Bound { false_alarms: 2.6, found: 70.0, suspected: 93.0 },
    Bound { false_alarms: 2.6, found: 75.0, suspected: 86.5 },
    Bound { false_alarms: 2.6, found: 92.4, suspected: 93.0 },
    Bound { false_alarms: 2.6, found: 90.0, suspected: 90.0 },
];

static USUAL: LazyLock<Vec<Row>> = LazyLock::new(|| rows(&usual()));

fn rows(condition: &Condition) -> Vec<Row> {
    LAYOUTS.iter().map(|layout| Row::of(layout, condition, SEED, SIZE)).collect()
}

fn at_least(what: &str, row: &str, share: Share, least: f64) {
    assert!(share.percent() >= least, "{what}, {row}: {share:?} is less than {least} %");
}

fn at_most(what: &str, row: &str, share: Share, most: f64) {
    assert!(share.percent() <= most, "{what}, {row}: {share:?} is more than {most} %");
}

#[test]
fn slips_are_found_and_their_reading_is_suspected() {
    for ((layout, row), bound) in LAYOUTS.iter().zip(USUAL.iter()).zip(BOUNDS) {
        at_most("false alarms", layout.name, row.false_alarms(), bound.false_alarms);
        at_least("found", layout.name, row.found(), bound.found);
        at_least("suspected", layout.name, row.suspected(), bound.suspected);
        at_least("named first", layout.name, row.named(), bound.suspected);
    }
}

/// "Did you mean …?" is said where it is right in nine cases of ten.
#[test]
fn a_value_that_is_proposed_is_right() {
    let all: Vec<_> = USUAL.iter().flat_map(|row| &row.slipped).collect();
    let proposed = all.iter().copied().filter(|one| one.proposed.is_some());
    let right = Share::of(proposed, |one| one.proposed == Some(true));
    assert!(right.of > 300, "{right:?}");
    at_least("value right", "all", right, 90.0);
}

/// A least and a most on each field find some slips; the product finds those, but for the few
/// whose number lies in between what it and the baseline hold for possible.
#[test]
fn not_less_is_found_than_a_range_check_finds() {
    for (layout, row) in LAYOUTS.iter().zip(USUAL.iter()) {
        let missed = Share::of(&row.slipped, |one| one.baseline.range && !one.alarm);
        at_most("seen by a range check alone", layout.name, missed, 1.5);
        at_least("beside a range check", layout.name, row.found(), row.by_range().percent() - 0.7);
    }
}

/// Where one number is read more than once, more than a limit on scatter finds too.
#[test]
fn more_is_found_than_range_and_scatter_find() {
    for (layout, row) in LAYOUTS.iter().zip(USUAL.iter()).skip(2) {
        let limits = Limits::fitted(layout, 1, 1_000);
        let scatter = Share::of(&row.slipped, |one| one.baseline.by_scatter(&limits));
        at_least("beside scatter", layout.name, row.found(), scatter.percent() + 3.0);
    }
}

/// Noise half as large again: at most 3 in 100, and what 300 surveys may be off by.
#[test]
fn a_rough_frame_is_not_accused() {
    let noisy = Condition { world: World::default().noisier(1.5), ..usual() };
    let size = Size { slipped: 0, walked: 0, ..SIZE };
    for layout in LAYOUTS {
        let row = Row::of(&layout, &noisy, SEED, size);
        at_most("false alarms in noise", layout.name, row.false_alarms(), 5.0);
    }
}

/// A person who takes what is asked for is let go, and orders the right door.
#[test]
fn who_takes_what_is_asked_for_orders_the_right_door() {
    let walks: Vec<_> = USUAL.iter().flat_map(|row| &row.slipped_walks).collect();
    let right = Share::of(walks.iter().copied(), |walk| walk.damage < 6.35 - 1e-9);
    at_least("right in the end", "all", right, 90.0);
    let clean: Vec<_> = USUAL.iter().flat_map(|row| &row.clean_walks).collect();
    assert!(clean.iter().all(|walk| walk.extra <= 12 && walk.damage == 0.0), "{clean:?}");
}

/// On a metric tape one habit (a centimetre on every long reading) shows in nothing that could
/// be read further; nobody is asked to look for it again and again.
#[test]
fn who_reads_a_metric_tape_is_let_go_too() {
    let metric = Condition { world: World { metric: 1.0, ..World::default() }, ..usual() };
    let size = Size { clean: 0, slipped: 0, walked: 20 };
    for layout in LAYOUTS {
        let walks = Row::of(&layout, &metric, SEED, size).clean_walks;
        let asked: usize = walks.iter().map(|walk| walk.extra).sum();
        assert!(asked <= 5 * walks.len(), "{}: {asked} of {}", layout.name, walks.len());
    }
}
