//! What is wrong with a table, as data; the words are in [`crate::say`].

use crate::LinkError;
use hangtrue_core::{Length, Unit};

/// What is wrong with a table, or with one row of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// Nothing but blank lines.
    Empty,
    /// A quotation mark inside a field that did not begin with one. The row is refused;
    /// the next one can be read.
    Inside {
        /// Which field of the row, from 1.
        column: usize,
    },
    /// Something stands behind the quotation mark that ends a field. From here on nobody
    /// knows what is inside and what is outside: nothing further is read.
    Behind {
        /// Which field of the row, from 1.
        column: usize,
    },
    /// A quotation mark is never closed: nothing further is read.
    Open {
        /// Which field of the row, from 1.
        column: usize,
    },
    /// A row has another number of fields than the first.
    Count {
        /// How many there are.
        found: usize,
        /// How many the first row has.
        expected: usize,
    },
    /// A cell that must be one of a few words.
    Word {
        /// The name of the column.
        column: String,
        /// What stands there, cut to what can be shown.
        found: String,
        /// What may stand there.
        known: &'static [&'static str],
    },
    /// A cell that says another number than the link beside it: one of the two was put right,
    /// and nobody can know which.
    Differs {
        /// The name of the column.
        column: String,
        /// What stands there, cut to what can be shown.
        found: String,
        /// What the link orders, if it has that number.
        ordered: Option<Length>,
        /// What the link's order is written in.
        unit: Unit,
    },
    /// A link that cannot be read.
    Link(LinkError),
    /// No reading in any column.
    NoReading,
}

impl Fault {
    /// Its name in files.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::Inside { .. } => "quote-inside",
            Self::Behind { .. } => "text-behind-quote",
            Self::Open { .. } => "quote-open",
            Self::Count { .. } => "field-count",
            Self::Word { .. } => "unknown-value",
            Self::Differs { .. } => "differs-from-link",
            Self::Link(_) => "link",
            Self::NoReading => "no-reading",
        }
    }

    /// Whether nothing further can be read.
    #[must_use]
    pub const fn ends_the_table(&self) -> bool {
        matches!(self, Self::Empty | Self::Behind { .. } | Self::Open { .. })
    }
}
