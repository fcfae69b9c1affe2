//! `update`: what an event makes of the model, and what it asks of the browser.

mod dealer;
mod drafts;
mod handover;
mod typing;
mod walk;

pub(crate) use dealer::{ANSWER, after_the_readings, keep_answers};
pub(crate) use typing::{note_confirmed, unconfirm};

use crate::address::Address;
use crate::draft::keep;
use crate::effect::Effect;
use crate::event::{Action, Event, Key};
use crate::field::Field;
use crate::language::title;
use crate::model::{Model, confirm_key, confirmation, seen};
use crate::rest;
use crate::step::Step;
use hangtrue_core::length::is_plain;
use hangtrue_core::say::Language;
use hangtrue_core::{Entry, Finding, Unit, keypad};

/// Takes `event` into `model`; the effects are to be carried out after drawing.
pub fn update(model: &mut Model, event: Event) -> Vec<Effect> {
    if model.environment.partial && (asks(&event) || typing::types(&event)) {
        // Of what a person asks for, the last holds; and none of it once something else is typed.
        model.waiting.retain(|waiting| !asks(waiting));
    }
    if typing::types(&event) {
        return take_in(model, event);
    }
    let mut effects: Vec<Effect> = typing::end(model).into_iter().collect();
    effects.append(&mut take_in(model, event));
    typing::begin(model);
    effects
}

fn take_in(model: &mut Model, event: Event) -> Vec<Effect> {
    if model.environment.partial && reads_words(model, &event) {
        model.waiting.push(event);
        return Vec::new();
    }
    match first(model, event) {
        Ok(effects) => effects,
        Err(event) if model.environment.partial => {
            model.waiting.push(event);
            Vec::new()
        }
        Err(event) => rest::update(model, event),
    }
}

/// Whether `event` would have words read, which only the second module can.
fn reads_words(model: &Model, event: &Event) -> bool {
    let reads = match event {
        Event::Input { name, .. } => name == "unit",
        Event::Press(code) => Action::is_key(code),
        Event::Slide { .. } => true,
        _ => false,
    };
    reads && model.order.survey.has_words()
}

/// Whether a person asks for something. A key of a field is a reading that is typed.
pub(crate) fn asks(event: &Event) -> bool {
    match event {
        Event::Press(code) => !Action::is_key(code),
        Event::Navigate(_) | Event::Open(_) | Event::File { .. } => true,
        _ => false,
    }
}

/// What the first screens know; else the event comes back, and nothing has changed.
fn first(model: &mut Model, event: Event) -> Result<Vec<Effect>, Event> {
    Ok(match event {
        Event::Input { name, value } => input(model, &name, &value),
        Event::Focus(name) => {
            if let Some(field) = Field::from_name(&name) {
                model.active = Some(field);
            }
            Vec::new()
        }
        Event::Press(code) => {
            let action = Action::of_first_screens(&code);
            match action.and_then(|action| act_first(model, action)) {
                Some(effects) => effects,
                None => return Err(Event::Press(code)),
            }
        }
        Event::Navigate(fragment) => match Address::from_text(&fragment) {
            Some(Address { step, .. }) if step.is_first() => walk::come_to(model, step),
            _ => return Err(Event::Navigate(fragment)),
        },
        Event::Settled => {
            model.spoken = walk::spoken(model);
            Vec::new()
        }
        Event::Slide { name, marks } => slide(model, &name, marks),
        Event::Newer => {
            model.newer = true;
            Vec::new()
        }
        Event::Trouble(trouble) => {
            model.trouble = Some(trouble);
            Vec::new()
        }
        Event::Whole => {
            model.environment.partial = false;
            model.missing = false;
            model.order.survey.read_again();
            let waiting = core::mem::take(&mut model.waiting);
            waiting.into_iter().flat_map(|event| update(model, event)).collect()
        }
        Event::Missing => {
            model.missing = true;
            Vec::new()
        }
        other => return Err(other),
    })
}

/// What the second module takes in; see [`crate::rest`].
pub(crate) fn later(model: &mut Model, event: Event) -> Vec<Effect> {
    match event {
        Event::Press(code) => Action::from_code(&code).map_or_else(Vec::new, |a| act(model, a)),
        Event::Navigate(fragment) => walk::navigate(model, &fragment),
        Event::Open(text) => walk::open(model, &text),
        Event::File { name, text } => walk::file(model, &name, text.as_deref()),
        Event::Copied(worked) => handover::copied(model, worked),
        Event::Loaded(text) => drafts::loaded(model, &text),
        Event::Drafts(kept) => drafts::listed(model, &kept),
        _ => Vec::new(),
    }
}

fn input(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    if let Some(field) = Field::from_name(name) {
        return type_in(model, field, value);
    }
    if let Some(key) = name.strip_prefix(ANSWER) {
        dealer::answer(model, key, value);
        model.unsettled = true;
        return keep(model).into_iter().collect();
    }
    let order = &mut model.order;
    match (name, value) {
        ("unit", key) => {
            if let Some(unit) = Unit::from_key(key) {
                let was = order.survey.unit;
                order.survey.set_unit(unit);
                // The first screens have no question that a length would answer.
                if !(order.answers.is_empty() || model.environment.partial) {
                    rest::keep_answers(model, was);
                }
            }
        }
        ("prepared", answer) => {
            order.survey.prepared = answer == "yes";
            model.unsettled = true;
        }
        ("old-door", answer) => order.old_door_in = Some(answer == "yes"),
        ("vehicle", text) => text.clone_into(&mut order.vehicle),
        ("note", text) => text.clone_into(&mut order.note),
        ("contact", text) => text.clone_into(&mut order.contact),
        _ => return Vec::new(),
    }
    model.copied = None;
    keep(model).into_iter().collect()
}

/// A reading's field now holds `text`. What had been confirmed of it no longer is.
fn type_in(model: &mut Model, field: Field, text: &str) -> Vec<Effect> {
    if model.typed(field) == text {
        return Vec::new();
    }
    typing::key(model, field);
    let entry = if model.environment.partial && !is_plain(text) {
        Entry::unread(text)
    } else {
        Entry::new(text, model.order.survey.unit)
    };
    model.order.survey.put(field.spot, field.index, entry);
    strike_replaced(model, field);
    model.active = Some(field);
    model.copied = None;
    model.order.confirmed.retain(|confirmed| confirmed.spot != Some(field.spot));
    keep(model).into_iter().chain([Effect::Settle]).collect()
}

/// The reading that `field` is to replace is struck as long as there is a reading in `field`.
fn strike_replaced(model: &mut Model, field: Field) {
    let Some(old) = model.replaces.filter(|old| old.spot == field.spot) else { return };
    let entries = model.order.survey.entries_mut(field.spot);
    let replaced = entries.get(field.index).is_some_and(|entry| entry.read.is_ok());
    if let Some(entry) = entries.get_mut(old.index) {
        entry.struck = replaced;
    }
}

/// The actions that the first screens know; none of another.
fn act_first(model: &mut Model, action: Action) -> Option<Vec<Effect>> {
    Some(match action {
        Action::Next if model.environment.partial => return walk::on(model),
        Action::Back => walk::back(model),
        Action::Go(step) if step.is_first() => walk::go(model, step),
        Action::Key(key) => press(model, key),
        Action::Letters => {
            model.letters = !model.letters;
            model.active.map_or_else(Vec::new, |field| vec![Effect::Focus(field.name())])
        }
        Action::Speak(Language::English) => speak(model, Language::English),
        _ => return None,
    })
}

fn act(model: &mut Model, action: Action) -> Vec<Effect> {
    match action {
        Action::Next => walk::next(model),
        Action::Use(field, text) => {
            let mut effects = type_in(model, field, &text);
            effects.push(Effect::Focus(field.name()));
            effects
        }
        Action::Confirm(key) => confirm(model, &key),
        Action::TakeOver => keep(model).into_iter().chain([Effect::TakeOver]).collect(),
        Action::Noted => drafts::noted(model),
        Action::Go(step) => walk::go(model, step),
        Action::Change(field) => walk::change(model, field),
        Action::Answer(key) => dealer::change(model, &key),
        Action::Reread(field) => walk::reread(model, field),
        Action::Take(spot) => walk::take(model, spot),
        Action::Skip => walk::skip(model),
        Action::Copy => handover::copy(model),
        Action::CopyLink => handover::copy_link(model),
        Action::Share => handover::share(model),
        Action::Print => vec![Effect::Print],
        Action::Adopt => handover::adopt(model),
        Action::SaveFile => handover::save(model),
        Action::Replace => handover::replace(model),
        Action::Keep => handover::keep(model),
        Action::Speak(language) => speak(model, language),
        Action::TakeTheirs => vec![Effect::Load(None)],
        Action::OpenDraft(id) => vec![Effect::Load(Some(id))],
        Action::Delete(id) => drafts::delete(model, id),
        Action::DeleteIndeed => drafts::delete_indeed(model),
        Action::Spare => drafts::spare(model),
        Action::Restart => walk::restart(model),
        _ => Vec::new(),
    }
}

/// From now on the page speaks `language`. What was typed stays as it was typed.
fn speak(model: &mut Model, language: Language) -> Vec<Effect> {
    model.environment.language = language;
    vec![Effect::Speak(language, title(language, "")), Effect::Remember(language)]
}

/// The tape at a field was moved: the field follows.
fn slide(model: &mut Model, name: &str, marks: i64) -> Vec<Effect> {
    let Some(field) = Field::from_name(name) else { return Vec::new() };
    let moved = keypad::slide(model.typed(field), model.order.survey.unit, marks);
    moved.map_or_else(Vec::new, |text| type_in(model, field, &text))
}

/// A key beside the field that has the focus.
fn press(model: &mut Model, key: Key) -> Vec<Effect> {
    let spots = model.step.spots();
    let Some(field) = model.active.or_else(|| spots.first().copied().map(Field::first)) else {
        return Vec::new();
    };
    let unit = model.order.survey.unit;
    let text = model.typed(field);
    let changed = match key {
        Key::Eighths(n) => keypad::set_eighths(text, unit, n),
        Key::Nudge(by) => keypad::nudge(text, unit, by),
    };
    let language = model.environment.language;
    changed.map_or_else(Vec::new, |text| type_in(model, field, &language.typed(&text)))
}

/// Confirms the finding of `key`, or takes that back. Only what was found can be confirmed.
fn confirm(model: &mut Model, key: &str) -> Vec<Effect> {
    let report = model.report();
    let of = |finding: &&Finding| confirm_key(&confirmation(finding)) == key;
    let Some(finding) = report.findings.iter().find(of) else { return Vec::new() };
    let found = confirmation(finding);
    let confirmed = &mut model.order.confirmed;
    if confirmed.contains(&found) {
        confirmed.retain(|c| *c != found);
    } else {
        model.seen.push(seen(finding));
        confirmed.push(found);
    }
    if model.step != Step::Check {
        model.told = false;
    }
    keep(model).into_iter().collect()
}
