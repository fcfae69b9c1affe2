//! The words of the screen that checks many orders.

use crate::desk::many::Counts;
use hangtrue_core::finding::RuleCode;

/// Many orders at once.
#[derive(Debug)]
pub struct Many {
    /// What the switch between the two screens is for.
    pub screens: &'static str,
    /// One order.
    pub one: &'static str,
    /// Many at once; the heading too.
    pub many: &'static str,
    /// The box that takes a list.
    pub paste: &'static str,
    /// What may be put into it.
    pub paste_hint: &'static str,
    /// Take what is in it.
    pub open: &'static str,
    /// There is no list in it, nor an order.
    pub nothing: &'static str,
    /// Heading over a list without a name.
    pub pasted: &'static str,
    /// Over the columns: what to do there.
    pub columns: &'static str,
    /// The heads of that table: the column's name, what it holds, its unit.
    pub column: &'static str,
    /// As above.
    pub holds: &'static str,
    /// As above.
    pub measured: &'static str,
    /// Of a column's bare numbers nothing tells the unit.
    pub as_the_rest: &'static str,
    /// A row of the table, by its number.
    pub row: fn(usize) -> String,
    /// What is no reading, in the order of [`hangtrue_link::csv::What::OTHERS`].
    pub others: [&'static str; 8],
    /// The unit of bare numbers.
    pub bare: &'static str,
    /// Dimensions that no column holds, by their names.
    pub missing: fn(&[&str]) -> String,
    /// Check all of them.
    pub check: &'static str,
    /// Put this list away.
    pub another: &'static str,
    /// Look at the columns again.
    pub change: &'static str,
    /// What the bar shows.
    pub progress: &'static str,
    /// How many have been checked, and how much of the list that is, in hundredths.
    pub checked: fn(usize, usize) -> String,
    /// Check no further.
    pub stop: &'static str,
    /// It was stopped, at this much of it.
    pub stopped: fn(usize) -> String,
    /// Go on.
    pub resume: &'static str,
    /// What they came to.
    pub summary: fn(&Counts) -> String,
    /// So many rows are shown.
    pub so_many: fn(usize) -> String,
    /// The choice of verdicts.
    pub verdicts: &'static str,
    /// All of them.
    pub all: &'static str,
    /// No order.
    pub unread: &'static str,
    /// The choice of findings.
    pub findings: &'static str,
    /// The field that looks for a name.
    pub find: &'static str,
    /// Nothing passes.
    pub none: &'static str,
    /// What the table is, for who listens.
    pub table: &'static str,
    /// The heads of its columns: line, order, verdict.
    pub heads: [&'static str; 3],
    /// The heads of the four numbers.
    pub numbers: [&'static str; 4],
    /// The head of the last column.
    pub first_finding: &'static str,
    /// Behind the name of an order, on the button that opens it: its line.
    pub line: fn(usize) -> String,
    /// Which rows are shown, of how many.
    pub rows: fn(usize, usize, usize) -> String,
    /// The page before.
    pub previous: &'static str,
    /// The page after.
    pub next: &'static str,
    /// Save as a table, as JSON lines.
    pub save: [&'static str; 2],
    /// While a file is written.
    pub writing: &'static str,
    /// What a rule finds, in few words; empty for one that has none.
    pub rule: fn(RuleCode) -> &'static str,
}
