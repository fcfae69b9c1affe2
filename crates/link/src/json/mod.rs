//! Surveys, answers and readings as JSON, the same on the command line and in the page.
//!
//! Reading is strict: an unknown key, a key given twice, a wrong type each get an
//! error that names the place. A reading that cannot be read is no error here: it
//! is a finding of the check, like every other.

mod answer;
mod error;
mod id;
mod node;
pub mod profile;
mod survey;
mod walk;

pub use answer::{Answer, Found, Value};
pub use error::{Fault, FileError, NodeKind, Refusal};
pub use id::Id;
pub use survey::{FORMAT as SURVEY_FORMAT, Request, parse};
