//! What the columns of a table hold, with its first rows: to be put right before anything
//! is checked.

use super::Scene;
use crate::desk::many::{Action, Kind, missing};
use crate::text::desk::Desk;
use crate::view::parts::pick;
use hangtrue_core::Spot;
use hangtrue_core::say::capital;
use hangtrue_link::csv::{Column, Measure, Sheet, What, record};
use maud::{Markup, html};

/// How many rows are shown.
const ROWS: usize = 3;

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let Kind::Table(sheet) = &scene.list.source.kind else { return Markup::default() };
    let text = scene.text();
    let speaker = scene.model.speaker();
    let missing: Vec<&str> =
        missing(sheet).into_iter().map(|dimension| speaker.dimension(dimension)).collect();
    let phone = &Desk::of(speaker.language).phone;
    let units = [("in", phone.inches), ("mm", phone.millimetres)];
    html! {
        p { (text.columns) }
        @if !missing.is_empty() { p.summary { ((text.missing)(&missing)) } }
        div.row {
            button.primary #list-check type="button" data-act=(Action::Check.code()) {
                (text.check)
            }
        }
        (pick("list-unit", text.bare, &units, sheet.unit.key()))
        (table(scene, sheet))
    }
}

fn table(scene: Scene<'_>, sheet: &Sheet) -> Markup {
    let text = scene.text();
    let rows = first_rows(&scene.list.source.text, sheet);
    let cell = |row: &[String], at: usize| row.get(at).cloned().unwrap_or_default();
    html! {
        div.scroll tabindex="0" role="group" aria-label=(text.column) {
            table.holds {
                thead {
                    tr {
                        th scope="col" { (text.column) }
                        th scope="col" { (text.holds) }
                        th scope="col" { (text.measured) }
                        @for number in 1..=rows.len() { th scope="col" { ((text.row)(number)) } }
                    }
                }
                tbody {
                    @for (at, (name, column)) in sheet.names.iter().zip(&sheet.columns).enumerate() {
                        tr.unused[column.what == What::Ignored] data-key={ "column-" (at) } {
                            th scope="row" { (name) }
                            td { (holds(scene, at, name, column.what)) }
                            td { (measured(scene, at, name, column)) }
                            @for row in &rows { td.cell { (cell(row, at)) } }
                        }
                    }
                }
            }
        }
    }
}

/// The first records, as far as they can be read.
fn first_rows(text: &str, sheet: &Sheet) -> Vec<Vec<String>> {
    let mut mark = sheet.start;
    let records = core::iter::from_fn(|| record(text, sheet.delimiter, &mut mark));
    let cut = |cell: std::borrow::Cow<'_, str>| cell.chars().take(40).collect();
    let rows =
        records.filter_map(Result::ok).filter(|row| row.iter().any(|it| !it.trim().is_empty()));
    rows.take(ROWS).map(|row| row.into_iter().map(cut).collect()).collect()
}

fn holds(scene: Scene<'_>, at: usize, name: &str, held: What) -> Markup {
    let text = scene.text();
    let id = ["column:", &at.to_string()].concat();
    let option = |what: What, word: &str| {
        html! { option value=(what.key()) selected[what == held] { (word) } }
    };
    let speaker = scene.model.speaker();
    html! {
        select id=(id) name=(id) aria-label={ (text.holds) ": " (name) } {
            @for (what, word) in What::OTHERS.into_iter().zip(text.others) { (option(what, word)) }
            @for spot in Spot::ALL { (option(What::Reading(spot), &capital(speaker.spot(spot)))) }
        }
    }
}

/// The unit of a reading's bare numbers, where the column's name says it.
fn measured(scene: Scene<'_>, at: usize, name: &str, column: &Column) -> Markup {
    let text = scene.text();
    let id = ["measure:", &at.to_string()].concat();
    html! {
        @if matches!(column.what, What::Reading(_)) {
            select id=(id) name=(id) aria-label={ (text.measured) ": " (name) } {
                option value="" selected[column.measure.is_none()] { (text.as_the_rest) }
                @for measure in Measure::ALL {
                    option value=(measure.symbol()) selected[column.measure == Some(measure)] {
                        (measure.symbol())
                    }
                }
            }
        }
    }
}
