//! Files that a person chooses.

use super::effects::settled;
use crate::app::{App, Program};
use hangtrue_page::Event;
use js_sys::Promise;
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{File, HtmlInputElement};

/// The most bytes of a file that are read. A hundred thousand orders have some ten million.
const MOST: f64 = 64.0 * 1024.0 * 1024.0;

/// The files that were chosen with the input an event came from. The same may be chosen
/// again: it is an event then too.
pub(crate) fn chosen(event: &web_sys::Event) -> Vec<File> {
    let Some(input) = event.target().and_then(|t| t.dyn_into::<HtmlInputElement>().ok()) else {
        return Vec::new();
    };
    let Some(list) = input.files() else { return Vec::new() };
    let files = (0..list.length()).filter_map(|at| list.get(at)).collect();
    input.set_value("");
    files
}

/// Reads `file` as text, and tells the page.
pub(crate) fn read<P: Program>(app: &Rc<App<P>>, file: &File) {
    let told = |name: String| {
        let app = Rc::clone(app);
        Closure::once_into_js(move |text: JsValue| {
            app.take(Event::File { name, text: text.as_string() });
        })
    };
    if file.size() > MOST {
        app.take(Event::File { name: file.name(), text: None });
        return;
    }
    let text: Promise = file.text();
    // What a browser says of a file that it cannot read is no text.
    let failed = {
        let (app, name) = (Rc::clone(app), file.name());
        Closure::once_into_js(move |_: JsValue| app.take(Event::File { name, text: None }))
    };
    settled(&text, &told(file.name()), &failed);
}
