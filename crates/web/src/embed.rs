//! The walk inside an element of another site's page.
//!
//! The element itself, its attributes and its events are JavaScript's, since only a
//! class of JavaScript can be one: `web/embed/survey.js`. What it shows is here. The page
//! around it is not touched: no address, no history, no storage unless it is allowed, and
//! every listener goes when the element goes.

mod news;
mod parts;
mod style;

use crate::app::{self, App, Program};
use crate::browser::{Browser, at, nearest};
use crate::rules;
use crate::walk::Walk;
use hangtrue_page::core::Unit;
use hangtrue_page::core::say::Language;
use hangtrue_page::guest::Guest as State;
use hangtrue_page::link::json::profile;
use hangtrue_page::{Action, Effect, Environment, Event, link, view};
use std::rc::Rc;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, ShadowRoot};

/// The name of the attribute that says that somebody has begun.
const USED: &str = "data-used";

/// The walk as a guest.
struct Guest;

/// Its state, and what the host page is told.
struct Told {
    guest: State,
    told: js_sys::Function,
    /// The name under which a draft is kept on the device; none where that is not allowed.
    draft_name: Option<String>,
    draft: Option<String>,
}

/// What happens to a guest.
enum Happens {
    /// What happens on every page.
    Page(Event),
    /// A link of the page was followed.
    Follow(String),
    /// The form around it was reset.
    Restart,
}

impl From<Event> for Happens {
    fn from(event: Event) -> Self {
        Self::Page(event)
    }
}

impl Program for Guest {
    type Model = Told;
    type Event = Happens;
    type Effect = Effect;

    fn boot(_: &Browser) -> (Told, Vec<Effect>) {
        // A guest is begun by its element, with what that knows.
        let (guest, told) = (State::default(), js_sys::Function::default());
        (Told { guest, told, draft_name: None, draft: None }, Vec::new())
    }

    fn environment(model: &mut Told) -> &mut Environment {
        &mut model.guest.page.environment
    }

    fn update(model: &mut Told, event: Happens) -> Vec<Effect> {
        match event {
            Happens::Page(event) => model.guest.update(event),
            Happens::Follow(address) => model.guest.follow(&address),
            Happens::Restart => model.guest.restart(),
        }
    }

    fn view(model: &Told) -> String {
        parts::as_guest(&view(&model.guest.page))
    }

    fn carry_out(app: &Rc<App<Self>>, effect: Effect) {
        match effect {
            Effect::Save(draft) => {
                let name = app.with(|model| {
                    model.draft = Some(draft.clone());
                    model.draft_name.clone()
                });
                if let (Some(Some(name)), Some(storage)) = (name, app.browser().storage()) {
                    let _ = storage.set_item(&name, &draft);
                }
            }
            Effect::Fresh => {
                let name = app.with(|model| {
                    model.draft = None;
                    model.draft_name.clone()
                });
                if let (Some(Some(name)), Some(storage)) = (name, app.browser().storage()) {
                    let _ = storage.remove_item(&name);
                }
            }
            // An element has one draft, and no list of them.
            Effect::Forget(_) | Effect::Load(_) | Effect::List => {}
            Effect::Top => top(app),
            // The document is the host page's, and what it remembers too.
            Effect::Remember(_) => {}
            Effect::Speak(language, _) => {
                let _ = app.root().set_attribute("lang", language.key());
            }
            // Granted to no frame that its page does not name, and to ask is an error there.
            Effect::StayAwake if app.browser().is_in_anothers_frame() => {}
            effect => app.browser().carry_out(app, effect),
        }
    }
}

/// The heading takes the focus, and the guest's own top comes into sight if it is above.
fn top(app: &Rc<App<Guest>>) {
    let root = app.root();
    root.set_scroll_top(0);
    app.browser().focus_without_scrolling("heading");
    if root.get_bounding_client_rect().top() < 0.0 {
        root.scroll_into_view();
    }
}

/// Starts the page itself by a dealer's rules: those of this JSON, or the built-in ones and
/// what kept the dealer's away. Orders' links name the profile as this address does.
// Public to the module's JavaScript, which is all that a `wasm_bindgen` function is for.
#[allow(unreachable_pub)]
#[wasm_bindgen(js_name = startPage)]
pub fn start_page(json: Option<String>, fault: Option<String>) {
    app::start_with::<Walk>(|browser| {
        let (mut model, effects) = Walk::boot(browser);
        let fault = fault.unwrap_or_default();
        if let Some(rules) = rules::read(model.environment.language, json, Some(fault)) {
            model.rule_by(rules);
        }
        model.environment.base = browser.address();
        if let Some(root) = browser.root() {
            style::colour(&root, &model.profile);
        }
        (model, effects)
    });
}

/// A survey in an element.
#[wasm_bindgen]
pub struct Survey {
    app: Rc<App<Guest>>,
}

#[wasm_bindgen]
impl Survey {
    /// Shows the walk in `place`, an element inside a shadow root, with the draft that is
    /// given or, under `draft_name`, kept on the device. Links of orders are of the page at
    /// `base`. `told` is called with the name and the detail (JSON) of what happens.
    ///
    /// # Errors
    /// When `place` stands in no shadow root.
    #[wasm_bindgen(constructor)]
    pub fn new(
        place: Element,
        base: String,
        draft: Option<String>,
        draft_name: Option<String>,
        told: js_sys::Function,
    ) -> Result<Survey, JsValue> {
        let browser = place.get_root_node().dyn_into::<ShadowRoot>().ok().and_then(Browser::within);
        let browser = browser.ok_or_else(|| JsValue::from("no shadow root"))?;
        let kept = || browser.storage()?.get_item(draft_name.as_deref()?).ok()?;
        let draft = draft.or_else(kept);
        let mut environment = Environment { base, ..browser.environment() };
        // The element speaks as the page around it does.
        let around = || {
            let root = place.get_root_node().dyn_into::<ShadowRoot>().ok()?;
            let marked = root.host().closest("[lang]").ok()??;
            Language::from_key(&marked.get_attribute("lang")?)
        };
        environment.language = around().unwrap_or(environment.language);
        let _ = place.set_attribute("lang", environment.language.key());
        let guest = State::new(environment, draft.as_deref());
        let app = App::begin(place, browser, Told { guest, told, draft_name, draft });
        listen(&app);
        Ok(Self { app })
    }

    /// Rules by the profile of this JSON; by the built-in rules where there is none or it
    /// cannot be read. Links of orders are of the page at `base`, which has the same rules
    /// where it can. Returns what is wrong with the profile.
    #[wasm_bindgen(js_name = ruleBy)]
    pub fn rule_by(&self, json: Option<String>, base: String) -> Option<String> {
        let speaks = self.app.with(|model| {
            model.guest.page.environment.base = base;
            model.guest.page.environment.language
        });
        let language = speaks.unwrap_or_default();
        let read = |json: String| {
            profile::parse(&json).map_err(|error| link::say::profile(language, &error))
        };
        self.rule(json.map(read))
    }

    /// Says that the profile could not be had, and why, and rules by the built-in rules.
    #[wasm_bindgen(js_name = ruleByDefault)]
    pub fn rule_by_default(&self, why: String) {
        self.rule(Some(Err(why)));
    }

    /// Measures in `in` or `mm`.
    #[wasm_bindgen(js_name = setUnit)]
    pub fn set_unit(&self, key: &str) {
        if Unit::from_key(key).is_some() {
            let (name, value) = ("unit".to_owned(), key.to_owned());
            self.app.take(Event::Input { name, value });
        }
    }

    /// Speaks the language of this tag, if there is a catalogue for it.
    #[wasm_bindgen(js_name = setLanguage)]
    pub fn set_language(&self, tag: &str) {
        if let Some(language) = Language::from_key(tag) {
            self.app.take(Event::Press(Action::Speak(language).code()));
        }
    }

    /// Opens the order of a link or a payload.
    pub fn open(&self, text: String) {
        self.app.take(Event::Open(text));
    }

    /// Begins again with nothing typed.
    pub fn restart(&self) {
        self.app.take(Happens::Restart);
        news::tell(&self.app);
    }

    /// Leaves: hears and changes nothing any more. Returns the draft, for later.
    pub fn leave(self) -> Option<String> {
        self.app.stop();
        self.app.with(|model| model.draft.take()).flatten()
    }
}

impl Survey {
    fn rule(
        &self,
        rules: Option<Result<hangtrue_page::core::profile::Profile, String>>,
    ) -> Option<String> {
        let fault = rules.as_ref().and_then(|rules| rules.as_ref().err().cloned());
        self.app.with(|model| model.guest.rule_by(rules));
        self.app.with(|model| style::colour(self.app.root(), &model.guest.page.profile));
        self.app.draw();
        fault
    }
}

/// Listens for what a guest hears and a page does not.
fn listen(app: &Rc<App<Guest>>) {
    at(app, app.root(), "click", |app, event| {
        let Some(address) = nearest(event, "a[href]", "href") else { return };
        // The host page's address is not ours to write, nor is the host page to be left.
        if let Some(own) = address.strip_prefix('#') {
            event.prevent_default();
            app.take(Happens::Follow(own.to_owned()));
        } else if let Some(Some(beside)) = app.with(|model| model.guest.outside(&address)) {
            event.prevent_default();
            app.carry_out(vec![Effect::Open(beside)]);
        }
    });
    for kind in ["click", "input"] {
        at(app, app.root(), kind, |app, _| {
            // From here on the element has the height of what it shows.
            let _ = app.root().set_attribute(USED, "");
            news::tell(app);
        });
    }
    at(app, app.root(), "submit", |app, _| news::tell(app));
}
