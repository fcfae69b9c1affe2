//! A reading said aloud is heard as the same reading.

use hangtrue_core::length::{Length, ReadErrorKind, Unit, read};
use hangtrue_core::say::{Language, Speaker};

fn speaker(unit: Unit) -> Speaker {
    Speaker { language: Language::English, unit }
}

/// Every mark of two tapes, as each language says it.
fn said(say: fn(Speaker, Length) -> String, check: impl Fn(Unit, Length, &str)) {
    for language in Language::ALL {
        for n in 0..=200 * 64 {
            let length = Length::from_sixty_fourths(n);
            check(Unit::Millimetre, length, &say(Speaker { language, unit: Unit::Inch }, length));
        }
        for n in 0..=50_800 {
            let length = Length::from_tenths_mm(n);
            check(Unit::Inch, length, &say(Speaker { language, unit: Unit::Millimetre }, length));
        }
    }
}

/// `trente et un soixante-quatrièmes` alone can be 31/64 and 30 1/64: it is asked, with the
/// right one among what is offered.
#[test]
fn every_mark_said_in_full_reads_back() {
    said(Speaker::spoken, |unit, length, said| match read(said, unit) {
        Err(error) if length < Length::INCH && error.kind == ReadErrorKind::TwoMeanings => {
            assert!(error.suggestions.iter().any(|one| one.length == length), "{said}");
        }
        heard => assert_eq!(heard, Ok(length), "{said}"),
    });
}

/// Two digits may be feet and inches, so the reader asks; it offers the right one first.
#[test]
fn every_mark_said_by_digits_reads_back_or_is_offered() {
    said(Speaker::spoken_by_digits, |unit, length, said| {
        let heard = read(said, unit).or_else(|error| {
            let mut offered = error.suggestions.iter().map(|one| one.length);
            offered.find(|offered| *offered == length).ok_or(error)
        });
        assert_eq!(heard, Ok(length), "{said}");
    });
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

#[test]
fn said_aloud_in_the_other_languages() {
    let said = |language, unit, length| {
        let speaker = Speaker { language, unit };
        [speaker.spoken(length), speaker.spoken_by_digits(length)]
    };
    let inches = |language, n| said(language, Unit::Inch, Length::from_sixty_fourths(n));
    let (es, fr) = (Language::Spanish, Language::French);
    assert_eq!(
        inches(es, 96 * 64 + 16),
        ["noventa y seis pulgadas y un cuarto", "nueve seis pulgadas y un cuarto"]
    );
    assert_eq!(
        inches(fr, 96 * 64 + 12),
        ["quatre-vingt-seize pouces et trois seizièmes", "neuf six pouces et trois seizièmes"]
    );
    assert_eq!(inches(es, 64)[0], "una pulgada");
    assert_eq!(inches(fr, 64)[0], "un pouce");
    assert_eq!(inches(es, 96)[0], "una pulgada y media");
    assert_eq!(inches(fr, 96)[0], "un pouce et demi");
    assert_eq!(inches(es, 32)[0], "media pulgada");
    assert_eq!(inches(fr, 32)[0], "un demi-pouce");
    assert_eq!(inches(es, 8)[0], "un octavo de pulgada");
    assert_eq!(inches(fr, 8)[0], "un huitième de pouce");
    assert_eq!(inches(es, 101 * 64)[0], "ciento una pulgadas");
    assert_eq!(inches(fr, 101 * 64)[0], "cent un pouces");
    assert_eq!(inches(fr, 80 * 64)[0], "quatre-vingts pouces");
    assert_eq!(inches(fr, 71 * 64)[0], "soixante et onze pouces");
    let millimetres = |language, n| said(language, Unit::Millimetre, Length::from_tenths_mm(n));
    assert_eq!(
        millimetres(es, 24_435)[0],
        "dos mil cuatrocientos cuarenta y tres punto cinco milímetros"
    );
    assert_eq!(
        millimetres(fr, 24_435),
        [
            "deux mille quatre cent quarante-trois virgule cinq millimètres",
            "deux quatre quatre trois virgule cinq millimètres"
        ]
    );
    assert_eq!(millimetres(es, 22_210)[0], "dos mil doscientos veintiún milímetros");
    assert_eq!(millimetres(fr, 22_000)[0], "deux mille deux cents millimètres");
}
