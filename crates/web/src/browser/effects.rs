//! What the page asks of the browser.

use super::{Browser, LANGUAGE};
use crate::app::{App, Program};
use gloo::timers::callback::Timeout;
use hangtrue_page::{Effect, Event};
use js_sys::{Object, Promise, Reflect};
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    Blob, BlobPropertyBag, FocusOptions, HtmlElement, ScrollIntoViewOptions, ScrollLogicalPosition,
    ShareData, Url,
};

/// How long a person must have stopped typing before the reading is spoken.
const SETTLE_MS: u32 = 500;
/// How long a file that is handed over is kept.
const DOWNLOAD_MS: u32 = 60_000;

impl Browser {
    /// Carries out one effect.
    pub(crate) fn carry_out<P: Program>(&self, app: &Rc<App<P>>, effect: Effect) {
        match effect {
            Effect::Push(address) => self.show(&address.text(), None, true),
            Effect::Replace(address, kept) => self.show(&address.text(), kept.as_deref(), false),
            Effect::Visit(page) => {
                let _ = self.location().replace(page);
            }
            Effect::Back => {
                if let Some(history) = self.history() {
                    let _ = history.back();
                }
            }
            Effect::Focus(id) => self.focus(&id),
            Effect::Top => self.top(),
            Effect::Save(draft) => self.save(app, &draft),
            Effect::Fresh => self.fresh(),
            Effect::Forget(id) => self.forget(id),
            Effect::Load(id) => self.load(app, id),
            Effect::List => self.list(app),
            Effect::Settle => {
                let app = Rc::clone(app);
                let later = Timeout::new(SETTLE_MS, move || app.take(Event::Settled));
                // The timer before it is cancelled as it is dropped.
                self.settle.replace(Some(later));
            }
            Effect::Copy(text) => self.copy(app, &text),
            Effect::Download { name, media, text } => self.download(&name, media, &text),
            Effect::Share { title, text, url } => self.share(&title, &text, &url),
            Effect::Open(address) => {
                let features = "noopener,noreferrer";
                let _ =
                    self.window.open_with_url_and_target_and_features(&address, "_blank", features);
            }
            Effect::Print => {
                let _ = self.window.print();
            }
            Effect::Speak(language, title) => {
                self.document.set_title(&title);
                if let Some(root) = self.document.document_element() {
                    let _ = root.set_attribute("lang", language.key());
                }
            }
            Effect::Remember(language) => {
                if let Some(storage) = self.storage() {
                    let _ = storage.set_item(LANGUAGE, language.key());
                }
            }
            Effect::StayAwake => self.stay_awake(),
            Effect::Tremble => self.tremble(),
            Effect::TakeOver => {
                // Heard by the few lines that look after the worker.
                if let Ok(event) = web_sys::Event::new("take-over") {
                    let _ = app.root().dispatch_event(&event);
                }
            }
        }
    }

    /// Shows `address` behind the page's `#`, as a new entry in the history or in place of the
    /// present one, and keeps a text with it.
    pub(crate) fn show(&self, address: &str, kept: Option<&str>, push: bool) {
        let Some(history) = self.history() else { return };
        let address = ["#", address].concat();
        let kept = kept.map_or(JsValue::NULL, JsValue::from_str);
        // A browser refuses after a hundred or so in a few seconds; the screen is right all the same.
        let _ = if push {
            history.push_state_with_url(&kept, "", Some(&address))
        } else {
            history.replace_state_with_url(&kept, "", Some(&address))
        };
    }

    pub(super) fn focus(&self, id: &str) {
        let Some(element) = self.element(id).and_then(|e| e.dyn_into::<HtmlElement>().ok()) else {
            return;
        };
        let _ = element.focus();
        let options = ScrollIntoViewOptions::new();
        options.set_block(ScrollLogicalPosition::Center);
        element.scroll_into_view_with_scroll_into_view_options(&options);
    }

    /// The heading takes the focus, so that a screen reader begins there.
    fn top(&self) {
        self.focus_without_scrolling("heading");
        self.window.scroll_to_with_x_and_y(0.0, 0.0);
    }

    /// Where the element of `id` begins in the window, in px.
    pub(crate) fn top_of(&self, id: &str) -> Option<f64> {
        Some(self.element(id)?.get_bounding_client_rect().top())
    }

    /// Scrolls on by `px`, where the page is not at its top.
    pub(crate) fn scroll_on(&self, px: f64) {
        if self.window.scroll_y().is_ok_and(|y| y > 0.0) {
            self.window.scroll_by_with_x_and_y(0.0, px);
        }
    }

    /// Puts the focus on the element of `id` and scrolls nothing.
    pub(crate) fn focus_without_scrolling(&self, id: &str) {
        if let Some(element) = self.element(id).and_then(|e| e.dyn_into::<HtmlElement>().ok()) {
            let options = FocusOptions::new();
            options.set_prevent_scroll(true);
            let _ = element.focus_with_options(&options);
        }
    }

    fn copy<P: Program>(&self, app: &Rc<App<P>>, text: &str) {
        let navigator = self.window.navigator();
        // Absent where the page is not served securely, whatever the types say.
        let has = Reflect::get(&navigator, &JsValue::from_str("clipboard"));
        if !has.is_ok_and(|clipboard| clipboard.is_object()) {
            app.take(Event::Copied(false));
            return;
        }
        let told = |worked| {
            let app = Rc::clone(app);
            Closure::once_into_js(move |_: JsValue| app.take(Event::Copied(worked)))
        };
        settled(&navigator.clipboard().write_text(text), &told(true), &told(false));
    }

    /// As if a link to the file had been followed.
    fn download(&self, name: &str, media: &str, text: &str) {
        let options = BlobPropertyBag::new();
        options.set_type(media);
        let parts = js_sys::Array::of1(&JsValue::from_str(text));
        let blob = Blob::new_with_str_sequence_and_options(&parts, &options);
        let Ok(address) = blob.and_then(|blob| Url::create_object_url_with_blob(&blob)) else {
            return;
        };
        if let Ok(link) = self.document.create_element("a") {
            let link = link.unchecked_into::<HtmlElement>();
            let _ = link.set_attribute("href", &address);
            let _ = link.set_attribute("download", name);
            link.click();
        }
        // A slow browser still reads it after the press.
        Timeout::new(DOWNLOAD_MS, move || {
            let _ = Url::revoke_object_url(&address);
        })
        .forget();
    }

    fn share(&self, title: &str, text: &str, url: &str) {
        if !self.can_share() {
            return;
        }
        let data = ShareData::new();
        data.set_title(title);
        data.set_text(text);
        data.set_url(url);
        // Closing the sheet is a refusal to the browser, and nothing to the person.
        let nothing = || Closure::once_into_js(|_: JsValue| ());
        settled(&self.window.navigator().share_with_data(&data), &nothing(), &nothing());
    }
}

/// `promise.then(done, failed)`, of which exactly one is called.
pub(crate) fn settled(promise: &Promise, done: &JsValue, failed: &JsValue) {
    let Ok(then) = Reflect::get(promise, &JsValue::from_str("then")) else { return };
    let Some(then) = then.dyn_ref::<js_sys::Function>() else { return };
    let promise: &Object = promise.as_ref();
    let _ = then.call2(promise, done, failed);
}
