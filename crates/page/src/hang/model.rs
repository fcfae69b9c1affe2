//! The state of this page.

use super::effect::Effect;
use super::fields::Fields;
use super::step::Step;
use super::work::turns_text;
use crate::language::title;
use crate::model::Environment;
use crate::rules::in_force;
use crate::text::hang::Hang;
use hangtrue_core::hang::Scale;
use hangtrue_core::hang::inspection::{Check, Found};
use hangtrue_core::hang::record::Record;
use hangtrue_core::hang::weight::Weight;
use hangtrue_core::order::{Date, Order};
use hangtrue_core::profile::Profile;
use hangtrue_core::say::{Language, Speaker, decimal};
use hangtrue_core::{Dimension, Unit};
use hangtrue_link::LinkError;
use hangtrue_link::json::FileError;

/// Why nothing was opened.
#[derive(Clone, Debug, PartialEq)]
pub enum Fault {
    /// What was to be a link.
    Link(LinkError),
    /// What was to be a file.
    File(FileError),
}

/// Everything the page shows, and nothing else.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Model {
    /// What the page is told of its surroundings.
    pub environment: Environment,
    /// The dealer's rules.
    pub profile: Profile,
    /// What kept a dealer's rules away.
    pub profile_fault: Option<String>,
    /// The screen.
    pub step: Step,
    /// The door.
    pub record: Record,
    /// What is typed in fields.
    pub fields: Fields,
    /// Drafts of other doors that were set aside on this device, by their numbers.
    pub aside: Vec<(u32, String)>,
    /// Why a link or a file could not be opened.
    pub fault: Option<Fault>,
    /// The field that has the focus.
    pub active: Option<String>,
    /// What the live region says: how that field is understood, once typing has stopped.
    pub spoken: String,
    /// Whether the last copying worked.
    pub copied: Option<bool>,
    /// Whether a newer build of the page waits.
    pub newer: bool,
}

impl Model {
    /// A page with no door.
    #[must_use]
    pub fn new(environment: Environment) -> Self {
        Self { environment, ..Self::default() }
    }

    /// Takes a dealer's rules, or what was wrong with them: then the built-in ones hold, and
    /// the page says so.
    pub fn rule_by(&mut self, rules: Result<Profile, String>) {
        let untouched = self.record == Record::default();
        let untouched = untouched.then_some(&mut self.record.order.survey);
        (self.profile, self.profile_fault) = in_force(rules, untouched);
    }

    /// The unit of bare numbers.
    #[must_use]
    pub const fn unit(&self) -> Unit {
        self.record.order.survey.unit
    }

    /// What bare weights are in.
    #[must_use]
    pub const fn scale(&self) -> Scale {
        Scale::of(self.unit())
    }

    /// Who the page speaks to.
    #[must_use]
    pub const fn speaker(&self) -> Speaker {
        Speaker { language: self.language(), unit: self.unit() }
    }

    /// The words of this page.
    #[must_use]
    pub const fn words(&self) -> &'static Hang {
        Hang::of(self.environment.language)
    }

    /// The language they are in.
    #[must_use]
    pub const fn language(&self) -> Language {
        self.words().language
    }

    /// Marks the document as what it is.
    pub(super) fn speak(&self) -> Effect {
        let heading = self.words().order.heading;
        Effect::Page(crate::Effect::Speak(self.language(), title(self.language(), heading)))
    }

    /// Whether there is a door to hang: all four numbers were read.
    #[must_use]
    pub fn has_order(&self) -> bool {
        let survey = &self.record.order.survey;
        Dimension::ALL.into_iter().all(|dimension| survey.tightest(dimension).is_some())
    }

    /// The day of a text, not behind today's: nothing was done tomorrow.
    pub(super) fn past(&self, text: &str) -> Option<Date> {
        read_day(text).filter(|day| self.environment.today.is_none_or(|today| *day <= today))
    }

    /// Takes an order in: its door is yet to be hung.
    pub fn take_order(&mut self, order: Order) {
        self.take_record(Record { order, ..Record::default() });
    }

    /// Takes a record in, with what it says in the fields.
    pub fn take_record(&mut self, record: Record) {
        self.fields = fields_of(&record);
        self.record = record;
        self.fault = None;
    }
}

/// What `record` says, as it would be typed into the fields.
fn fields_of(record: &Record) -> Fields {
    let unit = record.order.survey.unit;
    let weight_text = |weight: Weight| {
        let scale = Scale::of(unit);
        [&decimal(weight.in_scale(scale), 1), " ", scale.key()].concat()
    };
    let mut fields = Fields::default();
    fields.set("serial", &record.serial);
    if let Some(weight) = record.weight {
        fields.set("weight", &weight_text(weight));
    }
    if let Some(turns) = record.turns {
        fields.set("turns", &turns_text(turns.turns()));
    }
    if let Some(hung) = record.hung {
        fields.set("hung", &hung.text());
    }
    if let Some(per_day) = record.per_day {
        fields.set("per-day", &per_day.to_string());
    }
    for check in Check::ALL {
        let Some(found) = record.inspection.get(check) else { continue };
        let text = match found {
            Found::Length(length) => length.canonical(unit),
            Found::Weight(weight) => weight_text(weight),
            Found::Count(count) => count.to_string(),
            Found::Eye(in_order) => if in_order { "yes" } else { "no" }.to_owned(),
        };
        fields.set(&["check.", check.key()].concat(), &text);
    }
    fields
}

/// The day of a text as ISO 8601 has it, from 2000 to 2255; a person may leave noughts out.
pub(super) fn read_day(text: &str) -> Option<Date> {
    // As it is typed, or as it is shown: see the view's `whole`.
    let mut parts = text.trim().split(['-', '\u{2011}']);
    let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
    let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if parts.next().is_some() || !(digits(year) && digits(month) && digits(day)) {
        return None;
    }
    let date =
        Date { year: year.parse().ok()?, month: month.parse().ok()?, day: day.parse().ok()? };
    ((2000..=2255).contains(&date.year) && hangtrue_core::hang::care::is_day(date)).then_some(date)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_day_is_read_back() {
        let date = Date { year: 2026, month: 3, day: 9 };
        assert_eq!(date.text(), "2026-03-09");
        assert_eq!(read_day(&date.text()), Some(date));
        for text in ["", "2026-02-30", "26-01-01", "2026-1", "2026-01-01-", "+2026-01-01"] {
            assert_eq!(read_day(text), None, "{text}");
        }
    }
}
