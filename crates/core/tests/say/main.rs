//! The catalogues of the domain: the same said in every language, and nothing left over.

#![allow(clippy::unwrap_used)]

mod every;
#[path = "../golden/mod.rs"]
mod golden;
mod properties;

use every::every;
use golden::golden;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Dimension, Length, Spot, Unit};
use properties::{alike, well_set};

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
