//! What is written for others: orders as files, answers, readings, refusals; as whole files in
//! `tests/goldens/link`. With `HANGTRUE_BLESS=1` they are written anew.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a test may fail")]

mod orders;

use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Spot, Unit, check_order};
use hangtrue_golden::golden;
use hangtrue_link::json::order::{self, OrderFile};
use hangtrue_link::json::text::{parse, pretty};
use hangtrue_link::json::{Answer, Document, Id, Reading, Refusal, parse_any};
use hangtrue_link::say;
use proptest::prelude::*;

fn ids() -> [Id; 3] {
    [Id::None, Id::Text("A-17".to_owned()), Id::Number("1.50e2".to_owned())]
}

/// The golden orders, and one of a frame that is built first.
fn orders() -> impl Iterator<Item = (&'static str, Order, Id)> {
    let mut built = Order::default();
    for (spot, text) in [
        (Spot::WidthMiddle, "92 3/16"),
        (Spot::HeightCenter, "101 1/2"),
        (Spot::HeaderCenter, "5"),
        (Spot::BowFirst, "1 1/4"),
        (Spot::PostLeft, "1 1/2"),
        (Spot::PostRight, "2"),
    ] {
        built.survey.add(spot, text);
    }
    let all = orders::golden().into_iter().chain([("built", built)]);
    all.zip(ids().into_iter().cycle()).map(|((name, order), id)| (name, order, id))
}

/// Every golden order as its file.
#[test]
fn orders_are_written_as_they_were() {
    let mut text = String::new();
    for (name, order, id) in orders() {
        let report = check_order(&order, &Profile::default());
        let file = OrderFile::new(id, &order, &report);
        // `serde` is given the same tree; it takes a number for what it is worth.
        let by_serde: serde_json::Value = serde_json::to_value(&file).unwrap();
        assert_eq!(by_serde, serde_json::from_str::<serde_json::Value>(&file.text()).unwrap());
        text.push_str(&format!("{name}: {}\n", pretty(&file.tree())));
    }
    golden("link/orders.txt", &text);
}

/// What is said of some of them.
#[test]
fn answers_are_what_they_were() {
    let mut text = String::new();
    let said = ["eleven-readings", "any-spelling", "built"];
    for (name, order, id) in orders().filter(|(name, ..)| said.contains(name)) {
        let report = check_order(&order, &Profile::default());
        let speaker = Speaker { language: Language::English, unit: order.survey.unit };
        let answer = serde_json::to_string(&Answer::new(id, &report, speaker)).unwrap();
        text.push_str(&format!("{name}: {}\n", pretty(&parse(&answer).unwrap())));
    }
    golden("link/answers.txt", &text);
}

/// Readings, and why some are none, a line each.
#[test]
fn readings_are_answered_as_they_were() {
    let mut lines = Vec::new();
    for language in Language::ALL {
        for unit in [Unit::Inch, Unit::Millimetre] {
            let speaker = Speaker { language, unit };
            for text in ["92 3/16", "2443,5", "8' 0 1/4\"", "", "96.1/4", "961/4", "wide"] {
                lines.push(serde_json::to_string(&Reading::of(text, speaker)).unwrap());
            }
            let long = Reading::too_long("92 92 92", speaker);
            lines.push(serde_json::to_string(&long).unwrap());
        }
    }
    golden("link/readings.txt", &lines.join("\n"));
}

/// Lines that are no survey and no order, with whatever id could be made out.
#[test]
fn refusals_are_answered_as_they_were() {
    let mut lines = Vec::new();
    for language in Language::ALL {
        for text in [
            "",
            "[]",
            r#"{"id":7,"format":"x"}"#,
            r#"{"id":"A-17","format":"hangtrue-survey/1","unit":"in","readings":{"width":1}}"#,
            r#"{"id":"A-18","format":"hangtrue-order/1","unit":"in","readings":{},"date":"now"}"#,
        ] {
            let (id, error) = parse_any(text).unwrap_err();
            let refusal = Refusal::new(id, &error, language);
            assert_eq!(refusal.message(), say::file(language, &error));
            lines.push(serde_json::to_string(&refusal).unwrap());
        }
    }
    let link = Refusal::in_words(Id::None, "cut", "3".to_owned(), "So.".to_owned());
    lines.push(serde_json::to_string(&link).unwrap());
    golden("link/refusals.txt", &lines.join("\n"));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_order_comes_back_from_its_file(order in orders::any_order(), id in 0..3_usize) {
        let [none, text, number] = ids();
        let id = [none, text, number][id].clone();
        let report = check_order(&order, &Profile::default());
        let text = OrderFile::new(id.clone(), &order, &report).text();
        prop_assert_eq!(order::parse(&text), Ok((id.clone(), order.clone())));
        let read = parse_any(&text);
        prop_assert_eq!(read, Ok(Document { id, order, is_order: true }));
    }
}
