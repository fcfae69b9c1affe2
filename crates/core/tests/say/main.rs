//! The catalogues of the domain: the same said in every language, and nothing left over.

#![allow(clippy::unwrap_used)]

mod every;
mod properties;

use every::every;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Spot, Unit};
use properties::{alike, well_set};

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
