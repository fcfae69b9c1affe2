//! The frame: what must be built before a door fits, and which ordered numbers
//! that changes.
//!
//! A header built down by 1 in lowers the sill-to-header height by 1 in and
//! raises the header depth by 1 in. A post built out by ½ in narrows the
//! post-to-post width by ½ in. (Common practice, no source.)

use crate::length::Length;
use crate::profile::{Limited, Profile};
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

/// How much has to be built on before the frame can take a door.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Preparation {
    /// How far the header is to be built down.
    pub header_down: Length,
    /// How far the left post is to be built out, into the opening.
    pub left_out: Length,
    /// How far the right post is to be built out, into the opening.
    pub right_out: Length,
}

impl Preparation {
    /// What `survey` asks for under `profile`. Nothing where the frame is prepared already: then
    /// the readings are of the frame as it will stay.
    #[must_use]
    pub fn of(survey: &Survey, profile: &Profile) -> Self {
        if survey.prepared {
            return Self::default();
        }
        // What is short of the least is built to `step`: a number that is ordered is rounded down
        // to it, and then, too, must have the least.
        let short = |reading: Option<Length>, what, step| {
            match (reading, profile.limit(what).least()) {
                (Some(reading), Some(least)) if reading > Length::ZERO && reading < least => {
                    // A channel is cut to what a tape in the yard can mark.
                    (least.ceil_to(step) - reading).ceil_to(survey.unit.step())
                }
                _ => Length::ZERO,
            }
        };
        let post = |spot| short(survey.lengths(spot).min(), Limited::Post, survey.unit.step());
        let header = survey.tightest(Dimension::Header).map(|(_, length)| length);
        Self {
            header_down: short(header, Limited::Header, profile.step(survey.unit)),
            left_out: post(Spot::PostLeft),
            right_out: post(Spot::PostRight),
        }
    }

    /// Whether anything has to be built.
    #[must_use]
    pub fn needed(&self) -> bool {
        *self != Self::default()
    }

    /// How much building changes `dimension`: negative where it gets smaller.
    #[must_use]
    pub fn change(&self, dimension: Dimension) -> Length {
        match dimension {
            Dimension::Width => -(self.left_out + self.right_out),
            Dimension::Height => -self.header_down,
            Dimension::Header => self.header_down,
            Dimension::Bow => Length::ZERO,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bounds::{HEADER_LEAST, POST_LEAST};
    use crate::length::Unit;
    use crate::order::Numbers;
    use crate::profile::{End, Ruling, Words};
    use crate::say::Because;
    use crate::survey::Entry;
    use proptest::prelude::*;

    fn survey(header: Length, left: Length, right: Length) -> Survey {
        let mut survey = Survey::new(Unit::Inch);
        for (spot, length) in
            [(Spot::HeaderCenter, header), (Spot::PostLeft, left), (Spot::PostRight, right)]
        {
            survey.push(spot, Entry { text: String::new(), read: Ok(length), struck: false });
        }
        survey
    }

    #[test]
    fn an_inch_of_channel_moves_an_inch_from_the_height_to_the_header() {
        let six = survey(Length::from_inches(6), Length::from_inches(3), Length::from_inches(2));
        let preparation = Preparation::of(&six, &Profile::default());
        assert_eq!(preparation.change(Dimension::Height), -Length::INCH);
        assert_eq!(preparation.change(Dimension::Header), Length::INCH);
        assert_eq!(preparation.change(Dimension::Width), -Length::from_sixteenths(8));
        assert_eq!(preparation.change(Dimension::Bow), Length::ZERO);
    }

    #[test]
    fn a_frame_as_it_will_stay_needs_nothing_built() {
        let mut six = survey(Length::INCH, Length::INCH, Length::INCH);
        six.prepared = true;
        assert!(!Preparation::of(&six, &Profile::default()).needed());
    }

    /// Nothing is no header and no post: that it is missing is for others to tell.
    #[test]
    fn nothing_is_not_built_out() {
        let none = survey(Length::ZERO, Length::ZERO, Length::ZERO);
        assert!(!Preparation::of(&none, &Profile::default()).needed());
    }

    proptest! {
        /// Height and header together are the body's, and no channel changes them;
        /// after building, every minimum holds.
        #[test]
        fn building_keeps_the_sum_and_meets_the_minimum(
            header in 1_i64..400, left in 1_i64..200, right in 1_i64..200,
        ) {
            let [header, left, right] = [header, left, right].map(Length::from_sixteenths);
            let built = Preparation::of(&survey(header, left, right), &Profile::default());
            prop_assert_eq!(
                built.change(Dimension::Height) + built.change(Dimension::Header), Length::ZERO
            );
            prop_assert!(HEADER_LEAST.holds(header + built.header_down));
            prop_assert!(POST_LEAST.holds(left + built.left_out));
            prop_assert!(POST_LEAST.holds(right + built.right_out));
        }
    }

    /// A dealer orders by the eighth: built to just the least, the header would be ordered less.
    #[test]
    fn what_is_ordered_of_a_header_that_is_built_down_has_the_least() {
        let least = Length::from_sixteenths(7 * 16 + 7);
        let because = Because::Door(Words::plain("high"));
        let ruling =
            Ruling { what: Limited::Header, end: End::Least, bound: least, because, stop: true };
        let step = Some(Length::from_sixteenths(2));
        let profile = Profile { step, rulings: vec![ruling], ..Profile::default() };
        for sixteenths in 1..least.nm() / Length::SIXTEENTH.nm() {
            let survey = survey(Length::from_sixteenths(sixteenths), least, least);
            let preparation = Preparation::of(&survey, &profile);
            let ordered = Numbers::of(&survey, &profile, &preparation).ordered(Dimension::Header);
            assert!(ordered.unwrap() >= least, "{sixteenths}/16: {ordered:?}");
        }
        // The least itself is enough, also where it is no whole number of eighths.
        assert!(!Preparation::of(&survey(least, least, least), &profile).needed());
    }

    #[test]
    fn nothing_is_needed_but_what_is_built() {
        assert!(!Preparation::default().needed());
        let right_out = Length::SIXTEENTH;
        assert!(Preparation { right_out, ..Preparation::default() }.needed());
    }
}
