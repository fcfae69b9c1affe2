//! The door's record: what was ordered, how it was hung, what was done since.

use super::care::Service;
use super::inspection::Inspection;
use super::tracks::Pair;
use super::weight::Weight;
use crate::length::{Length, Unit, read};
use crate::order::{Date, Order};
use core::ops::RangeInclusive;

/// A place where the tape is read while a door is hung.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Place {
    /// Between the vertical tracks, low.
    TrackLow,
    /// Between the vertical tracks, half-way.
    TrackMiddle,
    /// Between the vertical tracks, high.
    TrackHigh,
    /// Diagonal of the vertical tracks, from low left to high right.
    TrackRising,
    /// Diagonal of the vertical tracks, from high left to low right.
    TrackFalling,
    /// From the low to the high marks along a vertical track.
    TrackMarks,
    /// Between the horizontal tracks, at the front of the body.
    UpperFront,
    /// Between the horizontal tracks, half-way.
    UpperMiddle,
    /// Between the horizontal tracks, at the door.
    UpperRear,
    /// Across the legs of the check for square, left side.
    SquareLeft,
    /// Across the legs of the check for square, right side.
    SquareRight,
    /// From the left post to the latch plate's center.
    LatchLeft,
    /// From the right post to the latch plate's center.
    LatchRight,
    /// The whole play from side to side.
    Shift,
}

impl Place {
    /// All of them, in the order of the work and of the files. Records keep a reading by its
    /// place here: new places go to the end.
    pub const ALL: [Self; 14] = [
        Self::TrackLow,
        Self::TrackMiddle,
        Self::TrackHigh,
        Self::TrackRising,
        Self::TrackFalling,
        Self::TrackMarks,
        Self::UpperFront,
        Self::UpperMiddle,
        Self::UpperRear,
        Self::SquareLeft,
        Self::SquareRight,
        Self::LatchLeft,
        Self::LatchRight,
        Self::Shift,
    ];

    /// Its place in [`Place::ALL`].
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::TrackLow => "track-low",
            Self::TrackMiddle => "track-middle",
            Self::TrackHigh => "track-high",
            Self::TrackRising => "track-rising",
            Self::TrackFalling => "track-falling",
            Self::TrackMarks => "track-marks",
            Self::UpperFront => "upper-front",
            Self::UpperMiddle => "upper-middle",
            Self::UpperRear => "upper-rear",
            Self::SquareLeft => "square-left",
            Self::SquareRight => "square-right",
            Self::LatchLeft => "latch-left",
            Self::LatchRight => "latch-right",
            Self::Shift => "shift",
        }
    }
    /// The place of a name in files.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|place| place.key() == key)
    }
}

/// The readings taken while the door was hung: as typed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AsBuilt(pub [String; 14]);

impl AsBuilt {
    /// What was typed at `place`.
    #[must_use]
    pub fn text(&self, place: Place) -> &str {
        self.0.get(place.index()).map_or("", String::as_str)
    }
    /// Types `text` at `place`.
    pub fn set(&mut self, place: Place, text: &str) {
        if let Some(cell) = self.0.get_mut(place.index()) {
            text.clone_into(cell);
        }
    }
    /// What is read there; none where nothing is, or it is no reading.
    #[must_use]
    pub fn read(&self, place: Place, unit: Unit) -> Option<Length> {
        let text = self.text(place);
        if text.trim().is_empty() { None } else { read(text, unit).ok() }
    }
    /// The readings of the two vertical tracks. `marks` is what stands for the height between
    /// the marks where none was read.
    #[must_use]
    pub fn pair(&self, unit: Unit) -> Pair {
        let list = |place| self.read(place, unit).into_iter().collect();
        Pair {
            spacing: [Place::TrackLow, Place::TrackMiddle, Place::TrackHigh].map(list),
            diagonal: [Place::TrackRising, Place::TrackFalling].map(list),
            rise: self.read(Place::TrackMarks, unit),
        }
    }
    /// Spacing of the horizontal tracks: front, middle, rear.
    #[must_use]
    pub fn upper(&self, unit: Unit) -> [Option<Length>; 3] {
        [Place::UpperFront, Place::UpperMiddle, Place::UpperRear].map(|at| self.read(at, unit))
    }
    /// Whether nothing was read.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.iter().all(String::is_empty)
    }
}

/// Turns of the spring in whole quarters: what a winding bar can set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct QuarterTurns(pub u16);

impl QuarterTurns {
    /// Turns that are read.
    pub const REACH: RangeInclusive<f64> = 0.0..=100.0;

    /// As turns.
    #[must_use]
    pub fn turns(self) -> f64 {
        f64::from(self.0) / 4.0
    }
    /// The nearest; none below nothing or beyond a hundred turns.
    #[must_use]
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "bounded before")]
    pub fn of(turns: f64) -> Option<Self> {
        Self::REACH.contains(&turns).then(|| Self(libm::round(turns * 4.0) as u16))
    }
}

/// Everything that is known of one door.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Record {
    /// What was ordered.
    pub order: Order,
    /// The readings taken while it was hung.
    pub built: AsBuilt,
    /// What the door weighs, if it is known.
    pub weight: Option<Weight>,
    /// Turns wound on the spring.
    pub turns: Option<QuarterTurns>,
    /// The door's serial number.
    pub serial: String,
    /// The day it was hung.
    pub hung: Option<Date>,
    /// How often it is opened a day.
    pub per_day: Option<u16>,
    /// The last inspection.
    pub inspection: Inspection,
    /// What was done since, oldest first.
    pub services: Vec<Service>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn upper_tracks_are_read_front_to_rear() {
        let mut built = AsBuilt::default();
        assert!(built.is_empty());
        for (place, text) in [(Place::UpperFront, "92"), (Place::UpperRear, "91 7/8")] {
            built.set(place, text);
        }
        assert!(!built.is_empty());
        let read = [Some(92 * 16), None, Some(91 * 16 + 14)];
        assert_eq!(built.upper(Unit::Inch), read.map(|n| n.map(Length::from_sixteenths)));
    }

    #[test]
    fn every_place_is_found_by_its_key_and_index() {
        for (index, place) in Place::ALL.into_iter().enumerate() {
            assert_eq!(place.index(), index);
            assert_eq!(Place::from_key(place.key()), Some(place));
        }
        assert_eq!(Place::from_key("nowhere"), None);
    }

    #[test]
    fn readings_are_kept_as_typed_and_read_in_their_unit() {
        let mut built = AsBuilt::default();
        assert!(built.is_empty());
        built.set(Place::TrackLow, "92 1/4");
        built.set(Place::TrackMiddle, "about");
        built.set(Place::TrackHigh, "2343 mm");
        let pair = built.pair(Unit::Inch);
        assert_eq!(pair.spacing[0], [Length::from_sixteenths(92 * 16 + 4)]);
        assert!(pair.spacing[1].is_empty());
        assert_eq!(pair.spacing[2], [Length::from_mm(2343)]);
        assert_eq!(built.text(Place::TrackMiddle), "about");
    }

    #[test]
    fn turns_are_kept_in_quarters() {
        assert_eq!(QuarterTurns::of(12.3).map(QuarterTurns::turns), Some(12.25));
        assert_eq!(QuarterTurns::of(-1.0), None);
        assert_eq!(QuarterTurns::of(f64::NAN), None);
        assert_eq!(QuarterTurns::of(101.0), None);
    }
}
