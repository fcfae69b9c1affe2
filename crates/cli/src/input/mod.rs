//! Orders however they come in: JSON lines, a whole JSON file, a table, a list of links.
//!
//! An input is cut into pieces of whole items one after the other ([`Input::batch`]);
//! what a piece means ([`Reader::items`]) can then be worked out on any processor.

mod argument;
mod format;
mod item;
mod pieces;
mod table;

use std::fs::File;
use std::io::{self, BufRead, BufReader, Cursor, Read as _};
use std::path::Path;

use anyhow::{Context as _, bail};

use crate::args::{Format, Tables};
use crate::lines::LONGEST;

pub(crate) use argument::{one, several};
pub(crate) use item::{Content, Item, Reader, Wrong, small};
pub(crate) use pieces::Piece;

/// An input under way.
pub(crate) struct Input {
    /// Its name, for people.
    pub(crate) name: String,
    /// Its length in bytes, where it is known.
    pub(crate) length: Option<u64>,
    /// What its pieces mean.
    pub(crate) reader: Reader,
    pieces: pieces::Pieces,
}

type Source = Box<dyn BufRead + Send>;

impl Input {
    /// The input at `path`; standard input for `-`.
    pub(crate) fn open(path: &Path, how: &Tables) -> anyhow::Result<Self> {
        if path.as_os_str() == "-" {
            let source = Box::new(BufReader::with_capacity(1 << 16, io::stdin()));
            return Self::of("standard input".to_owned(), None, path, source, how);
        }
        let name = path.display().to_string();
        let file = File::open(path).with_context(|| format!("opening {name}"))?;
        let length = file.metadata().ok().filter(std::fs::Metadata::is_file).map(|it| it.len());
        let source = Box::new(BufReader::with_capacity(1 << 16, file));
        Self::of(name, length, path, source, how)
    }

    /// The input of a text that is at hand.
    pub(crate) fn of_text(name: &str, text: String, how: &Tables) -> anyhow::Result<Self> {
        let length = Some(text.len() as u64);
        let source = Box::new(Cursor::new(text.into_bytes()));
        Self::of(name.to_owned(), length, Path::new(name), source, how)
    }

    fn of(
        name: String,
        length: Option<u64>,
        path: &Path,
        mut source: Source,
        how: &Tables,
    ) -> anyhow::Result<Self> {
        let head = head(&mut source).with_context(|| format!("reading {name}"))?;
        if head.starts_with(&[0xff, 0xfe]) || head.starts_with(&[0xfe, 0xff]) {
            bail!("{name} is UTF-16: save it as UTF-8, then check it again");
        }
        let first = String::from_utf8_lossy(&head);
        let format = match how.format {
            Format::Auto => format::guess(&path.to_string_lossy(), &first),
            known => known,
        };
        if format != Format::Csv && (!how.column.is_empty() || how.unit.is_some()) {
            bail!(
                "{name} is read as {}, and --column and --unit are for tables: leave them out, \
                 or say --format csv",
                format::name(format)
            );
        }
        let source: Source = Box::new(Cursor::new(head).chain(source));
        let (pieces, sheet) = match format {
            Format::Csv => {
                let (records, sheet) =
                    table::open(source, how).with_context(|| format!("reading {name}"))?;
                (pieces::Pieces::Records(records), Some(sheet))
            }
            Format::Json => (pieces::Pieces::Whole(Some(source)), None),
            Format::Auto | Format::JsonLines | Format::Links => {
                (pieces::Pieces::lines(source), None)
            }
        };
        Ok(Self { name, length, reader: Reader { format, sheet }, pieces })
    }

    /// The next pieces, some hundred items in all; empty at the end.
    pub(crate) fn batch(&mut self) -> anyhow::Result<Vec<Piece>> {
        let mut batch = Vec::new();
        let mut bytes = 0;
        while batch.len() < pieces::BATCH && bytes < pieces::BATCH_BYTES {
            let next = self.pieces.next().with_context(|| format!("reading {}", self.name))?;
            let Some(piece) = next else { break };
            bytes += piece.bytes();
            batch.push(piece);
        }
        Ok(batch)
    }

    /// Every item, one after the other.
    pub(crate) fn each(
        &mut self,
        each: &mut dyn FnMut(Item) -> anyhow::Result<()>,
    ) -> anyhow::Result<()> {
        while let Some(piece) =
            self.pieces.next().with_context(|| format!("reading {}", self.name))?
        {
            for item in self.reader.items(&piece) {
                each(item)?;
            }
        }
        Ok(())
    }
}

/// The input up to the end of the first line that is not blank.
fn head(source: &mut Source) -> io::Result<Vec<u8>> {
    let mut head = Vec::new();
    while head.len() < LONGEST {
        let before = head.len();
        let most = (LONGEST - before) as u64;
        if source.by_ref().take(most).read_until(b'\n', &mut head)? == 0 {
            break;
        }
        let line = head.get(before..).unwrap_or_default();
        let blank = line.strip_prefix(b"\xef\xbb\xbf").unwrap_or(line).trim_ascii().is_empty();
        if !blank {
            break;
        }
    }
    Ok(head)
}

#[cfg(test)]
mod tests;
