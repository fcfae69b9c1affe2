//! The only crate that touches the browser: events in, markup and effects out.

mod app;
mod browser;
mod desk;
#[cfg(feature = "embed")]
mod embed;
mod hang;
pub mod patch;
mod walk;

use wasm_bindgen::prelude::wasm_bindgen;

/// Starts the page. Called once, when the module has been loaded.
///
/// The crate is built four times: the walk, with the feature `desk` the counter desk, with
/// the feature `hang` the page that hangs the door, and with the feature `embed` the walk as
/// an element for other sites. Each module holds one of them only.
#[wasm_bindgen(start)]
pub fn start() {
    if cfg!(feature = "embed") {
        // The element starts when it is put into a page.
    } else if cfg!(feature = "desk") {
        app::start::<desk::Desk>();
    } else if cfg!(feature = "hang") {
        app::start::<hang::Hang>();
    } else {
        app::start::<walk::Walk>();
    }
}
