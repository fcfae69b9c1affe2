//! What the judge says of surveys made by hand, one golden: `tests/goldens/judge/judgements.txt`.
//!
//! Three frames, read in six ways; then one reading at a time is changed as a person would get it
//! wrong. `HANGTRUE_BLESS=1 cargo test -p hangtrue-core --test judge` writes it anew; read the diff.

#![allow(clippy::expect_used, reason = "a test may fail")]

mod told;

use hangtrue_core::check;
use hangtrue_core::judge::judge;
use hangtrue_core::profile::Profile;
use hangtrue_core::{Spot, Survey, Unit};
use hangtrue_golden::golden;
use std::fmt::Write as _;

/// A frame and how it was read: `spot text` each, `/` between repeats at one spot.
const READ: [(&str, Unit, &str); 7] = [
    (
        "four numbers",
        Unit::Inch,
        "width.middle 92 3/16, height.center 101 1/2, \
        header.center 9 1/2, bow.first 1 1/4",
    ),
    (
        "one diagonal and sill to bow",
        Unit::Inch,
        "width.middle 92 3/16, height.center 101 1/2, \
        header.center 9 1/2, bow.first 1 1/4, diagonal.rising 137 1/8, loop.sill_to_bow 109 3/4",
    ),
    (
        "each twice",
        Unit::Inch,
        "width.middle 92 3/16 / 92 1/4, height.center 101 1/2 / 101 7/16, \
        header.center 9 1/2 / 9 1/2, bow.first 1 1/4 / 1 1/4, diagonal.falling 137 1/16",
    ),
    (
        "three and three",
        Unit::Inch,
        "width.low 92 1/4, width.middle 92 3/16, width.high 92 1/4, \
        height.left 101 1/2, height.center 101 9/16, height.right 101 5/8, header.left 9 1/2, \
        header.right 9 7/16, bow.first 1 1/4, bow.second 1 5/16, diagonal.rising 137 3/16, \
        diagonal.falling 137 1/8, loop.sill_to_bow 109 3/4",
    ),
    (
        "in feet",
        Unit::Inch,
        "width.low 8' 0 1/2\", width.high 8' 0 3/8\", height.left 9' 2\", \
        height.right 9' 2 1/8\", header.center 1' 1/4\", bow.first 2, loop.sill_to_roof 122 1/4",
    ),
    (
        "metric",
        Unit::Millimetre,
        "width.low 2286, width.middle 2285, height.center 2566, \
        header.center 200, header.left 201, bow.first 32, bow.second 31, diagonal.rising 3436, \
        loop.sill_to_bow 2734",
    ),
    (
        "metric, one frame in inches",
        Unit::Millimetre,
        "width.middle 2440, height.center 101 9/16 in, \
        header.center 241, bow.first 32, diagonal.rising 3543",
    ),
];

/// What a person gets wrong, by the spot it is read at.
const CHANGED: [&str; 45] = [
    "width.middle 29 3/16",
    "width.middle 93 3/16",
    "width.middle 92 13/16",
    "width.middle 92 3/8",
    "width.middle 92",
    "width.middle 92.3",
    "width.middle 80 3/16",
    "width.middle 82 3/16",
    "width.middle 923",
    "width.middle 102 3/16",
    "width.middle 101 1/2",
    "width.middle 92 1/2",
    "width.low 52 1/4",
    "width.low 92 5/8",
    "height.center 110 1/2",
    "height.center 101",
    "height.center 102 1/2",
    "height.center 101 1/4",
    "height.center 100 1/2",
    "height.center 11 1/2",
    "height.center 109 3/4",
    "height.left 101 3/4",
    "header.center 6 1/2",
    "header.center 6 5/8",
    "header.center 9",
    "header.center 8 1/4",
    "header.center 1 1/4",
    "header.center 15 1/2",
    "bow.first 2 1/4",
    "bow.first 11 1/4",
    "bow.first 3",
    "diagonal.rising 138 1/8",
    "diagonal.rising 132 1/8",
    "loop.sill_to_bow 110 3/4",
    "loop.sill_to_bow 112 1/2",
    // Several at once: two exchanged, all of a dimension, a habit, none left.
    "width.low 101 1/2, height.left 92 1/4",
    "header.left 1 1/4, bow.first 9 1/2",
    "width.low 93 1/4, width.middle 93 3/16, width.high 93 1/4",
    "bow.first 2 1/4, bow.second 2 5/16",
    "bow.first 2 5/16, bow.second 2 1/4",
    "header.left 10 1/2, header.center 10 1/2, header.right 10 7/16",
    "width.low 2341 mm",
    "bow.first 0",
    "height.center 107 13/16",
    "height.left 24",
];

/// The same in millimetres.
const CHANGED_METRIC: [&str; 10] = [
    "width.middle 2258",
    "width.middle 2185",
    "width.middle 228",
    "width.low 2295",
    "height.center 2656",
    "height.center 101",
    "header.center 20",
    "bow.first 132",
    "diagonal.rising 3536",
    "loop.sill_to_bow 2374",
];

fn put(survey: &mut Survey, one: &str) {
    let (spot, texts) = one.trim().split_once(' ').expect("a spot and its text");
    let spot = Spot::from_key(spot).expect("a spot");
    survey.entries_mut(spot).clear();
    for text in texts.split(" / ") {
        survey.add(spot, text);
        let read = survey.entries(spot).last().expect("just added");
        assert!(read.read.is_ok(), "{one}: {:?}", read.read);
    }
}

fn read(unit: Unit, readings: &str) -> Survey {
    let mut survey = Survey::new(unit);
    survey.prepared = true;
    readings.split(", ").for_each(|one| put(&mut survey, one));
    survey
}

#[test]
fn what_the_judge_says_is_what_it_said() {
    let mut text = String::new();
    for (name, unit, readings) in READ {
        let sound = read(unit, readings);
        let judged = |survey: &Survey| judge(survey, &Profile::default());
        let _ = writeln!(text, "# {name}\n{}", told::all(&judged(&sound), unit));
        let changed = if unit == Unit::Inch { &CHANGED[..] } else { &CHANGED_METRIC };
        for change in changed {
            let mut survey = sound.clone();
            change.split(", ").for_each(|one| put(&mut survey, one));
            let _ = writeln!(
                text,
                "{change}: {}",
                told::short(&check(&survey, &Profile::default()), unit)
            );
        }
        text.push('\n');
    }
    // What is not read at all.
    for readings in [
        "width.middle 92 3/16, height.center 101 1/2",
        "width.middle 92 3/16, height.center 148",
        "width.middle 92 3/16, header.center 1 1/4",
        "header.center 9 1/2, bow.first 9",
        "height.center 92 3/16, header.center 50",
        "width.middle 92 3/16",
        "bow.third 1 1/4",
        "diagonal.rising 137 1/8",
        "",
    ] {
        let survey = match readings {
            "" => Survey::new(Unit::Inch),
            readings => read(Unit::Inch, readings),
        };
        let said = told::all(&judge(&survey, &Profile::default()), Unit::Inch);
        let _ = writeln!(text, "# {readings}\n{said}");
    }
    golden("judge/judgements.txt", &text);
}
