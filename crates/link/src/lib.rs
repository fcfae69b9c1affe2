//! An order on its way: as a file, as a link, as a spoken code; and back.
//!
//! Whatever comes in here is a claim by a stranger. It is bounded, decoded in
//! full or refused in full, and judged again by [`hangtrue_core::check()`].
//!
//! ```
//! use hangtrue_core::order::Order;
//! use hangtrue_link::{decode, find, url};
//!
//! let link = url("https://dealer.example/doors/", &Order::default()).unwrap();
//! let payload = find(&format!("Here it is: {link}.")).unwrap();
//! assert_eq!(decode(&payload), Ok(Order::default()));
//! ```

// No sum may panic: what comes from outside stops at the end of its scale (`saturating`), what is
// bounded by its own code says so (`wrapping`), and nothing is divided by nought (`checked`).
#![cfg_attr(not(test), warn(clippy::arithmetic_side_effects))]

pub mod alphabet;
mod bits;
pub mod code;
pub mod csv;
mod envelope;
mod error;
mod find;
pub mod json;
pub mod list;
#[cfg(feature = "qr")]
pub mod qr;
pub mod record;
pub mod say;
#[cfg(feature = "scan")]
pub mod scan;
pub mod share;
mod url;
mod v1;

pub use envelope::MOST as PAYLOAD_MOST;
pub use error::{EncodeError, LinkError};
pub use find::{SEARCHED, find, holds};
pub use url::url;

use hangtrue_core::order::Order;

/// The payload of `order`, in the newest version.
///
/// # Errors
/// When its texts are too long for a link, or its date is no date.
pub fn encode(order: &Order) -> Result<String, EncodeError> {
    let contents = v1::write(order)?;
    let symbols = envelope::seal(v1::VERSION, &contents);
    let symbols = symbols.ok_or(EncodeError::TooLong { most: PAYLOAD_MOST })?;
    Ok(alphabet::letters(&symbols))
}

/// The order of `payload`, of any version; all of it or nothing.
///
/// # Errors
/// When the payload is damaged, the record of a hung door, or of a version that this program
/// does not know.
pub fn decode(payload: &str) -> Result<Order, LinkError> {
    let symbols = envelope::symbols(payload)?;
    let (version, contents) = envelope::open(&symbols)?;
    match version {
        v1::VERSION => v1::read(contents).map_err(|_| LinkError::Contents),
        record::VERSION => Err(LinkError::Record),
        newer => Err(LinkError::Newer { version: alphabet::letter(newer) }),
    }
}
