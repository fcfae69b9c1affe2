//! What was found, a bounded page of rows at a time.

use super::{Scene, bar, word};
use crate::desk::many::{Action, By, Export, Found, Kind, PAGE, State, VERDICTS};
use crate::text::Later;
use hangtrue_core::say::Speaker;
use maud::{Markup, html};

pub(super) fn view(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    let list = scene.list;
    let stopped = list.state == State::Stopped;
    html! {
        p.lede { ((text.summary)(&list.counts)) }
        @if stopped {
            div.row {
                p { ((text.stopped)(list.percent())) }
                button type="button" data-act=(Action::Resume.code()) { (text.resume) }
            }
        }
        (filters(scene))
        @if list.shown.is_empty() && !list.found.is_empty() && !list.is_busy() {
            p.summary { (text.none) }
        } @else {
            (rows(scene))
        }
        (pager(scene))
        (files(scene))
    }
}

/// One press of the keyboard or the finger each: verdicts, findings; and a name.
fn filters(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    let list = scene.list;
    let filter = &list.filter;
    let verdicts = list.counts.verdicts.iter().zip(VERDICTS).enumerate();
    let mut rules = list.counts.rules.clone();
    // Stable: those that are as many stay as they were met.
    rules.sort_by_key(|(_, count)| core::cmp::Reverse(*count));
    html! {
        div.filters {
            div.group role="group" aria-label=(text.verdicts) {
                span.name aria-hidden="true" { (text.verdicts) }
                (choice(&Action::Verdict(None), "all", text.all, list.counts.all(), filter.verdict.is_none()))
                @for (at, (count, key)) in verdicts.filter(|(_, (count, _))| **count > 0) {
                    (choice(&Action::Verdict(Some(at)), key, word(scene.model, at), *count, filter.verdict == Some(at)))
                }
            }
            @if !rules.is_empty() {
                div.group role="group" aria-label=(text.findings) {
                    span.name aria-hidden="true" { (text.findings) }
                    @for (rule, count) in rules {
                        @let words = (text.rule)(rule);
                        @let words = if words.is_empty() { rule } else { words };
                        @let pressed = filter.rule.as_deref() == Some(rule);
                        (choice(&Action::Rule(rule.to_owned()), rule, words, count, pressed))
                    }
                }
            }
            div.line {
                label for="list-filter" { (text.find) }
                input #list-filter name="list-filter" type="text" value=(filter.text)
                    autocomplete="off" autocapitalize="off" spellcheck="false" maxlength="100";
            }
        }
    }
}

fn choice(action: &Action, key: &str, words: &str, count: usize, pressed: bool) -> Markup {
    html! {
        button.filter type="button" data-key=(key) data-act=(action.code()) aria-pressed=(pressed) {
            (words) " " b { (count) }
        }
    }
}

fn rows(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    let [line, order, verdict] = text.heads;
    let [width, height, header, bow] = text.numbers;
    let heads = [line, order, verdict, width, height, header, bow];
    html! {
        div.scroll #list-rows tabindex="0" role="group" aria-label=(text.table)
            aria-busy=[scene.list.is_busy().then_some("true")] {
            table.found {
                thead {
                    tr {
                        @for (by, head) in By::ALL.into_iter().zip(heads) { (sorted(scene, by, head)) }
                        th.says scope="col" { (text.first_finding) }
                    }
                }
                tbody {
                    @for (at, found) in scene.list.rows() { (row(scene, at, found)) }
                }
            }
        }
    }
}

/// The head of a column that can be sorted by.
fn sorted(scene: Scene<'_>, by: By, head: &str) -> Markup {
    let sort = scene.list.sort;
    let (aria, arrow) = match (sort.by == by, sort.reversed) {
        (false, _) => ("none", ""),
        (true, false) => ("ascending", "▲"),
        (true, true) => ("descending", "▼"),
    };
    html! {
        th scope="col" aria-sort=(aria) {
            button.quiet type="button" data-key=(by.key()) data-act=(Action::Sort(by).code()) {
                (head) span.arrow aria-hidden="true" { (arrow) }
            }
        }
    }
}

fn row(scene: Scene<'_>, at: usize, found: &Found) -> Markup {
    let text = scene.text();
    let answer = &found.answer;
    let language = scene.model.environment.language;
    let check = &Later::of(language).check;
    let speaker = Speaker { language, unit: answer.unit };
    let called = if answer.id.is_empty() { &answer.vehicle } else { &answer.id };
    let line = (text.line)(answer.line);
    let rank = found.rank();
    html! {
        tr data-key={ "found-" (at) } {
            td { (answer.line) }
            th scope="row" {
                @if answer.verdict.is_none() {
                    (if called.is_empty() { &line } else { called })
                } @else {
                    button.quiet type="button" data-act=(Action::Look(at).code()) {
                        @if called.is_empty() { (line) } @else {
                            (called) span.visually-hidden { ", " (line) }
                        }
                    }
                }
            }
            td {
                span class={ "mark " (VERDICTS.get(rank).copied().unwrap_or_default()) } {
                    (word(scene.model, rank))
                }
            }
            @for (number, read) in answer.numbers.iter().zip(found.as_found) {
                td.number {
                    (number.map(|number| speaker.length(number)).unwrap_or_default())
                    // The finding beside it is about what was read, the number about what is built.
                    @if let Some(read) = read {
                        small { ((check.as_found)(&speaker.length(read))) }
                    }
                }
            }
            td.says { (answer.says(language)) }
        }
    }
}

fn pager(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    let list = scene.list;
    let (all, page) = (list.shown.len(), list.page);
    let first = page.saturating_mul(PAGE);
    let last = first.saturating_add(PAGE).min(all);
    html! {
        @if all > PAGE {
            div.row.pager {
                @if let Some(before) = page.checked_sub(1) {
                    button type="button" data-key="previous" data-act=(Action::Page(before).code()) {
                        (text.previous)
                    }
                }
                p data-key="rows" { ((text.rows)(first.saturating_add(1), last, all)) }
                @if last < all {
                    button type="button" data-key="next"
                        data-act=(Action::Page(page.saturating_add(1)).code()) { (text.next) }
                }
            }
        }
    }
}

/// What can be done with the rows that are shown.
fn files(scene: Scene<'_>) -> Markup {
    let text = scene.text();
    let list = scene.list;
    html! {
        div.row {
            @for (export, name) in Export::ALL.into_iter().zip(text.save) {
                button type="button" data-act=(Action::Save(export).code()) { (name) }
            }
            @if matches!(list.source.kind, Kind::Table(_)) {
                button.quiet type="button" data-act=(Action::Columns.code()) { (text.change) }
            }
            @if let Some(percent) = list.writing() { (bar(text.writing, percent)) }
        }
    }
}
