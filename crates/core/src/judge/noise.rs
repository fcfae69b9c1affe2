//! How large the honest noise is: several answers at once, weighed by the readings.
//!
//! Understated noise is the danger: it turns a knocked frame into an accusation.
//! So no single figure is believed. The network is adjusted under each of these
//! scales, and the readings themselves shift the weight among them.

/// Multiples of the usual noise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scale {
    /// Of the frame's departures from a box.
    pub(super) frame: f64,
    /// Of the tape and the hand.
    pub(super) tape: f64,
    /// Share of surveys, before anything was read.
    pub(super) weight: f64,
}

/// The scales: a good frame, a usual one, a used one, a knocked one. Assumed.
pub(super) const SCALES: [Scale; 4] = [
    Scale { frame: 0.9, tape: 0.9, weight: 0.35 },
    Scale { frame: 1.3, tape: 1.2, weight: 0.40 },
    Scale { frame: 2.0, tape: 1.6, weight: 0.17 },
    Scale { frame: 3.6, tape: 2.0, weight: 0.08 },
];

/// The scale that figures are told at (±, w, least detectable): wider than usual.
pub(super) const TOLD: Scale = Scale { frame: 1.3, tape: 1.2, weight: 1.0 };
