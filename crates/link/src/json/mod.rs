//! Surveys, answers and readings as JSON, the same on the command line and in the page.
//!
//! Reading is strict: an unknown key, a key given twice, a wrong type each get an
//! error that names the place. A reading that cannot be read is no error here: it
//! is a finding of the check, like every other.
//!
//! Reading needs no more than [`text`] and is everywhere; what is written by `serde`
//! stands behind the feature `json`, for the command.

#[cfg(feature = "json")]
mod answer;
mod document;
mod error;
mod id;
#[cfg(feature = "json")]
mod judged;
pub mod order;
pub mod profile;
#[cfg(feature = "json")]
mod reading;
mod readings;
pub mod record;
#[cfg(feature = "json")]
mod refusal;
#[cfg(feature = "schema")]
mod schema;
mod survey;
pub mod text;
mod walk;

#[cfg(feature = "json")]
pub use answer::{Answer, Build, Found, Ordered, Value};
pub use document::{Document, parse_any};
pub use error::{Fault, FileError, NodeKind};
pub use id::Id;
#[cfg(feature = "json")]
pub use judged::{Adjusted, LikelySlip, NextReading, Residual, Size, Unseen};
#[cfg(feature = "json")]
pub use reading::{Reading, Refused};
#[cfg(feature = "json")]
pub use refusal::Refusal;
pub use survey::{FORMAT as SURVEY_FORMAT, Request, parse};
