//! A reading's field, with its echo in both units, its keys and its tape.

use super::{Scene, parts, picture};
use crate::event::{Action, keys};
use crate::field::Field;
use crate::rest;
use hangtrue_core::say::Speaker;
use hangtrue_core::short::signed;
use hangtrue_core::{Length, Spot};
use maud::{Markup, html};

/// The field, whole. Keys and tape stand at the active one only.
pub(super) fn field(scene: Scene<'_>, field: Field, active: bool) -> Markup {
    let name = field.name();
    let speaker = scene.model.speaker();
    let place = scene.text().place;
    let unit = scene.model.order.survey.unit;
    let read = scene.model.read(field);
    // Halfway through a fraction the tape stays where it was.
    let held = scene.model.held.read.filter(|(of, _)| *of == field);
    let halfway = held.filter(|_| !scene.model.typed(field).trim().is_empty());
    let here: Vec<_> =
        scene.problems.iter().filter(|problem| problem.field == Some(field)).collect();
    let next = next_blank(scene, field.spot);
    let mut described = [&name, "-place ", &name, "-echo"].concat();
    if !here.is_empty() {
        described = [&parts::id_of_problems(&name), " ", &described].concat();
    }
    html! {
        div.reading.active[active].bad[!here.is_empty()] data-key=(name) {
            label for=(name) { (speaker.place(field.spot)) }
            p.place id={ (name) "-place" } { (place(field.spot)) }
            @if !here.is_empty() { (rest::at_field(scene, &name, &here)) }
            div.entry {
                input id=(name) name=(name) value=(scene.model.typed(field)) type="text"
                    inputmode=(if scene.model.letters { "text" } else { "decimal" })
                    spellcheck="false" autocomplete="off" autocapitalize="off"
                    autocorrect="off" maxlength="120" data-next=[next.as_deref()]
                    enterkeyhint=(if next.is_some() { "next" } else { "go" })
                    aria-describedby=(described)
                    aria-invalid=[(!here.is_empty()).then_some("true")];
                // Not beside another: `92 3/16 in` mm.
                @if !scene.model.typed(field).trim_end().ends_with(is_of_a_unit) {
                    span.unit aria-hidden="true" { (speaker.language.unit(unit)) }
                }
            }
            p.echo id={ (name) "-echo" } { (echo(scene, read)) }
            @if active { (aids(scene, field, read.or(halfway.map(|(_, read)| read)))) }
        }
    }
}

/// Whether a reading that ends so has brought its own unit.
const fn is_of_a_unit(last: char) -> bool {
    last.is_ascii_alphabetic() || matches!(last, '"' | '\'')
}

/// Where Enter leads from the field of `spot`: to the one behind it that nothing is typed in.
fn next_blank(scene: Scene<'_>, spot: Spot) -> Option<String> {
    let spots = scene.model.step.spots();
    let mut behind = false;
    for one in spots {
        if behind && scene.model.order.survey.entries(one).is_empty() {
            return Some(Field::first(one).name());
        }
        behind |= one == spot;
    }
    None
}

/// What stands behind a length: that it is so much in the other unit, or about so much.
pub(crate) fn in_the_other_unit(speaker: Speaker, length: Length) -> String {
    let other = speaker.length_in(length, speaker.unit.other());
    // An inexact value brings its own sign.
    [if other.starts_with('≈') { " " } else { " = " }, &other].concat()
}

/// The reading in both units, as it is understood.
fn echo(scene: Scene<'_>, read: Option<Length>) -> Markup {
    let speaker = scene.model.speaker();
    html! {
        @if let Some(length) = read {
            b { (speaker.length(length)) } (in_the_other_unit(speaker, length))
        }
    }
}

/// The tape as an input: dragged, or stepped by keys, from mark to mark.
fn slider(scene: Scene<'_>, field: Field, length: Length) -> Markup {
    let unit = scene.model.order.survey.unit;
    let speaker = scene.model.speaker();
    let step = unit.step();
    html! {
        div.slider role="slider" tabindex="0" data-tape=(field.name())
            data-across=(signed(hangtrue_draw::tape_across(unit).nm()))
            data-mark=(signed(step.nm()))
            aria-label={ (scene.text().field.tape) ", " (speaker.place(field.spot)) }
            aria-valuemin="0" aria-valuemax=(signed(LONGEST.nm().div_euclid(step.nm())))
            aria-valuenow=(signed(length.nm().div_euclid(step.nm())))
            aria-valuetext=(speaker.length(length)) {
            (picture::tape(scene, length))
        }
    }
}

/// The longest reading that the slider is said to reach: a long tape, 10 m.
const LONGEST: Length = Length::from_mm(10_000);

/// The keys and the tape picture.
fn aids(scene: Scene<'_>, field: Field, read: Option<Length>) -> Markup {
    let unit = scene.model.order.survey.unit;
    html! {
        div.keys role="group" aria-label=(scene.text().field.keys) {
            @for (label, key) in keys(unit) {
                button type="button" data-act=(Action::Key(key).code()) data-keep-focus { (label) }
            }
            button type="button" data-act=(Action::Letters.code()) {
                (if scene.model.letters { scene.text().button.numbers } else { scene.text().button.letters })
            }
        }
        @if let Some(length) = read {
            figure.tape {
                figcaption { (scene.text().field.tape) }
                (slider(scene, field, length))
            }
        }
    }
}
