//! Whose door: the order's link, or its four numbers.

use super::parts;
use crate::hang::draft;
use crate::hang::event::Action;
use crate::hang::model::{Fault, Model};
use crate::view::parts::pick;
use crate::view::to_build;
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
                (aside(model))
            } @else {
                section {
                    (parts::field(model, "paste", text.paste, text.paste_hint))
                    (parts::button(&Action::Open, text.open))
                }
                (aside(model))
                section {
                    h2 { (text.type_them) }
                    (pick(
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
                p { a.alone href="./" { (text.measure) } }
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

/// Doors that were set aside on this device: by a link that was opened over them, by another
/// door, or because the page had stopped.
fn aside(model: &Model) -> Markup {
    let text = &model.words().order;
    let doors: Vec<(u32, String)> = model
        .aside
        .iter()
        .filter_map(|(number, draft)| Some((*number, name(model, &draft::door(draft)?))))
        .collect();
    html! {
        @if !doors.is_empty() {
            section {
                h2 { (text.aside) }
                ul.rows.aside {
                    @for (number, name) in &doors {
                        li {
                            (parts::button(&Action::TakeUp(*number), &(text.take_up)(name)))
                            (parts::quiet(&Action::DropAside(*number), text.drop_aside))
                        }
                    }
                }
            }
        }
    }
}

/// What a person knows a door by.
fn name(model: &Model, record: &Record) -> String {
    let order = &record.order;
    let known = [order.vehicle.as_str(), record.serial.as_str()];
    let known: Vec<&str> = known.into_iter().filter(|text| !text.is_empty()).collect();
    if !known.is_empty() {
        return known.join(" · ");
    }
    let width = order.survey.tightest(Dimension::Width);
    let height = order.survey.tightest(Dimension::Height);
    let told = |(_, length)| model.speaker().length(length);
    let size: Vec<String> = [width, height].into_iter().flatten().map(told).collect();
    size.join(" × ")
}

fn order(dimension: Dimension) -> String {
    ["order.", dimension.key()].concat()
}

/// The four numbers large.
fn numbers(model: &Model) -> Markup {
    let report = model.report();
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
                        @if let Some(number) = report.numbers.ordered(dimension) {
                            dd.value { (model.speaker().length(number)) }
                        }
                    }
                }
            }
        }
        @if report.preparation.needed() {
            (to_build(model.speaker(), &model.record.order.survey, &report))
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
