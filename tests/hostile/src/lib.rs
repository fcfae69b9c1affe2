//! What must hold for whatever a stranger sends.
//!
//! One file a way in, one function in it that takes any bytes and panics where the law
//! of that way is broken. `cargo test` calls each with a fixed number of invented inputs
//! and with every case in `cases`; `tests/fuzz` gives each to libFuzzer. No law stands
//! twice.

#![allow(
    clippy::panic,
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::indexing_slicing,
    reason = "a panic is how a target says that its law is broken"
)]

pub mod forge;
pub mod payload;
pub mod seeds;
mod target;

/// A way in: its name, and what must hold for any bytes that come by it.
pub type Target = (&'static str, fn(&[u8]));

/// Every way in.
pub const TARGETS: [Target; 9] = [
    ("reading", target::reading::holds),
    ("survey", target::survey::holds),
    ("csv", target::csv::holds),
    ("link", target::link::holds),
    ("code", target::code::holds),
    ("profile", target::profile::holds),
    ("record", target::record::holds),
    ("json", target::json::holds),
    ("check", target::check::holds),
];

/// The law of the way in of that name.
///
/// # Panics
/// When there is none.
#[must_use]
pub fn target(name: &str) -> fn(&[u8]) {
    let found = TARGETS.into_iter().find(|(known, _)| *known == name);
    found.unwrap_or_else(|| panic!("there is no target {name}")).1
}
