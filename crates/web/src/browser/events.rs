//! What happens in the document, told in the page's terms.
//!
//! One listener of each kind at the root: the elements below it come and go.

use super::tape;
use crate::app::{App, Program};
use gloo::events::{EventListener, EventListenerOptions};
use hangtrue_page::Event;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlInputElement, KeyboardEvent, StorageEvent};

/// Listens at the root for as long as the page lives.
pub(crate) fn listen<P: Program>(app: &Rc<App<P>>) {
    let root = app.root();
    at(app, root, "input", |app, event| {
        let Some(input) = field(event) else { return };
        match input.get_attribute("data-act") {
            Some(code) => app.take(Event::Press(code)),
            None => app.take(Event::Input { name: input.name(), value: input.value() }),
        }
    });
    at(app, root, "change", |app, event| {
        for file in super::files::chosen(event) {
            P::file(app, &file);
        }
    });
    at(app, root, "focusin", |app, event| {
        if let Some(name) = target(event).and_then(|target| target.get_attribute("name")) {
            // Keys and tape leave the field before, which may stand above.
            app.take_around(&name, Event::Focus(name.clone()));
        }
    });
    at(app, root, "click", |app, event| {
        if let Some(code) = nearest(event, "button[data-act]", "data-act") {
            app.take(Event::Press(code));
        }
    });
    // A key beside a field must not take the focus from it: on a phone the keyboard
    // would go down and the layout jump under the thumb.
    at(app, root, "mousedown", |_, event| {
        if nearest(event, "[data-keep-focus]", "data-act").is_some() {
            event.prevent_default();
        }
    });
    at(app, root, "keydown", |app, event| {
        if let (Some(on), Some(key)) = (target(event), event.dyn_ref::<KeyboardEvent>()) {
            press(app, &on, key);
        }
    });
    tape::listen(app);
    at(app, root, "submit", |app, event| {
        event.prevent_default();
        if let Some(code) = target(event).and_then(|form| form.get_attribute("data-act")) {
            app.take(Event::Press(code));
        }
    });
}

/// Listens for the browser's own Back and Forward, and for a newer build of the page.
pub(crate) fn listen_to_the_browser<P: Program>(app: &Rc<App<P>>) {
    at(app, app.root(), "newer", |app, _| app.take_unasked(Event::Newer));
    if let Some(window) = web_sys::window() {
        at(app, &window, "storage", |app, event| {
            if let Some(event) = event.dyn_ref::<StorageEvent>() {
                app.browser().elsewhere(app, event);
            }
        });
        at(app, &window, "popstate", |app, _| {
            let (fragment, kept) = (app.browser().fragment(), app.browser().kept());
            app.take(match kept {
                Some(kept) => Event::Open(kept),
                None => Event::Navigate(fragment),
            });
        });
    }
}

/// Listens on `on` for as long as the page lives.
pub(crate) fn at<P: Program>(
    app: &Rc<App<P>>,
    on: &web_sys::EventTarget,
    kind: &'static str,
    mut heard: impl FnMut(&Rc<App<P>>, &web_sys::Event) + 'static,
) {
    let heard_by = Rc::clone(app);
    let options = EventListenerOptions::enable_prevent_default();
    let hear = move |event: &web_sys::Event| heard(&heard_by, event);
    app.keep(EventListener::new_with_options(on, kind, options, hear));
}

/// A key goes down on an element.
fn press<P: Program>(app: &Rc<App<P>>, on: &Element, key: &KeyboardEvent) {
    let name = key.key();
    // Enter leads to the next reading that is blank. From a blank one, or the last, it sends the form.
    let typed = || !on.unchecked_ref::<HtmlInputElement>().value().trim().is_empty();
    if let Some(next) = on.get_attribute("data-next").filter(|_| name == "Enter" && typed()) {
        key.prevent_default();
        app.browser().focus(&next);
    }
    if let Some(slide) = tape::step(on, &name) {
        key.prevent_default();
        app.take(slide);
    }
}

/// What was typed into or chosen from. A text area and a list have the same `name` and
/// `value` as an input, and no use here for more.
fn field(event: &web_sys::Event) -> Option<HtmlInputElement> {
    let element = target(event)?;
    let is_field = element.matches("input:not([type=file]),textarea,select");
    is_field.unwrap_or_default().then(|| element.unchecked_into())
}

pub(super) fn target(event: &web_sys::Event) -> Option<Element> {
    event.target()?.dyn_into().ok()
}

/// The attribute of the nearest element around the target that `selector` matches.
pub(crate) fn nearest(event: &web_sys::Event, selector: &str, attribute: &str) -> Option<String> {
    target(event)?.closest(selector).ok()??.get_attribute(attribute)
}
