//! `cargo xtask bench judge`: how long a judgement takes, on this machine and in instructions.

use std::path::Path;
use std::process::Command;

use anyhow::{Context as _, Result};

use crate::sh::{self, say};

/// Times the judge natively; where Valgrind is installed, counts its instructions too, which
/// do not depend on what else the machine does.
///
/// # Errors
/// When nothing can be built or run.
pub(super) fn run() -> Result<()> {
    let package = ["--release", "--package=hangtrue-sim", "--bin=speed"];
    sh::run(sh::cargo(&["run", "--quiet"]).args(package))?;
    if !sh::is_installed("valgrind") {
        say!("valgrind is not installed: no instructions counted");
        return Ok(());
    }
    let program = sh::built(&package)?;
    let (few, many) = (1_u64, 11_u64);
    let each = (instructions(&program, many)? - instructions(&program, few)?) / (many - few);
    say!("{each} instructions a judgement of eleven readings (callgrind)");
    Ok(())
}

fn instructions(program: &Path, judgements: u64) -> Result<u64> {
    let mut valgrind = Command::new("valgrind");
    valgrind.args(["--tool=callgrind", "--callgrind-out-file=/dev/null"]).arg(program);
    let output = valgrind.args(["--judgements", &judgements.to_string()]).output()?;
    let text = String::from_utf8_lossy(&output.stderr);
    let collected = text.lines().find_map(|line| line.split_once("Collected : "));
    let (_, count) = collected.with_context(|| format!("valgrind counts nothing: {text}"))?;
    count.trim().parse().with_context(|| format!("valgrind counts `{count}`"))
}
