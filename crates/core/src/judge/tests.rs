//! What the judge must say of surveys made by hand.

use super::*;
use crate::length::Unit;
use crate::survey::Entry;

fn put(survey: &mut Survey, spot: Spot, sixteenths: i64) {
    let length = Length::from_sixteenths(sixteenths);
    survey.push(spot, Entry { text: length.text(Unit::Inch), read: Ok(length), struck: false });
}

/// 92 3/16 × 101 1/2 × 9 1/2 × 1 1/4 in; diagonal 137 1/8, sill to bow 109 3/4.
fn six() -> Survey {
    let mut survey = Survey::new(Unit::Inch);
    survey.prepared = true;
    put(&mut survey, Spot::WidthMiddle, 92 * 16 + 3);
    put(&mut survey, Spot::HeightCenter, 101 * 16 + 8);
    put(&mut survey, Spot::HeaderCenter, 9 * 16 + 8);
    put(&mut survey, Spot::BowFirst, 20);
    put(&mut survey, Spot::DiagonalRising, 137 * 16 + 2);
    put(&mut survey, Spot::LoopSillToBow, 109 * 16 + 12);
    survey
}

fn with(mut survey: Survey, spot: Spot, sixteenths: i64) -> Survey {
    survey.entries_mut(spot).clear();
    put(&mut survey, spot, sixteenths);
    survey
}

fn judged(survey: &Survey) -> Judgement {
    judge(survey, &Profile::default())
}

#[test]
fn a_sound_survey_raises_no_alarm() {
    let judgement = judged(&six());
    assert!(judgement.wrong < 0.02, "{}", judgement.wrong);
    assert!(!judgement.alarm && findings(&judgement).is_empty());
}

/// Nothing checks either of four numbers but what is usual, so whoever writes "92 in" in an order in
/// millimetres, or reads a laser to its tenth of a millimetre, is not accused.
#[test]
fn a_length_on_no_mark_of_the_tape_is_none_the_worse_for_it() {
    let inches = (170..195).map(|halves| (f64::from(halves) / 2.0, "in"));
    let tenths = (21_501..24_700).step_by(97).map(|tenths| (f64::from(tenths) / 10.0, "mm"));
    for (width, unit) in inches.chain(tenths) {
        let mut survey = Survey::new(Unit::Millimetre);
        let (width, height) = (format!("{width:.1} {unit}"), format!("{:.1} {unit}", width * 1.1));
        for (spot, text) in [
            (Spot::WidthMiddle, width.as_str()),
            (Spot::HeightCenter, &height),
            (Spot::HeaderCenter, "242"),
            (Spot::BowFirst, "32"),
        ] {
            survey.add(spot, text);
        }
        for spot in [Spot::WidthMiddle, Spot::HeightCenter] {
            assert!(
                survey.entries(spot).iter().all(|entry| entry.read.is_ok()),
                "{width} {height}"
            );
        }
        let found = findings(&judged(&survey));
        assert!(found.is_empty(), "{width}, {height}: {found:?}");
    }
}

#[test]
fn nothing_read_is_nothing_wrong() {
    let judgement = judged(&Survey::new(Unit::Inch));
    assert_eq!(judgement.wrong, 0.0);
    assert_eq!(judgement.next.len(), 4);
    assert!(judgement.next.iter().all(|next| next.why == Why::Missing));
}

#[test]
fn two_digits_exchanged_in_the_width_are_found_named_and_put_right() {
    let survey = with(six(), Spot::WidthMiddle, 29 * 16 + 3);
    let judgement = judged(&survey);
    assert!(judgement.alarm);
    let likely = &judgement.likely[0];
    assert_eq!((likely.spot, likely.slip), (Spot::WidthMiddle, SlipKind::Transpose), "{likely:?}");
    assert_eq!(likely.value, Some(Length::from_sixteenths(92 * 16 + 3)));
}

/// Who writes feet gets other digits wrong than who writes inches alone, whatever the mark.
#[test]
fn feet_are_feet_however_they_are_written() {
    let told = |text: &str| {
        let mut survey = six();
        survey.entries_mut(Spot::HeightCenter).clear();
        survey.add(Spot::HeightCenter, text);
        let read = survey.entries(Spot::HeightCenter).first().unwrap().read.clone();
        assert_eq!(read, Ok(Length::from_sixteenths(113 * 16 + 8)), "{text}");
        judged(&survey)
    };
    let feet = told("9' 5 1/2\"");
    assert_ne!(feet, told("113 1/2"));
    for text in [
        "9’ 5 1/2”",
        "9′ 5 1/2″",
        "9 ft 5 1/2 in",
        "9 FT 5 1/2",
        "9 foot 5 1/2",
        "9 feet 5 1/2",
        "Nine Feet 5 1/2",
        "9 pies 5 1/2",
        "9 Pieds 5 1/2 po",
    ] {
        assert_eq!(told(text), feet, "{text}");
    }
}

#[test]
fn an_inch_in_the_height_is_found_and_named() {
    let survey = with(six(), Spot::HeightCenter, 102 * 16 + 8);
    let judgement = judged(&survey);
    assert!(judgement.alarm, "{judgement:#?}");
    assert_eq!(judgement.likely[0].spot, Spot::HeightCenter);
    assert_eq!(judgement.next[0].why, Why::Settles);
    let found = findings(&judgement);
    assert_eq!(found[0].spots[0], Spot::HeightCenter);
}

/// Whoever reads again what is asked for, and reads it right, comes to the reading that slipped,
/// and to an end: what two readings say is not asked a third time.
#[test]
fn reading_again_comes_to_the_slip_and_to_an_end() {
    let right = [
        (Spot::WidthMiddle, 96 * 16 + 4),
        (Spot::HeightCenter, 101 * 16 + 9),
        (Spot::HeaderCenter, 9 * 16 + 8),
        (Spot::BowFirst, 20),
        (Spot::LoopSillToBow, 109 * 16 + 13),
    ];
    for (slipped, by) in
        [(Spot::LoopSillToBow, -16), (Spot::HeaderCenter, 16), (Spot::BowFirst, 20)]
    {
        let mut survey = Survey::new(Unit::Inch);
        for (spot, value) in right {
            put(&mut survey, spot, value + if spot == slipped { by } else { 0 });
        }
        let mut asked = Vec::new();
        while let Some(next) = judged(&survey).next.iter().find(|next| next.repeat) {
            asked.push(next.spot);
            assert!(asked.len() <= 2 * right.len(), "{slipped:?}: {asked:?}");
            let (_, value) = right.into_iter().find(|(spot, _)| *spot == next.spot).unwrap();
            put(&mut survey, next.spot, value);
        }
        assert!(asked.contains(&slipped), "{slipped:?}: {asked:?}");
        for spot in right.map(|(spot, _)| spot) {
            let times = asked.iter().filter(|asked| **asked == spot).count();
            assert!(times <= 2, "{slipped:?}: {asked:?}");
        }
    }
}

#[test]
fn with_four_numbers_the_closing_reading_checks_three_of_them() {
    let mut survey = six();
    survey.entries_mut(Spot::DiagonalRising).clear();
    survey.entries_mut(Spot::LoopSillToBow).clear();
    let judgement = judged(&survey);
    let first = judgement.next.iter().find(|next| next.spot == Spot::LoopSillToBow).unwrap();
    assert_eq!(first.checks, [Dimension::Height, Dimension::Header, Dimension::Bow]);
    assert_eq!(judgement.unseen, [None; 4]);
}

#[test]
fn a_racked_frame_is_not_accused() {
    let mut survey = six();
    survey.entries_mut(Spot::DiagonalRising).clear();
    put(&mut survey, Spot::DiagonalRising, 137 * 16 + 2 + 9);
    put(&mut survey, Spot::DiagonalFalling, 137 * 16 + 2 - 9);
    assert!(!judged(&survey).alarm);
}

#[test]
fn a_struck_reading_does_not_count() {
    let mut survey = with(six(), Spot::WidthMiddle, 29 * 16 + 3);
    survey.entries_mut(Spot::WidthMiddle)[0].struck = true;
    put(&mut survey, Spot::WidthMiddle, 92 * 16 + 3);
    let judgement = judged(&survey);
    assert!(!judgement.alarm);
    assert_eq!(judgement.adjusted[0].index, 1);
}

#[test]
fn the_same_survey_gives_the_same_judgement() {
    let survey = with(six(), Spot::HeaderCenter, 8 * 16 + 4);
    assert_eq!(judged(&survey), judged(&survey));
}

/// Where nothing else was read, nothing else is said to speak against a reading.
#[test]
fn a_reading_that_nothing_checks_is_not_told_against_the_others() {
    let told = |survey: &Survey| {
        let said = findings(&judged(survey));
        said.first().map(|finding| crate::say::Speaker::default().say(&finding.message))
    };
    let four = [Spot::WidthMiddle, Spot::HeightCenter, Spot::HeaderCenter, Spot::BowFirst];
    for (spot, sixteenths) in [(four[0], 16), (four[1], 16), (four[2], 4), (four[2], 31 * 16)] {
        let alone = with(Survey::new(Unit::Inch), spot, sixteenths);
        let mut beside = with(six(), spot, sixteenths);
        beside.entries_mut(Spot::DiagonalRising).clear();
        beside.entries_mut(Spot::LoopSillToBow).clear();
        for survey in [alone, beside] {
            let told = told(&survey).unwrap_or_default();
            assert!(told.contains("no other reading checks it"), "{told}");
        }
        let told = told(&with(six(), spot, sixteenths)).unwrap_or_default();
        assert!(told.contains("what else was read"), "{told}");
    }
    // A closing reading of height, header and bow checks no width.
    let closed = |spot, sixteenths| {
        let mut survey = with(six(), spot, sixteenths);
        survey.entries_mut(Spot::DiagonalRising).clear();
        told(&survey).unwrap_or_default()
    };
    let width = closed(four[0], 16);
    assert!(width.contains("no other reading checks it"), "{width}");
    let height = closed(four[1], 16);
    assert!(height.contains("what else was read"), "{height}");
}
