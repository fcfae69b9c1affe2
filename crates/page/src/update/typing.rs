//! While a reading is typed: what follows each key, and what stands until the typing rests.
//!
//! The rules, the echo and the tape follow. The judge is not asked, which costs more than all the
//! rest of a key, and the frame is not drawn anew: halfway to 92 stands a 9. Both are once the typing
//! rests, or before anything else is taken in.

use crate::draft::keep;
use crate::effect::Effect;
use crate::event::{Action, Event};
use crate::field::Field;
use crate::model::{Held, Model, confirm_key, confirmation, seen};
use crate::rest;
use hangtrue_core::Finding;
use hangtrue_core::order::Confirmed;

/// Whether `event` is one of many by which a reading is typed.
pub(super) fn types(event: &Event) -> bool {
    match event {
        Event::Input { name, .. } => Field::from_name(name).is_some(),
        Event::Slide { .. } => true,
        Event::Press(code) => Action::is_key(code),
        _ => false,
    }
}

/// The typing is over.
pub(super) fn end(model: &mut Model) -> Option<Effect> {
    model.held = Held::default();
    let typed = core::mem::take(&mut model.unsettled);
    if !typed || model.order.confirmed.is_empty() {
        return None;
    }
    rest::unconfirm(model)
}

/// What is not found any more is not confirmed either, nor is what is found of other numbers than
/// those that were looked at; see [`rest::unconfirm`].
pub(crate) fn unconfirm(model: &mut Model) -> Option<Effect> {
    let found = model.report().findings;
    let before = model.order.confirmed.len();
    let known = &model.seen;
    model.order.confirmed.retain(|confirmed| {
        let stands = |finding: &Finding| known.contains(&seen(finding));
        found.iter().any(|finding| confirmation(finding) == *confirmed && stands(finding))
    });
    if model.order.confirmed.len() == before { None } else { keep(model) }
}

/// What a draft that was opened again has as confirmed was confirmed of the numbers in it: they are
/// noted while they are as they were.
pub(crate) fn note_confirmed(model: &mut Model) {
    let unnoted = |confirmed: &Confirmed| {
        let key = [&confirm_key(confirmed), "\n"].concat();
        !model.seen.iter().any(|seen| seen.starts_with(&key))
    };
    if model.unsettled || !model.order.confirmed.iter().any(unnoted) {
        return;
    }
    let found = model.report().findings;
    let confirmed = |finding: &&Finding| model.order.confirmed.contains(&confirmation(finding));
    let noted: Vec<_> = found.iter().filter(confirmed).map(seen).collect();
    model.seen.extend(noted);
}

/// A key is about to change `field`: what was there is held.
pub(super) fn key(model: &mut Model, field: Field) {
    model.unsettled = true;
    if model.held.survey.is_none() {
        model.held.survey = Some(model.order.survey.clone());
    }
    let before = model.held.read.filter(|(of, _)| *of == field);
    model.held.read = model.read(field).map(|read| (field, read)).or(before);
}

/// A reading may be typed next: what is shown meanwhile of what the judge says is kept.
pub(super) fn begin(model: &mut Model) {
    if !model.environment.partial {
        rest::hold(model);
    }
}
