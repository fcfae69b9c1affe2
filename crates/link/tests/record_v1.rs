//! Version 1 of the record: round trips, golden records kept for ever, damage of every kind.

#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::print_stdout,
    reason = "a test may fail, and says what it measured"
)]

mod damage;
mod orders;

use hangtrue_core::hang::care::{Service, Work, is_day};
use hangtrue_core::hang::inspection::{Check, Found, Inspection, Measure};
use hangtrue_core::hang::record::{AsBuilt, Place, QuarterTurns, Record};
use hangtrue_core::hang::weight::Weight;
use hangtrue_core::order::{Date, Order};
use hangtrue_core::{Length, Spot, Unit};
use hangtrue_link::json::record as file;
use hangtrue_link::record::{Opened, decode, encode, url};
use hangtrue_link::{LinkError, find};
use orders::{any_order, demo};
use proptest::prelude::*;

const VECTORS: &str = include_str!("../../../tests/vectors/record-v1.csv");

const fn on(year: u16, month: u8, day: u8) -> Date {
    Date { year, month, day }
}

fn service(date: Date, work: Work, note: &str) -> Service {
    Service { date, work, note: note.to_owned() }
}

/// A door as it is hung, with everything that was noted.
fn hung() -> Record {
    let mut built = AsBuilt::default();
    for (place, text) in Place::ALL.into_iter().zip([
        "91 3/4", "91 3/4", "91 13/16", "136 1/2", "136 9/16", "101", "91 3/4", "91 3/4", "91 3/4",
        "60", "60 1/16", "45 7/8", "45 7/8", "3/8",
    ]) {
        built.set(place, text);
    }
    let mut inspection = Inspection::default();
    for check in Check::ALL {
        let found = match check.measure() {
            Measure::Length => Found::Length(Length::from_sixteenths(2)),
            Measure::Weight => Found::Weight(Weight::from_grams(9_000)),
            Measure::Count => Found::Count(13),
            Measure::Eye => Found::Eye(check != Check::Labels),
        };
        inspection.set(check, Some(found));
    }
    Record {
        order: demo(),
        built,
        weight: Some(Weight::from_micrograms(132 * 453_592_370)),
        turns: QuarterTurns::of(13.25),
        serial: "HT-0042".to_owned(),
        hung: Some(on(2026, 12, 1)),
        per_day: Some(20),
        inspection,
        services: vec![
            service(on(2027, 3, 2), Work::Lubrication, ""),
            service(on(2027, 6, 9), Work::Cables, "both, 1/8 in"),
        ],
    }
}

/// The records of `tests/vectors/record-v1.csv`, by name.
fn golden() -> Vec<(&'static str, Record)> {
    let survey = orders::survey(Unit::Millimetre, &[(Spot::WidthLow, "2331")]);
    let order = Order { survey, ..demo() };
    let mut metric = Record { order, ..Record::default() };
    metric.built.set(Place::TrackLow, "2330 mm");
    metric.built.set(Place::TrackHigh, "2331");
    metric.inspection.set(Check::GapLeft, Some(Found::Length(Length::from_mm(6))));
    metric.inspection.set(Check::Shift, Some(Found::Length(Length::from_nm(1))));
    metric.weight = Some(Weight::from_grams(60_500));
    vec![
        ("nothing", Record::default()),
        ("delivered", Record { order: demo(), ..Record::default() }),
        ("hung", hung()),
        ("metric", metric),
    ]
}

/// `name,payload`.
fn vectors() -> Vec<(&'static str, &'static str)> {
    let lines = VECTORS.lines().filter(|line| !line.starts_with('#')).skip(1);
    lines.map(|line| line.split_once(',').unwrap()).collect()
}

#[test]
fn golden_records_say_for_ever_what_they_said() {
    let (vectors, golden) = (vectors(), golden());
    let names = |list: &[(&'static str, &'static str)]| -> Vec<&'static str> {
        list.iter().map(|one| one.0).collect()
    };
    for (name, record) in &golden {
        println!("{name},{}", encode(record).unwrap());
    }
    assert_eq!(names(&vectors), golden.iter().map(|g| g.0).collect::<Vec<_>>());
    for ((name, payload), (_, record)) in vectors.into_iter().zip(golden) {
        assert_eq!(encode(&record).as_deref(), Ok(payload), "{name}");
        assert_eq!(decode(payload), Ok(Opened::Record(Box::new(record))), "{name}");
        assert!(payload.starts_with('R'), "{name}");
    }
}

/// Every damage that a payload can take in one place, for every golden record.
#[test]
fn every_damage_to_a_golden_record_is_refused() {
    let tried: u64 = vectors()
        .into_iter()
        .map(|(name, payload)| {
            damage::each(payload, |text| assert!(decode(text).is_err(), "{name}: {text}"))
        })
        .sum();
    println!("{tried} damaged payloads, all refused");
}

#[test]
fn a_record_is_no_order_and_an_order_is_opened_as_one() {
    let record = encode(&hung()).unwrap();
    assert_eq!(hangtrue_link::decode(&record), Err(LinkError::Record));
    let order = hangtrue_link::encode(&demo()).unwrap();
    assert_eq!(decode(&order), Ok(Opened::Order(Box::new(demo()))));
}

#[test]
fn no_weight_is_less_than_nothing() {
    let of = |micrograms| {
        let weight = Some(Weight::from_micrograms(micrograms));
        decode(&encode(&Record { weight, ..hung() }).unwrap()).map(|_| ())
    };
    assert_eq!([of(1), of(0)], [Ok(()), Ok(())]);
    assert_eq!([of(-1), of(i64::MIN)], [Err(LinkError::Contents); 2]);
}

#[test]
fn a_record_is_found_in_whatever_it_is_pasted_with() {
    let record = hung();
    let link = url("https://dealer.example/doors/hang.html", &record).unwrap();
    assert!(link.starts_with("https://dealer.example/doors/hang.html#R"));
    let payload = find(&format!("The door's record: {link}, thanks")).unwrap();
    assert_eq!(decode(&payload), Ok(Opened::Record(Box::new(record))));
}

fn any_date() -> impl Strategy<Value = Date> {
    (2000_u16..2256, 1_u8..=12, 1_u8..=31).prop_map(|(year, month, day)| on(year, month, day))
}

fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![".{0,12}", "[0-9 /.]{0,8}", Just(String::new())]
}

prop_compose! {
    fn any_record()(
        order in any_order(),
        texts in prop::collection::vec(any_text(), 14),
        weight in prop::option::of(0..=i64::MAX),
        turns in prop::option::of(any::<u16>()),
        serial in any_text(),
        hung in prop::option::of(any_date()),
        per_day in prop::option::of(any::<u16>()),
        found in prop::collection::vec(prop::option::of((0..=i64::MAX, any::<u32>())), 18),
        services in prop::collection::vec((any_date(), 0..Work::ALL.len(), any_text()), 0..5),
    ) -> Record {
        let mut built = AsBuilt::default();
        for (place, text) in Place::ALL.into_iter().zip(texts) {
            built.set(place, &text);
        }
        let mut inspection = Inspection::default();
        for (check, found) in Check::ALL.into_iter().zip(found) {
            inspection.set(check, found.map(|(wide, count)| match check.measure() {
                Measure::Length => Found::Length(Length::from_nm(wide % 1_000_000_000_000_001)),
                Measure::Weight => Found::Weight(Weight::from_micrograms(wide)),
                Measure::Count => Found::Count(count),
                Measure::Eye => Found::Eye(count % 2 == 0),
            }));
        }
        let weight = weight.map(Weight::from_micrograms);
        let turns = turns.map(QuarterTurns);
        let services = services
            .into_iter()
            .map(|(date, work, note)| Service { date, work: Work::ALL[work], note })
            .collect();
        Record { order, built, weight, turns, serial, hung, per_day, inspection, services }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_record_comes_back(record in any_record()) {
        if let Ok(payload) = encode(&record) {
            prop_assert_eq!(decode(&payload), Ok(Opened::Record(Box::new(record))));
        }
    }

    /// As a file too, if its days are days.
    #[test]
    fn every_record_comes_back_from_its_file(record in any_record()) {
        let days = record.hung.into_iter().chain(record.services.iter().map(|one| one.date));
        let read = file::parse(&file::text(&record));
        match days.into_iter().all(is_day) {
            true => prop_assert_eq!(read, Ok(record)),
            false => prop_assert_eq!(read.unwrap_err().fault.code(), "not-a-date"),
        }
    }

    /// Whatever a stranger seals, it opens or is refused; what opens is written the same.
    #[test]
    fn no_payload_makes_it_panic(text in "[0-9A-Z]{0,80}") {
        let _ = decode(&text);
        let _ = decode(&["R", &text].concat());
    }
}
