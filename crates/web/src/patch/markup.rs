//! Reads the markup that the page's views write, and no other.
//!
//! What is understood: elements, attributes with or without a quoted value, text, HTML's void
//! elements, `<name/>` (inline SVG), and the character references `&amp; &lt; &gt; &quot; &apos;` and
//! numeric ones. Everything must be closed in order. Comments, CDATA and declarations are faults, and
//! so is whatever could run: `script`, `on…` attributes, `srcdoc`.

use std::borrow::Cow;

/// A node of the markup, borrowing from it where no character reference had to be decoded.
#[derive(Debug, PartialEq)]
pub(crate) enum Node<'a> {
    /// Text, decoded.
    Text(Cow<'a, str>),
    /// An element and all that is in it.
    Element(Element<'a>),
}

/// An element: its name and attribute names are case-sensitive, as SVG needs (`viewBox`).
#[derive(Debug, Default, PartialEq)]
pub(crate) struct Element<'a> {
    pub(crate) name: &'a str,
    /// In the order written; an attribute without a value has the value `""`.
    pub(crate) attributes: Vec<(&'a str, Cow<'a, str>)>,
    pub(crate) children: Vec<Node<'a>>,
    /// Of the markup from the start tag to the end tag: equal for equal markup.
    pub(crate) hash: Hash,
    /// Whether it is, or holds, an element that a person can change: its markup is not all there is.
    pub(crate) has_state: bool,
}

impl Element<'_> {
    /// The attribute's value.
    pub(crate) fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes.iter().find(|(known, _)| *known == name).map(|(_, value)| value.as_ref())
    }
}

/// A hash of markup: FNV-1a (Fowler, Noll, Vo), 64 bits, of which 53 are kept: JavaScript's numbers
/// hold no more.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Hash(u64);

impl Default for Hash {
    fn default() -> Self {
        Self(0xcbf2_9ce4_8422_2325)
    }
}

impl Hash {
    /// As a whole number that JavaScript can hold.
    #[allow(clippy::cast_precision_loss)] // 53 bits are what an f64 has.
    pub(crate) fn to_number(self) -> f64 {
        (self.0 >> 11) as f64
    }

    fn with(self, bytes: &[u8]) -> Self {
        Self(bytes.iter().fold(self.0, |hash, &byte| {
            (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3)
        }))
    }
}

/// Why markup was not read.
#[derive(Debug, PartialEq)]
pub(crate) struct Fault {
    /// Bytes from the start of the markup to where reading stopped.
    pub(crate) at: usize,
    pub(crate) what: &'static str,
}

/// HTML's elements that have no content and no end tag.
const VOID: [&str; 13] = [
    "area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track",
    "wbr",
];

/// HTML's elements whose state is a person's, not only the markup's.
const WITH_STATE: [&str; 3] = ["input", "option", "textarea"];

/// Reads a whole piece of markup.
///
/// # Errors
/// [`Fault`] when the markup is not of the kind described above.
pub(crate) fn parse(markup: &str) -> Result<Vec<Node<'_>>, Fault> {
    let mut reader = Reader { rest: markup };
    reader
        .content()
        .map_err(|what| Fault { at: markup.len().saturating_sub(reader.rest.len()), what })
}

struct Reader<'a> {
    rest: &'a str,
}

type Read<T> = Result<T, &'static str>;

impl<'a> Reader<'a> {
    fn content(&mut self) -> Read<Vec<Node<'a>>> {
        let mut top = Vec::new();
        // Elements whose end tag is still to come, outermost first.
        let mut open: Vec<Element<'a>> = Vec::new();
        while !self.rest.is_empty() {
            let start = self.rest;
            let node = if self.skip("</") {
                let closed = open.pop().ok_or("an end tag without its start")?;
                if self.name()? != closed.name || !self.skip(">") {
                    return Err("an end tag that does not match its start");
                }
                Node::Element(closed)
            } else if self.skip("<") {
                let (mut element, has_content) = self.start_tag()?;
                element.hash = element.hash.with(self.since(start));
                if has_content {
                    open.push(element);
                    continue;
                }
                Node::Element(element)
            } else {
                Node::Text(decode(self.until(b'<'))?)
            };
            let Some(parent) = open.last_mut() else {
                top.push(node);
                continue;
            };
            // Every byte is hashed once: an element by its start tag and what its children have.
            parent.hash = match &node {
                Node::Text(_) => parent.hash.with(self.since(start)),
                Node::Element(element) => parent.hash.with(&element.hash.0.to_le_bytes()),
            };
            parent.has_state |= matches!(&node, Node::Element(element) if element.has_state);
            parent.children.push(node);
        }
        if open.is_empty() { Ok(top) } else { Err("an element that is never closed") }
    }

    /// What stands after `<`, up to and with `>`; and whether content follows.
    fn start_tag(&mut self) -> Read<(Element<'a>, bool)> {
        let name = self.name()?;
        let has_state = WITH_STATE.contains(&name);
        let mut element = Element { name, has_state, ..Element::default() };
        if element.name.eq_ignore_ascii_case("script") {
            return Err("a script");
        }
        loop {
            self.rest = self.rest.trim_ascii_start();
            if self.skip("/>") {
                return Ok((element, false));
            }
            if self.skip(">") {
                let has_content = !VOID.contains(&element.name);
                return Ok((element, has_content));
            }
            let attribute = self.attribute()?;
            element.attributes.push(attribute);
        }
    }

    fn attribute(&mut self) -> Read<(&'a str, Cow<'a, str>)> {
        let name = self.name()?;
        if name.get(..2).is_some_and(|start| start.eq_ignore_ascii_case("on"))
            || name.eq_ignore_ascii_case("srcdoc")
        {
            return Err("an attribute that runs");
        }
        if !self.skip("=") {
            return Ok((name, Cow::Borrowed("")));
        }
        let quote = if self.rest.starts_with('\'') { "'" } else { "\"" };
        if !self.skip(quote) {
            return Err("a value without quotes");
        }
        let value = decode(self.take_while(|byte| !quote.as_bytes().contains(&byte)))?;
        if self.skip(quote) { Ok((name, value)) } else { Err("an open quote") }
    }

    fn name(&mut self) -> Read<&'a str> {
        let name = self.take_while(|byte| byte.is_ascii_alphanumeric() || b"-:_.".contains(&byte));
        match name.bytes().next() {
            Some(first) if first.is_ascii_alphabetic() => Ok(name),
            _ => Err("a name that is none"),
        }
    }

    /// What has been read since `start`, an earlier `rest`.
    fn since(&self, start: &'a str) -> &'a [u8] {
        let length = start.len().saturating_sub(self.rest.len());
        start.as_bytes().get(..length).unwrap_or_default()
    }

    fn skip(&mut self, expected: &str) -> bool {
        let after = self.rest.strip_prefix(expected);
        self.rest = after.unwrap_or(self.rest);
        after.is_some()
    }

    /// Everything before `end`, or before the end of the markup.
    fn until(&mut self, end: u8) -> &'a str {
        self.take_while(|byte| byte != end)
    }

    /// Bytes, for as long as `keep` says so. What it refuses is ASCII, or what it keeps is all ASCII:
    /// either way no character is cut in two.
    fn take_while(&mut self, keep: impl Fn(u8) -> bool) -> &'a str {
        let length = self.rest.bytes().take_while(|byte| keep(*byte)).count();
        let (taken, rest) = self.rest.split_at_checked(length).unwrap_or((self.rest, ""));
        self.rest = rest;
        taken
    }
}

/// Text with its character references replaced.
fn decode(text: &str) -> Read<Cow<'_, str>> {
    let mut reader = Reader { rest: text };
    let plain = reader.until(b'&');
    if reader.rest.is_empty() {
        return Ok(Cow::Borrowed(plain));
    }
    let mut decoded = String::from(plain);
    while reader.skip("&") {
        let reference = reader.until(b';');
        if !reader.skip(";") {
            return Err("a bare ampersand");
        }
        decoded.push(character(reference).ok_or("a character reference that is not known")?);
        decoded.push_str(reader.until(b'&'));
    }
    Ok(Cow::Owned(decoded))
}

fn character(reference: &str) -> Option<char> {
    match reference {
        "amp" => Some('&'),
        "lt" => Some('<'),
        "gt" => Some('>'),
        "quot" => Some('"'),
        "apos" => Some('\''),
        _ => {
            let number = reference.strip_prefix('#')?;
            let (digits, radix) = match number.strip_prefix('x') {
                Some(digits) => (digits, 16),
                None => (number, 10),
            };
            char::from_u32(u32::from_str_radix(digits, radix).ok()?)
        }
    }
}

#[cfg(test)]
mod tests;
