//! `hangtrue`: the back office's end of an order.

mod args;
mod command;
mod input;
mod jobs;
mod lines;
mod out;
mod progress;
mod rules;
mod style;
mod table;
mod words;

use std::process::ExitCode;

use clap::Parser as _;

fn main() -> ExitCode {
    match command::run(args::Args::parse()) {
        Ok(code) => code,
        // Whoever reads us has had enough (`hangtrue check … | head`): no error.
        Err(error) if out::is_broken_pipe(&error) => ExitCode::SUCCESS,
        Err(error) => {
            use std::io::Write as _;
            let _ = writeln!(std::io::stderr(), "hangtrue: {error:#}");
            ExitCode::from(2)
        }
    }
}
