//! RS(30,24) over GF(32): roots α¹ … α⁶, distance 7.
//!
//! Its own decoder. Where the errors are: from the syndromes (Peterson, 1960), or with
//! gaps by trying each place. What they are: six linear equations, all of which must hold.

use super::field::{inverse, power, times};
use hangtrue_core::short::sort;

/// Symbols of data.
pub const DATA: usize = 24;
/// Check symbols.
pub const CHECK: usize = 6;
/// Symbols of a word.
pub const WORD: usize = DATA + CHECK;

/// The generator polynomial less its leading 1, highest power first.
const GENERATOR: [u8; CHECK] = [5, 9, 5, 30, 15, 23];

/// The six check symbols of `data`, which may be shorter than [`DATA`]: it then
/// stands behind zeros.
pub(super) fn check(data: &[u8]) -> [u8; CHECK] {
    let mut rest = [0; CHECK];
    for &symbol in data {
        let [first, tail @ ..] = rest;
        let factor = first ^ (symbol & 31);
        let shifted = tail.into_iter().chain([0]);
        for ((slot, old), tap) in rest.iter_mut().zip(shifted).zip(GENERATOR) {
            *slot = old ^ times(factor, tap);
        }
    }
    rest
}

/// A symbol that was heard as something else, or not at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Change {
    /// Its place in the word.
    pub(super) at: usize,
    /// What it was.
    pub(super) symbol: u8,
}

/// What was changed on the way, for a word of at most [`WORD`] symbols (a shorter one
/// stands behind zeros) in which unheard symbols are [`None`].
///
/// With g gaps, up to e other changes are corrected where 2e + g ≤ 4, which leaves two
/// of the six check symbols to refuse by; or up to six gaps and no other change.
/// [`None`]: refused. Gaps are always among the changes, in the order of the word.
pub(super) fn correct(word: &[Option<u8>]) -> Option<Vec<Change>> {
    if word.len() > WORD {
        return None;
    }
    let gaps: Vec<usize> =
        word.iter().enumerate().filter(|(_, s)| s.is_none()).map(|(at, _)| at).collect();
    if gaps.len() > CHECK {
        return None;
    }
    let syndromes = syndromes(word);
    let changes = |extra: &[usize]| {
        let places: Vec<usize> = gaps.iter().chain(extra).copied().collect();
        changes(word, &places, syndromes)
    };
    // As few errors as explain the word.
    if let Some(found) = changes(&[]) {
        return Some(found);
    }
    match gaps.len() {
        0 => changes(&located(word.len(), syndromes)?),
        1 | 2 => (0..word.len()).filter(|at| !gaps.contains(at)).find_map(|at| changes(&[at])),
        _ => None,
    }
}

/// The changes at `places`, if changes there explain all six syndromes.
fn changes(word: &[Option<u8>], places: &[usize], syndromes: [u8; CHECK]) -> Option<Vec<Change>> {
    let by = solve(word.len(), places, syndromes)?;
    let change = |(&at, by)| Some(Change { at, symbol: word.get(at)?.unwrap_or(0) ^ by });
    let mut changes: Vec<Change> = places.iter().zip(by).filter_map(change).collect();
    sort(&mut changes, |a, b| a.at < b.at);
    Some(changes)
}

/// Where one or two errors must be, if there are no more: the roots of the error
/// locator X² + pX + q, or X + p.
fn located(length: usize, syndromes: [u8; CHECK]) -> Option<Vec<usize>> {
    let [s1, s2, s3, s4, ..] = syndromes;
    let determinant = times(s2, s2) ^ times(s1, s3);
    let (two, p, q) = if determinant == 0 {
        (false, times(s2, inverse(s1)), 0)
    } else {
        let scale = inverse(determinant);
        let p = times(times(s2, s3) ^ times(s1, s4), scale);
        (true, p, times(times(s3, s3) ^ times(s2, s4), scale))
    };
    let is_root = |at: &usize| {
        let x = power(from_end(length, *at));
        if two { times(x, x) ^ times(p, x) ^ q == 0 } else { x == p }
    };
    let places: Vec<usize> = (0..length).filter(is_root).collect();
    // An error outside the word, or a double root: not one or two errors.
    (places.len() == usize::from(two).saturating_add(1)).then_some(places)
}

/// The power of the symbol at `at` in a word of `length`: the last one's is 0.
fn from_end(length: usize, at: usize) -> usize {
    length.saturating_sub(at).saturating_sub(1)
}

/// The word at α¹ … α⁶; gaps count as 0.
fn syndromes(word: &[Option<u8>]) -> [u8; CHECK] {
    let mut values = [0; CHECK];
    for (root, value) in (1..).zip(&mut values) {
        for symbol in word {
            *value = times(*value, power(root)) ^ symbol.unwrap_or(0);
        }
    }
    values
}

/// By how much the symbols at `places`, six at most, are off, if that explains all six
/// syndromes: Gauss' elimination. Changes at chosen places are never nothing, but for
/// gaps that were 0.
fn solve(length: usize, places: &[usize], syndromes: [u8; CHECK]) -> Option<Vec<u8>> {
    let count = places.len();
    // Row j: Σ change · (α^j)^(power of its place) = syndrome j, the last column.
    let mut rows = [[0_u8; CHECK + 1]; CHECK];
    for ((root, row), syndrome) in (1..).zip(&mut rows).zip(syndromes) {
        for (slot, at) in row.iter_mut().zip(places) {
            *slot = power(from_end(length, *at).saturating_mul(root));
        }
        *row.get_mut(count)? = syndrome;
    }
    for column in 0..count {
        let pivot = (column..CHECK).find(|&row| entry(&rows, row, column) != 0)?;
        rows.swap(pivot, column);
        let scale = inverse(entry(&rows, column, column));
        let lead = rows.get(column)?.map(|value| times(value, scale));
        for (at, row) in rows.iter_mut().enumerate() {
            let factor = if at == column { 0 } else { *row.get(column)? };
            for (value, lead) in row.iter_mut().zip(lead) {
                *value = if at == column { lead } else { *value ^ times(factor, lead) };
            }
        }
    }
    let consistent = (count..CHECK).all(|row| entry(&rows, row, count) == 0);
    consistent.then(|| (0..count).map(|row| entry(&rows, row, count)).collect())
}

fn entry(rows: &[[u8; CHECK + 1]; CHECK], row: usize, column: usize) -> u8 {
    rows.get(row).and_then(|row| row.get(column)).copied().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::alphabet::letters;

    /// A word of data that is the same on every machine.
    fn word(seed: u32) -> [u8; WORD] {
        let mut state = seed;
        let mut word = [0; WORD];
        for symbol in &mut word[..DATA] {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            *symbol = (state >> 27) as u8;
        }
        let check = check(&word[..DATA]);
        word[DATA..].copy_from_slice(&check);
        word
    }

    fn heard(word: &[u8]) -> Vec<Option<u8>> {
        word.iter().copied().map(Some).collect()
    }

    /// Values worked out twice, independently, before this code was written.
    #[test]
    fn the_check_values_hold() {
        let data: Vec<u8> = (0..24).collect();
        assert_eq!(letters(&data) + &letters(&check(&data)), "0123456789ABCDEFGHJKMNPQ7XBA4C");
        let mut one = [0; 24];
        one[23] = 1;
        assert_eq!(letters(&check(&one)), "595YFQ");
        // The generator is the product of (x − αⁿ), n = 1 … 6.
        let mut product = vec![1_u8];
        for n in 1..=6 {
            let mut next = vec![0; product.len() + 1];
            for (at, &coefficient) in product.iter().enumerate() {
                next[at] ^= coefficient;
                next[at + 1] ^= times(coefficient, power(n));
            }
            product = next;
        }
        assert_eq!(product, [1, 5, 9, 5, 30, 15, 23]);
    }

    #[test]
    fn an_untouched_word_needs_no_change_and_a_short_one_stands_behind_zeros() {
        for seed in 0..50 {
            assert_eq!(correct(&heard(&word(seed))), Some(vec![]));
        }
        let data = [3, 1, 4];
        let mut long = [0; DATA];
        long[DATA - 3..].copy_from_slice(&data);
        assert_eq!(check(&data), check(&long));
    }

    #[test]
    fn every_single_change_is_corrected() {
        let word = word(7);
        for at in 0..WORD {
            for by in 1..32 {
                let mut wrong = heard(&word);
                wrong[at] = Some(word[at] ^ by);
                assert_eq!(correct(&wrong), Some(vec![Change { at, symbol: word[at] }]));
            }
        }
    }

    /// All 435 pairs of places and all 961 pairs of changes.
    #[test]
    fn every_double_change_is_corrected() {
        let word = word(11);
        for first in 0..WORD {
            for second in first + 1..WORD {
                for by in 0..31 * 31 {
                    let mut wrong = heard(&word);
                    wrong[first] = Some(word[first] ^ (by / 31 + 1) as u8);
                    wrong[second] = Some(word[second] ^ (by % 31 + 1) as u8);
                    let expected = [first, second].map(|at| Change { at, symbol: word[at] });
                    assert_eq!(correct(&wrong).as_deref(), Some(&expected[..]));
                }
            }
        }
    }

    struct Lcg(u64);
    impl Lcg {
        fn below(&mut self, n: usize) -> usize {
            self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            (self.0 >> 33) as usize % n
        }
        fn symbol(&mut self) -> u8 {
            self.below(32) as u8
        }
        /// `count` places that differ.
        fn places(&mut self, count: usize) -> Vec<usize> {
            let mut places = Vec::new();
            while places.len() < count {
                let at = self.below(WORD);
                if !places.contains(&at) {
                    places.push(at);
                }
            }
            places
        }
    }

    #[test]
    fn three_and_four_changes_are_refused() {
        let mut random = Lcg(3);
        for round in 0..100_000 {
            let word = word(round);
            let mut wrong = heard(&word);
            for at in random.places(3 + round as usize % 2) {
                wrong[at] = Some(word[at] ^ (1 + random.below(31) as u8));
            }
            assert_eq!(correct(&wrong), None);
        }
    }

    #[test]
    fn gaps_and_changes_together_are_corrected_up_to_the_stated_bound() {
        let mut random = Lcg(4);
        for (gaps, errors) in [(1, 1), (2, 1), (1, 0), (2, 0), (3, 0), (4, 0), (5, 0), (6, 0)] {
            for round in 0..2_000 {
                let word = word(round);
                let places = random.places(gaps + errors);
                let mut wrong = heard(&word);
                for &at in &places[..gaps] {
                    wrong[at] = None;
                }
                for &at in &places[gaps..] {
                    wrong[at] = Some(word[at] ^ (1 + random.below(31) as u8));
                }
                let changes = correct(&wrong).expect("within the bound");
                assert_eq!(changes.len(), places.len());
                assert!(changes.is_sorted_by_key(|change| change.at));
                assert!(changes.iter().all(|change| word[change.at] == change.symbol));
            }
        }
        let mut seven = heard(&word(1));
        seven[..7].fill(None);
        assert_eq!(correct(&seven), None);
    }

    /// A million random words: no panic, and what is corrected is within two places.
    #[test]
    #[ignore = "half a minute; run with --ignored"]
    fn a_million_random_words() {
        let mut random = Lcg(5);
        let mut corrected = 0;
        for _ in 0..1_000_000 {
            let word: Vec<_> = (0..random.below(WORD + 3))
                .map(|_| (random.below(40) != 0).then(|| random.symbol()))
                .collect();
            if let Some(changes) = correct(&word) {
                corrected += 1;
                let gaps = word.iter().filter(|symbol| symbol.is_none()).count();
                assert!(changes.len() <= gaps + 2);
            }
        }
        println!("{corrected} of a million random words were near one of the code");
    }
}
