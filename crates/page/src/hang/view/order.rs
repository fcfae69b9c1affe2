//! Whose door: the order's link, or its four numbers.

use super::parts;
use crate::hang::event::Action;
use crate::hang::model::{Fault, Model};
use hangtrue_core::Dimension;
use hangtrue_core::hang::record::Record;
use maud::{Markup, html};

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().order;
    let typed = Dimension::ALL.iter().any(|d| !model.fields.get(&order(*d)).is_empty());
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            p.lede { (text.lede) }
            @if let Some(fault) = &model.fault {
                div.summary.stop role="alert" { p { (told(model, fault)) } }
            }
            section.caution {
                h2 { (text.caution_heading) }
                ul { @for item in text.cautions { li { (item) } } }
            }
            @if model.has_order() && !typed {
                (numbers(model))
                (parts::go_on(model))
                (parts::quiet(&Action::Restart, model.words().restart))
            } @else {
                section {
                    (parts::field(model, "paste", text.paste, text.paste_hint))
                    (parts::button(&Action::Open, text.open))
                }
                section {
                    h2 { (text.type_them) }
                    (parts::choice(
                        "unit",
                        text.unit,
                        &[("in", text.units[0]), ("mm", text.units[1])],
                        model.unit().key(),
                    ))
                    div.fields {
                        @for dimension in Dimension::ALL {
                            (parts::field(
                                model,
                                &order(dimension),
                                model.speaker().dimension(dimension),
                                ""))
                        }
                    }
                }
                (parts::go_on(model))
                p { a href="./" { (text.measure) } }
                @if model.record != Record::default() {
                    (parts::quiet(&Action::Restart, model.words().restart))
                }
            }
        }
    }
}

fn told(model: &Model, fault: &Fault) -> String {
    let language = model.speaker().language;
    match fault {
        Fault::Link(error) => {
            let advice = hangtrue_link::say::link(language, *error);
            [&advice.what, " ", advice.ask].concat()
        }
        Fault::File(error) => hangtrue_link::say::file(language, error),
    }
}

fn order(dimension: Dimension) -> String {
    ["order.", dimension.key()].concat()
}

/// The four numbers large.
fn numbers(model: &Model) -> Markup {
    let numbers = model.numbers();
    html! {
        section {
            h2 { (model.words().order.numbers) }
            @if !model.record.order.vehicle.is_empty() {
                p.lede { (model.record.order.vehicle) }
            }
            dl.numbers {
                @for dimension in Dimension::ALL {
                    div {
                        dt { (model.speaker().dimension(dimension)) }
                        @if let Some(number) = numbers.ordered(dimension) {
                            dd.value { (model.speaker().length(number)) }
                        }
                    }
                }
            }
        }
    }
}

/// A screen that there is nothing to show on.
pub(super) fn missing(model: &Model) -> Markup {
    html! {
        (parts::heading(model.words().order.heading))
        p.lede { (model.words().no_order) }
        p { a.button href="#/order" { (model.words().steps[0]) } }
    }
}
