//! Running other programs: the command is shown, its failure is an error.

use std::env;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use anyhow::{Context as _, Result, bail};

/// Tells the person what is being done.
macro_rules! say {
    ($($word:tt)*) => { eprintln!("xtask: {}", format_args!($($word)*)) };
}
pub(crate) use say;

/// The workspace's folder. `cargo run` sets the variable; the constant serves a binary run by hand.
pub(crate) fn root() -> PathBuf {
    let here = env::var_os("CARGO_MANIFEST_DIR")
        .map_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")), PathBuf::from);
    here.ancestors().nth(2).map(PathBuf::from).unwrap_or(here)
}

/// Where cargo builds.
///
/// # Errors
/// When cargo does not say.
pub(crate) fn target_folder() -> Result<PathBuf> {
    let words = ["metadata", "--format-version=1", "--no-deps", "--offline"];
    let metadata: serde_json::Value = serde_json::from_str(&output(&mut cargo(&words))?)?;
    let folder = metadata.get("target_directory").and_then(serde_json::Value::as_str);
    folder.map(PathBuf::from).context("cargo does not say where it builds")
}

/// The cargo that runs this, so that a toolchain chosen with `+name` stays chosen.
pub(crate) fn cargo(arguments: &[&str]) -> Command {
    command(&env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned()), arguments)
}

/// A program and its arguments, in the workspace's folder.
pub(crate) fn command(program: &str, arguments: &[&str]) -> Command {
    let mut command = Command::new(program);
    command.args(arguments).current_dir(root());
    // A nested cargo must not believe that it builds xtask.
    command.env_remove("CARGO_MANIFEST_DIR").env_remove("CARGO_PKG_NAME");
    command
}

/// Shows the command, runs it with this terminal, and fails if it fails.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    let line = line_of(command);
    say!("$ {line}");
    let status = command.status().with_context(|| format!("cannot start `{line}`"))?;
    if !status.success() {
        bail!("`{line}` failed ({status})");
    }
    Ok(())
}

/// Runs the command and returns its standard output; standard error goes to this terminal.
pub(crate) fn output(command: &mut Command) -> Result<String> {
    let line = line_of(command);
    let output = command
        .stderr(Stdio::inherit())
        .output()
        .with_context(|| format!("cannot start `{line}`"))?;
    if !output.status.success() {
        bail!("`{line}` failed ({})", output.status);
    }
    String::from_utf8(output.stdout).with_context(|| format!("output of `{line}` is not UTF-8"))
}

/// Builds a program, and says where cargo put it.
///
/// # Errors
/// When it does not compile, or there is no program in what was built.
pub(crate) fn built(arguments: &[&str]) -> Result<PathBuf> {
    let words = [&["build", "--message-format=json-render-diagnostics", "--quiet"], arguments];
    let messages = output(&mut cargo(&words.concat()))?;
    let all = messages.lines().filter_map(|line| serde_json::from_str(line).ok());
    let mut put = all.filter_map(|message: serde_json::Value| {
        message.get("executable").and_then(|path| path.as_str()).map(PathBuf::from)
    });
    put.next_back().context("cargo does not say where the program is")
}

/// Whether a program of this name stands on the search path.
pub(crate) fn is_installed(program: &str) -> bool {
    let path = env::var_os("PATH").unwrap_or_default();
    env::split_paths(&path).any(|folder| folder.join(program).is_file())
}

fn line_of(command: &Command) -> String {
    let mut line = program_name(command);
    for argument in command.get_args() {
        line.push(' ');
        line.push_str(&argument.to_string_lossy());
    }
    line
}

fn program_name(command: &Command) -> String {
    let path = PathBuf::from(command.get_program());
    path.file_name().unwrap_or(path.as_os_str()).to_string_lossy().into_owned()
}
