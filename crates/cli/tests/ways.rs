//! The three demo orders by every way: whatever they come as, the answers are the same.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod run;

use run::{demo, golden, lines, pretty, run, run_with};
use serde_json::Value;

/// The answers without what only one way knows.
fn answers(out: &str) -> Vec<Value> {
    let mut answers = lines(out);
    for answer in &mut answers {
        let object = answer.as_object_mut().unwrap();
        object.remove("id");
        object.remove("line");
        assert!(object.contains_key("verdict"), "{object:?}");
    }
    answers
}

/// The surveys, one by one.
fn surveys() -> Vec<String> {
    let all = std::fs::read_to_string(demo("surveys.jsonl")).unwrap();
    all.lines().map(str::to_owned).collect()
}

#[test]
fn every_way_in_comes_to_the_same_answers() {
    let expected = answers(&run(&["check", &demo("surveys.jsonl")]).stdout);
    assert_eq!(expected.len(), 3);
    assert_eq!(answers(&run(&["check", &demo("orders.csv")]).stdout), expected);
    assert_eq!(answers(&run(&["check", &demo("links.txt")]).stdout), expected);
    assert_eq!(answers(&run(&["check", &demo("demo-2.json")]).stdout), expected[1..2]);

    let files = run(&["open", "--order", &demo("surveys.jsonl")]).stdout;
    assert_eq!(answers(&run_with(&["check"], &files).stdout), expected);
    let plain = run(&["link", "--plain", &demo("surveys.jsonl")]).stdout;
    assert_eq!(answers(&run_with(&["check"], &plain).stdout), expected);
    // A column of links, and any separator.
    let column: String =
        (1..).zip(plain.lines()).map(|(n, link)| format!("{n};{link}\n")).collect();
    let done = run_with(&["check", "--format", "csv"], &format!("\u{feff}Nr;Link\n{column}"));
    assert_eq!(answers(&done.stdout), expected);
    let spaced = std::fs::read_to_string(demo("orders.csv")).unwrap().replace(',', "\t");
    assert_eq!(answers(&run_with(&["check"], &spaced).stdout), expected);
}

#[test]
fn a_link_brings_back_what_was_sent() {
    let links = run(&["link", "--base", "https://dealer.example/door", &demo("surveys.jsonl")]);
    assert_eq!((links.code, links.stderr.as_str()), (0, ""));
    let written = std::fs::read_to_string(demo("links.txt")).unwrap();
    for (survey, (link, message)) in
        surveys().iter().zip(lines(&links.stdout).iter().zip(written.lines()))
    {
        let survey: Value = serde_json::from_str(survey).unwrap();
        let link_text = link["link"].as_str().unwrap();
        assert_eq!(link["id"], survey["id"]);
        assert!(message.ends_with(link_text), "links.txt has {message}");
        // As a link, alone after the #, in lower case, quoted and broken by a mail.
        let payload = link_text.split_once('#').unwrap().1;
        let (head, tail) = link_text.split_at(link_text.len() - 20);
        for way in [
            link_text.to_owned(),
            payload.to_owned(),
            payload.to_lowercase(),
            format!("> Hello,\n> it is {head}=\n> {tail}.\n> Bye"),
        ] {
            let opened = run(&["open", &way]);
            assert_eq!(opened.code, 0, "{way}");
            assert_eq!(run_with(&["open"], &way).stdout, opened.stdout, "{way}");
            let opened: Value = serde_json::from_str(&opened.stdout).unwrap();
            assert_eq!(opened["order"]["readings"], survey["readings"]);
            assert_eq!(opened["order"]["unit"], survey["unit"]);
            assert_eq!(opened["order"]["prepared"], survey["prepared"]);
            assert_eq!(opened["order"]["verdict"], opened["check"]["verdict"]);
        }
    }
}

#[test]
fn thirty_characters_bring_the_four_numbers() {
    for survey in surveys() {
        let given = run_with(&["code"], &survey);
        let given: Value = serde_json::from_str(&given.stdout).unwrap();
        let small = given["small"].as_str().unwrap();
        assert_eq!(small.len(), 30);
        let numbers = &answers(&run_with(&["check"], &survey).stdout)[0]["order"];
        for way in [["open", small].as_slice(), &["code", "--heard", small]] {
            let opened = run(way);
            assert_eq!(opened.code, 0, "{way:?}");
            let opened: Value = serde_json::from_str(&opened.stdout).unwrap();
            for dimension in ["width", "height", "header", "bow"] {
                // As they were found: building is worked out anew from the posts.
                assert_eq!(
                    opened["check"]["order"][dimension]["nm"], numbers[dimension]["nm"],
                    "{dimension}"
                );
            }
            assert_eq!(opened["check"]["order"]["width"]["text"], numbers["width"]["text"]);
        }
    }
}

#[test]
fn an_order_opens_as_a_sheet_a_file_and_a_mail() {
    let table = run(&["open", "--output", "table", &demo("links.txt")]);
    assert_eq!(table.code, 0);
    golden("open-table.txt", &table.stdout);
    let file = run(&["open", "--order", &demo("demo-2.json")]);
    let written: Value =
        serde_json::from_str(&std::fs::read_to_string(demo("demo-2.json")).unwrap()).unwrap();
    assert_eq!(serde_json::from_str::<Value>(&file.stdout).unwrap(), written);
    golden("open-summary.txt", &run(&["open", "--summary", &demo("surveys.jsonl")]).stdout);
    let json = run(&["open", &demo("demo-2.json")]);
    let mut json: Value = serde_json::from_str(&json.stdout).unwrap();
    json["check"]["adjusted"].take();
    golden("open.json", &pretty(&json));
    golden("link.jsonl", &run(&["link", &demo("surveys.jsonl")]).stdout);
}

#[test]
fn what_the_sender_saw_and_confirmed_is_shown_beside_what_is_found_now() {
    let order = std::fs::read_to_string(demo("demo-2.json")).unwrap();
    let order = order.replace(
        r#""verdict": "recheck""#,
        r#""verdict": "clear","confirmed":[{"rule":"slip","reading":"header.center"}],
           "vehicle":"unit \u001b[2J 27","note":"Dock side\nis bent.","date":"2026-11-25",
           "profile":{"name":"Demo Doors","revision":4},"old_door_in":true,
           "answers":[{"question":"side-seals","answer":"yes"}]"#,
    );
    let sheet = run_with(&["open", "--output", "table"], &order);
    golden("open-claimed.txt", &sheet.stdout);
    assert!(sheet.stdout.contains("The writer saw: clear."));
    assert!(sheet.stdout.contains("(The writer confirmed it.)"));
    assert!(!sheet.stdout.contains('\u{1b}'), "nothing steers the terminal");
}

#[test]
fn what_is_no_order_is_said_and_the_next_one_is_opened() {
    let link = std::fs::read_to_string(demo("links.txt")).unwrap();
    let first = link.lines().next().unwrap();
    let cut = &first[..first.len() - 2];
    let done = run(&["open", cut, "hello", first]);
    assert_eq!(done.code, 1);
    let told = lines(&done.stdout);
    assert_eq!(told[0]["error"]["code"], "cut");
    assert!(told[0]["error"]["message"].as_str().unwrap().contains("2 seem to be missing"));
    assert_eq!(told[1]["error"]["code"], "no-link");
    assert_eq!(told[2]["check"]["verdict"], "clear");
    let table = run(&["open", "--output", "table", cut]);
    assert!(table.stdout.contains("The link is damaged"));

    let missing = run(&["open", "orders/nowhere.json"]);
    assert_eq!(missing.code, 2);
    assert!(missing.stderr.starts_with("hangtrue: opening orders/nowhere.json: "));
    let long = "x".repeat(600);
    let note = format!(
        "{{\"format\":\"hangtrue-order/1\",\"unit\":\"in\",\"readings\":{{}},\"note\":\"{}\"}}",
        long.repeat(10)
    );
    let refused = run_with(&["link"], &note);
    assert_eq!(refused.code, 1);
    let told = &lines(&refused.stdout)[0]["error"];
    assert_eq!(told["code"], "too-long");
    assert!(told["message"].as_str().unwrap().contains("4096 characters"), "{told}");
    let plain = run_with(&["link", "--plain"], &note);
    assert_eq!((plain.code, plain.stdout.as_str()), (1, ""));
    assert!(plain.stderr.starts_with("hangtrue: line 1: The texts of this order need more"));
}

#[test]
fn two_different_orders_in_one_text_are_none_and_the_same_twice_is_one() {
    let links = std::fs::read_to_string(demo("links.txt")).unwrap();
    let [first, second, ..] = links.lines().collect::<Vec<_>>()[..] else { panic!("{links}") };
    let corrected = format!("First order, now wrong: {first} Corrected: {second} Thanks, Kim");
    // A first line with commas and no link is no table's, either.
    for text in [&corrected, &format!("Hello, Kim,\n{corrected}\n")] {
        for done in [run(&["open", text]), run_with(&["open", "-"], text)] {
            assert_eq!(done.code, 1, "{text}");
            assert_eq!(lines(&done.stdout)[0]["error"]["code"], "two-orders");
            assert!(done.stdout.contains("two order links"), "{}", done.stdout);
        }
    }
    let checked = run_with(&["check"], &corrected);
    assert!(checked.stdout.contains("two order links"), "{}", checked.stdout);

    let quoted = format!("See {first}, please\n> {first}\n");
    let done = run(&["open", &quoted]);
    assert_eq!((done.code, lines(&done.stdout).len()), (0, 1), "{}", done.stdout);
    assert_eq!(lines(&done.stdout)[0]["check"]["verdict"], "clear");
}

#[test]
fn a_base_address_is_an_address() {
    for base in ["dealer.example", "https://", "https://dealer.example/a b", "javascript:alert(1)"]
    {
        let done = run(&["link", "--base", base, &demo("surveys.jsonl")]);
        assert_eq!((done.code, done.stdout.as_str()), (2, ""), "{base}");
        assert!(done.stderr.contains("address"), "{}", done.stderr);
    }
}

#[cfg(unix)]
#[test]
fn a_pipe_with_a_name_is_read_like_a_file() {
    // What a shell makes of `hangtrue open <(cat links.txt)`.
    let done =
        run_with(&["open", "/dev/stdin"], &std::fs::read_to_string(demo("links.txt")).unwrap());
    assert_eq!((done.code, done.stderr.as_str()), (0, ""));
    assert_eq!(lines(&done.stdout).len(), 3);
}

#[test]
fn the_record_of_a_hung_door_is_named_as_such_and_refused() {
    let record =
        hangtrue_core::hang::record::Record { serial: "HT-0042".to_owned(), ..Default::default() };
    let link =
        hangtrue_link::record::url("https://dealer.example/doors/hang.html", &record).unwrap();
    let done = run(&["open", &link]);
    assert_eq!(done.code, run(&["open", &link[..link.len() - 2]]).code, "as other links refused");
    assert_ne!(done.code, 0);
    let [refusal] = &lines(&done.stdout)[..] else { panic!("{}", done.stdout) };
    let text = refusal.to_string();
    assert!(text.contains("door-record") && text.contains("hang.html"), "{text}");
    assert!(!text.contains("newer version"), "{text}");
}
