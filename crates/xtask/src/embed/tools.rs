//! `cargo xtask embed`: `dist/embed/` as a webmaster's tools take it. The types by the
//! TypeScript compiler, manifest and schemas by a validator, all of them npm packages of
//! `tests/embed`.

use std::fs;

use anyhow::Result;

use crate::site::Site;
use crate::{browser, dist, sh};

/// Builds the site and checks its folder.
///
/// # Errors
/// When npm is lacking, the site does not build, or a check fails.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    crate::no_arguments(arguments)?;
    browser::install_npm()?;
    dist::write(&Site::build()?)?;
    check()
}

/// Checks the folder as it was written.
///
/// # Errors
/// When a check fails.
pub(crate) fn check() -> Result<()> {
    let folder = sh::root().join("tests/embed");
    let changed = |name: &str| fs::metadata(folder.join(name)).and_then(|file| file.modified());
    // npm writes that file when it has put all in place.
    let installed = changed("node_modules/.package-lock.json").ok();
    if installed.is_none_or(|at| changed("package-lock.json").is_ok_and(|lock| lock > at)) {
        sh::run(sh::command("npm", &["ci", "--no-audit", "--no-fund"]).current_dir(&folder))?;
    }
    sh::run(sh::command("npm", &["test"]).current_dir(&folder))
}
