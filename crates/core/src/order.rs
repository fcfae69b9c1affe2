//! The order: four numbers, how they came about, and what goes with them.

use crate::check::Verdict;
use crate::frame::Preparation;
use crate::length::Length;
use crate::profile::{Profile, Take};
use crate::short::digits;
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

/// One ordered number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Number {
    /// Which of the four.
    pub dimension: Dimension,
    /// The reading it is taken from: the tightest, or the mean where a profile says so.
    pub as_found: Length,
    /// Where the tightest was read.
    pub spot: Spot,
    /// What the order says: as the opening will be once the frame is built,
    /// rounded to the safe side.
    pub ordered: Length,
}

/// The four numbers, in the order of [`Dimension::ALL`]; one is missing where nothing was read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Numbers(pub [Option<Number>; 4]);

impl Numbers {
    /// The number of `dimension`.
    #[must_use]
    pub fn get(&self, dimension: Dimension) -> Option<&Number> {
        self.0.get(dimension.index()).and_then(Option::as_ref)
    }
    /// What the order says for `dimension`.
    #[must_use]
    pub fn ordered(&self, dimension: Dimension) -> Option<Length> {
        self.get(dimension).map(|number| number.ordered)
    }
    /// The four numbers of `survey`: the tightest reading of each, or the mean where
    /// `profile` says so, changed by what has to be built, rounded to the side on which
    /// the door still fits.
    #[must_use]
    pub fn of(survey: &Survey, profile: &Profile, preparation: &Preparation) -> Self {
        let step = profile.step(survey.unit);
        Self(Dimension::ALL.map(|dimension| {
            let (spot, tightest) = survey.tightest(dimension)?;
            let as_found = match profile.take {
                Take::Tightest => tightest,
                Take::Mean => survey.mean(dimension)?,
            };
            let built = as_found + preparation.change(dimension);
            let ordered = match dimension {
                // A bow that hangs lower leaves less room: its safe side is up.
                Dimension::Bow => built.ceil_to(step),
                Dimension::Width | Dimension::Height | Dimension::Header => built.floor_to(step),
            };
            Some(Number { dimension, as_found, spot, ordered })
        }))
    }
    /// Whether all four are there.
    #[must_use]
    pub fn complete(&self) -> bool {
        self.0.iter().all(Option::is_some)
    }
}

/// A day, as the writer's device gave it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date {
    /// 2000 to 2255.
    pub year: u16,
    /// 1 to 12.
    pub month: u8,
    /// 1 to 31.
    pub day: u8,
}

impl Date {
    /// As ISO 8601 has it: `2026-11-25`.
    #[must_use]
    pub fn text(self) -> String {
        let two = |n: u8| [if n < 10 { "0" } else { "" }, &digits(n)].concat();
        [&digits(self.year), "-", &two(self.month), "-", &two(self.day)].concat()
    }

    /// The day of such a text, from 2000 to 2255; none for anything that [`Self::text`] does
    /// not write.
    #[must_use]
    pub fn from_text(text: &str) -> Option<Self> {
        let mut parts = text.split('-');
        let mut part = |digits: usize| {
            let part = parts.next()?;
            let fine = part.len() == digits && part.bytes().all(|byte| byte.is_ascii_digit());
            if fine { part.parse::<u16>().ok() } else { None }
        };
        let (year, month, day) = (part(4)?, part(2)?, part(2)?);
        let fits = (2000..=2255).contains(&year)
            && (1..=12).contains(&month)
            && (1..=31).contains(&day)
            && parts.next().is_none();
        if !fits {
            return None;
        }
        Some(Self { year, month: u8::try_from(month).ok()?, day: u8::try_from(day).ok()? })
    }
}

/// A finding that a person looked at and confirmed.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Confirmed {
    /// The rule's code.
    pub rule: String,
    /// The reading it was about, if it was about one.
    pub spot: Option<Spot>,
}

/// The answer to a question that a dealer's profile asks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    /// The question's key in the profile.
    pub question: String,
    /// The answer as text.
    pub answer: String,
}

/// Everything that is handed over.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Order {
    /// The readings, as typed. The numbers are derived from them on every opening.
    pub survey: Survey,
    /// The verdict that the writer saw: a claim, checked again on opening.
    pub claimed: Verdict,
    /// What the writer confirmed.
    pub confirmed: Vec<Confirmed>,
    /// Whether the old door was still in when the readings were taken.
    pub old_door_in: Option<bool>,
    /// Which truck: a plate, a unit number, whatever the writer calls it.
    pub vehicle: String,
    /// Free text.
    pub note: String,
    /// How to reach the writer, if they chose to say.
    pub contact: String,
    /// Answers to a dealer's own questions.
    pub answers: Vec<Answer>,
    /// The profile the order was made under: its name and revision.
    pub profile: Option<(String, u32)>,
    /// The writer's language, `en`, `es` or `fr`.
    pub language: String,
    /// The day it was written, if the device said.
    pub date: Option<Date>,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::Unit;
    use crate::survey::Entry;
    use proptest::prelude::*;

    #[test]
    fn a_day_is_read_as_it_is_written_and_in_no_other_way() {
        for (year, month, day, text) in [
            (2026, 11, 25, "2026-11-25"),
            (2000, 1, 1, "2000-01-01"),
            (2255, 12, 31, "2255-12-31"),
            (2030, 10, 9, "2030-10-09"),
        ] {
            let date = Date { year, month, day };
            assert_eq!((date.text().as_str(), Date::from_text(text)), (text, Some(date)));
        }
        for text in [
            "",
            "2026",
            "2026-11",
            "2026-11-2",
            "2026-11-025",
            "26-11-25",
            "2026-1-25",
            "1999-11-25",
            "2256-11-25",
            "2026-00-25",
            "2026-13-25",
            "2026-11-00",
            "2026-11-32",
            "2026-11-25-1",
            "2026-11-25 ",
            "2026/11/25",
            "+026-11-25",
            "2026-+1-25",
        ] {
            assert_eq!(Date::from_text(text), None, "{text}");
        }
    }

    #[test]
    fn an_order_is_complete_with_all_four_numbers_only() {
        let mut survey = Survey::new(Unit::Inch);
        for (at, dimension) in Dimension::ALL.into_iter().enumerate() {
            let numbers = Numbers::of(&survey, &Profile::default(), &Preparation::default());
            assert!(!numbers.complete(), "{at}");
            survey.add(dimension.spots()[0], "9");
        }
        let numbers = Numbers::of(&survey, &Profile::default(), &Preparation::default());
        assert!(numbers.complete());
    }

    proptest! {
        /// The door must fit at every place that was read, and by less than one step.
        #[test]
        fn the_order_fits_every_reading_and_gives_nothing_away(
            unit in prop_oneof![Just(Unit::Inch), Just(Unit::Millimetre)],
            nm in prop::collection::vec(1_i64..3_000_000_000, 12),
        ) {
            let mut survey = Survey::new(unit);
            survey.prepared = true;
            let spots = Dimension::ALL.into_iter().flat_map(Dimension::spots);
            for (spot, nm) in spots.zip(nm) {
                let read = Ok(Length::from_nm(nm));
                survey.push(spot, Entry { text: String::new(), read, struck: false });
            }
            let numbers = Numbers::of(&survey, &Profile::default(), &Preparation::default());
            prop_assert!(numbers.complete());
            for dimension in Dimension::ALL {
                let ordered = numbers.ordered(dimension).unwrap();
                let tightest = survey.tightest(dimension).unwrap().1;
                prop_assert!((ordered - tightest).abs() < unit.step());
                for (_, read) in survey.of(dimension) {
                    match dimension {
                        Dimension::Bow => prop_assert!(ordered >= read),
                        _ => prop_assert!(ordered <= read),
                    }
                }
            }
        }
    }
}
