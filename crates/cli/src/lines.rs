//! Input, a line at a time, in memory that does not grow with the input.

use std::fs::File;
use std::io::{self, BufRead, BufReader, Read as _};
use std::path::Path;

use anyhow::Context as _;

/// The longest line that is read: a survey has some hundred bytes.
pub(crate) const LONGEST: usize = 1 << 20;

/// How much of a longer line is handed on.
const SHOWN: usize = 60;

/// A line, or what is known of one that is too long.
pub(crate) enum Line<'a> {
    /// The line without its end.
    Whole(&'a str),
    /// The beginning of one longer than [`LONGEST`]; the rest was read past.
    TooLong(&'a str),
}

/// Gives `each` every line of `path`, or of standard input for `-`, with its
/// number from 1. Bytes that are not UTF-8 are replaced.
pub(crate) fn of_file(
    path: &Path,
    each: &mut dyn FnMut(u64, Line<'_>) -> anyhow::Result<()>,
) -> anyhow::Result<()> {
    if path.as_os_str() == "-" {
        return of(&mut io::stdin().lock(), each).context("reading standard input");
    }
    let file = File::open(path).with_context(|| format!("opening {}", path.display()))?;
    of(&mut BufReader::with_capacity(1 << 16, file), each)
        .with_context(|| format!("reading {}", path.display()))
}

fn of(
    input: &mut dyn BufRead,
    each: &mut dyn FnMut(u64, Line<'_>) -> anyhow::Result<()>,
) -> anyhow::Result<()> {
    let mut bytes = Vec::new();
    for number in 1.. {
        bytes.clear();
        let most = LONGEST as u64 + 1;
        if (&mut *input).take(most).read_until(b'\n', &mut bytes)? == 0 {
            break;
        }
        let ended = bytes.last() == Some(&b'\n');
        if !ended && bytes.len() > LONGEST {
            skip_line(input)?;
            bytes.truncate(SHOWN);
            each(number, Line::TooLong(&String::from_utf8_lossy(&bytes)))?;
            continue;
        }
        let line = String::from_utf8_lossy(&bytes);
        each(number, Line::Whole(line.trim_end_matches(['\n', '\r'])))?;
    }
    Ok(())
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

    fn all(bytes: &[u8]) -> Vec<(u64, Option<String>)> {
        let mut lines = Vec::new();
        of(&mut BufReader::with_capacity(7, bytes), &mut |number, line| {
            lines.push((
                number,
                match line {
                    Line::Whole(text) => Some(text.to_owned()),
                    Line::TooLong(_) => None,
                },
            ));
            Ok(())
        })
        .unwrap();
        lines
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
