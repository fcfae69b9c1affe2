//! The page on which a dealer's profile is filled in.

use crate::app::{App, Program};
use crate::browser::{Browser, ask_before_leaving, at, nearest};
use hangtrue_page::builder::{Effect, Given, Model, update, view};
use hangtrue_page::{Environment, Event};
use js_sys::Reflect;
use std::rc::Rc;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

/// The builder.
struct Builder;

impl Program for Builder {
    type Model = Model;
    type Event = Event;
    type Effect = Effect;

    fn boot(browser: &Browser) -> (Model, Vec<Effect>) {
        (Model::new(browser.environment(), &Given::default()), Vec::new())
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
            Effect::Page(effect) => {
                if let hangtrue_page::Effect::Speak(language, _) = &effect
                    && let Some(survey) = app.browser().element("live")
                {
                    let _ = survey.set_attribute("lang", language.key());
                }
                app.browser().carry_out(app, effect);
            }
            Effect::Show(profile) => show(app.browser(), &profile),
            Effect::AskBeforeLeaving(asks) => ask_before_leaving(asks),
        }
    }
}

/// Shows the builder, made from the profile's `schema`, with the lines for a webmaster.
// Public to the module's JavaScript, which is all that a `wasm_bindgen` function is for.
#[allow(unreachable_pub)]
#[wasm_bindgen]
pub fn build(schema: String, snippet: String) {
    let Some(browser) = Browser::new() else { return };
    let Some(root) = browser.element("app") else { return };
    let model = Model::new(browser.environment(), &Given { schema, snippet });
    let greeting = model.greeting();
    let app = App::<Builder>::begin(root, browser, model);
    at(&app, app.root(), "click", |app, event| {
        if let Some(name) = nearest(event, "a[download]", "download") {
            app.take(Event::Press(["downloaded:", &name].concat()));
        }
    });
    if let Some(effect) = greeting {
        Builder::carry_out(&app, effect);
    }
    let _ = app.root().set_attribute("data-ready", "");
}

/// Lets the survey beside the form go by `profile`.
fn show(browser: &Browser, profile: &str) {
    let Some(survey) = browser.element("live") else { return };
    if let Ok(profile) = js_sys::JSON::parse(profile) {
        let _ = Reflect::set(&survey, &JsValue::from_str("profile"), &profile);
    }
}
