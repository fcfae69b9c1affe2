//! The last inspection: each point with its limit, what was measured, what was found.

use super::latch::SHIFT;
use super::spring::{HAND_MOST, stripes_agree};
use super::weight::Weight;
use crate::length::Length;

/// A point of the inspection.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Check {
    /// Vertical tracks: widest less narrowest spacing.
    Spacing,
    /// Vertical tracks: difference of the diagonals.
    Diagonals,
    /// The whole play from side to side.
    Shift,
    /// Gap between panels and left post.
    GapLeft,
    /// Gap between panels and right post.
    GapRight,
    /// Gap at the header.
    GapHeader,
    /// End hinge to the left post.
    HingeLeft,
    /// End hinge to the right post.
    HingeRight,
    /// The pull that starts the closed door.
    Pull,
    /// Turns counted by the stripes.
    Stripes,
    /// Fastenings on the upper track that has fewer.
    Fastenings,
    /// Both cables lie on their drums and are drawn alike.
    Cables,
    /// Set screws of drums and cone are tight.
    SetScrews,
    /// The anchor bracket stands where it belongs, the shaft's ends alike.
    Anchor,
    /// The latch falls in by itself and holds.
    Latch,
    /// The door runs through without striking anything.
    Runs,
    /// Light does not show round the closed door.
    Seals,
    /// Warning labels are where they can be read.
    Labels,
}

impl Check {
    /// All of them, in the order they are walked through.
    pub const ALL: [Self; 18] = [
        Self::Spacing,
        Self::Diagonals,
        Self::Shift,
        Self::GapLeft,
        Self::GapRight,
        Self::GapHeader,
        Self::HingeLeft,
        Self::HingeRight,
        Self::Pull,
        Self::Stripes,
        Self::Fastenings,
        Self::Cables,
        Self::SetScrews,
        Self::Anchor,
        Self::Latch,
        Self::Runs,
        Self::Seals,
        Self::Labels,
    ];

    /// Its place in [`Check::ALL`], which records keep it by.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Spacing => "track-spacing",
            Self::Diagonals => "track-diagonals",
            Self::Shift => "side-shift",
            Self::GapLeft => "gap-left",
            Self::GapRight => "gap-right",
            Self::GapHeader => "gap-header",
            Self::HingeLeft => "hinge-left",
            Self::HingeRight => "hinge-right",
            Self::Pull => "pull",
            Self::Stripes => "stripes",
            Self::Fastenings => "fastenings",
            Self::Cables => "cables",
            Self::SetScrews => "set-screws",
            Self::Anchor => "anchor",
            Self::Latch => "latch",
            Self::Runs => "runs",
            Self::Seals => "seals",
            Self::Labels => "labels",
        }
    }

    /// What is noted down for it.
    #[must_use]
    pub const fn measure(self) -> Measure {
        match self {
            Self::Spacing
            | Self::Diagonals
            | Self::Shift
            | Self::GapLeft
            | Self::GapRight
            | Self::GapHeader
            | Self::HingeLeft
            | Self::HingeRight => Measure::Length,
            Self::Pull => Measure::Weight,
            Self::Stripes | Self::Fastenings => Measure::Count,
            Self::Cables
            | Self::SetScrews
            | Self::Anchor
            | Self::Latch
            | Self::Runs
            | Self::Seals
            | Self::Labels => Measure::Eye,
        }
    }
}

/// How a point is checked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measure {
    /// By tape.
    Length,
    /// By scale.
    Weight,
    /// By counting.
    Count,
    /// By looking: in order, or not.
    Eye,
}

/// What was found at one point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Found {
    /// A length.
    Length(Length),
    /// A weight.
    Weight(Weight),
    /// A count.
    Count(u32),
    /// In order, or not.
    Eye(bool),
}

impl Found {
    /// The longest length that is noted, 1,000 km: far beyond any truck, and within what can be
    /// written in any unit and read again.
    const LONGEST: Length = Length::from_nm(1_000_000_000_000_000);

    /// Whether it can have been found: no length is less than nought, none above [`Self::LONGEST`].
    #[must_use]
    pub fn is_possible(self) -> bool {
        match self {
            Self::Length(length) => (Length::ZERO..=Self::LONGEST).contains(&length),
            Self::Weight(_) | Self::Count(_) | Self::Eye(_) => true,
        }
    }
}

/// Least and most of a point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bounds {
    /// Of a length; both ends are allowed.
    Lengths(Length, Length),
    /// Of a weight.
    WeightMost(Weight),
    /// The turns that were wound.
    Turns(f64),
    /// Of a count.
    CountLeast(u8),
    /// It has to be in order.
    InOrder,
}

const fn sixteenths(n: i64) -> Length {
    Length::from_sixteenths(n)
}

/// What the readings of one inspection are held against.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Against {
    /// Turns that were wound on the spring.
    pub wound: Option<f64>,
}

/// The limit of `check`. Common practice, no source, but for the pull (NIOSH).
#[must_use]
pub fn bounds(check: Check, against: Against) -> Option<Bounds> {
    Some(match check {
        Check::Spacing | Check::Diagonals => {
            Bounds::Lengths(Length::ZERO, super::tracks::TOLERANCE)
        }
        Check::Shift => Bounds::Lengths(SHIFT - sixteenths(2), SHIFT + sixteenths(2)),
        Check::GapLeft | Check::GapRight => Bounds::Lengths(sixteenths(2), sixteenths(8)),
        Check::GapHeader => Bounds::Lengths(Length::ZERO, sixteenths(6)),
        Check::HingeLeft | Check::HingeRight => Bounds::Lengths(sixteenths(2), sixteenths(16)),
        Check::Pull => Bounds::WeightMost(HAND_MOST),
        Check::Stripes => Bounds::Turns(against.wound?),
        Check::Fastenings => Bounds::CountLeast(super::tracks::upper::FASTENINGS_LEAST),
        Check::Cables
        | Check::SetScrews
        | Check::Anchor
        | Check::Latch
        | Check::Runs
        | Check::Seals
        | Check::Labels => Bounds::InOrder,
    })
}

/// Whether what was found is inside its limit; none where there is no limit to hold it
/// against, or it is of another kind.
#[must_use]
pub fn holds(bounds: Bounds, found: Found) -> Option<bool> {
    Some(match (bounds, found) {
        (Bounds::Lengths(least, most), Found::Length(length)) => (least..=most).contains(&length),
        (Bounds::WeightMost(most), Found::Weight(weight)) => weight <= most,
        (Bounds::Turns(wound), Found::Count(stripes)) => stripes_agree(stripes, wound),
        (Bounds::CountLeast(least), Found::Count(count)) => count >= u32::from(least),
        (Bounds::InOrder, Found::Eye(in_order)) => in_order,
        _ => return None,
    })
}

/// An inspection, as far as it was made.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Inspection(pub [Option<Found>; 18]);

/// What an inspection comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Outcome {
    /// Every point was looked at, and holds.
    Passed,
    /// Some point was not looked at yet.
    Open,
    /// Some point does not hold.
    Failed,
}

impl Inspection {
    /// What was found at `check`.
    #[must_use]
    pub fn get(&self, check: Check) -> Option<Found> {
        self.0.get(check.index()).copied().flatten()
    }

    /// Notes what was found at `check`; a length that nobody can have found is not noted.
    pub fn set(&mut self, check: Check, found: Option<Found>) {
        if let Some(cell) = self.0.get_mut(check.index()) {
            *cell = found.filter(|found| found.is_possible());
        }
    }

    /// Whether `check` holds; none where it was not looked at, or there is nothing to hold
    /// it against.
    #[must_use]
    pub fn finding(&self, check: Check, against: Against) -> Option<bool> {
        holds(bounds(check, against)?, self.get(check)?)
    }

    /// What it comes to.
    #[must_use]
    pub fn outcome(&self, against: Against) -> Outcome {
        let findings = || Check::ALL.into_iter().map(|check| self.finding(check, against));
        if findings().any(|finding| finding == Some(false)) {
            Outcome::Failed
        } else if findings().any(|finding| finding.is_none()) {
            Outcome::Open
        } else {
            Outcome::Passed
        }
    }

    /// How many points were looked at.
    #[must_use]
    pub fn done(&self) -> usize {
        self.0.iter().flatten().count()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_length_below_nought_cannot_have_been_found() {
        let possible = |nm| Found::Length(Length::from_nm(nm)).is_possible();
        assert!(possible(0) && !possible(-1));
        assert!(possible(Found::LONGEST.nm()) && !possible(Found::LONGEST.nm() + 1));
        assert!(Found::Eye(false).is_possible());
    }

    #[test]
    fn a_shift_is_within_an_eighth_of_what_is_told() {
        let eighth = Length::from_sixteenths(2);
        let bounds = bounds(Check::Shift, Against::default());
        assert_eq!(bounds, Some(Bounds::Lengths(SHIFT - eighth, SHIFT + eighth)));
    }

    const WOUND: Against = Against { wound: Some(12.0) };

    fn good(check: Check) -> Found {
        match (check.measure(), bounds(check, WOUND).unwrap()) {
            (Measure::Length, Bounds::Lengths(_, most)) => Found::Length(most),
            (Measure::Weight, Bounds::WeightMost(most)) => Found::Weight(most),
            (Measure::Count, Bounds::Turns(_)) => Found::Count(12),
            (Measure::Count, Bounds::CountLeast(least)) => Found::Count(least.into()),
            (Measure::Eye, Bounds::InOrder) => Found::Eye(true),
            (measure, bounds) => panic!("{check:?}: {measure:?} {bounds:?}"),
        }
    }

    #[test]
    fn a_point_at_its_limit_holds_and_one_beyond_does_not() {
        for check in Check::ALL {
            let limit = bounds(check, WOUND).unwrap();
            assert_eq!(holds(limit, good(check)), Some(true), "{check:?}");
            let beyond = match good(check) {
                Found::Length(most) => Found::Length(most + Length::from_nm(1)),
                Found::Weight(_) => Found::Weight(Weight::from_grams(23_001)),
                Found::Count(count) => Found::Count(count - 1),
                Found::Eye(_) => Found::Eye(false),
            };
            assert_eq!(holds(limit, beyond), Some(false), "{check:?}");
        }
        assert_eq!(holds(Bounds::InOrder, Found::Count(1)), None);
    }

    #[test]
    fn one_bad_point_fails_and_one_left_out_keeps_it_open() {
        let mut all = Inspection::default();
        assert_eq!(all.outcome(WOUND), Outcome::Open);
        for check in Check::ALL {
            all.set(check, Some(good(check)));
        }
        assert_eq!((all.outcome(WOUND), all.done()), (Outcome::Passed, 18));
        // Nobody said how many turns were wound: the count has nothing to be held against.
        assert_eq!(all.outcome(Against::default()), Outcome::Open);
        all.set(Check::Latch, Some(Found::Eye(false)));
        assert_eq!(all.outcome(WOUND), Outcome::Failed);
        all.set(Check::Latch, None);
        assert_eq!(all.outcome(WOUND), Outcome::Open);
    }

    #[test]
    fn keys_and_indices_are_of_one_point_each() {
        for (index, check) in Check::ALL.into_iter().enumerate() {
            assert_eq!(check.index(), index);
            assert_eq!(Check::ALL.iter().filter(|c| c.key() == check.key()).count(), 1);
        }
    }
}
