//! English (US).

#[cfg(feature = "json")]
pub(super) mod file;
pub(super) mod link;
