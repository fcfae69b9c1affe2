//! What the person should know of the page itself, above every screen.

use super::{Scene, parts};
use crate::event::{Action, Trouble};
use crate::rest;
use crate::text::Later;
use crate::update::asks;
use hangtrue_core::say::Language;
use maud::{Markup, html};

/// What was asked for and waits for the second module; and what that knows.
pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    html! {
        @if scene.model.waiting.iter().any(asks) {
            div.notice role="status" {
                p { (if scene.model.missing { text.missing } else { text.coming }) }
            }
        }
        @if !scene.model.environment.partial { (rest::notices(scene)) }
    }
}

/// What is amiss with keeping the draft, and a newer build.
pub(crate) fn later(scene: Scene<'_>) -> Markup {
    let text = &scene.later().kept;
    html! {
        @if let Some(trouble) = scene.model.trouble {
            div.notice role="status" {
                p { ((text.trouble)(trouble)) }
                div.buttons {
                    @if trouble == Trouble::Changed {
                        (parts::button(&Action::TakeTheirs, text.take_theirs))
                    }
                    (parts::button(&Action::Noted, text.noted))
                }
            }
        }
        @if scene.model.newer { (newer(scene.model.environment.language, text.newer)) }
    }
}

/// A newer build of the page waits for a tap; `told` says what becomes of what is typed.
pub(crate) fn newer(language: Language, told: &str) -> Markup {
    html! {
        div.notice role="status" {
            p { (told) }
            (parts::button(&Action::TakeOver, Later::of(language).kept.take_over))
        }
    }
}
