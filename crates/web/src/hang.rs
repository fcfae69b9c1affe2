//! The page that hangs the door.

use crate::app::{App, Program};
use crate::browser::Browser;
use hangtrue_page::Environment;
use hangtrue_page::hang::{Arrival, Effect, Event, Model, boot, update, view};
use std::rc::Rc;
use web_sys::Storage;

/// The name the draft of a door being hung is kept under: the walk has its own. Drafts that
/// were set aside have a number behind it; `web/fault.js` sets one aside too.
const DRAFT: &str = "hangtrue-hang";
const ASIDE: &str = "hangtrue-hang-";

fn aside(number: u32) -> String {
    [ASIDE, &number.to_string()].concat()
}

/// The drafts that were set aside.
fn all_aside(storage: &Storage) -> Vec<(u32, String)> {
    let names = (0..storage.length().unwrap_or(0)).filter_map(|at| storage.key(at).ok()?);
    let numbers = names.filter_map(|name| name.strip_prefix(ASIDE)?.parse().ok());
    let read = |number| Some((number, storage.get_item(&aside(number)).ok()??));
    numbers.filter_map(read).collect()
}

/// Starts the page by a dealer's rules: those of this JSON, or the built-in ones and what
/// kept the dealer's away; with neither, by the built-in ones. The record's links name the
/// profile as this address does.
// Public to the module's JavaScript, which is all that a `wasm_bindgen` function is for.
#[allow(unreachable_pub)]
#[wasm_bindgen::prelude::wasm_bindgen(js_name = startPage)]
pub fn start_page(json: Option<String>, fault: Option<String>) {
    crate::app::start_with::<Hang>(|browser| {
        let (mut model, effects) = Hang::boot(browser);
        if let Some(rules) = crate::rules::read(model.environment.language, json, fault) {
            model.rule_by(rules);
            model.environment.base = browser.address();
        }
        (model, effects)
    });
}

/// Hanging the door, and its record.
pub(crate) struct Hang;

impl Program for Hang {
    type Model = Model;
    type Event = Event;
    type Effect = Effect;

    fn boot(browser: &Browser) -> (Model, Vec<Effect>) {
        let (href, fragment) = (browser.href(), browser.fragment());
        let storage = browser.storage();
        let draft = storage.as_ref().and_then(|storage| storage.get_item(DRAFT).ok().flatten());
        let aside = storage.as_ref().map(all_aside).unwrap_or_default();
        let (href, fragment) = (href.as_str(), fragment.as_str());
        let arrival = Arrival { href, fragment, draft: draft.as_deref(), aside: &aside };
        boot(browser.environment(), arrival)
    }

    fn environment(model: &mut Model) -> &mut Environment {
        &mut model.environment
    }

    fn update(model: &mut Model, event: Event) -> Vec<Effect> {
        update(model, event)
    }

    fn view(model: &Model) -> String {
        view(model)
    }

    fn carry_out(app: &Rc<App<Self>>, effect: Effect) {
        let browser = app.browser();
        match effect {
            Effect::Page(effect) => browser.carry_out(app, effect),
            Effect::Show(step) => browser.show(&["/", step.slug()].concat(), None, true),
            Effect::Replace(step) => browser.show(&["/", step.slug()].concat(), None, false),
            Effect::Keep(draft) => {
                if let Some(storage) = browser.storage() {
                    let _ = storage.set_item(DRAFT, &draft);
                }
            }
            Effect::SetAside(number, draft) => {
                if let Some(storage) = browser.storage() {
                    let _ = storage.set_item(&aside(number), &draft);
                }
            }
            Effect::DropAside(number) => {
                if let Some(storage) = browser.storage() {
                    let _ = storage.remove_item(&aside(number));
                }
            }
            Effect::Forget => {
                if let Some(storage) = browser.storage() {
                    let _ = storage.remove_item(DRAFT);
                }
            }
        }
    }
}
