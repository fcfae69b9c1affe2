//! What the desk looks like, as markup.

mod findings;
mod phone;
mod sent;
mod voice;

use super::ask::Ask;
use super::model::Model;
use crate::text::Text;
use crate::text::desk::Desk;
use crate::view::languages;
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
    const fn text(self) -> &'static Text {
        Text::of(self.model.environment.language)
    }

    /// The desk's own words.
    const fn desk(self) -> &'static Desk {
        Desk::of(self.model.environment.language)
    }
}

/// The whole desk as markup. The same model gives the same markup.
#[must_use]
pub fn view(model: &Model) -> String {
    let report = model.phone.report(&model.profile);
    let ask = model.phone.ask(&report);
    let scene = Scene { model, report: &report, ask: &ask };
    page(scene).into_string()
}

fn page(scene: Scene<'_>) -> Markup {
    html! {
        header.top {
            span.name { "Hangtrue" }
            a href="./" { (scene.desk().measure) }
            (languages(scene.model.environment.language))
        }
        main #main.desk {
            h1 #heading tabindex="-1" { (scene.desk().heading) }
            div.call {
                div.heard {
                    (phone::view(scene))
                    (voice::view(scene))
                }
                (findings::view(scene))
            }
            (sent::view(scene))
            p.hint { (scene.text().start.privacy) }
            (sent::paper(scene))
        }
        p.visually-hidden #spoken role="status" aria-live="polite" { (scene.model.spoken) }
    }
}
