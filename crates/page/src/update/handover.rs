//! The order out of the page, and an opened one into it.

use super::walk;
use crate::effect::Effect;
use crate::model::Model;
use crate::step::Step;
use crate::text::TEXT;

/// The link of the order, if nothing stands against sending it.
fn link(model: &Model) -> Option<String> {
    let report = model.report();
    let sent = model.against(&report).is_empty();
    let order = sent.then(|| model.sent(report.verdict))?;
    hangtrue_link::url(&model.environment.base, &order).ok()
}

/// Puts the link on the clipboard.
pub(super) fn copy(model: &Model) -> Vec<Effect> {
    link(model).map(Effect::Copy).into_iter().collect()
}

/// Hands the link to the share sheet.
pub(super) fn share(model: &Model) -> Vec<Effect> {
    let Some(url) = link(model) else { return Vec::new() };
    vec![Effect::Share { title: TEXT.order.to_owned(), text: TEXT.order.to_owned(), url }]
}

/// Makes the opened order the draft. Where that would lose what was typed here, the
/// question is put first, and only [`replace`] is the answer to it.
pub(super) fn adopt(model: &mut Model) -> Vec<Effect> {
    let Some(Ok(order)) = &model.opened else { return Vec::new() };
    if model.has_draft() && order.survey != model.order.survey {
        model.replacing = true;
        return vec![Effect::Focus("replace".to_owned())];
    }
    take_over(model)
}

/// The answer: the opened order takes the draft's place.
pub(super) fn replace(model: &mut Model) -> Vec<Effect> {
    if model.replacing { take_over(model) } else { Vec::new() }
}

/// The answer: the draft stays.
pub(super) fn keep(model: &mut Model) -> Vec<Effect> {
    model.replacing = false;
    vec![Effect::Focus("heading".to_owned())]
}

fn take_over(model: &mut Model) -> Vec<Effect> {
    let Some(Ok(order)) = model.opened.take() else { return Vec::new() };
    model.order = order;
    // What the writer confirmed, nobody here has looked at.
    model.order.confirmed.clear();
    model.skipped.clear();
    model.proof = None;
    walk::go(model, Step::Check)
}
