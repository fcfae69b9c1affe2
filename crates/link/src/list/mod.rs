//! Many orders in one text: rows of a table, lines of JSON, lines with a link each.
//!
//! The command and the page read them here and answer them here, so that both say the same
//! of the same file.

mod answer;
mod format;

pub use answer::{ANSWER_COLUMNS, Answer, Likeliest, Says};
pub use format::Format;

use crate::csv::{self, Row};
use crate::json::{self, FileError, Id};
use crate::{LinkError, decode, find};
use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::{check, check_order};

/// One of many that should be an order.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    /// The line it begins on, from 1.
    pub line: usize,
    /// What the sender calls it.
    pub id: Id,
    /// The order, or why it is none.
    pub order: Result<Order, Unread>,
    /// Whether it came as an order, with the verdict that its writer saw and answers to a
    /// dealer's questions; a survey and the cells of a table bring neither.
    pub judged: bool,
}

/// Why something is no order.
#[derive(Clone, Debug, PartialEq)]
pub enum Unread {
    /// A row of a table that cannot be read.
    Row(csv::Fault),
    /// JSON that is not as its format says.
    File(FileError),
    /// A link that is damaged, or none.
    Link(LinkError),
}

impl Item {
    /// The survey or order in a line of JSON.
    #[must_use]
    pub fn of_json(line: usize, text: &str) -> Self {
        match json::parse_any(text.strip_prefix('\u{feff}').unwrap_or(text)) {
            Ok(read) => Self { line, id: read.id, order: Ok(read.order), judged: read.is_order },
            Err((id, error)) => Self { line, id, order: Err(Unread::File(error)), judged: false },
        }
    }

    /// The order of the link in a line.
    #[must_use]
    pub fn of_link(line: usize, text: &str) -> Self {
        let order = find(text).and_then(|payload| decode(&payload)).map_err(Unread::Link);
        Self { line, id: Id::None, order, judged: true }
    }

    /// The check of its order, where it is one: what it was judged by is run again, and
    /// answers are looked for only where they can be.
    #[must_use]
    pub fn check(&self, profile: &Profile) -> Option<Report> {
        let order = self.order.as_ref().ok()?;
        Some(if self.judged {
            check_order(order, profile)
        } else {
            check(&order.survey, &profile.chosen(&[]))
        })
    }
}

impl From<Row> for Item {
    fn from(row: Row) -> Self {
        let id = if row.id.is_empty() { Id::None } else { Id::Text(row.id) };
        let judged = row.source == csv::Source::Link;
        Self { line: row.line, id, order: row.order.map_err(Unread::Row), judged }
    }
}
