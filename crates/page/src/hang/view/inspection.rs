//! The last inspection.

use super::parts;
use crate::hang::model::Model;
use crate::hang::work::turns_text;
use crate::view::parts::pick;
use hangtrue_core::Length;
use hangtrue_core::hang::inspection::{Bounds, Check, Measure, Outcome, bounds};
use maud::{Markup, html};

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().inspection;
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            p.lede { (text.lede) }
            (parts::caution(text.caution))
            ol.checks { @for check in Check::ALL { li { (point(model, check)) } } }
            (outcome(model))
            p.hint { (text.source) }
            (parts::go_on(model))
        }
    }
}

/// What it comes to, in one line.
pub(super) fn outcome(model: &Model) -> Markup {
    let text = &model.words().inspection;
    let inspection = &model.record.inspection;
    let [passed, open, failed] = text.outcome;
    html! {
        @match inspection.outcome(model.against()) {
            Outcome::Passed => (parts::verdict("clear", passed)),
            Outcome::Open => (parts::verdict("recheck", open)),
            Outcome::Failed => (parts::verdict("stop", failed)),
        }
        p.hint { ((text.done)(inspection.done(), Check::ALL.len())) }
    }
}

fn point(model: &Model, check: Check) -> Markup {
    let text = &model.words().inspection;
    let name = ["check.", check.key()].concat();
    let label = (text.check)(check);
    let limit = limit(model, check);
    let [yes, no] = model.words().yes_no;
    html! {
        @if check.measure() == Measure::Eye {
            (pick(&name, label, &[("yes", yes), ("no", no)], model.fields.get(&name)))
        } @else {
            (parts::field(model, &name, label, &limit))
        }
        @let [holds, fails] = text.finding;
        @match model.record.inspection.finding(check, model.against()) {
            Some(true) => (parts::verdict("clear", holds)),
            Some(false) => (parts::verdict("stop", fails)),
            None => {}
        }
    }
}

fn limit(model: &Model, check: Check) -> String {
    let text = &model.words().inspection;
    match bounds(check, model.against()) {
        Some(Bounds::Lengths(Length::ZERO, most)) => (text.most)(&model.speaker().length(most)),
        Some(Bounds::Lengths(least, most)) => {
            (text.between)(&model.speaker().length(least), &model.speaker().length(most))
        }
        Some(Bounds::WeightMost(most)) => (text.most)(&model.told_weight(most)),
        Some(Bounds::Turns(turns)) => (text.as_wound)(&turns_text(turns)),
        Some(Bounds::CountLeast(least)) => (text.least)(&least.to_string()),
        Some(Bounds::InOrder) | None => String::new(),
    }
}
