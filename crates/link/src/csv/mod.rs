//! Many orders as a table: RFC 4180, and what spreadsheets make of it.
//!
//! Read: records end in CRLF or LF; a field in quotation marks may hold the delimiter,
//! line ends and doubled quotation marks; a mark at the start of the file (BOM) is
//! skipped; blank lines are skipped. The delimiter is a comma, a semicolon or a tab,
//! whichever the first record has most of. A quotation mark inside a bare field is
//! refused, as the standard says, with the cell named: nobody can know whether it is an
//! inch. Between tabs it is itself, because that is how cells are pasted.
//!
//! Written: RFC 4180 with CRLF. A field that a spreadsheet would take for a formula gets
//! an apostrophe before it (OWASP, CSV injection; ASVS 5.0 requirement 1.2.10), which
//! reading takes off again.
//!
//! The columns are guessed from their names ([`Column::guess`]) and may be put right
//! ([`Sheet::columns`]). Nothing is loaded as a whole but the text: [`Sheet::next`] gives
//! one row at a time, so that a page stays awake and a command needs no memory.
//!
//! ```
//! use hangtrue_link::csv::{Mark, Sheet};
//!
//! let text = "Order #,Width (in),Sill to header,Header depth,Bow\n\
//!             A-17,92 3/16,101 1/2,9 1/2,1 1/4\n";
//! let sheet = Sheet::open(text).unwrap();
//! let mut mark = sheet.start;
//! let row = sheet.next(text, &mut mark).unwrap();
//! assert_eq!((row.line, row.id.as_str()), (2, "A-17"));
//! assert!(row.order.is_ok());
//! assert!(sheet.next(text, &mut mark).is_none());
//! ```

mod column;
mod fault;
mod guess;
mod header;
mod order;
mod read;
mod row;
mod sheet;
mod vocabulary;
mod write;

pub use column::{Column, Measure, What};
pub use fault::Fault;
pub use order::{ORDER_COLUMNS, order};
pub use read::{Delimiter, Mark, record};
pub use row::{Row, Source};
pub use sheet::Sheet;
pub use write::{guarded, line};
