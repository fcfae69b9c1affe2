//! Drawings, put into the markup. They are the only markup that is not made here.

use super::Scene;
use hangtrue_core::{Length, Spot};
use hangtrue_draw::{Residual, Sheet};
use maud::{Markup, PreEscaped, html};

/// Where the tape lies at `spots`.
pub(super) fn spots(scene: Scene<'_>, spots: &[Spot]) -> Markup {
    let sheet = Sheet { id: "picture", speaker: scene.model.speaker() };
    let svg = hangtrue_draw::spots(sheet, scene.model.drawn(), spots);
    html! { figure.picture { (PreEscaped(svg)) } }
}

/// The tape around `reading`.
pub(super) fn tape(scene: Scene<'_>, reading: Length) -> Markup {
    let sheet = Sheet { id: "tape", speaker: scene.model.speaker() };
    html! { (PreEscaped(hangtrue_draw::tape(sheet, reading))) }
}

/// The frame's lean exaggerated, and which tape does not fit.
pub(super) fn residuals(scene: Scene<'_>, shown: &[Residual]) -> Markup {
    let sheet = Sheet { id: "residuals", speaker: scene.model.speaker() };
    html! { figure.picture { (PreEscaped(hangtrue_draw::residuals(sheet, shown))) } }
}

/// The order's own drawing: rear and section, with the four numbers large.
pub(super) fn order(scene: Scene<'_>) -> Markup {
    html! { figure.picture.order { (drawn(scene, "order")) } }
}

/// The same for the print sheet.
pub(super) fn paper(scene: Scene<'_>) -> Markup {
    html! { figure { (drawn(scene, "paper")) } }
}

fn drawn(scene: Scene<'_>, id: &str) -> Markup {
    let sheet = Sheet { id, speaker: scene.model.speaker() };
    PreEscaped(hangtrue_draw::order(sheet, &scene.model.order.survey, &scene.report.numbers))
}
