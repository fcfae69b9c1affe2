//! The small parts that every screen is made of.

use crate::hang::event::Action;
use crate::hang::fields::{BUILT, PASTE, PASTE_MOST};
use crate::hang::model::{Model, read_day};
use crate::hang::work;
use crate::view::in_the_other_unit;
use hangtrue_core::Length;
use hangtrue_core::hang::inspection::{Check, Found, Measure};
use hangtrue_core::hang::record::{Place, QuarterTurns};
use hangtrue_core::hang::spring::{DRUMS, PRELOADS};
use hangtrue_core::length::{ReadError, read};
use hangtrue_core::order::Date;
use hangtrue_core::say::{Language, Speaker};
use maud::{Markup, html};
use std::num::IntErrorKind;
use std::ops::RangeInclusive;

/// The screen's heading, which takes the focus when the screen changes.
pub(super) fn heading(text: &str) -> Markup {
    html! { h1 #heading tabindex="-1" { (text) } }
}

/// What to mind, where it may hurt, before what it is about.
pub(super) fn caution(text: &str) -> Markup {
    html! { p.caution { (text) } }
}

/// On to the next screen.
pub(super) fn go_on(model: &Model) -> Markup {
    html! { button.primary type="submit" { (model.words().next) } }
}

/// A button of its own.
pub(super) fn button(action: &Action, text: &str) -> Markup {
    html! { button type="button" data-act=(action.code()) { (text) } }
}

/// A button that looks like a link.
pub(super) fn quiet(action: &Action, text: &str) -> Markup {
    html! { button.quiet type="button" data-act=(action.code()) { (text) } }
}

/// Falls of the upper track that are reckoned with, in degrees, as in a profile.
const SLOPES: RangeInclusive<f64> = 0.0..=30.0;

/// What a field takes.
#[derive(Clone, Debug, PartialEq)]
enum Takes {
    /// A length; in place of one, what is assumed.
    Length,
    /// A length that somebody has found at the door.
    Found,
    /// A weight.
    Weight,
    /// A length out of some.
    LengthOf(RangeInclusive<Length>),
    /// A plain number.
    Number,
    /// A plain number, or turns, out of some.
    NumberOf(RangeInclusive<f64>),
    /// A whole number up to some.
    Count(u32),
    /// A day.
    Day,
    /// Anything.
    Text,
}

impl Takes {
    /// What the field of `name` takes.
    fn of(name: &str) -> Self {
        match name {
            "weight" => Self::Weight,
            "drum" => Self::LengthOf(DRUMS),
            "preload" => Self::NumberOf(PRELOADS),
            "turns" => Self::NumberOf(QuarterTurns::REACH),
            "slope" => Self::NumberOf(SLOPES),
            "coils" => Self::Number,
            "per-day" => Self::Count(u16::MAX as u32),
            "stripes" => Self::Count(u32::MAX),
            "hung" | "service.date" => Self::Day,
            // `open` is the slider, which the browser itself tells of.
            PASTE | "serial" | "service.note" | "open" => Self::Text,
            _ if name.starts_with("pull.") => Self::Weight,
            _ => {
                let point = name.strip_prefix("check.");
                match Check::ALL.into_iter().find(|check| point == Some(check.key())) {
                    Some(check) => match check.measure() {
                        Measure::Length => Self::Found,
                        Measure::Weight => Self::Weight,
                        Measure::Count => Self::Count(u32::MAX),
                        Measure::Eye => Self::Text,
                    },
                    None => Self::Length,
                }
            }
        }
    }
}

/// What changes its meaning with the unit of bare numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::hang) enum Measures {
    /// A length.
    Length,
    /// A weight.
    Weight,
}

/// What the field of `name` measures in that unit, if it does.
pub(in crate::hang) fn measures(name: &str) -> Option<Measures> {
    match Takes::of(name) {
        Takes::Length | Takes::Found | Takes::LengthOf(_) => Some(Measures::Length),
        Takes::Weight => Some(Measures::Weight),
        Takes::Number | Takes::NumberOf(_) | Takes::Count(_) | Takes::Day | Takes::Text => None,
    }
}

/// A field of `name`, with how it is understood under it.
pub(super) fn field(model: &Model, name: &str, label: &str, hint: &str) -> Markup {
    line(model, name, label, hint, model.fields.get(name))
}

/// The field of a reading that the record keeps.
pub(super) fn place(model: &Model, place: Place) -> Markup {
    let name = [BUILT, place.key()].concat();
    let label = (model.words().tracks.place)(place);
    line(model, &name, label, "", model.record.built.text(place))
}

/// How the field of `name` is understood, as it stands under it.
pub(in crate::hang) fn heard(model: &Model, name: &str) -> String {
    let place = name.strip_prefix(BUILT).and_then(Place::from_key);
    let value =
        place.map_or_else(|| model.fields.get(name), |place| model.record.built.text(place));
    understood(model, &Takes::of(name), value).unwrap_or_else(|wrong| wrong)
}

/// What is amiss with what is typed in the field of `name`, if anything is.
pub(super) fn amiss(model: &Model, name: &str) -> Option<String> {
    understood(model, &Takes::of(name), model.fields.get(name)).err()
}

fn line(model: &Model, name: &str, label: &str, hint: &str, value: &str) -> Markup {
    let takes = Takes::of(name);
    let understood = understood(model, &takes, value);
    let bad = understood.is_err();
    let unit = match takes {
        Takes::Length | Takes::LengthOf(_) | Takes::Found => model.language().unit(model.unit()),
        Takes::Weight => model.scale().key(),
        Takes::Number | Takes::NumberOf(_) | Takes::Count(_) | Takes::Day | Takes::Text => "",
    };
    let most = if name == PASTE { PASTE_MOST } else { 120 };
    let mode = if matches!(takes, Takes::Count(_)) { "numeric" } else { "text" };
    html! {
        div.field.bad[bad] data-key=(name) {
            label for=(name) { (label) @if !hint.is_empty() { " " span.hint { (hint) } } }
            div.entry {
                input id=(name) name=(name) value=(value) type="text" inputmode=(mode)
                    spellcheck="false" autocomplete="off" autocapitalize="off" autocorrect="off"
                    enterkeyhint="next" maxlength=(most) aria-describedby={ (name) "-echo" }
                    aria-invalid=[bad.then_some("true")];
                @if !unit.is_empty() { span.unit aria-hidden="true" { (unit) } }
            }
            p.echo id={ (name) "-echo" } {
                @match understood { Ok(text) | Err(text) => (text) }
            }
        }
    }
}

/// How a text is understood; or, as an error, that it is not.
fn understood(model: &Model, takes: &Takes, text: &str) -> Result<String, String> {
    let [length, weight, number, day] = model.words().unread.map(str::to_owned);
    if text.trim().is_empty() {
        return Ok(String::new());
    }
    match takes {
        Takes::Length | Takes::LengthOf(_) | Takes::Found => match read(text, model.unit()) {
            Ok(found) if *takes == Takes::Found && !Found::Length(found).is_possible() => {
                Err(length)
            }
            Ok(found) => match takes {
                Takes::LengthOf(some) if !some.contains(&found) => {
                    let [least, most] = [some.start(), some.end()].map(|end| model.told(*end));
                    Err((model.words().beyond)(&least, &most))
                }
                _ => Ok(both(found, model.speaker())),
            },
            Err(error) => Err(why(&error, model.speaker().language, length)),
        },
        Takes::Weight => {
            let read = hangtrue_core::hang::Weight::read(text, model.scale());
            read.map(|weight| model.told_weight(weight)).map_err(|_| weight)
        }
        Takes::Number => match work::number(text) {
            Some(_) => Ok(String::new()),
            None => Err(number),
        },
        Takes::NumberOf(some) => match work::number(text) {
            Some(found) if some.contains(&found) => Ok(String::new()),
            Some(_) => {
                let [least, most] = [some.start(), some.end()].map(f64::to_string);
                Err((model.words().beyond)(&least, &most))
            }
            None => Err(number),
        },
        Takes::Count(most) => match text.trim().parse::<u32>() {
            Ok(count) if count <= *most => Ok(String::new()),
            // More digits than are counted are a number all the same.
            Ok(_) => Err((model.words().beyond)("0", &most.to_string())),
            Err(error) if *error.kind() == IntErrorKind::PosOverflow => {
                Err((model.words().beyond)("0", &most.to_string()))
            }
            Err(_) => Err(number),
        },
        Takes::Day => match (read_day(text), model.environment.today) {
            (None, _) => Err(day),
            (Some(found), Some(today)) if found > today => {
                Err((model.words().beyond)("2000-01-01", &today.text()))
            }
            (Some(_), _) => Ok(String::new()),
        },
        Takes::Text => Ok(String::new()),
    }
}

/// What a refused reading may have meant, or that it is none.
fn why(error: &ReadError, language: Language, plain: String) -> String {
    match error.suggestions.first() {
        Some(meant) => [&language.written(&meant.text), "?"].concat(),
        None => plain,
    }
}

/// A length in both units.
fn both(length: Length, speaker: Speaker) -> String {
    [speaker.length(length), in_the_other_unit(speaker, length)].concat()
}

/// A box to tick.
pub(super) fn tick(model: &Model, name: &str, label: &str) -> Markup {
    html! {
        label.confirm {
            input type="checkbox" data-act=(Action::Tick(name.to_owned()).code())
                checked[model.fields.ticked(name)];
            span { (label) }
        }
    }
}

/// The verdict in one line: good, a question, or stop.
pub(super) fn verdict(kind: &str, text: &str) -> Markup {
    html! { p class={ "verdict-line " (kind) } role="status" { (text) } }
}

/// A day in words that are shown: no line ends within it.
pub(super) fn whole(day: Date) -> String {
    day.text().replace('-', "\u{2011}")
}
