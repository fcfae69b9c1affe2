//! An order that was sent: opened from whatever it came as.

use crate::model::{Environment, Model as Page};
use hangtrue_core::check::Report;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_link::code::{HeardError, SmallError, read_small};
use hangtrue_link::csv::{self, Sheet};
use hangtrue_link::json::{self, FileError};
use hangtrue_link::{LinkError, decode, find};

/// The most bytes of a text that are read as one order.
pub(super) const MOST: usize = json::order::MOST;

/// An order that was sent.
#[derive(Clone, Debug, PartialEq)]
pub struct Sent {
    /// What its sender calls it, or the file it came in; may be empty.
    pub name: String,
    /// The order.
    pub order: Order,
    /// Whether it came with the verdict that its writer saw.
    pub judged: bool,
    /// Characters of a spoken code that were put right, counted from 1: until the caller
    /// has confirmed the numbers the order is a proposal.
    pub corrected: Vec<usize>,
    /// Whether it was made here of what was said: it is not held against that.
    pub phoned: bool,
}

impl Sent {
    fn new(order: Order) -> Self {
        Self { name: String::new(), order, judged: true, corrected: Vec::new(), phoned: false }
    }

    /// What was phoned in, as an order.
    #[must_use]
    pub fn phoned(order: Order) -> Self {
        Self { phoned: true, ..Self::new(order) }
    }

    /// With the name of the file it came in, where its sender did not name it.
    #[must_use]
    pub fn named(mut self, file: &str) -> Self {
        if self.name.is_empty() {
            file.clone_into(&mut self.name);
        }
        self
    }

    /// The order as the walk's page shows one.
    #[must_use]
    pub fn page(&self, environment: &Environment, profile: &Profile) -> Page {
        let mut page = Page::new(environment.clone());
        page.profile = profile.clone();
        page.order = self.order.clone();
        page
    }

    /// Every rule is run again here, whatever the sender saw.
    #[must_use]
    pub fn report(&self, profile: &Profile) -> Report {
        hangtrue_core::check_order(&self.order, profile)
    }
}

/// Why a text gives no order.
#[derive(Clone, Debug, PartialEq)]
pub enum Trouble {
    /// A link that is damaged.
    Link(LinkError),
    /// The record of a hung door, by its payload: another page opens it.
    Record(String),
    /// Thirty characters that cannot be right.
    Thirty(SmallError),
    /// A file in JSON that is not as it should be.
    File(FileError),
    /// A table that cannot be read.
    Table(csv::Fault),
    /// Nothing that is read here.
    Nothing,
    /// A file that is neither a text nor a picture, or far too large.
    NoText,
    /// A picture without a code that can be read.
    NoCode,
    /// More bytes than are read.
    TooLong {
        /// How many are read.
        most: usize,
    },
}

/// The order in `text`: a link in any message, thirty spoken characters, JSON, or a table
/// of one row, whose numbers are held against its link by `profile`.
///
/// # Errors
/// What is wrong with the likeliest of these.
pub(super) fn open(text: &str, profile: &Profile) -> Result<Sent, Trouble> {
    if text.len() > MOST {
        return Err(Trouble::TooLong { most: MOST });
    }
    let bare = text.trim_start_matches('\u{feff}').trim();
    if bare.starts_with('{') {
        return json(bare);
    }
    let link = match whole(bare) {
        // A table of one row has its link too, and what was corrected beside it.
        Ok(sent) => match table(bare, profile) {
            Some(Err(differs @ Trouble::Table(csv::Fault::Differs { .. }))) => return Err(differs),
            _ => return Ok(sent),
        },
        Err(LinkError::Record) => return Err(Trouble::Record(find(bare).unwrap_or_default())),
        // It holds links: whatever else it looks like, it is no table.
        Err(error @ LinkError::Several) => return Err(Trouble::Link(error)),
        Err(error) => error,
    };
    match read_small(bare) {
        Ok(small) => {
            return Ok(Sent { corrected: small.corrected, ..Sent::new(small.order) });
        }
        // Thirty symbols that are wrong: no link is so short, and no table so long a word.
        Err(error @ (SmallError::Refused | SmallError::Contents)) => {
            return Err(Trouble::Thirty(error));
        }
        Err(SmallError::Heard(_)) => {}
    }
    match table(bare, profile) {
        Some(found) => found,
        None if link == LinkError::NotFound => Err(nothing(bare)),
        None => Err(Trouble::Link(link)),
    }
}

/// The order in a text that leaves no doubt that it is whole: what may be opened while it
/// is being typed or pasted.
#[must_use]
pub(super) fn open_at_once(text: &str, profile: &Profile) -> Option<Sent> {
    let table = text.trim().contains('\n');
    open(text, profile).ok().filter(|_| {
        let bare = text.trim();
        table || bare.starts_with('{') || find(bare).is_ok() || read_small(bare).is_ok()
    })
}

fn whole(text: &str) -> Result<Sent, LinkError> {
    decode(&find(text)?).map(Sent::new)
}

fn json(text: &str) -> Result<Sent, Trouble> {
    let read = json::parse_any(text).map_err(|(_, error)| Trouble::File(error))?;
    Ok(Sent { name: read.id.text(), judged: read.is_order, ..Sent::new(read.order) })
}

/// The only row of a table; none where the text is no table with a column that is known.
fn table(text: &str, profile: &Profile) -> Option<Result<Sent, Trouble>> {
    let sheet = Sheet { profile: profile.clone(), ..Sheet::open(text).ok()? };
    if sheet.columns.iter().all(|column| column.what == csv::What::Ignored) {
        return None;
    }
    let mut mark = sheet.start;
    let row = sheet.next(text, &mut mark)?;
    Some(match row.order {
        Ok(order) => {
            let judged = row.source == csv::Source::Link;
            Ok(Sent { name: row.id, judged, ..Sent::new(order) })
        }
        Err(fault) => Err(Trouble::Table(fault)),
    })
}

/// Some thirty characters with one too many or too few are told as such.
fn nothing(text: &str) -> Trouble {
    match read_small(text) {
        Err(SmallError::Heard(error @ HeardError::Count { found: 20..=40, .. })) => {
            Trouble::Thirty(SmallError::Heard(error))
        }
        _ => Trouble::Nothing,
    }
}
