//! Input, a line at a time, in memory that does not grow with the input.

use std::borrow::Cow;
use std::io::{self, BufRead, Read as _};

/// The longest line that is read: a survey has some hundred bytes.
pub(crate) const LONGEST: usize = 1 << 20;

/// How much of a longer line is handed on.
const SHOWN: usize = 60;

/// A line, or what is known of one that is too long.
pub(crate) enum Line<'a> {
    /// The line without its end.
    Whole(Cow<'a, str>),
    /// The beginning of one longer than [`LONGEST`]; the rest was read past.
    TooLong(Cow<'a, str>),
}

/// The lines of an input, one at a time.
pub(crate) struct Lines<R> {
    input: R,
    number: u64,
    bytes: Vec<u8>,
}

impl<R: BufRead> Lines<R> {
    pub(crate) const fn new(input: R) -> Self {
        Self { input, number: 0, bytes: Vec::new() }
    }

    /// The next line with its number from 1; [`None`] at the end. Bytes that are not
    /// UTF-8 are replaced.
    pub(crate) fn next(&mut self) -> io::Result<Option<(u64, Line<'_>)>> {
        self.bytes.clear();
        let most = LONGEST as u64 + 1;
        if self.input.by_ref().take(most).read_until(b'\n', &mut self.bytes)? == 0 {
            return Ok(None);
        }
        self.number += 1;
        let ended = self.bytes.last() == Some(&b'\n');
        if !ended && self.bytes.len() > LONGEST {
            skip_line(&mut self.input)?;
            self.bytes.truncate(SHOWN);
            return Ok(Some((self.number, Line::TooLong(String::from_utf8_lossy(&self.bytes)))));
        }
        let end = self.bytes.iter().rposition(|byte| !matches!(byte, b'\n' | b'\r'));
        self.bytes.truncate(end.map_or(0, |at| at + 1));
        Ok(Some((self.number, Line::Whole(String::from_utf8_lossy(&self.bytes)))))
    }
}

fn skip_line(input: &mut dyn BufRead) -> io::Result<()> {
    loop {
        let buffer = input.fill_buf()?;
        if buffer.is_empty() {
            return Ok(());
        }
        let end = buffer.iter().position(|&byte| byte == b'\n');
        let used = end.map_or(buffer.len(), |at| at + 1);
        input.consume(used);
        if end.is_some() {
            return Ok(());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::BufReader;

    fn all(bytes: &[u8]) -> Vec<(u64, Option<String>)> {
        let mut lines = Lines::new(BufReader::with_capacity(7, bytes));
        let mut all = Vec::new();
        while let Some((number, line)) = lines.next().unwrap() {
            let whole = match line {
                Line::Whole(text) => Some(text.into_owned()),
                Line::TooLong(_) => None,
            };
            all.push((number, whole));
        }
        all
    }

    #[test]
    fn every_line_comes_with_its_number_and_without_its_end() {
        let text = |text: &str| Some(text.to_owned());
        assert_eq!(all(b"a\r\n\nb"), [(1, text("a")), (2, text("")), (3, text("b"))]);
        assert_eq!(all(b""), []);
    }

    #[test]
    fn a_line_that_is_too_long_is_read_past_and_the_next_one_comes() {
        let mut bytes = vec![b'x'; LONGEST + 10];
        bytes.extend(b"\nnext\n");
        assert_eq!(all(&bytes), [(1, None), (2, Some("next".to_owned()))]);
        let mut longest = vec![b'x'; LONGEST];
        assert_eq!(all(&longest).first().unwrap().1.as_ref().unwrap().len(), LONGEST);
        longest.push(b'x');
        assert_eq!(all(&longest), [(1, None)]);
    }
}
