//! The page that hangs the door.

use crate::app::{App, Program};
use crate::browser::Browser;
use hangtrue_page::Environment;
use hangtrue_page::hang::{Arrival, Effect, Event, Model, boot, update, view};
use std::rc::Rc;

/// The name the draft of a door being hung is kept under: the walk has its own.
const DRAFT: &str = "hangtrue-hang";

/// Hanging the door, and its record.
pub(crate) struct Hang;

impl Program for Hang {
    type Model = Model;
    type Event = Event;
    type Effect = Effect;

    fn boot(browser: &Browser) -> (Model, Vec<Effect>) {
        let (href, fragment) = (browser.href(), browser.fragment());
        let draft = browser.storage().and_then(|storage| storage.get_item(DRAFT).ok().flatten());
        let arrival = Arrival { href: &href, fragment: &fragment, draft: draft.as_deref() };
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
            Effect::Forget => {
                if let Some(storage) = browser.storage() {
                    let _ = storage.remove_item(DRAFT);
                }
            }
        }
    }
}
