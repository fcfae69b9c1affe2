//! The only crate that touches the browser: events in, markup and effects out.

mod app;
mod browser;
pub mod patch;

use wasm_bindgen::prelude::wasm_bindgen;

/// Starts the page. Called once, when the module has been loaded.
#[wasm_bindgen(start)]
pub fn start() {
    app::start();
}
