//! An upright rectangle in a picture.

use crate::point::Point;

/// An upright rectangle by its edges, in drawing units, `y` down; `right ≥ left`, `bottom ≥ top`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Rect {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) right: f64,
    pub(crate) bottom: f64,
}

impl Rect {
    pub(crate) const fn new(left: f64, top: f64, right: f64, bottom: f64) -> Self {
        Self { left, top, right, bottom }
    }

    pub(crate) fn width(self) -> f64 {
        self.right - self.left
    }

    pub(crate) fn height(self) -> f64 {
        self.bottom - self.top
    }

    /// The place `across` of its width from the left and `down` of its height from the top.
    pub(crate) fn at(self, across: f64, down: f64) -> Point {
        Point::new(self.left + self.width() * across, self.top + self.height() * down)
    }
}
