//! The tracks parallel and square.

use super::parts;
use crate::hang::model::Model;
use hangtrue_core::Length;
use hangtrue_core::hang::record::Place;
use hangtrue_core::hang::tracks::upper::{Move, OFF_MOST, moves, off_square};
use hangtrue_core::hang::tracks::{Level, Side, Solved, Stand};
use hangtrue_core::judge::least_squares::CRITICAL;
use hangtrue_draw::Sheet;
use maud::{Markup, PreEscaped, html};

const VERTICAL: [Place; 6] = [
    Place::TrackLow,
    Place::TrackMiddle,
    Place::TrackHigh,
    Place::TrackRising,
    Place::TrackFalling,
    Place::TrackMarks,
];
const UPPER: [Place; 3] = [Place::UpperFront, Place::UpperMiddle, Place::UpperRear];
const SQUARE: [Place; 2] = [Place::SquareLeft, Place::SquareRight];

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().tracks;
    let solved = model.record.built.pair(model.unit()).solve();
    let contradict = solved.as_ref().is_some_and(|solved| solved.worst > CRITICAL);
    // Nothing is worked out from readings that contradict each other.
    let solved = solved.filter(|_| !contradict);
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            p.lede { (text.lede) }
            (parts::caution(text.caution))
            div.columns {
                section {
                    h2 { (text.vertical) }
                    p { (text.vertical_how) }
                    div.fields { @for place in VERTICAL { (parts::place(model, place)) } }
                }
                @if contradict { section { (parts::verdict("stop", text.contradict)) } }
                @if let Some(solved) = &solved { (answer(model, solved)) }
            }
            div.columns {
                section {
                    h2 { (text.upper) }
                    p { (text.upper_how) }
                    div.fields { @for place in UPPER { (parts::place(model, place)) } }
                    @if let Some(solved) = &solved { (upper(model, solved)) }
                }
                section {
                    p { (text.square_how) }
                    div.fields { @for place in SQUARE { (parts::place(model, place)) } }
                    @for (side, place) in SQUARE.into_iter().enumerate() { (square(model, side, place)) }
                    p { (text.fastenings) }
                }
            }
            p.hint { (text.source) }
            (parts::go_on(model))
        }
    }
}

fn answer(model: &Model, solved: &Solved) -> Markup {
    let text = &model.words().tracks;
    let good = solved.found.holds();
    let (spacing, diagonals) = differs(model, solved.found);
    html! {
        section {
            @if good {
                (parts::verdict("clear", text.holds))
            } @else {
                (parts::verdict("recheck", text.out))
            }
            p { ((text.stands)(&spacing, diagonals.as_deref())) }
            @if diagonals.is_none() { p { (text.no_diagonals) } }
            figure.picture {
                @let sheet = Sheet { id: "pair", speaker: model.speaker() };
                (PreEscaped(hangtrue_draw::hang::pair(sheet, solved)))
            }
            @if !good { (shims(model, solved)) }
            p { ((text.target)(&model.told(solved.target))) }
        }
    }
}

fn differs(model: &Model, stand: Stand) -> (String, Option<String>) {
    let told = |length: Length| model.told(length.abs());
    (told(stand.spread), stand.diagonals.map(told))
}

fn shims(model: &Model, solved: &Solved) -> Markup {
    let text = &model.words().tracks;
    let (spacing, diagonals) = differs(model, solved.result);
    html! {
        h2 { (text.shims) }
        ul.shims {
            @for side in Side::ALL {
                @for level in Level::ALL {
                    @let shim = solved.shims.at(side, level);
                    @if shim > Length::ZERO {
                        @let by = model.speaker().length(shim.round_to(model.unit().finest()));
                        li { ((text.shim)(side.index(), level.index(), &by)) }
                    }
                }
            }
        }
        p {
            ((text.result)(&spacing, diagonals.as_deref()))
            " " (text.result_holds[usize::from(!solved.result.holds())])
        }
    }
}

fn upper(model: &Model, solved: &Solved) -> Markup {
    let all = moves(model.record.built.upper(model.unit()), solved.target);
    html! {
        ul.rows {
            @for one in &all {
                li.recheck[!one.holds] {
                    span { ((model.words().tracks.station)(one.station)) }
                    b { (moved(model, one)) }
                }
            }
        }
    }
}

fn moved(model: &Model, one: &Move) -> String {
    let text = &model.words().tracks;
    if one.holds {
        return text.as_is.to_owned();
    }
    let [left, right] =
        one.each.map(|by| model.speaker().length(by.abs().round_to(model.unit().finest())));
    let inward = one.each.iter().any(|by| *by > Length::ZERO);
    if inward { (text.inward)(&left, &right) } else { (text.outward)(&left, &right) }
}

/// 1/8 in at 60 in is a quarter of a degree.
const SQUARE_WITHIN: f64 = 0.25;

fn square(model: &Model, side: usize, place: Place) -> Markup {
    let text = &model.words().tracks;
    let Some(across) = model.record.built.read(place, model.unit()) else { return html! {} };
    let told = |off: f64| model.speaker().decimal(off.abs(), 1);
    let (kind, found) = match off_square(across) {
        None => ("stop", text.no_triangle.to_owned()),
        Some(off) if off.abs() < SQUARE_WITHIN => ("clear", text.square.to_owned()),
        Some(off) if off.abs() > OFF_MOST => ("stop", (text.off_far)(&told(off))),
        Some(off) => ("recheck", (text.off)(&told(off), off > 0.0)),
    };
    parts::verdict(kind, &(text.on_side)(side, &found))
}
