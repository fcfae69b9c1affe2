//! A table for a terminal, written in blocks, so that a long input shows as it is read.

use std::io::{self, Write};

/// Rows that share their column widths.
const BLOCK: usize = 64;

/// A table under way.
pub(crate) struct Table {
    head: Vec<String>,
    widths: Vec<usize>,
    rows: Vec<Vec<String>>,
    begun: bool,
}

impl Table {
    pub(crate) fn new<const N: usize>(head: [&str; N]) -> Self {
        let head: Vec<String> = head.map(str::to_owned).to_vec();
        let widths = head.iter().map(|cell| width(cell)).collect();
        Self { head, widths, rows: Vec::new(), begun: false }
    }

    /// Adds a row; says whether it is time to write.
    pub(crate) fn push<const N: usize>(&mut self, row: [String; N]) -> bool {
        let row: Vec<String> = row.into_iter().map(|cell| printable(&cell)).collect();
        for (width, cell) in self.widths.iter_mut().zip(&row) {
            *width = (*width).max(self::width(cell));
        }
        self.rows.push(row);
        self.rows.len() >= BLOCK
    }

    /// Writes the rows at hand, the head before the first of them.
    pub(crate) fn write(&mut self, out: &mut dyn Write) -> io::Result<()> {
        if !self.begun {
            self.begun = true;
            let head = core::mem::take(&mut self.head);
            self.line(&head, out)?;
        }
        for row in core::mem::take(&mut self.rows) {
            self.line(&row, out)?;
        }
        Ok(())
    }

    fn line(&self, cells: &[String], out: &mut dyn Write) -> io::Result<()> {
        let mut line = String::new();
        for (cell, &width) in cells.iter().zip(&self.widths) {
            line.push_str(cell);
            let short = width.saturating_sub(self::width(cell));
            line.extend(core::iter::repeat_n(' ', short + 2));
        }
        writeln!(out, "{}", line.trim_end())
    }
}

fn width(text: &str) -> usize {
    text.chars().count()
}

/// A stranger's text must not steer the terminal: control characters are shown as `·`.
fn printable(text: &str) -> String {
    let steers = |c: char| {
        c.is_control()
            || matches!(c, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
    };
    text.chars().map(|c| if steers(c) { '·' } else { c }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_line_up_and_nothing_steers_the_terminal() {
        let mut table = Table::new(["id", "verdict"]);
        table.push(["a\u{1b}[2J".to_owned(), "clear".to_owned()]);
        table.push(["¼".to_owned(), "stop".to_owned()]);
        let mut out = Vec::new();
        table.write(&mut out).unwrap();
        assert_eq!(String::from_utf8(out).unwrap(), "id     verdict\na·[2J  clear\n¼      stop\n");
    }
}
