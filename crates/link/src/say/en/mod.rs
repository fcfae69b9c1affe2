//! English (US).

pub(super) mod csv;
#[cfg(feature = "json")]
pub(super) mod file;
pub(super) mod link;
#[cfg(feature = "json")]
pub(super) mod profile;
pub(super) mod share;
