//! `hangtrue-record/1`: a door's record in a link. FROZEN: records of this version are read
//! for ever; the sticker in the body outlasts every program.
//!
//! The format is specified in `RECORD.md` beside this crate's manifest. It carries the
//! order as version 1 of the order's link writes it, which is frozen too. A new field is a
//! new version in a new folder.

mod fields;

use hangtrue_core::hang::record::Record;
use hangtrue_core::order::Order;

use crate::{EncodeError, LinkError, PAYLOAD_MOST, alphabet, envelope};

/// This version's symbol, the first of its payloads: the letter R.
pub(crate) const VERSION: u8 = 24;

/// What a payload holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Opened {
    /// An order: its door is yet to be hung.
    Order(Box<Order>),
    /// The record of a door.
    Record(Box<Record>),
}

/// The payload of `record`, in the newest version.
///
/// # Errors
/// When its texts are too long for a link, or a date in it is no date.
pub fn encode(record: &Record) -> Result<String, EncodeError> {
    let contents = fields::write(record)?;
    let symbols = envelope::seal(VERSION, &contents);
    let symbols = symbols.ok_or(EncodeError::TooLong { most: PAYLOAD_MOST })?;
    Ok(alphabet::letters(&symbols))
}

/// The record or the order of `payload`; all of it or nothing.
///
/// # Errors
/// When the payload is damaged, or of a version that this program does not know.
pub fn decode(payload: &str) -> Result<Opened, LinkError> {
    let symbols = envelope::symbols(payload)?;
    let (version, contents) = envelope::open(&symbols)?;
    if version == VERSION {
        let record = fields::read(contents).map_err(|_| LinkError::Contents)?;
        return Ok(Opened::Record(Box::new(record)));
    }
    crate::decode(payload).map(|order| Opened::Order(Box::new(order)))
}

/// The link that opens `record` in the page at `base`.
///
/// # Errors
/// When the record cannot be written as a payload.
pub fn url(base: &str, record: &Record) -> Result<String, EncodeError> {
    Ok(crate::url::at(base, &encode(record)?))
}
