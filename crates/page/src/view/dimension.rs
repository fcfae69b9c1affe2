//! One of the four order dimensions.

use super::{Scene, frame, parts, picture, reading};
use crate::field::Field;
use crate::problems::Problem;
use hangtrue_core::say::capital;
use hangtrue_core::{Dimension, Spot, Unit};
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let model = scene.model;
    let Some(dimension) = model.step.dimension() else { return html! {} };
    let text = (scene.text().dimension)(dimension);
    let [inch, millimetre] = text.tape;
    let spots = dimension.spots();
    let active = model.active.unwrap_or(Field::first(spots[0]));
    let asked: &[Spot] = if model.active.is_some() { &[active.spot] } else { &spots };
    let only_questions = !scene.problems.is_empty() && !scene.problems.iter().any(Problem::blocks);
    html! {
        form.two data-act="next" {
            div.ask {
                (parts::heading(&capital(model.speaker().dimension(dimension))))
                p.lede { (text.lede) }
                // Before the reading that it is about.
                @if let Some(caution) = text.caution { (parts::caution(caution)) }
                (parts::problems(scene))
            }
            (picture::spots(scene, asked))
            div.readings {
                p.hint {
                    (match model.order.survey.unit {
                        Unit::Inch => scene.text().field.hint_inch,
                        Unit::Millimetre => scene.text().field.hint_millimetre,
                    })
                }
                @for spot in spots {
                    @let field = current(scene, spot);
                    (reading::field(scene, field, field.spot == active.spot))
                }
                p.hint { (text.places) }
            }
            @if dimension == Dimension::Header { (frame::building(scene)) }
            (parts::submit(if only_questions {
                scene.text().button.next_all_the_same
            } else {
                scene.text().button.next
            }))
            section.wrong {
                h2 { (text.wrong_heading) }
                ul {
                    @for item in text.wrong { li { (item) } }
                    li {
                        (match model.order.survey.unit {
                            Unit::Inch => inch,
                            Unit::Millimetre => millimetre,
                        })
                    }
                }
            }
        }
    }
}

/// The field of the reading that counts at `spot`: the first that is not struck.
fn current(scene: Scene<'_>, spot: Spot) -> Field {
    let entries = scene.model.order.survey.entries(spot);
    let index = entries.iter().position(|entry| !entry.struck).unwrap_or(entries.len());
    Field { spot, index }
}
