//! What is read, what is refused, and where.

use super::*;
use hangtrue_core::profile::{End, Kind, Limited, Take, Words};
use hangtrue_core::say::Language;
use hangtrue_core::{Length, Spot};
use proptest::prelude::*;

/// Most of the format; the other demo profiles hold the rest.
const WHOLE: &str = include_str!("../../../../../demo/profiles/prairie.json");

const SMALL: &str = r#"{"format":"hangtrue-profile/1","name":"Demo","revision":1}"#;

#[test]
fn every_key_has_its_meaning() {
    let profile = parse(WHOLE).unwrap();
    assert_eq!((profile.name.as_str(), profile.revision), ("Prairie Door Works", 4));
    assert_eq!(profile.take, Take::Tightest);
    assert_eq!(profile.step, Some(Length::from_sixteenths(2)));
    assert_eq!(profile.closing, [Spot::LoopSillToBow]);
    let width = profile.limit(Limited::Width);
    assert_eq!(width.most(), Some(Length::from_sixteenths(96 * 16)));
    assert_eq!(width.least(), Limited::Width.built_in()[0].least);
    assert_eq!(profile.rulings.iter().filter(|ruling| ruling.end == End::Least).count(), 2);
    let [rail, high] = profile.doors.as_slice() else { panic!("two doors") };
    assert_eq!(rail.header_least, Some(Length::from_sixteenths(7 * 16 + 8)));
    assert_eq!(rail.panel.weight, Some(10_497)); // 2.15 lb/ft2
    assert_eq!(high.preload_turns, Some(3.0));
    assert_eq!(profile.questions.len(), 4);
    assert!(matches!(&profile.questions[0].kind, Kind::Choice(choices) if choices.len() == 3));
    assert!(profile.light.is_some() && profile.dark.is_some());
    assert_eq!(profile.contact.email, "orders@prairie-doors.example");
}

#[test]
fn the_least_profile_is_the_built_in_rules_under_a_name() {
    let profile = parse(SMALL).unwrap();
    let expected = Profile { name: "Demo".into(), revision: 1, ..Profile::default() };
    assert_eq!(profile, expected);
    assert_eq!(parse(&["\u{feff}", SMALL].concat()), Ok(expected));
}

/// A profile with `more` behind its first keys.
fn with(more: &str) -> Result<Profile, FileError> {
    parse(&SMALL.replace(r#""revision":1"#, &[r#""revision":1,"#, more].concat()))
}

/// The name of what is wrong in it, if anything is.
fn fault(more: &str) -> Option<&'static str> {
    with(more).err().map(|error| error.fault.code())
}

#[test]
fn the_most_is_read_and_no_more() {
    let question = |key: &str| format!(r#"{{"key":"{key}","ask":"A?","kind":"yes-no"}}"#);
    let questions = |count: usize| {
        let all: Vec<String> = (0..count).map(|at| question(&format!("k{at}"))).collect();
        format!(r#""questions":[{}]"#, all.join(","))
    };
    assert_eq!(fault(&questions(50)), None);
    assert_eq!(fault(&questions(51)), Some("too-many"));
    let key = |key: &str| fault(&format!(r#""questions":[{}]"#, question(key)));
    assert_eq!([key("a"), key("z9-"), key(&"k".repeat(32))], [None; 3]);
    for bad in ["", "9a", "-a", "aB", "a_b", "é", "aé", "a ", &"k".repeat(33)] {
        assert_eq!(key(bad), Some("no-key"), "{bad}");
    }
    let start = |length: usize| fault(&format!(r#""texts":{{"start":"{}"}}"#, "é".repeat(length)));
    assert_eq!((start(400), start(401)), (None, Some("text-too-long")));
    let limit = |least: &str, most: &str| {
        let ends = format!(r#""least":"{least}","most":"{most}""#);
        fault(&format!(r#""limits":{{"width":{{{ends},"reason":"so"}}}}"#))
    };
    assert_eq!(limit("60 in", "60 in"), None);
    assert_eq!(limit("60 1/16 in", "60 in"), Some("upside-down"));
}

#[test]
fn what_belongs_to_one_kind_of_question_stands_in_no_other() {
    let all = [
        ("choice", r#""choices":[{"key":"a","label":"A"},{"key":"b","label":"B"}]"#),
        ("length", r#""least":"1 in""#),
        ("length", r#""most":"2 in""#),
        ("text", r#""characters":9"#),
        ("yes-no", r#""hint":"So.""#),
    ];
    for (kind, _) in all {
        // A choice has its choices in any case.
        let choices = if kind == "choice" { [all[0].1, ","].concat() } else { String::new() };
        for (owner, more) in all.iter().filter(|(_, more)| kind != "choice" || *more != all[0].1) {
            let question = format!(r#"{{"key":"q","ask":"A?","kind":"{kind}",{choices}{more}}}"#);
            let fits = *owner == kind || *owner == "yes-no";
            let told = fault(&format!(r#""questions":[{question}]"#));
            assert_eq!(told, (!fits).then_some("other-kind"), "{question}");
        }
    }
    let none = r#""questions":[{"key":"q","ask":"A?","kind":"choice"}]"#;
    assert_eq!(fault(none), Some("few-choices"));
}

/// A profile with `more` behind its first keys, which is refused with `code` and `message`.
#[track_caller]
fn refused(more: &str, code: &str, message: &str) {
    let error = with(more).unwrap_err();
    assert_eq!(error.fault.code(), code, "{more}");
    assert_eq!(crate::say::profile(Language::English, &error), message);
}

#[test]
fn what_is_not_as_the_format_says_is_named_with_its_place() {
    refused(
        r#""limit":{}"#,
        "unknown-key",
        "The profile has a key \"limit\" that is not known. Known are: format, name, revision, \
         unit, languages, contact, number, take, step, closing, costs, limits, doors, questions, \
         care, texts, colors.",
    );
    refused(r#""unit":"cm""#, "unknown-value", "unit is \"cm\". It can be: in, mm.");
    refused(r#""unit":"in","unit":"mm""#, "double-key", "The profile has \"unit\" twice.");
    refused(
        r#""limits":{"width":{"least":"70 in","most":"60 in","reason":"so"}}"#,
        "upside-down",
        "limits.width has a least of 70 in above its most of 60 in: nothing would pass.",
    );
    refused(
        r#""limits":{"width":{"least":"70 furlongs","reason":"so"}}"#,
        "no-length",
        "limits.width.least is \"70 furlongs\". Write a length with its unit, such as 96 1/4 in \
         or 2445 mm.",
    );
    refused(
        r#""limits":{"width":{"least":"70","reason":"so"}}"#,
        "no-length",
        "limits.width.least is \"70\". Write a length with its unit, such as 96 1/4 in or \
         2445 mm.",
    );
    refused(
        r#""limits":{"width":{"least":"70 in"}}"#,
        "missing-key",
        "limits.width has no \"reason\".",
    );
    refused(
        r#""limits":{"width":{"reason":"so"}}"#,
        "no-end",
        "limits.width has neither \"least\" nor \"most\". Write one of them.",
    );
    refused(
        r#""care":{"cables":{}}"#,
        "no-interval",
        "care.cables has neither \"months\" nor \"cycles\". Write one of them, or both.",
    );
    refused(
        r#""contact":{"page":"javascript:alert(1)"}"#,
        "no-page",
        "contact.page is \"javascript:alert(1)\". Write the address of a page, beginning with \
         https:// and without a #; a script is not opened.",
    );
    refused(
        r#""contact":{"email":"a@b.example?bcc=c@d.example"}"#,
        "no-email",
        "contact.email is \"a@b.example?bcc=c@d.example\". Write one e-mail address, such as \
         orders@doors.example.",
    );
    refused(
        r##""colors":{"light":{"ink":"#000000","paper":"#ffffff","accent":"#777777","on_accent":"#ffffff"}}"##,
        "low-contrast",
        "colors.light: on_accent on accent has a contrast of 4.47 to 1. Text needs 4.5 to 1 \
         (WCAG 2.2).",
    );
    refused(
        r#""number":"A-{count}""#,
        "no-number-format",
        "number has {count}, which is not known. Known are: {date}, {check}, {vehicle}.",
    );
    refused(
        r#""costs":{"miss":1,"minute":1e9}"#,
        "out-of-range",
        "costs.minute is 1e9. It can be 0 to 10000.",
    );
    // The usual drum in its place would have the spring wound wrong.
    for (drum, told) in
        [("2 in", "2 in"), ("0 in", "0 in"), ("61 in", "61 in"), ("31.75 m", "1250 in")]
    {
        refused(
            &format!(r#""doors":[{{"key":"a","name":"A","drum_circumference":"{drum}"}}]"#),
            "out-of-range",
            &format!("doors.0.drum_circumference is {told}. It can be 3 to 60."),
        );
    }
    refused(
        r#""questions":[{"key":"a","ask":"A?","kind":"text"},{"key":"a","ask":"A?","kind":"text"}]"#,
        "same-key",
        "The profile has \"a\" twice in questions. Give each its own key.",
    );
    refused(
        r#""questions":[{"key":"door","ask":"A?","kind":"text"}]"#,
        "key-taken",
        "questions.0 has the key \"door\", which the order keeps for itself. Take another.",
    );
    refused(
        r#""questions":[{"key":"a","ask":"A?","kind":"yes-no","choices":[]}]"#,
        "other-kind",
        "questions.0 has choices, which belongs to another kind of question.",
    );
    refused(
        r#""questions":[{"key":"A b","ask":"A?","kind":"text"}]"#,
        "no-key",
        "questions.0.key is \"A b\". A key is a letter and up to 31 more small letters, digits \
         and dashes.",
    );
    refused(
        "\"texts\":{\"start\":\"a\\u202eb\"}",
        "hidden-character",
        "texts.start has a character that nobody sees, U+202E. Take it out.",
    );
    refused(
        r#""texts":{"start":{}}"#,
        "empty",
        "texts.start is empty. Write a text, or leave the key out.",
    );
    refused(
        r#""closing":["width.low"]"#,
        "unknown-value",
        "closing.0 is \"width.low\". It can be: diagonal.rising, diagonal.falling, \
         loop.sill_to_roof, loop.sill_to_bow.",
    );
}

#[test]
fn what_is_no_json_and_what_is_too_large_is_said_of_the_whole() {
    let said = |text: &str| crate::say::profile(Language::English, &parse(text).unwrap_err());
    assert_eq!(
        said("{\n  \"format\": }"),
        "The profile is not JSON: a value is expected at line 2, column 13."
    );
    assert_eq!(said("[]"), "The profile is a list; an object is expected.");
    let large = [SMALL, &" ".repeat(MOST)].concat();
    assert_eq!(
        said(&large),
        "The profile is larger than 262144 bytes. Shorten its texts and lists."
    );
    let most = [SMALL, &" ".repeat(MOST - SMALL.len())].concat();
    assert!(parse(&most).is_ok());
    assert!(said(&"[".repeat(10_000)).starts_with("The profile is not JSON"));
}

#[test]
fn a_text_is_for_all_languages_or_for_some() {
    let json = SMALL.replace(
        r#""revision":1"#,
        r#""revision":1,"texts":{"start":{"es":"Hola","fr":"Salut"},"send":"Thanks"}"#,
    );
    let profile = parse(&json).unwrap();
    assert_eq!(profile.start, Words(vec![("es", "Hola".into()), ("fr", "Salut".into())]));
    assert_eq!(profile.send.in_language("es"), "Thanks");
}

#[test]
fn a_weight_is_exact_in_grams() {
    let weight = |text: &str| value::Weight::parse(text).map(|weight| weight.0);
    assert_eq!(weight("10.5 kg/m2"), Some(10_500));
    assert_eq!(weight("2 lb/ft²"), Some(9_764)); // 9.764856 kg/m²
    assert_eq!(weight("0.001 kg/m2"), Some(1));
    assert_eq!(weight("0010.125  kg/m² "), Some(10_125));
    assert_eq!(weight("100 kg/m2"), Some(100_000));
    for bad in [
        "10",
        "10.5",
        "10.5kg/m2",
        "-1 kg/m2",
        "+1 kg/m2",
        "1.+5 kg/m2",
        "1. kg/m2",
        ".5 kg/m2",
        "0 kg/m2",
        "1e3 kg/m2",
        "10.5 kg",
        "99999 kg/m2",
        "00010 kg/m2",
        "1.0000 kg/m2",
        "100.001 kg/m2",
    ] {
        assert_eq!(weight(bad), None, "{bad}");
    }
}

proptest! {
    #[test]
    fn no_text_makes_it_panic(text in ".*") {
        let _ = parse(&text);
    }

    /// The whole profile, with one piece replaced by anything.
    #[test]
    fn no_change_to_a_profile_makes_it_panic(
        at in 0..WHOLE.len(), len in 0..40_usize, put in ".{0,8}",
    ) {
        let end = (at + len).min(WHOLE.len());
        prop_assume!(WHOLE.is_char_boundary(at) && WHOLE.is_char_boundary(end));
        let text = [&WHOLE[..at], &put, &WHOLE[end..]].concat();
        let told = parse(&text).map_err(|error| crate::say::profile(Language::English, &error));
        prop_assert!(told.is_ok() || told.is_err_and(|told| told.len() < 600));
    }
}
