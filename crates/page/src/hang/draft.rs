//! The draft as text: the screen, the record as a link's payload, then the fields.

use super::effect::Effect;
use super::fields::Fields;
use super::model::Model;
use super::step::Step;
use hangtrue_core::hang::record::Record;
use hangtrue_link::record::{Opened, decode, encode};

/// Asks the browser to keep the draft. A text too long for a link leaves it as it was.
#[must_use]
pub(super) fn keep(model: &Model) -> Option<Effect> {
    text(model).map(Effect::Keep)
}

/// The draft; none of a text too long for a link.
fn text(model: &Model) -> Option<String> {
    let payload = encode(&model.record).ok()?;
    let head = ["/", model.step.slug(), " ", &payload, "\n"].concat();
    Some([&head, model.fields.text().as_str()].concat())
}

/// Puts a kept draft back. A text that is no draft changes nothing.
pub(super) fn restore(model: &mut Model, draft: &str) {
    let Some((step, record, fields)) = read(draft) else { return };
    model.step = step;
    model.record = record;
    model.fields = Fields::from_text(fields);
}

fn read(draft: &str) -> Option<(Step, Record, &str)> {
    let (head, fields) = draft.split_once('\n').unwrap_or((draft, ""));
    let (address, payload) = head.split_once(' ')?;
    match decode(payload) {
        Ok(Opened::Record(record)) => Some((Step::from_address(address)?, *record, fields)),
        _ => None,
    }
}

/// The door of a draft; none of a text that is no draft.
pub(super) fn door(draft: &str) -> Option<Record> {
    read(draft).map(|(_, record, _)| record)
}

/// Sets the door that is being hung aside, before another takes its place.
pub(super) fn set_aside(model: &mut Model) -> Option<Effect> {
    if !model.has_order() {
        return None;
    }
    let text = text(model)?;
    let taken = |number: &u32| model.aside.iter().any(|(known, _)| known == number);
    let number = (1..u32::MAX).find(|number| !taken(number))?;
    model.aside.push((number, text.clone()));
    Some(Effect::SetAside(number, text))
}
