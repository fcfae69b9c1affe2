//! The rules an order is checked by: the built-in ones, or a dealer's.

use crate::length::Length;

/// How an ordered number is taken from several readings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Take {
    /// The tightest reading.
    #[default]
    Tightest,
}

/// What a dealer may set. Physical impossibilities are not in here: nobody can switch them off.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Profile {
    /// Who wrote it; empty for the built-in rules.
    pub name: String,
    /// Counts up with every change.
    pub revision: u32,
    /// How an ordered number is taken from several readings.
    pub take: Take,
    /// The step ordered numbers are rounded to; the unit's own step if not set.
    pub step: Option<Length>,
}
