//! The languages there is a catalogue for, and how a figure is written in each.

use super::{Speaker, decimal};
use crate::length::{Length, Unit};
use crate::short::holds;

/// The languages there is a catalogue for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English (US).
    #[default]
    English,
    /// Spanish, as spoken in Mexico and the United States.
    Spanish,
    /// French (Canada).
    French,
}

impl Language {
    /// Every language.
    pub const ALL: [Self; 3] = [Self::English, Self::Spanish, Self::French];

    /// Its subtag in BCP 47: `en`, `es`, `fr`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
            Self::French => "fr",
        }
    }

    /// The language of a tag of any country and case: `es`, `fr-CA`, `EN_us`.
    #[must_use]
    pub fn from_key(tag: &str) -> Option<Self> {
        let primary = tag.split(['-', '_']).next()?;
        Self::ALL.into_iter().find(|language| language.key().eq_ignore_ascii_case(primary))
    }

    /// What [`Length`] writes in plain ASCII (`96 3/16 in`, `2443.5 mm`), as people of this
    /// language write it: `96 3/16 pulg`, `2443,5 mm`. A field reads it back all the same.
    ///
    /// Mexico and the Spanish of the United States have the decimal point
    /// (NOM-008-SCFI-2002 as changed in 2009, from memory), Canadian French has the comma.
    #[must_use]
    pub fn written(self, canonical: &str) -> String {
        let (foot, inch, mark) = match self {
            Self::English => return canonical.to_owned(),
            Self::Spanish => {
                (if canonical.starts_with("1 ft") { "pie" } else { "pies" }, "pulg", '.')
            }
            Self::French => ("pi", "po", ','),
        };
        let mut written = String::with_capacity(canonical.len().saturating_add(4));
        for word in canonical.split(' ') {
            let unit = word.starts_with(|letter: char| letter.is_ascii_alphabetic());
            let behind_number = unit || holds(word, b'/');
            if !written.is_empty() {
                // A number, its fraction and its unit stay on one line.
                written.push(if behind_number { '\u{a0}' } else { ' ' });
            }
            match word {
                "ft" => written.push_str(foot),
                "in" => written.push_str(inch),
                _ => written.extend(word.chars().map(|c| if c == '.' { mark } else { c })),
            }
        }
        written
    }

    /// The same as a person types it: with plain spaces.
    #[must_use]
    pub fn typed(self, canonical: &str) -> String {
        self.written(canonical).replace('\u{a0}', " ")
    }

    /// Its name in itself.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
            Self::French => "Français",
        }
    }

    /// The short name of `unit` beside a field.
    #[must_use]
    pub const fn unit(self, unit: Unit) -> &'static str {
        match (self, unit) {
            (_, Unit::Millimetre) => "mm",
            (Self::English, Unit::Inch) => "in",
            (Self::Spanish, Unit::Inch) => "pulg",
            (Self::French, Unit::Inch) => "po",
        }
    }
}

impl Speaker {
    /// A length for a sentence, in the speaker's unit and way of writing; see [`Length::text`].
    #[must_use]
    pub fn length(self, length: Length) -> String {
        self.length_in(length, self.unit)
    }

    /// The same in a unit of choice.
    #[must_use]
    pub fn length_in(self, length: Length, unit: Unit) -> String {
        self.language.written(&length.text(unit))
    }

    /// A figure that is no reading; see [`decimal`].
    #[must_use]
    pub fn decimal(self, value: f64, places: u8) -> String {
        self.language.written(&decimal(value, places))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::{read, read_in};
    use proptest::prelude::*;

    #[test]
    fn a_tag_of_any_country_is_known() {
        for (tag, language) in [
            ("es-MX", Some(Language::Spanish)),
            ("fr-CA", Some(Language::French)),
            ("EN_us", Some(Language::English)),
            ("de", None),
            ("", None),
            ("fry", None),
        ] {
            assert_eq!(Language::from_key(tag), language, "{tag}");
        }
        for language in Language::ALL {
            assert_eq!(Language::from_key(language.key()), Some(language));
        }
    }

    #[test]
    fn figures_are_written_as_people_write_them() {
        let written = |text| Language::ALL.map(|language| language.written(text));
        assert_eq!(
            written("96 3/16 in"),
            ["96 3/16 in", "96\u{a0}3/16\u{a0}pulg", "96\u{a0}3/16\u{a0}po"]
        );
        assert_eq!(written("2443.5 mm"), ["2443.5 mm", "2443.5\u{a0}mm", "2443,5\u{a0}mm"]);
        assert_eq!(
            written("≈ 8 ft 0 1/4 in"),
            [
                "≈ 8 ft 0 1/4 in",
                "≈ 8\u{a0}pies 0\u{a0}1/4\u{a0}pulg",
                "≈ 8\u{a0}pi 0\u{a0}1/4\u{a0}po"
            ]
        );
        assert_eq!(written("1 ft 2 in")[1], "1\u{a0}pie 2\u{a0}pulg");
        assert_eq!(
            Speaker { language: Language::French, ..Speaker::default() }.decimal(-0.5, 1),
            "−0,5"
        );
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_by_every_reader(nm in 0_i64..6_000_000_000) {
            for language in Language::ALL {
                for unit in [Unit::Inch, Unit::Millimetre] {
                    for length in [Length::from_nm(nm), Length::from_nm(nm).round_to(unit.finest())] {
                        let text = language.written(&length.canonical(unit));
                        prop_assert_eq!(read_in(&text, unit.other(), language), Ok(length), "{}", text);
                        prop_assert_eq!(read(&text, unit), Ok(length), "{}", text);
                    }
                }
            }
        }
    }
}
