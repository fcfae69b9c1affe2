//! What a caller calls its survey; handed back untouched.

use serde::Serialize;
use serde_json::Number;

use super::node::Node;

/// An id: a text or a number, echoed as it came.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Id {
    /// None was given.
    #[default]
    None,
    /// A text.
    Text(String),
    /// A number.
    Number(Number),
}

impl Id {
    /// The id in `node`, if it is one.
    pub(super) fn of(node: &Node<'_>) -> Option<Self> {
        match node {
            Node::Null => Some(Self::None),
            Node::Text(text) => Some(Self::Text(text.as_ref().to_owned())),
            Node::Number(number) => Some(Self::Number(number.clone())),
            Node::Bool(_) | Node::List(_) | Node::Object(_) => None,
        }
    }
    /// Whether there is none.
    #[must_use]
    pub const fn is_none(&self) -> bool {
        matches!(self, Self::None)
    }
    /// For a table: the bare text.
    #[must_use]
    pub fn text(&self) -> String {
        match self {
            Self::None => String::new(),
            Self::Text(text) => text.clone(),
            Self::Number(number) => number.to_string(),
        }
    }
}
