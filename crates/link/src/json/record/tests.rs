//! A record's file: there and back, and every refusal with its place.

use super::{MOST, parse, text};
use crate::json::Fault;
use hangtrue_core::hang::care::{Service, Work};
use hangtrue_core::hang::inspection::{Check, Found, Measure};
use hangtrue_core::hang::record::{Place, QuarterTurns, Record};
use hangtrue_core::hang::weight::Weight;
use hangtrue_core::order::Date;
use hangtrue_core::{Length, Spot};
use proptest::prelude::*;

fn hung() -> Record {
    let mut record = Record::default();
    record.order.survey.add(Spot::WidthLow, "92 3/16");
    record.order.vehicle = "unit 27".to_owned();
    record.built.set(Place::TrackLow, "91 3/4");
    record.built.set(Place::Shift, "about \"so\"");
    record.weight = Some(Weight::from_micrograms(132 * 453_592_370));
    record.turns = QuarterTurns::of(13.25);
    record.serial = "HT-0042".to_owned();
    record.hung = Some(Date { year: 2026, month: 12, day: 1 });
    record.per_day = Some(20);
    for check in Check::ALL {
        record.inspection.set(
            check,
            Some(match check.measure() {
                Measure::Length => Found::Length(Length::from_sixteenths(6)),
                Measure::Weight => Found::Weight(Weight::from_grams(9000)),
                Measure::Count => Found::Count(13),
                Measure::Eye => Found::Eye(true),
            }),
        );
    }
    let date = Date { year: 2027, month: 3, day: 2 };
    record.services.push(Service { date, work: Work::Cables, note: "both".to_owned() });
    record.services.push(Service { date, work: Work::Lubrication, note: String::new() });
    record
}

#[test]
fn a_record_comes_back_from_its_file() {
    for record in [Record::default(), hung()] {
        assert_eq!(parse(&text(&record)), Ok(record));
    }
    // What is not there is left out.
    assert_eq!(
        text(&Record::default()),
        "{\"format\":\"hangtrue-record/1\",\"order\":{\"format\":\"hangtrue-order/1\",\"unit\":\"in\",\
         \"prepared\":false,\"readings\":{},\"verdict\":\"clear\",\"order\":{}}}"
    );
    let file = text(&hung());
    assert!(
        file.starts_with(r#"{"format":"hangtrue-record/1","order":{"format":"hangtrue-order/1""#)
    );
    assert!(file.contains(r#""side-shift":"3/8 in""#), "{file}");
    // The outside check of the syntax.
    assert!(serde_json::from_str::<serde_json::Value>(&file).is_ok());
}

#[test]
fn what_is_not_as_the_format_says_is_named_with_its_place() {
    let file = text(&hung());
    for (from, to, place, code) in [
        ("hangtrue-record/1", "hangtrue-record/2", "format", "unknown-value"),
        ("\"serial\"", "\"series\"", "", "unknown-key"),
        ("\"2026-12-01\"", "\"2026-13-01\"", "hung", "not-a-date"),
        ("\"2026-12-01\"", "\"2026-02-31\"", "hung", "not-a-date"),
        ("\"2027-03-02\"", "\"2027-02-29\"", "services.0.date", "not-a-date"),
        ("\"quarter_turns\":53", "\"quarter_turns\":70000", "quarter_turns", "unknown-value"),
        ("\"unit\":\"in\"", "\"unit\":\"cm\"", "order.unit", "unknown-value"),
        ("\"track-low\"", "\"track-left\"", "readings", "unknown-key"),
        ("\"3/8 in\"", "\"wide\"", "inspection.track-spacing", "unknown-value"),
        ("\"work\":\"cables\"", "\"work\":\"magic\"", "services.0.work", "unknown-value"),
    ] {
        assert!(file.contains(from), "{from}");
        let error = parse(&file.replacen(from, to, 1)).unwrap_err();
        assert_eq!((error.place.as_str(), error.fault.code()), (place, code), "{from}");
    }
    assert!(parse("{}").is_err());
    let padded = |to: usize| [file.as_str(), &" ".repeat(to - file.len())].concat();
    assert_eq!(parse(&padded(MOST)), Ok(hung()));
    assert_eq!(parse(&padded(MOST + 1)).unwrap_err().fault, Fault::TooLong { most: MOST });
}

proptest! {
    #[test]
    fn no_change_to_a_file_makes_it_panic(at in 0.0_f64..1.0, len in 0..20_usize, put in "[ -~]{0,5}") {
        let file = text(&hung());
        let at = (at * file.len() as f64) as usize;
        let end = (at + len).min(file.len());
        if let (Some(head), Some(tail)) = (file.get(..at), file.get(end..)) {
            let _ = parse(&[head, &put, tail].concat());
        }
    }
}
