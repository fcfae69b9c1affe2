//! Care: before each use, what is due, replacing parts, what was done.

use super::parts;
use crate::hang::event::Action;
use crate::hang::model::Model;
use crate::text::Later;
use crate::text::hang::Guide;
use crate::view::parts::pick;
use hangtrue_core::hang::care::{Due, Work, due};
use hangtrue_core::hang::delivery::rollers;
use hangtrue_core::hang::latch::{STRETCH_PERMILLE, seal};
use hangtrue_core::{Dimension, Length};
use maud::{Markup, html};

pub(super) fn view(model: &Model) -> Markup {
    let text = &model.words().care;
    html! {
        form data-act="next" {
            (parts::heading(text.heading))
            @if !model.record.serial.is_empty() || !model.record.order.vehicle.is_empty() {
                p.lede { (model.record.order.vehicle) " " (model.record.serial) }
            }
            div.columns {
                (due_list(model))
                section {
                    h2 { (text.before) }
                    ul { @for item in text.before_list { li { (item) } } }
                    (parts::caution(text.before_stop))
                }
            }
            div.columns {
                section {
                    h2 { (text.oil) }
                    ul { @for item in text.oil_list { li { (item) } } }
                }
                (sizes(model))
            }
            section {
                h2 { (text.guides_heading) }
                @for guide in &text.guides { (guided(model, guide)) }
            }
            (done(model))
            (parts::go_on(model))
        }
    }
}

/// What is due, the soonest first; none without the day it was hung, or today's.
pub(super) fn all_due(model: &Model) -> Option<Vec<Due>> {
    let (hung, today) = (model.record.hung?, model.environment.today?);
    let per_day = model.record.per_day.map(u32::from);
    Some(due(hung, &model.record.services, &model.profile.care, per_day, today))
}

/// The rules the door was ordered under, where this page has others or none. The record names
/// them and holds no intervals: the dealer may change those, and its link brings them along.
fn rules_elsewhere(model: &Model) -> Option<String> {
    let (name, revision) = model.record.order.profile.as_ref()?;
    let rules = Later::of(model.language()).dealer.rules;
    let here = *name == model.profile.name || name.is_empty();
    (!here).then(|| rules(name, *revision))
}

fn due_list(model: &Model) -> Markup {
    let text = &model.words().care;
    html! {
        section {
            h2 { (text.due) }
            @match all_due(model) {
                Some(all) => {
                    ul.rows {
                        @for one in &all {
                            li.stop[one.left < 0].recheck[(0..=7).contains(&one.left)] {
                                span { ((text.work)(one.work)) }
                                b { ((text.due_in)(one.left, &parts::whole(one.day))) }
                            }
                        }
                    }
                }
                None => { p { (text.no_day) } }
            }
            div.fields {
                (parts::field(model, "hung", text.hung, text.day_hint))
                (parts::field(model, "per-day", text.per_day, ""))
            }
            @if let Some(rules) = rules_elsewhere(model) { p { ((text.not_here)(&rules)) } }
            @if model.profile.care.is_empty() {
                p.hint { (text.source) }
            } @else {
                @let rules = Later::of(model.language()).dealer.rules;
                p.hint { (rules(&model.profile.name, model.profile.revision)) ". " (text.source) }
            }
        }
    }
}

fn guided(model: &Model, guide: &Guide) -> Markup {
    html! {
        details.working {
            summary { (guide.title) }
            (parts::caution(guide.caution))
            ol { @for step in guide.steps { li { (step) } } }
            p.stop-line { b { (model.words().care.stop) } " " (guide.stop) }
        }
    }
}

fn sizes(model: &Model) -> Markup {
    let text = &model.words().care;
    let numbers = model.numbers();
    let number =
        |dimension| numbers.ordered(dimension).map(|length| model.speaker().length(length));
    let cut = |dimension| {
        let run = numbers.ordered(dimension).unwrap_or(Length::ZERO);
        model.told(seal(run, STRETCH_PERMILLE))
    };
    let (side, head) = (cut(Dimension::Height), cut(Dimension::Width));
    let seals = [side.as_str(), head.as_str()];
    let panels = model.room().map_or(0, |room| room.curtain().panels);
    html! {
        @if let (Some(width), Some(height)) = (number(Dimension::Width), number(Dimension::Height)) {
            section {
                h2 { (text.sizes) }
                ul {
                    @for line in (text.sizes_list)([&width, &height], panels, rollers(panels), seals) {
                        li { (line) }
                    }
                }
            }
        }
    }
}

fn done(model: &Model) -> Markup {
    let text = &model.words().care;
    let [work, date, note] = text.add_fields;
    let options: Vec<(&str, &str)> =
        Work::ALL.into_iter().map(|one| (one.key(), (text.work)(one))).collect();
    html! {
        section {
            @if !model.record.services.is_empty() {
                h2 { (text.done) }
                ul.rows {
                    @for (index, service) in model.record.services.iter().enumerate() {
                        li {
                            span { (service.date.text()) " · " ((text.work)(service.work))
                                @if !service.note.is_empty() { " · " (service.note) }
                            }
                            (parts::quiet(&Action::DropService(index), text.drop))
                        }
                    }
                }
            }
            h2 { (text.add_heading) }
            div.picks {
                (pick("service.work", work, &options, model.fields.get("service.work")))
            }
            @let today = model.environment.today.map(parts::whole).unwrap_or_default();
            div.fields {
                (parts::field(model, "service.date", date, &today))
                (parts::field(model, "service.note", note, ""))
            }
            (parts::button(&Action::AddService, text.add))
            p.hint { (text.new_link) }
        }
    }
}
