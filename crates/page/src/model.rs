//! The state of the screen.

use crate::address::Address;
use crate::draft::Listed;
use crate::event::{Event, Trouble};
use crate::field::Field;
use crate::rest;
use crate::step::Step;
use hangtrue_core::check::check_by_rules;
use hangtrue_core::check::{Report, Verdict};
use hangtrue_core::judge::Judgement;
use hangtrue_core::order::{Confirmed, Date, Order};
use hangtrue_core::profile::Profile;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Finding, Length, Severity, Spot, Survey};
use hangtrue_link::LinkError;

/// What the page is told of its surroundings.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Environment {
    /// The page's own address, up to and without the `#`.
    pub base: String,
    /// Whether there is a share sheet.
    pub can_share: bool,
    /// Today, by the device.
    pub today: Option<Date>,
    /// The language the page speaks.
    pub language: Language,
    /// Whether the second module is still on its way: see [`crate::rest`].
    pub partial: bool,
}

/// Why what was sent is no order.
#[derive(Clone, Debug, PartialEq)]
pub enum Unopened {
    /// A link that is damaged.
    Link(LinkError),
    /// The record of a hung door, by its payload: another page opens it.
    Record(String),
    /// A file without a link in it, or with more: the cells of a table may say other numbers than
    /// the link beside them. Other files are opened at the counter desk: what reads them weighs
    /// some 20 KB gzip.
    File,
}

/// An order that was sent, as far as it could be read.
pub type Opened = Result<Order, Unopened>;

/// What stands while a reading is typed, as it was before; none of what follows each key.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Held {
    /// What the judge said of the survey, where what was found is told.
    pub judgement: Option<Judgement>,
    /// The same of the survey without the reading on offer, where one is.
    pub before: Option<Judgement>,
    /// The survey that is drawn.
    pub survey: Option<Survey>,
    /// What was read last in the field that is typed in, which may be unreadable halfway.
    pub read: Option<(Field, Length)>,
}

/// Everything the screen shows, and nothing else.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Model {
    /// The screen.
    pub step: Step,
    /// Where Continue goes back to, when a field was reached by a Change link.
    pub back_to: Option<Step>,
    /// What is being measured and ordered.
    pub order: Order,
    /// The rules it is checked by.
    pub profile: Profile,
    /// What is wrong with the rules that a dealer gave; then the built-in ones hold.
    pub profile_fault: Option<String>,
    /// The field with the keys and the tape beside it.
    pub active: Option<Field>,
    /// Whether the keyboard has letters, for feet and words.
    pub letters: bool,
    /// Whether Continue was pressed on this screen, so that errors stand.
    pub told: bool,
    /// The questions that Continue has put on this screen: it passes them the next time.
    pub asked: Vec<Confirmed>,
    /// The one more reading that is offered now.
    pub proof: Option<Field>,
    /// What stands while a reading is typed.
    pub held: Held,
    /// Whether a reading, or what it is judged by, was changed since what is confirmed was held against what is found.
    pub unsettled: bool,
    /// What was confirmed since the page was opened: see [`seen`].
    pub seen: Vec<String>,
    /// Readings that were offered and left out.
    pub skipped: Vec<Spot>,
    /// The reading that the one more is to replace: struck once that is typed.
    pub replaces: Option<Field>,
    /// An order that was sent.
    pub opened: Option<Opened>,
    /// Whether the question stands if that order shall take the draft's place.
    pub replacing: bool,
    /// What the live region says; follows the field half a second behind.
    pub spoken: String,
    /// Whether the last copying worked, since the screen changed.
    pub copied: Option<bool>,
    /// Whether a newer build of the page waits.
    pub newer: bool,
    /// What is amiss with keeping the draft, until it has been read.
    pub trouble: Option<Trouble>,
    /// Whether this draft has been kept on the device: an empty one is not, at first.
    pub kept: bool,
    /// What happened that only the second module can take in.
    pub waiting: Vec<Event>,
    /// Whether that module could not be had.
    pub missing: bool,
    /// The drafts that this device keeps.
    pub drafts: Vec<Listed>,
    /// The one of which it is asked whether it shall go.
    pub deleting: Option<u32>,
    /// What the page is told of its surroundings.
    pub environment: Environment,
}

impl Model {
    /// A new survey at the first screen.
    #[must_use]
    pub fn new(environment: Environment) -> Self {
        Self { environment, ..Self::default() }
    }

    /// The address of the present screen.
    #[must_use]
    pub fn address(&self) -> Address {
        let proof = self.proof.filter(|_| self.step == Step::Proof);
        Address { step: self.step, proof }
    }

    /// Who the page speaks to.
    #[must_use]
    pub const fn speaker(&self) -> Speaker {
        Speaker { language: self.environment.language, unit: self.order.survey.unit }
    }

    /// The whole check of the survey as it stands.
    #[must_use]
    pub fn report(&self) -> Report {
        if self.environment.partial {
            return self.by_rules();
        }
        rest::report(self)
    }

    /// What is shown of the check: while a reading is typed, with what the judge said before.
    #[must_use]
    pub(crate) fn shown(&self) -> Report {
        // Until Continue is pressed the screens of readings show nothing that the judge says.
        if !self.told && (self.step.is_first() || self.step == Step::Proof) {
            return self.by_rules();
        }
        match &self.held.judgement {
            Some(judgement) if !self.environment.partial => rest::as_judged(self, judgement),
            _ => self.report(),
        }
    }

    /// The survey by the rules alone, at a small part of the cost of [`Self::report`].
    #[must_use]
    pub(crate) fn by_rules(&self) -> Report {
        if self.profile.is_built_in() {
            return check_by_rules(&self.order.survey, &self.profile);
        }
        check_by_rules(&self.order.survey, &rest::rules(self))
    }

    /// The survey that is drawn: a frame does not leap with every digit.
    pub(crate) fn drawn(&self) -> &Survey {
        self.held.survey.as_ref().unwrap_or(&self.order.survey)
    }

    /// What is typed in `field`.
    #[must_use]
    pub fn typed(&self, field: Field) -> &str {
        let entries = self.order.survey.entries(field.spot);
        entries.get(field.index).map_or("", |entry| &entry.text)
    }

    /// What is read in `field`; none where nothing is, or nothing readable.
    #[must_use]
    pub fn read(&self, field: Field) -> Option<Length> {
        let entry = self.order.survey.entries(field.spot).get(field.index)?;
        entry.read.as_ref().ok().copied()
    }

    /// Whether anything has been typed at all.
    #[must_use]
    pub fn has_draft(&self) -> bool {
        let mut spots = Spot::ALL.into_iter();
        spots.any(|spot| !self.order.survey.entries(spot).is_empty())
    }

    /// Whether `finding` has been confirmed.
    #[must_use]
    pub fn confirmed(&self, finding: &Finding) -> bool {
        self.order.confirmed.contains(&confirmation(finding))
    }

    /// What still stands against sending the order.
    #[must_use]
    pub fn against(&self, report: &Report) -> Vec<Finding> {
        let open = |finding: &&Finding| match finding.severity {
            Severity::Stop => true,
            Severity::Recheck => !self.confirmed(finding),
            Severity::Note => false,
        };
        report.findings.iter().filter(open).cloned().collect()
    }

    /// The order as it is sent, with the verdict that was shown.
    #[must_use]
    pub fn sent(&self, verdict: Verdict) -> Order {
        Order {
            claimed: verdict,
            date: self.environment.today,
            language: self.environment.language.key().to_owned(),
            profile: self.profile.named(),
            ..self.order.clone()
        }
    }
}

/// What is kept of a finding once a person has confirmed it.
#[must_use]
pub fn confirmation(finding: &Finding) -> Confirmed {
    Confirmed { rule: finding.rule.to_owned(), spot: finding.spots.first().copied() }
}

/// A finding with its numbers, as a person saw it; the name of its checkbox and a line end come
/// first.
#[must_use]
pub fn seen(finding: &Finding) -> String {
    let said = Speaker::default().say(&finding.message);
    [&confirm_key(&confirmation(finding)), "\n", &said].concat()
}

/// The name of a finding's checkbox.
#[must_use]
pub fn confirm_key(confirmed: &Confirmed) -> String {
    let spot = confirmed.spot.map(|spot| spot.key()).unwrap_or_default();
    [confirmed.rule.as_str(), ":", &spot].concat()
}
