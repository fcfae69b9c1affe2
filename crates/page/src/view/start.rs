//! What to bring, the unit, the cautions.

use super::{Scene, parts};
use crate::address::DESK_PAGE;
use crate::rest;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.text().start;
    let units = [("in", text.inches), ("mm", text.millimetres)];
    let [rules, says] =
        if scene.ruled() { rest::dealer_at_start(scene) } else { [html! {}, html! {}] };
    let chosen = scene.model.order.survey.unit.key();
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            (rules)
            p.lede { (text.lede) }
            (says)
            // Before the button, on a phone too: nobody begins who has not come by it.
            div.columns {
                section.caution {
                    h2 { (text.caution_heading) }
                    ul { @for item in text.cautions { li { (item) } } }
                }
                section {
                    h2 { (text.bring_heading) }
                    ul { @for item in text.bring { li { (item) } } }
                }
            }
            (parts::choice("unit", text.unit, &units, Some(chosen)))
            (parts::submit(if scene.model.has_draft() { text.go_on } else { text.begin }))
            @if !scene.model.drafts.is_empty() { (rest::drafts(scene)) }
            section {
                h2 { (text.open_heading) }
                p.hint { (text.open_hint) }
                (parts::choose_file(text.choose_file, false))
            }
            p.hint { (text.privacy) }
            p { a.alone href=(DESK_PAGE) { (text.desk) } }
        }
    }
}
