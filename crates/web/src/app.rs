//! The loop: an event changes the model, the screen is drawn, the effects are carried out.

use crate::browser::{Browser, listen, listen_to_the_browser};
use crate::patch::Patcher;
use gloo::events::EventListener;
use hangtrue_page::typeset::unbroken;
use hangtrue_page::{Environment, Event};
use std::cell::RefCell;
use std::rc::Rc;
use web_sys::Element;

/// A page as pure functions, and how its effects are carried out.
pub(crate) trait Program: Sized + 'static {
    /// Its state.
    type Model;
    /// What happens to it; what every page is told is among it.
    type Event: From<Event>;
    /// What it asks of the browser.
    type Effect;

    /// The state to begin with.
    fn boot(browser: &Browser) -> (Self::Model, Vec<Self::Effect>);
    /// What the page is told of its surroundings.
    fn environment(model: &mut Self::Model) -> &mut Environment;
    /// Takes an event in.
    fn update(model: &mut Self::Model, event: Self::Event) -> Vec<Self::Effect>;
    /// What the state looks like.
    fn view(model: &Self::Model) -> String;
    /// The page is shown: what it hears beyond what every page hears.
    fn begun(_app: &Rc<App<Self>>) {}
    /// Takes in a file that was chosen.
    fn file(app: &Rc<App<Self>>, file: &web_sys::File) {
        crate::browser::read(app, file);
    }
    /// Carries out one effect.
    fn carry_out(app: &Rc<App<Self>>, effect: Self::Effect);
}

/// A running page.
pub(crate) struct App<P: Program> {
    model: RefCell<P::Model>,
    root: Element,
    patcher: Patcher,
    browser: Browser,
    /// They hold the page, and the page holds them: it lives until it is stopped.
    listeners: RefCell<Vec<EventListener>>,
}

/// Starts a page in the element that was made for it. Without one there is nothing to do.
pub(crate) fn start<P: Program>() {
    start_with::<P>(P::boot);
}

/// The same with another way to begin.
pub(crate) fn start_with<P: Program>(boot: impl FnOnce(&Browser) -> (P::Model, Vec<P::Effect>)) {
    let Some(browser) = Browser::new() else { return };
    let Some(root) = browser.element("app") else { return };
    let (model, effects) = boot(&browser);
    let app = App::<P>::begin(root, browser, model);
    app.carry_out(effects);
    listen_to_the_browser(&app);
    P::begun(&app);
    // What was drawn before any script had run can now be used.
    let _ = app.root.set_attribute("data-ready", "");
}

impl<P: Program> App<P> {
    /// Shows `model` in `root`, and listens there.
    pub(crate) fn begin(root: Element, browser: Browser, model: P::Model) -> Rc<Self> {
        let (model, listeners) = (RefCell::new(model), RefCell::default());
        let patcher = Patcher::new(root.clone().into(), unbroken);
        let app = Rc::new(Self { model, root, patcher, browser, listeners });
        app.draw();
        listen(&app);
        app
    }

    /// Hears nothing any more, and waits for nothing.
    #[cfg(feature = "embed")]
    pub(crate) fn stop(&self) {
        self.listeners.take();
        self.browser.stop();
    }

    /// Keeps a listener for as long as the page lives.
    pub(crate) fn keep(&self, listener: EventListener) {
        self.listeners.borrow_mut().push(listener);
    }

    /// What `read` makes of the state; none where it is being changed at the moment.
    #[cfg(feature = "embed")]
    pub(crate) fn with<T>(&self, read: impl FnOnce(&mut P::Model) -> T) -> Option<T> {
        self.model.try_borrow_mut().ok().map(|mut model| read(&mut model))
    }

    /// Takes an event in. An event that comes while another is being taken in (a
    /// focus moved by an effect) finds the model free: nothing is borrowed across calls.
    pub(crate) fn take(self: &Rc<Self>, event: impl Into<P::Event>) {
        let effects = self.update(event.into());
        self.draw();
        self.carry_out(effects);
    }

    /// Takes in an event that nobody's touch has brought: what is shown of it must not move what a
    /// finger is about to touch.
    pub(crate) fn take_unasked(self: &Rc<Self>, event: impl Into<P::Event>) {
        self.take_around("heading", event);
    }

    /// Takes in an event by which the element of `id` stays where it is in view. Engines with scroll
    /// anchoring may have seen to that when it is measured.
    pub(crate) fn take_around(self: &Rc<Self>, id: &str, event: impl Into<P::Event>) {
        let before = self.browser.top_of(id);
        self.take(event);
        if let (Some(before), Some(after)) = (before, self.browser.top_of(id)) {
            self.browser.scroll_on(after - before);
        }
    }

    /// Takes an event in and draws nothing: for work that is done in many small pieces.
    pub(crate) fn update(&self, event: P::Event) -> Vec<P::Effect> {
        let Ok(mut model) = self.model.try_borrow_mut() else { return Vec::new() };
        P::environment(&mut model).today = self.browser.today();
        P::update(&mut model, event)
    }

    /// Brings the document to what the model says.
    pub(crate) fn draw(&self) {
        let markup = P::view(&self.model.borrow());
        self.patcher.show(markup);
    }

    /// Carries out what an update asked for.
    pub(crate) fn carry_out(self: &Rc<Self>, effects: Vec<P::Effect>) {
        for effect in effects {
            P::carry_out(self, effect);
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
