//! What the host page is told, as the name of an event and its detail in JSON.

use super::Guest;
use crate::app::App;
use std::rc::Rc;
use wasm_bindgen::JsValue;

/// Tells the host page of the order, if it has changed.
pub(super) fn tell(app: &Rc<App<Guest>>) {
    let Some(Some((told, news, report, page))) = app.with(|model| {
        let news = model.guest.news()?;
        Some((model.told.clone(), news, model.guest.page.report(), model.guest.page.clone()))
    }) else {
        return;
    };
    let _ = (page, report);
    let name = if news.complete { "complete" } else { "change" };
    let link = news.message.as_ref().map_or(JsValue::NULL, |m| JsValue::from_str(&m.link));
    let line = news.message.as_ref().map_or(JsValue::NULL, |m| JsValue::from_str(&m.line));
    // A host page that throws in a listener does so in its own name.
    let detail = js_sys::Array::of3(&JsValue::from_str(name), &link, &line);
    let _ = told.apply(&JsValue::UNDEFINED, &detail);
}
