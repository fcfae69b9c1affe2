//! What leaves the page by mail, message or share sheet.

use crate::model::Model;
use crate::text::Text;
use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::profile::{Contact, Profile, dialled};
use hangtrue_link::code::{Said, characters};
use hangtrue_link::{EncodeError, share};

/// The number of `order`, of which `report` is the check, where `profile` makes one and
/// the order was made under it.
#[must_use]
pub fn number(profile: &Profile, order: &Order, report: &Report) -> Option<String> {
    let numbering = profile.numbering.as_ref()?;
    let (name, revision) = order.profile.as_ref()?;
    if *name != profile.name || *revision != profile.revision {
        return None;
    }
    let check = characters(&Said::of(report, order.survey.unit))?;
    Some(numbering.number(order, &check))
}

/// The order in one line of plain ASCII, and its link.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Message {
    /// `W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in`, behind the order's number if it
    /// has one.
    pub line: String,
    /// The order's number, where the dealer's rules make one.
    pub number: Option<String>,
    /// The link.
    pub link: String,
    /// What stands before the vehicle in the subject of a mail.
    subject: [&'static str; 2],
}

impl Message {
    /// The message of the order in `model`, of which `report` is the check.
    ///
    /// # Errors
    /// When the order does not go into a link.
    pub fn of(model: &Model, report: &Report) -> Result<Self, EncodeError> {
        let sent = model.sent(report.verdict);
        let link = hangtrue_link::url(&model.environment.base, &sent)?;
        let number = number(&model.profile, &sent, report);
        let line = share::line(report, model.speaker());
        let line = number.as_ref().map_or(line.clone(), |number| [number, " ", &line].concat());
        let text = Text::of(model.environment.language);
        Ok(Self { line, number, link, subject: [text.order, text.colon] })
    }

    /// Both in one line.
    #[must_use]
    pub fn text(&self) -> String {
        [&self.line, " ", &self.link].concat()
    }

    /// Opens the mail program with it, to the dealer if there is one; `vehicle` is added to
    /// the subject.
    #[must_use]
    pub fn mailto(&self, to: &Contact, vehicle: &str) -> String {
        let [order, colon] = self.subject;
        let between = if vehicle.is_empty() { "" } else { colon };
        let subject = [order, between, vehicle].concat();
        share::mailto(&to.email, &subject, &[&self.line, "\n\n", &self.link, "\n"].concat())
    }

    /// Opens the message program with it, to the dealer if there is one.
    #[must_use]
    pub fn sms(&self, to: &Contact) -> String {
        share::sms(&dialled(&to.sms), &self.text())
    }

    /// The dealer's own page with the order behind its `#`; none where there is none.
    #[must_use]
    pub fn page(&self, to: &Contact) -> Option<String> {
        let (_, payload) = self.link.split_once('#')?;
        (!to.page.is_empty()).then(|| [&to.page, "#", payload].concat())
    }
}
