//! A crate for the browser to a wasm module and the JavaScript that loads it.
//!
//! `wasm-bindgen-cli-support` is the library behind the tool `wasm-bindgen`; Cargo.lock holds it to
//! the version of the crate `wasm-bindgen`, so nobody installs or updates a second tool by hand.

use std::env;
use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context as _, Result, anyhow};
use wasm_bindgen_cli_support::{Bindgen, Output};

use crate::functions;
use crate::names;
use crate::sh::{self, say};
use crate::split::{self, Halves};
use crate::table;

/// What the page is compiled for.
pub(crate) const TARGET: &str = "wasm32-unknown-unknown";

/// What the browser runs.
pub(crate) struct Built {
    /// The name by which the glue loads the module.
    pub(crate) wasm_name: String,
    /// The wasm module, without names or debug information.
    pub(crate) wasm: Vec<u8>,
    /// The ES module that `wasm-bindgen` writes for it.
    pub(crate) glue: String,
}

/// Builds a package with the profile `wasm`.
///
/// # Errors
/// When the target cannot be added, or the package does not compile.
pub(crate) fn module(package: &str) -> Result<Built> {
    variant(package, None, &package.replace('-', "_"))
}

/// Builds a package with a feature of it, under a name of its own.
///
/// # Errors
/// When the target cannot be added, or the package does not compile.
pub(crate) fn variant(package: &str, feature: Option<&str>, name: &str) -> Result<Built> {
    let wasm = fs::read(compile(package, feature, &[])?)?;
    built(bound(wasm, name, false)?, name)
}

/// Builds a package as two modules (`split.rs`): what starts, and the bytes of the rest.
///
/// # Errors
/// When the target cannot be added, or the package does not compile or cannot be cut.
pub(crate) fn halves(package: &str) -> Result<(Built, Vec<u8>)> {
    let name = &package.replace('-', "_");
    let Halves { first, rest } = cut(package, false)?;
    Ok((built(bound(first, name, false)?, name)?, functions::settle(&rest)?))
}

/// The same two, with the names of their functions left in, and nothing else of them.
///
/// # Errors
/// When the target cannot be added, or the package does not compile or cannot be cut.
pub(crate) fn named_halves(package: &str) -> Result<[Vec<u8>; 2]> {
    let Halves { first, rest } = cut(package, true)?;
    Ok([bound(first, "named", true)?.wasm_mut().emit_wasm(), rest])
}

fn cut(package: &str, names: bool) -> Result<Halves> {
    let wasm = fs::read(compile(package, None, &["-Clink-arg=--emit-relocs"])?)?;
    say!("cutting {package} in two");
    split::split(&wasm, names)
}

fn built(mut output: Output, name: &str) -> Result<Built> {
    let glue = names::shorten(&mut output)?;
    let wasm = functions::settle(&output.wasm_mut().emit_wasm())?;
    Ok(Built { wasm_name: format!("{name}_bg.wasm"), wasm, glue })
}

/// The module alone, with the names of its functions left in.
///
/// # Errors
/// When the target cannot be added, or the package does not compile.
pub(crate) fn named(package: &str, feature: &str) -> Result<Vec<u8>> {
    let wasm = fs::read(compile(package, Some(feature), &[])?)?;
    Ok(bound(wasm, "named", true)?.wasm_mut().emit_wasm())
}

fn bound(wasm: Vec<u8>, name: &str, names: bool) -> Result<Output> {
    say!("binding {name}");
    let mut output = Bindgen::new()
        .input_bytes(name, wasm)
        .out_name(name)
        .web(true)?
        .typescript(false)
        .remove_name_section(!names)
        .remove_producers_section(true)
        // Without it `init()` called with no argument does nothing, and says nothing.
        .omit_default_module_path(false)
        .generate_output()?;
    table::without_shims(output.wasm_mut())?;
    Ok(output)
}

/// Where the compiler keeps what belongs to it.
fn rustlib() -> Result<PathBuf> {
    let sysroot = sh::output(&mut sh::command("rustc", &["--print", "sysroot"]))?;
    Ok(Path::new(sysroot.trim()).join("lib/rustlib"))
}

fn add_target() -> Result<()> {
    if rustlib()?.join(TARGET).is_dir() {
        return Ok(());
    }
    say!("adding the target {TARGET}");
    sh::run(&mut sh::command("rustup", &["target", "add", TARGET]))
}

/// Returns the path of the module that cargo wrote. `flags` are for the last step alone, so that
/// what it stands on is compiled once for all.
fn compile(package: &str, feature: Option<&str>, flags: &[&str]) -> Result<PathBuf> {
    add_target()?;
    let with = feature.map_or_else(String::new, |feature| format!(" with {feature}"));
    say!("compiling {package}{with} for {TARGET}");
    let mut cargo = sh::cargo(&[
        "rustc",
        "--package",
        package,
        "--lib",
        "--profile=wasm",
        "--target",
        TARGET,
        "--message-format=json-render-diagnostics",
    ]);
    cargo.args(feature.map(|feature| format!("--features={feature}")));
    cargo.arg("--").args(flags);
    cargo.env("CARGO_ENCODED_RUSTFLAGS", remapped_paths()?);
    let messages = sh::output(&mut cargo)?;
    let target = package.replace('-', "_");
    messages
        .lines()
        .filter_map(|line| serde_json::from_str::<serde_json::Value>(line).ok())
        .filter(|message| message.pointer("/target/name").is_some_and(|name| *name == target))
        .flat_map(|message| message.get("filenames")?.as_array().cloned())
        .flatten()
        .filter_map(|file| file.as_str().map(PathBuf::from))
        .find(|file| file.extension().is_some_and(|end| end == "wasm"))
        .ok_or_else(|| {
            anyhow!("{package} made no .wasm file: its crate-type must include \"cdylib\"")
        })
}

/// Compiler flags that keep this machine's folders out of the module, so that two builds in two
/// places give the same bytes.
fn remapped_paths() -> Result<OsString> {
    let mut folders = vec![(sh::root(), "hangtrue".to_owned())];
    // Where the standard library's source is at hand, as for an editor, the compiler names it there
    // and not as it does elsewhere.
    let version = sh::output(&mut sh::command("rustc", &["-vV"]))?;
    let commit = version.lines().find_map(|line| line.strip_prefix("commit-hash: "));
    if let Some(commit) = commit {
        folders.push((rustlib()?.join("src/rust"), format!("/rustc/{commit}")));
    }
    for source in ["registry/src", "git/checkouts"] {
        // One folder a registry, named after its address: each is a prefix of its own.
        let folder = cargo_home()?.join(source);
        for entry in fs::read_dir(&folder).into_iter().flatten() {
            folders.push((entry?.path(), "crates".to_owned()));
        }
    }
    let flags: Vec<OsString> = folders
        .into_iter()
        .map(|(from, to)| {
            let mut flag = OsString::from("--remap-path-prefix=");
            flag.push(from);
            flag.push("=");
            flag.push(to);
            flag
        })
        .collect();
    Ok(flags.join(&OsString::from("\u{1f}")))
}

/// Where cargo keeps what it fetched.
///
/// # Errors
/// When neither variable says.
pub(crate) fn cargo_home() -> Result<PathBuf> {
    if let Some(folder) = env::var_os("CARGO_HOME") {
        return Ok(PathBuf::from(folder));
    }
    let home = env::var_os("HOME").context("neither CARGO_HOME nor HOME is set")?;
    Ok(PathBuf::from(home).join(".cargo"))
}
