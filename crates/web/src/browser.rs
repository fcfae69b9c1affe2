//! The browser, as far as the page needs it. Whatever it lacks is answered by
//! nothing happening: no call here throws.

mod drafts;
mod effects;
mod events;
mod files;
#[cfg(any(feature = "desk", feature = "builder"))]
mod leaving;
mod phone;
mod tape;

#[cfg(feature = "desk")]
pub(crate) use effects::settled;
#[cfg(any(feature = "embed", feature = "builder"))]
pub(crate) use events::nearest;
pub(crate) use events::{at, listen, listen_to_the_browser};
pub(crate) use files::read;
#[cfg(any(feature = "desk", feature = "builder"))]
pub(crate) use leaving::ask_before_leaving;

use gloo::timers::callback::Timeout;
use hangtrue_page::Environment;
use hangtrue_page::core::order::Date;
use hangtrue_page::core::say::Language;
use js_sys::Reflect;
use std::cell::RefCell;
use wasm_bindgen::JsValue;
use web_sys::{Document, Element, History, Location, ShadowRoot, Storage, Window};

/// The name the chosen language is kept under.
const LANGUAGE: &str = "hangtrue-language";

/// The window, its document, and the one timer that is running.
pub(crate) struct Browser {
    window: Window,
    document: Document,
    /// The shadow root whose ids are meant; else the document's are.
    within: Option<ShadowRoot>,
    settle: RefCell<Option<Timeout>>,
    here: drafts::Here,
}

impl Browser {
    /// The browser this module runs in; none where there is no document.
    pub(crate) fn new() -> Option<Self> {
        let window = web_sys::window()?;
        let document = window.document()?;
        Some(Self {
            window,
            document,
            within: None,
            settle: RefCell::new(None),
            here: drafts::Here::default(),
        })
    }

    /// The same for a page inside a shadow root.
    #[cfg(feature = "embed")]
    pub(crate) fn within(root: ShadowRoot) -> Option<Self> {
        Some(Self { within: Some(root), ..Self::new()? })
    }

    /// The document's own root.
    #[cfg(feature = "embed")]
    pub(crate) fn root(&self) -> Option<Element> {
        self.document.document_element()
    }

    /// Waits for nothing any more.
    #[cfg(feature = "embed")]
    pub(crate) fn stop(&self) {
        self.settle.take();
    }

    /// The element of `id`.
    pub(crate) fn element(&self, id: &str) -> Option<Element> {
        match &self.within {
            Some(root) => root.get_element_by_id(id),
            None => self.document.get_element_by_id(id),
        }
    }

    fn location(&self) -> Location {
        self.window.location()
    }

    fn history(&self) -> Option<History> {
        self.window.history().ok()
    }

    /// Storage, where the person allows it.
    pub(crate) fn storage(&self) -> Option<Storage> {
        self.window.local_storage().ok().flatten()
    }

    /// What a page is told of its surroundings.
    pub(crate) fn environment(&self) -> Environment {
        Environment {
            base: self.base(),
            can_share: self.can_share(),
            today: self.today(),
            language: self.language(),
            partial: false,
        }
    }

    /// The whole address.
    pub(crate) fn href(&self) -> String {
        self.location().href().unwrap_or_default()
    }

    /// The address with its query, which may name a dealer's rules; no fragment.
    #[cfg(any(feature = "desk", feature = "hang", feature = "embed"))]
    pub(crate) fn address(&self) -> String {
        self.href().split('#').next().unwrap_or_default().to_owned()
    }

    /// The page's own address: no query, no fragment.
    pub(crate) fn base(&self) -> String {
        let location = self.location();
        [location.origin(), location.pathname()].map(Result::unwrap_or_default).concat()
    }

    /// The fragment, without its `#`.
    pub(crate) fn fragment(&self) -> String {
        let hash = self.location().hash().unwrap_or_default();
        hash.strip_prefix('#').map(str::to_owned).unwrap_or_default()
    }

    /// The text kept with this history entry.
    pub(crate) fn kept(&self) -> Option<String> {
        self.history()?.state().ok()?.as_string()
    }

    /// Whether the page was opened as itself, nothing is remembered here, and English is spoken.
    pub(crate) fn is_blank(&self) -> bool {
        let location = self.location();
        let empty = |text: Result<String, JsValue>| text.is_ok_and(|text| text.is_empty());
        let page = location.pathname().unwrap_or_default();
        let itself = page.ends_with('/') || page.ends_with(".html");
        itself
            && empty(location.hash())
            && empty(location.search())
            && self.language() == Language::English
            && self.draft().is_none()
    }

    /// The language that was chosen on this device, else the browser's.
    fn language(&self) -> Language {
        let remembered = || self.storage()?.get_item(LANGUAGE).ok()?;
        let preferred = self.window.navigator().languages();
        let preferred = preferred.iter().filter_map(|tag| tag.as_string());
        hangtrue_page::language(remembered().as_deref(), preferred)
    }

    /// Whether there is a share sheet.
    pub(crate) fn can_share(&self) -> bool {
        let navigator = self.window.navigator();
        Reflect::has(&navigator, &JsValue::from_str("share")).unwrap_or(false)
    }

    /// Today, by this device's clock and zone; none where the clock is far off.
    pub(crate) fn today(&self) -> Option<Date> {
        let now = js_sys::Date::new_0();
        Some(Date {
            year: u16::try_from(now.get_full_year()).ok().filter(|y| (2000..2256).contains(y))?,
            month: u8::try_from(now.get_month()).ok()?.checked_add(1)?,
            day: u8::try_from(now.get_date()).ok()?,
        })
    }
}
