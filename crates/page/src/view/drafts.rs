//! The drafts that this device keeps.

use super::{Scene, parts};
use crate::draft::Listed;
use crate::event::Action;
use crate::step::Step;
use hangtrue_core::say::Speaker;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.later().kept;
    html! {
        (parts::heading(text.heading))
        p.lede { (text.lede) }
        @if scene.model.drafts.is_empty() { p { (text.none) } }
        ul.drafts {
            @for draft in &scene.model.drafts {
                li data-key=(draft.id) {
                    (told(scene, draft))
                    @if scene.model.deleting == Some(draft.id) {
                        div.summary #delete tabindex="-1" {
                            p { (text.indeed) }
                            div.buttons {
                                (parts::button(&Action::DeleteIndeed, text.delete_indeed))
                                (parts::button(&Action::Spare, text.spare))
                            }
                        }
                    } @else {
                        (buttons(scene, draft))
                    }
                }
            }
        }
        (parts::button(&Action::Restart, text.another))
    }
}

/// The way to the list, for the first screen.
pub(crate) fn link(scene: Scene<'_>) -> Markup {
    let text = (scene.later().kept.list)(scene.model.drafts.len());
    html! { p { (parts::to(Step::Drafts, &text)) } }
}

fn name<'a>(scene: Scene<'a>, draft: &'a Listed) -> &'a str {
    match &draft.told {
        Ok(told) if !told.vehicle.trim().is_empty() => &told.vehicle,
        _ => scene.later().kept.nameless,
    }
}

fn told(scene: Scene<'_>, draft: &Listed) -> Markup {
    let text = &scene.later().kept;
    html! {
        h2 { (name(scene, draft)) }
        @match &draft.told {
            Ok(told) => {
                @let speaker = Speaker { unit: told.unit, ..scene.model.speaker() };
                p.order-numbers {
                    @for (name, number) in text.numbers.iter().zip(told.numbers) {
                        span {
                            span.hint { (name) } " "
                            @if let Some(number) = number { (speaker.length(number)) } @else { "–" }
                        } " "
                    }
                }
                @if let Some(day) = told.day { p.hint { (day.text()) } }
            }
            Err(why) => { p { ((text.unopened)(*why)) } }
        }
    }
}

fn buttons(scene: Scene<'_>, draft: &Listed) -> Markup {
    let text = &scene.later().kept;
    html! {
        div.buttons {
            @if draft.told.is_ok() {
                button type="button" data-act=(Action::OpenDraft(draft.id).code()) {
                    (text.open) span.visually-hidden { " " (name(scene, draft)) }
                }
            }
            (parts::quiet_about(&Action::Delete(draft.id), text.delete, name(scene, draft)))
        }
    }
}
