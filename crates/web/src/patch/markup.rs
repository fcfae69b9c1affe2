//! Reads the markup that the page's views write, and no other.
//!
//! What is understood: elements, attributes with or without a quoted value, text, HTML's void
//! elements, `<name/>` (inline SVG), and the character references `&amp; &lt; &gt; &quot; &apos;
//! &nbsp;` and numeric ones. Everything must be closed in order. Comments, CDATA and declarations are
//! faults, and so is whatever could run: `script`, `on…` attributes, `srcdoc`.
//!
//! A tree owns its markup and says where in it things stand: all nodes in one list, all attributes in
//! another, so that a tree of hundreds of nodes is three allocations.

use core::ops::Range;
use std::borrow::Cow;

/// Markup, and what stands where in it.
#[derive(Debug, Default)]
pub(crate) struct Tree {
    text: String,
    /// Each before what is in it.
    nodes: Vec<Item>,
    /// Names and values, as written.
    attributes: Vec<[Range<usize>; 2]>,
}

#[derive(Debug, Default)]
struct Item {
    /// Where the first node stands that is not inside this one.
    end: usize,
    /// Of the markup from the start tag to the end tag: equal for equal markup.
    hash: Hash,
    /// The text, or the element's name.
    text: Range<usize>,
    is_text: bool,
    /// Which of the tree's attributes are the element's own.
    attributes: Range<usize>,
    /// Its `id`, else its `data-key`.
    named: Option<Range<usize>>,
    /// Whether it is, or holds, an element that is named.
    holds_names: bool,
    /// Whether it is, or holds, an element that a person can change: its markup is not all there is.
    has_state: bool,
}

/// A node of a tree. Names are case-sensitive, as SVG needs (`viewBox`); texts and values are as
/// written: [`decode`] says what they mean.
#[derive(Clone, Copy)]
pub(crate) struct Node<'a> {
    tree: &'a Tree,
    item: &'a Item,
    at: usize,
}

/// Nodes beside each other, or all of them.
pub(crate) struct Nodes<'a> {
    tree: &'a Tree,
    at: usize,
    end: usize,
    is_flat: bool,
}

/// The attributes of an element.
pub(crate) struct Attributes<'a> {
    tree: &'a Tree,
    own: &'a [[Range<usize>; 2]],
}

impl Tree {
    /// The outermost nodes.
    pub(crate) fn nodes(&self) -> Nodes<'_> {
        Nodes { tree: self, at: 0, end: self.nodes.len(), is_flat: false }
    }

    fn written(&self, range: &Range<usize>) -> &str {
        self.text.get(range.clone()).unwrap_or_default()
    }
}

impl<'a> Iterator for Nodes<'a> {
    type Item = Node<'a>;

    fn next(&mut self) -> Option<Node<'a>> {
        if self.at >= self.end {
            return None;
        }
        let item = self.tree.nodes.get(self.at)?;
        let node = Node { tree: self.tree, item, at: self.at };
        self.at = if self.is_flat { self.at.saturating_add(1) } else { item.end };
        Some(node)
    }
}

impl<'a> Iterator for Attributes<'a> {
    type Item = (&'a str, &'a str);

    fn next(&mut self) -> Option<Self::Item> {
        let ([name, value], rest) = self.own.split_first()?;
        self.own = rest;
        Some((self.tree.written(name), self.tree.written(value)))
    }
}

impl<'a> Node<'a> {
    /// The text, of a text.
    pub(crate) fn text(self) -> Option<&'a str> {
        self.item.is_text.then(|| self.tree.written(&self.item.text))
    }

    /// The name, of an element.
    pub(crate) fn name(self) -> Option<&'a str> {
        (!self.item.is_text).then(|| self.tree.written(&self.item.text))
    }

    /// Names and values, in the order written; an attribute without a value has the value `""`.
    pub(crate) fn attributes(self) -> Attributes<'a> {
        let own = self.tree.attributes.get(self.item.attributes.clone());
        Attributes { tree: self.tree, own: own.unwrap_or_default() }
    }

    /// The attribute's value.
    pub(crate) fn attribute(self, name: &str) -> Option<&'a str> {
        self.attributes().find(|(known, _)| *known == name).map(|(_, value)| value)
    }

    /// What it goes by: its `id`, else its `data-key`.
    pub(crate) fn named(self) -> Option<&'a str> {
        self.item.named.as_ref().map(|named| self.tree.written(named))
    }

    /// Whether it is, or holds, an element that is named.
    pub(crate) fn holds_names(self) -> bool {
        self.item.holds_names
    }

    pub(crate) fn children(self) -> Nodes<'a> {
        let (at, end) = (self.at.saturating_add(1), self.item.end);
        Nodes { tree: self.tree, at, end, is_flat: false }
    }

    /// No nodes at all.
    pub(crate) fn none(self) -> Nodes<'a> {
        Nodes { tree: self.tree, at: 0, end: 0, is_flat: false }
    }

    /// The node itself and all that is in it, each before what is in it.
    pub(crate) fn all(self) -> Nodes<'a> {
        Nodes { tree: self.tree, at: self.at, end: self.item.end, is_flat: true }
    }

    /// Whether both were written alike, with all that is in them.
    pub(crate) fn is_like(self, other: Node<'_>) -> bool {
        self.item.hash == other.item.hash
    }

    /// Whether it is, or holds, an element that a person can change.
    pub(crate) fn has_state(self) -> bool {
        self.item.has_state
    }
}

/// A hash of markup: FNV-1a (Fowler, Noll, Vo), 64 bits.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Hash(u64);

impl Hash {
    fn of(bytes: &[u8]) -> Self {
        Self(0xcbf2_9ce4_8422_2325).with(bytes)
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
pub(crate) fn parse(text: String) -> Result<Tree, Fault> {
    let mut reader = Reader { tree: Tree { text, ..Tree::default() }, at: 0 };
    match reader.content() {
        Ok(()) => Ok(reader.tree),
        Err(what) => Err(Fault { at: reader.at, what }),
    }
}

struct Reader {
    tree: Tree,
    at: usize,
}

type Read<T> = Result<T, &'static str>;

impl Reader {
    fn content(&mut self) -> Read<()> {
        // Elements whose end tag is still to come, outermost first.
        let mut open: Vec<usize> = Vec::new();
        while self.at < self.tree.text.len() {
            let start = self.at;
            let mut closed = self.tree.nodes.len();
            if !self.eat(b'<') {
                let text = self.until(b'<')?;
                self.push(start, Item { is_text: true, text, ..Item::default() });
            } else if self.eat(b'/') {
                closed = open.pop().ok_or("an end tag without its start")?;
                let name = self.name()?;
                let started = self.tree.nodes.get(closed).map(|item| self.tree.written(&item.text));
                if started != Some(self.tree.written(&name)) || !self.eat(b'>') {
                    return Err("an end tag that does not match its start");
                }
            } else if self.start_tag(start)? {
                open.push(closed);
                continue;
            }
            self.close(closed, open.last());
        }
        if open.is_empty() { Ok(()) } else { Err("an element that is never closed") }
    }

    fn push(&mut self, start: usize, item: Item) {
        let hash = Hash::of(self.tree.written(&(start..self.at)).as_bytes());
        self.tree.nodes.push(Item { hash, ..item });
    }

    /// The node has all that is in it. Every byte is hashed once: an element by its start tag and
    /// what its children have.
    fn close(&mut self, node: usize, parent: Option<&usize>) {
        let end = self.tree.nodes.len();
        let Some(item) = self.tree.nodes.get_mut(node) else { return };
        item.end = end;
        let (hash, has_state, holds_names) = (item.hash, item.has_state, item.holds_names);
        if let Some(parent) = parent.and_then(|parent| self.tree.nodes.get_mut(*parent)) {
            parent.hash = parent.hash.with(&hash.0.to_le_bytes());
            parent.has_state |= has_state;
            parent.holds_names |= holds_names;
        }
    }

    /// What stands after `<`, up to and with `>`; and whether content follows.
    fn start_tag(&mut self, start: usize) -> Read<bool> {
        let text = self.name()?;
        let name = self.tree.written(&text);
        let (has_state, is_void) = (WITH_STATE.contains(&name), VOID.contains(&name));
        if name.eq_ignore_ascii_case("script") {
            return Err("a script");
        }
        let first = self.tree.attributes.len();
        let mut named = None;
        let has_content = loop {
            self.take_while(|byte| byte.is_ascii_whitespace());
            if self.eat(b'>') {
                break !is_void;
            }
            if self.eat(b'/') && self.eat(b'>') {
                break false;
            }
            let [name, value] = self.attribute()?;
            match self.tree.written(&name) {
                "id" => named = Some(value.clone()),
                "data-key" => named = named.or_else(|| Some(value.clone())),
                _ => {}
            }
            self.tree.attributes.push([name, value]);
        };
        let (attributes, holds_names) = (first..self.tree.attributes.len(), named.is_some());
        let is_text = false;
        let item =
            Item { text, is_text, attributes, named, holds_names, has_state, ..Item::default() };
        self.push(start, item);
        Ok(has_content)
    }

    fn attribute(&mut self) -> Read<[Range<usize>; 2]> {
        let range = self.name()?;
        let name = self.tree.written(&range);
        if name.get(..2).is_some_and(|start| start.eq_ignore_ascii_case("on"))
            || name.eq_ignore_ascii_case("srcdoc")
        {
            return Err("an attribute that runs");
        }
        if !self.eat(b'=') {
            return Ok([range, 0..0]);
        }
        let quote = match self.tree.text.as_bytes().get(self.at) {
            Some(quote @ (b'"' | b'\'')) => *quote,
            _ => return Err("a value without quotes"),
        };
        self.eat(quote);
        let value = self.until(quote)?;
        if self.eat(quote) { Ok([range, value]) } else { Err("an open quote") }
    }

    fn name(&mut self) -> Read<Range<usize>> {
        let name = self.take_while(|byte| {
            byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b':' | b'_' | b'.')
        });
        match self.tree.text.as_bytes().get(name.start) {
            Some(first) if first.is_ascii_alphabetic() => Ok(name),
            _ => Err("a name that is none"),
        }
    }

    /// Everything before `end`, or before the end of the markup, in which each reference is known.
    fn until(&mut self, end: u8) -> Read<Range<usize>> {
        let mut has_references = false;
        let range = self.take_while(|byte| {
            has_references |= byte == b'&';
            byte != end
        });
        if has_references {
            decode(self.tree.written(&range))?;
        }
        Ok(range)
    }

    fn eat(&mut self, expected: u8) -> bool {
        let is_there = self.tree.text.as_bytes().get(self.at) == Some(&expected);
        self.at = self.at.saturating_add(usize::from(is_there));
        is_there
    }

    /// Bytes, for as long as `keep` says so. What it refuses is ASCII, or what it keeps is all ASCII:
    /// either way no character is cut in two.
    fn take_while(&mut self, mut keep: impl FnMut(u8) -> bool) -> Range<usize> {
        let start = self.at;
        while let Some(byte) = self.tree.text.as_bytes().get(self.at)
            && keep(*byte)
        {
            self.at = self.at.saturating_add(1);
        }
        start..self.at
    }
}

/// Text as it is written, with its character references replaced.
///
/// # Errors
/// What is wrong with a reference, which is never so in a [`Tree`].
pub(crate) fn decode(written: &str) -> Read<Cow<'_, str>> {
    let Some((plain, mut rest)) = written.split_once('&') else {
        return Ok(Cow::Borrowed(written));
    };
    let mut decoded = String::from(plain);
    loop {
        let (reference, after) = rest.split_once(';').ok_or("a bare ampersand")?;
        decoded.push(character(reference).ok_or("a character reference that is not known")?);
        let (plain, next) = after.split_once('&').map_or((after, None), |(a, b)| (a, Some(b)));
        decoded.push_str(plain);
        let Some(next) = next else { return Ok(Cow::Owned(decoded)) };
        rest = next;
    }
}

fn character(reference: &str) -> Option<char> {
    match reference {
        "amp" => Some('&'),
        "lt" => Some('<'),
        "gt" => Some('>'),
        "quot" => Some('"'),
        "apos" => Some('\''),
        "nbsp" => Some('\u{a0}'),
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
