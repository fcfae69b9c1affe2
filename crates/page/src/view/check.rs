//! All readings, what the order will say and why, every finding.

use super::{Scene, dealer, frame, judge, order, parts};
use crate::text::Later;
use hangtrue_core::check::Verdict;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = &scene.later().check;
    let unit = scene.model.order.survey.unit;
    let step = scene.model.profile.step(unit);
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            (verdict(scene, scene.report.verdict))
            (parts::problems(scene))
            div.columns {
                // What is to be done comes first: on a phone the rest is a long way down.
                section {
                    h2 { (text.findings) }
                    @if scene.report.findings.is_empty() { p { (text.clear) } }
                    (order::findings(scene, true))
                    (judge::next(scene))
                }
                section {
                    h2 { (text.numbers) }
                    (order::numbers(scene))
                    p.hint { ((text.rounding)(&scene.model.speaker().length(step))) }
                    (frame::building(scene))
                }
            }
            div.columns {
                div {
                    @if scene.model.has_draft() {
                        section {
                            h2 { (text.readings) }
                            (order::readings(scene, true))
                        }
                    }
                    (dealer::answers(scene, true))
                }
                div {
                    (judge::residuals(scene))
                    (judge::unseen(scene))
                }
            }
            (judge::working(scene))
            (parts::submit(text.send))
        }
    }
}

/// The verdict in one word, with a shape of its own so that it is not told by colour alone.
pub(super) fn verdict(scene: Scene<'_>, verdict: Verdict) -> Markup {
    html! { p class={ "verdict " (verdict.key()) } { (word(scene.later(), verdict)) } }
}

/// The verdict's word.
pub(crate) const fn word(text: &'static Later, verdict: Verdict) -> &'static str {
    let [clear, recheck, stop] = text.check.verdict;
    match verdict {
        Verdict::Clear => clear,
        Verdict::Recheck => recheck,
        Verdict::Stop => stop,
    }
}
