//! Many orders at once: a table, lines of JSON or a list of links, each checked as the
//! command checks it, and the worst shown first.
//!
//! Everything that takes long is done in steps of a few milliseconds ([`List::step`]): the
//! page asks for one after the other and answers in between.

mod action;
mod columns;
mod export;
mod found;
mod sorting;
mod source;
mod update;

pub use action::Action;
pub use columns::{change, column, missing, unit};
pub use export::Export;
pub use found::{By, Counts, Filter, Found, Sort, VERDICTS, rank};
pub use source::{Kind, Source};
pub(super) use update::{act, begin, input, take, work};

use super::sent::Trouble;
use crate::effect::Effect;
use export::Saving;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_link::csv::Mark;
use sorting::Sorting;

/// Rows that are in the document at once.
pub const PAGE: usize = 50;

/// The screen that checks many orders.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Many {
    /// What is typed or pasted where a list is opened.
    pub paste: String,
    /// Why the last text was no list.
    pub trouble: Option<Trouble>,
    /// The list that is open.
    pub list: Option<List>,
}

/// How far a list has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// A person looks at what its columns hold.
    Columns,
    /// It is being checked.
    Running,
    /// A person stopped it; what was checked stays.
    Stopped,
    /// Everything was checked.
    Done,
}

/// Many orders, and what was found in each.
#[derive(Clone, Debug, PartialEq)]
pub struct List {
    /// The file it came in; empty where it was pasted.
    pub name: String,
    /// Where the orders come from.
    pub source: Source,
    /// How far it has come.
    pub state: State,
    /// What was found, in the order of the source.
    pub found: Vec<Found>,
    /// How many of each.
    pub counts: Counts,
    /// Which of them are shown.
    pub filter: Filter,
    /// In which order.
    pub sort: Sort,
    /// Those that are shown, as places in `found`.
    pub shown: Vec<usize>,
    /// Which page of them, from 0.
    pub page: usize,
    /// Where the next one begins in the source.
    mark: Mark,
    /// What is on the way to becoming `shown`.
    sorting: Option<Sorting>,
    /// The file that is being written.
    saving: Option<Saving>,
}

/// What a step came to.
#[derive(Clone, Debug, PartialEq)]
pub enum Step {
    /// It went on, or there was nothing to do.
    Quiet,
    /// The last order was checked.
    Checked,
    /// The rows are in their new order.
    Sorted,
    /// The file is written.
    Saved(Effect),
}

impl List {
    /// The orders of `source`, of which none has been checked. What a table's columns hold
    /// is looked at first.
    #[must_use]
    pub fn new(name: &str, source: Source) -> Self {
        let mark = source.start();
        let state = match source.kind {
            Kind::Table(_) => State::Columns,
            Kind::Json | Kind::Links => State::Running,
        };
        Self {
            name: name.to_owned(),
            source,
            state,
            found: Vec::new(),
            counts: Counts::default(),
            filter: Filter::default(),
            sort: Sort::default(),
            shown: Vec::new(),
            page: 0,
            mark,
            sorting: None,
            saving: None,
        }
    }

    /// Begins from the first order.
    pub fn check(&mut self) {
        let source = core::mem::take(&mut self.source);
        *self = Self { state: State::Running, ..Self::new(&self.name, source) };
    }

    /// Leaves it at what was checked.
    pub fn stop(&mut self) {
        if self.state == State::Running {
            self.state = State::Stopped;
            self.show();
        }
    }

    /// Goes on where it was stopped.
    pub fn resume(&mut self) {
        if self.state == State::Stopped {
            self.state = State::Running;
        }
    }

    /// Whether there is a step to be done.
    #[must_use]
    pub fn is_busy(&self) -> bool {
        self.state == State::Running || self.sorting.is_some() || self.saving.is_some()
    }

    /// Whether a file is being written, and how much of it has been, in hundredths.
    #[must_use]
    pub fn writing(&self) -> Option<usize> {
        self.saving.as_ref().map(|saving| saving.percent(self.shown.len()))
    }

    /// A few milliseconds of work: the next order, the next rows to be sorted or written.
    pub fn step(&mut self, profile: &Profile, language: Language) -> Step {
        if self.state == State::Running {
            let at = self.mark;
            self.source.judge_by(profile);
            let Some(item) = self.source.next(&mut self.mark) else {
                self.state = State::Done;
                self.show();
                return Step::Checked;
            };
            let found = Found::new(&item, profile, at);
            self.counts.add(&found);
            self.found.push(found);
        } else if let Some(sorting) = &mut self.sorting {
            if let Some(shown) = sorting.step(&self.found, &self.filter, self.sort) {
                (self.shown, self.page, self.sorting) = (shown, 0, None);
                return Step::Sorted;
            }
        } else if let Some(saving) = &mut self.saving
            && let Some(effect) = saving.step(&self.found, &self.shown, language)
        {
            self.saving = None;
            return Step::Saved(effect);
        }
        Step::Quiet
    }

    /// Begins to lay out which rows are shown, and in which order. Until that is done the
    /// former ones stay.
    pub fn show(&mut self) {
        self.sorting = Some(Sorting::default());
        self.saving = None;
    }

    /// Begins to write the rows that are shown as a file.
    pub fn save(&mut self, export: Export) {
        self.saving = Some(Saving::new(export));
    }

    /// How much of the source has been read, in hundredths.
    #[must_use]
    pub fn percent(&self) -> usize {
        let part = self.mark.at.saturating_mul(100).checked_div(self.source.text.len());
        if self.state == State::Done { 100 } else { part.unwrap_or(0) }
    }

    /// How many pages there are.
    #[must_use]
    pub fn pages(&self) -> usize {
        self.shown.len().div_ceil(PAGE).max(1)
    }

    /// The rows of the page, each with its place in `found`.
    pub fn rows(&self) -> impl Iterator<Item = (usize, &Found)> {
        let first = self.page.saturating_mul(PAGE);
        let shown = self.shown.iter().skip(first).take(PAGE);
        shown.filter_map(|at| Some((*at, self.found.get(*at)?)))
    }
}
