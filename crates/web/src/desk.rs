//! The counter desk.

use crate::app::{App, Program};
use crate::browser::Browser;
use hangtrue_page::Environment;
use hangtrue_page::desk::{Effect, Event, Model, boot, update, view};
use std::rc::Rc;

/// The desk that receives orders.
pub(crate) struct Desk;

impl Program for Desk {
    type Model = Model;
    type Event = Event;
    type Effect = Effect;

    fn boot(browser: &Browser) -> (Model, Vec<Effect>) {
        boot(browser.environment())
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
        match effect {
            Effect::Page(effect) => app.browser().carry_out(app, effect),
        }
    }
}
