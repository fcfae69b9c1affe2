//! `cargo xtask browser [NAME]`: the browser tests alone, all or those whose name holds NAME.

use std::fs;

use anyhow::{Result, bail};

use crate::sh::{self, say};
use crate::site::Site;
use crate::{build, dist};

/// A program that the browser tests need, and the Debian package it comes from.
const NEEDED: [(&str, &str); 3] = [
    ("chromium", "chromium"),
    ("chromedriver", "chromium-driver"),
    // Pictures and text of what the browser prints.
    ("pdftoppm", "poppler-utils"),
];

/// Builds the site and runs the scenarios whose names hold the word; without one, all.
///
/// # Errors
/// When a program is lacking, the site does not build, or a scenario fails.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    install()?;
    test(&Site::build()?, words)
}

/// Runs the scenarios on a built site.
///
/// # Errors
/// When the site cannot be written, or a scenario fails.
pub(crate) fn test(site: &Site, words: &[&str]) -> Result<()> {
    dist::write(site)?;
    build_probe()?;
    let arguments = [&["test", "--package=hangtrue-browser", "--"], words].concat();
    sh::run(&mut sh::cargo(&arguments))
}

/// The patcher alone, for its scenarios: `target/patch-probe/`.
fn build_probe() -> Result<()> {
    let built = build::module("hangtrue-patch-probe")?;
    let folder = sh::root().join("target/patch-probe");
    fs::create_dir_all(&folder)?;
    fs::write(folder.join("patch.js"), built.glue)?;
    fs::write(folder.join(built.wasm_name), built.wasm)?;
    Ok(())
}

/// Installs what the browser tests lack, when this may be done; otherwise says the line to type.
///
/// # Errors
/// When it may not be done, or fails.
pub(crate) fn install() -> Result<()> {
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
