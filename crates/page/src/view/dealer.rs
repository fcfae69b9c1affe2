//! A dealer's name, texts, door lines and questions.

use super::{Scene, in_the_other_unit, parts, problems};
use crate::answers::told;
use crate::event::Action;
use crate::text::Later;
use crate::update::ANSWER;
use hangtrue_core::Length;
use hangtrue_core::length::read;
use hangtrue_core::order::Order;
use hangtrue_core::profile::{DOOR, Door, Kind, Profile, Question, Words};
use hangtrue_core::say::{Language, Message};
use maud::{Markup, html};

/// Whose rules these are, or that they could not be read; nothing for the built-in ones.
pub(crate) fn rules(language: Language, profile: &Profile, fault: Option<&str>) -> Markup {
    let text = &Later::of(language).dealer;
    html! {
        @if let Some(fault) = fault {
            div.summary.stop #rules role="note" { p { (text.unread) } p.hint { (fault) } }
        } @else if !profile.is_built_in() {
            p.rules #rules { ((text.rules)(&profile.name, profile.revision)) }
        }
    }
}

/// The same on the walk's screens.
pub(super) fn notice(scene: Scene<'_>) -> Markup {
    let model = scene.model;
    rules(scene.language(), &model.profile, model.profile_fault.as_deref())
}

/// What the dealer says on the first screen, or beside the finished order.
pub(super) fn says(scene: Scene<'_>, words: &Words) -> Markup {
    html! { @if !words.is_empty() { p.dealer { (words.in_language(scene.language().key())) } } }
}

/// The rules an order was made under, where they are not those it is checked by.
pub(super) fn other_rules(scene: Scene<'_>, order: &Order) -> Markup {
    let profile = &scene.model.profile;
    let name = |name: &str, revision| (scene.later().dealer.rules)(name, revision);
    let made = order.profile.as_ref().filter(|(made, _)| !made.is_empty());
    let ours = profile.named();
    let same = made == ours.as_ref();
    let told = |rules: Option<&(String, u32)>| match rules {
        Some((by, revision)) => name(by, *revision),
        None => scene.later().dealer.built_in.to_owned(),
    };
    html! {
        @if !same { p.hint { ((scene.later().dealer.other_rules)(&told(made), &told(ours.as_ref()))) } }
    }
}

/// Which door line; nothing where there is nothing to choose.
pub(crate) fn doors(scene: Scene<'_>) -> Markup {
    let doors = &scene.model.profile.doors;
    let name = [ANSWER, DOOR].concat();
    let chosen = scene.model.answer(DOOR);
    html! {
        @if doors.len() > 1 {
            fieldset.choice.doors {
                legend { (scene.later().dealer.door) }
                @for door in doors {
                    (option(&name, &door.key, chosen == door.key, html! {
                        (door.name.in_language(scene.language().key()))
                        " " span.hint { (needs(scene, door)) }
                    }))
                }
                (option(&name, "", chosen.is_empty(), html! { (scene.later().dealer.no_door) }))
            }
        } @else if let [only] = doors.as_slice() {
            p { strong { (only.name.in_language(scene.language().key())) } " " span.hint { (needs(scene, only)) } }
        }
    }
}

fn needs(scene: Scene<'_>, door: &Door) -> String {
    let text = |least: Option<Length>| least.map(|least| scene.model.speaker().length(least));
    let needs = (scene.later().dealer.needs)(
        text(door.header_least).as_deref(),
        text(door.post_least).as_deref(),
    );
    let note = door.note.in_language(scene.language().key());
    [note, if note.is_empty() || needs.is_empty() { "" } else { "; " }, &needs].concat()
}

fn option(name: &str, value: &str, chosen: bool, label: Markup) -> Markup {
    html! {
        label {
            input type="radio" name=(name) value=(value) checked[chosen];
            span { (label) }
        }
    }
}

/// The screen of the dealer's questions.
pub(super) fn questions(scene: Scene<'_>) -> Markup {
    let profile = &scene.model.profile;
    html! {
        form data-act="next" {
            (parts::heading(&(scene.later().dealer.questions)(&profile.name)))
            (parts::problems(scene))
            @for question in &profile.questions { (one(scene, question)) }
            (parts::submit(scene.text().button.next))
        }
    }
}

fn one(scene: Scene<'_>, question: &Question) -> Markup {
    let id = [ANSWER, &question.key].concat();
    let ask = question.ask.in_language(scene.language().key());
    let hint = question.hint.in_language(scene.language().key());
    let given = scene.model.answer(&question.key);
    let optional =
        html! { @if !question.required { " " span.hint { (scene.later().dealer.optional) } } };
    let bad = scene.problems.iter().find(|problem| about(&problem.finding.message, question));
    let amiss = html! { @if let Some(bad) = bad { (problems::at_field(scene, &id, &[bad])) } };
    let choices: Vec<(&str, &str)> = match &question.kind {
        Kind::Choice(choices) => choices
            .iter()
            .map(|c| (c.key.as_str(), c.label.in_language(scene.language().key())))
            .collect(),
        Kind::YesNo => vec![("yes", scene.text().frame.yes), ("no", scene.text().frame.no)],
        Kind::Length { .. } | Kind::Text { .. } => {
            let hinted = [&id, "-hint"].concat();
            let described = match bad {
                Some(_) => [&parts::id_of_problems(&id), " ", &hinted].concat(),
                None => hinted.clone(),
            };
            return html! {
                div.line.bad[bad.is_some()] {
                    label for=(id) { (ask) (optional) }
                    p.hint id=(hinted) { (hint) }
                    (amiss)
                    input #(id) type="text" name=(id) value=(given) autocomplete="off"
                        inputmode=[matches!(question.kind, Kind::Length { .. }).then_some("decimal")]
                        maxlength="120" spellcheck="false" aria-describedby=(described)
                        aria-invalid=[bad.map(|_| "true")];
                    (echo(scene, question, given))
                }
            };
        }
    };
    html! {
        fieldset.choice.bad[bad.is_some()] {
            legend { (ask) (optional) }
            @if !hint.is_empty() { p.hint { (hint) } }
            (amiss)
            @for (index, (key, label)) in choices.iter().enumerate() {
                label {
                    input id=[(index == 0).then_some(&id)] type="radio" name=(id) value=(key)
                        checked[given == *key];
                    span { (label) }
                }
            }
        }
    }
}

/// A length in both units, as it is understood.
fn echo(scene: Scene<'_>, question: &Question, given: &str) -> Markup {
    let speaker = scene.model.speaker();
    let length =
        matches!(question.kind, Kind::Length { .. }).then(|| read(given, speaker.unit).ok());
    html! {
        @if let Some(Some(length)) = length {
            p.echo {
                b { (speaker.length(length)) } (in_the_other_unit(speaker, length))
            }
        }
    }
}

fn about(message: &Message, question: &Question) -> bool {
    matches!(message, Message::Answer(says) if says.key == question.key)
}

/// The answers of an order, with a way to change each where `change` says so.
pub(super) fn answers(scene: Scene<'_>, change: bool) -> Markup {
    let model = scene.model;
    html! {
        @if !model.order.answers.is_empty() {
            section.answers {
                h2 { (scene.later().dealer.answers) }
                ul.read {
                    @for answer in &model.order.answers {
                        @let [ask, shown] = told(&model.profile, model.speaker(), answer);
                        li {
                            span.spot { (ask) }
                            span.typed { (shown) }
                            @if change && answer.question != DOOR {
                                (parts::quiet_about(
                                    &Action::Answer(answer.question.clone()),
                                    scene.text().button.change,
                                    &ask,
                                ))
                            }
                        }
                    }
                }
            }
        }
    }
}
