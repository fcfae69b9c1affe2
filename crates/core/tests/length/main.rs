//! Reading a tape and writing it down, from outside the crate.

#![expect(clippy::unwrap_used, clippy::panic, reason = "a test fails by panicking")]

mod accepted;
mod arbitrary;
mod refused;
mod round_trip;
