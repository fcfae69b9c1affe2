//! `hangtrue-record/1`: a door's record as a file.
//!
//! The order in it is a whole `hangtrue-order/1`. Readings stand as they were typed;
//! lengths of the inspection are exact texts, weights whole micrograms, turns quarters.

mod reader;
#[cfg(test)]
mod tests;
mod writer;

pub use reader::parse;
pub use writer::text;

/// The format's name, in `"format"`.
pub const FORMAT: &str = "hangtrue-record/1";

/// The most bytes of a file that are read.
pub const MOST: usize = 256 * 1024;

const KEYS: [&str; 10] = [
    "format",
    "order",
    "serial",
    "hung",
    "per_day",
    "weight_micrograms",
    "quarter_turns",
    "readings",
    "inspection",
    "services",
];
