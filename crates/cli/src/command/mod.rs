//! One command, one file.

mod check;
mod code;
mod compare;
mod completion;
mod link;
mod man;
mod open;
pub(crate) mod profile;
mod read;

use std::process::ExitCode;

use hangtrue_link::json::{Id, Refusal};
use serde::Serialize;

use crate::args::{Args, Command};
use crate::input::Wrong;
use crate::out::Out;

pub(crate) fn run(args: Args) -> anyhow::Result<ExitCode> {
    let mut out = Out::new(args.output, args.color);
    let code = match args.command {
        Command::Read(args) => read::run(args, &mut out),
        Command::Check(args) => check::run(args, &mut out),
        Command::Link(args) => link::run(args, &mut out),
        Command::Open(args) => open::run(args, &mut out),
        Command::Code(args) => code::run(args, &mut out),
        Command::Compare(args) => compare::run(args, &mut out),
        Command::Profile(args) => profile::run(args, &mut out),
        Command::Completion(args) => completion::run(args, &mut out),
        Command::Man(args) => man::run(args, &mut out),
    }?;
    out.finish()?;
    Ok(code)
}

/// An answer to an item that is known by its line.
#[derive(Serialize)]
struct Numbered<T> {
    line: u64,
    #[serde(flatten)]
    answer: T,
}

/// One JSON object, with its line where that is how it is known.
fn json(out: &mut Out, line: Option<u64>, answer: &impl Serialize) -> anyhow::Result<()> {
    match line {
        None => out.json(answer),
        Some(line) => out.json(&Numbered { line, answer }),
    }
}

/// The answer to what is no order.
fn refusal(id: Id, wrong: Wrong) -> Refusal {
    Refusal::in_words(id, wrong.code, wrong.place, wrong.message)
}

/// 0, or 1 where the answer is no.
fn exit(no: bool) -> ExitCode {
    if no { ExitCode::from(1) } else { ExitCode::SUCCESS }
}
