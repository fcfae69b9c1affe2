//! An input cut into pieces of whole items.

use std::io::{self, Read as _};

use super::Source;
use super::table::Records;
use crate::lines::{LONGEST, Line, Lines};

/// Items of a piece: enough that handing it to another processor costs nothing beside it.
pub(super) const ITEMS: usize = 16;
/// Bytes after which a piece is full.
pub(super) const PIECE_BYTES: usize = 1 << 16;
/// Pieces that are worked on at once. With [`BATCH_BYTES`] it bounds the memory.
pub(super) const BATCH: usize = 64;
/// Bytes after which a batch is full.
pub(super) const BATCH_BYTES: usize = 1 << 22;

/// Whole items, still as text.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Piece {
    /// Lines, records, or a whole file.
    Text {
        /// The number of its first line.
        line: u64,
        /// The text.
        text: String,
    },
    /// An item longer than [`LONGEST`], which was read past or is never ended.
    TooLong {
        /// The number of its first line.
        line: u64,
    },
}

impl Piece {
    pub(crate) fn bytes(&self) -> usize {
        match self {
            Self::Text { text, .. } => text.len(),
            Self::TooLong { .. } => LONGEST,
        }
    }
}

/// What is cut, and how.
pub(super) enum Pieces {
    Lines {
        lines: Lines<Source>,
        /// What follows the piece that was cut before it.
        held: Option<Piece>,
    },
    Records(Records),
    Whole(Option<Source>),
}

impl Pieces {
    pub(super) const fn lines(source: Source) -> Self {
        Self::Lines { lines: Lines::new(source), held: None }
    }

    pub(super) fn next(&mut self) -> io::Result<Option<Piece>> {
        match self {
            Self::Lines { lines, held } => some_lines(lines, held),
            Self::Records(records) => records.next(),
            Self::Whole(source) => source.take().map(whole).transpose(),
        }
    }
}

fn some_lines(lines: &mut Lines<Source>, held: &mut Option<Piece>) -> io::Result<Option<Piece>> {
    if let Some(piece) = held.take() {
        return Ok(Some(piece));
    }
    let mut piece = String::new();
    let mut from = 0;
    let mut count = 0;
    while count < ITEMS && piece.len() < PIECE_BYTES {
        match lines.next()? {
            None => break,
            Some((number, Line::Whole(line))) => {
                if count == 0 {
                    from = number;
                }
                piece.push_str(&line);
                piece.push('\n');
                count += 1;
            }
            Some((line, Line::TooLong(_))) => {
                let long = Piece::TooLong { line };
                if count == 0 {
                    return Ok(Some(long));
                }
                *held = Some(long);
                break;
            }
        }
    }
    Ok((count > 0).then_some(Piece::Text { line: from, text: piece }))
}

/// All of `source`, as far as one order may go.
fn whole(source: Source) -> io::Result<Piece> {
    let mut bytes = Vec::new();
    source.take(LONGEST as u64 + 1).read_to_end(&mut bytes)?;
    if bytes.len() > LONGEST {
        return Ok(Piece::TooLong { line: 1 });
    }
    let text = String::from_utf8_lossy(&bytes).into_owned();
    Ok(Piece::Text { line: 1, text })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Cursor;

    #[test]
    fn every_line_is_in_one_piece_in_its_place() {
        let long = "x".repeat(LONGEST + 1);
        let mut text: String = (1..=20).map(|n| format!("{n}\n")).collect();
        text.push_str(&format!("{long}\n22\r\n"));
        let mut pieces = Pieces::lines(Box::new(Cursor::new(text.into_bytes())));
        let mut next = || pieces.next().unwrap();
        let lines = |from: u64, to: u64| Piece::Text {
            line: from,
            text: (from..=to).map(|n| format!("{n}\n")).collect(),
        };
        assert_eq!(next(), Some(lines(1, 16)));
        assert_eq!(next(), Some(lines(17, 20)));
        assert_eq!(next(), Some(Piece::TooLong { line: 21 }));
        assert_eq!(next(), Some(lines(22, 22)));
        assert_eq!(next(), None);
        assert_eq!(next(), None);
    }
}
