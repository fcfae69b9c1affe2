//! How finely a tape was read, as far as the reading shows it.

use super::{Length, Unit};

/// The coarsest marks that `length` lies on: 1/2, 1/4, 1/8, 1/16, 1/32 or 1/64 in, or
/// 10, 5, 1, 0.5 or 0.1 mm. A length between all marks gets the finest ones.
#[must_use]
pub fn resolution_of(length: Length, unit: Unit) -> Length {
    let marks: &[Length] = match unit {
        Unit::Inch => &[
            Length::from_sixteenths(8),
            Length::from_sixteenths(4),
            Length::from_sixteenths(2),
            Length::SIXTEENTH,
            Length::from_sixty_fourths(2),
        ],
        Unit::Millimetre => &[
            Length::from_mm(10),
            Length::from_mm(5),
            Length::MILLIMETRE,
            Length::from_tenths_mm(5),
        ],
    };
    let coarsest = marks.iter().find(|mark| length.floor_to(**mark) == length);
    coarsest.copied().unwrap_or(unit.finest())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_coarsest_mark_a_reading_lies_on() {
        let inch = |n: i64| resolution_of(Length::from_sixty_fourths(96 * 64 + n), Unit::Inch);
        assert_eq!(
            [0, 32, 16, 24, 12, 6, 3].map(inch),
            [32, 32, 16, 8, 4, 2, 1].map(Length::from_sixty_fourths)
        );
        let mm = |tenths| resolution_of(Length::from_tenths_mm(tenths), Unit::Millimetre);
        assert_eq!(
            [24_400, 24_450, 24_430, 24_435, 24_433].map(mm),
            [100, 50, 10, 5, 1].map(Length::from_tenths_mm)
        );
        assert_eq!(resolution_of(Length::from_mm(2443), Unit::Inch), Length::SIXTY_FOURTH);
    }
}
