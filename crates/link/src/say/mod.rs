//! Every sentence this crate can say: data elsewhere, words in one catalogue per language.

mod en;

use hangtrue_core::Dimension;
use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::say::{Language, Speaker};

use crate::{EncodeError, LinkError};

/// What is so, and what to do about it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Advice {
    /// What is wrong.
    pub what: String,
    /// What to ask the sender, or to do.
    pub ask: &'static str,
}

/// What is wrong with a link, and what to ask its sender.
#[must_use]
pub fn link(language: Language, error: LinkError) -> Advice {
    match language {
        Language::English => en::link::read(error),
    }
}

/// Why there is no link, and what to do.
#[must_use]
pub fn encode(language: Language, error: EncodeError) -> Advice {
    match language {
        Language::English => en::link::write(error),
    }
}

/// What is wrong with a table, or with a row of it.
#[must_use]
pub fn table(language: Language, fault: &crate::csv::Fault) -> String {
    match language {
        Language::English => en::csv::say(fault),
    }
}

/// What is wrong with a line of surveys, and where.
#[must_use]
pub fn file(language: Language, error: &crate::json::FileError) -> String {
    match language {
        Language::English => en::file::say(error),
    }
}

/// What is wrong with a file that holds one order or survey, and where.
#[must_use]
pub fn whole_file(language: Language, error: &crate::json::FileError) -> String {
    match language {
        Language::English => en::file::say_whole(error),
    }
}

/// What is wrong with a profile, and where.
#[must_use]
pub fn profile(language: Language, error: &crate::json::FileError) -> String {
    match language {
        Language::English => en::profile::say(error),
    }
}

/// The short name of a number, plain ASCII, for one line.
pub(crate) const fn short(language: Language, dimension: Dimension) -> &'static str {
    match language {
        Language::English => en::share::short(dimension),
    }
}

/// The order as plain text.
pub(crate) fn summary(order: &Order, report: &Report, link: &str, speaker: Speaker) -> String {
    match speaker.language {
        Language::English => en::share::summary(order, report, link, speaker),
    }
}
