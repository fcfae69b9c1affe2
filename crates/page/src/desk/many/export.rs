//! What was found, as a file.

use super::found::Found;
use crate::effect::Effect;
use hangtrue_core::say::Language;
use hangtrue_link::csv;
use hangtrue_link::json::text::{Entry, Node, Number, Value, print};
use hangtrue_link::list::{ANSWER_COLUMNS, Answer};

/// How it is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Export {
    /// A table, of which no cell is a formula to a spreadsheet.
    Csv,
    /// An object a line, its keys the columns of the table.
    JsonLines,
}

impl Export {
    /// Both, in the order they are offered.
    pub const ALL: [Self; 2] = [Self::Csv, Self::JsonLines];

    /// Its name, which ends the file's.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Csv => "csv",
            Self::JsonLines => "jsonl",
        }
    }

    /// The one of that name.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|export| export.key() == key)
    }

    const fn media(self) -> &'static str {
        match self {
            Self::Csv => "text/csv;charset=utf-8",
            Self::JsonLines => "application/x-ndjson",
        }
    }
}

/// How many rows one step writes.
const ROWS: usize = 128;

/// A file that is being written.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Saving {
    export: Export,
    /// How many rows are written.
    written: usize,
    text: String,
}

impl Saving {
    pub(super) fn new(export: Export) -> Self {
        let text = match export {
            // The mark tells a spreadsheet that it is UTF-8.
            Export::Csv => ["\u{feff}", &csv::line(&ANSWER_COLUMNS)].concat(),
            Export::JsonLines => String::new(),
        };
        Self { export, written: 0, text }
    }

    /// How much of it is written, in hundredths.
    pub(super) fn percent(&self, of: usize) -> usize {
        self.written.saturating_mul(100).checked_div(of).unwrap_or(0)
    }

    /// Writes the next of the rows that are `shown`; hands the file over behind the last.
    pub(super) fn step(
        &mut self,
        found: &[Found],
        shown: &[usize],
        language: Language,
    ) -> Option<Effect> {
        let rows = shown.iter().skip(self.written).take(ROWS);
        for found in rows.filter_map(|at| found.get(*at)) {
            match self.export {
                Export::Csv => self.text.push_str(&csv::line(&found.answer.cells(language))),
                Export::JsonLines => {
                    self.text.push_str(&print(&object(&found.answer, language)));
                    self.text.push('\n');
                }
            }
        }
        self.written = self.written.saturating_add(ROWS).min(shown.len());
        (self.written >= shown.len()).then(|| Effect::Download {
            name: ["orders-checked.", self.export.key()].concat(),
            media: self.export.media(),
            text: core::mem::take(&mut self.text),
        })
    }
}

/// The cells under their names; `line` is a number, `findings` a list, and what is empty
/// `null`.
fn object(answer: &Answer, language: Language) -> Node<'static> {
    let cells = ANSWER_COLUMNS.into_iter().zip(answer.cells(language));
    let entries = cells.map(|(key, cell)| {
        let node = match key {
            "line" => {
                let line = u64::try_from(answer.line).unwrap_or(u64::MAX);
                Value::Number(Number::from(line)).into()
            }
            "findings" => {
                let rules = answer.findings.iter().map(|rule| Node::text(*rule));
                Value::List(rules.collect()).into()
            }
            _ if cell.is_empty() => Value::Null.into(),
            _ => Node::text(cell),
        };
        Entry { key: key.into(), node }
    });
    Value::Object(entries.collect()).into()
}
