//! `cargo xtask hostile [--payloads N]`: ten million random links, what the worst of them costs.

use anyhow::{Result, bail};

use crate::sh;

const PAYLOADS: &str = "10000000";

/// Prints the figures.
///
/// # Errors
/// When a payload takes more memory or time than is promised, or ends in a panic.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let count = match words {
        [] => PAYLOADS,
        ["--payloads", count] => count,
        _ => bail!("it takes nothing but `--payloads N`"),
    };
    let run = ["run", "--quiet", "--release", "--package=hangtrue-hostile", "--", "payloads"];
    sh::run(sh::cargo(&run).arg(count))
}
