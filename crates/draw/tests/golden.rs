//! Every picture against a whole file in `tests/goldens/draw`, one element a line.
//! `HANGTRUE_BLESS=1 cargo test -p hangtrue-draw` writes them anew; look at the difference.

#![allow(clippy::unwrap_used)]

mod support;

use hangtrue_core::say::Language;
use hangtrue_golden::golden_folder;
use support::look::{self, look};

/// One element a line, indented by depth; a text stays on the line of its element.
/// The stylesheet is named, so a golden opened in a browser looks as on the page.
fn pretty(svg: &str) -> String {
    let mut out = String::from("<?xml-stylesheet href=\"../../../web/style/drawing.css\"?>\n");
    let mut depth = 0_usize;
    let mut rest = svg;
    while let Some(end) = rest.find('>') {
        let (tag, after) = rest.split_at(end + 1);
        let start = tag.find('<').unwrap();
        let (text, tag) = tag.split_at(start);
        let closes = tag.starts_with("</");
        if closes {
            depth -= 1;
        }
        out.push_str(text);
        if text.is_empty() && !(closes && out.ends_with('>')) {
            out.push_str(if out.ends_with('\n') { "" } else { "\n" });
            out.push_str(&"  ".repeat(depth));
        } else if text.is_empty() {
            out.push('\n');
            out.push_str(&"  ".repeat(depth));
        }
        out.push_str(tag);
        if !closes && !tag.ends_with("/>") {
            depth += 1;
        }
        rest = after;
    }
    assert_eq!((depth, rest), (0, ""));
    out.push('\n');
    out
}

#[test]
fn pictures_are_as_reviewed() {
    let pictures = support::goldens().into_iter();
    golden_folder("draw", pictures.map(|(name, svg)| (format!("{name}.svg"), pretty(&svg))));
}

#[test]
fn pictures_stay_inside_and_no_words_lie_on_each_other() {
    for language in Language::ALL {
        for (name, svg) in support::pictures(language) {
            let look = look(&svg, name);
            assert!(look.outside().is_empty(), "{language:?} {name}: {:#?}", look.outside());
            assert!(look.overlaps().is_empty(), "{language:?} {name}: {:?}", look.overlaps());
        }
    }
}

/// A reading is never given up because a language has longer words for it.
#[test]
fn every_language_letters_the_same_numbers() {
    let figures = |svg: &str, name: &str| -> Vec<String> {
        let seen = look(svg, name).seen;
        let bare = |text: &str| text.chars().filter(|c| c.is_ascii_digit() || *c == '/').collect();
        let places = ["1st", "1.er", "1er", "2nd", "2.º", "2e", "3rd", "3.º", "3e"];
        let numbers = seen.iter().filter(|one| places.iter().all(|it| !one.text.starts_with(it)));
        numbers.map(|one| bare(&one.text)).filter(|text: &String| !text.is_empty()).collect()
    };
    let english = support::pictures(Language::English);
    for language in [Language::Spanish, Language::French] {
        for ((name, one), (_, other)) in english.iter().zip(support::pictures(language)) {
            let said = look(&other, name);
            assert_eq!(figures(one, name), figures(&other, name), "{language:?} {name}");
            let english = |one: &look::Seen| one.text.ends_with(" in") || one.text.ends_with(" ft");
            assert!(!look(&other, name).seen.iter().any(english), "{language:?} {name}");
            assert_ne!(look(one, name).title, said.title);
            assert_ne!(look(one, name).description, said.description);
            let digits = |text: &str| text.chars().filter(char::is_ascii_digit).collect::<String>();
            assert_eq!(digits(&look(one, name).description), digits(&said.description), "{name}");
        }
    }
}
