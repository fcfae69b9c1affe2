//! The architecture, held: which crate may know which, what stands at the top, what
//! the developers' map names, and how long a file may get.

// A panic here is a failed test, and indexing JSON gives null where there is nothing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

mod edges;
mod files;
mod lints;
