//! `cargo xtask test`: all checks, in the order that fails soonest. CI runs exactly this.

use anyhow::Result;

use crate::sh::{self, say};
use crate::site::Site;
use crate::{browser, dist, embed, size};

/// Runs everything once. Nothing is tried a second time.
///
/// # Errors
/// At the first check that fails.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    crate::no_arguments(arguments)?;
    browser::install(None)?;
    for words in [
        &["fmt", "--all", "--check"][..],
        &["clippy", "--workspace", "--all-targets", "--", "--deny=warnings"],
        // The other pages are built by a feature each.
        &["clippy", "--package=hangtrue-web", "--all-features", "--", "--deny=warnings"],
        &["test", "--workspace", "--exclude=hangtrue-browser"],
    ] {
        sh::run(&mut sh::cargo(words))?;
    }
    let site = Site::build()?;
    dist::write(&site)?;
    embed::tools::check()?;
    browser::test(&site, None, &[])?;
    size::check(&site)?;
    say!("all checks passed");
    Ok(())
}
