//! The page that measures.

use crate::app::{App, Program};
use crate::browser::Browser;
use hangtrue_page::{Arrival, Effect, Environment, Event, Model, boot, update, view};
use std::rc::Rc;

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

    fn carry_out(app: &Rc<App<Self>>, effect: Effect) {
        app.browser().carry_out(app, effect);
    }
}
