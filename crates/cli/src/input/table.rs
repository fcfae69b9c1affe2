//! A table, a piece at a time: the whole of it is never in memory.

use std::io::{self, BufRead as _, Read as _};

use anyhow::{anyhow, bail};
use hangtrue_core::say::Language;
use hangtrue_link::csv::{Delimiter, Fault, Mark, Sheet, record};
use hangtrue_link::say;

use super::Source;
use super::pieces::{ITEMS, PIECE_BYTES, Piece};
use crate::args::{Assigned, Tables};
use crate::lines::LONGEST;

/// The table of `source`, its columns guessed from the beginning and put right.
pub(super) fn open(source: Source, how: &Tables) -> anyhow::Result<(Records, Sheet)> {
    let mut records = Records {
        source,
        text: String::new(),
        mark: Mark { at: 0, line: 1 },
        delimiter: Delimiter::Comma,
        ended: false,
        too_long: false,
    };
    records.fill(PIECE_BYTES)?;
    let fault = |fault: Fault| anyhow!("{}", say::table(Language::English, &fault));
    let mut sheet = Sheet::open(&records.text).map_err(fault)?;
    for assigned in &how.column {
        assign(&mut sheet, assigned)?;
    }
    if let Some(unit) = how.unit {
        sheet.unit = unit.into();
    }
    records.mark = sheet.start;
    records.delimiter = sheet.delimiter;
    Ok((records, sheet))
}

fn assign(sheet: &mut Sheet, assigned: &Assigned) -> anyhow::Result<()> {
    let wanted = assigned.name.to_lowercase();
    let named = sheet.names.iter().position(|name| name.to_lowercase() == wanted);
    let number = || wanted.parse::<usize>().ok()?.checked_sub(1);
    let at = named.or_else(number);
    match at.and_then(|at| sheet.columns.get_mut(at)) {
        Some(column) => *column = assigned.column,
        None => bail!(
            "there is no column “{}”: write one of these names, or a number from 1 to {}: {}",
            assigned.name,
            sheet.names.len(),
            sheet.names.join(", ")
        ),
    }
    Ok(())
}

/// The records of a table under way.
pub(super) struct Records {
    source: Source,
    /// What was read and not yet cut; it ends with a line or with the input.
    text: String,
    /// How far it was cut.
    mark: Mark,
    delimiter: Delimiter,
    /// Nothing more is to be read.
    ended: bool,
    /// It ended with a line that is too long.
    too_long: bool,
}

impl Records {
    /// Reads on until `most` bytes are not yet cut, to the end of a line.
    fn fill(&mut self, most: usize) -> io::Result<()> {
        self.text.drain(..self.mark.at);
        self.mark.at = 0;
        let mut line = Vec::new();
        while !self.ended && self.text.len() < most {
            line.clear();
            let room = LONGEST as u64 + 1;
            self.ended = self.source.by_ref().take(room).read_until(b'\n', &mut line)? == 0;
            if line.len() > LONGEST && line.last() != Some(&b'\n') {
                (self.ended, self.too_long) = (true, true);
                break;
            }
            self.text.push_str(&String::from_utf8_lossy(&line));
        }
        Ok(())
    }

    pub(super) fn next(&mut self) -> io::Result<Option<Piece>> {
        if self.text.len() - self.mark.at < PIECE_BYTES {
            self.fill(2 * PIECE_BYTES)?;
        }
        let mut from = self.mark;
        let mut count = 0;
        while count < ITEMS && self.mark.at - from.at < PIECE_BYTES {
            let before = self.mark;
            match record(&self.text, self.delimiter, &mut self.mark) {
                None if self.ended => break,
                // Its quotation mark may be closed further on.
                Some(Err(Fault::Open { .. })) if !self.ended => {
                    self.mark = before;
                    if count > 0 {
                        break;
                    }
                    let open = self.text.len() - before.at;
                    if open > LONGEST {
                        self.stop();
                        return Ok(Some(Piece::TooLong { line: before.line as u64 }));
                    }
                    self.fill(2 * open)?;
                    from = self.mark;
                }
                None => {
                    if count > 0 {
                        break;
                    }
                    self.fill(2 * PIECE_BYTES)?;
                    from = self.mark;
                }
                Some(Err(fault)) if fault.ends_the_table() => {
                    let text = self.text.get(from.at..).unwrap_or_default().to_owned();
                    self.stop();
                    return Ok(Some(Piece::Text { line: from.line as u64, text }));
                }
                Some(_) => count += 1,
            }
        }
        if count == 0 && core::mem::take(&mut self.too_long) {
            return Ok(Some(Piece::TooLong { line: from.line as u64 }));
        }
        let text = self.text.get(from.at..self.mark.at).unwrap_or_default();
        let piece = Piece::Text { line: from.line as u64, text: text.to_owned() };
        Ok((count > 0).then_some(piece))
    }

    /// From here on nobody knows what is inside a field and what is outside.
    fn stop(&mut self) {
        self.ended = true;
        self.text.clear();
        self.mark.at = 0;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use std::io::Cursor;

    /// All rows of the pieces, told as the whole table would tell them.
    fn in_pieces(text: &str) -> Vec<String> {
        let source = Box::new(Cursor::new(text.as_bytes().to_vec()));
        let (mut records, sheet) = open(source, &Tables::default()).unwrap();
        let mut rows = Vec::new();
        while let Some(piece) = records.next().unwrap() {
            let Piece::Text { line, text } = piece else { panic!("too long") };
            let mut mark = Mark { at: 0, line: line.try_into().unwrap() };
            while let Some(row) = sheet.next(&text, &mut mark) {
                rows.push(format!("{row:?}"));
            }
        }
        rows
    }

    fn at_once(text: &str) -> Vec<String> {
        let sheet = Sheet::open(text).unwrap();
        let mut mark = sheet.start;
        std::iter::from_fn(|| sheet.next(text, &mut mark)).map(|row| format!("{row:?}")).collect()
    }

    proptest! {
        #[test]
        fn pieces_hold_the_rows_of_the_whole(body in "[a9\",\n]{0,400}", times in 1..4_usize) {
            let text = format!("\u{feff}id,width,note\n{}", body.repeat(times));
            prop_assert_eq!(in_pieces(&text), at_once(&text));
        }
    }

    #[test]
    fn a_field_of_many_lines_and_a_table_of_many_pieces_are_whole() {
        let note = "line\n".repeat(40_000);
        let row = |n: usize| format!("{n},92,\"{}\"\n", if n % 1000 == 7 { &note } else { "" });
        let text = format!("id,width,note\n{}", (0..5000).map(row).collect::<String>());
        let (pieces, whole) = (in_pieces(&text), at_once(&text));
        assert_eq!(pieces.len(), 5000);
        assert!(pieces == whole);
    }

    #[test]
    fn a_line_that_is_too_long_ends_the_table() {
        let text = format!("id,width,note\n1,92,\n2,92,{}\n3,92,\n", "x".repeat(LONGEST));
        let source = Box::new(Cursor::new(text.into_bytes()));
        let (mut records, _) = open(source, &Tables::default()).unwrap();
        let first = Piece::Text { line: 2, text: "1,92,\n".to_owned() };
        assert_eq!(records.next().unwrap(), Some(first));
        assert_eq!(records.next().unwrap(), Some(Piece::TooLong { line: 3 }));
        assert_eq!(records.next().unwrap(), None);
    }

    #[test]
    fn a_quotation_mark_that_is_never_closed_is_told_within_bounds() {
        let text = format!("id,width,note\n1,92,\n2,92,\"{}", "x\n".repeat(LONGEST));
        let source = Box::new(Cursor::new(text.into_bytes()));
        let (mut records, _) = open(source, &Tables::default()).unwrap();
        let first = Piece::Text { line: 2, text: "1,92,\n".to_owned() };
        assert_eq!(records.next().unwrap(), Some(first));
        assert_eq!(records.next().unwrap(), Some(Piece::TooLong { line: 3 }));
        assert_eq!(records.next().unwrap(), None);
        assert!(records.text.capacity() < 8 * LONGEST);
    }
}
