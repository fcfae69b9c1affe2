//! What the desk looks like, as markup.

mod findings;
mod many;
mod phone;
mod sent;
mod voice;

use super::ask::Ask;
use super::many::Action;
use super::model::{Model, Screen};
use crate::text::desk::Desk;
use crate::text::{Later, Text};
use crate::view::{dealer, languages, newer};
use hangtrue_core::check::Report;
use maud::{Markup, html};

/// What the desk is drawn from: the model, and what follows from it once.
#[derive(Clone, Copy)]
struct Scene<'a> {
    model: &'a Model,
    report: &'a Report,
    ask: &'a Ask,
}

impl Scene<'_> {
    /// The words that the desk shares with the walk.
    fn text(self) -> &'static Text {
        Text::of(self.model.environment.language)
    }

    /// The words that it shares with the walk's later screens.
    const fn later(self) -> &'static Later {
        Later::of(self.model.environment.language)
    }

    /// The desk's own words.
    const fn desk(self) -> &'static Desk {
        Desk::of(self.model.environment.language)
    }
}

/// The whole desk as markup. The same model gives the same markup.
#[must_use]
pub fn view(model: &Model) -> String {
    let language = model.environment.language;
    let desk = Desk::of(language);
    html! {
        header.top {
            span.name { "Hangtrue" }
            a href="./" { (desk.measure) }
            (languages(language))
        }
        main #main.desk {
            @if model.newer { (newer(language, desk.newer)) }
            div.row.head {
                h1 #heading tabindex="-1" { (desk.heading) }
                (screens(model, desk))
            }
            (dealer::rules(language, &model.profile, model.profile_fault.as_deref()))
            @match model.screen {
                Screen::One => (one(model)),
                Screen::Many => (many::view(model)),
            }
            p.hint { (Text::of(language).start.privacy) }
        }
        p.visually-hidden #spoken role="status" aria-live="polite" { (model.spoken) }
    }
    .into_string()
}

/// One order, or many at once.
fn screens(model: &Model, desk: &Desk) -> Markup {
    let text = &desk.many;
    html! {
        div.screens role="group" aria-label=(text.screens) {
            @for (screen, action, name) in
                [(Screen::One, Action::One, text.one), (Screen::Many, Action::Many, text.many)]
            {
                button type="button" data-key=(action.code()) data-act=(action.code())
                    aria-pressed=(model.screen == screen) { (name) }
            }
        }
    }
}

fn one(model: &Model) -> Markup {
    let report = model.phone.report(&model.profile);
    let ask = model.ask_of(&report);
    let scene = Scene { model, report: &report, ask: &ask };
    html! {
        div.call {
            (phone::view(scene))
            // What to ask stands before what to read back: nobody reads back a doubtful number.
            div.answers {
                (findings::view(scene))
                (voice::view(scene))
            }
        }
        (sent::view(scene))
        (sent::paper(scene))
    }
}
