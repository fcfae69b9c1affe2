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
}

impl Element<'_> {
    /// The attribute's value.
    pub(crate) fn attribute(&self, name: &str) -> Option<&str> {
        self.attributes.iter().find(|(known, _)| *known == name).map(|(_, value)| value.as_ref())
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

/// Reads a whole piece of markup.
///
/// # Errors
/// [`Fault`] when the markup is not of the kind described above.
pub(crate) fn parse(markup: &str) -> Result<Vec<Node<'_>>, Fault> {
    let mut reader = Reader { rest: markup };
    reader.content().map_err(|what| Fault { at: markup.len() - reader.rest.len(), what })
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
            let node = if self.skip("</") {
                let closed = open.pop().ok_or("an end tag without its start")?;
                if self.name()? != closed.name || !self.skip(">") {
                    return Err("an end tag that does not match its start");
                }
                Node::Element(closed)
            } else if self.skip("<") {
                let (element, has_content) = self.start_tag()?;
                if has_content {
                    open.push(element);
                    continue;
                }
                Node::Element(element)
            } else {
                Node::Text(decode(self.until('<'))?)
            };
            open.last_mut().map_or(&mut top, |parent| &mut parent.children).push(node);
        }
        if open.is_empty() { Ok(top) } else { Err("an element that is never closed") }
    }

    /// What stands after `<`, up to and with `>`; and whether content follows.
    fn start_tag(&mut self) -> Read<(Element<'a>, bool)> {
        let mut element = Element { name: self.name()?, ..Element::default() };
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
        let quote = if self.skip("=\"") {
            '"'
        } else if self.skip("='") {
            '\''
        } else {
            return Ok((name, Cow::Borrowed("")));
        };
        let value = decode(self.until(quote))?;
        let mut end = [0; 4];
        if self.skip(quote.encode_utf8(&mut end)) {
            Ok((name, value))
        } else {
            Err("an open quote")
        }
    }

    fn name(&mut self) -> Read<&'a str> {
        let is_part = |letter: char| letter.is_ascii_alphanumeric() || "-:_.".contains(letter);
        let length = self.rest.find(|letter| !is_part(letter)).unwrap_or(self.rest.len());
        let name = self.take(length);
        if name.starts_with(|first: char| first.is_ascii_alphabetic()) {
            Ok(name)
        } else {
            Err("a name that is none")
        }
    }

    fn skip(&mut self, expected: &str) -> bool {
        let after = self.rest.strip_prefix(expected);
        self.rest = after.unwrap_or(self.rest);
        after.is_some()
    }

    /// Everything before `end`, or before the end of the markup.
    fn until(&mut self, end: char) -> &'a str {
        self.take(self.rest.find(end).unwrap_or(self.rest.len()))
    }

    fn take(&mut self, length: usize) -> &'a str {
        let (taken, rest) = self.rest.split_at(length);
        self.rest = rest;
        taken
    }
}

/// Text with its character references replaced.
fn decode(text: &str) -> Read<Cow<'_, str>> {
    let Some((mut plain, mut rest)) = text.split_once('&') else {
        return Ok(Cow::Borrowed(text));
    };
    let mut decoded = String::with_capacity(text.len());
    loop {
        decoded.push_str(plain);
        let (reference, after) = rest.split_once(';').ok_or("a bare ampersand")?;
        decoded.push(character(reference).ok_or("a character reference that is not known")?);
        match after.split_once('&') {
            Some((before, next)) => (plain, rest) = (before, next),
            None => {
                decoded.push_str(after);
                return Ok(Cow::Owned(decoded));
            }
        }
    }
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
            let code = match number.strip_prefix(['x', 'X']) {
                Some(digits) => u32::from_str_radix(digits, 16),
                None => number.parse(),
            };
            char::from_u32(code.ok()?)
        }
    }
}

#[cfg(test)]
mod tests;
