//! Two orders for one truck.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod run;

use run::{demo, golden, lines, run, scratch};

/// The second demo order with its header read as it should have been, in a file.
fn reread() -> run::Scratch {
    let order = std::fs::read_to_string(demo("demo-2.json")).unwrap();
    scratch("reread.json", &order.replace(r#""center": "9 3/4""#, r#""center": "8 3/4""#))
}

#[test]
fn what_differs_stands_first_with_the_likely_slip() {
    let reread = reread();
    let done = run(&["compare", &demo("demo-2.json"), reread.path()]);
    assert_eq!((done.code, done.stderr.as_str()), (1, ""));
    let rows = lines(&done.stdout);
    assert_eq!(rows[0]["item"], "header");
    assert_eq!(rows[0]["standing"], "apart");
    assert_eq!(rows[0]["difference"]["text"], "1 in");
    assert_eq!(rows[0]["slip"], "inch-mark");
    let readings: Vec<_> = rows.iter().filter(|row| row["kind"] == "reading").collect();
    assert_eq!(readings[0]["item"], "header.center");
    assert_eq!(readings[1]["standing"], "same");
    golden("compare.jsonl", &done.stdout);
    let table = run(&["compare", "--output", "table", &demo("demo-2.json"), reread.path()]);
    golden("compare-table.txt", &table.stdout);
    let short = run(&["compare", "--differences", &demo("demo-2.json"), reread.path()]);
    // The number, its reading, and what is made of them.
    assert_eq!(lines(&short.stdout).len(), 3);
}

#[test]
fn an_order_agrees_with_itself_by_every_way() {
    let links = std::fs::read_to_string(demo("links.txt")).unwrap();
    let second = links.lines().nth(1).unwrap();
    let done = run(&["compare", "--differences", &demo("demo-2.json"), second]);
    assert_eq!((done.code, done.stdout.as_str()), (0, ""));
    let table = run(&["compare", "--output", "table", second, second]);
    assert!(table.stdout.ends_with("\nThey agree.\n"));
    // Thirty characters carry the four numbers, not every reading.
    let code = run(&["code", second]);
    let small = lines(&code.stdout)[0]["small"].as_str().unwrap().to_owned();
    let table = run(&["compare", "--output", "table", second, &small]);
    assert_eq!(table.code, 1);
    assert!(table.stdout.ends_with("The ordered numbers agree; not everything is in both.\n"));
}

#[test]
fn what_goes_with_the_order_is_compared() {
    let order = std::fs::read_to_string(demo("demo-2.json")).unwrap();
    let other = order.replace(r#""prepared": true"#, r#""prepared": false,"vehicle":"unit 27""#);
    let other = scratch("unprepared.json", &other);
    let done = run(&["compare", "--differences", &demo("demo-2.json"), other.path()]);
    let rows = lines(&done.stdout);
    let told: Vec<_> = rows.iter().map(|row| (&row["item"], &row["standing"])).collect();
    assert!(told.contains(&(&"prepared".into(), &"apart".into())), "{told:?}");
    assert!(told.contains(&(&"vehicle".into(), &"one-only".into())), "{told:?}");
}

/// Another door line, and a reading that nobody can read: they do not agree.
#[test]
fn answers_and_what_could_not_be_read_are_compared() {
    let order = std::fs::read_to_string(demo("demo-2.json")).unwrap();
    let door = |key: &str| {
        format!(r#""prepared": true,"answers":[{{"question":"door","answer":"{key}"}}]"#)
    };
    let with = |key: &str| order.replace(r#""prepared": true"#, &door(key));
    let [rail, high] = [scratch("rail.json", &with("rail")), scratch("high.json", &with("high"))];
    let done = run(&["compare", "--differences", rail.path(), high.path()]);
    let rows = lines(&done.stdout);
    assert_eq!((done.code, rows.len()), (1, 1), "{}", done.stdout);
    assert_eq!((&rows[0]["item"], &rows[0]["standing"]), (&"answers".into(), &"apart".into()));
    let table = run(&["compare", "--output", "table", rail.path(), high.path()]);
    assert!(table.stdout.ends_with("\nThe ordered numbers agree; what goes with them differs.\n"));
    let slip = order.replace(r#""center": "9 3/4""#, r#""center": "9 3/4","left": "9 x""#);
    let slip = scratch("slip.json", &slip);
    let done = run(&["compare", "--differences", &demo("demo-2.json"), slip.path()]);
    let told: Vec<_> = lines(&done.stdout).iter().map(|row| row["item"].clone()).collect();
    assert!(told.contains(&"unreadable".into()) && told.contains(&"verdict".into()), "{told:?}");
}

#[test]
fn what_is_not_one_order_is_refused() {
    let empty = scratch("empty.json", "");
    for (a, says) in [
        (demo("surveys.jsonl"), "holds 3 orders, and one is needed"),
        (demo("nowhere.json"), "hangtrue: opening "),
        ("hello".to_owned(), "hello: There is no order link in this text."),
        (empty.path().to_owned(), "empty.json is empty: name a file"),
    ] {
        let done = run(&["compare", &a, &demo("demo-2.json")]);
        assert_eq!((done.code, done.stdout.as_str()), (2, ""), "{a}");
        assert!(done.stderr.contains(says), "{a}: {}", done.stderr);
    }
}
