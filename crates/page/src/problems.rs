//! What stands against leaving this screen: the findings that belong to it.
//!
//! The same list feeds the summary and the fields, so their words cannot differ.

use crate::field::Field;
use crate::model::Model;
use crate::step::Step;
use hangtrue_core::check::ANSWER_RULE;
use hangtrue_core::check::Report;
use hangtrue_core::say::{Hint, Message};
use hangtrue_core::{Finding, Severity};

/// One finding, where it is told.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// The field it stands at.
    pub field: Option<Field>,
    /// What was found.
    pub finding: Finding,
}

impl Problem {
    /// Whether Continue stops here; a mere question is passed by Continue again.
    #[must_use]
    pub fn blocks(&self) -> bool {
        self.finding.severity == Severity::Stop
    }

    /// Texts that may have been meant, to be put in by a button.
    pub fn suggestions(&self) -> impl Iterator<Item = &str> {
        self.finding.hints.iter().filter_map(|hint| match hint {
            Message::Hint(Hint::DidYouMean(text)) => Some(text.as_str()),
            _ => None,
        })
    }
}

/// The problems of the present screen, worst first.
#[must_use]
pub fn problems(model: &Model, report: &Report) -> Vec<Problem> {
    let found = found(model, report).cloned();
    found.map(|finding| Problem { field: field(model, report, &finding), finding }).collect()
}

/// What was found that stands against leaving the present screen, worst first.
pub(crate) fn found<'r>(model: &Model, report: &'r Report) -> impl Iterator<Item = &'r Finding> {
    let here = move |finding: &Finding| match model.step {
        Step::Check | Step::Send | Step::Scan | Step::Voice => {
            finding.severity == Severity::Stop
                || (finding.severity == Severity::Recheck && !model.confirmed(finding))
        }
        Step::Proof => {
            finding.severity > Severity::Note
                && finding.spots.first().copied() == model.proof.map(|field| field.spot)
        }
        Step::Questions => finding.rule == ANSWER_RULE,
        step => {
            finding.severity > Severity::Note
                && finding.spots.first().is_some_and(|spot| Step::of(*spot) == step)
        }
    };
    report.findings.iter().filter(move |finding| here(finding))
}

/// The field of the reading that a finding suspects.
#[must_use]
pub fn field(model: &Model, report: &Report, finding: &Finding) -> Option<Field> {
    let spot = *finding.spots.first()?;
    let entries = model.order.survey.entries(spot);
    let suspect = report.judgement.likely.first().filter(|likely| likely.spot == spot);
    if let Some(likely) = suspect {
        return Some(Field { spot, index: likely.index });
    }
    let unreadable = |message: &Message| matches!(message, Message::Unreadable { .. });
    let index = if unreadable(&finding.message) {
        entries.iter().position(|entry| !entry.struck && entry.read.is_err())
    } else {
        entries.iter().position(|entry| !entry.struck)
    };
    Some(Field { spot, index: index.unwrap_or(0) })
}
