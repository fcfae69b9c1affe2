//! What is wrong with a file, in English (US).

use crate::json::text::Syntax;
use crate::json::{Fault, FileError, NodeKind};

pub(crate) fn say(error: &FileError) -> String {
    let place = if error.place.is_empty() { "The input" } else { error.place.as_str() };
    match &error.fault {
        Fault::NotJson { column, what, .. } => {
            let reason = syntax(*what);
            format!("This line is not JSON: {reason} at column {column}.")
        }
        Fault::TooLong { most } => {
            format!("This line is longer than {most} bytes. Write one object a line.")
        }
        fault => of(place, fault),
    }
}

/// Of a file that is one order, over any number of lines.
pub(crate) fn say_whole(error: &FileError) -> String {
    match &error.fault {
        Fault::NotJson { line, column, what } => {
            let reason = syntax(*what);
            format!("The file is not JSON: {reason} at line {line}, column {column}.")
        }
        Fault::TooLong { most } => format!("The file is longer than {most} bytes."),
        _ => say(error),
    }
}

/// What is wrong at `place`.
pub(super) fn of(place: &str, fault: &Fault) -> String {
    match fault {
        Fault::Kind { expected, found } => {
            format!("{place} is {}; {} is expected.", kind(*found), kind(*expected))
        }
        Fault::NumberForText { number } => format!(
            "{place} is the number {number}. Write a reading in quotation marks, as it was \
             typed: \"{number}\"."
        ),
        Fault::Reading { found } => format!(
            "{place} is {}. A place holds one reading in quotation marks or a list of them; \
             leave it out where nothing was read.",
            kind(*found)
        ),
        Fault::Missing { key } => format!("{place} has no \"{key}\"."),
        Fault::Twice { key } => format!("{place} has \"{key}\" twice."),
        Fault::Unknown { key, known } => {
            format!("{place} has a key \"{key}\" that is not known. Known are: {}.", list(known))
        }
        Fault::Choice { found, known } => {
            format!("{place} is \"{found}\". It can be: {}.", list(known))
        }
        Fault::NotWhole { number } => {
            format!("{place} is {number}. It can be a whole number from 0 to 4294967295.")
        }
        Fault::Date { found } => {
            format!("{place} is \"{found}\". Write a day as 2026-11-25.")
        }
        Fault::Profile(fault) => super::profile::of(place, fault),
        // Said of the whole file, by its own name for itself.
        Fault::NotJson { what, .. } => format!("{place} is not JSON: {}.", syntax(*what)),
        Fault::TooLong { most } => format!("{place} is longer than {most} bytes."),
    }
}

/// Why a text is no JSON; "at column 5" can follow.
pub(super) fn syntax(what: Syntax) -> String {
    match what {
        Syntax::Long { most } => format!("it is longer than {most} bytes"),
        Syntax::Deep { most } => format!("lists and objects stand more than {most} deep"),
        Syntax::Value => "a value is expected".to_owned(),
        Syntax::Key => "a key in quotation marks is expected".to_owned(),
        Syntax::Colon => "a colon is expected".to_owned(),
        Syntax::Comma { end } => format!("a comma or {end} is expected"),
        Syntax::After => "something stands after the end".to_owned(),
        Syntax::Open => "a text has no closing quotation mark".to_owned(),
        Syntax::Control => "a text has a line end or control character".to_owned(),
        Syntax::Escape => "a backslash stands before nothing it can stand before".to_owned(),
        Syntax::Surrogate => "half of a \\u pair stands alone".to_owned(),
        Syntax::Number => "a number is not written as JSON writes numbers".to_owned(),
    }
}

fn list(known: &[&str]) -> String {
    known.join(", ")
}

const fn kind(kind: NodeKind) -> &'static str {
    match kind {
        NodeKind::Null => "null",
        NodeKind::Bool => "true or false",
        NodeKind::Number => "a number",
        NodeKind::Text => "a text",
        NodeKind::List => "a list",
        NodeKind::Object => "an object",
    }
}
