//! The only crate that touches the browser: events in, markup and effects out.

mod app;
mod browser;
mod desk;
pub mod patch;
mod walk;

use wasm_bindgen::prelude::wasm_bindgen;

/// Starts the page. Called once, when the module has been loaded.
///
/// The crate is built twice: the walk, and with the feature `desk` the counter desk.
/// Each module holds one of the two only; both are compiled and checked in every build.
#[wasm_bindgen(start)]
pub fn start() {
    if cfg!(feature = "desk") {
        app::start::<desk::Desk>();
    } else {
        app::start::<walk::Walk>();
    }
}
