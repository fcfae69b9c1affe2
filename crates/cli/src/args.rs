//! The command line, as data.

mod orders;

use std::path::PathBuf;

use clap::{Parser, Subcommand, ValueEnum};
use clap_complete::Shell;

pub(crate) use orders::{Assigned, Check, Code, Compare, Format, Link, Open, Tables};

const EXIT_CODES: &str = "\
Exit codes:
  0  everything was read, and nothing stands against it
  1  the answer is no: an order or profile was refused, two orders differ, what was
     heard does not agree, or --fail-on says so
  2  a file could not be read, or the command line was not understood";

/// Read tape readings, and check, open, compare and send rear-door orders.
///
/// A table on a terminal; JSON, one object a line, in a pipe or a file.
#[derive(Debug, Parser)]
#[command(name = "hangtrue", version, after_help = EXIT_CODES, max_term_width = 100)]
pub(crate) struct Args {
    /// How to write the answers.
    #[arg(long, value_enum, global = true, default_value_t, value_name = "FORM")]
    #[arg(help_heading = "Answers")]
    pub(crate) output: Output,
    /// Whether a table has color; `auto` heeds NO_COLOR.
    #[arg(long, value_enum, global = true, default_value_t, value_name = "WHEN")]
    #[arg(help_heading = "Answers")]
    pub(crate) color: Color,
    #[command(subcommand)]
    pub(crate) command: Command,
}

/// How answers are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(crate) enum Output {
    /// A table on a terminal, JSON lines otherwise.
    #[default]
    Auto,
    /// A table.
    Table,
    /// JSON, one object a line.
    Json,
}

/// When a table has color.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(crate) enum Color {
    /// On a terminal that shows it, unless NO_COLOR is set.
    #[default]
    Auto,
    /// Always.
    Always,
    /// Never.
    Never,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    Read(Read),
    Check(Check),
    Link(Link),
    Open(Open),
    Code(Code),
    Compare(Compare),
    Profile(Profile),
    Completion(Completion),
    Man(Man),
}

/// Read readings of a tape from standard input, one a line.
#[derive(Debug, clap::Args)]
pub(crate) struct Read {
    /// What a bare number is: inches or millimetres.
    #[arg(long, value_enum, default_value_t)]
    pub(crate) unit: Unit,
}

/// Check dealers' profiles, and say what is wrong with them, and where.
///
/// Exit code 0 when all can be used; 1 when one is refused; 2 when a file could not be
/// read or the command line is not understood.
#[derive(Debug, clap::Args)]
pub(crate) struct Profile {
    /// Files of profiles.
    #[arg(value_name = "FILE", required = true)]
    pub(crate) files: Vec<PathBuf>,
}

/// Write the completion script of a shell to standard output.
#[derive(Debug, clap::Args)]
pub(crate) struct Completion {
    /// Which shell.
    #[arg(value_enum)]
    pub(crate) shell: Shell,
}

/// Write the manual page of the command, or of one of its commands, to standard output.
#[derive(Debug, clap::Args)]
pub(crate) struct Man {
    /// The command that the page is about, such as `check`.
    pub(crate) command: Option<String>,
}

/// A unit.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(crate) enum Unit {
    /// Inches.
    #[default]
    In,
    /// Millimetres.
    Mm,
}

impl From<Unit> for hangtrue_core::Unit {
    fn from(unit: Unit) -> Self {
        match unit {
            Unit::In => Self::Inch,
            Unit::Mm => Self::Millimetre,
        }
    }
}
