//! Held to `serde_json`: what one reads the other reads, as the same.

use proptest::prelude::*;
use serde_json::Value as Outside;

use super::*;

/// The tree as `serde_json` has it. A key that comes twice has its last value there.
fn outside(node: &Node<'_>) -> Outside {
    match &node.value {
        Value::Null => Outside::Null,
        Value::Bool(value) => Outside::Bool(*value),
        Value::Number(number) => serde_json::from_str(number.as_str()).unwrap(),
        Value::Text(text) => Outside::String(text.as_ref().to_owned()),
        Value::List(items) => Outside::Array(items.iter().map(outside).collect()),
        Value::Object(entries) => Outside::Object(
            entries
                .iter()
                .map(|entry| (entry.key.as_ref().to_owned(), outside(&entry.node)))
                .collect(),
        ),
    }
}

fn tree() -> impl Strategy<Value = Outside> {
    let leaf = prop_oneof![
        Just(Outside::Null),
        any::<bool>().prop_map(Outside::Bool),
        any::<i64>().prop_map(Outside::from),
        any::<u64>().prop_map(Outside::from),
        any::<f64>()
            .prop_filter_map("finite", serde_json::Number::from_f64)
            .prop_map(Outside::Number),
        "\\PC*|[\\x00-\\x20\"\\\\/😀é]*".prop_map(Outside::String),
    ];
    leaf.prop_recursive(6, 60, 6, |inner| {
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Outside::Array),
            prop::collection::vec((".{0,4}", inner), 0..6)
                .prop_map(|entries| Outside::Object(entries.into_iter().collect())),
        ]
    })
}

/// The places of a tree stand in their parents' and hold what they should.
fn places_hold(text: &str, node: &Node<'_>) {
    let own = &text[node.at.clone()];
    assert_eq!(parse(own).as_ref(), Ok(node), "{own}");
    let inner: Vec<&Node<'_>> = match &node.value {
        Value::List(items) => items.iter().collect(),
        Value::Object(entries) => entries.iter().map(|entry| &entry.node).collect(),
        _ => Vec::new(),
    };
    let mut from = node.at.start;
    for child in inner {
        assert!(from < child.at.start && child.at.end < node.at.end);
        from = child.at.end;
        places_hold(text, child);
    }
}

/// Both read it, as the same, or neither does.
fn agree(text: &str) {
    match (parse(text), serde_json::from_str::<Outside>(text)) {
        (Ok(node), Ok(value)) => assert_eq!(outside(&node), value, "{text}"),
        (Err(_), Err(_)) => {}
        // A number that no double holds is still a number here.
        (Ok(_), Err(error)) => assert!(error.to_string().contains("out of range"), "{text}"),
        (Err(wrong), Ok(_)) => panic!("{wrong:?} in {text}"),
    }
}

proptest! {
    #[test]
    fn what_the_other_writes_is_read_and_written_the_same(value in tree()) {
        for (text, write) in [
            (serde_json::to_string(&value).unwrap(), print as fn(&Node<'_>) -> String),
            (serde_json::to_string_pretty(&value).unwrap(), pretty),
        ] {
            let node = parse(&text).unwrap();
            prop_assert_eq!(outside(&node), serde_json::from_str::<Outside>(&text).unwrap());
            prop_assert_eq!(write(&node), text.clone());
            places_hold(&text, &node);
        }
    }

    /// Any text, and any of the letters that JSON is made of.
    #[test]
    fn both_read_the_same_texts(text in ".{0,30}|[\\[\\]{},:\"\\\\u0-9a-f.eE+\\- \\t\\ntrueflsn]{0,24}") {
        agree(&text);
    }

    #[test]
    fn both_read_the_same_changed_texts(value in tree(), at in any::<prop::sample::Index>(), cut in 0..4_usize, put in ".{0,3}") {
        let text: Vec<char> = serde_json::to_string(&value).unwrap().chars().collect();
        let at = at.index(text.len());
        let end = (at + cut).min(text.len());
        let changed: String = text[..at].iter().copied().chain(put.chars()).chain(text[end..].iter().copied()).collect();
        agree(&changed);
    }

    /// To fifteen digits the nearest double; beyond, nearly so.
    #[test]
    fn a_number_is_worth_the_same(whole in 0..1_000_000_000_u64, part in "[0-9]{1,6}", exponent in -16..=16_i32, long in "-?[1-9][0-9]{0,30}(\\.[0-9]{1,30})?(e[+-]?[0-9]{1,3})?") {
        let worth = |text: &str| {
            let Value::Number(number) = parse(text).unwrap().value else { panic!("{text}") };
            number.as_f64()
        };
        let short = format!("{whole}.{part}e{exponent}");
        prop_assert_eq!(worth(&short), short.parse::<f64>().ok());
        let exact: f64 = long.parse().unwrap();
        match worth(&long) {
            Some(near) if exact.abs() > 1e-290 => {
                prop_assert!((near - exact).abs() <= exact.abs() * 1e-13, "{} {}", near, exact);
            }
            Some(near) => prop_assert!((near - exact).abs() < 1e-290),
            None => prop_assert!(exact.abs() > 1e307),
        }
    }
}

#[test]
fn a_number_is_kept_as_it_was_written() {
    for (text, whole) in [
        ("0", Some(0)),
        ("7", Some(7)),
        ("18446744073709551615", Some(u64::MAX)),
        ("18446744073709551616", None),
        ("-1", None),
        ("1.0", None),
        ("1e2", None),
        ("-0", None),
    ] {
        let node = parse(text).unwrap();
        assert_eq!(print(&node), text);
        let Value::Number(number) = node.value else { panic!() };
        assert_eq!(number.as_u64(), whole, "{text}");
    }
}

#[test]
fn what_is_escaped_is_read_as_what_it_stands_for() {
    for (text, letters) in [
        (r#""\u0041\u00e9\u00E9""#, "Aéé"),
        (r#""\"\\\/\b\f\n\r\t""#, "\"\\/\u{8}\u{c}\n\r\t"),
        (r#""\ud83d\ude00""#, "😀"),
        (r#""x\ud800\udc00y""#, "x\u{10000}y"),
        (r#""\udbff\udfff""#, "\u{10ffff}"),
        (r#""\ud7ff\ue000\uffff""#, "\u{d7ff}\u{e000}\u{ffff}"),
    ] {
        assert_eq!(parse(text).unwrap().as_text(), Some(letters));
        agree(text);
    }
    assert_eq!(parse("7").unwrap().as_text(), None);
    assert_ne!(parse("7").unwrap(), parse("8").unwrap());
}

#[test]
fn what_is_wrong_is_named_with_its_byte() {
    let long = "x".repeat(MOST + 1);
    let deep = "[".repeat(DEPTH_MOST + 1);
    for (text, at, what) in [
        ("", 0, Syntax::Value),
        (" tru", 1, Syntax::Value),
        ("\u{feff}1", 0, Syntax::Value),
        ("[1,]", 3, Syntax::Value),
        ("{\"a\":1,}", 7, Syntax::Key),
        ("{a:1}", 1, Syntax::Key),
        ("{\"a\" 1}", 5, Syntax::Colon),
        ("[1 2]", 3, Syntax::Comma { end: ']' }),
        ("{\"a\":1", 6, Syntax::Comma { end: '}' }),
        ("1 2", 2, Syntax::After),
        ("\"abc", 4, Syntax::Open),
        ("\"a\nb\"", 2, Syntax::Control),
        ("\"a\\x\"", 2, Syntax::Escape),
        ("\"\\u00g0\"", 1, Syntax::Escape),
        ("\"\\ud800\"", 1, Syntax::Surrogate),
        ("\"\\ud800\\u0041\"", 1, Syntax::Surrogate),
        ("\"\\udc00\"", 1, Syntax::Surrogate),
        ("\"\\ud800\\udbff\"", 1, Syntax::Surrogate),
        ("\"\\ud800\\ue000\"", 1, Syntax::Surrogate),
        ("007", 1, Syntax::Number),
        ("-", 1, Syntax::Number),
        ("1.", 2, Syntax::Number),
        ("1e+", 3, Syntax::Number),
        (&long, 0, Syntax::Long { most: MOST }),
        (&deep, DEPTH_MOST, Syntax::Deep { most: DEPTH_MOST }),
    ] {
        assert_eq!(parse(text), Err(Wrong { at, what }), "{text:.40}");
    }
    let deepest = ["[".repeat(DEPTH_MOST), "]".repeat(DEPTH_MOST)].concat();
    assert!(parse(&deepest).is_ok());
    assert!(parse(&" ".repeat(MOST - 1).replacen("", "1", 1)).is_ok());
}

#[test]
fn a_key_that_comes_twice_is_seen_twice_and_places_are_people_s() {
    let text = "{\n  \"é\": 1,\n  \"é\": x }";
    assert_eq!(line_and_column(text, parse(text).unwrap_err().at), (3, 8));
    let twice = parse("{\"a\":1,\"a\":2}").unwrap();
    assert!(matches!(&twice.value, Value::Object(entries) if entries.len() == 2));
    assert_eq!(twice.get("a"), parse("1").as_ref().ok());
}
