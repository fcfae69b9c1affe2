//! The draft as text: the screen it was left at, and the order as a link's payload.
//!
//! The payload is the one released format there is, so a draft of an older build
//! opens in a newer one.

use crate::address::Address;
use crate::effect::Effect;
use crate::model::Model;

/// Asks the browser to keep the draft of `model`. A text too long for a link leaves
/// the draft as it was.
#[must_use]
pub fn keep(model: &Model) -> Option<Effect> {
    let payload = hangtrue_link::encode(&model.order).ok()?;
    Some(Effect::Save([&model.address().text(), " ", &payload].concat()))
}

/// Puts a kept draft back into `model`. A text that is no draft changes nothing.
pub fn restore(model: &mut Model, draft: &str) {
    let Some((address, payload)) = draft.split_once(' ') else { return };
    let (Some(address), Ok(order)) = (Address::from_text(address), hangtrue_link::decode(payload))
    else {
        return;
    };
    model.order = order;
    model.step = address.step;
    model.proof = address.proof;
}
