//! How large the honest noise is: several answers at once, weighed by the readings.
//!
//! Understated noise is the danger: it turns a knocked frame into an accusation.
//! So no single figure is believed. The network is adjusted under each of these
//! scales, and the readings themselves shift the weight among them.

/// Multiples of the usual noise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scale {
    /// Of the rear frame's departures from a box.
    pub(super) frame: f64,
    /// Of roof, floor and bows: a knock at the rear frame leaves them as they are.
    pub(super) roof: f64,
    /// Of the tape and the hand.
    pub(super) tape: f64,
    /// Share of surveys, before anything was read.
    pub(super) weight: f64,
}

/// The scales: a good frame, a usual one, a used one, a knocked one. Assumed; chosen so
/// that one alarm serves frames in which a knock bends one thing, frames in which it
/// bends everything, and noise half as large again (`tests/sim`, development seeds).
pub(super) const SCALES: [Scale; 4] = [
    Scale { frame: 0.9, roof: 1.0, tape: 0.9, weight: 0.33 },
    Scale { frame: 1.3, roof: 1.2, tape: 1.2, weight: 0.40 },
    Scale { frame: 2.0, roof: 1.7, tape: 1.5, weight: 0.15 },
    Scale { frame: 3.6, roof: 3.3, tape: 1.5, weight: 0.12 },
];

/// Which of the scales figures are told at (±, w, least detectable): that of a usual frame.
pub(super) const TOLD_AT: usize = 1;
/// The same, taken alone: its weight counts for nothing.
pub(super) const TOLD: Scale = SCALES[TOLD_AT];
