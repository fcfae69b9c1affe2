//! Where many orders come from, and one of them after the other: by the reader of the
//! command.

use crate::desk::sent::Sent;
use hangtrue_core::profile::Profile;
use hangtrue_link::csv::{Column, Fault, Mark, Sheet, What};
use hangtrue_link::list::{Format, Item};

/// Many orders as a text.
#[derive(Clone, Debug, PartialEq)]
pub struct Source {
    /// The text.
    pub text: String,
    /// How it is read.
    pub kind: Kind,
}

/// How it is read.
#[derive(Clone, Debug, PartialEq)]
pub enum Kind {
    /// Rows, in columns that were guessed or put right.
    Table(Box<Sheet>),
    /// JSON, a line each.
    Json,
    /// A link a line.
    Links,
}

/// Nothing at all.
impl Default for Source {
    fn default() -> Self {
        Self { text: String::new(), kind: Kind::Links }
    }
}

/// How many rows or lines are looked at to tell whether there are many orders in a text.
const LOOKED_AT: usize = 50;

impl Source {
    /// The list in `text`, which came in a file of that name or in none, however short it
    /// is.
    ///
    /// # Errors
    /// The text where it is one order over several lines, or nothing that is read here; and
    /// what is wrong with it where it is a table.
    pub fn open(name: &str, text: String) -> Result<Self, (String, Option<Fault>)> {
        let first = text.lines().find(|line| !bare(line).is_empty()).unwrap_or_default();
        let kind = match Format::guess(name, first) {
            Format::Table => match Sheet::open(&text) {
                Ok(sheet) => Kind::Table(Box::new(sheet)),
                Err(fault) => return Err((text, Some(fault))),
            },
            Format::Links => Kind::Links,
            Format::JsonLines if bare(first).starts_with(['{', '[']) => Kind::Json,
            Format::JsonLines | Format::Json => return Err((text, None)),
        };
        Ok(Self { text, kind })
    }

    /// The list in `text`, where there is no doubt that it is one: several orders, and not
    /// a mail around one of them.
    ///
    /// # Errors
    /// The text where it may be one order.
    pub fn find(name: &str, text: String) -> Result<Self, String> {
        let text = match Self::open(name, text) {
            Ok(source) if source.is_many() => return Ok(source),
            Ok(source) => source.text,
            Err((text, _)) => text,
        };
        let links = Self { text, kind: Kind::Links };
        if links.is_many() { Ok(links) } else { Err(links.text) }
    }

    /// Whether there are several orders among its first lines, and little else.
    fn is_many(&self) -> bool {
        if let Kind::Table(sheet) = &self.kind {
            let known = |column: &Column| matches!(column.what, What::Reading(_) | What::Link);
            if sheet.columns.len() < 2 || !sheet.columns.iter().any(known) {
                return false;
            }
        }
        let mut mark = self.start();
        let (mut items, mut orders, mut apart) = (0_usize, 0_usize, false);
        let mut first = None;
        while items < LOOKED_AT
            && let Some(item) = self.next(&mut mark)
        {
            items = items.saturating_add(1);
            let Ok(order) = item.order else { continue };
            orders = orders.saturating_add(1);
            // The same link twice, as a mail may have it, is one order.
            apart = apart || first.get_or_insert_with(|| order.clone()) != &order;
        }
        let several = if self.kind == Kind::Links { apart } else { items >= 2 };
        several && orders.saturating_mul(2) >= items
    }

    /// Before the first order.
    #[must_use]
    pub fn start(&self) -> Mark {
        match &self.kind {
            Kind::Table(sheet) => sheet.start,
            Kind::Json | Kind::Links => Mark::start(&self.text),
        }
    }

    /// By which rules the numbers of a table's links are held against the cells beside them.
    pub fn judge_by(&mut self, profile: &Profile) {
        if let Kind::Table(sheet) = &mut self.kind
            && sheet.profile != *profile
        {
            sheet.profile = profile.clone();
        }
    }

    /// What stands at `mark`, which is moved behind it; [`None`] at the end.
    #[must_use]
    pub fn next(&self, mark: &mut Mark) -> Option<Item> {
        let read = match &self.kind {
            Kind::Table(sheet) => return sheet.next(&self.text, mark).map(Item::from),
            Kind::Json => Item::of_json,
            Kind::Links => Item::of_link,
        };
        loop {
            let rest = self.text.get(mark.at..).filter(|rest| !rest.is_empty())?;
            let (line, end) = match rest.split_once('\n') {
                Some((line, _)) => (line, line.len().saturating_add(1)),
                None => (rest, rest.len()),
            };
            let number = mark.line;
            *mark = Mark { at: mark.at.saturating_add(end), line: number.saturating_add(1) };
            let line = line.strip_suffix('\r').unwrap_or(line);
            if !line.trim().is_empty() {
                return Some(read(number, line));
            }
        }
    }

    /// The order at `mark`, to be looked at by itself.
    #[must_use]
    pub fn sent(&self, mut mark: Mark) -> Option<Sent> {
        let item = self.next(&mut mark)?;
        Some(Sent {
            name: item.id.text(),
            order: item.order.ok()?,
            judged: item.judged,
            corrected: Vec::new(),
            phoned: false,
        })
    }
}

fn bare(line: &str) -> &str {
    line.trim_start_matches('\u{feff}').trim()
}
