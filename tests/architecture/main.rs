//! The architecture, held: which crate may know which, what stands at the top, what
//! the developers' map names, and how long a file may get.

mod edges;
mod files;
