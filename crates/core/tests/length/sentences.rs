//! What is said of a text that is no reading.

use hangtrue_core::length::{ReadErrorKind, Unit, read};
use hangtrue_core::say::{Language, Speaker};
use std::collections::BTreeSet;

/// One text for every kind of refusal.
const TEXTS: [&str; ReadErrorKind::ALL.len()] = [
    "",
    "9999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999\
     9999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999999\
     9999999999999999999999",
    "96\t1/4",
    "\u{202e}96",
    "9\u{200b}6",
    "961/4",
    "96 14",
    "8 0 1/4",
    "96.",
    "96 5/4",
    "96 1/3",
    "96 1/0",
    "8' 13\"",
    "8.6'",
    "8 1/2 ft",
    "96.5 1/4",
    "1,234",
    "96..5",
    "96.3333333",
    "-4",
    "1e3",
    "96 in 2 mm",
    "8' 6'",
    "96 x 84",
    "eight six",
    "about 96",
    "96+",
    "9999999999999999",
    "abc",
];

#[test]
fn every_kind_is_reached_and_said() {
    for language in Language::ALL {
        every_kind_is_said(Speaker { language, unit: Unit::Inch });
    }
}

#[allow(clippy::unwrap_used)]
fn every_kind_is_said(speaker: Speaker) {
    let mut codes = BTreeSet::new();
    let mut sentences = BTreeSet::new();
    for (text, kind) in TEXTS.into_iter().zip(ReadErrorKind::ALL) {
        let error = read(text, Unit::Inch).unwrap_err();
        assert_eq!(error.kind, kind, "{text:?}");
        let said = speaker.say_read_error(&error, text);
        assert!(said.ends_with('.') && said.matches(". ").count() == 0, "{said}");
        for word in ["please", "Please", "valid", "oops", "sorry"] {
            assert!(!said.contains(word), "{said}");
        }
        assert!(said.chars().all(|c| !c.is_control() && c != '\u{202e}' && c != '\u{200b}'));
        assert!(said.len() < 240, "{said}");
        codes.insert(kind.code());
        sentences.insert(said);
    }
    assert_eq!(codes.len(), ReadErrorKind::ALL.len());
    assert_eq!(sentences.len(), ReadErrorKind::ALL.len());
}

#[test]
fn the_person_s_own_text_stands_in_it() {
    let said = |text: &str, unit| {
        let speaker = Speaker { language: Language::English, unit };
        speaker.say_read_error(&read(text, unit).unwrap_err(), text)
    };
    assert_eq!(
        said(" 961/4 ", Unit::Inch),
        "“961/4” has no space between the inches and the fraction: put one in."
    );
    assert_eq!(said("", Unit::Inch), "Enter the reading, such as 96 3/16.");
    assert_eq!(said("", Unit::Millimetre), "Enter the reading, such as 2443.");
}
