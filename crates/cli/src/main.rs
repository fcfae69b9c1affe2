//! The command `hangtrue`.
fn main() {}
