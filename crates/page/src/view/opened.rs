//! An order that somebody sent.

use super::{Scene, check, dealer, frame, judge, order, parts, picture, print};
use crate::address::{self, DESK_PAGE};
use crate::event::Action;
use crate::model::{Model, Unopened};
use crate::step::Step;
use crate::text::{Later, Opened};
use hangtrue_core::Dimension;
use hangtrue_core::order::Order;
use hangtrue_link::LinkError;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    match &scene.model.opened {
        Some(Ok(order)) => whole(scene.model, order),
        Some(Err(why)) => {
            let language = scene.model.speaker().language;
            let (heading, told) = match why {
                Unopened::Link(error) => {
                    let advice = hangtrue_link::say::link(language, *error);
                    (scene.later().opened.damaged, [&advice.what, " ", advice.ask].concat())
                }
                Unopened::Record(_) => {
                    let advice = hangtrue_link::say::link(language, LinkError::Record);
                    (scene.later().opened.record, advice.what)
                }
                Unopened::File => {
                    (scene.later().opened.damaged_file, scene.later().opened.no_order.to_owned())
                }
            };
            html! {
                (parts::heading(heading))
                p.lede { (told) }
                @if let Unopened::Record(payload) = why {
                    p { a.button href=(address::record(payload)) { (scene.later().opened.to_record) } }
                }
                @if *why == Unopened::File { p { a.alone href=(DESK_PAGE) { (scene.text().start.desk) } } }
                p { (parts::to(Step::Start, scene.text().start.heading)) }
            }
        }
        None => html! { p { (parts::to(Step::Start, scene.text().start.heading)) } },
    }
}

fn whole(model: &Model, order: &Order) -> Markup {
    // The opened order in the place of the draft, for this screen alone.
    let shown = Model { order: order.clone(), ..model.clone() };
    let report = shown.report();
    let scene = Scene { model: &shown, report: &report, problems: &[] };
    let text = &scene.later().opened;
    html! {
        form data-act="adopt" {
            (parts::heading(text.heading))
            (body(scene, true))
            @if model.replacing {
                (replace(model))
            }
            div.actions {
                @if !model.replacing { (parts::submit(text.adopt)) }
                (parts::button(&Action::Print, scene.text().button.print))
                @if model.has_draft() { (parts::to(Step::Check, text.own)) }
            }
        }
        (print::sheet(scene, order))
    }
}

/// The order of `scene`, with every rule run again; `judged` says whether it came with the
/// verdict that its writer saw.
pub(super) fn body(scene: Scene<'_>, judged: bool) -> Markup {
    let text = &scene.later().opened;
    let order = &scene.model.order;
    let word = |verdict| check::word(scene.later(), verdict);
    html! {
        (check::verdict(scene, scene.report.verdict))
        p.lede { (text.lede) }
        @if judged && order.claimed != scene.report.verdict {
            p.summary.stop {
                ((text.disagrees)(word(order.claimed), word(scene.report.verdict)))
            }
        }
        (dealer::other_rules(scene, order))
        (particulars(text, order))
        // Before the numbers that it is about.
        (order::found(scene))
        div.columns {
            (order::numbers(scene))
            (picture::order(scene))
        }
        @if scene.report.preparation.needed() { (frame::to_be_built(scene)) }
        div.columns {
            div {
                section {
                    h2 { (text.readings) }
                    (order::readings(scene, false))
                }
                (dealer::answers(scene, false))
            }
            div {
                (judge::residuals(scene))
                (judge::unseen(scene))
            }
        }
        (judge::working(scene))
    }
}

/// The question before the opened order takes the draft's place, which is named.
fn replace(model: &Model) -> Markup {
    let text = &Later::of(model.environment.language).handover.replace;
    let report = model.report();
    let numbers = Dimension::ALL.iter().filter_map(|d| report.numbers.ordered(*d));
    let line: Vec<String> = numbers.map(|number| model.speaker().length(number)).collect();
    html! {
        div.summary #replace tabindex="-1" role="group" aria-labelledby="replace-question" {
            h2 #replace-question { (text.question) }
            p { ((text.lost)(&line.join(" × "))) }
            div.actions {
                (parts::button(&Action::Replace, text.yes))
                (parts::button(&Action::Keep, text.no))
            }
        }
    }
}

fn particulars(text: &Opened, order: &Order) -> Markup {
    html! {
        ul.particulars {
            @if !order.vehicle.is_empty() { li { strong { (order.vehicle) } } }
            @if !order.note.is_empty() { li.note { (order.note) } }
            @if !order.contact.is_empty() { li { (order.contact) } }
            @if let Some(date) = order.date { li { ((text.written)(&date.text())) } }
            li { ((text.frame)(order.survey.prepared)) }
            @if let Some(still_in) = order.old_door_in { li { ((text.old_door)(still_in)) } }
        }
    }
}
