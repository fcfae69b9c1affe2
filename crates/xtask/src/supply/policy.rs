//! `.deny.toml`, as far as it is held without cargo-deny: on every run of the tests.

#![cfg(test)]

use std::fs;

use serde_json::Value;
use spdx::{Expression, LicenseReq, ParseMode};

use super::{Package, shipped};
use crate::sh;

fn policy() -> toml::Table {
    let text = fs::read_to_string(sh::root().join(".deny.toml")).unwrap();
    text.parse().unwrap()
}

fn names(list: &toml::Value) -> Vec<String> {
    list.as_array().unwrap().iter().map(|name| name.as_str().unwrap().to_owned()).collect()
}

/// Whether a crate of this name and licence may be here, by the lists of `.deny.toml`.
fn is_allowed(policy: &toml::Table, name: &str, licence: &str) -> bool {
    let licences = &policy["licenses"];
    let mut allowed = names(&licences["allow"]);
    for exception in licences["exceptions"].as_array().unwrap() {
        if exception["crate"].as_str() == Some(name) {
            allowed.extend(names(&exception["allow"]));
        }
    }
    let Ok(expression) = Expression::parse_mode(licence, ParseMode::LAX) else { return false };
    // With an exception added, a licence only gives more: the licence itself is what counts.
    let is_listed = |need: &LicenseReq| {
        need.license.id().is_some_and(|id| allowed.iter().any(|known| known == id.name))
    };
    expression.evaluate(is_listed)
}

fn metadata() -> Vec<Value> {
    let words = ["metadata", "--quiet", "--format-version=1", "--locked"];
    let metadata = sh::output(&mut sh::cargo(&words)).unwrap();
    let metadata: Value = serde_json::from_str(&metadata).unwrap();
    metadata["packages"].as_array().unwrap().clone()
}

/// What ships: the page in all its forms, and the command.
fn all_that_ships() -> Vec<Package> {
    let page = shipped("hangtrue-web", Some(crate::build::TARGET)).unwrap();
    [page, shipped("hangtrue-cli", None).unwrap()].concat()
}

#[test]
fn every_licence_is_on_the_list() {
    let policy = policy();
    let packages = metadata();
    assert!(packages.len() > 100, "the whole graph");
    for package in packages {
        let name = package["name"].as_str().unwrap();
        let licence = package["license"].as_str().unwrap_or_default();
        assert!(is_allowed(&policy, name, licence), "{name}: `{licence}`");
    }
    for package in all_that_ships() {
        // No exception holds for what ships.
        assert!(is_allowed(&policy, "", &package.licence), "{package:?}");
    }
}

#[test]
fn a_licence_that_is_not_on_the_list_is_seen() {
    let policy = policy();
    for (name, licence, may) in [
        ("a", "MIT", true),
        ("a", "MIT/Apache-2.0", true),
        ("a", "GPL-3.0-only", false),
        ("a", "MIT AND GPL-3.0-only", false),
        ("a", "MIT OR GPL-3.0-only", true),
        ("a", "MPL-2.0", false),
        ("webdriver", "MPL-2.0", true),
        ("a", "", false),
        ("a", "as you like", false),
    ] {
        assert_eq!(is_allowed(&policy, name, licence), may, "{name}: {licence}");
    }
}

#[test]
fn everything_comes_from_one_registry_or_is_ours() {
    let packages = metadata();
    let mut sources: Vec<&str> =
        packages.iter().filter_map(|package| package["source"].as_str()).collect();
    sources.sort_unstable();
    sources.dedup();
    assert!(sources.len() == 1 && sources[0].starts_with("registry+"), "{sources:?}");
    for package in packages.iter().filter(|package| package["source"].is_null()) {
        let manifest = package["manifest_path"].as_str().unwrap();
        assert!(std::path::Path::new(manifest).starts_with(sh::root()), "{manifest}");
    }
}

#[test]
fn of_what_ships_nothing_stands_twice() {
    let policy = policy();
    let skipped: Vec<&str> = policy["bans"]["skip"]
        .as_array()
        .unwrap()
        .iter()
        .map(|it| it["crate"].as_str().unwrap())
        .collect();
    let mut packages = all_that_ships();
    packages.sort();
    packages.dedup_by(|a, b| (&a.name, &a.version) == (&b.name, &b.version));
    for pair in packages.windows(2) {
        let [one, other] = pair else { continue };
        let known = |it: &Package| {
            let major = it.version.split('.').next().unwrap();
            skipped.contains(&format!("{}@{major}", it.name).as_str())
        };
        assert!(
            one.name != other.name || known(one) || known(other),
            "{} {} and {}",
            one.name,
            one.version,
            other.version
        );
    }
}
