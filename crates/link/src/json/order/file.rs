//! An order as its file is written.

use hangtrue_core::check::Report;
use hangtrue_core::order::{Date, Number, Order};
use hangtrue_core::{Dimension, Length, Unit};

use super::FORMAT;
use super::places::Readings;
use super::write::{Write as _, written};
use crate::json::Id;
use crate::json::text::{Node, print};

written! {
    /// A whole order.
    pub struct OrderFile {
        /// The format's name and version.
        #[cfg_attr(feature = "schema", schemars(schema_with = "super::schema::format"))]
        format: &'static str,
        /// What the sender calls it.
        #[cfg_attr(feature = "schema", schemars(schema_with = "super::schema::id"))]
        id: Id,
        /// The unit of bare numbers.
        #[cfg_attr(feature = "schema", schemars(schema_with = "super::schema::unit"))]
        unit: &'static str,
        /// The frame is as it will stay: built to its minimum, or in no need of building.
        prepared: bool,
        /// What was typed, place by place.
        readings: Readings,
        /// The verdict that the writer saw: a claim, judged again on opening.
        #[cfg_attr(feature = "schema", schemars(schema_with = "super::schema::verdict"))]
        verdict: &'static str,
        /// What the writer looked at and confirmed.
        confirmed: Option<Vec<ConfirmedFile>>,
        /// Whether the old door was still in.
        old_door_in: Option<bool>,
        /// Which truck.
        vehicle: Option<String>,
        /// Free text.
        note: Option<String>,
        /// How to reach the writer.
        contact: Option<String>,
        /// Answers to the dealer's questions.
        answers: Option<Vec<AnswerFile>>,
        /// The dealer's profile it was made under.
        profile: Option<ProfileName>,
        /// The writer's language.
        language: Option<String>,
        /// The day it was written, as `2026-11-25`.
        #[cfg_attr(feature = "schema", schemars(schema_with = "super::schema::date"))]
        date: Option<String>,
        /// The four numbers, for whoever wants only those. They follow from the readings
        /// and are not read.
        order: Numbers,
    }

    /// A confirmed finding.
    struct ConfirmedFile {
        /// The rule's code.
        rule: String,
        /// The reading it was about, as `width.low`.
        reading: Option<String>,
    }

    /// An answer.
    struct AnswerFile {
        /// The question's key in the profile.
        question: String,
        /// The answer.
        answer: String,
    }

    /// Which rules.
    struct ProfileName {
        /// Who wrote them.
        name: String,
        /// Their revision.
        revision: u32,
    }

    /// The four numbers, as far as they were read.
    struct Numbers {
        /// Post-to-post width.
        width: Option<Value>,
        /// Sill-to-header height.
        height: Option<Value>,
        /// Header depth.
        header: Option<Value>,
        /// Roof-bow depth.
        bow: Option<Value>,
    }

    /// A length, exact and as text.
    struct Value {
        /// In nanometres.
        nm: i64,
        /// As the order writes it.
        text: String,
        /// Before the frame is built, where building changes it: re-measure after.
        as_found: Option<Box<Value>>,
    }
}

impl OrderFile {
    /// The file of `order`, with the numbers of its `report`.
    #[must_use]
    pub fn new(id: Id, order: &Order, report: &Report) -> Self {
        Self {
            format: FORMAT,
            id,
            unit: order.survey.unit.key(),
            prepared: order.survey.prepared,
            readings: Readings::of(&order.survey),
            verdict: order.claimed.key(),
            confirmed: each(&order.confirmed, |confirmed| ConfirmedFile {
                rule: confirmed.rule.clone(),
                reading: confirmed.spot.map(|spot| spot.key()),
            }),
            old_door_in: order.old_door_in,
            vehicle: filled(&order.vehicle),
            note: filled(&order.note),
            contact: filled(&order.contact),
            answers: each(&order.answers, |answer| AnswerFile {
                question: answer.question.clone(),
                answer: answer.answer.clone(),
            }),
            profile: order
                .profile
                .as_ref()
                .map(|(name, revision)| ProfileName { name: name.clone(), revision: *revision }),
            language: filled(&order.language),
            date: order.date.map(written_date),
            order: Numbers::of(report, order.survey.unit),
        }
    }

    /// As a tree.
    #[must_use]
    pub fn tree(&self) -> Node<'_> {
        self.node().unwrap_or_else(Node::object)
    }

    /// As text, on one line.
    #[must_use]
    pub fn text(&self) -> String {
        print(&self.tree())
    }
}

#[cfg(feature = "json")]
impl serde::Serialize for OrderFile {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.tree().serialize(serializer)
    }
}

fn filled(text: &str) -> Option<String> {
    (!text.is_empty()).then(|| text.to_owned())
}

fn each<T, U>(list: &[T], make: impl Fn(&T) -> U) -> Option<Vec<U>> {
    (!list.is_empty()).then(|| list.iter().map(make).collect())
}

impl Numbers {
    fn of(report: &Report, unit: Unit) -> Self {
        let value =
            |length: Length| Value { nm: length.nm(), text: length.text(unit), as_found: None };
        let of = |dimension: Dimension| {
            report.numbers.get(dimension).map(|number: &Number| {
                let changed = report.preparation.change(dimension) != Length::ZERO;
                let as_found = changed.then(|| Box::new(value(number.as_found)));
                Value { as_found, ..value(number.ordered) }
            })
        };
        Self {
            width: of(Dimension::Width),
            height: of(Dimension::Height),
            header: of(Dimension::Header),
            bow: of(Dimension::Bow),
        }
    }
}

/// `2026-11-25`.
pub(crate) fn written_date(date: Date) -> String {
    let two = |n: u8| [if n < 10 { "0" } else { "" }, &n.to_string()].concat();
    [&date.year.to_string(), "-", &two(date.month), "-", &two(date.day)].concat()
}
