//! English (US).

pub(super) mod code;
pub(super) mod csv;
pub(super) mod file;
pub(super) mod link;
pub(super) mod profile;
pub(crate) mod script;
pub(super) mod share;
