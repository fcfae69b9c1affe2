//! `update`: what an event makes of the desk, and what it asks of the browser.

use super::effect::Effect;
use super::event::{Action, Camera, Event};
use super::many::{self, Source};
use super::model::{MOST_SENT, Model, Screen};
use super::sent::{self, Sent, Trouble};
use crate::event::Action as Walk;
use crate::field::Field;
use crate::file::{self, Format};
use crate::text::desk::Desk;
use hangtrue_core::Unit;
use hangtrue_core::order::Order;
use hangtrue_core::say::Speaker;
use hangtrue_link::code::Outcome;

/// Takes `event` into `model`; the effects are to be carried out after drawing.
pub fn update(model: &mut Model, event: Event) -> Vec<Effect> {
    let mut effects = happened(model, event);
    let asks = model.would_be_lost();
    if asks != model.asks_before_leaving {
        model.asks_before_leaving = asks;
        effects.push(Effect::AskBeforeLeaving(asks));
    }
    effects
}

fn happened(model: &mut Model, event: Event) -> Vec<Effect> {
    match event {
        Event::Page(event) => page(model, event),
        Event::Picture { name, codes } => {
            model.camera = Camera::Off;
            picture(model, &name, codes)
        }
        Event::Camera(camera) => {
            model.camera = camera;
            Vec::new()
        }
        Event::Work => many::work(model),
    }
}

fn page(model: &mut Model, event: crate::Event) -> Vec<Effect> {
    match event {
        crate::Event::Input { name, value } => input(model, &name, &value),
        crate::Event::Focus(name) => {
            model.active = name;
            Vec::new()
        }
        crate::Event::Press(code) => press(model, &code),
        crate::Event::Settled => {
            model.spoken =
                (Desk::of(model.environment.language).ask)(&model.ask(), model.speaker());
            Vec::new()
        }
        crate::Event::Copied(worked) => {
            model.copied = Some(worked);
            Vec::new()
        }
        crate::Event::Open(text) => open_or_say(model, "", &text),
        crate::Event::File { name, text } => match text {
            Some(text) => file_came(model, &name, text),
            None => say(model, Trouble::NoText),
        },
        crate::Event::Newer => {
            model.newer = true;
            Vec::new()
        }
        // The desk has one screen, and nothing on it that slides.
        crate::Event::Navigate(_)
        | crate::Event::Slide { .. }
        | crate::Event::Whole
        | crate::Event::Missing
        | crate::Event::Loaded(_)
        | crate::Event::Drafts(_)
        | crate::Event::Trouble(_) => Vec::new(),
    }
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    if let Some(action) = Action::from_code(code) {
        return act(model, action);
    }
    if let Some(action) = many::Action::from_code(code) {
        return many::act(model, action);
    }
    match Walk::from_code(code) {
        Some(Walk::Speak(language)) => {
            model.environment.language = language;
            vec![model.speak(), Effect::Page(crate::Effect::Remember(language))]
        }
        Some(Walk::TakeOver) => vec![Effect::Page(crate::Effect::TakeOver)],
        _ => Vec::new(),
    }
}

/// A file came, or a text that is too long for a box: many orders are many wherever they
/// come, and on their screen one is too.
fn file_came(model: &mut Model, name: &str, text: String) -> Vec<Effect> {
    match Source::find(name, text) {
        Ok(source) => many::begin(model, name, source),
        Err(text) if model.screen == Screen::Many => many::take(model, name, text),
        Err(text) => open_or_say(model, name, &text),
    }
}

fn input(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    if let Some(effects) = many::input(model, name, value) {
        return effects;
    }
    match name {
        "paste" => return pasted(model, value),
        "heard" => {
            value.clone_into(&mut model.heard);
            return Vec::new();
        }
        _ => {}
    }
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
        Action::Fresh => {
            model.fresh();
            first_field()
        }
        Action::Before => {
            if model.can_go_back() {
                model.go_back();
            }
            first_field()
        }
        // What was pasted last is open already, and the box empty again.
        Action::Open if model.paste.trim().is_empty() && !model.sent.is_empty() => {
            model.trouble = None;
            vec![Effect::focus(["sent-", &model.printed.to_string()].concat())]
        }
        Action::Open => match sent::open(&model.paste, &model.profile) {
            Ok(order) => opened(model, order),
            Err(trouble) => say(model, trouble),
        },
        Action::Close(at) => {
            if at < model.sent.len() {
                model.sent.remove(at);
            }
            model.printed = 0;
            vec![Effect::focus("paste")]
        }
        Action::Print(at) => {
            model.printed = at;
            left(model, at);
            vec![Effect::Page(crate::Effect::Print)]
        }
        Action::Save(at, format) => save(model, at, format),
        Action::Keep => keep(model),
        Action::Look => {
            model.camera = Camera::Asked;
            model.trouble = None;
            vec![Effect::Look(CAMERA)]
        }
        Action::LookAway => {
            model.camera = Camera::Off;
            vec![Effect::LookAway, Effect::focus("paste")]
        }
    }
}

/// The picture of the camera, by its id.
pub(super) const CAMERA: &str = "camera";

/// Opens the order in `text`, which came in the file of that name or in none.
pub(super) fn open_or_say(model: &mut Model, name: &str, text: &str) -> Vec<Effect> {
    match sent::open(text, &model.profile) {
        Ok(order) => opened(model, order.named(name)),
        Err(trouble) => say(model, trouble),
    }
}

pub(super) fn say(model: &mut Model, trouble: Trouble) -> Vec<Effect> {
    if model.screen == Screen::Many {
        model.many.trouble = Some(trouble);
        return vec![Effect::focus("orders")];
    }
    model.trouble = Some(trouble);
    vec![Effect::focus("paste")]
}

/// Opens every order whose code is in the picture.
fn picture(model: &mut Model, name: &str, codes: Option<Vec<String>>) -> Vec<Effect> {
    let Some(codes) = codes else { return say(model, Trouble::NoText) };
    if codes.is_empty() {
        return say(model, Trouble::NoCode);
    }
    codes.iter().flat_map(|code| open_or_say(model, name, code)).collect()
}

/// Saves an opened order as a file.
fn save(model: &mut Model, at: usize, format: Format) -> Vec<Effect> {
    left(model, at);
    let Some(sent) = model.sent.get(at) else { return Vec::new() };
    let report = sent.report(&model.profile);
    let speaker = Speaker { unit: sent.order.survey.unit, ..model.speaker() };
    let order = (&sent.order, &report);
    let effect = file::download(format, &sent.name, order, &model.environment.base, speaker);
    vec![Effect::Page(effect)]
}

/// The order goes onto paper or into a file.
fn left(model: &mut Model, at: usize) {
    if let Some(sent) = model.sent.get(at).filter(|sent| sent.phoned) {
        model.saved = Some(sent.order.survey.clone());
    }
}

/// Makes an order of what was phoned in, to be kept, printed and sent like any other.
fn keep(model: &mut Model) -> Vec<Effect> {
    let disagrees = matches!(model.characters(), Ok(Outcome::Differs(_) | Outcome::Refused));
    // Once: who looked at it and presses again knows better.
    if disagrees && model.warned != model.heard {
        model.warned = model.heard.clone();
        return vec![Effect::focus("heard")];
    }
    let report = model.phone.report(&model.profile);
    let built = model.phone.survey.prepared;
    let note = if built { Desk::of(model.speaker().language).phone.built } else { "" };
    let order = Order {
        survey: model.phone.survey.clone(),
        claimed: report.verdict,
        language: model.speaker().language.key().to_owned(),
        date: model.environment.today,
        profile: model.profile.named(),
        // The frame is not built yet: an order has no other place that says so.
        note: note.to_owned(),
        ..Order::default()
    };
    opened(model, Sent::phoned(order))
}

/// Something was typed or pasted where orders are opened. What is an order beyond doubt
/// is opened at once; what is too long for one does not stay.
fn pasted(model: &mut Model, value: &str) -> Vec<Effect> {
    model.trouble = None;
    if let Ok(source) = Source::find("", value.to_owned()) {
        return many::begin(model, "", source);
    }
    if value.len() > sent::MOST {
        model.trouble = Some(Trouble::TooLong { most: sent::MOST });
        model.paste.clear();
        return Vec::new();
    }
    value.clone_into(&mut model.paste);
    // It is drawn first: a field with the focus is emptied only if the model has changed its mind
    // about it, which takes that it had once said what stands there.
    sent::open_at_once(value, &model.profile)
        .map_or_else(Vec::new, |_| vec![Effect::Press(Action::Open)])
}

/// An order was opened: beside the one that is open, or in the place of the later. One
/// that is open already, as when a mail holds its link twice, is only gone to. It is looked
/// at where one order is.
pub(super) fn opened(model: &mut Model, order: Sent) -> Vec<Effect> {
    model.screen = Screen::One;
    model.paste.clear();
    model.trouble = None;
    let at = model.sent.iter().position(|sent| sent.order == order.order).unwrap_or_else(|| {
        model.sent.truncate(MOST_SENT.saturating_sub(1));
        model.sent.push(order);
        model.sent.len().saturating_sub(1)
    });
    model.printed = at;
    vec![Effect::focus(["sent-", &at.to_string()].concat())]
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

/// Where a call begins.
fn first_field() -> Vec<Effect> {
    super::FIELDS.first().map_or_else(Vec::new, |field| vec![Effect::focus(field.name())])
}
