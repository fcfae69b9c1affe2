//! The rules an order is checked by: the built-in ones, or a dealer's.

use crate::length::Length;

/// How an ordered number is taken from several readings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Take {
    /// The tightest reading.
    #[default]
    Tightest,
}

/// What a miss and a minute cost; only their ratio matters to what is asked next.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Costs {
    /// A door cut to a wrong number, and the truck that waits for the next.
    pub miss: f64,
    /// One more reading.
    pub minute: f64,
}

impl Default for Costs {
    fn default() -> Self {
        Self { miss: 1500.0, minute: 1.0 }
    }
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
    /// What a miss and a minute cost.
    pub costs: Costs,
}
