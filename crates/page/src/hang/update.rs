//! `update`: what an event makes of this page, and what it asks of the browser.

use super::draft;
use super::effect::Effect;
use super::event::{Action, Event};
use super::fields::BUILT;
use super::model::{Fault, Model};
use super::step::Step;
use super::{view, work};
use crate::event::Action as Walk;
use hangtrue_core::hang::care::{Service, Work};
use hangtrue_core::hang::inspection::{Check, Found, Measure};
use hangtrue_core::hang::record::{Place, QuarterTurns, Record};
use hangtrue_core::hang::weight::{Scale, Weight};
use hangtrue_core::length::read;
use hangtrue_core::{Dimension, Entry, Survey, Unit};
use hangtrue_link::json::text::Node;
use hangtrue_link::json::{self, FileError};
use hangtrue_link::record::{Opened, decode, url};

/// Takes `event` into `model`; the effects are to be carried out after drawing.
pub fn update(model: &mut Model, event: Event) -> Vec<Effect> {
    let Event::Page(event) = event;
    match event {
        crate::Event::Input { name, value } => {
            let mut effects = input(model, &name, &value);
            effects.push(Effect::Page(crate::Effect::Settle));
            effects
        }
        crate::Event::Press(code) => match (Action::from_code(&code), Walk::from_code(&code)) {
            (Some(action), _) => act(model, action),
            (None, Some(Walk::Speak(language))) => {
                model.environment.language = language;
                vec![model.speak(), Effect::Page(crate::Effect::Remember(language))]
            }
            (None, Some(Walk::TakeOver)) => {
                let over = Effect::Page(crate::Effect::TakeOver);
                draft::keep(model).into_iter().chain([over]).collect()
            }
            _ => Vec::new(),
        },
        crate::Event::Navigate(fragment) => match Step::from_address(&fragment) {
            Some(step) => arrive(model, step),
            None if fragment.is_empty() => arrive(model, Step::Order),
            None => open(model, &fragment),
        },
        crate::Event::Open(text) => open(model, &text),
        crate::Event::Copied(worked) => {
            model.copied = Some(worked);
            Vec::new()
        }
        crate::Event::Focus(name) => {
            model.active = Some(name);
            Vec::new()
        }
        crate::Event::Settled => {
            model.spoken = model
                .active
                .as_deref()
                .map_or_else(String::new, |name| super::view::heard(model, name));
            Vec::new()
        }
        crate::Event::Newer => {
            model.newer = true;
            Vec::new()
        }
        crate::Event::File { .. }
        | crate::Event::Slide { .. }
        | crate::Event::Whole
        | crate::Event::Missing
        | crate::Event::Loaded(_)
        | crate::Event::Drafts(_)
        | crate::Event::Trouble(_) => Vec::new(),
    }
}

/// Shows a screen that the browser already went to.
fn arrive(model: &mut Model, step: Step) -> Vec<Effect> {
    model.step = step;
    model.copied = None;
    model.spoken = String::new();
    kept(model, vec![Effect::Page(crate::Effect::Top)])
}

/// Goes to a screen.
fn go(model: &mut Model, step: Step) -> Vec<Effect> {
    let mut effects = vec![Effect::Show(step)];
    effects.extend(arrive(model, step));
    effects
}

fn kept(model: &Model, mut effects: Vec<Effect>) -> Vec<Effect> {
    effects.extend(draft::keep(model));
    effects
}

/// Opens an order or a record that stands in `text`; the payload leaves the address.
fn open(model: &mut Model, text: &str) -> Vec<Effect> {
    let opened = if text.trim_start().starts_with('{') {
        file(text).map_err(Fault::File)
    } else {
        hangtrue_link::find(text).and_then(|payload| decode(&payload)).map_err(Fault::Link)
    };
    let other = match &opened {
        Ok(Opened::Order(_)) => true,
        Ok(Opened::Record(record)) => **record != model.record,
        Err(_) => false,
    };
    let aside = if other { draft::set_aside(model) } else { None };
    match opened {
        Ok(Opened::Order(order)) => {
            model.take_order(*order);
            model.step = Step::Order;
        }
        Ok(Opened::Record(record)) => {
            model.take_record(*record);
            model.step = Step::Care;
        }
        Err(fault) => {
            model.fault = Some(fault);
            model.step = Step::Order;
            return vec![Effect::Replace(Step::Order), Effect::Page(crate::Effect::Top)];
        }
    }
    let mut effects = vec![Effect::Replace(model.step), Effect::Page(crate::Effect::Top)];
    effects.extend(aside);
    kept(model, effects)
}

/// A record's file, or an order's: its format says which.
fn file(text: &str) -> Result<Opened, FileError> {
    let is_record = json::text::parse(text).is_ok_and(|file| {
        let format = file.get("format").and_then(Node::as_text);
        format.is_some_and(|format| format.starts_with("hangtrue-record/"))
    });
    if is_record {
        return json::record::parse(text).map(|record| Opened::Record(Box::new(record)));
    }
    let order = json::order::parse(text).map_err(|(_, error)| error);
    order.map(|(_, order)| Opened::Order(Box::new(order)))
}

fn input(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    model.copied = None;
    let unit = model.unit();
    if name == "unit" {
        if let Some(unit) = Unit::from_key(value) {
            set_unit(model, unit);
        }
        return kept(model, Vec::new());
    }
    if let Some(key) = name.strip_prefix(BUILT) {
        if let Some(place) = Place::from_key(key) {
            model.record.built.set(place, value);
        }
        return kept(model, Vec::new());
    }
    model.fields.set(name, value);
    let text = model.fields.get(name).to_owned();
    match name {
        "weight" => model.record.weight = Weight::read(&text, model.scale()).ok(),
        "turns" => model.record.turns = work::number(&text).and_then(QuarterTurns::of),
        "serial" => model.record.serial = text,
        "hung" => model.record.hung = model.past(&text),
        "per-day" => model.record.per_day = text.trim().parse().ok(),
        _ => {
            if let Some(key) = name.strip_prefix("order.") {
                ordered(model, key, &text);
            } else if let Some(key) = name.strip_prefix("check.") {
                found(model, key, &text, unit);
            }
        }
    }
    kept(model, Vec::new())
}

/// Changes the unit of the fields. No reading and no weight changes its meaning: what it was typed
/// in is written behind it.
fn set_unit(model: &mut Model, unit: Unit) {
    let (was, scales) = (model.unit(), [model.scale(), Scale::of(unit)]);
    let length = |text: &str| Entry::kept(text, was, unit);
    let weight = |text: &str| {
        let [before, after] = scales.map(|scale| Weight::read(text, scale));
        let bare = before.is_ok() && before != after;
        if bare { [text.trim(), " ", scales[0].key()].concat() } else { text.to_owned() }
    };
    model.record.order.survey.set_unit(unit);
    for place in Place::ALL {
        let text = model.record.built.text(place);
        if !text.trim().is_empty() {
            model.record.built.set(place, &length(text));
        }
    }
    model.fields.change(|name, text| match view::measures(name) {
        Some(view::Measures::Length) => length(text),
        Some(view::Measures::Weight) => weight(text),
        None => text.to_owned(),
    });
}

/// One of the four numbers, typed where there is no link: of a frame as it is built.
fn ordered(model: &mut Model, key: &str, text: &str) {
    let Some(dimension) = Dimension::ALL.into_iter().find(|known| known.key() == key) else {
        return;
    };
    let survey = &mut model.record.order.survey;
    survey.prepared = true;
    survey.set(dimension.main_spot(), 0, text);
}

/// A point of the inspection.
fn found(model: &mut Model, key: &str, text: &str, unit: Unit) {
    let Some(check) = Check::ALL.into_iter().find(|check| check.key() == key) else { return };
    let found = match check.measure() {
        Measure::Length => read(text, unit).ok().map(Found::Length),
        Measure::Weight => Weight::read(text, model.scale()).ok().map(Found::Weight),
        Measure::Count => text.trim().parse().ok().map(Found::Count),
        Measure::Eye => match text {
            "yes" => Some(Found::Eye(true)),
            "no" => Some(Found::Eye(false)),
            _ => None,
        },
    };
    model.record.inspection.set(check, found);
}

fn act(model: &mut Model, action: Action) -> Vec<Effect> {
    match action {
        Action::Next => match model.step.next() {
            // Nothing can be hung without an order.
            Some(_) if model.step == Step::Order && !model.has_order() => open_pasted(model),
            Some(step) => go(model, step),
            None => Vec::new(),
        },
        Action::Back => model.step.back().map_or_else(Vec::new, |step| go(model, step)),
        Action::Go(step) => go(model, step),
        Action::Open => open_pasted(model),
        Action::Tick(name) => {
            model.fields.tick(&name);
            kept(model, Vec::new())
        }
        Action::AddService => add_service(model),
        Action::DropService(index) => {
            if index < model.record.services.len() {
                model.record.services.remove(index);
            }
            kept(model, Vec::new())
        }
        Action::Copy => link(model, crate::Effect::Copy),
        Action::Share => {
            let title = model.words().record.heading.to_owned();
            let text = model.record.serial.clone();
            link(model, |url| crate::Effect::Share { title, text, url })
        }
        Action::Print => vec![Effect::Page(crate::Effect::Print)],
        Action::Restart => {
            let mut effects: Vec<Effect> = draft::set_aside(model).into_iter().collect();
            let unit = model.unit();
            model.take_record(Record::default());
            model.record.order.survey = Survey::new(unit);
            model.step = Step::Order;
            effects.extend([Effect::Forget, Effect::Show(Step::Order)]);
            effects.push(Effect::Page(crate::Effect::Top));
            effects
        }
        Action::TakeUp(number) => take_up(model, number),
        Action::DropAside(number) => {
            model.aside.retain(|(known, _)| *known != number);
            vec![Effect::DropAside(number)]
        }
    }
}

/// Goes on with a door that was set aside; the one that was open is set aside in its place.
fn take_up(model: &mut Model, number: u32) -> Vec<Effect> {
    let Some(at) = model.aside.iter().position(|(known, _)| *known == number) else {
        return Vec::new();
    };
    let (_, text) = model.aside.remove(at);
    let mut effects = vec![Effect::DropAside(number)];
    effects.extend(draft::set_aside(model));
    draft::restore(model, &text);
    effects.extend(go(model, model.step));
    effects
}

fn open_pasted(model: &mut Model) -> Vec<Effect> {
    let text = model.fields.get("paste").to_owned();
    open(model, &text)
}

/// Puts what was typed into the record; an unreadable day or no choice keeps it open.
fn add_service(model: &mut Model) -> Vec<Effect> {
    let work = Work::from_key(model.fields.get("service.work"));
    let date = match model.fields.get("service.date") {
        "" => model.environment.today,
        text => model.past(text),
    };
    let (Some(work), Some(date)) = (work, date) else { return Vec::new() };
    let note = model.fields.get("service.note").to_owned();
    model.record.services.push(Service { date, work, note });
    for name in ["service.work", "service.date", "service.note"] {
        model.fields.set(name, "");
    }
    kept(model, Vec::new())
}

fn link(model: &Model, effect: impl FnOnce(String) -> crate::Effect) -> Vec<Effect> {
    url(&model.environment.base, &model.record)
        .map_or_else(|_| Vec::new(), |link| vec![Effect::Page(effect(link))])
}
