//! What a caller calls its survey; handed back untouched.

use super::order::Write;
use super::text::{Node, Number, Value};

/// An id: a text or a number, echoed as it came.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Id {
    /// None was given.
    #[default]
    None,
    /// A text.
    Text(String),
    /// A number, as it was written.
    Number(String),
}

impl Id {
    /// The id in `node`, if it is one.
    pub(super) fn of(node: &Node<'_>) -> Option<Self> {
        match &node.value {
            Value::Null => Some(Self::None),
            Value::Text(text) => Some(Self::Text(text.as_ref().to_owned())),
            Value::Number(number) => Some(Self::Number(number.as_str().to_owned())),
            Value::Bool(_) | Value::List(_) | Value::Object(_) => None,
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
            Self::Text(text) | Self::Number(text) => text.clone(),
        }
    }
}

impl Write for Id {
    fn node(&self) -> Option<Node<'_>> {
        match self {
            Self::None => None,
            Self::Text(text) => Some(Node::text(text.as_str())),
            Self::Number(text) => Some(Value::Number(Number::of(text.as_str().into())).into()),
        }
    }
}

#[cfg(feature = "json")]
impl serde::Serialize for Id {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.node().serialize(serializer)
    }
}
