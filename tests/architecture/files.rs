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

/// What a document names: paths from the top of the tree between backticks, and the targets of its
/// links, from the document's own folder.
fn paths_named(text: &str) -> (Vec<&str>, Vec<&str>) {
    let tops = ["crates/", "web/", "tests/", "demo/", ".cargo/", ".ci/"];
    let is_path = |word: &&str| {
        tops.iter().any(|top| word.starts_with(top)) && !word.contains([' ', '*', '{', '<'])
    };
    let ticked = text.split('`').skip(1).step_by(2).filter(is_path).collect();
    let linked = text.split("](").skip(1).filter_map(|rest| rest.split(')').next());
    (ticked, linked.filter(|target| !target.contains(':')).collect())
}

/// What a link to a heading ends in, as hosts of Markdown make it.
fn anchors(text: &str) -> Vec<String> {
    let headings = text.lines().filter(|line| line.starts_with('#'));
    let plain = |heading: &str| heading.trim_start_matches('#').trim().to_lowercase();
    let kept = |c: &char| c.is_alphanumeric() || [' ', '-', '_'].contains(c);
    headings
        .map(|line| plain(line).chars().filter(kept).collect::<String>().replace(' ', "-"))
        .collect()
}

/// Every file below `folders` whose name ends so, but for those in folders that are `left` out.
fn files(mut folders: Vec<PathBuf>, ends: &[&str], left: impl Fn(&str) -> bool) -> Vec<PathBuf> {
    let mut found = Vec::new();
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
            if path.is_dir() {
                if !left(&name) {
                    folders.push(path);
                }
            } else if ends.iter().any(|end| name.ends_with(end)) {
                found.push(path);
            }
        }
    }
    found
}

/// Every Markdown file of the tree.
fn documents() -> Vec<PathBuf> {
    let left =
        |name: &str| ["node_modules", "target", "dist"].contains(&name) || name.starts_with('.');
    files(vec![root()], &[".md"], left)
}

#[test]
fn every_path_and_heading_that_a_document_names_is_there() {
    let documents = documents();
    for top in ["README.md", "DEVELOPERS.md"] {
        assert!(documents.contains(&root().join(top)), "{top} is not looked at");
    }
    for document in documents {
        let shown = document.display();
        let text = fs::read_to_string(&document).expect("the document is there");
        let (ticked, linked) = paths_named(&text);
        for path in ticked {
            assert!(root().join(path).exists(), "{shown} names {path}, which is not there");
        }
        for target in linked {
            let (path, heading) = target.split_once('#').unwrap_or((target, ""));
            let folder = document.parent().expect("a file is in a folder");
            let file = if path.is_empty() { document.clone() } else { folder.join(path) };
            assert!(file.exists(), "{shown} links to {path}, which is not there");
            if !heading.is_empty() {
                let there = anchors(&fs::read_to_string(&file).expect("a document"));
                let known = there.iter().any(|anchor| anchor == heading);
                assert!(known, "{shown} links to #{heading} of {path}, which has only {there:?}");
            }
        }
    }
}

#[test]
fn a_path_in_a_document_is_found() {
    let text = "see `crates/core` and [orders](demo/orders), not `cargo xtask test`";
    assert_eq!(paths_named(text), (vec!["crates/core"], vec!["demo/orders"]));
    assert_eq!(anchors("# Page, desk\ntext\n## How fast"), ["page-desk", "how-fast"]);
}

/// The most lines of a source file.
const MOST: usize = 400;
/// Files that are longer, and why.
const LONG: [(&str, &str); 0] = [];

#[test]
fn no_source_file_is_longer_than_four_hundred_lines_without_a_reason() {
    let folders = ["crates", "tests", "web"].map(|folder| root().join(folder)).into();
    let left =
        |name: &str| ["node_modules", "target", "goldens", "shots", "vectors"].contains(&name);
    let mut long = Vec::new();
    for path in files(folders, &[".rs", ".js"], left) {
        let count = fs::read_to_string(&path).unwrap_or_default().lines().count();
        let shown = path.strip_prefix(root()).unwrap_or(&path).display().to_string();
        if count > MOST && !LONG.iter().any(|(known, _)| *known == shown) {
            long.push(format!("{shown}: {count}"));
        }
    }
    assert!(long.is_empty(), "split these, or list them with a reason: {long:#?}");
}
