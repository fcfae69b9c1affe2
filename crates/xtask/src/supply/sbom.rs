//! What a dist is made of, as CycloneDX 1.5 has it: the crates in the module, those
//! that only ran while compiling, and each file with its hash. The same build gives the same
//! bytes: no time, no random number.

use std::collections::BTreeMap;
use std::fs;

use anyhow::{Context as _, Result};
use serde_json::{Value, json};
use sha2::{Digest as _, Sha256};

use super::{Package, shipped};
use crate::sh;
use crate::site::File;

/// The name of the file beside the site's.
pub(crate) const NAME: &str = "bom.json";

/// The bill of materials of `files`.
///
/// # Errors
/// When cargo cannot tell what the page is built from.
pub(crate) fn text(files: &[File]) -> Result<String> {
    let packages = shipped("hangtrue-web", Some(crate::build::TARGET))?;
    let lock = fs::read_to_string(sh::root().join("Cargo.lock"))?;
    Ok(serde_json::to_string_pretty(&bill(&packages, &checksums(&lock)?, files))? + "\n")
}

/// What Cargo.lock holds each crate of a registry to, by name and version.
fn checksums(lock: &str) -> Result<BTreeMap<(String, String), String>> {
    let lock: toml::Table = lock.parse()?;
    let packages = lock.get("package").and_then(toml::Value::as_array);
    let packages = packages.context("Cargo.lock names no packages")?;
    let field = |package: &toml::Value, key| Some(package.get(key)?.as_str()?.to_owned());
    let sums = packages.iter().filter_map(|package| {
        let named = (field(package, "name")?, field(package, "version")?);
        Some((named, field(package, "checksum")?))
    });
    Ok(sums.collect())
}

fn bill(
    packages: &[Package],
    checksums: &BTreeMap<(String, String), String>,
    files: &[File],
) -> Value {
    let reference = |name: &str, version: &str| format!("pkg:cargo/{name}@{version}");
    let mut components = Vec::new();
    let mut dependencies = Vec::new();
    for package in packages {
        let own = reference(&package.name, &package.version);
        let needs: Vec<String> =
            package.needs.iter().map(|(name, version)| reference(name, version)).collect();
        dependencies.push(json!({ "ref": own, "dependsOn": needs }));
        let mut component = json!({
            "type": "library",
            "bom-ref": own,
            "name": package.name,
            "version": package.version,
            "scope": if package.compiles { "excluded" } else { "required" },
            // Before SPDX had `OR`, cargo had `/`.
            "licenses": [{ "expression": package.licence.replace('/', " OR ") }],
            "purl": own,
        });
        let sum = checksums.get(&(package.name.clone(), package.version.clone()));
        if let (Some(sum), Some(component)) = (sum, component.as_object_mut()) {
            component.insert("hashes".to_owned(), hashes(sum));
        }
        components.push(component);
    }
    for file in files {
        let sum: String =
            Sha256::digest(&file.bytes).iter().map(|byte| format!("{byte:02x}")).collect();
        components.push(json!({
            "type": "file",
            "bom-ref": format!("file:{}", file.name),
            "name": file.name,
            "hashes": hashes(&sum),
        }));
    }
    json!({
        "bomFormat": "CycloneDX",
        "specVersion": "1.5",
        "version": 1,
        "metadata": {
            "component": {
                "type": "application",
                "bom-ref": "hangtrue",
                "name": "hangtrue",
                "version": env!("CARGO_PKG_VERSION"),
                "licenses": [{ "license": { "id": "MIT" } }],
            },
        },
        "components": components,
        "dependencies": dependencies,
    })
}

fn hashes(sum: &str) -> Value {
    json!([{ "alg": "SHA-256", "content": sum }])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files() -> Vec<File> {
        vec![File { name: "index.html".to_owned(), bytes: b"<!doctype html>".to_vec() }]
    }

    #[test]
    fn the_bill_names_what_ships_and_what_it_needs() {
        let bill: Value = serde_json::from_str(&text(&files()).unwrap()).unwrap();
        let components = bill["components"].as_array().unwrap();
        let named = |name: &str| components.iter().find(|it| it["name"] == name);
        for ours in ["hangtrue-core", "hangtrue-web"] {
            assert!(named(ours).unwrap()["hashes"].is_null(), "no registry holds {ours}");
        }
        for held in ["maud", "libm", "index.html"] {
            let sum = named(held).unwrap()["hashes"][0]["content"].as_str().unwrap();
            assert_eq!(sum.len(), 64, "{held}");
        }
        assert_eq!(named("maud").unwrap()["scope"], "required");
        assert_eq!(named("maud_macros").unwrap()["scope"], "excluded");
        // What only tests, tools and the command need is in no dist.
        for tool in ["proptest", "serde_json", "xtask", "clap"] {
            assert!(named(tool).is_none(), "{tool}");
        }
        // Every reference leads somewhere, and nothing is named twice.
        let mut own: Vec<&str> =
            components.iter().map(|it| it["bom-ref"].as_str().unwrap()).collect();
        own.sort_unstable();
        assert!(own.windows(2).all(|pair| pair[0] != pair[1]));
        for dependency in bill["dependencies"].as_array().unwrap() {
            let needs = dependency["dependsOn"].as_array().unwrap();
            for reference in needs.iter().chain([&dependency["ref"]]) {
                assert!(own.contains(&reference.as_str().unwrap()), "{reference}");
            }
        }
    }

    #[test]
    fn the_same_build_has_the_same_bill() {
        let bill = text(&files()).unwrap();
        assert_eq!(text(&files()).unwrap(), bill);
        for changing in ["timestamp", "serialNumber", &sh::root().to_string_lossy()] {
            assert!(!bill.contains(changing), "{changing}");
        }
    }
}
