//! The link's address.

use hangtrue_core::order::Order;

use crate::{EncodeError, encode};

/// The link that opens `order` in the page at `base`.
///
/// A fragment of `base` is dropped. A `/` is put before the `#` where a folder's name
/// stands there, or some mail programs of telephones lose the fragment; a file's name
/// or a query stays as it is.
///
/// # Errors
/// When the order cannot be written as a payload.
pub fn url(base: &str, order: &Order) -> Result<String, EncodeError> {
    Ok(at(base, &encode(order)?))
}

/// The address of `payload` in the page at `base`.
pub(crate) fn at(base: &str, payload: &str) -> String {
    let base = base.split('#').next().unwrap_or_default();
    // A last part with neither file name nor query is a folder.
    let path = base.split_once("://").map_or(base, |(_, rest)| rest);
    let last = path.rsplit('/').next().unwrap_or_default();
    let host_only = !path.contains('/');
    let folder = !last.is_empty() && (host_only || !last.contains('.')) && !base.contains('?');
    [base, if folder { "/" } else { "" }, "#", payload].concat()
}
