//! What leaves the page by mail, message or share sheet.

use crate::model::Model;
use crate::text::TEXT;
use hangtrue_core::check::Report;
use hangtrue_link::{EncodeError, share};

/// The order in one line of plain ASCII, and its link.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Message {
    /// `W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in`
    pub line: String,
    /// The link.
    pub link: String,
}

impl Message {
    /// The message of the order in `model`, of which `report` is the check.
    ///
    /// # Errors
    /// When the order does not go into a link.
    pub fn of(model: &Model, report: &Report) -> Result<Self, EncodeError> {
        let link = hangtrue_link::url(&model.environment.base, &model.sent(report.verdict))?;
        Ok(Self { line: share::line(report, model.speaker()), link })
    }

    /// Both in one line.
    #[must_use]
    pub fn text(&self) -> String {
        [&self.line, " ", &self.link].concat()
    }

    /// Opens the mail program with it; `vehicle` is added to the subject.
    #[must_use]
    pub fn mailto(&self, vehicle: &str) -> String {
        let between = if vehicle.is_empty() { "" } else { ": " };
        let subject = [TEXT.order, between, vehicle].concat();
        share::mailto("", &subject, &[&self.line, "\n\n", &self.link, "\n"].concat())
    }

    /// Opens the message program with it.
    #[must_use]
    pub fn sms(&self) -> String {
        share::sms("", &self.text())
    }
}
