//! What has to be there when the door comes, and whether the opening is still the one it
//! was ordered for.

use crate::length::Length;
use crate::order::Numbers;
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

/// A part of the delivery.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// The upper half of the door, panels hinged together.
    UpperHalf,
    /// The lower half, with the latch.
    LowerHalf,
    /// Spring, shaft, drums, anchor bracket.
    SpringAssembly,
    /// Two vertical tracks with brackets and bearings.
    VerticalTracks,
    /// Two horizontal tracks with their curves.
    HorizontalTracks,
    /// Hangers of the horizontal tracks.
    Hangers,
    /// Rollers, one for each hinge end and the four corners.
    Rollers,
    /// Two cables of one length.
    Cables,
    /// Bolts, screws, washers.
    Hardware,
    /// Latch plate for the sill.
    LatchPlate,
    /// Side seals, where they were ordered.
    SideSeals,
    /// Seal of the header.
    HeaderSeal,
}

impl Part {
    /// All of them, in the order they are unloaded.
    pub const ALL: [Self; 12] = [
        Self::UpperHalf,
        Self::LowerHalf,
        Self::SpringAssembly,
        Self::VerticalTracks,
        Self::HorizontalTracks,
        Self::Hangers,
        Self::Rollers,
        Self::Cables,
        Self::Hardware,
        Self::LatchPlate,
        Self::SideSeals,
        Self::HeaderSeal,
    ];

    /// Its place in [`Part::ALL`].
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Whether it is ticked off only where it was ordered.
    #[must_use]
    pub const fn is_option(self) -> bool {
        matches!(self, Self::SideSeals | Self::HeaderSeal)
    }
}

/// Rollers of a door of so many panels: two at each hinge line and at both ends.
#[must_use]
pub const fn rollers(panels: u32) -> u32 {
    panels.saturating_add(1).saturating_mul(2)
}

/// One reading of the frame as built, beside what the door was cut to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Compared {
    /// Where it was read.
    pub spot: Spot,
    /// Which number of the order it is held against.
    pub dimension: Dimension,
    /// What was read.
    pub built: Length,
    /// What was ordered.
    pub ordered: Length,
    /// Room to spare; less than nothing where the door does not fit.
    pub spare: Length,
}

impl Compared {
    /// Whether the door fits at this place.
    #[must_use]
    pub fn fits(&self) -> bool {
        self.spare >= Length::ZERO
    }
    /// Whether more is left than a frame is usually off by, so that it is another opening,
    /// or a slip.
    #[must_use]
    pub fn is_far(&self) -> bool {
        self.spare > FAR
    }
}

/// An opening that is larger than its order by more than this is another one. Common
/// practice, no source.
pub const FAR: Length = Length::from_sixteenths(12);

/// Every reading of `built` that an ordered number stands against, in the order of the walk.
#[must_use]
pub fn compare(numbers: &Numbers, built: &Survey) -> Vec<Compared> {
    let mut all = Vec::new();
    for (spot, read) in built.readings() {
        let Some(dimension) = spot.dimension() else { continue };
        let Some(ordered) = numbers.ordered(dimension) else { continue };
        let spare = match dimension {
            // A bow that hangs lower than ordered takes room.
            Dimension::Bow => ordered - read,
            Dimension::Width | Dimension::Height | Dimension::Header => read - ordered,
        };
        all.push(Compared { spot, dimension, built: read, ordered, spare });
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::check::check;
    use crate::length::Unit;
    use crate::profile::Profile;

    fn survey(readings: &[(Spot, &str)]) -> Survey {
        let mut survey = Survey::new(Unit::Inch);
        survey.prepared = true;
        for (spot, text) in readings {
            survey.add(*spot, text);
        }
        survey
    }

    #[test]
    fn the_frame_as_built_is_held_against_the_order_reading_by_reading() {
        let ordered = survey(&[
            (Spot::WidthLow, "92 1/4"),
            (Spot::HeightCenter, "96"),
            (Spot::HeaderCenter, "9"),
            (Spot::BowFirst, "1 1/4"),
        ]);
        let numbers = check(&ordered, &Profile::default()).numbers;
        let built = survey(&[
            (Spot::WidthLow, "92 1/4"),
            (Spot::WidthHigh, "92 1/8"),
            (Spot::HeightLeft, "97 1/4"),
            (Spot::BowFirst, "1 1/2"),
            (Spot::PostLeft, "3"),
        ]);
        let found = compare(&numbers, &built);
        let spare: Vec<(Spot, i64, bool)> = found
            .iter()
            .map(|one| (one.spot, one.spare.nm() / Length::SIXTEENTH.nm(), one.is_far()))
            .collect();
        assert_eq!(
            spare,
            [
                (Spot::WidthLow, 0, false),
                (Spot::WidthHigh, -2, false),
                (Spot::HeightLeft, 20, true),
                (Spot::BowFirst, -4, false),
            ]
        );
        assert_eq!(found.iter().filter(|one| one.fits()).count(), 2);
    }

    #[test]
    fn every_part_stands_at_its_index() {
        for (index, part) in Part::ALL.into_iter().enumerate() {
            assert_eq!(part.index(), index);
        }
        assert_eq!(rollers(8), 18);
    }

    #[test]
    fn seals_alone_are_ticked_off_only_where_they_were_ordered() {
        let options = Part::ALL.into_iter().filter(|part| part.is_option());
        assert!(options.eq([Part::SideSeals, Part::HeaderSeal]));
    }

    #[test]
    fn a_door_fits_where_nothing_is_spare_and_an_opening_too_large_is_another() {
        let (spot, dimension) = (Spot::WidthLow, Dimension::Width);
        let (built, ordered) = (Length::ZERO, Length::ZERO);
        let at = |spare| Compared { spot, dimension, built, ordered, spare };
        assert!(at(Length::ZERO).fits() && !at(-Length::SIXTEENTH).fits());
        assert!(at(FAR + Length::SIXTEENTH).is_far() && !at(FAR).is_far());
    }
}
