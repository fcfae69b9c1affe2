//! What no crate may do, and that every crate says so.

use super::files::root;
use std::fs;
use std::path::PathBuf;

fn manifests() -> Vec<PathBuf> {
    let mut folders = vec![root().join("crates"), root().join("tests")];
    let mut manifests = Vec::new();
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            let built = path.ends_with("node_modules") || path.ends_with("target");
            if path.is_dir() && !built {
                folders.push(path);
            } else if path.ends_with("Cargo.toml") {
                manifests.push(path);
            }
        }
    }
    manifests
}

/// `forbid` holds against any `allow`. What wasm-bindgen's macros write at the browser's
/// boundary is of another crate, and all of the `unsafe` there is.
#[test]
fn unsafe_is_forbidden_in_every_crate() {
    let workspace = fs::read_to_string(root().join("Cargo.toml")).expect("the workspace");
    assert!(workspace.contains("\nunsafe_code = \"forbid\"\n"));
    let manifests = manifests();
    assert!(manifests.len() >= 12, "{manifests:?}");
    for manifest in manifests {
        let text = fs::read_to_string(&manifest).expect("a manifest");
        // A workspace of its own says it itself.
        let says = if text.contains("[workspace]") {
            "[lints.rust]\nunsafe_code = \"forbid\""
        } else {
            "[lints]\nworkspace = true"
        };
        assert!(text.contains(says), "{} does not say `{says}`", manifest.display());
    }
}
