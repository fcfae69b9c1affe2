//! What the caller reads aloud: the numbers digit by digit, then the check characters;
//! or the whole small order in thirty characters.

use super::{Scene, parts, send};
use hangtrue_link::code::{Said, script, small, spell};
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.later().handover.voice;
    html! {
        (parts::heading(text.heading))
        @if scene.model.against(scene.report).is_empty() {
            p.lede { (text.lede) }
            div.columns {
                div { (numbers(scene)) }
                (thirty(scene))
            }
        } @else {
            (send::not_yet(scene))
        }
    }
}

fn numbers(scene: Scene<'_>) -> Markup {
    let text = &scene.later().handover.voice;
    let said = Said::of(scene.report, scene.model.order.survey.unit);
    let Some(script) = script(&said, scene.model.speaker().language) else { return html! {} };
    html! {
        ol.script { @for line in &script.lines { li { (line) } } }
        section {
            h2 { (text.check) }
            p.characters { (script.characters) }
            p.hint { (text.check_hint) }
        }
    }
}

fn thirty(scene: Scene<'_>) -> Markup {
    let text = &scene.later().handover.voice;
    let letters = small(&scene.model.sent(scene.report.verdict));
    html! {
        section {
            h2 { (text.small) }
            @if let Some(letters) = letters {
                p.hint { (text.small_hint) }
                ol.script.groups {
                    @for group in groups(&letters) {
                        li {
                            b.characters { (group) }
                            " "
                            (spell(group, scene.model.speaker().language).join(", "))
                        }
                    }
                }
            } @else {
                p.hint { (text.no_small) }
            }
        }
    }
}

/// Five characters at a time: what a person keeps in mind while writing it down.
pub(super) fn groups(letters: &str) -> impl Iterator<Item = &str> {
    let mut rest = letters;
    std::iter::from_fn(move || {
        let (group, behind) = rest.split_at_checked(rest.len().min(5))?;
        rest = behind;
        (!group.is_empty()).then_some(group)
    })
}
