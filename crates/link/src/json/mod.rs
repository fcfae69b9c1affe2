//! Surveys, answers and readings as JSON, the same on the command line and in the page.
//!
//! Reading is strict: an unknown key, a key given twice, a wrong type each get an
//! error that names the place. A reading that cannot be read is no error here: it
//! is a finding of the check, like every other.

mod answer;
mod document;
mod error;
mod id;
mod judged;
mod node;
pub mod order;
pub mod profile;
mod reading;
mod readings;
#[cfg(feature = "schema")]
mod schema;
mod survey;
mod walk;

pub use answer::{Answer, Build, Found, Ordered, Value};
pub use document::{Document, parse_any};
pub use error::{Fault, FileError, NodeKind, Refusal};
pub use id::Id;
pub use judged::{Adjusted, LikelySlip, NextReading, Residual, Size, Unseen};
pub use reading::{Reading, Refused};
pub use survey::{FORMAT as SURVEY_FORMAT, Request, parse};
