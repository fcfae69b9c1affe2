//! `cargo xtask bench judge`: how long a judgement takes, on this machine and in instructions.

use std::path::PathBuf;
use std::process::Command;

use anyhow::{Context as _, Result, bail};

use crate::sh::{self, say};

/// Times the judge natively; where Valgrind is installed, counts its instructions too, which
/// do not depend on what else the machine does.
///
/// # Errors
/// When something else than the judge is asked for, or nothing can be built or run.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    if words != ["judge"] {
        bail!("`cargo xtask bench judge` is the only one; the rest is in tests/bench");
    }
    let package = ["--release", "--package=hangtrue-sim", "--bin=speed"];
    sh::run(sh::cargo(&["run", "--quiet"]).args(package))?;
    if !sh::is_installed("valgrind") {
        say!("valgrind is not installed: no instructions counted");
        return Ok(());
    }
    let built = [&["build", "--message-format=json", "--quiet"][..], &package].concat();
    let program = executable(&sh::output(&mut sh::cargo(&built))?)?;
    let (few, many) = (1_u64, 11_u64);
    let each = (instructions(&program, many)? - instructions(&program, few)?) / (many - few);
    say!("{each} instructions a judgement of eleven readings (callgrind)");
    Ok(())
}

/// Where cargo says that it put the program.
fn executable(messages: &str) -> Result<PathBuf> {
    let all = messages.lines().filter_map(|line| serde_json::from_str(line).ok());
    let mut put = all.filter_map(|message: serde_json::Value| {
        message.get("executable").and_then(|path| path.as_str()).map(PathBuf::from)
    });
    put.next_back().context("cargo does not say where the program is")
}

fn instructions(program: &PathBuf, judgements: u64) -> Result<u64> {
    let mut valgrind = Command::new("valgrind");
    valgrind.args(["--tool=callgrind", "--callgrind-out-file=/dev/null"]).arg(program);
    let output = valgrind.args(["--judgements", &judgements.to_string()]).output()?;
    let text = String::from_utf8_lossy(&output.stderr);
    let collected = text.lines().find_map(|line| line.split_once("Collected : "));
    let (_, count) = collected.with_context(|| format!("valgrind counts nothing: {text}"))?;
    count.trim().parse().with_context(|| format!("valgrind counts `{count}`"))
}
