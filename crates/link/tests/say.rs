//! The catalogues of this crate: the same said in every language, and nothing left over.

#![allow(clippy::unwrap_used, missing_docs)]

#[path = "../../core/tests/say/properties.rs"]
mod properties;

use hangtrue_core::order::{Date, Order};
use hangtrue_core::profile::{NumberError, Poor, Profile};
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Length, Spot, Survey, Unit, check_order};
use hangtrue_link::code::{Said, script, spell};
use hangtrue_link::csv;
use hangtrue_link::json::profile::ProfileFault;
use hangtrue_link::json::text::Syntax;
use hangtrue_link::json::{Fault, FileError, NodeKind};
use hangtrue_link::{EncodeError, LinkError, say, share};
use properties::{alike, well_set};

const OTHERS: [Language; 2] = [Language::Spanish, Language::French];

/// What `say` says in English and in the others.
fn in_all(say: impl Fn(Language) -> String) {
    let source = say(Language::English);
    for language in OTHERS {
        let said = say(language);
        alike(&source, &said, language);
        well_set(&said, language);
    }
}

/// Every way a link can be wrong; a new one has to be added here.
fn link_errors() -> Vec<LinkError> {
    const _: fn(LinkError) = |error| match error {
        LinkError::NotFound
        | LinkError::TooLong { .. }
        | LinkError::Letter { .. }
        | LinkError::TooShort
        | LinkError::Cut { .. }
        | LinkError::Grown { .. }
        | LinkError::Changed
        | LinkError::Newer { .. }
        | LinkError::Record
        | LinkError::Contents => (),
    };
    let mut all = vec![
        LinkError::NotFound,
        LinkError::TooLong { most: 4000 },
        LinkError::Letter { letter: 'ü', at: 17 },
        LinkError::TooShort,
        LinkError::Changed,
        LinkError::Newer { version: '9' },
        LinkError::Record,
        LinkError::Contents,
    ];
    for missing in [1, 2] {
        all.push(LinkError::Cut { found: 30, missing });
        all.push(LinkError::Grown { found: 30, extra: missing });
    }
    all
}

#[test]
fn a_link_that_is_wrong() {
    for error in link_errors() {
        in_all(|language| say::link(language, error).what);
        in_all(|language| say::link(language, error).ask.to_owned());
    }
    for error in [EncodeError::TooLong { most: 2000 }, EncodeError::Date] {
        in_all(|language| say::encode(language, error).what);
        in_all(|language| say::encode(language, error).ask.to_owned());
    }
}

#[test]
fn a_table_that_is_wrong() {
    let mut all = vec![
        csv::Fault::Empty,
        csv::Fault::Inside { column: 4 },
        csv::Fault::Behind { column: 4 },
        csv::Fault::Open { column: 4 },
        csv::Fault::Count { found: 3, expected: 11 },
        csv::Fault::Word { column: "unit".into(), found: "ft".into(), known: &["in", "mm"] },
        csv::Fault::NoReading,
    ];
    all.extend(link_errors().into_iter().map(csv::Fault::Link));
    for fault in all {
        in_all(|language| say::table(language, &fault));
    }
}

/// Every way a file can be wrong; a new one has to be added here.
fn file_faults() -> Vec<Fault> {
    const _: fn(&Fault, Syntax, NodeKind) = |fault, syntax, kind| {
        match fault {
            Fault::NotJson { .. }
            | Fault::TooLong { .. }
            | Fault::Kind { .. }
            | Fault::NumberForText { .. }
            | Fault::Reading { .. }
            | Fault::Missing { .. }
            | Fault::Twice { .. }
            | Fault::Unknown { .. }
            | Fault::Choice { .. }
            | Fault::NotWhole { .. }
            | Fault::Date { .. }
            | Fault::Profile(_) => (),
        }
        match syntax {
            Syntax::Long { .. }
            | Syntax::Deep { .. }
            | Syntax::Value
            | Syntax::Key
            | Syntax::Colon
            | Syntax::Comma { .. }
            | Syntax::After
            | Syntax::Open
            | Syntax::Control
            | Syntax::Escape
            | Syntax::Surrogate
            | Syntax::Number => (),
        }
        match kind {
            NodeKind::Null
            | NodeKind::Bool
            | NodeKind::Number
            | NodeKind::Text
            | NodeKind::List
            | NodeKind::Object => (),
        }
    };
    let found = || "x7".to_owned();
    let mut all = vec![
        Fault::TooLong { most: 65_536 },
        Fault::NumberForText { number: "92.25".into() },
        Fault::Missing { key: "k" },
        Fault::Twice { key: found() },
        Fault::Unknown { key: found(), known: vec!["in", "mm"] },
        Fault::Choice { found: found(), known: vec!["in", "mm"] },
        Fault::NotWhole { number: "1.5".into() },
        Fault::Date { found: found() },
    ];
    for what in [
        Syntax::Long { most: 65_536 },
        Syntax::Deep { most: 32 },
        Syntax::Value,
        Syntax::Key,
        Syntax::Colon,
        Syntax::Comma { end: ']' },
        Syntax::After,
        Syntax::Open,
        Syntax::Control,
        Syntax::Escape,
        Syntax::Surrogate,
        Syntax::Number,
    ] {
        all.push(Fault::NotJson { line: 3, column: 17, what });
    }
    let kinds = [
        NodeKind::Null,
        NodeKind::Bool,
        NodeKind::Number,
        NodeKind::Text,
        NodeKind::List,
        NodeKind::Object,
    ];
    for kind in kinds {
        all.push(Fault::Kind { expected: kind, found: kind });
        all.push(Fault::Reading { found: kind });
    }
    all
}

/// Every way a profile can be wrong; a new one has to be added here.
fn profile_faults() -> Vec<ProfileFault> {
    const _: fn(&ProfileFault) = |fault| match fault {
        ProfileFault::TooMany { .. }
        | ProfileFault::Empty
        | ProfileFault::TextTooLong { .. }
        | ProfileFault::Letter { .. }
        | ProfileFault::Range { .. }
        | ProfileFault::Length { .. }
        | ProfileFault::Weight { .. }
        | ProfileFault::UpsideDown { .. }
        | ProfileFault::NoEnd
        | ProfileFault::NoInterval
        | ProfileFault::Key { .. }
        | ProfileFault::SameKey { .. }
        | ProfileFault::Taken { .. }
        | ProfileFault::OtherKind { .. }
        | ProfileFault::FewChoices
        | ProfileFault::Email { .. }
        | ProfileFault::Phone { .. }
        | ProfileFault::Page { .. }
        | ProfileFault::Colour { .. }
        | ProfileFault::Contrast(_)
        | ProfileFault::NumberFormat(_) => (),
    };
    let found = || "x7".to_owned();
    let (least, most) = (Length::from_sixteenths(37), Length::from_inches(1));
    let poor = Poor { text: "#123456", ground: "#654321", contrast: 3.217 };
    let numbers = [
        NumberError::Brace,
        NumberError::Unknown(found()),
        NumberError::NoCheck,
        NumberError::Text,
    ];
    let mut all = vec![
        ProfileFault::TooMany { most: 12 },
        ProfileFault::Empty,
        ProfileFault::TextTooLong { most: 200 },
        ProfileFault::Letter { letter: '\u{200b}' },
        ProfileFault::Range { found: found(), least: 1, most: 9 },
        ProfileFault::Length { found: found() },
        ProfileFault::Weight { found: found() },
        ProfileFault::UpsideDown { least, most },
        ProfileFault::NoEnd,
        ProfileFault::NoInterval,
        ProfileFault::Key { found: found() },
        ProfileFault::SameKey { list: "x", key: found() },
        ProfileFault::Taken { key: found() },
        ProfileFault::OtherKind { key: "x" },
        ProfileFault::FewChoices,
        ProfileFault::Email { found: found() },
        ProfileFault::Phone { found: found() },
        ProfileFault::Page { found: found() },
        ProfileFault::Colour { found: found() },
        ProfileFault::Contrast(poor),
    ];
    all.extend(numbers.map(ProfileFault::NumberFormat));
    all
}

#[test]
fn a_file_that_is_wrong() {
    let faults = file_faults().into_iter().chain(profile_faults().into_iter().map(Fault::Profile));
    for fault in faults {
        for place in ["", "a.b[2]"] {
            let error = FileError { place: place.to_owned(), fault: fault.clone() };
            in_all(|language| say::file(language, &error));
            in_all(|language| say::profile(language, &error));
            in_all(|language| say::whole_file(language, &error));
        }
    }
}

fn order(unit: Unit) -> Order {
    let mut survey = Survey::new(unit);
    survey.prepared = false;
    for (spot, text) in [
        (Spot::WidthLow, "92 1/4 in"),
        (Spot::HeightLeft, "101 1/2 in"),
        (Spot::HeaderLeft, "9 1/2 in"),
        (Spot::HeaderCenter, "5 in"),
        (Spot::PostLeft, "1 1/2 in"),
    ] {
        survey.add(spot, text);
    }
    let mut order =
        Order { survey, date: Some(Date { year: 2026, month: 3, day: 9 }), ..Order::default() };
    order.vehicle = "Unit 12".to_owned();
    order.note = "7".to_owned();
    order.contact = "+1 555 010 0199".to_owned();
    order
}

#[test]
fn an_order_as_text() {
    for unit in [Unit::Inch, Unit::Millimetre] {
        let order = order(unit);
        let report = check_order(&order, &Profile::default());
        let summary = |language| {
            share::summary(&order, &report, "https://x.example/#1", Speaker { language, unit })
        };
        let line = |language| share::line(&report, Speaker { language, unit });
        let source = summary(Language::English);
        for language in OTHERS {
            alike(&source, &summary(language), language);
            let lines = |text: &str| text.lines().count();
            assert_eq!(lines(&source), lines(&summary(language)));
            // One line of a text message: plain ASCII, the same numbers.
            assert!(line(language).is_ascii() && line(language).ends_with(unit.key()));
            let digits =
                |text: String| text.chars().filter(char::is_ascii_digit).collect::<String>();
            assert_eq!(digits(line(Language::English)), digits(line(language)));
        }
    }
}

#[test]
fn the_script_for_the_telephone() {
    for unit in [Unit::Inch, Unit::Millimetre] {
        for build in [false, true] {
            for steps in [1, 8, 1475, 2286] {
                let numbers = [steps, 1624, 152, 12].map(|n| Some(unit.step().times(n)));
                let said = Said { unit, build, numbers };
                let source = script(&said, Language::English).unwrap();
                for language in OTHERS {
                    let script = script(&said, language).unwrap();
                    assert_eq!(script.characters, source.characters);
                    assert_eq!(script.lines.len(), source.lines.len());
                    for (one, other) in source.lines.iter().zip(&script.lines) {
                        alike(one, other, language);
                        well_set(other, language);
                    }
                }
            }
        }
    }
    assert_eq!(spell("0", Language::French), ["zéro"]);
}
