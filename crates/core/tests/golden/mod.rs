//! A golden: a whole file under `tests/goldens`, compared line by line.

#![allow(clippy::unwrap_used, reason = "a test may fail")]

/// Holds `text` to the golden `name`. With `HANGTRUE_BLESS=1` it is written anew; read the diff.
pub(crate) fn golden(name: &str, text: &str) {
    let path = [env!("CARGO_MANIFEST_DIR"), "/../../tests/goldens/", name].concat();
    if std::env::var_os("HANGTRUE_BLESS").is_some() {
        std::fs::write(&path, text).unwrap();
    }
    let golden = std::fs::read_to_string(&path).unwrap_or_default();
    for (at, (is, was)) in text.lines().zip(golden.lines()).enumerate() {
        assert_eq!(is, was, "line {} of {name}; if meant, HANGTRUE_BLESS=1", at + 1);
    }
    assert_eq!(text.lines().count(), golden.lines().count(), "lines of {name}");
}
