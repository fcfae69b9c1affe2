//! `cargo xtask test`: all checks, in the order that fails soonest. CI runs exactly this.

use anyhow::{Result, bail};

use crate::sh::{self, say};
use crate::site::Site;
use crate::{dist, size};

/// A program that the browser tests need, and the Debian package it comes from.
const NEEDED: [(&str, &str); 2] = [("chromium", "chromium"), ("chromedriver", "chromium-driver")];

/// Runs everything once. Nothing is tried a second time.
///
/// # Errors
/// At the first check that fails.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    crate::no_arguments(arguments)?;
    install()?;
    sh::run(&mut sh::cargo(&["fmt", "--all", "--check"]))?;
    sh::run(&mut sh::cargo(&["clippy", "--workspace", "--all-targets", "--", "--deny=warnings"]))?;
    sh::run(&mut sh::cargo(&["test", "--workspace", "--exclude=hangtrue-browser"]))?;
    let site = Site::build()?;
    dist::write(&site)?;
    eprint!("{}", size::check(&site)?);
    sh::run(&mut sh::cargo(&["test", "--package=hangtrue-browser"]))?;
    say!("all checks passed");
    Ok(())
}

/// Installs what the browser tests lack, when this may be done; otherwise says the line to type.
fn install() -> Result<()> {
    let lacking: Vec<&str> = NEEDED
        .iter()
        .filter(|(program, _)| !sh::is_installed(program))
        .map(|(_, package)| *package)
        .collect();
    if lacking.is_empty() {
        return Ok(());
    }
    // Without a font a headless browser draws no text, and no width is what it will be.
    let packages = [lacking.as_slice(), &["fonts-dejavu-core"]].concat();
    let is_root = sh::output(&mut sh::command("id", &["--user"])).is_ok_and(|id| id.trim() == "0");
    if !is_root || !sh::is_installed("apt-get") {
        bail!(
            "the browser tests lack {}; install them and run this again:\n  \
             sudo apt-get install --yes --no-install-recommends {}",
            lacking.join(", "),
            packages.join(" ")
        );
    }
    say!("installing {}", packages.join(", "));
    let lock = "--option=DPkg::Lock::Timeout=500";
    sh::run(&mut sh::command("apt-get", &["update", lock]))?;
    let mut words = vec!["install", "--yes", "--no-install-recommends", lock];
    words.extend(packages);
    sh::run(sh::command("apt-get", &words).env("DEBIAN_FRONTEND", "noninteractive"))
}
