//! What is said of a survey: verdict, the four numbers, every finding, the judge's view.

use hangtrue_core::check::Report;
use hangtrue_core::order::Number;
use hangtrue_core::say::Speaker;
use hangtrue_core::{Dimension, Finding, Length};
use serde::Serialize;

use super::Id;
use super::judged::{Adjusted, LikelySlip, NextReading, Unseen};

/// The answer to one survey, in the key order of the file format.
#[derive(Clone, Debug, Serialize)]
pub struct Answer {
    /// What the sender called the survey.
    pub id: Id,
    /// `clear`, `recheck` or `stop`.
    pub verdict: &'static str,
    /// The four numbers.
    pub order: Ordered,
    /// What has to be built first; left out when nothing has.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub build: Option<Build>,
    /// Everything found, worst first.
    pub findings: Vec<Found>,
    /// What went wrong, likeliest first.
    pub likely: Vec<LikelySlip>,
    /// The figures behind it.
    pub adjusted: Adjusted,
    /// What would go unnoticed.
    pub unseen: Unseen,
    /// What to read next, worth most first.
    pub next: Vec<NextReading>,
}

/// The four numbers; `null` where nothing was read.
#[derive(Clone, Debug, Serialize)]
pub struct Ordered {
    /// Post-to-post width.
    pub width: Option<Value>,
    /// Sill-to-header height.
    pub height: Option<Value>,
    /// Header depth.
    pub header: Option<Value>,
    /// Roof-bow depth.
    pub bow: Option<Value>,
}

/// A length, exact and as text.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Value {
    /// In nanometres.
    pub nm: i64,
    /// As the order writes it.
    pub text: String,
    /// Before the frame is built, where building changes it: re-measure after.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub as_found: Option<Box<Value>>,
}

/// How much is to be built onto the frame.
#[derive(Clone, Debug, Serialize)]
pub struct Build {
    /// The header, down.
    pub header_down: Value,
    /// The left post, out.
    pub left_out: Value,
    /// The right post, out.
    pub right_out: Value,
}

/// One finding.
#[derive(Clone, Debug, Serialize)]
pub struct Found {
    /// `stop`, `recheck` or `note`.
    pub severity: &'static str,
    /// The rule's code.
    pub rule: &'static str,
    /// The readings it is about, the most suspect first.
    pub readings: Vec<String>,
    /// What is so.
    pub message: String,
    /// What to do next.
    pub hints: Vec<String>,
}

impl Answer {
    /// The answer to the survey called `id`, in the speaker's words and unit.
    #[must_use]
    pub fn new(id: Id, report: &Report, speaker: Speaker) -> Self {
        let build = report.preparation;
        let judgement = &report.judgement;
        Self {
            id,
            verdict: report.verdict.key(),
            order: Ordered::new(report, speaker),
            build: build.needed().then(|| Build {
                header_down: Value::new(build.header_down, speaker),
                left_out: Value::new(build.left_out, speaker),
                right_out: Value::new(build.right_out, speaker),
            }),
            findings: report.findings.iter().map(|f| Found::new(f, speaker)).collect(),
            likely: judgement
                .likely
                .iter()
                .filter(|likely| likely.posterior >= LikelySlip::LEAST)
                .map(|likely| LikelySlip::new(likely, speaker))
                .collect(),
            adjusted: Adjusted::new(judgement),
            unseen: Unseen::new(judgement, speaker),
            next: judgement.next.iter().map(|n| NextReading::new(n, speaker)).collect(),
        }
    }
}

impl Ordered {
    pub(super) fn new(report: &Report, speaker: Speaker) -> Self {
        let value = |dimension: Dimension| {
            report.numbers.get(dimension).map(|number: &Number| {
                let changed = report.preparation.change(dimension) != Length::ZERO;
                let as_found = changed.then(|| Box::new(Value::new(number.as_found, speaker)));
                Value { as_found, ..Value::new(number.ordered, speaker) }
            })
        };
        Self {
            width: value(Dimension::Width),
            height: value(Dimension::Height),
            header: value(Dimension::Header),
            bow: value(Dimension::Bow),
        }
    }
}

impl Value {
    pub(super) fn new(length: Length, speaker: Speaker) -> Self {
        Self { nm: length.nm(), text: length.text(speaker.unit), as_found: None }
    }
}

impl Found {
    fn new(finding: &Finding, speaker: Speaker) -> Self {
        Self {
            severity: finding.severity.key(),
            rule: finding.rule,
            readings: finding.spots.iter().map(|spot| spot.key()).collect(),
            message: speaker.say(&finding.message),
            hints: finding.hints.iter().map(|hint| speaker.say(hint)).collect(),
        }
    }
}
