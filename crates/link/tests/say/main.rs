//! The catalogues of this crate: the same said in every language, and nothing left over.

#![allow(clippy::unwrap_used, missing_docs)]

mod every;
#[path = "../../../core/tests/say/properties.rs"]
mod properties;

use every::{NO_LINK, file_faults, link_errors, order, profile_faults, small_errors, table_faults};
use hangtrue_core::profile::Profile;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Spot, Unit, check_order};
use hangtrue_golden::golden;
use hangtrue_link::code::{Said, SmallError, script, spell};
use hangtrue_link::json::profile::ProfileFault;
use hangtrue_link::json::{Fault, FileError};
use hangtrue_link::list::Unread;
use hangtrue_link::{LinkError, say, share};
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

#[test]
fn a_link_that_is_wrong() {
    for error in link_errors() {
        in_all(|language| say::link(language, error).what);
        in_all(|language| say::link(language, error).ask.to_owned());
    }
    for error in NO_LINK {
        in_all(|language| say::encode(language, error).what);
        in_all(|language| say::encode(language, error).ask.to_owned());
    }
}

#[test]
fn characters_that_are_wrong() {
    for error in small_errors() {
        in_all(|language| say::small(language, &error));
        if let SmallError::Heard(heard) = &error {
            in_all(|language| say::heard(language, heard));
        }
    }
}

#[test]
fn a_table_that_is_wrong() {
    for fault in table_faults() {
        in_all(|language| say::table(language, &fault));
    }
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
            assert!(line(language).is_ascii() && line(language).contains(unit.key()));
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

/// Every name of an error and what is said of it, a file a language: `tests/goldens/link`.
#[test]
fn what_is_wrong_is_said_as_it_was() {
    for language in Language::ALL {
        let mut lines = Vec::new();
        let said = |advice: say::Advice| [&advice.what, " — ", advice.ask].concat();
        for error in link_errors() {
            lines.push(format!("{}: {}", error.code(), said(say::link(language, error))));
        }
        for error in NO_LINK {
            lines.push(format!("{}: {}", error.code(), said(say::encode(language, error))));
        }
        for error in small_errors() {
            lines.push(say::small(language, &error));
            if let SmallError::Heard(heard) = &error {
                assert_eq!(say::heard(language, heard), say::small(language, &error));
            }
        }
        for fault in table_faults() {
            let ends = if fault.ends_the_table() { " (the end)" } else { "" };
            let said = say::table(language, &fault);
            lines.push(format!("{}{ends}: {said}", fault.code()));
            assert_eq!(say::unread(language, &Unread::Row(fault)), said);
        }
        for fault in file_faults() {
            let whole = matches!(fault, Fault::NotJson { .. } | Fault::TooLong { .. });
            for place in ["", "a.b[2]"].into_iter().take(if whole { 1 } else { 2 }) {
                let error = FileError { place: place.to_owned(), fault: fault.clone() };
                let [line, whole, profile] =
                    [say::file, say::whole_file, say::profile].map(|say| say(language, &error));
                // All three where they say something else.
                lines.push(format!("{}: {line}", fault.code()));
                lines.extend(Some(whole).filter(|whole| *whole != line));
                lines.extend(Some(profile).filter(|profile| *profile != line));
                assert_eq!(say::unread(language, &Unread::File(error)), line);
            }
        }
        for fault in profile_faults() {
            // Of the whole profile only this is said.
            let place = if matches!(fault, ProfileFault::SameKey { .. }) { "" } else { "a.b[2]" };
            let error = FileError { place: place.to_owned(), fault: Fault::Profile(fault) };
            lines.push(format!("{}: {}", error.fault.code(), say::profile(language, &error)));
        }
        golden(&format!("link/{}.txt", language.key()), &lines.join("\n"));
    }
}

/// A row of a list that is a link says what a link says.
#[test]
fn a_link_in_a_list_says_what_is_wrong_and_what_to_do() {
    for language in Language::ALL {
        let advice = say::link(language, LinkError::Changed);
        let said = say::unread(language, &Unread::Link(LinkError::Changed));
        assert_eq!(said, [&advice.what, " ", advice.ask].concat());
    }
}

/// Orders as text and as one line: one that is built first, one that stops, one of nothing.
#[test]
fn an_order_is_written_as_it_was() {
    let built = order(Unit::Inch);
    let mut stopped = order(Unit::Millimetre);
    stopped.survey.add(Spot::WidthLow, "92");
    stopped.survey.entries_mut(Spot::WidthLow)[0].struck = true;
    stopped.note.clear();
    let mut odd = hangtrue_core::order::Order::default();
    for (spot, text) in [
        (Spot::WidthMiddle, "92 3/16"),
        (Spot::HeightCenter, "101 1/2"),
        (Spot::HeaderCenter, "9 1/2"),
        (Spot::BowFirst, "1 1/4"),
    ] {
        odd.survey.add(spot, text);
    }
    for language in Language::ALL {
        let mut text = String::new();
        for order in [&built, &stopped, &odd, &hangtrue_core::order::Order::default()] {
            let report = check_order(order, &Profile::default());
            let speaker = Speaker { language, unit: order.survey.unit };
            let link = if order.vehicle.is_empty() { "" } else { "https://x.example/#1" };
            let message = match link {
                "" => share::line(&report, speaker),
                link => share::message(&report, link, speaker),
            };
            text.push_str(&message);
            text.push('\n');
            text.push_str(&share::summary(order, &report, link, speaker));
            text.push_str("----\n");
        }
        golden(&format!("link/shared-{}.txt", language.key()), &text);
    }
}
