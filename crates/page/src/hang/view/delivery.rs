//! What came, and the opening measured again.

use super::parts;
use crate::answers::told;
use crate::hang::model::Model;
use hangtrue_core::Spot;
use hangtrue_core::hang::delivery::{Compared, Part, compare, rollers};
use hangtrue_core::say::{Speaker, capital};
use maud::{Markup, html};

/// The places that are measured again.
const AGAIN: [Spot; 8] = [
    Spot::WidthLow,
    Spot::WidthMiddle,
    Spot::WidthHigh,
    Spot::HeightLeft,
    Spot::HeightCenter,
    Spot::HeightRight,
    Spot::HeaderCenter,
    Spot::BowFirst,
];

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().delivery;
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            p.lede { (text.lede) }
            (parts::caution(text.caution))
            (ordered(model))
            (list(model))
            section {
                h2 { (text.tools_heading) }
                ul { @for tool in text.tools { li { (tool) } } }
            }
            (again(model))
            (parts::go_on(model))
        }
    }
}

/// What the dealer asked and the order answers: which door line, which seals.
fn ordered(model: &Model) -> Markup {
    let order = &model.record.order;
    let speaker = Speaker { unit: order.survey.unit, ..model.speaker() };
    html! {
        @if !order.answers.is_empty() {
            section {
                h2 { (model.words().delivery.ordered) }
                ul.rows.ordered {
                    @for answer in &order.answers {
                        @let [ask, shown] = told(&model.profile, speaker, answer);
                        li { span { (ask) } b { (shown) } }
                    }
                }
            }
        }
    }
}

fn list(model: &Model) -> Markup {
    let text = &model.words().delivery;
    let name = |part: Part| ["part.", &part.index().to_string()].concat();
    let ticked = Part::ALL.iter().filter(|part| model.fields.ticked(&name(**part))).count();
    let rollers = model.room().map_or(0, |room| rollers(room.curtain().panels));
    html! {
        section {
            h2 { (text.parts) }
            div.ticks {
                @for part in Part::ALL {
                    @let label = (text.part)(part, rollers);
                    @let option = if part.is_option() { [" (", text.option, ")"].concat() } else { String::new() };
                    (parts::tick(model, &name(part), &[label, option].concat()))
                }
            }
            p.hint role="status" { ((text.ticked)(ticked, Part::ALL.len())) }
        }
    }
}

fn again(model: &Model) -> Markup {
    let text = &model.words().delivery;
    let compared = compare(&model.numbers(), &model.built());
    html! {
        section {
            h2 { (text.again) }
            p { (text.again_lede) }
            div.fields {
                @for spot in AGAIN {
                    @let name = ["again.", &spot.key()].concat();
                    @let label = capital(model.speaker().spot(spot));
                    (parts::field(model, &name, &label, ""))
                }
            }
            (result(model, &compared))
        }
    }
}

fn result(model: &Model, compared: &[Compared]) -> Markup {
    let text = &model.words().delivery;
    if compared.is_empty() {
        return html! {};
    }
    let tight = compared.iter().any(|one| !one.fits());
    let far = compared.iter().any(Compared::is_far);
    html! {
        @if tight {
            (parts::verdict("stop", text.stop))
        } @else if far {
            (parts::verdict("recheck", text.other))
        } @else {
            (parts::verdict("clear", text.fits))
        }
        ul.rows {
            @for one in compared {
                @let by = model.speaker().length(one.spare.abs());
                li.stop[!one.fits()].recheck[one.is_far()] {
                    span { (capital(model.speaker().spot(one.spot))) }
                    b {
                        @if !one.fits() {
                            ((text.short)(&by))
                        } @else if one.is_far() {
                            ((text.far)(&by))
                        } @else {
                            ((text.spare)(&by))
                        }
                    }
                }
            }
        }
    }
}
