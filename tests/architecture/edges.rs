//! Dependencies point one way: cli and page → link and draw → core; web → page.

use serde_json::Value;
use std::process::Command;

/// What each crate that ships may depend on, of our own.
const MAY: [(&str, &[&str]); 6] = [
    ("hangtrue-core", &[]),
    ("hangtrue-link", &["hangtrue-core"]),
    ("hangtrue-draw", &["hangtrue-core"]),
    ("hangtrue-page", &["hangtrue-core", "hangtrue-link", "hangtrue-draw"]),
    ("hangtrue-web", &["hangtrue-page"]),
    ("hangtrue-cli", &["hangtrue-core", "hangtrue-link", "hangtrue-draw"]),
];

/// What only ever runs on a developer's machine: it may depend on anything, and
/// nothing that ships may depend on it.
const TOOLS: [&str; 8] = [
    "xtask",
    "hangtrue-tests",
    "hangtrue-golden",
    "hangtrue-browser",
    "hangtrue-sim",
    "hangtrue-hostile",
    "hangtrue-patch-probe",
    "hangtrue-bench",
];

fn packages() -> Vec<Value> {
    let output = Command::new(env!("CARGO"))
        .args(["metadata", "--format-version=1", "--no-deps", "--offline"])
        .output()
        .expect("cargo metadata runs");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let metadata: Value = serde_json::from_slice(&output.stdout).expect("metadata is JSON");
    metadata["packages"].as_array().expect("packages").clone()
}

/// The edges of `package` to our own crates; those only its tests need left out.
fn edges(package: &Value) -> Vec<String> {
    let dependencies = package["dependencies"].as_array().expect("dependencies");
    let ships = dependencies.iter().filter(|dependency| dependency["kind"] != "dev");
    ships
        .filter(|dependency| dependency["path"].is_string())
        .map(|dependency| dependency["name"].as_str().expect("a name").to_owned())
        .collect()
}

#[test]
fn no_edge_but_the_ones_of_the_map() {
    let packages = packages();
    for package in &packages {
        let name = package["name"].as_str().expect("a name");
        let edges = edges(package);
        if TOOLS.contains(&name) {
            continue;
        }
        let (_, may) = MAY.into_iter().find(|(known, _)| *known == name).unwrap_or_else(|| {
            panic!("{name} is not in the map: add it here and to DEVELOPERS.md")
        });
        for edge in edges {
            assert!(may.contains(&edge.as_str()), "{name} may not depend on {edge}");
        }
    }
    for (name, _) in MAY {
        assert!(packages.iter().any(|package| package["name"] == name), "{name} is gone");
    }
}

#[test]
fn the_core_and_the_drawings_know_no_browser_and_no_serialiser() {
    let forbidden = ["serde", "serde_json", "wasm-bindgen", "js-sys", "web-sys", "gloo", "rand"];
    for package in packages() {
        let name = package["name"].as_str().expect("a name");
        if !["hangtrue-core", "hangtrue-draw"].contains(&name) {
            continue;
        }
        for dependency in package["dependencies"].as_array().expect("dependencies") {
            let needs = dependency["name"].as_str().expect("a name");
            let ships = dependency["kind"] != "dev" && dependency["optional"] != true;
            assert!(!(ships && forbidden.contains(&needs)), "{name} needs {needs}");
        }
    }
}
