//! One command, one file.

mod check;
mod profile;
mod read;

use std::process::ExitCode;

use crate::args::{Args, Command};
use crate::out::Out;

pub(crate) fn run(args: Args) -> anyhow::Result<ExitCode> {
    let mut out = Out::new(args.output);
    let code = match args.command {
        Command::Read(args) => read::run(args, &mut out),
        Command::Check(args) => check::run(args, &mut out),
        Command::Profile(args) => profile::run(args, &mut out),
    }?;
    out.finish()?;
    Ok(code)
}
