//! `cargo xtask bench`: the page, the pack and the command beside what a web developer would pick.
//!
//! Every peer is measured in the same run, in turn, on the same inputs: the machine is noisy, and
//! only ratios count. Peers are at the versions of `tests/bench/package.json` and
//! `tests/bench/requirements.txt`; the head of each script says what it does and what it does not.

mod archive;
mod judge;
mod page;
mod process;
mod table;

use anyhow::{Result, bail};

use table::Table;

/// Measures what is named, or everything; prints the table and writes `target/bench.json`.
///
/// # Errors
/// When something else is named, or what is measured cannot be built or run.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let (long, words) = match words {
        [rest @ .., "--long"] => (true, rest),
        _ => (false, words),
    };
    let mut table = Table::new()?;
    match words {
        ["judge"] if !long => return judge::run(),
        [] => {
            judge::run()?;
            archive::run(&mut table, long)?;
            page::site()?;
            page::pack(&mut table)?;
            page::keystroke(&mut table)?;
            page::cold(&mut table)?;
            page::pages(&mut table)?;
        }
        ["archive"] => archive::run(&mut table, long)?,
        ["pack" | "keystroke" | "cold" | "pages"] if !long => {
            page::site()?;
            match words {
                ["pack"] => page::pack(&mut table)?,
                ["keystroke"] => page::keystroke(&mut table)?,
                ["cold"] => page::cold(&mut table)?,
                _ => page::pages(&mut table)?,
            }
        }
        _ => bail!(
            "usage: cargo xtask bench [judge | archive | pack | keystroke | cold | pages] [--long]"
        ),
    }
    table.write()
}
