//! The small parts that every screen is made of.

use super::Scene;
use crate::event::Action;
use crate::rest;
use crate::step::Step;
use crate::text::Text;
use hangtrue_core::say::Language;
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

/// A field for a line of text that is no reading.
pub(super) fn line(name: &str, label: &str, hint: &str, value: &str) -> Markup {
    html! {
        div.line {
            label for=(name) { (label) " " span.hint { (hint) } }
            input #(name) type="text" name=(name) value=(value) autocomplete="off" maxlength="200";
        }
    }
}
