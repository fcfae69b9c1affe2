//! `hangtrue man`: manual pages, made from the command line's own description.

use std::process::ExitCode;

use anyhow::bail;
use clap::CommandFactory as _;
use clap_mangen::Man;

use crate::args;
use crate::out::Out;

pub(crate) fn run(args: args::Man, out: &mut Out) -> anyhow::Result<ExitCode> {
    let mut root = args::Args::command();
    root.build();
    let page = match &args.command {
        None => root,
        Some(name) => match root.find_subcommand(name) {
            Some(command) => command.clone(),
            None => {
                let known: Vec<&str> =
                    root.get_subcommands().map(clap::Command::get_name).collect();
                bail!("there is no command “{name}”; there are: {}", known.join(", "))
            }
        },
    };
    let mut roff = Vec::new();
    Man::new(page.disable_help_subcommand(true)).render(&mut roff)?;
    out.text(&String::from_utf8_lossy(&roff))?;
    Ok(ExitCode::SUCCESS)
}
