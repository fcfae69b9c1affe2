//! What a phone has: a screen that goes dark, and a tremble.

use super::Browser;
use super::effects::settled;
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

/// How long the tremble is, in ms: felt through a glove, no alarm.
const TREMBLE_MS: f64 = 40.0;

impl Browser {
    /// Keeps the screen awake until the page is hidden, where the browser can and may.
    pub(super) fn stay_awake(&self) {
        let navigator = self.window.navigator();
        let Some(lock) = member(&navigator, "wakeLock") else { return };
        if let Some(asked) = call(&lock, "request", &JsValue::from_str("screen"))
            && let Ok(promise) = asked.dyn_into::<Promise>()
        {
            // Refused on a low battery: then the screen goes dark as it always does.
            let nothing = || Closure::once_into_js(|_: JsValue| ());
            settled(&promise, &nothing(), &nothing());
        }
    }

    /// Whether the page is in a frame of another origin's page.
    #[cfg(feature = "embed")]
    pub(crate) fn is_in_anothers_frame(&self) -> bool {
        let is_top = self.window.top().ok().flatten().is_some_and(|top| top == self.window);
        !is_top && self.window.frame_element().ok().flatten().is_none()
    }

    /// A light tremble, where the device has one.
    pub(super) fn tremble(&self) {
        let _ = call(&self.window.navigator(), "vibrate", &JsValue::from_f64(TREMBLE_MS));
    }
}

/// `object[name]`, where it is an object: what an older browser lacks is absent.
fn member(object: &JsValue, name: &str) -> Option<JsValue> {
    Reflect::get(object, &JsValue::from_str(name)).ok().filter(JsValue::is_object)
}

fn call(object: &JsValue, name: &str, argument: &JsValue) -> Option<JsValue> {
    let function = Reflect::get(object, &JsValue::from_str(name)).ok()?;
    function.dyn_ref::<Function>()?.call1(object, argument).ok()
}
