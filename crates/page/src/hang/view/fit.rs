//! Latch, side shift, seals.

use super::parts;
use crate::hang::model::Model;
use hangtrue_core::hang::latch::{STRETCH_PERMILLE, WASHER, center, seal, washers};
use hangtrue_core::hang::record::Place;
use hangtrue_core::{Dimension, Length};
use maud::{Markup, html};

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().fit;
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            (parts::caution(text.caution))
            div.columns {
                (latch(model))
                (shift(model))
            }
            (seals(model))
            (parts::go_on(model))
        }
    }
}

fn latch(model: &Model) -> Markup {
    let text = &model.words().fit;
    let unit = model.unit();
    let read = |place| model.record.built.read(place, unit);
    let width = model.numbers().ordered(Dimension::Width).unwrap_or(Length::ZERO);
    let center = center(width, read(Place::LatchLeft), read(Place::LatchRight));
    html! {
        section {
            h2 { (text.latch) }
            p { ((text.half)(&model.speaker().length(center.half))) }
            div.fields {
                (parts::place(model, Place::LatchLeft))
                (parts::place(model, Place::LatchRight))
            }
            @match (center.holds(), center.move_right()) {
                (Some(true), _) => (parts::verdict("clear", text.centered)),
                (Some(false), Some(by)) => {
                    @let told = model.speaker().length(by.abs().round_to(unit.finest()));
                    (parts::verdict("recheck", &(text.move_by)(&told, by > Length::ZERO)))
                }
                _ => {}
            }
        }
    }
}

fn shift(model: &Model) -> Markup {
    let text = &model.words().fit;
    let unit = model.unit();
    let washer = model.length("washer").unwrap_or(WASHER);
    let washers =
        model.record.built.read(Place::Shift, unit).and_then(|shift| washers(shift, washer));
    let usual = (model.words().overhead.assumed_as)(&model.speaker().length(WASHER));
    html! {
        section {
            h2 { (text.shift) }
            p { (text.shift_how) }
            div.fields {
                (parts::place(model, Place::Shift))
                (parts::field(model, "washer", text.washer, &usual))
            }
            @match washers {
                Some(washers) if washers.sides == [0, 0] => {
                    (parts::verdict("clear", text.no_washers))
                }
                Some(washers) => {
                    @let [left, right] = washers.sides;
                    @let result = model.speaker().length(washers.result.round_to(unit.finest()));
                    (parts::verdict("recheck", &(text.washers)(left, right, &result)))
                }
                None => {}
            }
        }
    }
}

fn seals(model: &Model) -> Markup {
    let text = &model.words().fit;
    let numbers = model.numbers();
    let runs = [Dimension::Height, Dimension::Height, Dimension::Width];
    html! {
        section {
            h2 { (text.seals) }
            p { (text.seals_how) }
            ul.rows {
                @for (name, run) in text.seal.into_iter().zip(runs) {
                    @if let Some(run) = numbers.ordered(run) {
                        li {
                            span { (name) }
                            b { (model.told(seal(run, STRETCH_PERMILLE))) }
                        }
                    }
                }
            }
            p.hint { (text.source) }
        }
    }
}
