//! An order on its way: as a file, as a link, as a spoken code; and back.
//!
//! Whatever comes in here is a claim by a stranger. It is bounded, decoded in
//! full or refused in full, and judged again by [`hangtrue_core::check()`].

#[cfg(feature = "json")]
pub mod json;
pub mod say;
