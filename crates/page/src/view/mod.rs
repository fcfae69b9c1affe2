//! `view`: what the model looks like, as markup.

mod check;
pub(crate) mod dealer;
mod dimension;
mod drafts;
mod frame;
mod judge;
mod notices;
mod opened;
mod order;
pub(crate) mod parts;
mod picture;
mod print;
mod problems;
mod proof;
mod qr;
mod reading;
mod send;
mod start;
mod voice;

use crate::model::{Environment, Model};
use crate::problems::Problem;
use crate::rest;
use crate::step::Step;
use crate::text::{Later, Text};
use hangtrue_core::check::Report;
use hangtrue_core::say::Language;
use hangtrue_core::short::digits;
use maud::{Markup, html};

/// What a screen is drawn from: the model, and what follows from it once.
#[derive(Clone, Copy)]
pub(crate) struct Scene<'a> {
    pub(crate) model: &'a Model,
    report: &'a Report,
    /// What stands against going on; empty until Continue was pressed.
    problems: &'a [Problem],
}

impl Scene<'_> {
    /// The language the page speaks.
    const fn language(self) -> Language {
        self.model.environment.language
    }

    /// Whether a dealer has rules for this page, be they read or not.
    const fn ruled(self) -> bool {
        !self.model.profile.is_built_in() || self.model.profile_fault.is_some()
    }

    /// The words of the later screens.
    fn later(self) -> &'static Later {
        rest::words(self.language())
    }

    /// The page's words.
    fn text(self) -> &'static Text {
        Text::of(self.language())
    }
}

/// The whole screen as markup. The same model gives the same markup.
#[must_use]
pub fn view(model: &Model) -> String {
    drawn(model, &model.shown())
}

/// The model without the reading on offer.
pub(crate) use proof::before;

fn drawn(model: &Model, report: &Report) -> String {
    let problems = if model.told { rest::problems(model, report) } else { Vec::new() };
    let scene = Scene { model, report, problems: &problems };
    let body = match model.step {
        Step::Start => start::view(scene),
        Step::Frame => frame::view(scene),
        Step::Width | Step::Height | Step::Header | Step::Bow => dimension::view(scene),
        _ if model.environment.partial => html! {},
        _ => rest::body(scene),
    };
    page(scene, &body).into_string()
}

/// Whose rules these are, and what the dealer says on the first screen.
pub(crate) fn dealer_at_start(scene: Scene<'_>) -> [Markup; 2] {
    [dealer::notice(scene), dealer::says(scene, &scene.model.profile.start)]
}

pub(crate) use dealer::doors;
pub(crate) use drafts::link as drafts;
pub(crate) use frame::{minimums_by_rules, to_be_built, to_build};
pub(crate) use problems::{at_field, summary};

/// The screens of the second module; see [`crate::rest`].
pub(crate) fn later(scene: Scene<'_>) -> Markup {
    match scene.model.step {
        Step::Proof => proof::view(scene),
        Step::Questions => dealer::questions(scene),
        Step::Check => check::view(scene),
        Step::Send => send::view(scene),
        Step::Opened => opened::view(scene),
        Step::Scan => qr::view(scene),
        Step::Voice => voice::view(scene),
        Step::Drafts => drafts::view(scene),
        _ => html! {},
    }
}

/// The verdict's word.
pub(crate) use check::word;
pub(crate) use notices::{later as notices, newer};
pub(crate) use parts::languages;
pub(crate) use reading::in_the_other_unit;

/// The first screen of a new survey: what the page shows before any script has run.
#[must_use]
pub fn first_screen() -> String {
    view(&Model::new(Environment::default()))
}

/// The order in `model` as one that was sent, without the ways to take it over; `judged`
/// says whether it came with the verdict that its writer saw.
pub(crate) fn opened(model: &Model, judged: bool) -> Markup {
    let report = model.report();
    opened::body(Scene { model, report: &report, problems: &[] }, judged)
}

/// The order in `model` on one sheet of paper.
pub(crate) fn sheet(model: &Model) -> Markup {
    let report = model.report();
    print::sheet(Scene { model, report: &report, problems: &[] }, &model.order)
}

fn page(scene: Scene<'_>, body: &Markup) -> Markup {
    let step = scene.model.step;
    html! {
        header.top {
            @if step.back().is_some() || matches!(step, Step::Scan | Step::Voice | Step::Drafts) {
                (parts::quiet("back", scene.text().button.back))
            } @else {
                span.name { "Hangtrue" }
            }
            @if step == Step::Start {
                (languages(scene.language()))
            }
            @if let Some((at, of)) = progress(scene.model) {
                div.progress {
                    span { ((scene.text().progress)(at, of)) }
                    progress value=(digits(at as u64)) max=(digits(of as u64)) aria-hidden="true" {}
                }
            }
        }
        (notices::view(scene))
        main #main class={ "step-" (step.slug()) } {
            (body)
        }
        @if step != Step::Start {
            footer.foot { (languages(scene.language())) }
        }
        p.visually-hidden #spoken role="status" aria-live="polite" { (scene.model.spoken) }
    }
}

/// Which question this is, of how many; one more reading counts with the bows.
fn progress(model: &Model) -> Option<(usize, usize)> {
    let asks = usize::from(!model.profile.questions.is_empty());
    let all = 8_usize.saturating_add(asks);
    let at = match model.step {
        Step::Start | Step::Opened | Step::Scan | Step::Voice | Step::Drafts => return None,
        Step::Frame => 1,
        Step::Width => 2,
        Step::Height => 3,
        Step::Header => 4,
        Step::Bow => 5,
        Step::Proof => 6,
        Step::Questions => 7,
        Step::Check => 7_usize.saturating_add(asks),
        Step::Send => all,
    };
    Some((at, all))
}

#[cfg(test)]
mod tests {
    use super::*;
    use hangtrue_core::Spot;

    /// A frame to be built down, readings that differ, and one that slipped by a foot.
    const READ: [(Spot, &str); 8] = [
        (Spot::WidthMiddle, "92 3/16"),
        (Spot::WidthLow, "80 3/16"),
        (Spot::HeightCenter, "101 1/2"),
        (Spot::HeightLeft, "104"),
        (Spot::HeaderLeft, "6 1/2"),
        (Spot::HeaderRight, "5 1/2"),
        (Spot::PostLeft, "1"),
        (Spot::BowFirst, "1 1/4"),
    ];

    #[test]
    fn until_continue_is_pressed_the_first_screens_show_nothing_that_the_judge_says() {
        let mut model = Model::new(Environment::default());
        for (spot, text) in READ {
            model.order.survey.set(spot, 0, text);
        }
        assert!(model.report().judgement.alarm);
        let first = [Step::Start, Step::Frame, Step::Width, Step::Height, Step::Header, Step::Bow];
        for step in first {
            for prepared in [false, true] {
                (model.step, model.order.survey.prepared) = (step, prepared);
                assert_eq!(view(&model), drawn(&model, &model.report()), "{step:?}");
            }
        }
        // Then they do.
        (model.step, model.told) = (Step::Width, true);
        assert_ne!(drawn(&model, &model.by_rules()), drawn(&model, &model.report()));
    }
}
