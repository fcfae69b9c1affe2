//! The published JSON Schemas against whole files in `tests/goldens/schema`.
//! `HANGTRUE_BLESS=1 cargo test -p hangtrue-link --features schema` writes them anew.

#![allow(clippy::unwrap_used)]

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use hangtrue_golden::golden;
use serde_json::Value;

fn workspace() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn as_reviewed(name: &str, schema: &Value) {
    let made = serde_json::to_string_pretty(schema).unwrap() + "\n";
    golden(&format!("schema/{name}"), &made);
}

#[test]
fn the_schema_of_a_profile_is_as_reviewed() {
    as_reviewed("profile.json", &hangtrue_link::json::profile::schema().to_value());
}

#[test]
fn the_schema_of_an_order_is_as_reviewed() {
    as_reviewed("order.json", &hangtrue_link::json::order::schema().to_value());
}

/// Keys of every object in a document, or of every `properties` in a schema.
fn keys(value: &Value, of_schema: bool, found: &mut BTreeSet<String>) {
    match value {
        Value::Object(entries) => {
            let own = if of_schema { entries.get("properties") } else { Some(value) };
            let own = own.and_then(Value::as_object).into_iter().flatten();
            found.extend(own.map(|(key, _)| key.clone()));
            entries.values().for_each(|value| keys(value, of_schema, found));
        }
        Value::Array(items) => items.iter().for_each(|value| keys(value, of_schema, found)),
        _ => {}
    }
}

/// Nothing in the schema is untried: the demo's profiles use all of it, and are read.
#[test]
fn the_demos_use_every_key_of_the_schema_and_no_other() {
    let (mut used, mut known) = (BTreeSet::new(), BTreeSet::new());
    for file in fs::read_dir(workspace().join("demo/profiles")).unwrap() {
        let text = fs::read_to_string(file.unwrap().path()).unwrap();
        hangtrue_link::json::profile::parse(&text).unwrap();
        keys(&serde_json::from_str(&text).unwrap(), false, &mut used);
    }
    keys(&hangtrue_link::json::profile::schema().to_value(), true, &mut known);
    let known_only: Vec<_> = known.difference(&used).collect();
    let used_only: Vec<_> = used.difference(&known).collect();
    assert!(used_only.is_empty(), "{used_only:?}");
    assert!(known_only.is_empty(), "{known_only:?}");
}
