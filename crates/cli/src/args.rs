//! The command line, as data.

use std::path::PathBuf;

use clap::{Parser, Subcommand, ValueEnum};
use hangtrue_core::check::Verdict;

/// Read tape readings and check rear-door orders on the command line.
///
/// JSON, one object a line, when the output is a pipe or a file; a table on a terminal.
#[derive(Debug, Parser)]
#[command(name = "hangtrue", version)]
pub(crate) struct Args {
    /// How to write the answers.
    #[arg(long, value_enum, global = true, default_value_t, value_name = "FORM")]
    pub(crate) output: Output,
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

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    Read(Read),
    Check(Check),
    Profile(Profile),
}

/// Read readings of a tape from standard input, one a line.
#[derive(Debug, clap::Args)]
pub(crate) struct Read {
    /// What a bare number is: inches or millimetres.
    #[arg(long, value_enum, default_value_t)]
    pub(crate) unit: Unit,
}

/// Check surveys, one JSON object a line.
///
/// Exit code 0 when everything was read, whatever was found; 1 when --fail-on says
/// so; 2 when a file could not be read or the command line is not understood.
#[derive(Debug, clap::Args)]
pub(crate) struct Check {
    /// Files of surveys; standard input when there is none, or for `-`.
    #[arg(value_name = "FILE")]
    pub(crate) files: Vec<PathBuf>,
    /// Check by the rules of a dealer's profile in place of the built-in ones.
    #[arg(long, value_name = "FILE")]
    pub(crate) profile: Option<PathBuf>,
    /// Exit with code 1 when a survey comes to this verdict or a worse one, or when
    /// a line is not a survey.
    #[arg(long, value_enum, value_name = "VERDICT")]
    pub(crate) fail_on: Option<FailOn>,
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
