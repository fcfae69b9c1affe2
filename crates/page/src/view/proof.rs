//! One more reading that checks the others.

use super::{Scene, parts, picture, reading};
use crate::event::Action;
use crate::field::Field;
use crate::model::{Held, Model};
use crate::update::after_the_readings;
use hangtrue_core::say::{JudgeSays, capital};
use hangtrue_core::{Dimension, Group, Spot};
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let model = scene.model;
    let Some(field) = model.proof else { return html! {} };
    let entries = model.order.survey.entries(field.spot);
    let repeat = entries.iter().take(field.index).any(|entry| !entry.is_blank());
    let text = &scene.later().proof;
    let blank = model.told && model.typed(field).trim().is_empty();
    html! {
        form.two data-act="next" {
            div.ask {
                p.kicker { (if repeat { text.again_heading } else { text.heading }) }
                (parts::heading(&capital(model.speaker().spot(field.spot))))
                @if let Some(why) = why(scene) { p.lede { (why) } }
                @if let Some(caution) = caution(scene, field.spot) { (parts::caution(caution)) }
                @if repeat {
                    p { (text.again) }
                    p.hint { (text.hidden) }
                }
                @if blank {
                    section.summary #problems tabindex="-1" { p { (text.empty) } }
                } @else {
                    (parts::problems(scene))
                }
            }
            (picture(scene))
            div.readings { (reading::field(scene, field, true)) }
            div.actions {
                (parts::submit(scene.text().button.next))
                (parts::button(&Action::Skip, scene.text().button.skip))
            }
            // Nobody has to turn down every one of them.
            @if model.back_to.is_none() {
                (parts::to(after_the_readings(model), scene.later().check.heading))
            }
        }
    }
}

/// The caution of the dimension that is read there, or on a like way up.
fn caution(scene: Scene<'_>, spot: Spot) -> Option<&'static str> {
    let dimension = match spot.group() {
        Group::Width => Dimension::Width,
        Group::Height | Group::Diagonal => Dimension::Height,
        Group::Header => Dimension::Header,
        Group::Bow | Group::Loop => Dimension::Bow,
        Group::Post => return None,
    };
    (scene.text().dimension)(dimension).caution
}

/// What the reading is worth, in plain words, as it was when it was offered: without
/// the text that is being typed. Nothing where nobody offered it.
fn why(scene: Scene<'_>) -> Option<String> {
    let field = scene.model.proof?;
    let asked;
    let judgement = match &scene.model.held.before {
        Some(judgement) => judgement,
        None => {
            asked = before(scene.model, field).report().judgement;
            &asked
        }
    };
    let next = judgement.next.iter().find(|next| next.spot == field.spot)?;
    let says = JudgeSays::Next { spot: next.spot, why: next.why, checks: next.checks.clone() };
    Some(scene.model.speaker().say(&says.into()))
}

/// The model as it was before `field` was typed in.
pub(crate) fn before(model: &Model, field: Field) -> Model {
    without(model, field.index)
}

/// The drawing, which must not show the number that is to be read again.
fn picture(scene: Scene<'_>) -> Markup {
    let Some(field) = scene.model.proof else { return html! {} };
    let hidden = without(scene.model, 0);
    picture::spots(Scene { model: &hidden, ..scene }, &[field.spot])
}

/// The model without the readings at the offered spot from `index` on.
fn without(model: &Model, index: usize) -> Model {
    let mut model = Model { held: Held::default(), ..model.clone() };
    if let Some(field) = model.proof {
        model.order.survey.entries_mut(field.spot).truncate(index);
    }
    model
}
