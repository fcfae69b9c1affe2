//! What may be wrong, and with which readings: one reading, every repeat of a
//! dimension, two exchanged, all the long ones; or nothing but a knocked frame.

use super::network::{DEPARTURES, Departure, model};
use super::reading::{Reading, Readings};
use super::slips::{self, Candidate, SlipKind, Written};
use crate::length::{Length, Unit};
use crate::spot::{Group, Spot};

/// Slips a reading, before anything was read. Assumed; published figures for hand
/// entry run from 0.04 to 3.6 % an item.
pub(super) const RATE: f64 = 0.01;
/// Of these, on one reading only; the rest repeat on every reading of the dimension.
const ALONE: f64 = 0.8;
/// Surveys in which every long reading starts at the same wrong mark.
const HABIT: f64 = 0.003;
/// Departures of the frame that are far larger than the rest of the frame says.
const KNOCK: f64 = 0.02;
/// Size of such a knock, sd in mm.
const KNOCKED: f64 = 12.0;
/// Bows that differ from their fellows by design, and by how much, sd in mm.
const BOWS_DIFFER: (f64, f64) = (0.35, 8.0);

/// Which readings a pattern is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum About {
    /// One reading, by its place in the list.
    One(usize),
    /// Every repeat at one spot.
    Spot(Spot),
    /// Every reading of one group.
    Whole(Group),
    /// Some readings of two groups, exchanged.
    Exchange(Group, Group),
    /// All long readings.
    Long,
    /// The frame: nobody's slip.
    Frame,
}

/// One assumption on how large the change is.
#[derive(Clone, Copy, Debug)]
pub(super) struct Guess {
    pub(super) slip: SlipKind,
    /// Written less true, mm, along the pattern's direction: from, to; equal where
    /// the value is exact.
    pub(super) least: f64,
    pub(super) most: f64,
    /// Prior probability.
    pub(super) prior: f64,
    /// What the first of the pattern's readings would have been, where it is exact.
    pub(super) meant: Option<Length>,
}

/// A way of being wrong: readings change by a multiple of `direction`.
#[derive(Clone, Debug)]
pub(super) struct Pattern {
    pub(super) about: About,
    pub(super) direction: Vec<f64>,
    pub(super) guesses: Vec<Guess>,
    /// For [`About::Frame`]: prior probability, and sd of the multiple in mm.
    pub(super) knock: Option<(f64, f64)>,
}

impl Pattern {
    /// The readings it touches.
    pub(super) fn touches(&self) -> impl Iterator<Item = usize> + '_ {
        self.direction.iter().enumerate().filter(|(_, d)| **d != 0.0).map(|(i, _)| i)
    }
}

/// Every pattern for `readings`, in a fixed order.
pub(super) fn all(readings: &Readings) -> Vec<Pattern> {
    let list = readings.list.as_slice();
    let mut patterns: Vec<Pattern> = (0..list.len()).map(|i| one(readings, i)).collect();
    for group in GROUPS {
        patterns.extend(whole(readings, group));
    }
    for spot in Spot::ALL {
        patterns.extend(repeated(readings, spot));
    }
    exchanges(list, Group::Width, Group::Height, &mut patterns);
    exchanges(list, Group::Header, Group::Bow, &mut patterns);
    patterns.extend(habit(list));
    patterns.extend(DEPARTURES.iter().filter_map(|departure| knock(list, departure)));
    patterns
}

/// The groups that the network ties together.
const GROUPS: [Group; 6] =
    [Group::Width, Group::Height, Group::Header, Group::Bow, Group::Diagonal, Group::Loop];

/// What may have been meant by `readings.list[first]`, each with its prior.
fn guesses(readings: &Readings, first: usize, rate: f64) -> Vec<Guess> {
    let Some(reading) = readings.list.get(first) else { return Vec::new() };
    let bow = readings.list.iter().find(|r| r.spot.group() == Group::Bow).map(|r| r.length);
    let written = Written {
        group: reading.spot.group(),
        length: reading.length,
        unit: reading.unit,
        feet: reading.feet,
        bow,
    };
    let habit = readings.habit(reading.unit);
    let rate = rate / slips::total();
    let mut list: Vec<Guess> = Vec::with_capacity(96);
    slips::meant(&written, |slip, candidate, weight| {
        let guess = match candidate {
            Candidate::Value(value, _) => {
                let shift = reading.mm - value.to_mm();
                let liked = habit.liking(value) / reading.liking;
                let prior = rate * weight * liked;
                Guess { slip, least: shift, most: shift, prior, meant: Some(value) }
            }
            Candidate::Shift(least, most, _) => {
                // Off as it is, it was read by the same habits: they speak for neither.
                Guess { slip, least, most, prior: rate * weight, meant: None }
            }
        };
        list.push(guess);
    });
    list
}

fn one(readings: &Readings, i: usize) -> Pattern {
    let direction = unit(readings.list.len(), |k, _| k == i, &readings.list);
    let guesses = guesses(readings, i, RATE * ALONE);
    Pattern { about: About::One(i), direction, guesses, knock: None }
}

fn unit(n: usize, on: impl Fn(usize, &Reading) -> bool, list: &[Reading]) -> Vec<f64> {
    let mut direction = vec![0.0; n];
    for (k, (cell, reading)) in direction.iter_mut().zip(list).enumerate() {
        if on(k, reading) {
            *cell = 1.0;
        }
    }
    direction
}

#[expect(clippy::cast_precision_loss, reason = "a survey has few readings")]
fn together(readings: &Readings, about: About, on: impl Fn(&Reading) -> bool) -> Option<Pattern> {
    let list = &readings.list;
    let direction = unit(list.len(), |_, reading| on(reading), list);
    let count = list.iter().filter(|reading| on(reading)).count();
    // The tightest reading speaks for all of them.
    let members = list.iter().enumerate().filter(|(_, reading)| on(reading));
    let first = members.min_by_key(|(_, reading)| match reading.spot.group() {
        Group::Bow => -reading.length,
        _ => reading.length,
    })?;
    let rate = RATE * (1.0 - ALONE) * count as f64;
    (count > 1).then(|| Pattern {
        about,
        direction,
        guesses: guesses(readings, first.0, rate),
        knock: None,
    })
}

fn whole(readings: &Readings, group: Group) -> Option<Pattern> {
    // The two closing readings are not two readings of one thing.
    if group == Group::Loop {
        return None;
    }
    together(readings, About::Whole(group), |reading| reading.spot.group() == group)
}

fn repeated(readings: &Readings, spot: Spot) -> Option<Pattern> {
    let elsewhere = readings
        .list
        .iter()
        .any(|reading| reading.spot.group() == spot.group() && reading.spot != spot);
    let needed = elsewhere || spot.group() == Group::Loop;
    needed.then(|| together(readings, About::Spot(spot), |r| r.spot == spot)).flatten()
}

/// Exchanges of `left` and `right`: all of them, or one with one.
#[expect(clippy::cast_precision_loss, reason = "a survey has few readings")]
fn exchanges(list: &[Reading], left: Group, right: Group, patterns: &mut Vec<Pattern>) {
    let of = |group| -> Vec<usize> {
        let all = list.iter().enumerate();
        all.filter(|(_, r)| r.spot.group() == group).map(|(i, _)| i).collect()
    };
    let (lefts, rights) = (of(left), of(right));
    let n = lefts.len().saturating_add(rights.len());
    let pairs = lefts.len().saturating_mul(rights.len());
    if pairs == 0 {
        return;
    }
    let rate = RATE * n as f64 * slips::EXCHANGE / slips::total();
    let at = |i: &usize| list.get(*i);
    let mean =
        |of: &[usize]| of.iter().filter_map(at).map(|r| r.mm).sum::<f64>() / of.len().max(1) as f64;
    let mut push = |left_of: &[usize], right_of: &[usize], prior: f64| {
        // Written less true: the left now says what the right should.
        let apart = mean(left_of) - mean(right_of);
        let mut direction = vec![0.0; list.len()];
        for (i, cell) in direction.iter_mut().enumerate() {
            if left_of.contains(&i) {
                *cell = apart;
            } else if right_of.contains(&i) {
                *cell = -apart;
            }
        }
        let meant = right_of.first().and_then(at).map(|r| r.length);
        let slip = SlipKind::Exchange;
        let guesses = vec![Guess { slip, least: 1.0, most: 1.0, prior, meant }];
        patterns.push(Pattern {
            about: About::Exchange(left, right),
            direction,
            guesses,
            knock: None,
        });
    };
    if pairs == 1 {
        push(&lefts, &rights, rate);
        return;
    }
    push(&lefts, &rights, rate * 0.4);
    for left in &lefts {
        for right in &rights {
            push(&[*left], &[*right], rate * 0.6 / pairs as f64);
        }
    }
}

/// One inch (or ten centimetres) on every long reading.
fn habit(list: &[Reading]) -> Option<Pattern> {
    let long = |reading: &Reading| reading.length > Length::from_inches(24);
    if list.iter().filter(|reading| long(reading)).count() < 2 {
        return None;
    }
    let direction = unit(list.len(), |_, reading| long(reading), list);
    let first = list.iter().find(|reading| long(reading))?;
    let offs: &[(Length, f64)] = match first.unit {
        Unit::Inch => &[(Length::INCH, 0.65), (Length::from_inches(-1), 0.35)],
        Unit::Millimetre => &[
            (Length::from_mm(10), 0.35),
            (Length::from_mm(-10), 0.15),
            (Length::from_mm(100), 0.4),
            (Length::from_mm(-100), 0.1),
        ],
    };
    let guesses = offs
        .iter()
        .map(|(off, share)| Guess {
            slip: SlipKind::Habit,
            least: off.to_mm(),
            most: off.to_mm(),
            prior: HABIT * share,
            // Of each long reading another.
            meant: None,
        })
        .collect();
    Some(Pattern { about: About::Long, direction, guesses, knock: None })
}

/// A departure of the frame that its other departures do not lead one to expect.
fn knock(list: &[Reading], departure: &Departure) -> Option<Pattern> {
    let sizes = [2300.0, 2500.0, 250.0, 30.0];
    let direction: Vec<f64> = list
        .iter()
        .map(|reading| {
            let design = model(reading.spot, &sizes).map(|(_, design)| design);
            design.and_then(|design| design.get(departure.unknown).copied()).unwrap_or(0.0)
        })
        .collect();
    let bow = (10..=11).contains(&departure.unknown);
    let knock = Some(if bow { BOWS_DIFFER } else { (KNOCK, KNOCKED) });
    let any = direction.iter().any(|d| *d != 0.0);
    any.then(|| Pattern { about: About::Frame, direction, guesses: Vec::new(), knock })
}
