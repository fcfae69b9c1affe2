//! `cargo xtask reproduce`: the site built here and once more elsewhere, compared byte by byte.

use std::collections::BTreeMap;
use std::env;
use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context as _, Result, ensure};

use crate::sh::{self, say};
use crate::site::{File, Site};
use crate::supply::sbom;
use crate::{build, dist};

type Files = BTreeMap<String, Vec<u8>>;

/// The tree, and a copy of it in a folder deeper and of another length, built from nothing
/// into a target folder of its own.
///
/// # Errors
/// When a file differs, or one build has a file that the other has not.
pub(crate) fn run(arguments: &[&str]) -> Result<()> {
    crate::no_arguments(arguments)?;
    let site = Site::build()?;
    let bill = File { name: sbom::NAME.to_owned(), bytes: sbom::text(site.files())?.into_bytes() };
    let files = site.files().iter().chain([&bill]);
    let here: Files = files.map(|file| (file.name.clone(), file.bytes.clone())).collect();

    let folder = sh::target_folder()?.join("reproduce");
    let tree = folder.join("elsewhere and/deeper");
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    copy(&tree)?;
    let mut again = sh::command(&env::current_exe()?.to_string_lossy(), &["dist"]);
    again.env("CARGO_MANIFEST_DIR", tree.join("crates/xtask"));
    again.env("CARGO_TARGET_DIR", tree.join("target"));
    sh::run(&mut again)?;
    let written = tree.join(dist::NAME);
    let mut there = Files::new();
    read(&written, &written, &mut there)?;

    let mut names: Vec<&String> = here.keys().chain(there.keys()).collect();
    names.retain(|name| here.get(*name) != there.get(*name));
    names.sort();
    names.dedup();
    ensure!(names.is_empty(), "these are not the same in both: {names:?}");
    say!("{} files, the same bytes from both folders", here.len());
    fs::remove_dir_all(&folder)?;
    Ok(())
}

/// The tree as git has it and as it was changed since, without what is built.
fn copy(to: &Path) -> Result<()> {
    let words = ["ls-files", "-z", "--cached", "--others", "--exclude-standard"];
    let names = sh::output(&mut sh::command("git", &words))?;
    for name in names.split('\0').filter(|name| !name.is_empty()) {
        let (from, to) = (sh::root().join(name), to.join(name));
        if let (Some(parent), true) = (to.parent(), from.is_file()) {
            fs::create_dir_all(parent)?;
            fs::copy(&from, &to).with_context(|| format!("cannot copy {name}"))?;
        }
    }
    Ok(())
}

fn read(top: &Path, folder: &Path, files: &mut Files) -> Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            read(top, &path, files)?;
        } else {
            let name = path.strip_prefix(top)?.to_string_lossy().into_owned();
            files.insert(name, fs::read(&path)?);
        }
    }
    Ok(())
}

/// That no file of a site names a folder of this machine: the cheap half of the same promise,
/// held at every build.
///
/// # Errors
/// Names the file and the folder.
pub(crate) fn names_no_folder(files: &[File]) -> Result<()> {
    let sysroot = sh::output(&mut sh::command("rustc", &["--print", "sysroot"]))?;
    let folders =
        [sh::root(), build::cargo_home()?, sh::target_folder()?, PathBuf::from(sysroot.trim())];
    for file in files {
        for folder in &folders {
            let folder = folder.to_string_lossy();
            ensure!(!holds(&file.bytes, folder.as_bytes()), "{} names {folder}", file.name);
        }
    }
    Ok(())
}

fn holds(bytes: &[u8], piece: &[u8]) -> bool {
    bytes.windows(piece.len()).any(|window| window == piece)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_of_this_machine_in_a_file_is_found() {
        let file = |bytes: &[u8]| vec![File { name: "a.wasm".to_owned(), bytes: bytes.to_vec() }];
        assert!(names_no_folder(&file(b"\0asm hangtrue/crates/core/src/lib.rs")).is_ok());
        let within = format!("\0asm{}/crates/core/src/lib.rs\0", sh::root().display());
        let told = names_no_folder(&file(within.as_bytes())).unwrap_err().to_string();
        assert!(told.starts_with("a.wasm names "), "{told}");
    }
}
