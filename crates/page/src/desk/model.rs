//! The state of the desk.

use super::ask::Ask;
use super::effect::Effect;
use super::event::Camera;
use super::many::Many;
use super::phone::Phone;
use super::sent::{Sent, Trouble};
use crate::address::DEALER_PAGE;
use crate::language::title;
use crate::model::Environment;
use crate::rules::in_force;
use crate::text::desk::Desk;
use hangtrue_core::Survey;
use hangtrue_core::check::Report;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Speaker;
use hangtrue_link::code::{HeardError, Misheard, Outcome, compare};

/// An order and another one of the same truck.
pub(super) const MOST_SENT: usize = 2;

/// What the desk is for at the moment; it keeps the other one as it is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Screen {
    /// One order, said or sent.
    #[default]
    One,
    /// Many at once.
    Many,
}

/// Everything the desk shows, and nothing else.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Model {
    /// What the page is told of its surroundings.
    pub environment: Environment,
    /// The rules orders are checked by.
    pub profile: Profile,
    /// What kept a dealer's rules away.
    pub profile_fault: Option<String>,
    /// Which of its two screens is shown.
    pub screen: Screen,
    /// The order that is being said.
    pub phone: Phone,
    /// The check characters as they were heard.
    pub heard: String,
    /// The call before this one, while nothing of this one is typed.
    pub before: Option<Box<Before>>,
    /// What was said, as it was when an order of it was last printed or saved.
    pub saved: Option<Survey>,
    /// Whether the browser asks before the page is left.
    pub asks_before_leaving: bool,
    /// The characters over which no order was made, once: they say that a number is another.
    pub warned: String,
    /// What is typed or pasted where an order is opened.
    pub paste: String,
    /// Why the last text that was to be opened gave no order.
    pub trouble: Option<Trouble>,
    /// What the camera does.
    pub camera: Camera,
    /// Orders that were sent, at most [`MOST_SENT`].
    pub sent: Vec<Sent>,
    /// Which of them goes onto paper.
    pub printed: usize,
    /// Many orders at once.
    pub many: Many,
    /// The element that has the focus, by its name.
    pub active: String,
    /// What the live region says: the question, half a second behind the typing.
    pub spoken: String,
    /// Whether the last copying worked.
    pub copied: Option<bool>,
    /// Whether a newer build of the page waits.
    pub newer: bool,
}

/// A call that another took the place of.
#[derive(Clone, Debug, PartialEq)]
pub struct Before {
    phone: Phone,
    heard: String,
    warned: String,
    sent: Vec<Sent>,
}

impl Model {
    /// Another call: everything goes but the unit, and what was typed can be had back.
    pub(super) fn fresh(&mut self) {
        let survey = Survey::new(self.phone.survey.unit);
        let phone = core::mem::replace(&mut self.phone, Phone { survey, ..Phone::default() });
        let (heard, warned) = (core::mem::take(&mut self.heard), core::mem::take(&mut self.warned));
        let sent = core::mem::take(&mut self.sent);
        if phone.begun() {
            self.before = Some(Box::new(Before { phone, heard, warned, sent }));
        }
        self.clear();
    }

    /// The call before, as it was.
    pub(super) fn go_back(&mut self) {
        let Some(before) = self.before.take() else { return };
        let Before { phone, heard, warned, sent } = *before;
        (self.phone, self.heard, self.warned, self.sent) = (phone, heard, warned, sent);
        self.clear();
    }

    /// What belongs to no call.
    fn clear(&mut self) {
        self.paste.clear();
        self.trouble = None;
        self.printed = 0;
        self.spoken.clear();
        self.copied = None;
    }

    /// Whether there is a call to go back to: nothing is typed that would go for it.
    #[must_use]
    pub fn can_go_back(&self) -> bool {
        self.before.is_some() && !self.phone.begun()
    }

    /// A desk with nothing on it.
    #[must_use]
    pub fn new(environment: Environment) -> Self {
        Self { environment, ..Self::default() }
    }

    /// Takes a dealer's rules, or what was wrong with them: then the built-in ones hold, and
    /// the page says so. Orders' links lead to the page by the same rules, which `query` names.
    pub fn rule_by(&mut self, rules: Result<Profile, String>, query: &str) {
        let untouched = (!self.phone.begun()).then_some(&mut self.phone.survey);
        (self.profile, self.profile_fault) = in_force(rules, untouched);
        if self.profile_fault.is_none() {
            self.environment.base += &[DEALER_PAGE, "?", query].concat();
        }
    }

    /// Who the page speaks to.
    #[must_use]
    pub const fn speaker(&self) -> Speaker {
        Speaker { language: self.environment.language, unit: self.phone.survey.unit }
    }

    /// Marks the document as what it is.
    pub(super) fn speak(&self) -> Effect {
        let language = self.environment.language;
        Effect::Page(crate::Effect::Speak(language, title(language, Desk::of(language).heading)))
    }

    /// Whether what was typed stands nowhere but here: a desk keeps no draft, as the next at its
    /// keyboard may be another.
    pub(super) fn would_be_lost(&self) -> bool {
        self.phone.begun() && self.saved.as_ref() != Some(&self.phone.survey)
    }

    /// The one question to put to the caller now.
    #[must_use]
    pub fn ask(&self) -> Ask {
        self.ask_of(&self.phone.report(&self.profile))
    }

    /// The same, with the check of what was said. What is known to be misheard comes before what
    /// the numbers themselves say.
    pub(super) fn ask_of(&self, report: &Report) -> Ask {
        let misheard = self.misheard().filter(|ask| !self.phone.stands.contains(ask));
        misheard.unwrap_or_else(|| self.phone.ask(report))
    }

    /// What the check characters, as they were heard, say of what was said.
    pub(super) fn characters(&self) -> Result<Outcome, HeardError> {
        compare(&self.phone.said(), self.heard.trim())
    }

    /// The number that the check characters say is another, if they name one.
    fn misheard(&self) -> Option<Ask> {
        let Ok(Outcome::Differs(all)) = self.characters() else { return None };
        all.iter().find_map(|one| match one {
            Misheard::Number { dimension, typed: Some(typed), likely } => Some(Ask::Misheard {
                spot: dimension.main_spot(),
                said: *typed,
                meant: *likely.first()?,
            }),
            _ => None,
        })
    }
}
