//! The catalogues of the domain: the same said in every language, and nothing left over.

#![allow(clippy::unwrap_used)]

mod every;
mod properties;

use every::every;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Dimension, Length, Spot, Unit};
use hangtrue_golden::golden;
use properties::{alike, well_set};
use std::collections::BTreeSet;

/// What things are called, alone and within a sentence: `tests/goldens/say/names.txt`.
#[test]
fn things_are_called_what_they_were() {
    let mut lines = Vec::new();
    for language in Language::ALL {
        let speaker = Speaker { language, unit: Unit::Inch };
        let units = [Unit::Inch, Unit::Millimetre].map(|unit| language.unit(unit)).join(", ");
        let typed = ["8 ft 0 1/2 in", "2443.5 mm", "1 ft 2 in"].map(|text| language.typed(text));
        lines.push(format!("{}: {units}; {}", language.name(), typed.join("; ")));
        for dimension in Dimension::ALL {
            let (alone, the) = (speaker.dimension(dimension), speaker.the_dimension(dimension));
            lines.push(format!("  {}: {alone}; {the}", dimension.key()));
        }
        for spot in Spot::ALL {
            let (place, alone, the) =
                (speaker.place(spot), speaker.spot(spot), speaker.the_spot(spot));
            lines.push(format!("  {}: {place}; {alone}; {the}", spot.key()));
        }
        for reason in every::REASONS {
            lines.push(format!("  {reason:?}: {}", speaker.reason(*reason)));
        }
        for nm in [0, 1_587_500, 254_000_000, 2_443_162_500, 2_443_500_000] {
            let length = Length::from_nm(nm);
            let [inch, metric] =
                [Unit::Inch, Unit::Millimetre].map(|unit| speaker.length_in(length, unit));
            lines.push(format!("  {nm} nm: {inch}; {metric}"));
        }
    }
    golden("say/names.txt", &lines.join("\n"));
}

/// Of all messages those that say a pair of words which none before said, a file a language:
/// `tests/goldens/say`.
#[test]
fn messages_say_what_they_said() {
    for language in Language::ALL {
        let speaker = Speaker { language, unit: Unit::Inch };
        let (mut lines, mut known) = (Vec::new(), BTreeSet::new());
        for message in every() {
            let said = speaker.say(&message);
            let words: Vec<_> = said.split_whitespace().map(str::to_owned).collect();
            let pairs = words.windows(2).map(|pair| pair.join(" "));
            // Not one after the other until the first is new: each is known from here on.
            if pairs.map(|pair| known.insert(pair)).fold(false, |any, new| any | new) {
                lines.push(said);
            }
        }
        golden(&format!("say/{}.txt", language.key()), &lines.join("\n"));
    }
}

/// Readings as they are read out.
#[test]
fn readings_are_read_out_as_they_were() {
    let mut lines = Vec::new();
    for text in [
        "0",
        "1",
        "1/2",
        "1 in",
        "1 1/4 in",
        "9 1/2 in",
        "21 in",
        "21 1/2 in",
        "31 3/4 in",
        "92 3/16 in",
        "100 in",
        "101 1/2 in",
        "110 7/8 in",
        "121 1/16 in",
        "199 in",
        "200 in",
        "999 in",
        "1001 in",
        "96.3750 in",
        "92.1 in",
        "8 ft 0 1/2 in",
        "7 ft",
        "1 ft",
        "1 ft 1 in",
        "21 ft 1 in",
        "2343 mm",
        "1000 mm",
        "2001 mm",
        "2121 mm",
        "71 mm",
        "80 mm",
        "91 mm",
        "1 mm",
        "1.5 mm",
        "21.5 mm",
        "31.5 mm",
        "2443.5 mm",
        "101.05 mm",
        "17/64 in",
        "1 1/32 in",
    ] {
        let metric = text.ends_with("mm");
        let unit = if metric { Unit::Millimetre } else { Unit::Inch };
        let length = hangtrue_core::length::read(text, unit).unwrap();
        for language in Language::ALL {
            let speaker = Speaker { language, unit };
            let (words, digits) = (speaker.spoken(length), speaker.spoken_by_digits(length));
            lines.push(format!("{text}, {}: {words}; {digits}", language.key()));
        }
    }
    golden("say/aloud.txt", &lines.join("\n"));
}

#[test]
fn every_message_is_said_in_every_language() {
    for unit in [Unit::Inch, Unit::Millimetre] {
        let english = Speaker { language: Language::English, unit };
        for message in every() {
            let source = english.say(&message);
            for language in [Language::Spanish, Language::French] {
                let speaker = Speaker { language, unit };
                let said = speaker.say(&message);
                alike(&source, &said, language);
                well_set(&said, language);
                assert!(said.ends_with(['.', '?']), "{said}");
                // What is named there is named here.
                for spot in Spot::ALL {
                    let names = |speaker: Speaker, text: &str| {
                        text.to_lowercase().contains(speaker.spot(spot))
                    };
                    assert_eq!(names(english, &source), names(speaker, &said), "{source} / {said}");
                }
            }
        }
    }
}

#[test]
fn every_name_is_its_own() {
    for language in Language::ALL {
        let speaker = Speaker { language, unit: Unit::Inch };
        let spots: std::collections::BTreeSet<_> =
            Spot::ALL.into_iter().map(|spot| speaker.spot(spot)).collect();
        assert_eq!(spots.len(), Spot::ALL.len());
        for spot in Spot::ALL {
            well_set(speaker.spot(spot), language);
            well_set(speaker.place(spot), language);
            if language != Language::English {
                let english = Speaker::default();
                assert_ne!(speaker.spot(spot), english.spot(spot));
                assert_ne!(speaker.place(spot), english.place(spot));
            }
        }
    }
}
