//! Whatever describes an order: a survey or a whole order, told apart by `"format"`.

use hangtrue_core::order::Order;

use super::error::FileError;
use super::id::Id;
use super::text::Node;
use super::{order, survey, walk};

/// A survey or an order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Document {
    /// What the sender calls it.
    pub id: Id,
    /// The order; of a survey, one with nothing but its readings.
    pub order: Order,
    /// Whether it came as an order, with a verdict that its writer saw.
    pub is_order: bool,
}

/// Reads a survey or an order.
///
/// # Errors
/// The first thing that is not as its format says, with the place, and with the id as
/// far as it could be made out.
pub fn parse_any(text: &str) -> Result<Document, (Id, FileError)> {
    let node = walk::document(text).map_err(|error| (Id::None, error))?;
    let id = survey::id(&node);
    let is_order = is_order(&node);
    let order = if is_order {
        order::read(&node)
    } else {
        survey::survey(&node).map(|survey| Order { survey, ..Order::default() })
    };
    match order {
        Ok(order) => Ok(Document { id, order, is_order }),
        Err(error) => Err((id, error)),
    }
}

fn is_order(node: &Node<'_>) -> bool {
    node.get("format").and_then(Node::as_text) == Some(order::FORMAT)
}
