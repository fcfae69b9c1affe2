//! JSON (RFC 8259) as a tree that keeps what a strict reader, and an editor, must see:
//! the order of keys, keys that come twice, numbers as they were written, and the byte
//! where each value stands.
//!
//! Our own, since the page reads profiles and orders with it: `serde_json` there weighs
//! 34 KB gzip. The tests hold it to `serde_json` as the outside check.

mod number;
mod parse;
mod print;
#[cfg(feature = "json")]
mod serialize;
mod syntax;
#[cfg(test)]
mod tests;

use core::ops::Range;
use std::borrow::Cow;

pub use number::Number;
pub use parse::{DEPTH_MOST, MOST, parse};
pub use print::{pretty, print};
pub use syntax::{Syntax, Wrong, line_and_column};

/// A value and where it stands.
#[derive(Clone, Debug)]
pub struct Node<'a> {
    /// Its bytes in the text it was read from; empty for one that was made.
    pub at: Range<usize>,
    /// What it is.
    pub value: Value<'a>,
}

/// What a node is.
#[derive(Clone, Debug, PartialEq)]
pub enum Value<'a> {
    /// `null`.
    Null,
    /// `true` or `false`.
    Bool(bool),
    /// A number, as it was written.
    Number(Number<'a>),
    /// A text.
    Text(Cow<'a, str>),
    /// A list.
    List(Vec<Node<'a>>),
    /// An object: its entries as they came, a key that came twice twice.
    Object(Vec<Entry<'a>>),
}

/// A key and its value.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry<'a> {
    /// The key.
    pub key: Cow<'a, str>,
    /// Its value.
    pub node: Node<'a>,
}

/// Two nodes are the same when they say the same, wherever they stand.
impl PartialEq for Node<'_> {
    fn eq(&self, other: &Self) -> bool {
        self.value == other.value
    }
}

impl<'a> From<Value<'a>> for Node<'a> {
    fn from(value: Value<'a>) -> Self {
        Self { at: 0..0, value }
    }
}

impl<'a> Node<'a> {
    /// A text.
    #[must_use]
    pub fn text(text: impl Into<Cow<'a, str>>) -> Self {
        Value::Text(text.into()).into()
    }

    /// An object without entries.
    #[must_use]
    pub fn object() -> Self {
        Value::Object(Vec::new()).into()
    }

    /// The first value under `key` of an object.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&Self> {
        let Value::Object(entries) = &self.value else { return None };
        entries.iter().find(|entry| entry.key == key).map(|entry| &entry.node)
    }

    /// The same, without the text it was read from.
    #[must_use]
    pub fn into_owned(self) -> Node<'static> {
        let owned = |text: Cow<'a, str>| Cow::Owned(text.into_owned());
        let value = match self.value {
            Value::Null => Value::Null,
            Value::Bool(value) => Value::Bool(value),
            Value::Number(number) => Value::Number(number.into_owned()),
            Value::Text(text) => Value::Text(owned(text)),
            Value::List(items) => Value::List(items.into_iter().map(Node::into_owned).collect()),
            Value::Object(entries) => {
                let entry =
                    |Entry { key, node }| Entry { key: owned(key), node: node.into_owned() };
                Value::Object(entries.into_iter().map(entry).collect())
            }
        };
        Node { at: self.at, value }
    }

    /// The text, where it is one.
    #[must_use]
    pub fn as_text(&self) -> Option<&str> {
        if let Value::Text(text) = &self.value { Some(text) } else { None }
    }
}
