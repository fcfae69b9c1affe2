//! Orders and profiles against their published schemas, by a validator that is not ours:
//! whatever is written passes, and whatever the reader takes passes too.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

mod orders;
mod places;

use std::path::Path;
use std::sync::LazyLock;

use hangtrue_core::check::check;
use hangtrue_core::profile::Profile;
use hangtrue_link::json::order::OrderFile;
use hangtrue_link::json::{Id, order, profile};
use jsonschema::Validator;
use places::places;
use proptest::prelude::*;
use serde_json::{Value, json};

static ORDER: LazyLock<Validator> =
    LazyLock::new(|| jsonschema::draft202012::new(&order::schema().to_value()).unwrap());
static PROFILE: LazyLock<Validator> =
    LazyLock::new(|| jsonschema::draft202012::new(&profile::schema().to_value()).unwrap());

fn demo(name: &str) -> Value {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo").join(name);
    serde_json::from_str(&std::fs::read_to_string(file).unwrap()).unwrap()
}

fn told(validator: &Validator, value: &Value) -> Vec<String> {
    let one =
        |error: jsonschema::ValidationError<'_>| format!("{}: {error}", error.instance_path());
    validator.iter_errors(value).map(one).collect()
}

#[test]
fn both_schemas_are_schemas() {
    for schema in [order::schema(), profile::schema()] {
        assert!(jsonschema::meta::is_valid(&schema.to_value()));
    }
}

/// Something else in the place of one value, or nothing.
fn spoilt(mut document: Value, at: prop::sample::Index, with: Option<Value>) -> Value {
    let mut all = Vec::new();
    places(&document, "", &mut all);
    let place = at.get(&all).clone();
    let (outer, key) = place.rsplit_once('/').unwrap();
    match (document.pointer_mut(outer).unwrap(), with) {
        (Value::Object(map), Some(with)) => _ = map.insert(key.to_owned(), with),
        (Value::Object(map), None) => _ = map.shift_remove(key),
        (Value::Array(list), Some(with)) => list[key.parse::<usize>().unwrap()] = with,
        (Value::Array(list), None) => _ = list.remove(key.parse().unwrap()),
        _ => {}
    }
    document
}

fn anything() -> impl Strategy<Value = Option<Value>> {
    prop_oneof![
        Just(None),
        any::<i32>().prop_map(|number| Some(json!(number))),
        (-2.0..30.0_f64).prop_map(|number| Some(json!(number))),
        any::<bool>().prop_map(|truth| Some(json!(truth))),
        Just(Some(Value::Null)),
        Just(Some(json!([]))),
        Just(Some(json!({}))),
        Just(Some(json!({ "en": "a", "fr": "b" }))),
        "[ -~]{0,90}".prop_map(|text| Some(json!(text))),
        "[a-z-]{1,34}".prop_map(|text| Some(json!(text))),
        "#[0-9a-f]{5,7}".prop_map(|text| Some(json!(text))),
        "[0-9]{1,3}( [0-9]/(2|4|8))? (in|mm|kg/m2|lb/ft2)".prop_map(|text| Some(json!(text))),
        prop::sample::select(vec![
            "in",
            "mm",
            "en",
            "mean",
            "1 mm",
            "text",
            "yes-no",
            "PD-{check}"
        ])
        .prop_map(|text| Some(json!(text))),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_order_that_is_written_passes(order in orders::any_order()) {
        let report = check(&order.survey, &Profile::default());
        let text = OrderFile::new(Id::None, &order, &report).text();
        let amiss = told(&ORDER, &serde_json::from_str(&text).unwrap());
        prop_assert!(amiss.is_empty(), "{amiss:?} in {text}");
    }

    #[test]
    fn an_order_that_the_schema_refuses_the_reader_refuses(
        at in any::<prop::sample::Index>(), with in anything(),
    ) {
        let mut whole = demo("orders/demo-2.json");
        // Written for others, and not read.
        whole.as_object_mut().unwrap().shift_remove("order");
        let document = spoilt(whole, at, with);
        // Taken for none, as a table's empty cell; never written.
        prop_assume!(!document["id"].is_null() || document.get("id").is_none());
        let read = order::parse(&document.to_string());
        let amiss = told(&ORDER, &document);
        prop_assert!(read.is_err() || amiss.is_empty(), "{amiss:?} in {document}");
    }

    #[test]
    fn a_profile_that_the_schema_refuses_the_reader_refuses(
        name in prop::sample::select(vec!["profiles/prairie.json", "profiles/boreal.json"]),
        at in any::<prop::sample::Index>(), with in anything(),
    ) {
        let document = spoilt(demo(name), at, with);
        let read = profile::parse(&document.to_string());
        let amiss = told(&PROFILE, &document);
        prop_assert!(read.is_err() || amiss.is_empty(), "{amiss:?} in {document}");
    }
}

/// The way back does not hold by itself: these the reader alone can refuse.
#[test]
fn what_no_schema_can_say_is_the_readers() {
    for (key, value) in [
        ("limits", json!({ "width": { "least": "90 in", "most": "80 in", "reason": "r" } })),
        ("contact", json!({ "page": "https://user@doors.example/" })),
    ] {
        let mut document = demo("profiles/prairie.json");
        document[key] = value;
        assert!(PROFILE.is_valid(&document), "{key}");
        assert!(profile::parse(&document.to_string()).is_err(), "{key}");
    }
}
