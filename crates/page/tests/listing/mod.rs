//! The desk with a list of orders in it, for the tests of that.

#![allow(dead_code, reason = "each test crate takes what it needs")]

use hangtrue_page::desk::many::{List, State};
use hangtrue_page::desk::{Effect, Event, Model, boot, update};
use hangtrue_page::{Effect as PageEffect, Environment, Event as PageEvent};

pub(crate) fn model() -> Model {
    boot(Environment::default(), "").0
}

/// Does all the work that is asked for; what else is asked for is returned.
pub(crate) fn settle(model: &mut Model, mut effects: Vec<Effect>) -> Vec<Effect> {
    let mut others = Vec::new();
    loop {
        let more = effects.contains(&Effect::Work);
        others.extend(effects.into_iter().filter(|effect| *effect != Effect::Work));
        if !more {
            return others;
        }
        effects = update(model, Event::Work);
    }
}

pub(crate) fn take(model: &mut Model, event: PageEvent) -> Vec<Effect> {
    let effects = update(model, Event::Page(event));
    settle(model, effects)
}

pub(crate) fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    take(model, PageEvent::Press(code.into()))
}

pub(crate) fn input(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    take(model, PageEvent::Input { name: name.into(), value: value.into() })
}

pub(crate) fn drop_file(model: &mut Model, name: &str, text: &str) -> Vec<Effect> {
    take(model, PageEvent::File { name: name.into(), text: Some(text.into()) })
}

pub(crate) fn list(model: &Model) -> &List {
    model.many.list.as_ref().unwrap()
}

/// The orders that are shown, by what they are called.
pub(crate) fn shown(model: &Model) -> Vec<&str> {
    let list = list(model);
    list.shown.iter().map(|at| list.found[*at].answer.id.as_str()).collect()
}

/// A model that has checked this list.
pub(crate) fn checked(name: &str, text: &str) -> Model {
    let mut model = model();
    press(&mut model, "many");
    drop_file(&mut model, name, text);
    if model.many.list.as_ref().is_some_and(|list| list.state == State::Columns) {
        press(&mut model, "list-check");
    }
    model
}

/// The file that is saved, without its mark.
pub(crate) fn saved(model: &mut Model, export: &str) -> String {
    let effects = press(model, &["list-save:", export].concat());
    let [Effect::Page(PageEffect::Download { name, text, .. })] = effects.as_slice() else {
        panic!("{effects:?}")
    };
    assert_eq!(*name, ["orders-checked.", export].concat());
    text.trim_start_matches('\u{feff}').to_owned()
}
