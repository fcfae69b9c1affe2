//! The draft as text: the screen, the record as a link's payload, then the fields.

use super::effect::Effect;
use super::fields::Fields;
use super::model::Model;
use super::step::Step;
use hangtrue_link::record::{Opened, decode, encode};

/// Asks the browser to keep the draft. A text too long for a link leaves it as it was.
#[must_use]
pub(super) fn keep(model: &Model) -> Option<Effect> {
    let payload = encode(&model.record).ok()?;
    let head = ["/", model.step.slug(), " ", &payload, "\n"].concat();
    Some(Effect::Keep([&head, model.fields.text().as_str()].concat()))
}

/// Puts a kept draft back. A text that is no draft changes nothing.
pub(super) fn restore(model: &mut Model, draft: &str) {
    let (head, fields) = draft.split_once('\n').unwrap_or((draft, ""));
    let Some((address, payload)) = head.split_once(' ') else { return };
    let (Some(step), Ok(Opened::Record(record))) = (Step::from_address(address), decode(payload))
    else {
        return;
    };
    model.step = step;
    model.record = *record;
    model.fields = Fields::from_text(fields);
}
