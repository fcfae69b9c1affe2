//! A place in a picture.

/// A place in a picture, in drawing units: `x` to the right, `y` **down**, as SVG has it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Point {
    pub(crate) x: f64,
    pub(crate) y: f64,
}

impl Point {
    pub(crate) const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// The place `share` of the way from here to `other`: 0 is here, 1 is there.
    pub(crate) fn toward(self, other: Self, share: f64) -> Self {
        Self::new(self.x + (other.x - self.x) * share, self.y + (other.y - self.y) * share)
    }

    /// How far it is to `other`.
    pub(crate) fn distance(self, other: Self) -> f64 {
        let (dx, dy) = (other.x - self.x, other.y - self.y);
        (dx * dx + dy * dy).sqrt()
    }

    /// The direction to `other`, of length one; to the right if both are one place.
    pub(crate) fn direction(self, other: Self) -> (f64, f64) {
        let length = self.distance(other);
        if length > 0.0 {
            ((other.x - self.x) / length, (other.y - self.y) / length)
        } else {
            (1.0, 0.0)
        }
    }

    /// Moved by `dx` to the right and `dy` down.
    pub(crate) fn moved(self, dx: f64, dy: f64) -> Self {
        Self::new(self.x + dx, self.y + dy)
    }
}
