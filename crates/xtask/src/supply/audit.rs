//! `cargo xtask audit`: the whole graph, held to `.deny.toml` by cargo-deny.

use std::path::PathBuf;

use anyhow::Result;

use crate::sh::{self, say};

/// The one that `.deny.toml` was written for.
const VERSION: &str = "0.20.2";

/// Builds cargo-deny once, into the build's own folder (some minutes; so it is no part of
/// `cargo xtask test`), and runs all of its checks.
///
/// # Errors
/// When a licence, a source or a ban is broken, or a crate is known to be vulnerable.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    crate::no_arguments(arguments)?;
    let deny = tool()?;
    let deny = deny.to_string_lossy();
    let deny = |words: &[&str]| {
        sh::run(sh::command(&deny, &["--config=.deny.toml", "--locked"]).args(words))
    };
    deny(&["check", "licenses", "bans", "sources"])?;
    // The list of what is known to be vulnerable is fetched: without a network there is
    // nothing to check against, which is no finding, and not to be passed over either.
    if deny(&["fetch", "db"]).is_err() {
        say!("licences, bans and sources hold");
        anyhow::bail!("the advisories could not be fetched, so they were NOT checked");
    }
    deny(&["check", "advisories"])
}

fn tool() -> Result<PathBuf> {
    let folder = sh::target_folder()?.join("tools");
    let deny = folder.join("bin").join("cargo-deny");
    if !deny.is_file() {
        let version = format!("--version={VERSION}");
        let words = ["install", "cargo-deny", &version, "--locked", "--root"];
        sh::run(sh::cargo(&words).arg(&folder))?;
    }
    Ok(deny)
}
