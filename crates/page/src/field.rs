//! The name of a field that takes a reading.

use hangtrue_core::Spot;
use hangtrue_core::short::{cut_first, digits};

/// A reading's field: which spot, and which of the readings there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Field {
    /// Where the tape lies.
    pub spot: Spot,
    /// 0 for the first reading at the spot; repeats count up.
    pub index: usize,
}

impl Field {
    /// The field of the first reading at `spot`.
    #[must_use]
    pub const fn first(spot: Spot) -> Self {
        Self { spot, index: 0 }
    }

    /// Its name and element id: `width.low`, `width.low~1`.
    #[must_use]
    pub fn name(self) -> String {
        match self.index {
            0 => self.spot.key(),
            index => [&self.spot.key(), "~", &digits(index as u64)].concat(),
        }
    }

    /// The field of a name.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        let (key, index) = match cut_first(name, "~") {
            Some((key, index)) => (key, index.parse().ok().filter(|index| *index < 16)?),
            None => (name, 0),
        };
        Some(Self { spot: Spot::from_key(key)?, index })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_field_is_found_by_its_name() {
        for spot in Spot::ALL {
            for index in [0, 1, 7] {
                let field = Field { spot, index };
                assert_eq!(Field::from_name(&field.name()), Some(field));
            }
        }
        for name in ["", "width", "width.low~x", "width.low~99", "note"] {
            assert_eq!(Field::from_name(name), None);
        }
    }
}
