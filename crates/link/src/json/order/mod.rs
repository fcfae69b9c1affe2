//! `hangtrue-order/1`: a whole order as a file.
//!
//! What was typed, what the writer saw and confirmed, and what goes with it. The four
//! numbers stand in it for whoever only wants those (`order`), but they are never read:
//! they follow from the readings.

mod file;
mod places;
mod reader;
#[cfg(feature = "schema")]
mod schema;
mod write;

pub use file::OrderFile;
pub(crate) use file::written_date;
pub(super) use reader::order as read;
pub use reader::parse;
pub(super) use reader::read_date;
#[cfg(feature = "schema")]
pub use schema::schema;
pub(in crate::json) use write::Write;

/// The format's name, in `"format"`.
pub const FORMAT: &str = "hangtrue-order/1";

/// The most bytes of a file that are read.
pub const MOST: usize = 256 * 1024;

#[cfg(test)]
mod tests;
