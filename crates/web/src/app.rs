//! The loop: an event changes the model, the screen is drawn, the effects are carried out.

use crate::browser::{Browser, listen};
use crate::patch::patch;
use hangtrue_page::{Arrival, Effect, Environment, Event, Model, boot, update, view};
use std::cell::RefCell;
use std::rc::Rc;
use web_sys::Element;

/// The running page.
pub(crate) struct App {
    model: RefCell<Model>,
    root: Element,
    browser: Browser,
}

/// Starts the page in the element that was made for it. Without one there is nothing to do.
pub(crate) fn start() {
    let Some(browser) = Browser::new() else { return };
    let Some(root) = browser.element("app") else { return };
    let environment = Environment {
        base: browser.base(),
        can_share: browser.can_share(),
        today: browser.today(),
    };
    let (model, effects) = {
        let (href, fragment) = (browser.href(), browser.fragment());
        let (kept, draft) = (browser.kept(), browser.draft());
        let arrival = Arrival {
            href: &href,
            fragment: &fragment,
            kept: kept.as_deref(),
            draft: draft.as_deref(),
        };
        boot(environment, arrival)
    };
    let app = Rc::new(App { model: RefCell::new(model), root, browser });
    app.draw();
    app.carry_out(effects);
    listen(&app);
    // What was drawn before any script had run can now be used.
    let _ = app.root.set_attribute("data-ready", "");
}

impl App {
    /// Takes an event in. An event that comes while another is being taken in (a
    /// focus moved by an effect) finds the model free: nothing is borrowed across calls.
    pub(crate) fn take(self: &Rc<Self>, event: Event) {
        let effects = {
            let Ok(mut model) = self.model.try_borrow_mut() else { return };
            model.environment.today = self.browser.today();
            update(&mut model, event)
        };
        self.draw();
        self.carry_out(effects);
    }

    fn draw(&self) {
        let markup = view(&self.model.borrow());
        patch(&self.root, &markup);
    }

    fn carry_out(self: &Rc<Self>, effects: Vec<Effect>) {
        for effect in effects {
            self.browser.carry_out(self, effect);
        }
    }

    /// What the page stands in.
    pub(crate) fn root(&self) -> &Element {
        &self.root
    }

    /// What it is shown by.
    pub(crate) fn browser(&self) -> &Browser {
        &self.browser
    }
}
