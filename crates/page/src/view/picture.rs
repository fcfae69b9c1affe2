//! Drawings, put into the markup. They are the only markup that is not made here.

use super::Scene;
use hangtrue_core::{Length, Spot};
use hangtrue_draw::Sheet;
use maud::{Markup, PreEscaped, html};

/// Where the tape lies at `spots`.
pub(super) fn spots(scene: Scene<'_>, spots: &[Spot]) -> Markup {
    let sheet = Sheet { id: "picture", speaker: scene.model.speaker() };
    let svg = hangtrue_draw::spots(sheet, &scene.model.order.survey, spots);
    html! { figure.picture { (PreEscaped(svg)) } }
}

/// The tape around `reading`.
pub(super) fn tape(scene: Scene<'_>, reading: Length) -> Markup {
    let sheet = Sheet { id: "tape", speaker: scene.model.speaker() };
    html! { (PreEscaped(hangtrue_draw::tape(sheet, reading))) }
}
