//! The page that measures.

use crate::app::{self, App, Program};
use crate::browser::{Browser, at};
use gloo::events::EventListener;
use hangtrue_page::{Arrival, Effect, Environment, Event, Model, boot, boot_partial, update, view};
use std::rc::Rc;

/// What the page's script tells its element once the second module is there.
const WHOLE: &str = "whole";

/// Starts the walk: at once where the first screens are enough, else when the second module
/// is there. Until then the screen stands as the document brought it.
pub(crate) fn start() {
    let Some(browser) = Browser::new() else { return };
    if browser.is_blank() {
        app::start_with::<Walk>(|browser| boot_partial(browser.environment()));
    } else if let Some(page) = browser.element("app") {
        EventListener::once(&page, WHOLE, |_| app::start::<Walk>()).forget();
    }
}

/// The walk from reading to order.
pub(crate) struct Walk;

impl Program for Walk {
    type Model = Model;
    type Event = Event;
    type Effect = Effect;

    fn boot(browser: &Browser) -> (Model, Vec<Effect>) {
        let (href, fragment) = (browser.href(), browser.fragment());
        let (kept, draft) = (browser.kept(), browser.draft());
        let arrival = Arrival {
            href: &href,
            fragment: &fragment,
            kept: kept.as_deref(),
            draft: draft.as_deref(),
        };
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

    fn begun(app: &Rc<App<Self>>) {
        at(app, app.root(), WHOLE, |app, _| app.take(Event::Whole));
        at(app, app.root(), "missing", |app, _| app.take(Event::Missing));
    }

    fn carry_out(app: &Rc<App<Self>>, effect: Effect) {
        app.browser().carry_out(app, effect);
    }
}
