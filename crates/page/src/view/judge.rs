//! What the judge sees: how each reading stands, what to read next, what cannot be
//! seen, and the working.

use super::{Scene, parts, picture};
use crate::event::Action;
use hangtrue_core::judge::{AdjustedReading, State};
use hangtrue_core::say::JudgeSays;
use hangtrue_core::say::capital;
use hangtrue_core::{Dimension, Finding, Length, Spot, Unit};
use hangtrue_draw::Residual;
use maud::{Markup, html};

/// How the reading at `spot` stands, in one word. That it agrees is said where another reading checks
/// it, and nothing that was found is about it.
pub(super) fn state(scene: Scene<'_>, spot: Spot) -> Markup {
    let judgement = &scene.report.judgement;
    let checked = |one: &AdjustedReading| one.spot == spot && one.least_detectable.is_some();
    let found = |finding: &Finding| finding.spots.contains(&spot);
    let agrees = judgement.adjusted.iter().any(checked) && !scene.report.findings.iter().any(found);
    let states = judgement.states.iter();
    let mut states = states.filter(|(at, state)| *at == spot && (agrees || *state != State::Fits));
    let state = states.next().map(|(_, state)| *state);
    html! {
        @if let Some(state) = state {
            span class={ "state " (state.key()) } { (word(scene, state)) }
        }
    }
}

fn word(scene: Scene<'_>, state: State) -> &'static str {
    let text = &scene.later().judge;
    match state {
        State::Fits => text.fits,
        State::Doubtful => text.doubtful,
        State::Missing => text.missing,
        State::Settles => text.settles,
    }
}

/// The frame's lean exaggerated, and which tape does not fit; nothing where no
/// reading checks another.
pub(super) fn residuals(scene: Scene<'_>) -> Markup {
    let adjusted = &scene.report.judgement.adjusted;
    let checked = adjusted.iter().any(|reading| reading.least_detectable.is_some());
    let shown: Vec<Residual> = adjusted.iter().filter_map(|one| residual(scene, one)).collect();
    html! {
        @if checked { (picture::residuals(scene, &shown)) }
    }
}

fn residual(scene: Scene<'_>, one: &AdjustedReading) -> Option<Residual> {
    let judgement = &scene.report.judgement;
    let entry = scene.model.order.survey.entries(one.spot).get(one.index)?;
    let doubtful = judgement.states.contains(&(one.spot, State::Doubtful));
    Some(Residual {
        spot: one.spot,
        reading: entry.read.as_ref().ok().copied()?,
        residual: Length::from_mm_f64(one.residual),
        error: Length::from_mm_f64(one.error),
        doubtful,
    })
}

/// The readings worth taking next, the first with its reason; nothing where none is.
pub(super) fn next(scene: Scene<'_>) -> Markup {
    let next = scene.report.judgement.next.first();
    html! {
        @if let Some(next) = next {
            section.next {
                h2 { (scene.later().judge.next) }
                p {
                    (scene.model.speaker().say(&JudgeSays::Next {
                        spot: next.spot,
                        why: next.why,
                        checks: next.checks.clone(),
                    }.into()))
                }
                (parts::button(&Action::Take(next.spot), scene.later().judge.take))
            }
        }
    }
}

/// What would go unnoticed in each ordered number: the line that makes a dealer trust the rest.
pub(super) fn unseen(scene: Scene<'_>) -> Markup {
    let survey = &scene.model.order.survey;
    let unseen = scene.report.judgement.unseen;
    html! {
        section {
            h2 { (scene.later().judge.unseen) }
            ul {
                @for (dimension, least) in Dimension::ALL.into_iter().zip(unseen) {
                    @let readings = survey.of(dimension).count();
                    @if readings > 0 {
                        li {
                            (scene.model.speaker().say(
                                &JudgeSays::Unseen { dimension, least, readings }.into()
                            ))
                        }
                    }
                }
            }
            p.hint { (scene.later().judge.never) }
        }
    }
}

/// The figures, for who asks for them. All in millimetres.
pub(super) fn working(scene: Scene<'_>) -> Markup {
    let text = &scene.later().judge;
    let speaker = scene.model.speaker();
    let judgement = &scene.report.judgement;
    html! {
        @if !judgement.adjusted.is_empty() {
            details.working {
                summary { (text.working) }
                p.hint { (text.working_lede) }
                div.scroll tabindex="0" role="region" aria-label=(text.working) {
                    table {
                        thead {
                            tr {
                                @for (heading, class) in text.columns.iter().zip(COLUMNS) {
                                    th scope="col" class=(class) { (heading) }
                                }
                            }
                        }
                        tbody {
                            @for one in &judgement.adjusted {
                                tr {
                                    th scope="row" { (capital(speaker.spot(one.spot))) }
                                    @for figure in figures(scene, one) { td { (figure) } }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}

const COLUMNS: [&str; 6] = ["name", "figure", "figure", "figure", "figure", "figure"];

fn figures(scene: Scene<'_>, one: &AdjustedReading) -> [String; 5] {
    let entry = scene.model.order.survey.entries(one.spot).get(one.index);
    let speaker = scene.model.speaker();
    let decimal = |value| speaker.decimal(value, 1);
    let read = entry.and_then(|entry| entry.read.as_ref().ok().copied());
    [
        read.map_or_else(String::new, |read| speaker.length_in(read, Unit::Millimetre)),
        decimal(one.value),
        decimal(one.sigma),
        decimal(one.w),
        one.least_detectable.map_or_else(|| "–".to_owned(), decimal),
    ]
}
