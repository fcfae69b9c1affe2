//! A JSON document as it stands: keys in their order, double keys kept, texts borrowed.
//!
//! `serde_json::Value` forgets a key that comes twice; a strict reader must see it.

use core::fmt;
use std::borrow::Cow;

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde_json::Number;

use super::error::{Fault, FileError, NodeKind};

/// One value.
#[derive(Clone, Debug)]
pub(super) enum Node<'a> {
    /// `null`.
    Null,
    /// `true` or `false`.
    Bool(bool),
    /// A number.
    Number(Number),
    /// A text.
    Text(Cow<'a, str>),
    /// A list.
    List(Vec<Node<'a>>),
    /// An object, its keys as they came.
    Object(Vec<(Cow<'a, str>, Node<'a>)>),
}

impl<'a> Node<'a> {
    /// Reads a whole document. Depth is limited by `serde_json` (128).
    pub(super) fn parse(text: &'a str) -> Result<Self, FileError> {
        serde_json::from_str(text).map_err(|error| {
            // "expected value at line 1 column 5": the place stands in its own field.
            let full = error.to_string();
            let reason = full.split(" at line ").next().unwrap_or(&full).to_owned();
            FileError::new(
                String::new(),
                Fault::NotJson { line: error.line(), column: error.column(), reason },
            )
        })
    }

    /// What it is.
    pub(super) const fn kind(&self) -> NodeKind {
        match self {
            Self::Null => NodeKind::Null,
            Self::Bool(_) => NodeKind::Bool,
            Self::Number(_) => NodeKind::Number,
            Self::Text(_) => NodeKind::Text,
            Self::List(_) => NodeKind::List,
            Self::Object(_) => NodeKind::Object,
        }
    }
}

/// A key; borrowed from the document unless it was written with escapes.
struct Key<'a>(Cow<'a, str>);

impl<'de> Deserialize<'de> for Key<'de> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;
        impl<'de> Visitor<'de> for Text {
            type Value = Key<'de>;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a key")
            }
            fn visit_borrowed_str<E>(self, text: &'de str) -> Result<Self::Value, E> {
                Ok(Key(Cow::Borrowed(text)))
            }
            fn visit_str<E>(self, text: &str) -> Result<Self::Value, E> {
                Ok(Key(Cow::Owned(text.to_owned())))
            }
        }
        deserializer.deserialize_str(Text)
    }
}

impl<'de> Deserialize<'de> for Node<'de> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Any)
    }
}

struct Any;

impl<'de> Visitor<'de> for Any {
    type Value = Node<'de>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("any value")
    }
    fn visit_unit<E>(self) -> Result<Self::Value, E> {
        Ok(Node::Null)
    }
    fn visit_bool<E>(self, value: bool) -> Result<Self::Value, E> {
        Ok(Node::Bool(value))
    }
    fn visit_u64<E>(self, value: u64) -> Result<Self::Value, E> {
        Ok(Node::Number(value.into()))
    }
    fn visit_i64<E>(self, value: i64) -> Result<Self::Value, E> {
        Ok(Node::Number(value.into()))
    }
    fn visit_f64<E>(self, value: f64) -> Result<Self::Value, E> {
        Ok(Number::from_f64(value).map_or(Node::Null, Node::Number))
    }
    fn visit_borrowed_str<E>(self, text: &'de str) -> Result<Self::Value, E> {
        Ok(Node::Text(Cow::Borrowed(text)))
    }
    fn visit_str<E>(self, text: &str) -> Result<Self::Value, E> {
        Ok(Node::Text(Cow::Owned(text.to_owned())))
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Self::Value, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            list.push(item);
        }
        Ok(Node::List(list))
    }
    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Self::Value, A::Error> {
        let mut object = Vec::new();
        while let Some((Key(key), value)) = entries.next_entry()? {
            object.push((key, value));
        }
        Ok(Node::Object(object))
    }
}
