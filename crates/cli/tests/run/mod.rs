//! Running the binary, and comparing with goldens.

#![allow(dead_code, reason = "each test uses its part")]

use std::io::{BufRead as _, BufReader, Write as _};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicUsize, Ordering};

/// What a run left behind.
#[derive(Debug)]
pub(crate) struct Done {
    pub(crate) code: i32,
    pub(crate) stdout: String,
    pub(crate) stderr: String,
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// A file of `demo/orders`.
pub(crate) fn demo(name: &str) -> String {
    root().join("demo/orders").join(name).display().to_string()
}

/// A file for one test, gone with it.
pub(crate) struct Scratch(String);

impl Scratch {
    pub(crate) fn path(&self) -> &str {
        &self.0
    }
}

impl Drop for Scratch {
    fn drop(&mut self) {
        let _ = std::fs::remove_file(&self.0);
    }
}

/// A file that ends with `name` and holds `text`.
pub(crate) fn scratch(name: &str, text: &str) -> Scratch {
    static COUNT: AtomicUsize = AtomicUsize::new(0);
    let count = COUNT.fetch_add(1, Ordering::Relaxed);
    let name = format!("hangtrue-{}-{count}-{name}", std::process::id());
    let path = std::env::temp_dir().join(name);
    std::fs::write(&path, text).unwrap();
    Scratch(path.display().to_string())
}

/// JSON lines as values.
pub(crate) fn lines(out: &str) -> Vec<serde_json::Value> {
    out.lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

fn start(args: &[&str]) -> Child {
    Command::new(env!("CARGO_BIN_EXE_hangtrue"))
        .args(args)
        // The goldens are those of a machine that says nothing of itself.
        .env_remove("COLUMNS")
        .env_remove("NO_COLOR")
        .env_remove("CLICOLOR_FORCE")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap()
}

/// Runs with nothing on standard input.
pub(crate) fn run(args: &[&str]) -> Done {
    run_with(args, "")
}

/// Runs with `input` on standard input.
pub(crate) fn run_with(args: &[&str], input: &str) -> Done {
    let mut child = start(args);
    let mut stdin = child.stdin.take().unwrap();
    let input = input.to_owned();
    let feeder = std::thread::spawn(move || {
        // A command that does not read closes the pipe.
        let _ = stdin.write_all(input.as_bytes());
    });
    let output = child.wait_with_output().unwrap();
    feeder.join().unwrap();
    Done {
        code: output.status.code().unwrap(),
        stdout: String::from_utf8(output.stdout).unwrap(),
        stderr: String::from_utf8(output.stderr).unwrap(),
    }
}

/// Reads one line of the output and closes the pipe, as `head -1` does.
pub(crate) fn cut_short(args: &[&str], input: &str) -> Done {
    let mut child = start(args);
    let mut stdin = child.stdin.take().unwrap();
    let input = input.to_owned();
    let feeder = std::thread::spawn(move || {
        let _ = stdin.write_all(input.as_bytes());
    });
    let mut line = String::new();
    BufReader::new(child.stdout.take().unwrap()).read_line(&mut line).unwrap();
    let output = child.wait_with_output().unwrap();
    feeder.join().unwrap();
    let stderr = String::from_utf8(output.stderr).unwrap();
    Done { code: output.status.code().unwrap(), stdout: line, stderr }
}

/// JSON with one key a line.
pub(crate) fn pretty(value: &serde_json::Value) -> String {
    serde_json::to_string_pretty(value).unwrap() + "\n"
}

/// Holds `text` to the golden `name` of the command.
pub(crate) fn golden(name: &str, text: &str) {
    hangtrue_golden::golden(&format!("cli/{name}"), text);
}
