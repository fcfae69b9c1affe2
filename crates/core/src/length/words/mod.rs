//! Readings in words: one grammar, and a table of words for each language.
//!
//! No word means two different things in two tables (a test holds that), so a
//! reading typed in one language means the same to a reader of another.

pub(super) mod cardinal;
mod en;

use super::unit::Measure;
use crate::say::Language;

/// What a word can mean in a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Word {
    /// 0 to 19.
    Number(u64),
    /// `oh`: a nought where digits are said one by one.
    Oh,
    /// 20, 30 … 90.
    Tens(u64),
    /// `hundred` after a digit.
    Hundred,
    Thousand,
    /// A number typed in digits among words.
    Figure(u64),
    /// `a`: one, where a number can stand.
    Article,
    /// Between the whole and the fraction, and inside numbers as [`Vocabulary`] says.
    And,
    /// `of`, in `a quarter of an inch`.
    Of,
    /// The decimal mark, said.
    Point,
    /// The name of a part: `half` 2, `quarters` 4. The flag: it is in the plural.
    Part(u64, bool),
    /// `eighth` 8, and `second` 2 for `thirty second`. The flag: it is in the plural.
    Ordinal(u64, bool),
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
}

impl Vocabulary {
    pub(super) fn find(&self, word: &str) -> Option<Word> {
        let at = self.words.binary_search_by(|(known, _)| (*known).cmp(word)).ok()?;
        self.words.get(at).map(|(_, word)| *word)
    }
}

const ALL: [&Vocabulary; 1] = [&en::WORDS];

/// Every vocabulary, that of `language` first.
pub(super) fn in_order(language: Language) -> impl Iterator<Item = &'static Vocabulary> {
    let first = match language {
        Language::English => 0,
    };
    ALL.into_iter().cycle().skip(first).take(ALL.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tables_are_sorted_and_folded() {
        for vocabulary in ALL {
            assert!(vocabulary.words.is_sorted_by(|a, b| a.0 < b.0));
            for (word, _) in vocabulary.words {
                assert!(word.bytes().all(|b| b.is_ascii_lowercase()), "{word}");
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
