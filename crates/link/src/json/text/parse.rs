//! From text to tree. What is not JSON to the letter is refused.

use core::ops::Range;
use std::borrow::Cow;

use super::{Entry, Node, Number, Syntax, Value, Wrong};

/// The most bytes that are read.
pub const MOST: usize = 1 << 20;

/// The most lists and objects that stand in one another. No format of ours has ten; the
/// parser calls itself once a level, and the stack of a browser is small.
pub const DEPTH_MOST: usize = 64;

/// Reads a whole text.
///
/// # Errors
/// The first byte at which it is not JSON, is too long or too deep.
pub fn parse(text: &str) -> Result<Node<'_>, Wrong> {
    let mut parser = Parser { text, at: 0 };
    if text.len() > MOST {
        return Err(parser.wrong(Syntax::Long { most: MOST }));
    }
    parser.space();
    let node = parser.node(0)?;
    parser.space();
    match parser.peek() {
        None => Ok(node),
        Some(_) => Err(parser.wrong(Syntax::After)),
    }
}

struct Parser<'a> {
    text: &'a str,
    at: usize,
}

impl<'a> Parser<'a> {
    fn peek(&self) -> Option<u8> {
        self.text.as_bytes().get(self.at).copied()
    }

    const fn wrong(&self, what: Syntax) -> Wrong {
        Wrong { at: self.at, what }
    }

    fn slice(&self, bytes: Range<usize>) -> &'a str {
        self.text.get(bytes).unwrap_or_default()
    }

    /// Goes on by `bytes`.
    const fn skip(&mut self, bytes: usize) {
        self.at = self.at.wrapping_add(bytes);
    }

    /// Goes past `byte` if it is next.
    fn take(&mut self, byte: u8) -> bool {
        let is_next = self.peek() == Some(byte);
        self.skip(usize::from(is_next));
        is_next
    }

    fn space(&mut self) {
        while matches!(self.peek(), Some(b' ' | b'\t' | b'\n' | b'\r')) {
            self.skip(1);
        }
    }

    fn node(&mut self, depth: usize) -> Result<Node<'a>, Wrong> {
        let start = self.at;
        let value = match self.peek() {
            Some(b'{') => self.object(depth)?,
            Some(b'[') => self.list(depth)?,
            Some(b'"') => Value::Text(self.string()?),
            Some(b'-' | b'0'..=b'9') => Value::Number(self.number()?),
            _ => self.word()?,
        };
        Ok(Node { at: start..self.at, value })
    }

    fn word(&mut self) -> Result<Value<'a>, Wrong> {
        let rest = self.slice(self.at..self.text.len());
        for (word, value) in
            [("null", Value::Null), ("true", Value::Bool(true)), ("false", Value::Bool(false))]
        {
            if rest.starts_with(word) {
                self.skip(word.len());
                return Ok(value);
            }
        }
        Err(self.wrong(Syntax::Value))
    }

    /// One level further in.
    fn deeper(&self, depth: usize) -> Result<usize, Wrong> {
        if depth < DEPTH_MOST {
            Ok(depth.wrapping_add(1))
        } else {
            Err(self.wrong(Syntax::Deep { most: DEPTH_MOST }))
        }
    }

    fn list(&mut self, depth: usize) -> Result<Value<'a>, Wrong> {
        let depth = self.deeper(depth)?;
        let mut items = Vec::new();
        self.skip(1);
        self.space();
        if self.take(b']') {
            return Ok(Value::List(items));
        }
        loop {
            items.push(self.node(depth)?);
            if self.ends(']')? {
                return Ok(Value::List(items));
            }
        }
    }

    fn object(&mut self, depth: usize) -> Result<Value<'a>, Wrong> {
        let depth = self.deeper(depth)?;
        let mut entries = Vec::new();
        self.skip(1);
        self.space();
        if self.take(b'}') {
            return Ok(Value::Object(entries));
        }
        loop {
            if self.peek() != Some(b'"') {
                return Err(self.wrong(Syntax::Key));
            }
            let key = self.string()?;
            self.space();
            if !self.take(b':') {
                return Err(self.wrong(Syntax::Colon));
            }
            self.space();
            entries.push(Entry { key, node: self.node(depth)? });
            if self.ends('}')? {
                return Ok(Value::Object(entries));
            }
        }
    }

    /// After an item: whether the list or object ends here, or goes on behind a comma.
    fn ends(&mut self, end: char) -> Result<bool, Wrong> {
        self.space();
        if self.peek().map(char::from) == Some(end) {
            self.skip(1);
            return Ok(true);
        }
        if !self.take(b',') {
            return Err(self.wrong(Syntax::Comma { end }));
        }
        self.space();
        Ok(false)
    }

    /// A text, from its opening to its closing mark; borrowed unless it has escapes.
    fn string(&mut self) -> Result<Cow<'a, str>, Wrong> {
        self.skip(1);
        let mut owned: Option<String> = None;
        loop {
            let start = self.at;
            while !matches!(self.peek(), None | Some(b'"' | b'\\' | 0..=0x1f)) {
                self.skip(1);
            }
            let plain = self.slice(start..self.at);
            match self.peek() {
                None => return Err(self.wrong(Syntax::Open)),
                Some(b'"') => {
                    self.skip(1);
                    return Ok(match owned {
                        None => Cow::Borrowed(plain),
                        Some(text) => Cow::Owned([text.as_str(), plain].concat()),
                    });
                }
                Some(b'\\') => {
                    let text = owned.get_or_insert_default();
                    text.push_str(plain);
                    text.push(self.escape()?);
                }
                Some(_) => return Err(self.wrong(Syntax::Control)),
            }
        }
    }

    /// What a backslash and what follows it stand for.
    fn escape(&mut self) -> Result<char, Wrong> {
        let wrong = self.wrong(Syntax::Escape);
        let surrogate = self.wrong(Syntax::Surrogate);
        self.skip(1);
        let byte = self.peek().ok_or(wrong)?;
        self.skip(1);
        Ok(match byte {
            b'"' | b'\\' | b'/' => char::from(byte),
            b'b' => '\u{8}',
            b'f' => '\u{c}',
            b'n' => '\n',
            b'r' => '\r',
            b't' => '\t',
            b'u' => {
                let unit = self.hex().ok_or(wrong)?;
                let code = match unit {
                    0xd800..=0xdbff => {
                        if !(self.take(b'\\') && self.take(b'u')) {
                            return Err(surrogate);
                        }
                        let low = self.hex().ok_or(wrong)?;
                        let low = low.checked_sub(0xdc00).filter(|low| *low < 0x400);
                        let low = low.ok_or(surrogate)?;
                        0x1_0000_u32.wrapping_add(unit.saturating_sub(0xd800) << 10 | low)
                    }
                    unit => unit,
                };
                char::from_u32(code).ok_or(surrogate)?
            }
            _ => return Err(wrong),
        })
    }

    /// Four hexadecimal digits.
    fn hex(&mut self) -> Option<u32> {
        let digits = self.text.get(self.at..)?.get(..4)?;
        let fine = digits.bytes().all(|byte| byte.is_ascii_hexdigit());
        self.skip(4);
        if fine { u32::from_str_radix(digits, 16).ok() } else { None }
    }

    /// Digits, at least one.
    fn digits(&mut self) -> Result<(), Wrong> {
        if !matches!(self.peek(), Some(b'0'..=b'9')) {
            return Err(self.wrong(Syntax::Number));
        }
        while matches!(self.peek(), Some(b'0'..=b'9')) {
            self.skip(1);
        }
        Ok(())
    }

    fn number(&mut self) -> Result<Number<'a>, Wrong> {
        let start = self.at;
        self.take(b'-');
        if self.take(b'0') {
            // A number does not go on behind a zero: 007 is none.
            if matches!(self.peek(), Some(b'0'..=b'9')) {
                return Err(self.wrong(Syntax::Number));
            }
        } else {
            self.digits()?;
        }
        if self.take(b'.') {
            self.digits()?;
        }
        if self.take(b'e') || self.take(b'E') {
            let _ = self.take(b'+') || self.take(b'-');
            self.digits()?;
        }
        Ok(Number::of(Cow::Borrowed(self.slice(start..self.at))))
    }
}
