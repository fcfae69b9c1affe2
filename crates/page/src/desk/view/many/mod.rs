//! Many orders at once: a list to open, its columns, the bar, the table.

mod columns;
mod table;

use crate::desk::many::{Action, List, State};
use crate::desk::model::Model;
use crate::desk::sent::Trouble;
use crate::text::Later;
use crate::text::desk::Desk;
use crate::text::desk::many::Many as Words;
use crate::view::parts::choose_file;
use maud::{Markup, html};

/// What the screen is drawn from.
#[derive(Clone, Copy)]
struct Scene<'a> {
    model: &'a Model,
    list: &'a List,
}

impl Scene<'_> {
    const fn text(self) -> &'static Words {
        words(self.model)
    }
}

const fn words(model: &Model) -> &'static Words {
    &Desk::of(model.environment.language).many
}

pub(super) fn view(model: &Model) -> Markup {
    html! {
        section.many aria-labelledby="many-heading" {
            @match &model.many.list {
                None => (open(model)),
                Some(list) => (listed(Scene { model, list })),
            }
        }
    }
}

fn trouble(model: &Model) -> Markup {
    html! {
        div #orders-trouble role="status" {
            @if let Some(trouble) = &model.many.trouble {
                p.summary.stop {
                    @if *trouble == Trouble::Nothing {
                        (words(model).nothing)
                    } @else {
                        (super::sent::told(model, trouble))
                    }
                }
            }
        }
    }
}

/// The box that takes a list.
fn open(model: &Model) -> Markup {
    let text = words(model);
    html! {
        h2 #many-heading tabindex="-1" { (text.many) }
        form.open data-act=(Action::Open.code()) {
            div.line {
                label for="orders" { (text.paste) " " span.hint { (text.paste_hint) } }
                textarea #orders name="orders" rows="6" spellcheck="false" autocomplete="off"
                    aria-describedby="orders-trouble" { (model.many.paste) }
            }
            div.row {
                button type="submit" { (text.open) }
                (choose_file(Desk::of(model.environment.language).sent.choose, true))
            }
            (trouble(model))
        }
    }
}

fn listed(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    let list = scene.list;
    html! {
        div.row.title {
            h2 #many-heading tabindex="-1" {
                (if list.name.is_empty() { text.pasted } else { &list.name })
            }
            button.quiet type="button" data-act=(Action::Close.code()) { (text.another) }
        }
        (trouble(scene.model))
        @match list.state {
            State::Columns => (columns::view(scene)),
            State::Running => (running(scene)),
            State::Stopped | State::Done => (table::view(scene)),
        }
    }
}

/// How far it has come, and what was met so far.
fn running(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    let list = scene.list;
    html! {
        div.work {
            (bar(text.progress, list.percent()))
            p { ((text.checked)(list.found.len(), list.percent())) }
            p.hint { ((text.summary)(&list.counts)) }
            div.row {
                button type="button" data-act=(Action::Stop.code()) { (text.stop) }
            }
        }
    }
}

fn bar(name: &str, percent: usize) -> Markup {
    html! { progress aria-label=(name) value=(percent) max="100" {} }
}

/// The page's own word of a verdict; the desk's where there is no order.
fn word(model: &Model, rank: usize) -> &'static str {
    use hangtrue_core::check::Verdict;
    let word = |verdict| crate::view::word(Later::of(model.environment.language), verdict);
    match rank {
        0 => word(Verdict::Stop),
        1 => words(model).unread,
        2 => word(Verdict::Recheck),
        _ => word(Verdict::Clear),
    }
}
