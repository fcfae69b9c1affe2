//! What the person should know of the page itself, above every screen.

use super::{Scene, parts};
use crate::event::{Action, Trouble};
use crate::update::asks;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.text().kept;
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
        @if scene.model.waiting.iter().any(asks) {
            div.notice role="status" {
                p { (if scene.model.missing { text.missing } else { text.coming }) }
            }
        }
        @if scene.model.newer {
            div.notice role="status" {
                p { (text.newer) }
                (parts::button(&Action::TakeOver, text.take_over))
            }
        }
    }
}
