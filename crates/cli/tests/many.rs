//! Many at once: tables, lists, columns put right, several processors, spreadsheets.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod run;

use std::fmt::Write as _;

use run::{demo, golden, lines, run, run_with, scratch};

const TABLE: &str = "Order #,Truck,Width (in),Sill to header,Header depth,Bow\r\n\
    A-1,Demo 1,92 3/16,101 1/2,9 1/2,1 1/4\r\n\
    A-2,=cmd(),92 3/16,101 1/2,9 1/2,10\r\n\
    A-3,\"two\r\nlines\",92 3/16,101 1/2\r\n\
    ,,,,,\r\n\
    A-4,,so wide,101 1/2,9 1/2,1 1/4\r\n";

#[test]
fn a_table_is_checked_row_by_row() {
    let file = scratch("orders.csv", TABLE);
    let done = run(&["check", file.path()]);
    assert_eq!((done.code, done.stderr.as_str()), (0, ""));
    let told = lines(&done.stdout);
    let known: Vec<_> = told.iter().map(|answer| (&answer["line"], &answer["id"])).collect();
    let json = |line: u64, id: &str| (line.into(), id.into());
    let expected: Vec<(serde_json::Value, serde_json::Value)> =
        vec![json(2, "A-1"), json(3, "A-2"), json(4, "A-3"), json(7, "A-4")];
    assert_eq!(known, expected.iter().map(|(line, id)| (line, id)).collect::<Vec<_>>());
    assert_eq!(told[0]["verdict"], "clear");
    assert_eq!(told[1]["findings"][0]["rule"], "bow-fills-header");
    assert_eq!(told[2]["error"]["code"], "field-count");
    assert_eq!(told[3]["findings"][0]["rule"], "unreadable");
    golden("many-table.txt", &run(&["check", "--output", "table", file.path()]).stdout);
    golden(
        "many-color.txt",
        &run(&["check", "--output", "table", "--color", "always", file.path()]).stdout,
    );
    assert_eq!(run(&["check", file.path(), "--fail-on", "stop"]).code, 1);
}

#[test]
fn the_answers_open_in_a_spreadsheet_and_nothing_calculates() {
    let done = run_with(&["check", "--csv"], TABLE);
    golden("many.csv", &done.stdout);
    let head = done.stdout.lines().next().unwrap();
    assert_eq!(
        head,
        "line,id,vehicle,verdict,unit,width,height,header,bow,findings,suspect,slip,meant,ask,says"
    );
    assert!(done.stdout.contains(",\"'=cmd()\","));
    // From any input, the refused line among the answers.
    let surveys = std::fs::read_to_string(demo("surveys.jsonl")).unwrap() + "{\"id\":\"=1+1\"}\n";
    let done = run_with(&["check", "--csv"], &surveys);
    let last = done.stdout.lines().last().unwrap();
    assert_eq!(last, "4,\"'=1+1\",,unread,,,,,,,,,,,\"The input has no \"\"format\"\".\"");
    let both = run(&["check", "--csv", "--output", "json", &demo("surveys.jsonl")]);
    assert_eq!(both.code, 2, "one form at a time");
}

/// The page is held to the same files (`crates/page/tests/many.rs`).
#[test]
fn the_demo_orders_as_a_table() {
    for (file, name) in [
        ("orders.csv", "demo-orders.csv"),
        ("surveys.jsonl", "demo-surveys.csv"),
        ("links.txt", "demo-links.csv"),
    ] {
        golden(name, &run(&["check", "--csv", &demo(file)]).stdout);
    }
}

/// However the table comes, and whichever command reads it.
#[test]
fn a_number_beside_a_link_is_held_against_it() {
    let links = std::fs::read_to_string(demo("links.txt")).unwrap();
    let link = links.lines().next().unwrap();
    let width = |width: &str| format!("id,width,link\nA-17,{width},{link}\n");
    let number = lines(&run(&["check", &demo("links.txt")]).stdout)[0]["order"]["width"]["text"]
        .as_str()
        .unwrap()
        .to_owned();
    for command in [&["check"][..], &["open", "-"], &["link"]] {
        let done = run_with(command, &width("80 in"));
        assert_eq!(lines(&done.stdout)[0]["error"]["code"], "differs-from-link", "{command:?}");
        for same in [number.as_str(), ""] {
            let done = run_with(command, &width(same));
            assert!(lines(&done.stdout)[0]["error"].is_null(), "{command:?}: {}", done.stdout);
        }
    }
}

/// A dealer's numbers are the dealer's, whichever command they come to: a header is built down to
/// the dealer's least, and ordered so.
#[test]
fn a_dealers_table_is_held_against_the_dealers_numbers_by_every_command() {
    let deeper = scratch(
        "deeper.json",
        r#"{"format":"hangtrue-profile/1","name":"Invented Doors","revision":1,
            "limits":{"header":{"least":"11 in","reason":"our track takes 11 in"}}}"#,
    );
    let survey = |width: &str| {
        format!("id,width,height,header,bow,prepared\nA-17,{width},101 1/2,6,1 1/4,no\n")
    };
    let by = ["--profile", deeper.path()];
    let linked = lines(&run_with(&[&["link"][..], &by].concat(), &survey("92")).stdout);
    let opened = run(&["open", linked[0]["link"].as_str().unwrap()]);
    assert_eq!(lines(&opened.stdout)[0]["order"]["profile"]["name"], "Invented Doors");
    let table = |height: &str| {
        let link = linked[0]["link"].as_str().unwrap();
        format!("id,height,link\nA-17,{height},{link}\n")
    };
    for command in [&["check"][..], &["open", "-"], &["link"], &["code", "-"]] {
        let error = |text: &str, args: &[&str]| {
            lines(&run_with(&[command, args].concat(), text).stdout)[0]["error"]["code"].clone()
        };
        // Built in 7 in, here 11: the height is lowered by as much.
        assert!(error(&table("96 1/2"), &by).is_null(), "{command:?}");
        assert_eq!(error(&table("100 1/2"), &by), "differs-from-link", "{command:?}");
        assert!(error(&table("100 1/2"), &[]).is_null(), "{command:?}");
        assert_eq!(error(&table("96 1/2"), &[]), "differs-from-link", "{command:?}");
    }
    let said = |args: &[&str]| {
        lines(&run_with(&[&["code"], args].concat(), &table("")).stdout)[0]["check"].clone()
    };
    assert_ne!(said(&by), said(&[]));
    let file = scratch("deeper.csv", &table("96 1/2"));
    let compare = ["compare", file.path(), file.path()];
    assert_eq!(run(&[&compare[..], &by].concat()).code, 0);
    assert_eq!(run(&compare).code, 2);
}

#[test]
fn columns_are_told_and_put_right() {
    let text = "Ref;Breite;Hoehe;Sturz;Bogen\nT-1;2345;2566;242;32\n";
    let guessed = run_with(&["check", "--columns"], text);
    let told = lines(&guessed.stdout);
    assert_eq!((&told[0]["what"], &told[1]["what"]), (&"id".into(), &"ignored".into()));
    let refused = lines(&run_with(&["check"], text).stdout);
    assert_eq!(refused[0]["error"]["code"], "no-reading");
    let right = [
        "--column",
        "breite=width",
        "--column",
        "3=height.left",
        "--column",
        "Sturz=header:mm",
        "--column",
        "Bogen=bow.first",
        "--unit",
        "mm",
    ];
    let mut args = vec!["check"];
    args.extend(right);
    let done = run_with(&args, text);
    let answer = &lines(&done.stdout)[0];
    assert_eq!(answer["order"]["width"]["text"], "2345 mm");
    assert_eq!(answer["order"]["header"]["nm"], 242_000_000);
    args.push("--columns");
    let told = run_with(&args, text);
    assert_eq!(lines(&told.stdout)[1]["what"], "width.middle");
    golden(
        "many-columns.txt",
        &run(&["check", "--columns", "--output", "table", &demo("orders.csv")]).stdout,
    );

    for (args, says) in [
        (
            vec!["check", "--column", "Tiefe=header"],
            "there is no column “Tiefe”: write one of these names, or a number from 1 to 5: Ref, Breite",
        ),
        (vec!["check", "--column", "9=header"], "there is no column “9”"),
        (vec!["check", "--column", "Breite=breadth"], "“breadth” is not known"),
        (vec!["check", "--column", "Breite"], "there is no = in it"),
        (vec!["check", "--columns", "--format", "links"], "is no table: only a table has columns"),
        (
            vec!["check", "--unit", "mm", "--format", "json"],
            "is read as JSON, and --column and --unit are for tables",
        ),
    ] {
        let done = run_with(&args, text);
        assert_eq!((done.code, done.stdout.as_str()), (2, ""), "{args:?}");
        assert!(done.stderr.contains(says), "{args:?}: {}", done.stderr);
    }
}

#[test]
fn a_list_of_links_has_its_damaged_ones_told() {
    let links = std::fs::read_to_string(demo("links.txt")).unwrap();
    let damaged = links.replacen("#1X8C", "#1X8D", 1) + "\nno link here\n";
    let told = lines(&run_with(&["check"], &damaged).stdout);
    assert_eq!(told.len(), 4);
    assert_eq!(told[0]["error"]["code"], "changed");
    assert_eq!(told[1]["verdict"], "recheck");
    assert_eq!((&told[3]["line"], &told[3]["error"]["code"]), (&5.into(), &"no-link".into()));
}

#[test]
fn a_whole_file_of_json_is_one_order_and_says_where_it_breaks() {
    let order = std::fs::read_to_string(demo("demo-2.json")).unwrap();
    let told = lines(&run_with(&["check"], &order).stdout);
    assert_eq!((told.len(), &told[0]["id"]), (1, &"demo-2".into()));
    let broken = order.replacen("true,", "true;", 1);
    let told = lines(&run_with(&["check"], &broken).stdout);
    let message = told[0]["error"]["message"].as_str().unwrap();
    assert!(
        message.starts_with("The file is not JSON: ") && message.contains("at line 5"),
        "{message}"
    );
    let lists = lines(&run_with(&["check"], "[\n]\n").stdout);
    assert_eq!(lists[0]["error"]["message"], "The input is a list; an object is expected.");
}

#[test]
fn other_encodings_are_named_and_an_empty_table_is_told() {
    let file = scratch("utf16.csv", "");
    std::fs::write(file.path(), [0xff, 0xfe, b'a', 0, b',', 0]).unwrap();
    let done = run(&["check", file.path()]);
    assert_eq!(done.code, 2);
    assert!(done.stderr.contains("is UTF-16: save it as UTF-8"), "{}", done.stderr);
    let empty = scratch("empty.csv", "\n\n");
    let done = run(&["check", empty.path()]);
    assert_eq!(done.code, 2);
    assert!(done.stderr.contains("There is nothing in it."), "{}", done.stderr);
}

/// Surveys enough for several batches, of every kind, some of them none.
fn surveys(count: usize) -> String {
    let demo: Vec<String> = std::fs::read_to_string(demo("surveys.jsonl"))
        .unwrap()
        .lines()
        .map(str::to_owned)
        .collect();
    let mut text = String::new();
    for n in 0..count {
        match n % 7 {
            5 => writeln!(text, "{{\"id\":{n}}}").unwrap(),
            6 => writeln!(text, "oops {n}\n").unwrap(),
            _ => writeln!(text, "{}", demo[n % 3].replace("demo-", &format!("{n}-"))).unwrap(),
        }
    }
    text
}

#[test]
fn the_answers_are_the_same_on_any_number_of_processors() {
    // More than a batch.
    let text = surveys(1200);
    let one = run_with(&["check", "--jobs", "1"], &text);
    assert_eq!(one.stdout.lines().count(), 1200);
    assert!(run_with(&["check", "--jobs", "3"], &text).stdout == one.stdout);
    // A table too; and as a table for a spreadsheet.
    let mut table = String::from("id,width,height,header,bow\n");
    for n in 0..1200 {
        writeln!(table, "{n},{} 3/16,101 1/2,9 1/2,\"1 1/{}\"", 90 + n % 9, 2 << (n % 4)).unwrap();
    }
    let one = run_with(&["check", "--csv", "-j1"], &table).stdout;
    assert_eq!(one.lines().count(), 1201);
    assert!(run_with(&["check", "--csv"], &table).stdout == one);
    assert_eq!(run_with(&["check", "--jobs", "0"], "").code, 2);
}
