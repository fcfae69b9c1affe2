//! What a rule found: severity, place, message and hints, as separate data.

use crate::say::Message;
use crate::spot::Spot;

/// How far a finding goes. The worst finding is the verdict.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Worth knowing; changes nothing.
    #[default]
    Note,
    /// May go on once a person has confirmed it, and the order says so.
    Recheck,
    /// Cannot be; no link is made.
    Stop,
}

impl Severity {
    /// The name in files: `note`, `recheck`, `stop`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Recheck => "recheck",
            Self::Stop => "stop",
        }
    }
}

/// The name of a rule in files and links; each is the file name in `rules/` with dashes.
pub type RuleCode = &'static str;

/// One thing found. Its text is made by [`crate::say`], in the reader's language and unit.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// How far it goes.
    pub severity: Severity,
    /// Which rule found it.
    pub rule: RuleCode,
    /// The readings it is about, the most suspect first.
    pub spots: Vec<Spot>,
    /// What is so: the dimension, the value, the limit.
    pub message: Message,
    /// What to do next, each with the person's own numbers in it.
    pub hints: Vec<Message>,
}
