//! A table for a terminal, written in blocks, so that a long input shows as it is read.

use std::io::{self, Write};

use anstyle::Style;

use crate::style::{PLAIN, STRONG};

/// Rows that share their column widths.
const BLOCK: usize = 64;

/// One cell.
#[derive(Clone, Debug, Default)]
pub(crate) struct Cell {
    text: String,
    style: Style,
}

impl Cell {
    pub(crate) fn new(text: impl Into<String>, style: Style) -> Self {
        Self { text: text.into(), style }
    }
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self::new(text, PLAIN)
    }
}

impl From<&str> for Cell {
    fn from(text: &str) -> Self {
        Self::new(text, PLAIN)
    }
}

/// A table under way.
pub(crate) struct Table {
    head: Vec<Cell>,
    widths: Vec<usize>,
    rows: Vec<Vec<Cell>>,
}

impl Table {
    pub(crate) fn new<const N: usize>(head: [&str; N]) -> Self {
        let head: Vec<Cell> = head.map(|name| Cell::new(name, STRONG)).to_vec();
        let widths = head.iter().map(|cell| width(&cell.text)).collect();
        Self { head, widths, rows: Vec::new() }
    }

    /// A table whose columns need no names.
    pub(crate) fn bare(columns: usize) -> Self {
        Self { head: Vec::new(), widths: vec![0; columns], rows: Vec::new() }
    }

    /// Adds a row; says whether it is time to write.
    pub(crate) fn push<const N: usize>(&mut self, row: [Cell; N]) -> bool {
        let row: Vec<Cell> =
            row.into_iter().map(|cell| Cell { text: printable(&cell.text), ..cell }).collect();
        // The last one is as wide as it is.
        let columns = self.widths.len();
        for (width, cell) in self.widths.iter_mut().zip(&row).take(columns.saturating_sub(1)) {
            *width = (*width).max(self::width(&cell.text));
        }
        self.rows.push(row);
        self.rows.len() >= BLOCK
    }

    /// Writes the rows at hand, the head before the first of them.
    pub(crate) fn write(&mut self, out: &mut dyn Write) -> io::Result<()> {
        let head = core::mem::take(&mut self.head);
        if !head.is_empty() {
            self.line(&head, out)?;
        }
        for row in core::mem::take(&mut self.rows) {
            self.line(&row, out)?;
        }
        Ok(())
    }

    fn line(&self, cells: &[Cell], out: &mut dyn Write) -> io::Result<()> {
        let filled = cells.iter().rposition(|cell| !cell.text.is_empty()).map_or(0, |at| at + 1);
        for (at, (cell, &width)) in cells.iter().zip(&self.widths).take(filled).enumerate() {
            if cell.style.is_plain() {
                out.write_all(cell.text.as_bytes())?;
            } else {
                write!(out, "{}{}{:#}", cell.style, cell.text, cell.style)?;
            }
            if at + 1 < filled {
                let short = width.saturating_sub(self::width(&cell.text)) + 2;
                write!(out, "{:short$}", "")?;
            }
        }
        writeln!(out)
    }
}

fn width(text: &str) -> usize {
    text.chars().count()
}

/// A stranger's text must not steer the terminal: control characters are shown as `·`.
pub(crate) fn printable(text: &str) -> String {
    let steers = |c: char| {
        c.is_control()
            || matches!(c, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
    };
    text.chars().map(|c| if steers(c) { '·' } else { c }).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(table: &mut Table) -> String {
        let mut out = anstream::StripStream::new(Vec::new());
        table.write(&mut out).unwrap();
        String::from_utf8(out.into_inner()).unwrap()
    }

    #[test]
    fn columns_line_up_and_nothing_steers_the_terminal() {
        let mut table = Table::new(["id", "verdict"]);
        table.push(["a\u{1b}[2J".into(), "clear".into()]);
        table.push(["¼".into(), Cell::new("stop", STRONG)]);
        assert_eq!(written(&mut table), "id     verdict\na·[2J  clear\n¼      stop\n");
    }

    #[test]
    fn color_has_no_width_and_ends_with_its_cell() {
        let mut table = Table::bare(3);
        table.push([Cell::new("a", STRONG), "b".into(), "".into()]);
        let mut out = Vec::new();
        table.write(&mut out).unwrap();
        assert_eq!(out, b"\x1b[1ma\x1b[0m  b\n");
    }
}
