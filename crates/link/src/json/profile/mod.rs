//! `hangtrue-profile/1`: a dealer's own rules.
//!
//! [`file`] says what the format holds; the reader and the published JSON Schema are
//! both made from it. What is read is a [`Profile`] or an error with its place: an
//! unknown key, a limit upside down, an address that is no address.

mod domain;
mod fault;
mod file;
mod read;
#[cfg(feature = "schema")]
mod schema;
mod value;

pub use fault::ProfileFault;
#[cfg(feature = "schema")]
pub use schema::schema;

use hangtrue_core::profile::Profile;

use super::error::{Fault, FileError};
use super::walk::{self, At};
use read::Read as _;

/// The format's name, in `"format"`.
pub const FORMAT: &str = "hangtrue-profile/1";

/// The most bytes that are read.
pub const MOST: usize = 256 * 1024;

/// Reads a profile.
///
/// # Errors
/// The first thing that is not as the format says, with its place.
pub fn parse(text: &str) -> Result<Profile, FileError> {
    if text.len() > MOST {
        return Err(FileError::new(String::new(), Fault::TooLong { most: MOST }));
    }
    let node = walk::document(text)?;
    file::ProfileFile::read(&At::root(&node)).map(file::ProfileFile::profile)
}

#[cfg(test)]
mod tests;
