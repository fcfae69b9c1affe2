//! English (US).

pub(super) mod file;
