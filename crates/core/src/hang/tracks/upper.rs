//! The two horizontal tracks: as far apart as the vertical ones, and square with them.

use super::TOLERANCE;
use crate::length::Length;

/// The fewest fastenings of an upper track, a side. Common practice, no source.
pub const FASTENINGS_LEAST: u8 = 4;

/// A place along the upper tracks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Station {
    /// At the far end, towards the front of the body.
    Front,
    /// Half-way.
    Middle,
    /// Where the curve ends, at the door.
    Rear,
}

impl Station {
    /// All three, in the order they are read.
    pub const ALL: [Self; 3] = [Self::Front, Self::Middle, Self::Rear];

    /// 0 to 2.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }
}

/// What one place of the upper tracks needs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Move {
    /// Where.
    pub station: Station,
    /// What was read.
    pub spacing: Length,
    /// How far each side is to come in, in whole sixteenths; out where it is negative. The
    /// left side takes the odd one.
    pub each: [Length; 2],
    /// Whether it is within [`TOLERANCE`] as it stands.
    pub holds: bool,
}

/// What each place needs to stand `target` apart.
#[must_use]
pub fn moves(spacing: [Option<Length>; 3], target: Length) -> Vec<Move> {
    let mut out = Vec::new();
    for (station, read) in Station::ALL.into_iter().zip(spacing) {
        let Some(spacing) = read else { continue };
        let by = spacing - target;
        let whole = by.round_to(Length::SIXTEENTH);
        let half = Length::from_nm(whole.nm().div_euclid(2)).floor_to(Length::SIXTEENTH);
        let each = [whole - half, half];
        out.push(Move { station, spacing, each, holds: by.abs() <= TOLERANCE });
    }
    out
}

/// The legs of the check for square, from the point where the straight parts of the two tracks
/// would meet: 36 in down the vertical, 48 in along the horizontal, 60 in across (3-4-5).
pub const LEGS: [Length; 2] = [Length::from_inches(36), Length::from_inches(48)];

/// A track that seems further off 90° than this, in degrees, was measured from elsewhere.
/// Common practice, no source.
pub const OFF_MOST: f64 = 3.0;

/// How far the upper track stands off 90° with the upright, in degrees, from the reading
/// across the [`LEGS`]: positive where it points too far up. By the law of cosines.
/// None where no triangle has such sides.
#[must_use]
pub fn off_square(across: Length) -> Option<f64> {
    let [down, along] = LEGS.map(Length::to_mm);
    let across = across.to_mm();
    let cos = (down * down + along * along - across * across) / (2.0 * down * along);
    let angle = (-1.0..=1.0).contains(&cos).then(|| libm::acos(cos))?;
    // The triangle is under the curve: a wider one points higher.
    Some(angle.to_degrees() - 90.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_side_takes_its_half_and_the_left_the_odd_sixteenth() {
        let target = Length::from_inches(92);
        let spacing = [3, -4, 2].map(|n| Some(target + Length::from_sixteenths(n)));
        let moves = moves(spacing, target);
        let each: Vec<[i64; 2]> =
            moves.iter().map(|m| m.each.map(|l| l.nm() / Length::SIXTEENTH.nm())).collect();
        assert_eq!(each, [[2, 1], [-2, -2], [1, 1]]);
        assert_eq!(moves.iter().map(|m| m.holds).collect::<Vec<_>>(), [false, false, true]);
    }

    #[test]
    fn the_stations_are_in_the_order_they_are_read() {
        assert_eq!(Station::ALL.map(Station::index), [0, 1, 2]);
    }

    #[test]
    fn three_four_five_is_square() {
        assert!(off_square(Length::from_inches(60)).unwrap().abs() < 1e-12);
        // 1/8 in at 60 in is a quarter of a degree.
        let off = off_square(Length::from_inches(60) + TOLERANCE).unwrap();
        assert!((off - 0.2487).abs() < 1e-3, "{off}");
        assert_eq!(off_square(Length::from_inches(100)), None);
    }
}
