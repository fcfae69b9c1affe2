//! What the host page is told, as the name of an event, link, line, and the order in JSON.

use super::Guest;
use crate::app::App;
use std::rc::Rc;
use wasm_bindgen::JsValue;

/// Tells the host page of the order, if it has changed.
pub(super) fn tell(app: &Rc<App<Guest>>) {
    let news = app.with(|model| Some((model.told.clone(), model.guest.news()?))).flatten();
    let Some((told, news)) = news else { return };
    let name = if news.complete { "complete" } else { "change" };
    let link = news.message.as_ref().map_or(JsValue::NULL, |m| JsValue::from_str(&m.link));
    let line = news.message.as_ref().map_or(JsValue::NULL, |m| JsValue::from_str(&m.line));
    // A host page that throws in a listener does so in its own name.
    let order = JsValue::from_str(&news.order);
    let detail = js_sys::Array::of4(&JsValue::from_str(name), &link, &line, &order);
    let _ = told.apply(&JsValue::UNDEFINED, &detail);
}
