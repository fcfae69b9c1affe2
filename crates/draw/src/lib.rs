//! SVG pictures of an opening and of a tape, from the domain's values.
//!
//! One picture, one file, one function that returns a whole `<svg>`. A picture
//! is drawn to scale from what is read so far; what is only assumed is dashed.
//! Every picture has a title and a description for who cannot see it.
//!
//! Nothing here knows colours, fonts or the page: classes only, which
//! `web/style/drawing.css` fills from the page's `--ink`, `--paper`, `--accent`
//! and `--faint`. Text is set in the sizes of `glyph.rs`, which a test compares
//! with the stylesheet; shown 320 CSS px wide or wider, no text is below 12 px.

// No sum may panic: what comes from outside stops at the end of its scale (`saturating`), what is
// bounded by its own code says so (`wrapping`), and nothing is divided by nought (`checked`).
#![cfg_attr(not(test), warn(clippy::arithmetic_side_effects))]

mod bent;
mod cut;
mod detail;
mod dimension;
mod elevation;
mod glyph;
pub mod hang;
mod hatch;
mod number;
mod order;
mod point;
mod reading;
mod rear;
mod rect;
mod residuals;
mod section;
mod shape;
mod sheet;
mod svg;
mod tape;
mod text;

pub use elevation::elevation;
pub use order::order;
pub use residuals::{Residual, residuals};
pub use section::section;
pub use sheet::Sheet;
pub use tape::{tape, tape_across, tape_unit};

use hangtrue_core::{Spot, Survey};

/// The picture that shows the `asked` spots: [`elevation`] or [`section`], by the first of them.
#[must_use]
pub fn spots(sheet: Sheet<'_>, survey: &Survey, asked: &[Spot]) -> String {
    match asked.first() {
        Some(spot) if !reading::seen_from_behind(spot.group()) => section(sheet, survey, asked),
        _ => elevation(sheet, survey, asked),
    }
}
