//! The summary of what stands against going on.

use super::Scene;
use super::parts::id_of_problems;
use crate::event::Action;
use crate::problems::Problem;
use hangtrue_core::say::Message;
use maud::{Markup, html};

/// The summary, which takes the focus after Continue.
pub(crate) fn summary(scene: Scene<'_>) -> Markup {
    let blocks = scene.problems.iter().any(Problem::blocks);
    html! {
        section.summary.stop[blocks] #problems tabindex="-1" aria-labelledby="problems-heading" {
            h2 #problems-heading {
                (if blocks { scene.text().field.problems } else { scene.text().field.questions })
            }
            ul {
                @for problem in scene.problems {
                    li { (link(scene, problem)) }
                }
            }
        }
    }
}

fn link(scene: Scene<'_>, problem: &Problem) -> Markup {
    let sentence = scene.model.speaker().say(&problem.finding.message);
    html! {
        @match problem.field {
            Some(field) => {
                button.quiet type="button" data-act=(Action::Change(field).code()) { (sentence) }
            }
            None => @match &problem.finding.message {
                Message::Answer(says) => {
                    button.quiet type="button" data-act=(Action::Answer(says.key.clone()).code()) {
                        (sentence)
                    }
                }
                _ => (sentence),
            },
        }
    }
}

/// The problems of the field of that id, with what to do about each. The field is described by
/// [`id_of_problems`], so that who hears the page hears them at the field, too.
pub(crate) fn at_field(scene: Scene<'_>, field: &str, here: &[&Problem]) -> Markup {
    html! {
        div id=(id_of_problems(field)) { @for problem in here { (one(scene, problem)) } }
    }
}

fn one(scene: Scene<'_>, problem: &Problem) -> Markup {
    let speaker = scene.model.speaker();
    html! {
        div.problem.stop[problem.blocks()] {
            p.what { (speaker.say(&problem.finding.message)) }
            @for hint in &problem.finding.hints {
                p.hint { (speaker.say(hint)) }
            }
            @if let Some(field) = problem.field {
                @for text in problem.suggestions() {
                    @let typed = speaker.language.typed(text);
                    button type="button" data-act=(Action::Use(field, typed).code()) {
                        ((scene.text().button.use_text)(&speaker.language.written(text)))
                    }
                }
            }
        }
    }
}
