//! The words of the counter desk. They stand beside the page's own, not among them:
//! the walk must not carry them.

use crate::desk::ask::Ask;
use hangtrue_core::say::Speaker;

/// The desk in one language.
#[derive(Debug)]
pub struct Desk {
    /// Heading.
    pub heading: &'static str,
    /// To the page that measures.
    pub measure: &'static str,
    /// The order that is being said.
    pub phone: Phone,
    /// What to ask the caller next, in one sentence.
    pub ask: fn(&Ask, Speaker) -> String,
}

/// The order that is being said.
#[derive(Debug)]
pub struct Phone {
    /// Heading over the fields.
    pub heading: &'static str,
    /// Which unit the caller speaks in.
    pub unit: &'static str,
    /// Inches.
    pub inches: &'static str,
    /// Millimetres.
    pub millimetres: &'static str,
    /// What the numbers are of.
    pub frame: &'static str,
    /// Of the frame as it is.
    pub as_it_is: &'static str,
    /// Of the frame after it is built.
    pub as_it_will_be: &'static str,
    /// Behind the name of a field that takes a repeat.
    pub again: &'static str,
    /// Under a field whose text is no reading.
    pub unread: &'static str,
    /// What Enter does.
    pub next: &'static str,
    /// Another call.
    pub fresh: &'static str,
    /// Heading over the question.
    pub ask: &'static str,
    /// The caller says that it is as it was said.
    pub stands: &'static str,
    /// The caller cannot take this reading.
    pub cannot: &'static str,
    /// The caller says it is this.
    pub it_is: fn(&str) -> String,
    /// Heading over the findings.
    pub found: &'static str,
    /// Before anything was typed.
    pub nothing_yet: &'static str,
    /// Nothing stands against the numbers so far.
    pub so_far: &'static str,
    /// Over the numbers that building changes.
    pub after_building: &'static str,
}
