//! What to read back to the caller, and what the check characters say of what was heard.

use super::Scene;
use crate::desk::event::Action;
use crate::field::Field;
use hangtrue_core::say::capital;
use hangtrue_link::code::{Misheard, Outcome, script};
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.desk().voice;
    let said = scene.model.phone.said();
    html! {
        section.voice aria-labelledby="voice-heading" {
            h2 #voice-heading { (text.heading) }
            @match script(&said, scene.model.speaker().language) {
                Some(script) => { ol.say { @for line in lines(&script.lines) { li { (line) } } } }
                None => { p.hint { (text.not_yet) } }
            }
            div.line {
                label for="heard" { (text.heard) " " span.hint { (text.heard_hint) } }
                input #heard name="heard" type="text" value=(scene.model.heard) maxlength="120"
                    spellcheck="false" autocomplete="off" autocapitalize="characters"
                    autocorrect="off" aria-describedby="heard-says";
            }
            div #heard-says role="status" { (outcome(scene)) }
        }
    }
}

/// The clerk says the numbers only: the unit stands before them, the characters are the
/// caller's to say.
fn lines(lines: &[String]) -> &[String] {
    lines.split_last().map_or(&[], |(_, rest)| rest.get(1..).unwrap_or_default())
}

fn outcome(scene: Scene<'_>) -> Markup {
    let text = &scene.desk().voice;
    html! {
        @if !scene.model.heard.trim().is_empty() {
            @match scene.model.characters() {
                Ok(Outcome::Agrees) => { p.agrees { (text.agrees) } }
                Ok(Outcome::Refused) => { p.differs { (text.refused) } }
                Ok(Outcome::Differs(misheard)) => {
                    ul.misheard { @for one in &misheard { li { (told(scene, one)) } } }
                }
                Err(error) => {
                    p.hint { (hangtrue_link::say::heard(scene.model.speaker().language, &error)) }
                }
            }
        }
    }
}

/// One thing that was misheard, and the way to take it over once the caller has said so.
fn told(scene: Scene<'_>, misheard: &Misheard) -> Markup {
    let text = &scene.desk().voice;
    let speaker = scene.model.speaker();
    match misheard {
        Misheard::Number { dimension, typed, likely } => {
            let values: Vec<String> = likely.iter().map(|value| speaker.length(*value)).collect();
            let typed = typed.map(|typed| speaker.length(typed));
            let name = capital(speaker.dimension(*dimension));
            let field = Field::first(dimension.main_spot());
            html! {
                p.differs { ((text.number)(&name, typed.as_deref(), &values)) }
                div.row {
                    @for (value, length) in values.iter().zip(likely) {
                        @let typed = speaker.language.typed(&length.text(speaker.unit));
                        button type="button" data-act=(Action::Use(field, typed).code()) {
                            ((scene.desk().phone.it_is)(value))
                        }
                    }
                }
            }
        }
        Misheard::Frame { unit, build } => {
            html! { p.differs { ((text.frame)(*unit, *build)) } }
        }
        Misheard::Character { at, likely } => {
            html! { p.differs { ((text.character)(*at, *likely)) } }
        }
    }
}
