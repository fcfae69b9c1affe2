//! An order as its file is written.

use hangtrue_core::check::Report;
use hangtrue_core::order::{Date, Order};
use hangtrue_core::say::Speaker;
use serde::Serialize;

use super::FORMAT;
use super::places::Readings;
use crate::json::{Id, Ordered, Value};

/// A whole order.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(deny_unknown_fields))]
pub struct OrderFile {
    /// The format's name and version.
    #[cfg_attr(feature = "schema", schemars(schema_with = "super::schema::format"))]
    format: &'static str,
    /// What the sender calls it.
    #[serde(skip_serializing_if = "Id::is_none")]
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
    #[serde(skip_serializing_if = "Vec::is_empty")]
    confirmed: Vec<ConfirmedFile>,
    /// Whether the old door was still in.
    #[serde(skip_serializing_if = "Option::is_none")]
    old_door_in: Option<bool>,
    /// Which truck.
    #[serde(skip_serializing_if = "String::is_empty")]
    vehicle: String,
    /// Free text.
    #[serde(skip_serializing_if = "String::is_empty")]
    note: String,
    /// How to reach the writer.
    #[serde(skip_serializing_if = "String::is_empty")]
    contact: String,
    /// Answers to the dealer's questions.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    answers: Vec<AnswerFile>,
    /// The dealer's profile it was made under.
    #[serde(skip_serializing_if = "Option::is_none")]
    profile: Option<ProfileName>,
    /// The writer's language.
    #[serde(skip_serializing_if = "String::is_empty")]
    language: String,
    /// The day it was written, as `2026-11-25`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(schema_with = "super::schema::date"))]
    date: Option<String>,
    /// The four numbers, for whoever wants only those. They follow from the readings
    /// and are not read.
    order: Numbers,
}

/// The four numbers, as far as they were read.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
struct Numbers {
    /// Post-to-post width.
    #[serde(skip_serializing_if = "Option::is_none")]
    width: Option<Value>,
    /// Sill-to-header height.
    #[serde(skip_serializing_if = "Option::is_none")]
    height: Option<Value>,
    /// Header depth.
    #[serde(skip_serializing_if = "Option::is_none")]
    header: Option<Value>,
    /// Roof-bow depth.
    #[serde(skip_serializing_if = "Option::is_none")]
    bow: Option<Value>,
}

impl From<Ordered> for Numbers {
    fn from(numbers: Ordered) -> Self {
        let Ordered { width, height, header, bow } = numbers;
        Self { width, height, header, bow }
    }
}

/// A confirmed finding.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(deny_unknown_fields))]
struct ConfirmedFile {
    /// The rule's code.
    rule: String,
    /// The reading it was about, as `width.low`.
    #[serde(skip_serializing_if = "Option::is_none")]
    reading: Option<String>,
}

/// An answer.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(deny_unknown_fields))]
struct AnswerFile {
    /// The question's key in the profile.
    question: String,
    /// The answer.
    answer: String,
}

/// Which rules.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(deny_unknown_fields))]
struct ProfileName {
    /// Who wrote them.
    name: String,
    /// Their revision.
    revision: u32,
}

impl OrderFile {
    /// The file of `order`, with the numbers of its `report`.
    #[must_use]
    pub fn new(id: Id, order: &Order, report: &Report) -> Self {
        let speaker = Speaker { unit: order.survey.unit, ..Speaker::default() };
        Self {
            format: FORMAT,
            id,
            unit: order.survey.unit.key(),
            prepared: order.survey.prepared,
            readings: Readings::of(&order.survey),
            verdict: order.claimed.key(),
            confirmed: order
                .confirmed
                .iter()
                .map(|confirmed| ConfirmedFile {
                    rule: confirmed.rule.clone(),
                    reading: confirmed.spot.map(|spot| spot.key()),
                })
                .collect(),
            old_door_in: order.old_door_in,
            vehicle: order.vehicle.clone(),
            note: order.note.clone(),
            contact: order.contact.clone(),
            answers: order
                .answers
                .iter()
                .map(|answer| AnswerFile {
                    question: answer.question.clone(),
                    answer: answer.answer.clone(),
                })
                .collect(),
            profile: order
                .profile
                .as_ref()
                .map(|(name, revision)| ProfileName { name: name.clone(), revision: *revision }),
            language: order.language.clone(),
            date: order.date.map(written),
            order: Ordered::new(report, speaker).into(),
        }
    }
}

/// `2026-11-25`.
fn written(date: Date) -> String {
    let two = |n: u8| [if n < 10 { "0" } else { "" }, &n.to_string()].concat();
    [&date.year.to_string(), "-", &two(date.month), "-", &two(date.day)].concat()
}
