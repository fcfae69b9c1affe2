//! The ways in, one file each.

pub(crate) mod check;
pub(crate) mod code;
pub(crate) mod csv;
pub(crate) mod json;
pub(crate) mod link;
pub(crate) mod profile;
pub(crate) mod reading;
pub(crate) mod record;
pub(crate) mod survey;

/// Any bytes as the text that a program would make of them.
fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}
