//! What the page does in Chromium: beside two stacks from npm, and from the first byte on.

use std::fs;
use std::path::PathBuf;

use anyhow::{Context as _, Result};
use serde_json::Value;

use super::archive::install_from_npm;
use super::table::Table;
use crate::sh;
use crate::site::Site;
use crate::{browser, build, dist};

/// Adds the link and the QR code of a full order.
///
/// # Errors
/// When something cannot be built or run.
pub(super) fn pack(table: &mut Table) -> Result<()> {
    let folder = bundle()?;
    let built = build::module("hangtrue-bench")?;
    fs::write(folder.join("pack.js"), built.glue)?;
    fs::write(folder.join(built.wasm_name), built.wasm)?;
    drive(table, "bench-page", "pack")
}

/// Adds a keystroke in a full survey.
///
/// # Errors
/// When something cannot be built or run.
pub(super) fn keystroke(table: &mut Table) -> Result<()> {
    bundle()?;
    drive(table, "bench-page", "keystroke")
}

/// Adds the way from an address to the first reading accepted.
///
/// # Errors
/// When something cannot be built or run, or a repeated visit asks the network.
pub(super) fn cold(table: &mut Table) -> Result<()> {
    drive(table, "bench-cold", "cold")
}

/// Adds what Lighthouse says of every page.
///
/// # Errors
/// When something cannot be built or run.
pub(super) fn pages(table: &mut Table) -> Result<()> {
    install_from_npm()?;
    drive(table, "bench-cold", "pages")
}

/// Builds the site, which the browser is given in each of them.
///
/// # Errors
/// When it does not build.
pub(super) fn site() -> Result<()> {
    browser::install(Some("chromium"))?;
    dist::write(&Site::build()?)
}

/// The peers as a web developer would ship them: bundled, minified, for production.
fn bundle() -> Result<PathBuf> {
    install_from_npm()?;
    let folder = sh::root().join("target/bench/page");
    fs::create_dir_all(&folder)?;
    sh::run(&mut sh::command(
        "tests/bench/node_modules/.bin/esbuild",
        &[
            "tests/bench/page/peers.mjs",
            "--bundle",
            "--minify",
            "--format=esm",
            "--define:process.env.NODE_ENV=\"production\"",
            "--log-level=warning",
            "--outfile=target/bench/page/peers.js",
        ],
    ))?;
    Ok(folder)
}

/// Runs what measures in the browser, and takes its rows in.
fn drive(table: &mut Table, example: &str, what: &'static str) -> Result<()> {
    let words = ["run", "--quiet", "--package=hangtrue-browser", "--example"];
    let words = [&words[..], &[example, "--", what]].concat();
    let rows: Value = serde_json::from_str(&sh::output(&mut sh::cargo(&words))?)?;
    for row in rows.as_array().context("rows")? {
        let text = |key: &str| row.get(key).and_then(Value::as_str).unwrap_or_default();
        let values = row.get("values").and_then(Value::as_array).into_iter().flatten();
        let values = values.filter_map(Value::as_f64).collect();
        let unit = match text("unit") {
            "p50" => "ms, 50 of 100",
            "p99" => "ms, 99 of 100",
            "points" => "points of 100",
            _ => "ms",
        };
        table.add(what, text("what"), text("who"), unit, values);
    }
    Ok(())
}
