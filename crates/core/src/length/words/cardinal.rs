//! Whole numbers in words.

use super::{Vocabulary, Word};

/// The number that all of `words` make up, said in full: `two thousand four
/// hundred forty five`. A single number typed in digits counts too.
pub(in crate::length) fn cardinal(words: &[Word], vocabulary: &Vocabulary) -> Option<u64> {
    if let [Word::Figure(n)] = words {
        return Some(*n);
    }
    let mut reader = Reader { words, vocabulary };
    let n = reader.below_million()?;
    reader.words.is_empty().then_some(n)
}

/// The digits of numbers below a hundred said one after another: `twenty four
/// forty five` is 2445, `one oh one` is 101. At most twelve digits.
pub(in crate::length) fn concatenated(words: &[Word], vocabulary: &Vocabulary) -> Option<Digits> {
    let mut reader = Reader { words, vocabulary };
    let mut digits = Digits { value: 0, places: 0, groups: 0, pair: None };
    let mut last = 0;
    while !reader.words.is_empty() {
        let (value, places) = match reader.take(|w| matches!(w, Word::Oh)) {
            Some(_) => (0, 1),
            None => match reader.below_hundred()? {
                n if n < 10 => (n, 1),
                n => (n, 2),
            },
        };
        digits.places = digits.places.wrapping_add(places);
        if digits.places > 12 {
            return None;
        }
        let worth = if places == 1 { 10 } else { 100 };
        digits.value = digits.value.wrapping_mul(worth).wrapping_add(value);
        digits.groups = digits.groups.wrapping_add(1);
        digits.pair = (digits.groups == 2).then_some((last, value));
        last = value;
    }
    (digits.groups > 0).then_some(digits)
}

/// Digits said group by group.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::length) struct Digits {
    pub(in crate::length) value: u64,
    /// How many digits, leading noughts counted.
    pub(in crate::length) places: u32,
    /// How many numbers they were said as.
    pub(in crate::length) groups: u32,
    /// Those numbers, if they are two.
    pub(in crate::length) pair: Option<(u64, u64)>,
}

struct Reader<'w> {
    words: &'w [Word],
    vocabulary: &'w Vocabulary,
}

impl Reader<'_> {
    /// The next word, if it is one that `wanted` takes.
    fn take(&mut self, wanted: impl Fn(Word) -> bool) -> Option<Word> {
        let (first, rest) = self.words.split_first()?;
        wanted(*first).then(|| {
            self.words = rest;
            *first
        })
    }

    /// What `part` reads; where it reads nothing, no word is used up.
    fn attempt<T>(&mut self, part: impl FnOnce(&mut Self) -> Option<T>) -> Option<T> {
        let before = self.words;
        let result = part(self);
        if result.is_none() {
            self.words = before;
        }
        result
    }

    fn below_million(&mut self) -> Option<u64> {
        let bare = self.vocabulary.bare_thousand;
        let n = match self.attempt(Self::below_thousand) {
            Some(n) => n,
            None if bare && self.words.first() == Some(&Word::Thousand) => 1,
            None => return None,
        };
        if n == 0 || self.take(|w| w == Word::Thousand).is_none() {
            return Some(n);
        }
        let rest = self.attempt(|r| {
            r.skip_and();
            r.below_thousand()
        });
        n.checked_mul(1000)?.checked_add(rest.unwrap_or(0))
    }

    fn below_thousand(&mut self) -> Option<u64> {
        let hundreds = match self.take(|w| matches!(w, Word::Hundreds(_))) {
            Some(Word::Hundreds(n)) => n,
            _ => {
                let bare = self.vocabulary.bare_thousand;
                let n = match self.attempt(Self::below_hundred) {
                    Some(n) => n,
                    None if bare && self.words.first() == Some(&Word::Hundred) => 1,
                    None => return None,
                };
                // `twenty four hundred` is as good as `two thousand four hundred`.
                if n == 0 || self.take(|w| w == Word::Hundred).is_none() {
                    return Some(n);
                }
                n.wrapping_mul(100)
            }
        };
        let rest = self.attempt(|r| {
            r.skip_and();
            r.below_hundred()
        });
        Some(hundreds.wrapping_add(rest.unwrap_or(0)))
    }

    fn below_hundred(&mut self) -> Option<u64> {
        let scores = self.vocabulary.by_scores;
        if scores && let [Word::Number(4), Word::Tens(20), rest @ ..] = self.words {
            self.words = rest;
            return Some(self.ones_behind(80).wrapping_add(80));
        }
        if let Some(Word::Tens(tens)) = self.take(|w| matches!(w, Word::Tens(_))) {
            return Some(self.ones_behind(tens).wrapping_add(tens));
        }
        if self.take(|w| w == Word::Article).is_some() {
            return Some(1);
        }
        self.below_thirty()
    }

    /// What stands behind `tens` and belongs to them; 0 if nothing does.
    fn ones_behind(&mut self, tens: u64) -> u64 {
        let to_nineteen = self.vocabulary.by_scores && matches!(tens, 60 | 80);
        let ones = self.attempt(|r| {
            if r.vocabulary.and_after_tens {
                r.take(|w| w == Word::And);
            }
            let ones = if to_nineteen { r.below_thirty() } else { r.number(1..=9) };
            ones.filter(|n| (1..20).contains(n))
        });
        ones.unwrap_or(0)
    }

    fn below_thirty(&mut self) -> Option<u64> {
        let n = self.number(0..=29)?;
        if n == 10 && self.vocabulary.by_scores {
            // `dix-sept`.
            return Some(self.attempt(|r| r.number(7..=9)).unwrap_or(0).wrapping_add(10));
        }
        Some(n)
    }

    fn number(&mut self, range: core::ops::RangeInclusive<u64>) -> Option<u64> {
        match self.take(|w| matches!(w, Word::Number(n) if range.contains(&n)))? {
            Word::Number(n) => Some(n),
            _ => None,
        }
    }

    fn skip_and(&mut self) {
        if self.vocabulary.and_after_hundred {
            self.take(|w| w == Word::And);
        }
    }
}
