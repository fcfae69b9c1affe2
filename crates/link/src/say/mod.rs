//! Every sentence this crate can say: data elsewhere, words in one catalogue per language.

mod en;
mod es;
mod fr;
mod script;
mod share;

pub(crate) use script::Script;
pub(crate) use share::Lines;

use hangtrue_core::say::Language;

use crate::code::{HeardError, SmallError};
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
        Language::Spanish => es::link::read(error),
        Language::French => fr::link::read(error),
    }
}

/// Why there is no link, and what to do.
#[must_use]
pub fn encode(language: Language, error: EncodeError) -> Advice {
    match language {
        Language::English => en::link::write(error),
        Language::Spanish => es::link::write(error),
        Language::French => fr::link::write(error),
    }
}

/// What is wrong with a table, or with a row of it.
#[must_use]
pub fn table(language: Language, fault: &crate::csv::Fault) -> String {
    match language {
        Language::English => en::csv::say(fault),
        Language::Spanish => es::csv::say(fault),
        Language::French => fr::csv::say(fault),
    }
}

/// Why one of many is no order.
#[must_use]
pub fn unread(language: Language, unread: &crate::list::Unread) -> String {
    use crate::list::Unread;
    match unread {
        Unread::Row(fault) => table(language, fault),
        Unread::File(error) => file(language, error),
        Unread::Link(error) => {
            let advice = link(language, *error);
            [&advice.what, " ", advice.ask].concat()
        }
    }
}

/// Why what a clerk typed is no run of characters.
#[must_use]
pub fn heard(language: Language, error: &HeardError) -> String {
    match language {
        Language::English => en::code::heard(error),
        Language::Spanish => es::code::heard(error),
        Language::French => fr::code::heard(error),
    }
}

/// Why thirty characters are no order.
#[must_use]
pub fn small(language: Language, error: &SmallError) -> String {
    match language {
        Language::English => en::code::small(error),
        Language::Spanish => es::code::small(error),
        Language::French => fr::code::small(error),
    }
}

/// What is wrong with a line of surveys, and where.
#[must_use]
pub fn file(language: Language, error: &crate::json::FileError) -> String {
    match language {
        Language::English => en::file::say(error),
        Language::Spanish => es::file::say(error),
        Language::French => fr::file::say(error),
    }
}

/// What is wrong with a file that holds one order or survey, and where.
#[must_use]
pub fn whole_file(language: Language, error: &crate::json::FileError) -> String {
    match language {
        Language::English => en::file::say_whole(error),
        Language::Spanish => es::file::say_whole(error),
        Language::French => fr::file::say_whole(error),
    }
}

/// What is wrong with a profile, and where.
#[must_use]
pub fn profile(language: Language, error: &crate::json::FileError) -> String {
    match language {
        Language::English => en::profile::say(error),
        Language::Spanish => es::profile::say(error),
        Language::French => fr::profile::say(error),
    }
}

/// The words of an order as text.
pub(crate) const fn lines(language: Language) -> &'static Lines {
    match language {
        Language::English => &en::share::LINES,
        Language::Spanish => &es::share::LINES,
        Language::French => &fr::share::LINES,
    }
}

/// The words of the script for the telephone.
pub(crate) const fn script_words(language: Language) -> &'static Script {
    match language {
        Language::English => &en::script::SCRIPT,
        Language::Spanish => &es::script::SCRIPT,
        Language::French => &fr::script::SCRIPT,
    }
}
