//! The only crate that touches the browser: events in, markup and effects out.

// No sum may panic: what comes from outside stops at the end of its scale (`saturating`), what is
// bounded by its own code says so (`wrapping`), and nothing is divided by nought (`checked`).
#![cfg_attr(not(test), warn(clippy::arithmetic_side_effects))]

mod app;
mod browser;
#[cfg(feature = "builder")]
mod builder;
#[cfg(feature = "desk")]
mod desk;
#[cfg(feature = "embed")]
mod embed;
#[cfg(feature = "hang")]
mod hang;
pub mod patch;
#[cfg(any(feature = "desk", feature = "hang", feature = "embed"))]
mod rules;
mod walk;

use wasm_bindgen::prelude::wasm_bindgen;

#[cfg(target_family = "wasm")]
#[global_allocator]
static ALLOCATOR: rlsf::SmallGlobalTlsf = rlsf::SmallGlobalTlsf::new();

/// Starts the page. Called once, when the module has been loaded.
///
/// The crate is built five times: the walk, with the feature `desk` the counter desk, with
/// the feature `hang` the page that hangs the door, with the feature `embed` the walk as an
/// element for other sites, and with the feature `builder` the page on which a dealer's
/// profile is made. Each module holds one of them only.
#[wasm_bindgen(start)]
pub fn start() {
    // The element starts when it is put into a page, the builder when it is given its schema, the
    // desk and the page that hangs the door when they have the dealer's rules.
    if !cfg!(any(feature = "embed", feature = "builder", feature = "hang", feature = "desk")) {
        walk::start();
    }
}
