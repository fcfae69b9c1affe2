//! `hangtrue completion`: what a shell needs to complete the command line.

use std::process::ExitCode;

use clap::CommandFactory as _;

use crate::args;
use crate::out::Out;

pub(crate) fn run(args: args::Completion, out: &mut Out) -> anyhow::Result<ExitCode> {
    let mut script = Vec::new();
    clap_complete::generate(args.shell, &mut args::Args::command(), "hangtrue", &mut script);
    out.text(&String::from_utf8_lossy(&script))?;
    Ok(ExitCode::SUCCESS)
}
