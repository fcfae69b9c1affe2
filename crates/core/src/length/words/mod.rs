//! Readings in words: one grammar, and a table of words for each language.
//!
//! No word means two different things in two tables (a test holds that), so a
//! reading typed in one language means the same to a reader of another.

pub(super) mod cardinal;
mod en;
mod es;
mod fr;

use super::unit::Measure;
use crate::say::Language;

/// What a word can mean in a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Word {
    /// 0 to 29, where they are one word.
    Number(u64),
    /// `oh`: a nought where digits are said one by one.
    Oh,
    /// 20, 30 … 90.
    Tens(u64),
    /// `hundred` behind a number.
    Hundred,
    /// 100 to 900 in one word: `doscientos`.
    Hundreds(u64),
    Thousand,
    /// A number typed in digits among words.
    Figure(u64),
    /// `a`: one, where a number can stand.
    Article,
    /// Between the whole and the fraction, and inside numbers as [`Vocabulary`] says.
    And,
    /// Before a fraction, or the inches behind feet; never inside a number: `con`.
    With,
    /// A comma or a full stop between words. Dictation writes one for a pause, and for `coma` and
    /// `punto`: inside a number it may be a decimal mark, and is no part of it.
    Stop,
    /// `of`, in `a quarter of an inch`.
    Of,
    /// The decimal mark, said.
    Point,
    /// The name of a part: `half` 2, `quarters` 4. The flag: it is in the plural.
    Part(u64, bool),
    /// `eighth` 8, and `second` 2 for `thirty second`. The flag: it is in the plural.
    Ordinal(u64, bool),
    /// Makes a part of the number before it: `dieciseis avos`. The flag as above.
    Avos(bool),
    /// The ending typed behind a fraction in digits: `3/16ths`.
    Ending,
    Unit(Measure),
    /// `minus`.
    Minus,
    /// `about`, `scant`: the mark was not read.
    About,
    /// `by`: two readings in one field.
    By,
}

/// The words of one language, and how its numbers are put together.
pub(super) struct Vocabulary {
    /// Sorted by word; lower-case ASCII, as folded.
    pub(super) words: &'static [(&'static str, Word)],
    /// `two hundred and five`.
    pub(super) and_after_hundred: bool,
    /// `noventa y seis`, `vingt et un`.
    pub(super) and_after_tens: bool,
    /// `quatre-vingt-seize`: counted by scores, and by tens that go on to nineteen.
    pub(super) by_scores: bool,
    /// `mil`, `cent`: a thousand or a hundred with no number before it is one.
    pub(super) bare_thousand: bool,
}

impl Vocabulary {
    pub(super) fn find(&self, word: &str) -> Option<Word> {
        let at = self.words.binary_search_by(|(known, _)| (*known).cmp(word)).ok()?;
        self.words.get(at).map(|(_, word)| *word)
    }
}

/// The short names of units: every vocabulary has them, with the same meaning.
pub(super) static UNITS: Vocabulary = Vocabulary {
    words: &[
        ("cm", Word::Unit(Measure::Centimetre)),
        ("ft", Word::Unit(Measure::Foot)),
        ("in", Word::Unit(Measure::Inch)),
        ("m", Word::Unit(Measure::Metre)),
        ("mm", Word::Unit(Measure::Millimetre)),
    ],
    and_after_hundred: false,
    and_after_tens: false,
    by_scores: false,
    bare_thousand: false,
};

const ALL: [&Vocabulary; 3] = [&en::WORDS, &es::WORDS, &fr::WORDS];

/// Every vocabulary, that of `language` first.
pub(super) fn in_order(language: Language) -> impl Iterator<Item = &'static Vocabulary> {
    let first = match language {
        Language::English => 0,
        Language::Spanish => 1,
        Language::French => 2,
    };
    ALL.into_iter().cycle().skip(first).take(ALL.len())
}

/// What `word` means in any language.
fn meaning(word: &str) -> Option<Word> {
    ALL.iter().find_map(|vocabulary| vocabulary.find(word))
}

/// Whether `word` hedges a reading, in any language.
pub(super) fn is_about(word: &str) -> bool {
    meaning(word) == Some(Word::About)
}

/// Whether `word` is a minus sign said, in any language.
pub(super) fn is_minus(word: &str) -> bool {
    meaning(word) == Some(Word::Minus)
}

/// Whether `word` is a unit, in any language.
pub(super) fn is_unit(word: &str) -> bool {
    matches!(meaning(word), Some(Word::Unit(_)))
}

/// Whether `word` joins a fraction to the whole, in any language.
pub(super) fn is_and(word: &str) -> bool {
    meaning(word) == Some(Word::And)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tables_are_sorted_and_folded() {
        for vocabulary in ALL.into_iter().chain([&UNITS]) {
            assert!(vocabulary.words.is_sorted_by(|a, b| a.0 < b.0));
            for (word, _) in vocabulary.words {
                assert!(word.bytes().all(|b| b.is_ascii_lowercase()), "{word}");
            }
        }
    }

    #[test]
    fn every_vocabulary_has_the_short_names_of_units() {
        for vocabulary in ALL {
            for (word, meaning) in UNITS.words {
                assert_eq!(vocabulary.find(word), Some(*meaning), "{word}");
            }
        }
    }

    #[test]
    fn no_word_means_two_things() {
        for vocabulary in ALL {
            for (word, meaning) in vocabulary.words {
                for other in ALL {
                    assert!(other.find(word).is_none_or(|also| also == *meaning), "{word}");
                }
            }
        }
    }
}
