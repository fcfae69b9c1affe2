//! French (Canada).
//!
//! The words of the trade are those of the domain's catalogue, which lists them.

pub(super) mod code;
pub(super) mod csv;
pub(super) mod file;
pub(super) mod link;
pub(super) mod profile;
pub(crate) mod script;
pub(super) mod share;
