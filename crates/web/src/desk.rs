//! The counter desk.

use crate::app::{App, Program};
use crate::browser::Browser;
use crate::browser::{ask_before_leaving, at, read};
use hangtrue_page::Environment;
use hangtrue_page::desk::{Effect, Event, Model, boot, update, view};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::{ClipboardEvent, DataTransfer, DragEvent, File};

mod camera;
mod picture;
mod work;

/// Starts the desk by a dealer's rules: those of this JSON, or the built-in ones and what kept the
/// dealer's away; with neither, by the built-in ones.
// Public to the module's JavaScript, which is all that a `wasm_bindgen` function is for.
#[allow(unreachable_pub)]
#[wasm_bindgen::prelude::wasm_bindgen(js_name = startPage)]
pub fn start_page(json: Option<String>, fault: Option<String>) {
    crate::app::start_with::<Desk>(|browser| {
        let (mut model, effects) = Desk::boot(browser);
        if let Some(rules) = crate::rules::read(model.environment.language, json, fault) {
            let address = browser.address();
            model.rule_by(rules, address.split_once('?').map_or("", |(_, query)| query));
        }
        (model, effects)
    });
}

/// The desk that receives orders.
pub(crate) struct Desk;

impl Program for Desk {
    type Model = Model;
    type Event = Event;
    type Effect = Effect;

    fn boot(browser: &Browser) -> (Model, Vec<Effect>) {
        boot(browser.environment(), &browser.href())
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
            Effect::Look(video) => camera::look(app, video),
            Effect::LookAway => camera::look_away(),
            Effect::Press(action) => app.take(hangtrue_page::Event::Press(action.code())),
            Effect::Work => work::go_on(app),
            Effect::AskBeforeLeaving(asks) => ask_before_leaving(asks),
        }
    }

    fn file(app: &Rc<App<Self>>, file: &File) {
        if file.type_().starts_with("image/") {
            picture::open(app, file);
        } else {
            read(app, file);
        }
    }

    /// Files may be dropped anywhere, and pasted: a picture of the screen is a file.
    fn begun(app: &Rc<App<Self>>) {
        let Some(window) = web_sys::window() else { return };
        // Without it the browser would leave the page and show the file.
        at(app, &window, "dragover", |_, event| event.prevent_default());
        at(app, &window, "drop", |app, event| {
            event.prevent_default();
            let dropped = event.dyn_ref::<DragEvent>().and_then(DragEvent::data_transfer);
            if let Some(dropped) = dropped {
                take(app, &dropped);
                take_text(app, &dropped, 1);
            }
        });
        at(app, &window, "paste", |app, event| {
            let pasted = event.dyn_ref::<ClipboardEvent>().and_then(ClipboardEvent::clipboard_data);
            if let Some(pasted) = pasted {
                take(app, &pasted);
                if take_text(app, &pasted, BOX_LEAST) {
                    event.prevent_default();
                }
            }
        });
    }
}

/// From this length, in bytes, a text is taken past the box it is pasted into: laying
/// out megabytes there would keep the page from answering.
const BOX_LEAST: usize = 32 * 1024;

/// The files of a drop or of the clipboard.
fn take(app: &Rc<App<Desk>>, from: &DataTransfer) {
    let Some(files) = from.files() else { return };
    for file in (0..files.length()).filter_map(|at| files.get(at)) {
        Desk::file(app, &file);
    }
}

/// Its text, such as cells of a spreadsheet, where there is no file and it has `least`
/// bytes. Returns whether it was taken.
fn take_text(app: &Rc<App<Desk>>, from: &DataTransfer, least: usize) -> bool {
    if from.files().is_some_and(|files| files.length() > 0) {
        return false;
    }
    let Ok(text) = from.get_data("text/plain") else { return false };
    let taken = text.len() >= least;
    if taken {
        app.take(hangtrue_page::Event::File { name: String::new(), text: Some(text) });
    }
    taken
}
