//! What the page looks like, as markup.

mod care;
mod delivery;
mod fit;
mod inspection;
mod order;
mod overhead;
mod paper;
mod parts;
mod record;
mod spring;
mod tracks;

pub(super) use parts::{Measures, heard, measures};

use super::event::Action;
use super::model::Model;
use super::step::Step;
use crate::text::{Later, Text};
use crate::view::{dealer, languages, newer};
use maud::{Markup, html};

/// The whole screen as markup. The same model gives the same markup.
#[must_use]
pub fn view(model: &Model) -> String {
    let body = match model.step {
        Step::Order => order::view(model),
        _ if !model.has_order() => order::missing(model),
        Step::Delivery => delivery::view(model),
        Step::Tracks => tracks::view(model),
        Step::Overhead => overhead::view(model),
        Step::Spring => spring::view(model),
        Step::Fit => fit::view(model),
        Step::Inspection => inspection::view(model),
        Step::Care => care::view(model),
        Step::Record => record::view(model),
    };
    page(model, &body).into_string()
}

fn page(model: &Model, body: &Markup) -> Markup {
    let step = model.step;
    html! {
        header.top {
            @if step.back().is_some() {
                (parts::quiet(&Action::Back, model.words().back))
            } @else {
                span.name { "Hangtrue" }
            }
            @let (at, of) = (step.index().saturating_add(1), Step::ALL.len());
            div.progress {
                span { ((Text::of(model.language()).progress)(at, of)) }
                progress value=(at) max=(of) aria-hidden="true" {}
            }
        }
        main #main class={ "hang hang-" (step.slug()) } {
            @if model.newer { (newer(model.language(), Later::of(model.language()).kept.newer)) }
            (dealer::rules(model.language(), &model.profile, model.profile_fault.as_deref()))
            (body)
        }
        @if model.has_order() { (steps(model)) }
        footer.foot { (languages(model.language())) }
        p.visually-hidden #spoken role="status" aria-live="polite" { (model.spoken) }
    }
}

/// Every screen by name: who services a door goes straight to what is needed.
fn steps(model: &Model) -> Markup {
    let here = model.step;
    html! {
        nav.steps aria-label=(model.words().list) {
            @for (step, name) in Step::ALL.into_iter().zip(model.words().steps) {
                a href={ "#/" (step.slug()) } aria-current=[(step == here).then_some("step")] {
                    (name)
                }
            }
        }
    }
}
