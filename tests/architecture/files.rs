//! What stands where.

use std::fs;
use std::path::{Path, PathBuf};

pub(super) fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().expect("tests/ is in the tree").to_owned()
}

#[test]
fn the_top_level_holds_exactly_what_was_agreed() {
    let agreed =
        ["Cargo.toml", "README.md", "DEVELOPERS.md", "crates", "web", "tests", "demo", "LICENSE"];
    let built = ["target", "dist", "node_modules"];
    let mut seen = Vec::new();
    for entry in fs::read_dir(root()).expect("the top is there") {
        let name = entry.expect("an entry").file_name().to_string_lossy().into_owned();
        let lock = name.ends_with(".lock");
        if name.starts_with('.') || lock || built.contains(&name.as_str()) {
            continue;
        }
        assert!(agreed.contains(&name.as_str()), "{name} does not belong at the top");
        seen.push(name);
    }
    for name in agreed {
        assert!(seen.iter().any(|it| it == name), "{name} is missing at the top");
    }
}

/// Whatever stands between backticks or in a link's brackets and looks like a path.
fn paths_named(text: &str) -> Vec<String> {
    let ticked = text.split('`').skip(1).step_by(2);
    let linked = text.split("](").skip(1).filter_map(|rest| rest.split(')').next());
    let tops = ["crates/", "web/", "tests/", "demo/", ".cargo/", ".ci/"];
    let is_path = |word: &&str| {
        tops.iter().any(|top| word.starts_with(top)) && !word.contains([' ', '*', '{', '<'])
    };
    ticked.chain(linked).filter(is_path).map(str::to_owned).collect()
}

#[test]
fn every_path_that_the_papers_name_is_there() {
    for paper in ["DEVELOPERS.md", "README.md"] {
        let text = fs::read_to_string(root().join(paper)).expect("the paper is there");
        let named = paths_named(&text);
        assert!(!named.is_empty(), "{paper} names no path: is it read right?");
        for path in named {
            assert!(root().join(&path).exists(), "{paper} names {path}, which is not there");
        }
    }
}

#[test]
fn a_path_in_the_papers_is_found() {
    let text = "see `crates/core` and [orders](demo/orders), not `cargo xtask test`";
    assert_eq!(paths_named(text), ["crates/core", "demo/orders"]);
}

/// Files that are longer than about 400 lines, and why.
const LONG: [(&str, &str); 0] = [];

#[test]
fn no_source_file_is_longer_than_four_hundred_lines_without_a_reason() {
    let mut folders = vec![root().join("crates"), root().join("tests"), root().join("web")];
    let mut long = Vec::new();
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
            if path.is_dir() {
                if !["node_modules", "target", "goldens", "shots", "vectors"]
                    .contains(&name.as_str())
                {
                    folders.push(path);
                }
                continue;
            }
            let source = [".rs", ".js"].iter().any(|end| name.ends_with(end));
            let lines =
                if source { fs::read_to_string(&path).unwrap_or_default() } else { continue };
            let count = lines.lines().count();
            let shown = path.strip_prefix(root()).unwrap_or(&path).display().to_string();
            if count > 420 && !LONG.iter().any(|(known, _)| *known == shown) {
                long.push(format!("{shown}: {count}"));
            }
        }
    }
    assert!(long.is_empty(), "split these, or list them with a reason: {long:#?}");
}
