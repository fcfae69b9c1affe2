//! The command as its users call it: the real binary, real pipes.
//!
//! Goldens stand in `tests/goldens/cli`; `HANGTRUE_BLESS=1 cargo test -p hangtrue-cli`
//! writes them anew; look at the difference.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod run;

use run::{demo, golden, pretty, run, run_with};
use serde_json::Value;

#[test]
fn read_answers_line_by_line_in_the_key_order_of_the_specification() {
    let input = "96-3/16\n961/4\n2445mm\n\nninety six and a quarter\r\n96 1/3\n\u{202e}96\n";
    let done = run_with(&["read"], input);
    let lines: Vec<&str> = done.stdout.lines().collect();
    assert_eq!(lines[0], r#"{"text":"96-3/16","nm":2443162500,"canonical":"96 3/16 in"}"#);
    assert!(lines[1].starts_with(r#"{"text":"961/4","error":{"code":"lost-space","message":""#));
    assert!(lines[1].ends_with(r#","suggestions":["96 1/4 in"]}}"#));
    assert_eq!(lines[2], r#"{"text":"2445mm","nm":2445000000,"canonical":"2445 mm"}"#);
    assert_eq!(lines.len(), 7, "one answer a line, the empty one too");
    assert_eq!(done.code, 0);
    golden("read.jsonl", &done.stdout);
    golden("read-mm.jsonl", &run_with(&["read", "--unit", "mm"], "2445\n96 1/4 in\n").stdout);
    golden("read-table.txt", &run_with(&["read", "--output", "table"], input).stdout);
}

#[test]
fn a_reading_longer_than_any_is_refused_and_the_next_one_is_read() {
    let input = format!("{}\n96\n", "9".repeat(3 << 20));
    let done = run_with(&["read"], &input);
    let lines: Vec<&str> = done.stdout.lines().collect();
    assert_eq!(lines.len(), 2);
    assert!(lines[0].contains(r#""error":{"code":"too-long""#), "{:.300}", lines[0]);
    assert!(lines[1].ends_with(r#""canonical":"96 in"}"#));
}

#[test]
fn check_says_of_the_demo_orders_what_it_said() {
    let done = run(&["check", &demo("surveys.jsonl")]);
    assert_eq!((done.code, done.stderr.as_str()), (0, ""));
    // The figures of the adjustment have their own tests; here they would make every
    // change of a constant a change of this file.
    let told: String = done
        .stdout
        .lines()
        .map(|line| {
            let mut answer: Value = serde_json::from_str(line).unwrap();
            let adjusted = answer["adjusted"].take();
            assert!(!adjusted["readings"].as_array().unwrap().is_empty());
            pretty(&answer)
        })
        .collect();
    golden("check.json", &told);
    let table = run(&["check", "--output", "table", &demo("surveys.jsonl")]);
    golden("check-table.txt", &table.stdout);
}

#[test]
fn the_keys_stand_in_the_order_of_the_specification() {
    let done = run(&["check", &demo("surveys.jsonl")]);
    let first = done.stdout.lines().next().unwrap();
    let order = r#"{"id":"demo-1","verdict":"clear","order":{"width":{"nm":2341562500,"text":"92 3/16 in"},"height":{"nm":2578100000,"text":"101 1/2 in"},"header":{"nm":241300000,"text":"9 1/2 in"},"bow":{"nm":31750000,"text":"1 1/4 in"}},"findings":[],"likely":[],"adjusted":{"#;
    assert!(first.starts_with(order), "{first:.400}");
    let second = done.stdout.lines().nth(1).unwrap();
    let finding = r#""findings":[{"severity":"recheck","rule":"slip","readings":["header.center""#;
    assert!(second.contains(finding), "{second:.800}");
    let after = ["\"findings\":", "\"likely\":", "\"adjusted\":", "\"unseen\":", "\"next\":"];
    assert!(after.map(|key| second.find(key).unwrap()).is_sorted());
}

#[test]
fn a_line_that_is_no_survey_is_answered_and_the_next_one_is_read() {
    let input = "oops\n\n{\"id\":7}\n{\"format\":\"hangtrue-survey/1\",\"id\":\"x\",\"unit\":\"in\",\
                 \"readings\":{\"width\":{\"low\":92}}}\n{\"format\":\"hangtrue-survey/1\",\
                 \"id\":\"y\",\"unit\":\"in\",\"readings\":{}}\n";
    let done = run_with(&["check"], input);
    let lines: Vec<&str> = done.stdout.lines().collect();
    assert_eq!(lines.len(), 4, "a blank line is none");
    assert!(lines[0].starts_with(r#"{"id":null,"error":{"code":"not-json","message":"#));
    assert!(lines[1].starts_with(r#"{"id":7,"error":{"code":"missing-key","message":"#));
    let third = r#"{"id":"x","error":{"code":"number-for-text","place":"readings.width.low","#;
    assert!(lines[2].starts_with(third), "{}", lines[2]);
    assert!(lines[3].starts_with(r#"{"id":"y","verdict":"stop","order":{"width":null,"#));
    assert_eq!(done.code, 0);
}

#[test]
fn fail_on_sets_the_exit_code() {
    let file = demo("surveys.jsonl");
    for (args, code) in [
        (vec!["check", &file], 0),
        (vec!["check", &file, "--fail-on", "recheck"], 1),
        (vec!["check", &file, "--fail-on", "stop"], 0),
        (vec!["check", "/nowhere/at/all"], 2),
        (vec!["check", &file, "--fail-on", "note"], 2),
        (vec!["chekc"], 2),
    ] {
        assert_eq!(run(&args).code, code, "{args:?}");
    }
    assert_eq!(run_with(&["check", "--fail-on", "stop"], "{}\n").code, 1, "not a survey");
    let both = run_with(&["check", &file, "-"], &std::fs::read_to_string(&file).unwrap());
    assert_eq!(both.stdout.lines().count(), 6);
    assert!(run(&["check", "/nowhere/at/all"]).stderr.starts_with("hangtrue: opening /nowhere"));
}

#[test]
fn a_reader_that_stops_reading_is_no_error() {
    let survey = std::fs::read_to_string(demo("surveys.jsonl")).unwrap();
    let done = run::cut_short(&["check"], &survey.repeat(2000));
    assert_eq!((done.code, done.stderr.as_str()), (0, ""));
    assert!(done.stdout.starts_with(r#"{"id":"demo-1""#));
}

#[test]
fn a_profile_is_summed_up_or_refused_with_its_place() {
    let done =
        run(&["profile", &demo("../profiles/prairie.json"), &demo("../profiles/boreal.json")]);
    assert_eq!((done.code, done.stderr.as_str()), (0, ""));
    let lines: Vec<Value> =
        done.stdout.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(lines[0]["profile"]["name"], "Prairie Door Works");
    assert_eq!(lines[0]["profile"]["doors"], 2);
    assert_eq!(lines[1]["profile"]["revision"], 12);

    let folder = std::env::temp_dir().join(format!("hangtrue-profile-{}", std::process::id()));
    std::fs::create_dir_all(&folder).unwrap();
    let file = folder.join("bad.json");
    let file = file.to_str().unwrap();
    for (text, place, code) in [
        (r#"{"format":"hangtrue-profile/1","name":"A","revision":0}"#, "revision", "out-of-range"),
        ("{", "", "not-json"),
        (&" ".repeat((256 << 10) + 1), "", "too-long"),
        (&"é".repeat((128 << 10) + 1), "", "too-long"),
    ] {
        std::fs::write(file, text).unwrap();
        let done = run(&["profile", file]);
        let told: Value = serde_json::from_str(&done.stdout).unwrap();
        assert_eq!(done.code, 1);
        assert_eq!(told["error"]["code"], code);
        assert_eq!(told["error"]["place"].as_str().unwrap_or_default(), place);
    }
    assert_eq!(run(&["profile", "no-such-file"]).code, 2);
    assert_eq!(run(&["profile"]).code, 2);
    std::fs::remove_dir_all(&folder).unwrap();
}

#[test]
fn check_goes_by_a_profile() {
    let survey = r#"{"format":"hangtrue-survey/1","unit":"in","prepared":true,"readings":{
        "width":{"middle":"96 1/2"},"height":{"center":"101 1/2"},"header":{"center":"9 1/2"},
        "bow":{"first":"1 1/4"},"loop":{"sill_to_bow":"109 3/4"}}}"#
        .replace('\n', " ");
    let verdict = |arguments: &[&str]| {
        let done = run_with(arguments, &survey);
        let answer: Value = serde_json::from_str(&done.stdout).unwrap();
        (answer["verdict"].as_str().unwrap().to_owned(), done.stdout)
    };
    assert_eq!(verdict(&["check"]).0, "clear");
    let (stopped, said) = verdict(&["check", "--profile", &demo("../profiles/prairie.json")]);
    assert_eq!(stopped, "stop");
    assert!(said.contains("Prairie Door Works says: our widest panel covers a 96 in opening"));
    let refused = run_with(&["check", "--profile", &demo("surveys.jsonl")], &survey);
    assert_eq!(refused.code, 2);
    assert!(refused.stderr.contains("is refused: The profile is not JSON"), "{}", refused.stderr);
}
