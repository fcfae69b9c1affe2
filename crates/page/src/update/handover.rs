//! The order out of the page, and an opened one into it.

use super::walk;
use crate::effect::Effect;
use crate::file::{self, Format};
use crate::message::Message;
use crate::model::Model;
use crate::step::Step;
use crate::text::Text;

/// Puts the order in one line and the link on the clipboard.
pub(super) fn copy(model: &Model) -> Vec<Effect> {
    message(model).map(|message| Effect::Copy(message.text())).into_iter().collect()
}

/// Puts the link alone on the clipboard.
pub(super) fn copy_link(model: &Model) -> Vec<Effect> {
    message(model).map(|message| Effect::Copy(message.link)).into_iter().collect()
}

/// Hands the order in one line and the link to the share sheet.
pub(super) fn share(model: &Model) -> Vec<Effect> {
    let Some(Message { line, link, .. }) = message(model) else { return Vec::new() };
    let title = Text::of(model.environment.language).order.to_owned();
    vec![Effect::Share { title, text: line, url: link }]
}

/// Saves the line and the link as a file. The link is the whole order: nothing more has to
/// be in it, and no other reader is needed here.
pub(super) fn save(model: &Model) -> Vec<Effect> {
    let Some(message) = message(model) else { return Vec::new() };
    let name = file::name(&model.order.vehicle, Format::Text);
    let text = [&message.line, "\r\n\r\n", &message.link, "\r\n"].concat();
    vec![Effect::Download { name, media: Format::Text.media(), text }]
}

/// What came of the copying; where it was not allowed, to the text to copy by hand.
pub(super) fn copied(model: &mut Model, worked: bool) -> Vec<Effect> {
    model.copied = Some(worked);
    if worked { Vec::new() } else { vec![Effect::Focus("by-hand".to_owned())] }
}

/// The message, if nothing stands against sending the order.
fn message(model: &Model) -> Option<Message> {
    let report = model.report();
    let ready = model.against(&report).is_empty();
    if ready { Message::of(model, &report).ok() } else { None }
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
