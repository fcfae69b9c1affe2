//! What is printed of a record: a sticker, a card, or all of it. Only the browser's own
//! print shows it; `web/style/hang.css` gives each its size.

use super::record::{code, rows};
use crate::hang::model::Model;
use crate::hang::work::turns_text;
use crate::text::Text;
use hangtrue_core::Dimension;
use hangtrue_core::hang::inspection::{Check, Found};
use hangtrue_core::hang::record::Place;
use hangtrue_core::length::read;
use hangtrue_link::qr::Surface;
use maud::{Markup, html};

/// What can be printed, by the names of the choice: 50 × 30 mm, A6, a whole sheet.
pub(super) const FORMS: [&str; 3] = ["sticker", "card", "sheet"];

/// What is chosen to be printed.
pub(super) fn chosen(model: &Model) -> &'static str {
    let typed = model.fields.get("print");
    FORMS.into_iter().find(|form| *form == typed).unwrap_or(FORMS[0])
}

pub(super) fn printed(model: &Model, link: &str) -> Markup {
    match chosen(model) {
        "card" => card(model, link),
        "sheet" => sheet(model, link),
        _ => sticker(model, link),
    }
}

fn opening(model: &Model) -> String {
    let numbers = model.numbers();
    let of = |dimension| numbers.ordered(dimension).map(|length| model.speaker().length(length));
    let all: Vec<String> =
        [Dimension::Width, Dimension::Height].into_iter().filter_map(of).collect();
    all.join(" × ")
}

/// 50 × 30 mm: the code at level Q or better, and what is needed without a phone.
fn sticker(model: &Model, link: &str) -> Markup {
    let text = &model.words().record;
    html! {
        section.print.print-sticker {
            figure { @if let Some(code) = code(model, link, Surface::Paper) { (code) } }
            div {
                // First: what has no room is cut at the end.
                p { b { (text.warning) } }
                p { (text.scan) }
                @if !model.record.serial.is_empty() { p { (model.record.serial) } }
                p { (opening(model)) }
                @if let Some(turns) = model.record.turns {
                    p { ((model.words().spring.count)(&turns_text(turns.turns()))) }
                }
            }
        }
    }
}

/// A6: the code large, and the record's rows.
fn card(model: &Model, link: &str) -> Markup {
    let text = &model.words().record;
    html! {
        section.print.print-card {
            h1 { (text.heading) }
            figure { @if let Some(code) = code(model, link, Surface::Paper) { (code) } }
            p { (model.record.serial) }
            (rows(model))
            p.print-warning { (text.warning) }
        }
    }
}

/// A whole sheet: rows, readings, inspection, services.
fn sheet(model: &Model, link: &str) -> Markup {
    let text = &model.words().record;
    let record = &model.record;
    html! {
        section.print.print-sheet {
            h1 { (text.heading) " " (record.serial) }
            figure { @if let Some(code) = code(model, link, Surface::Paper) { (code) } }
            (rows(model))
            @if !record.built.is_empty() {
                h2 { (model.words().tracks.heading) }
                ul.rows {
                    @for place in Place::ALL {
                        @if !record.built.text(place).is_empty() {
                            li {
                                span { ((model.words().tracks.place)(place)) }
                                b { (measured(model, record.built.text(place))) }
                            }
                        }
                    }
                }
            }
            h2 { (model.words().inspection.heading) }
            ul.rows { @for check in Check::ALL { (found(model, check)) } }
            @if !record.services.is_empty() {
                h2 { (model.words().care.done) }
                ul.rows {
                    @for service in &record.services {
                        li {
                            span { (service.date.text()) " " (service.note) }
                            b { ((model.words().care.work)(service.work)) }
                        }
                    }
                }
            }
            p.print-warning { (text.warning) }
        }
    }
}

/// A reading with its unit; as it was typed where it is none.
fn measured(model: &Model, typed: &str) -> String {
    read(typed, model.unit()).map_or_else(|_| typed.to_owned(), |length| model.told(length))
}

fn found(model: &Model, check: Check) -> Markup {
    let [in_order, not] = model.words().yes_no;
    let [holds, fails] = model.words().inspection.finding;
    let value = match model.record.inspection.get(check) {
        None => model.words().record.none.to_owned(),
        Some(Found::Length(length)) => model.speaker().length(length),
        Some(Found::Weight(weight)) => model.told_weight(weight),
        Some(Found::Count(count)) => count.to_string(),
        Some(Found::Eye(fine)) => (if fine { in_order } else { not }).to_owned(),
    };
    let finding = match model.record.inspection.finding(check, model.against()) {
        Some(true) => holds,
        Some(false) => fails,
        None => "",
    };
    let colon = Text::of(model.language()).colon;
    html! {
        li {
            span { ((model.words().inspection.check)(check)) }
            b { (value) @if !finding.is_empty() { (colon) (finding) } }
        }
    }
}
