//! Version 1 of the link. FROZEN: links of this version are read for ever.
//!
//! The format is specified in `SPEC.md` beside this crate's manifest. Nothing here may
//! change what a payload means; not even a spelling printed by [`reading`] may follow a
//! change in `core`. A new field is a new version in a new folder.

pub(crate) mod date;
mod order;
pub(crate) mod reading;
mod rules;
pub(crate) mod text;

pub(crate) use order::{read, write};

/// This version's symbol, the first of its payloads.
pub(crate) const VERSION: u8 = 1;
