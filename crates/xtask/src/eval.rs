//! `cargo xtask eval [--seed N] [--surveys N] [--quick] [--only TEXT] [--check]`: the judge on
//! invented surveys, by seed, beside simpler checks. `tests/sim` holds all of it; here it is
//! only built for speed and run.

use anyhow::Result;

use crate::sh;

/// Prints the tables.
///
/// # Errors
/// When it does not build; with `--check`, when an aim is missed.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let mut all = vec!["run", "--quiet", "--release", "--package=hangtrue-sim", "--bin=eval", "--"];
    all.extend(words);
    sh::run(&mut sh::cargo(&all))
}
