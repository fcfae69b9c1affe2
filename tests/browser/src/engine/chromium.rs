//! Chromium by chromedriver.

use std::process::{Command, Stdio};

use anyhow::{Context as _, Result};
use serde_json::{Map, Value, json};

use crate::driver::Group;

/// Background services are off, so that every request seen is one the page made.
const FLAGS: [&str; 10] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-dev-shm-usage",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-breakpad",
];

pub(super) fn start() -> Result<(Group, String)> {
    let mut command = Command::new("chromedriver");
    command.arg("--port=0").stdout(Stdio::piped()).stderr(Stdio::null());
    let mut group = Group::start(command)?;
    let port = group
        .wait_for_line(|line| {
            let (_, port) = line.split_once("successfully on port ")?;
            port.trim_end_matches('.').parse::<u16>().ok()
        })
        .context("chromedriver")?;
    Ok((group, format!("http://127.0.0.1:{port}")))
}

pub(super) fn capabilities() -> Map<String, Value> {
    let wanted = json!({
        "browserName": "chrome",
        "goog:chromeOptions": { "args": FLAGS },
        "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
    });
    wanted.as_object().cloned().unwrap_or_default()
}
