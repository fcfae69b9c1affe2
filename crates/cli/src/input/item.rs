//! What a piece of input means: one item after the other.

use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_link::csv::{Mark, Sheet};
use hangtrue_link::json::{self, Fault, FileError, Id};
use hangtrue_link::list::{self, Unread};
use hangtrue_link::{LinkError, code, say};

use super::Piece;
use crate::args::Format;
use crate::lines::LONGEST;

/// One thing in an input that should be an order.
#[derive(Debug)]
pub(crate) struct Item {
    /// The line it begins on, from 1.
    pub(crate) line: u64,
    /// What the sender calls it.
    pub(crate) id: Id,
    /// The order, or why it is none.
    pub(crate) content: Result<Content, Wrong>,
}

/// An order, and how it came.
#[derive(Debug, Default)]
pub(crate) struct Content {
    pub(crate) order: Order,
    /// It came as an order: with a verdict its writer saw, and answers to questions.
    pub(crate) is_order: bool,
    /// Which of thirty characters, from 1, were misheard: the order is a proposal.
    pub(crate) corrected: Vec<usize>,
}

impl Content {
    /// With the verdict that its writer sees, and by whose rules: a survey brings neither.
    pub(crate) fn claimed(mut self, report: &Report, profile: &Profile) -> Self {
        if !self.is_order {
            self.order.claimed = report.verdict;
            self.order.profile = profile.named();
        }
        self
    }
}

/// Why something is no order, in words.
#[derive(Debug)]
pub(crate) struct Wrong {
    pub(crate) code: &'static str,
    /// The place as a path of keys; empty for the whole.
    pub(crate) place: String,
    pub(crate) message: String,
}

impl From<Unread> for Wrong {
    fn from(unread: Unread) -> Self {
        let (code, place) = match &unread {
            Unread::Row(fault) => (fault.code(), String::new()),
            Unread::File(error) => (error.fault.code(), error.place.clone()),
            Unread::Link(error) => (error.code(), String::new()),
        };
        Self { code, place, message: say::unread(Language::English, &unread) }
    }
}

impl From<LinkError> for Wrong {
    fn from(error: LinkError) -> Self {
        Unread::Link(error).into()
    }
}

/// How the pieces of an input are read.
pub(crate) struct Reader {
    pub(super) format: Format,
    /// The columns of a table.
    pub(super) sheet: Option<Sheet>,
}

impl Reader {
    /// The table's columns, where it is one.
    pub(crate) const fn sheet(&self) -> Option<&Sheet> {
        self.sheet.as_ref()
    }

    /// By which rules the numbers of a table's links are held against the cells beside them.
    pub(crate) fn judge_by(&mut self, profile: &Profile) {
        if let Some(sheet) = &mut self.sheet {
            sheet.profile = profile.clone();
        }
    }

    /// Whether items are known by their line: a JSON line answers for itself.
    pub(crate) const fn is_numbered(&self) -> bool {
        matches!(self.format, Format::Csv | Format::Links)
    }

    /// The items of `piece`, in their order.
    pub(crate) fn items(&self, piece: &Piece) -> Vec<Item> {
        match piece {
            Piece::TooLong { line } => {
                let error = FileError::new(String::new(), Fault::TooLong { most: LONGEST });
                let wrong = Wrong::from(Unread::File(error));
                vec![Item { line: *line, id: Id::None, content: Err(wrong) }]
            }
            Piece::Text { line, text } => match (&self.sheet, self.format) {
                (Some(sheet), _) => rows(sheet, *line, text),
                (None, Format::Json) => vec![document(text)],
                (None, Format::Links) => lines(*line, text, link),
                (None, _) => lines(*line, text, json_line),
            },
        }
    }
}

/// Every line that is not blank.
fn lines(from: u64, text: &str, item: fn(u64, &str) -> Item) -> Vec<Item> {
    let numbered = (from..).zip(text.lines());
    numbered.filter(|(_, line)| !line.trim().is_empty()).map(|(n, line)| item(n, line)).collect()
}

fn json_line(line: u64, text: &str) -> Item {
    list::Item::of_json(place(line), text).into()
}

fn link(line: u64, text: &str) -> Item {
    list::Item::of_link(place(line), text).into()
}

fn place(line: u64) -> usize {
    usize::try_from(line).unwrap_or(usize::MAX)
}

/// A whole JSON file.
pub(super) fn document(text: &str) -> Item {
    match json::parse_any(text.strip_prefix('\u{feff}').unwrap_or(text)) {
        Ok(document) => Item::of(1, document),
        Err((id, error)) => {
            let message = say::whole_file(Language::English, &error);
            let wrong = Wrong { message, ..Wrong::from(Unread::File(error)) };
            Item { line: 1, id, content: Err(wrong) }
        }
    }
}

/// The order of the link in `text`.
pub(super) fn linked(text: &str) -> Result<Content, LinkError> {
    let order = hangtrue_link::find(text).and_then(|payload| hangtrue_link::decode(&payload))?;
    Ok(Content { order, is_order: true, corrected: Vec::new() })
}

/// The order of thirty characters.
pub(crate) fn small(text: &str) -> Result<Content, code::SmallError> {
    let code::Small { order, corrected, .. } = code::read_small(text)?;
    Ok(Content { order, is_order: true, corrected })
}

fn rows(sheet: &Sheet, line: u64, text: &str) -> Vec<Item> {
    let mut mark = Mark { at: 0, line: place(line) };
    let rows = core::iter::from_fn(|| sheet.next(text, &mut mark));
    rows.map(|row| list::Item::from(row).into()).collect()
}

impl From<list::Item> for Item {
    fn from(item: list::Item) -> Self {
        let content = match item.order {
            Ok(order) => Ok(Content { order, is_order: item.judged, corrected: Vec::new() }),
            Err(unread) => Err(unread.into()),
        };
        Self { line: item.line as u64, id: item.id, content }
    }
}

impl Item {
    fn of(line: u64, document: json::Document) -> Self {
        let json::Document { id, order, is_order } = document;
        Self { line, id, content: Ok(Content { order, is_order, corrected: Vec::new() }) }
    }

    /// For a table: its id, or its line where it has none.
    pub(crate) fn name(&self) -> String {
        if self.id.is_none() { format!("line {}", self.line) } else { self.id.text() }
    }
}
