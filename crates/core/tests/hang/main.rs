//! What is told of hanging a door, for doors made by hand: goldens in `tests/goldens/hang`.
//! `HANGTRUE_BLESS=1 cargo test -p hangtrue-core --test hang` writes them anew; read the diff.

#![allow(clippy::expect_used, reason = "a test may fail")]

mod rooms;
mod springs;
mod tracks;

use hangtrue_core::length::read;
use hangtrue_core::{Length, Unit};

/// A length as a tape reads it in inches.
fn inches(text: &str) -> Length {
    read(text, Unit::Inch).expect("a length")
}

/// Lengths with `|` between.
fn list(text: &str) -> Vec<Length> {
    text.split('|').filter(|one| !one.trim().is_empty()).map(|one| inches(one.trim())).collect()
}
