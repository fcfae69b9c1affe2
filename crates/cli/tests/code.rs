//! An order over the telephone.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod run;

use run::{demo, golden, lines, run};
use serde_json::Value;

const NUMBERS: [&str; 4] = ["92 3/16", "101 1/2", "9 1/2", "1 1/4"];

/// What `--heard` says, and its exit code.
fn heard(characters: &str, numbers: [&str; 4], more: &[&str]) -> (i32, Value) {
    let mut args = vec!["code", "--heard", characters];
    args.extend(more);
    args.extend(numbers);
    let done = run(&args);
    assert_eq!(done.stderr, "", "{args:?}");
    (done.code, serde_json::from_str(&done.stdout).unwrap())
}

fn check_characters() -> String {
    let mut args = vec!["code"];
    args.extend(NUMBERS);
    let given = run(&args);
    assert_eq!(given.code, 0);
    lines(&given.stdout)[0]["check"].as_str().unwrap().to_owned()
}

#[test]
fn the_script_is_given_in_three_languages() {
    for language in ["en", "es", "fr"] {
        let args = ["code", "--language", language, &demo("surveys.jsonl")];
        golden(&format!("code-{language}.jsonl"), &run(&args).stdout);
    }
    golden("code-table.txt", &run(&["code", "--output", "table", &demo("surveys.jsonl")]).stdout);
}

#[test]
fn what_was_heard_right_agrees_however_it_is_written() {
    let characters = check_characters();
    let words = run(&["code", &demo("surveys.jsonl")]);
    let script = lines(&words.stdout)[0]["script"][5].as_str().unwrap().to_owned();
    let spelled = script.strip_prefix("The six check characters: ").unwrap();
    for way in [&characters, &characters.to_lowercase(), spelled] {
        let (code, told) = heard(way, NUMBERS, &[]);
        assert_eq!((code, told["outcome"].as_str()), (0, Some("agrees")), "{way}");
    }
    // Against the whole order in place of four numbers.
    let done = run(&["code", "--heard", &characters, &demo("demo-2.json")]);
    assert_eq!(done.code, 1);
}

#[test]
fn a_misheard_number_is_named_with_what_it_probably_was() {
    let characters = check_characters();
    // Every number by itself, in many ways; two at once.
    for (at, dimension) in ["width", "height", "header", "bow"].into_iter().enumerate() {
        for wrong in ["95 3/16", "105 1/2", "5 1/2", "1 3/4", "92 5/16", "101", "?"] {
            let mut numbers = NUMBERS;
            numbers[at] = wrong;
            if wrong == NUMBERS[at] {
                continue;
            }
            let (code, told) = heard(&characters, numbers, &[]);
            assert_eq!((code, told["outcome"].as_str()), (1, Some("differs")), "{numbers:?}");
            let misheard = told["misheard"].as_array().unwrap();
            assert_eq!((misheard.len(), misheard[0]["what"].as_str()), (1, Some(dimension)));
            let likely = misheard[0]["likely"].as_array().unwrap();
            let said = [NUMBERS[at], " in"].concat();
            assert!(
                likely.iter().any(|likely| *likely == said.as_str()),
                "{numbers:?}: {likely:?}"
            );
        }
    }
    let table = |characters: &str, numbers: [&str; 4], more: &[&str]| {
        let mut args = vec!["code", "--output", "table", "--heard", characters];
        args.extend(more);
        args.extend(numbers);
        run(&args).stdout
    };
    let mut told = table(&characters, ["92 3/16", "105 1/2", "5 1/2", "1 1/4"], &[]);
    told += &table(&characters, NUMBERS, &["--build"]);
    told += &table(&["?", &characters[1..]].concat(), NUMBERS, &[]);
    told += &table("000000", NUMBERS, &[]);
    golden("code-heard.txt", &told);
}

#[test]
fn thirty_misheard_characters_are_a_proposal_or_refused() {
    let given = run(&["code", &demo("surveys.jsonl")]);
    let small = lines(&given.stdout)[0]["small"].as_str().unwrap().to_owned();
    let two = ["??", &small[2..]].concat();
    let proposal = run(&["code", "--heard", &two]);
    assert_eq!(proposal.code, 1);
    let told: Value = serde_json::from_str(&proposal.stdout).unwrap();
    assert_eq!(told["corrected"], serde_json::json!([1, 2]));
    assert_eq!(told["check"]["order"]["width"]["text"], "92 3/16 in");
    let sheet = run(&["code", "--output", "table", "--heard", &two]).stdout;
    assert!(sheet.contains("Characters 1 and 2 of the thirty were misheard"), "{sheet}");
    // Three that were changed are never taken for something else.
    let changed: String = small
        .chars()
        .enumerate()
        .map(|(at, c)| if at % 10 == 4 { if c == '7' { '8' } else { '7' } } else { c })
        .collect();
    let three = run(&["code", "--heard", &changed]);
    assert_eq!(lines(&three.stdout)[0]["error"]["code"], "too-many-misheard");
    assert_eq!(three.code, 1);
}

#[test]
fn what_cannot_be_used_is_said() {
    for (args, says) in [
        (vec!["code", "1", "2", "3"], "there are 3 values: one order is needed, or four numbers"),
        (vec!["code", "--heard", "12", "92"], "--heard has 2 characters: 6 are needed"),
        (vec!["code", "--heard", "ü"], "“ü” is neither letters and digits nor a spelling word"),
        (vec!["code", "wide", "101", "9", "1"], "post-to-post width: "),
        (vec!["code", "--heard", "CJC1NJ", "oops"], "There is no order link in this text."),
    ] {
        let done = run(&args);
        assert_eq!(done.code, 2, "{args:?}");
        assert!(done.stderr.contains(says), "{args:?}: {}", done.stderr);
    }
    let missing = run(&["code", "92", "?", "9", "?"]);
    let told = &lines(&missing.stdout)[0]["error"];
    assert_eq!((missing.code, told["code"].as_str()), (1, Some("missing-number")));
    let says = told["message"].as_str().unwrap();
    assert!(says.ends_with("without a reading: sill-to-header height, roof-bow depth."), "{says}");
    let fine = run(&["code", "92 1/64", "101", "9", "1"]);
    assert_eq!(lines(&fine.stdout)[0]["error"]["code"], "not-whole");
}
