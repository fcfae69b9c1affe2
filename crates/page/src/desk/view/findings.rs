//! What to ask next, and what the check makes of the numbers so far.

use super::Scene;
use crate::desk::ask::Ask;
use crate::desk::event::Action;
use crate::field::Field;
use hangtrue_core::Severity;
use hangtrue_core::check::Verdict;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    html! {
        (ask(scene))
        (found(scene))
    }
}

/// The one question, and the ways to take the answer.
fn ask(scene: Scene<'_>) -> Markup {
    let text = &scene.desk().phone;
    let speaker = scene.model.speaker();
    let answered = !matches!(scene.ask, Ask::Nothing | Ask::Say(_) | Ask::SayAgain { .. });
    html! {
        section.question aria-labelledby="question-heading" {
            h2 #question-heading { (text.ask) }
            p.sentence { ((scene.desk().ask)(scene.ask, speaker)) }
            @if answered {
                div.row {
                    @if let Ask::Meant { spot, meant, .. } | Ask::Misheard { spot, meant, .. } = scene.ask {
                        @let typed = speaker.language.typed(&meant.text(speaker.unit));
                        @let field = Field::first(*spot);
                        button type="button" data-act=(Action::Use(field, typed).code()) {
                            ((text.it_is)(&speaker.length(*meant)))
                        }
                    }
                    button type="button" data-act=(Action::Stands.code()) {
                        (match scene.ask {
                            Ask::Take { .. } | Ask::Required(_) => text.cannot,
                            _ => text.stands,
                        })
                    }
                }
            }
        }
    }
}

/// The verdict and every finding: nothing before anything was typed.
fn found(scene: Scene<'_>) -> Markup {
    let speaker = scene.model.speaker();
    let report = scene.report;
    // What was not said yet is asked for, not found.
    let found: Vec<_> = report.findings.iter().filter(|f| f.rule != "missing").collect();
    let severity = found.iter().map(|finding| finding.severity).max();
    let verdict = severity.map_or(Verdict::Clear, Verdict::from);
    // Nothing is clear that was not heard as it was said.
    let heard = !matches!(scene.ask, Ask::Misheard { .. });
    let verdict = if heard { verdict } else { verdict.max(Verdict::Recheck) };
    html! {
        section.found aria-labelledby="found-heading" {
            h2 #found-heading { (scene.desk().phone.found) }
            @if scene.model.phone.begun() {
                p class={ "verdict " (verdict.key()) } {
                    (if report.numbers.complete() || verdict != Verdict::Clear {
                        word(scene, verdict)
                    } else {
                        scene.desk().phone.so_far
                    })
                }
                @if report.preparation.needed() { (build(scene)) }
                ul.findings {
                    @for finding in found {
                        li class=(finding.severity.key()) {
                            p.what { (speaker.say(&finding.message)) }
                            @if finding.severity > Severity::Note {
                                @for hint in &finding.hints { p.hint { (speaker.say(hint)) } }
                            }
                        }
                    }
                }
            } @else {
                p.hint { (scene.desk().phone.nothing_yet) }
            }
        }
    }
}

/// The numbers that the door is ordered to, where building changes them.
fn build(scene: Scene<'_>) -> Markup {
    let speaker = scene.model.speaker();
    html! {
        p { (scene.desk().phone.after_building) }
        ul {
            @for number in scene.report.numbers.0.iter().flatten() {
                @if number.ordered != number.as_found {
                    li {
                        (speaker.dimension(number.dimension)) (scene.text().colon)
                        b { (speaker.length(number.ordered)) }
                    }
                }
            }
        }
    }
}

/// The verdict's word.
pub(super) fn word(scene: Scene<'_>, verdict: Verdict) -> &'static str {
    crate::view::word(scene.later(), verdict)
}
