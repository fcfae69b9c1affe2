//! One more reading that checks the others.

use super::{Scene, dimension::capital, parts, picture, problems, reading};
use crate::event::Action;
use crate::text::TEXT;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let model = scene.model;
    let Some(field) = model.proof else { return html! {} };
    let repeat = field.index > 0;
    let text = &TEXT.proof;
    let blank = model.told && model.typed(field).trim().is_empty();
    html! {
        form.two data-act="next" {
            div.ask {
                p.kicker { (if repeat { text.again_heading } else { text.heading }) }
                (parts::heading(&capital(model.speaker().spot(field.spot))))
                p.lede { ((TEXT.place)(field.spot)) }
                @if repeat { p { (text.again) } p.hint { (text.hidden) } }
                (problems::summary(scene))
                @if blank {
                    section.summary #problems tabindex="-1" { p { (text.empty) } }
                }
            }
            (picture::spots(scene, &[field.spot]))
            div.readings { (reading::field(scene, field, true)) }
            (parts::submit(TEXT.button.next))
            (parts::button(&Action::Skip, TEXT.button.skip))
        }
    }
}
