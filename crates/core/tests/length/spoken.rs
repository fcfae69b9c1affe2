//! A reading said aloud is heard as the same reading.

use hangtrue_core::length::{Length, Unit, read};
use hangtrue_core::say::{Language, Speaker};

fn speaker(unit: Unit) -> Speaker {
    Speaker { language: Language::English, unit }
}

#[test]
fn every_mark_said_in_full_reads_back() {
    for n in 0..=200 * 64 {
        let length = Length::from_sixty_fourths(n);
        let said = speaker(Unit::Inch).spoken(length);
        assert_eq!(read(&said, Unit::Millimetre), Ok(length), "{said}");
    }
    for n in 0..=50_800 {
        let length = Length::from_tenths_mm(n);
        let said = speaker(Unit::Millimetre).spoken(length);
        assert_eq!(read(&said, Unit::Inch), Ok(length), "{said}");
    }
}

/// Two digits may be feet and inches, so the reader asks; it offers the right one first.
#[test]
fn every_mark_said_by_digits_reads_back_or_is_offered() {
    for n in 0..=200 * 64 {
        let length = Length::from_sixty_fourths(n);
        let said = speaker(Unit::Inch).spoken_by_digits(length);
        let heard = read(&said, Unit::Inch)
            .or_else(|error| error.suggestions.first().map(|first| first.length).ok_or(error));
        assert_eq!(heard, Ok(length), "{said}");
    }
    for n in 0..=50_800 {
        let length = Length::from_tenths_mm(n);
        let said = speaker(Unit::Millimetre).spoken_by_digits(length);
        assert_eq!(read(&said, Unit::Inch), Ok(length), "{said}");
    }
}

#[test]
fn said_aloud() {
    let inches = |sixty_fourths| {
        let length = Length::from_sixty_fourths(sixty_fourths);
        let speaker = speaker(Unit::Inch);
        [speaker.spoken(length), speaker.spoken_by_digits(length)]
    };
    assert_eq!(
        inches(96 * 64 + 12),
        ["ninety-six and three sixteenths inches", "nine six and three sixteenths inches"]
    );
    assert_eq!(inches(101 * 64)[0], "one hundred one inches");
    assert_eq!(inches(101 * 64)[1], "one zero one inches");
    assert_eq!(inches(64)[0], "one inch");
    assert_eq!(inches(96)[0], "one and one half inches");
    assert_eq!(inches(32)[0], "half an inch");
    assert_eq!(inches(21)[0], "twenty-one sixty-fourths of an inch");
    assert_eq!(inches(0)[0], "zero inches");
    let metric = speaker(Unit::Millimetre);
    let tenths = Length::from_tenths_mm(24_435);
    assert_eq!(
        metric.spoken(tenths),
        "two thousand four hundred forty-three point five millimeters"
    );
    assert_eq!(metric.spoken_by_digits(tenths), "two four four three point five millimeters");
    assert_eq!(
        speaker(Unit::Inch).spoken(Length::from_mm(2443)),
        "about ninety-six and three sixteenths inches"
    );
    assert_eq!(metric.spoken(-Length::MILLIMETRE), "minus one millimeter");
}
