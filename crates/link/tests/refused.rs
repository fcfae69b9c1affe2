//! What is refused, and where: every value of a whole file replaced by each of a few others,
//! as whole files in `tests/goldens/link`. With `HANGTRUE_BLESS=1` they are written anew.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may fail")]

mod places;

use hangtrue_golden::golden;
use hangtrue_link::json::{self, FileError, order, profile, record};
use hangtrue_link::record::{Opened, decode};
use places::places;
use serde_json::{Value, json};

/// What stands in the place of a value; nothing at all is one of them.
fn others() -> Vec<(&'static str, Option<Value>)> {
    let mut others = vec![("left out", None)];
    for (name, value) in [
        ("null", json!(null)),
        ("true", json!(true)),
        ("0", json!(0)),
        ("7", json!(7)),
        ("-1", json!(-1)),
        ("1.5", json!(1.5)),
        ("10^10", json!(10_000_000_000_u64)),
        ("empty", json!("")),
        ("text", json!("x y")),
        ("[]", json!([])),
        ("[text, 7]", json!(["x y", 7])),
        ("{}", json!({})),
        ("{odd}", json!({ "odd": 1 })),
    ] {
        others.push((name, Some(value)));
    }
    others
}

/// The document with one value replaced, or taken out.
fn spoilt(document: &Value, place: &str, with: Option<Value>) -> Value {
    let mut document = document.clone();
    let (outer, key) = place.rsplit_once('/').unwrap();
    match (document.pointer_mut(outer).unwrap(), with) {
        (Value::Object(map), Some(with)) => _ = map.insert(key.to_owned(), with),
        (Value::Object(map), None) => _ = map.shift_remove(key),
        (Value::Array(list), Some(with)) => {
            *list.get_mut(key.parse::<usize>().unwrap()).unwrap() = with
        }
        (Value::Array(list), None) => _ = list.remove(key.parse().unwrap()),
        _ => panic!("{place}"),
    }
    document
}

/// A line a place: what it is refused for in the place of each of the others, grouped by that.
fn told(document: &str, read: impl Fn(&str) -> Result<(), FileError>) -> String {
    let document: Value = serde_json::from_str(document).unwrap();
    assert_eq!(read(&document.to_string()), Ok(()));
    let mut all = vec![];
    places(&document, "", &mut all);
    let mut lines = Vec::new();
    for place in all {
        let own = place.trim_start_matches('/').replace('/', ".");
        let mut groups: Vec<(String, Vec<&str>)> = Vec::new();
        for (name, with) in others() {
            let said = match read(&spoilt(&document, &place, with).to_string()) {
                Ok(()) => "fine".to_owned(),
                Err(error) if error.place == own => error.fault.code().to_owned(),
                Err(error) if error.place.is_empty() => {
                    format!("{} of the whole", error.fault.code())
                }
                Err(error) => format!("{} at {}", error.fault.code(), error.place),
            };
            match groups.iter_mut().find(|group| group.0 == said) {
                Some(group) => group.1.push(name),
                None => groups.push((said, vec![name])),
            }
        }
        let groups: Vec<_> =
            groups.iter().map(|(said, names)| format!("{said}: {}", names.join(", "))).collect();
        lines.push(format!("{own} — {}", groups.join("; ")));
    }
    lines.join("\n")
}

const SURVEY: &str = r#"{"format":"hangtrue-survey/1","id":"a","unit":"mm","prepared":false,
    "readings":{"width":{"low":"92","middle":["93","92"],"high":[]},"height":{"left":"1",
    "center":"2","right":"3"},"header":{"left":"1","center":"2","right":"3"},
    "bow":{"first":"1","second":"2","third":"3"},"diagonal":{"rising":"1","falling":"2"},
    "loop":{"sill_to_roof":"1","sill_to_bow":"109"},"post":{"left":"3","right":"whatever"}}}"#;

#[test]
fn a_survey_is_refused_as_it_was() {
    let read = |text: &str| json::parse(text).map(|_| ()).map_err(|(_, error)| error);
    golden("link/refused-survey.txt", &told(SURVEY, read));
}

const ORDER: &str = r#"{"format":"hangtrue-order/1","id":7,"unit":"in","prepared":true,
    "readings":{"width":{"low":"92","middle":[{"text":"93","struck":true},"92"]},
    "loop":{"sill_to_bow":{"text":"1","struck":false}}},"verdict":"recheck",
    "confirmed":[{"rule":"spread","reading":"width.low"},{"rule":"slip"}],"old_door_in":false,
    "vehicle":"unit 27","note":"Dock side","contact":"yard@carrier.example",
    "answers":[{"question":"side-seals","answer":"yes"}],
    "profile":{"name":"Demo Doors","revision":4},"language":"en","date":"2026-02-05",
    "order":{"width":1}}"#;

#[test]
fn an_order_is_refused_as_it_was() {
    let read = |text: &str| order::parse(text).map(|_| ()).map_err(|(_, error)| error);
    golden("link/refused-order.txt", &told(ORDER, read));
}

/// The golden record of a door that hangs, as a file.
#[test]
fn a_record_is_refused_as_it_was() {
    let vectors = include_str!("../../../tests/vectors/record-v1.csv");
    let payload = vectors.lines().find_map(|line| line.strip_prefix("hung,")).unwrap();
    let Ok(Opened::Record(hung)) = decode(payload) else { panic!("{payload}") };
    let read = |text: &str| record::parse(text).map(|_| ());
    golden("link/refused-record.txt", &told(&record::text(&hung), read));
}

const PROFILES: [(&str, &str); 2] = [
    ("prairie", include_str!("../../../demo/profiles/prairie.json")),
    ("boreal", include_str!("../../../demo/profiles/boreal.json")),
];

#[test]
fn a_profile_is_refused_as_it_was() {
    for (name, text) in PROFILES {
        let read = |text: &str| profile::parse(text).map(|_| ());
        golden(&format!("link/refused-{name}.txt"), &told(text, read));
    }
}

/// The demos' profiles as they are understood.
#[test]
fn a_profile_means_what_it_meant() {
    for (name, text) in PROFILES {
        golden(
            &format!("link/profile-{name}.txt"),
            &format!("{:#?}", profile::parse(text).unwrap()),
        );
    }
}
