//! An order named on the command line: a file, a link, a text with a link in it, or
//! thirty characters.

use std::io::{self, Read as _};
use std::path::Path;

use anyhow::{Context as _, bail};
use hangtrue_core::profile::Profile;
use hangtrue_link::LinkError;
use hangtrue_link::code::WORD;
use hangtrue_link::csv::{Sheet, What};
use hangtrue_link::json::Id;

use super::item::{document, linked, small};
use super::{Content, Input, Item, Wrong, format};
use crate::args::{Format, Tables};

/// The most of a file that `open`, `code` and `compare` hold at once.
const MOST: usize = 4 << 20;

/// All orders that `argument` names; a table's numbers are held against its links by `profile`.
///
/// # Errors
/// When it is a file that cannot be read; what is no order is an item that says so.
pub(crate) fn several(
    argument: &str,
    how: &Tables,
    profile: &Profile,
) -> anyhow::Result<Vec<Item>> {
    // A pipe that a shell names for its user is a file too.
    let is_file = std::fs::metadata(argument).is_ok_and(|it| !it.is_dir());
    if argument == "-" || is_file {
        return of_file(argument, how, profile);
    }
    let item = text(argument);
    let looks_like_a_file = argument.len() < 200
        && !argument.contains(|letter: char| letter.is_whitespace() || letter == '#')
        && !argument.contains("://")
        && argument.contains(['.', '/', '\\']);
    if item.content.is_err() && looks_like_a_file {
        // It was meant as one: the system says why it cannot be opened.
        std::fs::File::open(argument).with_context(|| format!("opening {argument}"))?;
        bail!("{argument} is no file that can be read: name a file, or give a link");
    }
    Ok(vec![item])
}

/// The one order that `argument` names.
///
/// # Errors
/// When it is none, or there are several.
pub(crate) fn one(argument: &str, profile: &Profile) -> anyhow::Result<Content> {
    let mut items = several(argument, &Tables::default(), profile)?;
    let many = items.len();
    match (items.pop(), many) {
        (None, _) => bail!("{argument} holds no order: name a file with one, or give a link"),
        (Some(item), 1) => match item.content {
            Ok(content) => Ok(content),
            Err(wrong) => bail!("{}: {}", shortened(argument), wrong.message),
        },
        _ => bail!(
            "{argument} holds {many} orders, and one is needed: put the one that is meant into a \
             file of its own, or give its link"
        ),
    }
}

fn of_file(path: &str, how: &Tables, profile: &Profile) -> anyhow::Result<Vec<Item>> {
    let name = if path == "-" { "standard input" } else { path };
    let bytes = if path == "-" {
        read(&mut io::stdin().lock())
    } else {
        let mut file = std::fs::File::open(path).with_context(|| format!("opening {name}"))?;
        read(&mut file)
    };
    let bytes = bytes.with_context(|| format!("reading {name}"))?;
    if bytes.len() > MOST {
        bail!("{name} is larger than {MOST} bytes: `hangtrue check` takes files of any size");
    }
    let held = String::from_utf8_lossy(&bytes).into_owned();
    if held.trim_matches(|letter: char| letter.is_whitespace() || letter == '\u{feff}').is_empty() {
        bail!("{name} is empty: name a file with an order, or give a link");
    }
    if how.format == Format::Auto && is_one_text(path, &held) {
        return Ok(vec![text(&held)]);
    }
    let mut items = Vec::new();
    let mut input = Input::of_text(name, held, how)?;
    input.reader.judge_by(profile);
    input.each(&mut |item| {
        items.push(item);
        Ok(())
    })?;
    Ok(items)
}

fn read(from: &mut dyn io::Read) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    from.take(MOST as u64 + 1).read_to_end(&mut bytes)?;
    Ok(bytes)
}

/// Whether a file is a mail or a note around one link or thirty characters, and no list.
fn is_one_text(path: &str, held: &str) -> bool {
    let first = held.lines().find(|line| !line.trim().is_empty()).unwrap_or_default();
    let is_json = first.trim_start_matches('\u{feff}').trim_start().starts_with(['{', '[']);
    if is_json || is_named_table(path) {
        return false;
    }
    // A mail has commas too: it is a table only where there is no link in it.
    match whole_links(held) {
        0 => format::guess(path, first) != Format::Csv || small(held).is_ok(),
        links => links == 1 && !has_numbers_beside_links(held),
    }
}

/// Whether it is a table with links and numbers, which are held against each other.
fn has_numbers_beside_links(held: &str) -> bool {
    Sheet::open(held).is_ok_and(|sheet| {
        let any = |known: fn(What) -> bool| sheet.columns.iter().any(|column| known(column.what));
        any(|what| what == What::Link) && any(|what| matches!(what, What::Reading(_)))
    })
}

fn is_named_table(path: &str) -> bool {
    let extension = Path::new(path).extension().and_then(|extension| extension.to_str());
    extension.is_some_and(|it| ["csv", "tsv", "tab"].contains(&it.to_ascii_lowercase().as_str()))
}

/// Lines with a whole link each; one that is broken over lines counts when nothing else does.
fn whole_links(held: &str) -> usize {
    let lines = held.lines().filter(|line| hangtrue_link::holds(line)).count();
    if lines == 0 { usize::from(hangtrue_link::holds(held)) } else { lines }
}

/// A text that is one order.
fn text(held: &str) -> Item {
    let trimmed = held.trim_start_matches('\u{feff}').trim();
    if trimmed.starts_with('{') {
        return document(trimmed);
    }
    let content = linked(trimmed).or_else(|error| match small(trimmed) {
        Ok(content) => Ok(content),
        Err(small) => Err(wrong(error, &small)),
    });
    Item { line: 1, id: Id::None, content }
}

/// Why a text is neither link nor thirty characters.
fn wrong(link: LinkError, small: &hangtrue_link::code::SmallError) -> Wrong {
    use hangtrue_link::code::{HeardError, SmallError};
    match small {
        // Thirty of them were meant as such.
        SmallError::Refused | SmallError::Contents => crate::words::small(small),
        SmallError::Heard(HeardError::Count { found, .. }) if found.abs_diff(WORD) <= 2 => {
            crate::words::small(small)
        }
        SmallError::Heard(_) => Wrong::from(link),
    }
}

fn shortened(argument: &str) -> String {
    let mut letters = argument.chars();
    let short: String = letters.by_ref().take(60).collect();
    if letters.next().is_some() { short + "…" } else { short }
}
