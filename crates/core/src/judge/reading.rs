//! A reading as the judge works with it.

use super::habit::{Habit, on};
use super::network::placing;
use super::tape;
use crate::length::{Length, Unit};
use crate::spot::{Group, Spot};
use crate::survey::Survey;

/// Repeats at one spot beyond this many add nothing but time; the last ones count.
const REPEATS: usize = 6;

/// One reading that counts.
#[derive(Clone, Copy, Debug)]
pub(super) struct Reading {
    pub(super) spot: Spot,
    /// Which entry of the spot it is, struck and unread ones counted.
    pub(super) index: usize,
    pub(super) length: Length,
    pub(super) mm: f64,
    /// The tape it was read on.
    pub(super) unit: Unit,
    /// Read in feet and inches, or in inches alone.
    pub(super) feet: bool,
    /// Variance of rounding, mm².
    rounding: f64,
    /// How often this reader writes exactly this.
    pub(super) liking: f64,
}

/// The readings of a survey that the network ties together, and who read them.
pub(super) struct Readings {
    pub(super) list: Vec<Reading>,
    inch: Habit,
    metric: Habit,
}

/// The tape a length was read on: the survey's, unless its marks say otherwise.
fn tape_of(length: Length, unit: Unit) -> Unit {
    // Every half inch is on a tenth of a millimetre, which a tape does not have.
    let step = match unit {
        Unit::Inch => Length::from_tenths_mm(1),
        Unit::Millimetre => Length::from_tenths_mm(5),
    };
    match (unit, on(length, Length::SIXTY_FOURTH), on(length, step)) {
        (Unit::Inch, false, true) => Unit::Millimetre,
        (Unit::Millimetre, true, false) => Unit::Inch,
        _ => unit,
    }
}

impl Readings {
    pub(super) fn of(survey: &Survey) -> Self {
        let mut list = Vec::new();
        for spot in Spot::ALL.into_iter().filter(|spot| spot.group() != Group::Post) {
            let entries = survey.entries(spot).iter().enumerate();
            let counted = entries.filter_map(|(index, entry)| match entry.read {
                Ok(length) if !entry.struck && length > Length::ZERO => {
                    Some((index, length, &entry.text))
                }
                _ => None,
            });
            let counted: Vec<_> = counted.collect();
            let surplus = counted.len().saturating_sub(REPEATS);
            for (index, length, text) in counted.into_iter().skip(surplus) {
                let unit = tape_of(length, survey.unit);
                let feet = unit == Unit::Inch && in_feet(text);
                let mm = length.to_mm();
                list.push(Reading {
                    spot,
                    index,
                    length,
                    mm,
                    unit,
                    feet,
                    rounding: 0.0,
                    liking: 1.0,
                });
            }
        }
        let read_on = |unit| -> Vec<Length> {
            list.iter().filter(|r| r.unit == unit).map(|r| r.length).collect()
        };
        let inch = Habit::of(&read_on(Unit::Inch), Unit::Inch);
        let metric = Habit::of(&read_on(Unit::Millimetre), Unit::Millimetre);
        let mut readings = Self { list: Vec::new(), inch, metric };
        for reading in &mut list {
            let habit = readings.habit(reading.unit);
            reading.rounding = habit.variance(reading.length);
            reading.liking = habit.liking(reading.length);
        }
        readings.list = list;
        readings
    }

    /// How the reader of this survey rounds on a tape in `unit`.
    pub(super) fn habit(&self, unit: Unit) -> &Habit {
        match unit {
            Unit::Inch => &self.inch,
            Unit::Millimetre => &self.metric,
        }
    }
}

/// Whether a text says feet: by mark, or by name. The foot of a tape begins with "pi" in Spanish and
/// in French, and no other word of a reading has it.
fn in_feet(text: &str) -> bool {
    let text = text.to_ascii_lowercase();
    text.contains(['\'', '’', '′'])
        || ["ft", "foot", "feet", "pi"].iter().any(|name| text.contains(name))
}

impl Reading {
    /// Standard deviation of the reading, mm: hand, tape and hook times `scale`,
    /// rounding, and what the spot adds.
    pub(super) fn sigma(&self, scale: f64) -> f64 {
        let tape = scale * tape::sigma(self.mm);
        let placing = scale * placing(self.spot.group());
        (tape * tape + placing * placing + self.rounding).sqrt()
    }
}
