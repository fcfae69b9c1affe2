//! `cargo xtask fuzz TARGET [--seconds N] [--runs N]`: libFuzzer on one of the ways in.
//!
//! With the compiler that builds everything else: the instrumentation is a pass of LLVM that
//! a stable compiler has too. No sanitizer: of our code only the browser's boundary may hold
//! `unsafe`, and that is not here.

use std::fs;
use std::path::PathBuf;

use anyhow::{Result, bail};

use crate::sh::{self, say};

/// What libFuzzer needs to see: edges as counters, their places, operands of comparisons.
const FLAGS: [&str; 6] = [
    "-Cpasses=sancov-module",
    "-Cllvm-args=-sanitizer-coverage-level=4",
    "-Cllvm-args=-sanitizer-coverage-inline-8bit-counters",
    "-Cllvm-args=-sanitizer-coverage-pc-table",
    "-Cllvm-args=-sanitizer-coverage-trace-compares",
    "--cfg=fuzzing",
];

/// Fuzzes until something is found, or for as long as was said. What is found is written to
/// `target/fuzz/TARGET/found`; once mended it is kept in `tests/hostile/cases/TARGET`.
///
/// # Errors
/// When it does not build, or something is found.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let Some((&target, mut rest)) = words.split_first() else {
        bail!("which way in? They stand in tests/hostile/src/lib.rs");
    };
    let (mut seconds, mut runs) = ("60", "-1");
    while let [option, value, further @ ..] = rest {
        match *option {
            "--seconds" => seconds = value,
            "--runs" => runs = value,
            other => bail!("`{other}` is not an option here"),
        }
        rest = further;
    }
    if !rest.is_empty() {
        bail!("`{}` lacks its number", rest.concat());
    }
    let folder = sh::target_folder()?.join("fuzz");
    let (program, own) = (build(target, &folder)?, folder.join(target));
    let [seeds, corpus, found] = ["seeds", "corpus", "found"].map(|name| own.join(name));
    for folder in [&corpus, &found] {
        fs::create_dir_all(folder)?;
    }
    let seeding = ["run", "--quiet", "--package=hangtrue-hostile", "--", "seeds", target];
    sh::run(sh::cargo(&seeding).arg(&seeds))?;
    say!("what it finds goes to {}", found.display());
    let mut fuzzer = sh::command(&program.to_string_lossy(), &[]);
    fuzzer.arg(&corpus).arg(&seeds).arg(format!("-artifact_prefix={}/", found.display()));
    // A long input costs time and shows nothing that a short one does not.
    fuzzer.args(["-max_len=4096", "-timeout=10", "-rss_limit_mb=1024", "-print_final_stats=1"]);
    fuzzer.arg(format!("-max_total_time={seconds}")).arg(format!("-runs={runs}"));
    sh::run(&mut fuzzer)
}

fn build(target: &str, folder: &std::path::Path) -> Result<PathBuf> {
    // Said as a target, the flags are not for build scripts.
    let host = sh::output(&mut sh::command("rustc", &["--print=host-tuple"]))?;
    let host = host.trim();
    let mut cargo = sh::cargo(&["build", "--release", "--manifest-path=tests/fuzz/Cargo.toml"]);
    cargo.args(["--locked", "--target", host, "--bin", target, "--target-dir"]).arg(folder);
    cargo.env("CARGO_ENCODED_RUSTFLAGS", FLAGS.join("\u{1f}"));
    sh::run(&mut cargo)?;
    Ok(folder.join(host).join("release").join(target))
}
