//! The words of an order as text.

use hangtrue_core::Dimension;

/// An order as text, in one language.
pub(crate) struct Lines {
    /// The short name of a number, plain ASCII, for one line.
    pub(crate) short: fn(Dimension) -> &'static str,
    /// Behind the line of an order whose frame has to be built first, plain ASCII too; before what
    /// was found.
    pub(crate) once_built: &'static str,
    /// Behind what was found.
    pub(crate) measure_again: &'static str,
    /// Heading.
    pub(crate) heading: &'static str,
    /// What stands between a name and what it names.
    pub(crate) colon: &'static str,
    /// The vehicle, how the writer is reached, the note.
    pub(crate) about: [&'static str; 3],
    /// The date.
    pub(crate) date: &'static str,
    /// There is no number.
    pub(crate) not_read: &'static str,
    /// A number that building changes: as ordered, as found.
    pub(crate) built: fn(&str, &str) -> String,
    /// Over what is to be built.
    pub(crate) build: &'static str,
    /// Header down by, left post out by, right post out by.
    pub(crate) build_by: [&'static str; 3],
    /// The verdict, over the findings: clear, recheck, stop.
    pub(crate) verdict: [&'static str; 3],
    /// Over the readings.
    pub(crate) readings: &'static str,
    /// Behind a reading that was struck.
    pub(crate) replaced: &'static str,
}
