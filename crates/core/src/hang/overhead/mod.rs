//! Overhead room: does the door pass under the roof, and where is it tightest?
//!
//! Rigid panels, a roller at each hinge and at both ends, every roller's axis on the track
//! (straight, arc, straight). The outer faces of the panels sweep an envelope as the door
//! opens; it is measured against the header, the roof skin and the bows, where they hang as far
//! as that is known, else anywhere.
//!
//! Seen from the side: `x` from the axes of the closed door's rollers into the body, `y` up
//! from the sill, both in mm. Panels lie on the outside of the curve, towards the roof.

mod bows;
mod curtain;
mod path;
mod room;
mod sweep;

pub use bows::{BOW_WIDTH, Bows};
pub use curtain::{Curtain, Panel};
pub use path::Path;
pub use room::{Assumed, GAP, OFFSET, PANEL, RADIUS, RISE, Room, THICKNESS, Track};
pub use sweep::{Against, CLEARANCE_LEAST, Fit, Swept, Tight, sweep};

/// A place, or a direction, in the side view; in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// From the axes of the closed door's rollers into the body.
    pub x: f64,
    /// Up from the sill.
    pub y: f64,
}

impl Place {
    /// From `from` to here.
    #[must_use]
    pub fn less(self, from: Self) -> Self {
        Self { x: self.x - from.x, y: self.y - from.y }
    }
    /// Moved by `by` times `direction`.
    #[must_use]
    pub fn on(self, direction: Self, by: f64) -> Self {
        Self { x: self.x + by * direction.x, y: self.y + by * direction.y }
    }
    /// `by` times this.
    #[must_use]
    pub fn times(self, by: f64) -> Self {
        Self { x: by * self.x, y: by * self.y }
    }
    /// The scalar product.
    #[must_use]
    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }
    /// The cross product: positive where `other` is to the left of this.
    #[must_use]
    pub fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }
    /// How long it is.
    #[must_use]
    pub fn length(self) -> f64 {
        self.dot(self).sqrt()
    }
    /// A quarter turn to the left: out of the curve, where this is the way up the track.
    #[must_use]
    pub fn left(self) -> Self {
        Self { x: -self.y, y: self.x }
    }
    /// The same direction, of length one; upright where there is none.
    #[must_use]
    pub fn unit(self) -> Self {
        let length = self.length();
        if length > 0.0 {
            Self { x: self.x / length, y: self.y / length }
        } else {
            Self { x: 0.0, y: 1.0 }
        }
    }
}
