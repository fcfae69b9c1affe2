//! `update`: what an event makes of the desk, and what it asks of the browser.

use super::effect::Effect;
use super::event::{Action, Event};
use super::model::Model;
use super::phone::Phone;
use crate::field::Field;
use hangtrue_core::{Survey, Unit};

/// Takes `event` into `model`; the effects are to be carried out after drawing.
pub fn update(model: &mut Model, event: Event) -> Vec<Effect> {
    match event {
        Event::Page(event) => page(model, event),
    }
}

fn page(model: &mut Model, event: crate::Event) -> Vec<Effect> {
    match event {
        crate::Event::Input { name, value } => input(model, &name, &value),
        crate::Event::Focus(name) => {
            model.active = name;
            Vec::new()
        }
        crate::Event::Press(code) => {
            Action::from_code(&code).map_or_else(Vec::new, |action| act(model, action))
        }
        crate::Event::Settled => {
            model.spoken = (crate::text::DESK.ask)(&model.ask(), model.speaker());
            Vec::new()
        }
        crate::Event::Copied(worked) => {
            model.copied = Some(worked);
            Vec::new()
        }
        crate::Event::Navigate(_) | crate::Event::Open(_) => Vec::new(),
    }
}

fn input(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    let phone = &mut model.phone;
    match name {
        "unit" => {
            if let Some(unit) = Unit::from_key(value) {
                phone.survey.set_unit(unit);
            }
        }
        "built" => phone.survey.prepared = value == "yes",
        _ => match Field::from_name(name) {
            Some(field) => phone.set(field, value),
            None => return Vec::new(),
        },
    }
    model.copied = None;
    vec![Effect::Page(crate::Effect::Settle)]
}

fn act(model: &mut Model, action: Action) -> Vec<Effect> {
    match action {
        Action::Next => next(model),
        Action::Stands => {
            let ask = model.ask();
            model.phone.stands.push(ask);
            vec![Effect::Page(crate::Effect::Settle)]
        }
        Action::Use(field, text) => {
            model.phone.set(field, &text);
            vec![Effect::focus(field.name()), Effect::Page(crate::Effect::Settle)]
        }
        Action::Fresh => fresh(model),
    }
}

/// Enter: to the next field that is blank, in the order of the screen; behind the last
/// one, to the first that is.
fn next(model: &mut Model) -> Vec<Effect> {
    let ask = model.ask();
    let fields = model.phone.fields(&ask);
    let at = fields.iter().position(|field| field.name() == model.active);
    let (before, after) = fields.split_at(at.map_or(0, |at| at.saturating_add(1)));
    let blank = |field: &&Field| model.phone.typed(**field).trim().is_empty();
    let next = after.iter().find(blank).or_else(|| before.iter().find(blank));
    next.map_or_else(Vec::new, |field| vec![Effect::focus(field.name())])
}

/// Another call: everything goes but the unit.
fn fresh(model: &mut Model) -> Vec<Effect> {
    let survey = Survey::new(model.phone.survey.unit);
    model.phone = Phone { survey, ..Phone::default() };
    model.spoken = String::new();
    model.copied = None;
    super::FIELDS.first().map_or_else(Vec::new, |field| vec![Effect::focus(field.name())])
}
