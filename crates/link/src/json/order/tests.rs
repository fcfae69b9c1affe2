//! There and back, and what is refused.

use hangtrue_core::check::Verdict;
use hangtrue_core::order::{Answer, Confirmed, Date, Order};
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_core::{Spot, Survey, Unit, check};

use super::*;
use crate::json::{Fault, Id};

fn order() -> Order {
    let mut survey = Survey::new(Unit::Inch);
    for (spot, text) in [
        (Spot::WidthLow, "92 1/4"),
        (Spot::WidthMiddle, "93 1/4"),
        (Spot::WidthMiddle, "92 ¼\""),
        (Spot::LoopSillToBow, "\"\\ <b>"),
        (Spot::PostRight, "3"),
    ] {
        survey.add(spot, text);
    }
    survey.entries_mut(Spot::WidthMiddle)[0].struck = true;
    Order {
        survey,
        claimed: Verdict::Recheck,
        confirmed: vec![
            Confirmed { rule: "spread".to_owned(), spot: Some(Spot::WidthMiddle) },
            Confirmed { rule: "slip".to_owned(), spot: None },
        ],
        old_door_in: Some(true),
        vehicle: "unit 27".to_owned(),
        note: "Dock side\nis bent.".to_owned(),
        contact: "yard@carrier.example".to_owned(),
        answers: vec![Answer { question: "side-seals".to_owned(), answer: "yes".to_owned() }],
        profile: Some(("Demo Doors".to_owned(), 4)),
        language: "en".to_owned(),
        date: Some(Date { year: 2026, month: 2, day: 5 }),
    }
}

fn written(id: Id, order: &Order) -> String {
    let report = check(&order.survey, &Profile::default());
    OrderFile::new(id, order, &report).text()
}

#[test]
fn an_order_comes_back_from_its_file() {
    for order in [order(), Order::default()] {
        for id in [Id::None, Id::Text("a".to_owned()), Id::Number("7".to_owned())] {
            assert_eq!(id.is_none(), id.text().is_empty());
            assert_eq!(parse(&written(id.clone(), &order)), Ok((id, order.clone())));
        }
    }
}

#[test]
fn nothing_follows_from_the_numbers_that_stand_in_a_file() {
    let text = written(Id::None, &order()).replace(r#""order":{"width":{"#, r#""order":{"x":{"#);
    assert!(text.contains(r#""order":{"x":{"#));
    assert_eq!(parse(&text).unwrap().1, order());
}

#[test]
fn what_is_wrong_is_named_with_its_place() {
    let head = r#"{"format":"hangtrue-order/1","unit":"in","readings":{}"#;
    for (tail, message) in [
        (r#","date":"2026-13-01""#, "date is \"2026-13-01\". Write a day as 2026-11-25."),
        (r#","date":"26-1-1""#, "date is \"26-1-1\". Write a day as 2026-11-25."),
        (r#","verdict":"fine""#, "verdict is \"fine\". It can be: clear, recheck, stop."),
        (r#","profile":{"name":"x"}"#, "profile has no \"revision\"."),
        (
            r#","profile":{"name":"x","revision":-1}"#,
            "profile.revision is -1. It can be a whole number from 0 to 4294967295.",
        ),
        (r#","answers":{}"#, "answers is an object; a list is expected."),
        (r#","answers":[{"question":"a"}]"#, "answers.0 has no \"answer\"."),
        (
            r#","confirmed":[{"rule":"a","reading":"width.left"}]"#,
            "confirmed.0.reading is \"width.left\". It can be: a group and a place, as width.low.",
        ),
        (r#","old_door_in":null"#, "old_door_in is null; true or false is expected."),
    ] {
        let (_, error) = parse(&[head, tail, "}"].concat()).unwrap_err();
        assert_eq!(crate::say::file(Language::English, &error), message);
    }
    let struck =
        r#"{"format":"hangtrue-order/1","unit":"in","readings":{"bow":{"first":{"text":1}}}}"#;
    assert_eq!(parse(struck).unwrap_err().1.place, "readings.bow.first.text");
    let padded = |to: usize| [head, &" ".repeat(to - head.len() - 1), "}"].concat();
    assert!(parse(&padded(MOST)).is_ok());
    let too_long = Fault::TooLong { most: MOST };
    assert_eq!(parse(&padded(MOST + 1)).unwrap_err().1.fault, too_long);
}
