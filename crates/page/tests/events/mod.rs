//! What may happen to the walk, for property tests.

use hangtrue_page::Event;
use proptest::prelude::*;

/// Buttons of the first screens and of the later ones.
const CODES: [&str; 36] = [
    "next",
    "back",
    "go:check",
    "go:send",
    "go:width",
    "go:drafts",
    "change:header.left",
    "eighths:3",
    "nudge:1587500",
    "letters",
    "use:width.low:92",
    "confirm:unusual-opening:width.low",
    "reread:width.low",
    "take:loop.sill_to_bow",
    "skip",
    "copy",
    "copy-link",
    "share",
    "print",
    "adopt",
    "replace",
    "keep",
    "save-file",
    "restart",
    "speak:es",
    "speak:en",
    "take-over",
    "noted",
    "take-theirs",
    "open-draft:1",
    "delete:1",
    "delete-indeed",
    "spare",
    "answer:door",
    "use:loop.sill_to_bow:109 3/4",
    "change:post.left",
];

/// Fields of readings.
const READINGS: [&str; 7] = [
    "width.low",
    "width.middle",
    "height.left",
    "header.center",
    "bow.first",
    "post.left",
    "loop.sill_to_bow",
];

/// The other fields.
const OTHERS: [&str; 5] = ["unit", "prepared", "old-door", "vehicle", "answer:door"];

/// What a person, or the browser, may do at any time.
pub(crate) fn event() -> impl Strategy<Value = Event> {
    let code = prop::sample::select(CODES.as_slice());
    let name = prop::sample::select([READINGS.as_slice(), &OTHERS].concat());
    let value =
        prop::sample::select(vec!["92 3/16", "9", "1 1/4", "", "mm", "yes", "twelve", "5'"]);
    prop_oneof![
        code.prop_map(|code| Event::Press(code.into())),
        (name, value)
            .prop_map(|(name, value)| Event::Input { name: name.into(), value: value.into() }),
        prop::sample::select(vec!["/width", "/check", "", "nothing", "desk"])
            .prop_map(|fragment| Event::Navigate(fragment.into())),
        Just(Event::Settled),
        Just(Event::Slide { name: "width.low".into(), marks: 3 }),
        Just(Event::Open("https://dealer.example/#10".into())),
        Just(Event::File { name: "a.txt".into(), text: Some("no order".into()) }),
        Just(Event::Drafts(vec![(1, "broken".into())])),
        Just(Event::Copied(false)),
        Just(Event::Missing),
    ]
}

#[test]
fn every_button_and_every_field_of_a_reading_is_one() {
    for code in CODES {
        assert!(hangtrue_page::Action::from_code(code).is_some(), "{code}");
    }
    for name in READINGS {
        assert!(hangtrue_page::field::Field::from_name(name).is_some(), "{name}");
    }
}
