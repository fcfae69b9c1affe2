//! The browser's own question before a page is left.

use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::BeforeUnloadEvent;

/// Lets the browser ask, or no longer. It listens only while something would be lost: a page that
/// listens is not kept for its way back.
pub(crate) fn ask_before_leaving(asks: bool) {
    let Some(window) = web_sys::window() else { return };
    let ask = asks.then(|| {
        // Asked for by `preventDefault`; engines of before 2023 want the value as well.
        let ask = |event: BeforeUnloadEvent| {
            event.prevent_default();
            event.set_return_value("leave");
        };
        Closure::<dyn Fn(BeforeUnloadEvent)>::new(ask).into_js_value()
    });
    window.set_onbeforeunload(ask.as_ref().map(JsValue::unchecked_ref));
}
