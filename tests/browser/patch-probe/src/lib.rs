//! The DOM patcher alone, callable from a page.
//!
//! The very source of `hangtrue-web`, not its crate: that one starts the whole page when loaded.

use wasm_bindgen::prelude::wasm_bindgen;

#[path = "../../../../crates/web/src/patch/mod.rs"]
#[allow(unreachable_pub)] // It is public where it lives.
mod patch;

/// See [`patch::patch`].
#[wasm_bindgen]
pub fn patch(root: &web_sys::Node, markup: &str) {
    patch::patch(root, markup);
}
