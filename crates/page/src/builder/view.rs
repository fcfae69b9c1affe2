//! The form, what is wrong, and what can be taken away.

use std::borrow::Cow;

use super::schema::{Kind, about, kind, must_have};
use super::text::Words;
use super::{Model, PROFILE, tree};
use crate::view::languages;
use hangtrue_core::Spot;
use hangtrue_core::say::Speaker;
use hangtrue_link::json::text::{Node, Value};
use hangtrue_link::say;
use maud::{Markup, html};

/// The whole builder as markup. The same model gives the same markup.
#[must_use]
pub fn view(model: &Model) -> String {
    let root = &model.schema;
    html! {
        header.top {
            span.name { "Hangtrue" }
        }
        main #main {
            form.builder {
                h1 #heading tabindex="-1" { (model.words().heading) }
                p.lede { (model.words().lede) }
                label.file {
                    input.visually-hidden #file type="file" accept=".json,application/json";
                    span.button { (model.words().open) }
                }
                @if let Some(unread) = &model.unread {
                    p.summary.stop role="alert" { (unread) }
                }
                (outcome(model))
                (inner(model, "", root))
            }
        }
        footer.foot { (languages(model.language())) }
    }
    .into_string()
}

/// Whether the profile can be used, and the files.
fn outcome(model: &Model) -> Markup {
    html! {
        section.outcome #outcome role="status" {
            @if !model.begun {
                p { (model.words().begin) }
            } @else if let Some(fault) = model.fault() {
                div.summary.stop {
                    p { (model.words().not_yet) }
                    p.what { (say::profile(model.language(), fault)) }
                    @if !fault.place.is_empty() {
                        p {
                            button type="button" data-act={ "go:" (fault.place) } { (model.words().go) }
                        }
                    }
                }
            } @else {
                p.verdict { (model.words().fine) }
                div.actions {
                    a.button.primary download=(PROFILE)
                        href=(data("application/json", &model.file())) { (model.words().download) }
                    a.button download="snippet.html" href=(data("text/html", &model.snippet())) {
                        (model.words().snippet)
                    }
                }
                details.working {
                    summary { (model.words().lines) }
                    pre { (model.snippet()) }
                }
            }
        }
    }
}

/// A file as an address.
fn data(kind: &str, text: &str) -> String {
    let mut address = ["data:", kind, ";charset=utf-8,"].concat();
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || b"-._~".contains(&byte) {
            address.push(char::from(byte));
        } else {
            const HEX: &[u8; 16] = b"0123456789ABCDEF";
            address.push('%');
            for digit in [byte >> 4, byte & 15] {
                address.extend(HEX.get(usize::from(digit)).copied().map(char::from));
            }
        }
    }
    address
}

/// The fields of the record of `schema` at `path`.
fn inner(model: &Model, path: &str, schema: &Node<'static>) -> Markup {
    let Kind::Record(keys) = kind(&model.schema, schema) else { return html! {} };
    html! {
        @for (key, inner) in keys {
            @let needed = must_have(&model.schema, schema, key);
            (place(model, &below(path, key), &model.words().label(key), inner, needed))
        }
    }
}

fn below(path: &str, key: &str) -> String {
    if path.is_empty() { key.to_owned() } else { [path, ".", key].concat() }
}

/// The place at `path`, by its kind.
fn place(model: &Model, path: &str, label: &str, schema: &Node<'static>, needed: bool) -> Markup {
    let hint = model.words().about(about(&model.schema, schema));
    let value = tree::get(&model.tree, path);
    match kind(&model.schema, schema) {
        Kind::Fixed => html! {},
        Kind::Record(_) => group(model, path, label, hint, &inner(model, path, schema)),
        Kind::List(item) => group(model, path, label, hint, &list(model, path, item)),
        Kind::Several(texts) => {
            let chosen = tree::list(&model.tree, path);
            let has = |text: &str| chosen.iter().any(|node| node.as_text() == Some(text));
            choice(
                model,
                path,
                label,
                hint,
                &html! {
                    @for text in texts {
                        label {
                            input type="checkbox" data-act={ "toggle:" (path) ":" (text) }
                                checked[has(text)];
                            span { (choice_of(model, text)) }
                        }
                    }
                },
            )
        }
        Kind::One(texts) => {
            let shown = |text| (text, choice_of(model, text));
            let texts: Vec<_> = texts.into_iter().map(shown).collect();
            let chosen = value.and_then(Node::as_text);
            choice(model, path, label, hint, &one_of(model.words(), path, &texts, chosen, needed))
        }
        Kind::YesNo => {
            let chosen =
                value.map(|node| if node.value == Value::Bool(true) { "true" } else { "false" });
            let texts = [("true", model.words().yes.into()), ("false", model.words().no.into())];
            choice(model, path, label, hint, &one_of(model.words(), path, &texts, chosen, needed))
        }
        Kind::Number => {
            let shown = value.map(shown).unwrap_or_default();
            field(
                model,
                path,
                label,
                hint,
                needed,
                &shown,
                Look { numbers: true, ..Look::default() },
            )
        }
        Kind::Spoken(languages) => spoken(model, path, label, hint, needed, &languages),
        Kind::Text { is_color, example } => {
            let shown = value.map(shown).unwrap_or_default();
            field(
                model,
                path,
                label,
                hint,
                needed,
                &shown,
                Look { is_color, example, numbers: false },
            )
        }
    }
}

/// A value that can be chosen, as it is shown: a place as the walk names it, a length as people
/// write it.
fn choice_of<'k>(model: &Model, key: &'k str) -> Cow<'k, str> {
    if let Some(spot) = Spot::from_key(key) {
        let speaker = Speaker { language: model.language(), ..Speaker::default() };
        return speaker.spot(spot).into();
    }
    let said = model.words().choice(key).map(Cow::Borrowed);
    said.unwrap_or_else(|| model.language().written(key).into())
}

/// What a field shows of a value that is a text or a number; whatever else stands there
/// is only told of by its error.
fn shown(node: &Node<'_>) -> String {
    match &node.value {
        Value::Text(text) => text.as_ref().to_owned(),
        Value::Number(number) => number.as_str().to_owned(),
        _ => String::new(),
    }
}

/// A record or a list, folded until it is asked for.
fn group(model: &Model, path: &str, label: &str, hint: &str, body: &Markup) -> Markup {
    let open = model.open.iter().any(|open| open == path);
    html! {
        section.group {
            button.fold type="button" #(path) data-act={ "fold:" (path) } aria-expanded=(open) {
                span {
                    (label)
                    @if path.contains('.') { span.visually-hidden { ": " (way(model, path)) } }
                }
                @if tree::get(&model.tree, path).is_some() { span.state { (model.words().filled) } }
            }
            @if open {
                p.hint { (hint) }
                (amiss(model, path))
                (body)
            } @else {
                (amiss(model, path))
            }
        }
    }
}

/// Where `path` leads, in words: for who does not see where a button stands.
fn way(model: &Model, path: &str) -> String {
    let mut way = String::new();
    for key in path.split('.') {
        if !way.is_empty() {
            way.push_str(", ");
        }
        match key.parse::<usize>() {
            Ok(at) => way.push_str(&at.saturating_add(1).to_string()),
            Err(_) => way.push_str(&model.words().label(key)),
        }
    }
    way
}

fn list(model: &Model, path: &str, item: &Node<'static>) -> Markup {
    let items = tree::list(&model.tree, path);
    html! {
        @for at in 0..items.len() {
            @let path = below(path, &at.to_string());
            fieldset.item #(path) tabindex="-1" {
                legend { (at.saturating_add(1)) }
                (amiss(model, &path))
                (inner(model, &path, item))
                button type="button" data-act={ "remove:" (path) } {
                    (model.words().remove) span.visually-hidden { ": " (way(model, &path)) }
                }
            }
        }
        button type="button" data-act={ "add:" (path) } {
            (model.words().add) span.visually-hidden { ": " (way(model, path)) }
        }
    }
}

fn choice(model: &Model, path: &str, label: &str, hint: &str, body: &Markup) -> Markup {
    html! {
        fieldset.choice #(path) tabindex="-1" {
            legend { (label) }
            p.hint { (hint) }
            (amiss(model, path))
            div.options { (body) }
        }
    }
}

fn one_of(
    words: &Words,
    path: &str,
    texts: &[(&str, Cow<'_, str>)],
    chosen: Option<&str>,
    needed: bool,
) -> Markup {
    html! {
        @for (value, label) in texts {
            label {
                input type="radio" name=(path) value=(value) checked[chosen == Some(*value)];
                span { (label) }
            }
        }
        @if !needed {
            label {
                input type="radio" name=(path) value="" checked[chosen.is_none()];
                span { (words.none) }
            }
        }
    }
}

/// How a field looks and is typed in.
#[derive(Clone, Copy, Default)]
struct Look<'s> {
    is_color: bool,
    example: Option<&'s str>,
    numbers: bool,
}

fn field(
    model: &Model,
    path: &str,
    label: &str,
    hint: &str,
    needed: bool,
    value: &str,
    look: Look<'_>,
) -> Markup {
    let bad = fault_at(model, path).is_some();
    html! {
        div.line.bad[bad] {
            label for=(path) {
                (label)
                @if needed { " " span.hint { (model.words().needed) } }
            }
            @if !hint.is_empty() || look.example.is_some() {
                p.hint {
                    (hint)
                    @if let Some(example) = look.example { " " code { (example) } }
                }
            }
            (amiss(model, path))
            div.filled {
                @if look.is_color { (swatch(value)) }
                input #(path) type="text" name=(path) value=(value) autocomplete="off"
                    spellcheck="false" inputmode=[look.numbers.then_some("decimal")]
                    aria-invalid=[bad.then_some("true")];
            }
        }
    }
}

/// The colour itself. What is no colour paints nothing.
fn swatch(value: &str) -> Markup {
    html! {
        svg.swatch viewBox="0 0 1 1" width="48" height="48" aria-hidden="true" {
            rect width="1" height="1" fill=(value) {}
        }
    }
}

/// A text for all, or one a language.
fn spoken(
    model: &Model,
    path: &str,
    label: &str,
    hint: &str,
    needed: bool,
    languages: &[&str],
) -> Markup {
    let value = tree::get(&model.tree, path);
    let by_language = value.is_some_and(|node| matches!(node.value, Value::Object(_)));
    if !by_language {
        let shown = value.map(shown).unwrap_or_default();
        return html! {
            div.spoken {
                (field(model, path, label, hint, needed, &shown, Look::default()))
                button.quiet type="button" data-act={ "split:" (path) } {
                    (model.words().by_language) span.visually-hidden { ": " (way(model, path)) }
                }
            }
        };
    }
    html! {
        fieldset.item #(path) tabindex="-1" {
            legend { (label) }
            p.hint { (hint) }
            (amiss(model, path))
            @for language in languages {
                @let path = below(path, language);
                @let shown = tree::get(&model.tree, &path).map(shown).unwrap_or_default();
                (field(model, &path, &choice_of(model, language), "", false, &shown, Look::default()))
            }
            button.quiet type="button" data-act={ "join:" (path) } {
                (model.words().one_text) span.visually-hidden { ": " (way(model, path)) }
            }
        }
    }
}

fn fault_at(model: &Model, path: &str) -> Option<String> {
    let fault = model.fault().filter(|fault| model.begun && fault.place == path)?;
    Some(say::profile(model.language(), fault))
}

/// What is wrong at `path`.
fn amiss(model: &Model, path: &str) -> Markup {
    html! {
        @if let Some(told) = fault_at(model, path) {
            p.problem.stop { span.what { (told) } }
        }
    }
}
