//! The small parts that every screen is made of.

use super::Scene;
use crate::event::Action;
use crate::rest;
use crate::step::Step;
use crate::text::Text;
use hangtrue_core::say::Language;
use hangtrue_core::short::digits;
use maud::{Markup, html};

/// The screen's one question, which takes the focus when the screen changes.
pub(super) fn heading(text: &str) -> Markup {
    html! { h1 #heading tabindex="-1" { (text) } }
}

/// The summary of what stands against going on; nothing where nothing does.
pub(super) fn problems(scene: Scene<'_>) -> Markup {
    if scene.problems.is_empty() {
        return html! {};
    }
    rest::summary(scene)
}

/// The id of what stands at a field against going on.
pub(super) fn id_of_problems(field: &str) -> String {
    [field, "-problem"].concat()
}

/// The button that sends the form.
pub(super) fn submit(text: &str) -> Markup {
    html! { button.primary type="submit" { (text) } }
}

/// A button of its own.
pub(super) fn button(action: &Action, text: &str) -> Markup {
    html! { button type="button" data-act=(action.code()) { (text) } }
}

/// A button that looks like a link.
pub(super) fn quiet(code: &str, text: &str) -> Markup {
    html! { button.quiet type="button" data-act=(code) { (text) } }
}

/// A quiet button whose name says what it is about.
pub(super) fn quiet_about(action: &Action, text: &str, about: &str) -> Markup {
    html! {
        button.quiet type="button" data-act=(action.code()) {
            (text) span.visually-hidden { " " (about) }
        }
    }
}

/// The languages, of which the one that is spoken is pressed. The keyboard stays where it
/// is: a change in the middle of a reading takes neither focus nor caret from it.
pub(crate) fn languages(spoken: Language) -> Markup {
    html! {
        nav.languages aria-label=(Text::of(spoken).language) {
            @for one in Language::ALL {
                button.quiet type="button" lang=(one.key()) data-key=(one.key()) data-keep-focus
                    data-act=(Action::Speak(one).code()) aria-pressed=(if one == spoken { "true" } else { "false" }) {
                    (one.name())
                }
            }
        }
    }
}

/// A link to a screen.
pub(super) fn to(step: Step, text: &str) -> Markup {
    html! { a.alone href={ "#/" (step.slug()) } { (text) } }
}

/// What to mind, where it may hurt.
pub(super) fn caution(text: &str) -> Markup {
    html! { p.caution { (text) } }
}

/// One of a few, side by side.
pub(crate) fn pick(name: &str, question: &str, options: &[(&str, &str)], chosen: &str) -> Markup {
    html! {
        fieldset.pick {
            legend { (question) }
            @for (value, label) in options {
                label {
                    input type="radio" name=(name) value=(value) checked[*value == chosen];
                    span { (label) }
                }
            }
        }
    }
}

/// A choice of a few, of which one is taken.
pub(super) fn choice(
    name: &str,
    question: &str,
    options: &[(&str, &str)],
    chosen: Option<&str>,
) -> Markup {
    html! {
        fieldset.choice {
            legend { (question) }
            @for (value, label) in options {
                label {
                    input type="radio" name=(name) value=(value) checked[chosen == Some(*value)];
                    span { (label) }
                }
            }
        }
    }
}

/// The browser's own way to choose a file, or several of them, under a name of ours.
pub(crate) fn choose_file(name: &str, several: bool) -> Markup {
    html! {
        label.file {
            input.visually-hidden type="file" multiple[several];
            span.button { (name) }
        }
    }
}

/// The most characters of a text that is no reading, as browsers count them: with three such
/// texts a link stays short enough for a message and a picture.
const MOST: usize = 200;
/// From so many on it is said how many there are.
const FEW_LEFT: usize = 180;

/// A field for a text that is no reading: a line, or several for a note.
pub(super) fn line(scene: Scene<'_>, name: &str, label: &str, value: &str) -> Markup {
    let text = &scene.later().send;
    let (room, most) = ([name, "-room"].concat(), digits(MOST as u64));
    let count = value.encode_utf16().count();
    html! {
        div.line {
            label for=(name) { (label) " " span.hint { (text.optional) } }
            @if name == "note" {
                textarea #(name) name=(name) rows="3" autocomplete="off" maxlength=(most)
                    aria-describedby=(room) { (value) }
            } @else {
                input #(name) type="text" name=(name) value=(value) autocomplete="off"
                    maxlength=(most) aria-describedby=(room);
            }
            div.hint #(room) { @if count >= FEW_LEFT { ((text.room)(count, MOST)) } }
            // The browser cuts what is pasted without a word.
            div role="status" { @if count >= MOST { (text.full) } }
        }
    }
}
