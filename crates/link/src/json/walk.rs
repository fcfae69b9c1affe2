//! Walking down a document with the path at hand.

use std::borrow::Cow;

use super::error::{Fault, FileError, NodeKind};
use super::text::{self, Node, Value};

/// The most characters of a stranger's text that an error repeats.
const SHOWN: usize = 40;

/// `text`, cut to what an error repeats.
pub(super) fn shown(text: &str) -> String {
    match text.char_indices().nth(SHOWN) {
        Some((at, _)) => [text.get(..at).unwrap_or_default(), "…"].concat(),
        None => text.to_owned(),
    }
}

/// The tree of a whole file. A byte-order mark is what some editors put before one.
pub(super) fn document(text: &str) -> Result<Node<'_>, FileError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    text::parse(text).map_err(|wrong| FileError::not_json(text, wrong))
}

/// A value and where it stands.
#[derive(Clone, Copy)]
pub(super) struct At<'n, 'a> {
    parent: Option<&'n At<'n, 'a>>,
    key: &'n str,
    pub(super) node: &'n Node<'a>,
}

impl<'n, 'a> At<'n, 'a> {
    /// The document itself.
    pub(super) const fn root(node: &'n Node<'a>) -> Self {
        Self { parent: None, key: "", node }
    }

    /// The value under `key`.
    pub(super) const fn child(&'n self, key: &'n str, node: &'n Node<'a>) -> Self {
        Self { parent: Some(self), key, node }
    }

    /// `readings.width.low`.
    fn place(&self) -> String {
        match self.parent {
            None => String::new(),
            Some(parent) => {
                let above = parent.place();
                let key = shown(self.key);
                if above.is_empty() { key } else { [&above, ".", key.as_str()].concat() }
            }
        }
    }

    pub(super) fn error(&self, fault: impl Into<Fault>) -> FileError {
        FileError::new(self.place(), fault.into())
    }

    fn expects(&self, expected: NodeKind) -> FileError {
        self.error(Fault::Kind { expected, found: self.node.into() })
    }

    /// The values of an object in the order of `known`. Any other key, or one given
    /// twice, is an error.
    pub(super) fn object<const N: usize>(
        &self,
        known: [&'static str; N],
    ) -> Result<[Option<&'n Node<'a>>; N], FileError> {
        let Value::Object(entries) = &self.node.value else {
            return Err(self.expects(NodeKind::Object));
        };
        let mut values = [None; N];
        for text::Entry { key, node } in entries {
            let at = known.iter().position(|name| name == key);
            let Some(slot) = at.and_then(|at| values.get_mut(at)) else {
                return Err(self.error(Fault::Unknown { key: shown(key), known: known.to_vec() }));
            };
            if slot.replace(node).is_some() {
                return Err(self.error(Fault::Twice { key: shown(key) }));
            }
        }
        Ok(values)
    }

    /// The value under `key`, which has to be there.
    pub(super) fn required(
        &'n self,
        key: &'static str,
        node: Option<&'n Node<'a>>,
    ) -> Result<Self, FileError> {
        let node = node.ok_or_else(|| self.error(Fault::Missing { key }))?;
        Ok(self.child(key, node))
    }

    /// The `"format"`, which has to be there and to be `expected`.
    pub(super) fn format(
        &'n self,
        node: Option<&'n Node<'a>>,
        expected: &'static str,
    ) -> Result<(), FileError> {
        let at = self.required("format", node)?;
        at.choice(&[expected], |text| (text == expected).then_some(()))
    }

    /// A text.
    pub(super) fn text(&self) -> Result<&'n Cow<'a, str>, FileError> {
        match &self.node.value {
            Value::Text(text) => Ok(text),
            _ => Err(self.expects(NodeKind::Text)),
        }
    }

    /// `true` or `false`.
    pub(super) fn bool(&self) -> Result<bool, FileError> {
        match self.node.value {
            Value::Bool(value) => Ok(value),
            _ => Err(self.expects(NodeKind::Bool)),
        }
    }

    /// A text that `choose` knows.
    pub(super) fn choice<T>(
        &self,
        known: &[&'static str],
        choose: impl Fn(&str) -> Option<T>,
    ) -> Result<T, FileError> {
        let text = self.text()?;
        choose(text)
            .ok_or_else(|| self.error(Fault::Choice { found: shown(text), known: known.to_vec() }))
    }

    /// A list, each item with its place.
    pub(super) fn each_item(
        &'n self,
        each: &mut dyn FnMut(&At<'_, 'a>) -> Result<(), FileError>,
    ) -> Result<(), FileError> {
        let Value::List(items) = &self.node.value else {
            return Err(self.expects(NodeKind::List));
        };
        for (index, item) in items.iter().enumerate() {
            each(&self.child(&index.to_string(), item))?;
        }
        Ok(())
    }

    /// A whole number from 0 to 2³² − 1.
    pub(super) fn whole(&self) -> Result<u32, FileError> {
        let Value::Number(number) = &self.node.value else {
            return Err(self.expects(NodeKind::Number));
        };
        let whole = number.as_u64().and_then(|number| u32::try_from(number).ok());
        whole.ok_or_else(|| self.error(Fault::NotWhole { number: number.to_string() }))
    }
}
