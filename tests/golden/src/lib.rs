//! Goldens: whole files under `tests/goldens`, written by a run and read by a person in a diff.
//!
//! `HANGTRUE_BLESS=1 cargo test` writes them anew; look at the difference before it is committed.

// A panic here is a failed test.
#![allow(clippy::panic, clippy::unwrap_used)]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

fn goldens() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../goldens")
}

fn is_blessed() -> bool {
    std::env::var_os("HANGTRUE_BLESS").is_some()
}

/// Holds `text` to the golden `name`, a path below `tests/goldens`.
///
/// # Panics
/// At the first line that differs.
pub fn golden(name: &str, text: &str) {
    let path = goldens().join(name);
    if is_blessed() {
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(&path, text).unwrap();
    }
    let golden = fs::read_to_string(&path).unwrap_or_default();
    for (at, (is, was)) in text.lines().zip(golden.lines()).enumerate() {
        assert_eq!(is, was, "line {} of {name}; if meant, HANGTRUE_BLESS=1", at + 1);
    }
    let lines = [text, &golden].map(|text| text.lines().count());
    assert_eq!(lines[0], lines[1], "lines of {name}; if meant, HANGTRUE_BLESS=1");
    assert_eq!(text, golden, "{name} differs in how its lines end; if meant, HANGTRUE_BLESS=1");
}

/// Holds a whole folder below `tests/goldens` to the files of `all`, by name: none differs, none is
/// left over.
///
/// # Panics
/// With the names of all that do, or where two have one name.
pub fn golden_folder(folder: &str, all: impl IntoIterator<Item = (String, String)>) {
    let path = goldens().join(folder);
    let (mut names, mut differing) = (BTreeSet::new(), Vec::new());
    for (name, text) in all {
        if is_blessed() {
            fs::write(path.join(&name), &text).unwrap();
        } else if fs::read_to_string(path.join(&name)).ok().as_deref() != Some(text.as_str()) {
            differing.push(name.clone());
        }
        assert!(names.insert(name.clone()), "two goldens are called {name}");
    }
    for entry in fs::read_dir(&path).unwrap() {
        let entry = entry.unwrap();
        let name = entry.file_name().into_string().unwrap();
        if names.contains(&name) {
            continue;
        }
        if is_blessed() {
            fs::remove_file(entry.path()).unwrap();
        } else {
            differing.push(format!("{name} (no longer made)"));
        }
    }
    assert!(
        differing.is_empty(),
        "differs from tests/goldens/{folder}: {differing:?}; if meant, HANGTRUE_BLESS=1"
    );
}
