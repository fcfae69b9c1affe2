//! The four numbers large, every reading, every finding: shared by the check, the
//! order and an opened order.

use super::Scene;
use crate::event::Action;
use crate::field::Field;
use crate::model::{confirm_key, confirmation};
use crate::problems;
use hangtrue_core::order::Number;
use hangtrue_core::profile::Take;
use hangtrue_core::say::capital;
use hangtrue_core::{Dimension, Entry, Finding, Severity, Spot};
use maud::{Markup, html};

/// The four numbers, each with why it is what it is.
pub(super) fn numbers(scene: Scene<'_>) -> Markup {
    let speaker = scene.model.speaker();
    html! {
        dl.numbers {
            @for dimension in Dimension::ALL {
                div {
                    dt { (speaker.dimension(dimension)) }
                    @if let Some(number) = scene.report.numbers.get(dimension) {
                        dd.value { (speaker.length(number.ordered)) }
                        dd.why { (why(scene, number)) }
                    } @else {
                        dd.value.none { (scene.later().check.not_read) }
                    }
                }
            }
        }
    }
}

fn why(scene: Scene<'_>, number: &Number) -> Markup {
    let survey = &scene.model.order.survey;
    let count = survey.of(number.dimension).count();
    let place = scene.model.speaker().place(number.spot);
    let found = scene.model.speaker().length(number.as_found);
    let mean = scene.model.profile.take == Take::Mean && count > 1;
    let tightest = survey.tightest(number.dimension).map_or(number.as_found, |(_, read)| read);
    let changed = scene.report.preparation.change(number.dimension) != hangtrue_core::Length::ZERO;
    html! {
        @if mean {
            ((scene.later().dealer.mean)(count, &found, place, &scene.model.speaker().length(tightest)))
        } @else {
            ((scene.later().check.tightest)(count, place, &found))
        }
        @if changed {
            " · " ((scene.later().check.as_found)(&found)) ". "
            strong { (scene.later().check.remeasure) }
        }
    }
}

/// Every reading as it was typed, struck ones struck; with a way to change each
/// where `change` says so.
pub(super) fn readings(scene: Scene<'_>, change: bool) -> Markup {
    let speaker = scene.model.speaker();
    let survey = &scene.model.order.survey;
    let read = Spot::ALL.into_iter().filter(|spot| !survey.entries(*spot).is_empty());
    html! {
        ul.read {
            @for spot in read {
                @for (index, entry) in survey.entries(spot).iter().enumerate() {
                    li.struck[entry.struck] {
                        span.spot {
                            (capital(speaker.spot(spot)))
                            @if !entry.struck { " " (super::judge::state(scene, spot)) }
                        }
                        (typed(scene, entry))
                        @if change && !entry.struck {
                            (super::parts::quiet_about(
                                &Action::Change(Field { spot, index }),
                                scene.text().button.change,
                                speaker.spot(spot),
                            ))
                        }
                    }
                }
            }
        }
    }
}

fn typed(scene: Scene<'_>, entry: &Entry) -> Markup {
    html! {
        span.typed {
            @match (&entry.read, entry.struck) {
                (_, true) => { del { (entry.text) } " " small { (scene.later().check.struck) } }
                (Ok(length), false) => (scene.model.speaker().length(*length)),
                (Err(_), false) => (entry.text),
            }
        }
    }
}

/// Every finding; a question has a checkbox where `ask` says so.
pub(super) fn findings(scene: Scene<'_>, ask: bool) -> Markup {
    html! {
        ul.findings {
            @for finding in &scene.report.findings {
                li class=(finding.severity.key()) { (one(scene, finding, ask)) }
            }
        }
    }
}

/// Every finding under its heading; nothing where nothing was found.
pub(super) fn found(scene: Scene<'_>) -> Markup {
    html! {
        @if !scene.report.findings.is_empty() {
            section {
                h2 { (scene.later().check.findings) }
                (findings(scene, false))
            }
        }
    }
}

fn one(scene: Scene<'_>, finding: &Finding, ask: bool) -> Markup {
    let speaker = scene.model.speaker();
    let key = confirm_key(&confirmation(finding));
    let recheck = finding.severity == Severity::Recheck;
    let confirmed = scene.model.confirmed(finding);
    let suspect = problems::field(scene.model, scene.report, finding)
        .filter(|_| finding.severity > Severity::Note);
    html! {
        p.what { (speaker.say(&finding.message)) }
        @for hint in &finding.hints { p.hint { (speaker.say(hint)) } }
        @if ask {
            @if let Some(field) = suspect {
                @let (action, word) = if scene.model.typed(field).trim().is_empty() {
                    (Action::Change(field), scene.later().check.measure)
                } else {
                    (Action::Reread(field), scene.text().button.read_again)
                };
                (super::parts::quiet_about(&action, word, speaker.spot(field.spot)))
            }
            @if recheck {
                label.confirm {
                    input type="checkbox" data-act=(Action::Confirm(key).code()) checked[confirmed];
                    span { (scene.later().check.confirm) }
                }
            }
        } @else if confirmed {
            p.hint { (scene.later().check.confirmed) }
        }
    }
}
