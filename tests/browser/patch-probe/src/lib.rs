//! The DOM patcher alone, callable from a page.
//!
//! The very source of `hangtrue-web`, not its crate: that one starts the whole page when loaded.

use std::cell::RefCell;
use std::rc::Rc;

use patch::Patcher;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::Node;

#[path = "../../../../crates/web/src/patch/mod.rs"]
#[allow(unreachable_pub)] // It is public where it lives.
mod patch;

thread_local! {
    /// One a place: what it was last made to show is remembered.
    static PATCHERS: RefCell<Vec<(Node, Rc<Patcher>)>> = RefCell::default();
}

/// Makes the children of `root` what `markup` says.
#[wasm_bindgen]
pub fn patch(root: &Node, markup: String) {
    let patcher = PATCHERS.with_borrow_mut(|all| {
        if let Some((_, known)) = all.iter().find(|(place, _)| place == root) {
            return Rc::clone(known);
        }
        let new = Rc::new(Patcher::new(root.clone(), |text| text));
        all.push((root.clone(), Rc::clone(&new)));
        new
    });
    patcher.show(markup);
}
