//! Good inputs of each way in, to be damaged: the demonstration's, the golden links, and
//! every case that was ever kept.

use hangtrue_core::check::Report;
use hangtrue_link::alphabet;
use hangtrue_link::json::{self, Id, order::OrderFile};
use hangtrue_link::record::{Opened, decode};
use std::fs;
use std::path::{Path, PathBuf};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().nth(2).expect("the tree").to_owned()
}

fn read(path: &str) -> String {
    fs::read_to_string(root().join(path)).unwrap_or_else(|error| panic!("{path}: {error}"))
}

/// The payloads of a file of golden ones, by name.
///
/// # Panics
/// When the file is not there.
#[must_use]
pub fn golden(file: &str) -> Vec<(String, String)> {
    let text = read(&format!("tests/vectors/{file}"));
    let rows = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    rows.map(|row| row.split_once(',').expect("name,payload"))
        .map(|(name, payload)| (name.to_owned(), payload.to_owned()))
        .collect()
}

/// The files of `cases/TARGET`, by name: what a fuzzer once found, and what it began with.
///
/// # Panics
/// When a file cannot be read.
#[must_use]
pub fn cases(target: &str) -> Vec<(String, Vec<u8>)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("cases").join(target);
    let mut cases = Vec::new();
    for entry in fs::read_dir(folder).into_iter().flatten() {
        let path = entry.expect("a case").path();
        cases.push((path.display().to_string(), fs::read(path).expect("it is read")));
    }
    cases.sort();
    cases
}

/// Good inputs of `target`, and its cases.
///
/// # Panics
/// When a file of the demonstration is not there.
#[must_use]
pub fn seeds(target: &str) -> Vec<Vec<u8>> {
    let lines = |path: &str| -> Vec<Vec<u8>> {
        read(path).lines().map(|line| line.as_bytes().to_vec()).collect()
    };
    let mut seeds: Vec<Vec<u8>> = match target {
        "survey" => [lines("demo/orders/surveys.jsonl"), files("link-v1.csv")].concat(),
        "csv" => vec![read("demo/orders/orders.csv").into_bytes()],
        "link" => payloads("link-v1.csv"),
        "record" => [payloads("record-v1.csv"), files("record-v1.csv")].concat(),
        "profile" => ["boreal", "prairie"]
            .map(|name| read(&format!("demo/profiles/{name}.json")).into_bytes())
            .to_vec(),
        _ => Vec::new(),
    };
    if matches!(target, "survey" | "json") {
        seeds.push(read("demo/orders/demo-2.json").into_bytes());
    }
    seeds.extend(cases(target).into_iter().map(|(_, case)| case));
    seeds
}

/// The golden payloads, and their contents as they are forged.
fn payloads(file: &str) -> Vec<Vec<u8>> {
    let mut seeds = Vec::new();
    for (_, payload) in golden(file) {
        let symbols: Vec<u8> = payload.chars().filter_map(alphabet::symbol).collect();
        seeds.push(symbols[2..symbols.len() - 6].to_vec());
        seeds.push(payload.into_bytes());
    }
    seeds
}

/// The golden orders or records as files.
fn files(file: &str) -> Vec<Vec<u8>> {
    let opened = golden(file).into_iter().filter_map(|(_, payload)| decode(&payload).ok());
    opened
        .map(|opened| match opened {
            Opened::Order(order) => OrderFile::new(Id::None, &order, &Report::default()).text(),
            Opened::Record(record) => json::record::text(&record),
        })
        .map(String::into_bytes)
        .collect()
}
