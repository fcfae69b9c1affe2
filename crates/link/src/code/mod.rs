//! An order over the telephone: six check characters for four numbers that were said,
//! and thirty characters for a small order.
//!
//! Both rest on one Reed–Solomon code, RS(30,24) over GF(32): any two changed
//! characters are found and corrected while any three or four are still refused. A
//! correction is a proposal for a person to confirm; nothing here changes an order.

mod check;
mod field;
mod heard;
mod reed_solomon;
mod script;
mod small;
mod words;

pub use check::{Misheard, Outcome, Said, characters, compare};
pub use heard::{HeardError, heard, spaced};
pub use reed_solomon::{CHECK, DATA, WORD};
pub use script::{Script, script};
pub use small::{Small, SmallError, read_small, small};
pub use words::spell;
