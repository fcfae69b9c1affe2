//! The commands that take orders.

use std::num::NonZeroUsize;
use std::path::PathBuf;

use clap::ValueEnum;
use hangtrue_core::Dimension;
use hangtrue_core::check::Verdict;
use hangtrue_core::say;
use hangtrue_link::csv::{Column, Measure, What};

use super::Unit;

/// Check many orders: JSON lines, a table (CSV), a list of links, or a whole JSON file.
///
/// How a file is written is told from its name and its first line; --format overrides.
/// The columns of a table are guessed from their names; --column puts them right. The
/// answers come in the order of the input, whatever --jobs is, in memory that does not
/// grow with it.
///
/// Exit code 0 when everything was read, whatever was found; 1 when --fail-on says
/// so; 2 when a file could not be read or the command line is not understood.
#[derive(Debug, clap::Args)]
pub(crate) struct Check {
    /// Files; standard input when there is none, or for `-`.
    #[arg(value_name = "FILE")]
    pub(crate) files: Vec<PathBuf>,
    /// Only tell what each column of a table is taken for.
    #[arg(long)]
    pub(crate) columns: bool,
    /// Write the answers as a table for a spreadsheet; no cell of it is a formula.
    #[arg(long, conflicts_with_all = ["output", "columns"])]
    pub(crate) csv: bool,
    /// Check by the rules of a dealer's profile in place of the built-in ones.
    #[arg(long, value_name = "FILE")]
    pub(crate) profile: Option<PathBuf>,
    /// Exit with code 1 when an order comes to this verdict or a worse one, or when
    /// something is no order.
    #[arg(long, value_enum, value_name = "VERDICT")]
    pub(crate) fail_on: Option<FailOn>,
    /// On how many processors; all of them unless this says otherwise.
    #[arg(long, short, value_name = "N")]
    pub(crate) jobs: Option<NonZeroUsize>,
    #[command(flatten)]
    pub(crate) tables: Tables,
}

/// How input is read, for every command that takes files of orders.
#[derive(Clone, Debug, Default, clap::Args)]
#[command(next_help_heading = "Input")]
pub(crate) struct Tables {
    /// How the input is written.
    #[arg(long, value_enum, default_value_t, value_name = "FORMAT")]
    pub(crate) format: Format,
    /// What a column of a table holds: NAME=WHAT or NAME=WHAT:UNIT, such as
    /// `Clear opening=width.middle:mm`; a number counts columns from 1. May be repeated.
    #[arg(long, value_name = "NAME=WHAT", value_parser = assigned)]
    pub(crate) column: Vec<Assigned>,
    /// What the bare numbers of a table are in where neither column nor row says.
    #[arg(long, value_enum)]
    pub(crate) unit: Option<Unit>,
}

/// How input is written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(crate) enum Format {
    /// Told from the name of the file and its first line.
    #[default]
    Auto,
    /// JSON, a survey or an order a line.
    JsonLines,
    /// One survey or order as JSON, over any number of lines.
    Json,
    /// A table, fields separated by commas, semicolons or tabs.
    Csv,
    /// A link a line.
    Links,
}

/// Make the link of each order.
///
/// Exit code 0 when every order has its link; 1 when one has none; 2 when a file could
/// not be read or the command line is not understood.
#[derive(Debug, clap::Args)]
pub(crate) struct Link {
    /// Files of orders or surveys; standard input when there is none, or for `-`.
    #[arg(value_name = "FILE")]
    pub(crate) files: Vec<PathBuf>,
    /// The address of the page that opens the link; without it, what follows the # alone.
    #[arg(long, value_name = "ADDRESS", value_parser = base)]
    pub(crate) base: Option<String>,
    /// Write the links alone, one a line.
    #[arg(long, conflicts_with = "output")]
    pub(crate) plain: bool,
    /// Check by the rules of a dealer's profile in place of the built-in ones.
    #[arg(long, value_name = "FILE")]
    pub(crate) profile: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) tables: Tables,
}

/// Open orders: show what was sent, and run every rule again.
///
/// ORDER is a link, a text with a link in it, the thirty characters of a small order, or
/// a file of any of these, of surveys or of orders.
///
/// Exit code 0 when every order was opened; 1 when one is refused; 2 when a file could
/// not be read or the command line is not understood.
#[derive(Debug, clap::Args)]
pub(crate) struct Open {
    /// What to open; standard input when there is none, or for `-`.
    #[arg(value_name = "ORDER")]
    pub(crate) orders: Vec<String>,
    /// Write each order as a file, hangtrue-order/1.
    #[arg(long, conflicts_with_all = ["output", "summary"])]
    pub(crate) order: bool,
    /// Write each order as plain text for a mail.
    #[arg(long, conflicts_with = "output")]
    pub(crate) summary: bool,
    /// Check by the rules of a dealer's profile in place of the built-in ones.
    #[arg(long, value_name = "FILE")]
    pub(crate) profile: Option<PathBuf>,
    #[command(flatten)]
    pub(crate) tables: Tables,
}

/// Give an order's check characters and what to read aloud, or hold what was heard
/// against them.
///
/// Without --heard: the six check characters, the thirty characters of a small order,
/// and the script to read aloud. With --heard: whether the six characters that were read
/// out go with the numbers, and if not, which number was misheard and what it probably
/// was. Thirty characters are opened instead.
///
/// Exit code 0 when it agrees; 1 when it does not, or an order has no characters; 2 when
/// a file could not be read or the command line is not understood.
#[derive(Debug, clap::Args)]
pub(crate) struct Code {
    /// An order as for `open`; or the four numbers as they were said, in the order width,
    /// height, header depth, roof-bow depth, with `?` for one that was not understood.
    #[arg(value_name = "ORDER | NUMBERS")]
    pub(crate) what: Vec<String>,
    /// The six check characters, or the thirty of a small order, as they were heard:
    /// characters or spelling words, `?` for one that was not understood.
    #[arg(long, value_name = "CHARACTERS")]
    pub(crate) heard: Option<String>,
    /// The unit of the four numbers.
    #[arg(long, value_enum, default_value_t)]
    pub(crate) unit: Unit,
    /// The four numbers are for the frame after it is built.
    #[arg(long)]
    pub(crate) build: bool,
    /// The language to read aloud in.
    #[arg(long, value_enum, default_value_t)]
    pub(crate) language: Language,
    /// Order by the rules of a dealer's profile in place of the built-in ones.
    #[arg(long, value_name = "FILE")]
    pub(crate) profile: Option<PathBuf>,
}

/// Compare two orders for one truck, number by number and reading by reading.
///
/// What differs stands first, with the slip that would explain it. A and B are each a
/// link, a text with a link in it, thirty characters, or a file with one order.
///
/// Exit code 0 when they agree; 1 when they differ; 2 when one could not be read or the
/// command line is not understood.
#[derive(Debug, clap::Args)]
pub(crate) struct Compare {
    /// What was said, or sent first.
    pub(crate) a: String,
    /// What was sent, or sent after.
    pub(crate) b: String,
    /// Leave out what is the same in both.
    #[arg(long)]
    pub(crate) differences: bool,
    /// Order by the rules of a dealer's profile in place of the built-in ones.
    #[arg(long, value_name = "FILE")]
    pub(crate) profile: Option<PathBuf>,
}

/// From which verdict on a run has failed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum FailOn {
    /// A recheck or a stop.
    Recheck,
    /// A stop.
    Stop,
}

impl From<FailOn> for Verdict {
    fn from(fail_on: FailOn) -> Self {
        match fail_on {
            FailOn::Recheck => Self::Recheck,
            FailOn::Stop => Self::Stop,
        }
    }
}

/// A language that an order is read aloud in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(crate) enum Language {
    /// English.
    #[default]
    En,
    /// Spanish.
    Es,
    /// French.
    Fr,
}

impl From<Language> for say::Language {
    fn from(language: Language) -> Self {
        match language {
            Language::En => Self::English,
            Language::Es => Self::Spanish,
            Language::Fr => Self::French,
        }
    }
}

/// A column as the command line says it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Assigned {
    /// Its name, or its number from 1.
    pub(crate) name: String,
    /// What it holds.
    pub(crate) column: Column,
}

fn assigned(text: &str) -> Result<Assigned, String> {
    let (name, what) = text.rsplit_once('=').ok_or("there is no = in it: write NAME=WHAT")?;
    let (what, measure) = match what.split_once(':') {
        None => (what, None),
        Some((what, unit)) => {
            let measure = Measure::from_name(&unit.trim().to_lowercase());
            let measure =
                measure.ok_or_else(|| format!("“{unit}” is no unit: in, ft, mm, cm or m"))?;
            (what, Some(measure))
        }
    };
    let what = what.trim().to_lowercase();
    let dimension = Dimension::ALL.into_iter().find(|dimension| dimension.key() == what);
    let usual = dimension.map(|dimension| match (dimension, dimension.spots()) {
        (Dimension::Bow, [first, ..]) => What::Reading(first),
        (_, [_, middle, _]) => What::Reading(middle),
    });
    let what = What::from_key(&what).or(usual).ok_or_else(|| {
        let others = What::OTHERS.map(What::key).join(", ");
        format!("“{what}” is not known: a reading such as width.low or bow.first, or {others}")
    })?;
    Ok(Assigned { name: name.trim().to_owned(), column: Column { what, measure } })
}

fn base(text: &str) -> Result<String, String> {
    let rest = ["https://", "http://"].iter().find_map(|scheme| text.strip_prefix(scheme));
    if rest.is_none_or(str::is_empty) {
        return Err("an address begins with https://, such as https://dealer.example/door/".into());
    }
    if text.contains(|letter: char| letter.is_whitespace() || letter.is_control()) {
        return Err("an address has no spaces in it: write %20 for one".into());
    }
    Ok(text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use clap::CommandFactory as _;
    use hangtrue_core::Spot;

    #[test]
    fn the_command_line_is_in_order() {
        crate::args::Args::command().debug_assert();
    }

    #[test]
    fn a_column_is_put_right_by_name_or_number() {
        let reading = |spot, measure| Column { what: What::Reading(spot), measure };
        for (text, name, column) in [
            ("Breite=width.low:mm", "Breite", reading(Spot::WidthLow, Some(Measure::Millimetre))),
            ("a=b = height", "a=b", reading(Spot::HeightCenter, None)),
            ("3=Bow", "3", reading(Spot::BowFirst, None)),
            ("x=id", "x", Column { what: What::Id, measure: None }),
        ] {
            assert_eq!(assigned(text), Ok(Assigned { name: name.to_owned(), column }), "{text}");
        }
        for (text, why) in [
            ("width", "there is no = in it"),
            ("a=breadth", "“breadth” is not known: a reading such as width.low"),
            ("a=width.low:ell", "“ell” is no unit: in, ft, mm, cm or m"),
        ] {
            assert!(assigned(text).unwrap_err().starts_with(why), "{text}");
        }
        assert!(base("dealer.example").is_err() && base("https://").is_err());
        assert!(base("https://dealer.example/a b").is_err());
        assert!(base("https://dealer.example/door/").is_ok());
    }
}
