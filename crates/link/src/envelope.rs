//! What every version of a link has around its contents: version, length, check.
//!
//! ```text
//! symbol   0        1                 2 …          last six
//!          version  length modulo 32  contents     check
//! ```
//! The check is the BCH code over GF(32) published as Bech32m (BIP 173 and BIP 350,
//! generator and final constant from memory, held to their published words in the
//! tests below). It refuses, with certainty: any change of up to four symbols among
//! 89 and of up to three among 1023; any damage within six neighbouring symbols,
//! so every exchange of neighbours. A cut or an addition of 1 to 31 symbols at an
//! end is refused by the length symbol; whatever else happens passes with a chance
//! of 2⁻³⁰.

use crate::LinkError;
use crate::alphabet;

/// The most symbols of a payload, all told.
pub const MOST: usize = 4096;
/// Version, length, check.
pub(crate) const OVERHEAD: usize = 8;
const CHECK: usize = 6;

const GENERATOR: [u32; 5] = [0x3b6a_57b2, 0x2650_8e6d, 0x1ea1_19fa, 0x3d42_33dd, 0x2a14_62b3];
const FINAL: u32 = 0x2bc8_30a3;

/// One more symbol through the shift register.
const fn step(state: u32, symbol: u8) -> u32 {
    let top = state >> 25;
    let mut next = (state & 0x01ff_ffff) << 5 ^ (symbol & 31) as u32;
    let [a, b, c, d, e] = GENERATOR;
    // Without a branch on data; five taps.
    next ^= a.wrapping_mul(top & 1);
    next ^= b.wrapping_mul(top >> 1 & 1);
    next ^= c.wrapping_mul(top >> 2 & 1);
    next ^= d.wrapping_mul(top >> 3 & 1);
    next ^= e.wrapping_mul(top >> 4 & 1);
    next
}

/// The register after all of `symbols`, the check among them.
fn register(symbols: &[u8]) -> u32 {
    symbols.iter().fold(1, |state, &symbol| step(state, symbol))
}

fn length_symbol(total: usize) -> u8 {
    (total % 32) as u8
}

/// Puts `contents` of `version` into its envelope; [`None`] when it is too long.
pub(crate) fn seal(version: u8, contents: &[u8]) -> Option<Vec<u8>> {
    let total = contents.len().wrapping_add(OVERHEAD);
    if total > MOST {
        return None;
    }
    let mut symbols = Vec::with_capacity(total);
    symbols.push(version);
    symbols.push(length_symbol(total));
    symbols.extend_from_slice(contents);
    let check = [0; CHECK].into_iter().fold(register(&symbols), step) ^ FINAL;
    symbols.extend([25, 20, 15, 10, 5, 0].map(|by| (check >> by & 31) as u8));
    Some(symbols)
}

/// The version and the contents of a payload that arrived whole.
pub(crate) fn open(symbols: &[u8]) -> Result<(u8, &[u8]), LinkError> {
    let found = symbols.len();
    if found > MOST {
        return Err(LinkError::TooLong { most: MOST });
    }
    let [version, length, rest @ ..] = symbols else { return Err(LinkError::TooShort) };
    let Some((contents, _)) = rest.split_last_chunk::<CHECK>() else {
        return Err(LinkError::TooShort);
    };
    let missing = usize::from(*length).wrapping_sub(found) % 32;
    match missing {
        0 if register(symbols) == FINAL => Ok((*version, contents)),
        0 => Err(LinkError::Changed),
        1..=16 => Err(LinkError::Cut { found, missing }),
        _ => Err(LinkError::Grown { found, extra: 32_usize.saturating_sub(missing) }),
    }
}

/// Follows a text symbol by symbol and says where a whole payload ends.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Scanner {
    state: u32,
    seen: usize,
    length: u8,
}

impl Scanner {
    pub(crate) const fn new() -> Self {
        Self { state: 1, seen: 0, length: 0 }
    }
    pub(crate) fn push(&mut self, symbol: u8) {
        self.state = step(self.state, symbol);
        if self.seen == 1 {
            self.length = symbol;
        }
        self.seen = self.seen.wrapping_add(1);
    }
    /// Whether what was pushed so far is a whole payload.
    pub(crate) fn whole(&self) -> bool {
        self.state == FINAL
            && (OVERHEAD..=MOST).contains(&self.seen)
            && length_symbol(self.seen) == self.length
    }
}

/// The symbols of a payload's letters.
pub(crate) fn symbols(payload: &str) -> Result<Vec<u8>, LinkError> {
    let mut symbols = Vec::with_capacity(payload.len().min(MOST));
    for (at, letter) in payload.chars().enumerate() {
        if at == MOST {
            return Err(LinkError::TooLong { most: MOST });
        }
        let symbol =
            alphabet::symbol(letter).ok_or(LinkError::Letter { letter, at: at.wrapping_add(1) })?;
        symbols.push(symbol);
    }
    Ok(symbols)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// A Bech32 or Bech32m word with an ASCII prefix, by the rule of BIP 173: the
    /// prefix's high bits, 0, its low bits, then the data.
    fn published(word: &str) -> u32 {
        let word = word.to_ascii_lowercase();
        let (prefix, data) = word.rsplit_once('1').unwrap();
        let letters = "qpzry9x8gf2tvdw0s3jn54khce6mua7l";
        let mut symbols: Vec<u8> = prefix.bytes().map(|b| b >> 5).collect();
        symbols.push(0);
        symbols.extend(prefix.bytes().map(|b| b & 31));
        symbols.extend(data.chars().map(|c| u8::try_from(letters.find(c).unwrap()).unwrap()));
        register(&symbols)
    }

    /// Words that BIP 173 and BIP 350 list as sound (from memory; a slip of memory
    /// would fail here with a chance of 1 − 2⁻³⁰).
    #[test]
    fn the_check_is_the_published_one() {
        for word in ["A12UEL5L", "abcdef1qpzry9x8gf2tvdw0s3jn54khce6mua7lmqqqxw"] {
            assert_eq!(published(word), 1, "{word}");
        }
        for word in ["A1LQFN3A", "abcdef1l7aum6echk45nj3s0wdvt2fg8x9yrzpqzd3ryx"] {
            assert_eq!(published(word), FINAL, "{word}");
        }
    }

    proptest! {
        #[test]
        fn what_is_sealed_opens(version in 0..32_u8, contents in prop::collection::vec(0..32_u8, 0..300)) {
            let symbols = seal(version, &contents).unwrap();
            prop_assert_eq!(open(&symbols), Ok((version, contents.as_slice())));
            let mut scanner = Scanner::new();
            for (at, &symbol) in symbols.iter().enumerate() {
                prop_assert!(!scanner.whole(), "whole at {at}");
                scanner.push(symbol);
            }
            prop_assert!(scanner.whole());
        }

        /// Up to three symbols anywhere, in payloads up to the code's length.
        #[test]
        fn three_changed_symbols_are_refused(
            contents in prop::collection::vec(0..32_u8, 0..1000),
            changes in prop::collection::vec((any::<prop::sample::Index>(), 1..32_u8), 1..=3),
        ) {
            let sealed = seal(1, &contents).unwrap();
            let mut symbols = sealed.clone();
            for (at, change) in changes {
                let at = at.index(symbols.len());
                symbols[at] ^= change;
            }
            prop_assume!(symbols != sealed);
            prop_assert!(open(&symbols).is_err());
        }

        /// Whatever happens to six neighbours.
        #[test]
        fn damage_within_six_neighbours_is_refused(
            contents in prop::collection::vec(0..32_u8, 0..1000),
            at in any::<prop::sample::Index>(),
            by in prop::collection::vec(0..32_u8, 6),
        ) {
            let sealed = seal(1, &contents).unwrap();
            let mut symbols = sealed.clone();
            let at = at.index(symbols.len() - 5);
            for (symbol, by) in symbols[at..].iter_mut().zip(by) {
                *symbol ^= by;
            }
            prop_assume!(symbols != sealed);
            prop_assert!(open(&symbols).is_err());
        }

        /// A cut or an addition of fewer than 32, at either end.
        #[test]
        fn a_cut_or_an_addition_is_refused(
            contents in prop::collection::vec(0..32_u8, 40..200),
            extra in prop::collection::vec(0..32_u8, 1..32),
        ) {
            let sealed = seal(1, &contents).unwrap();
            let cut = &sealed[..sealed.len() - extra.len()];
            prop_assert!(open(cut).is_err());
            prop_assert!(open(&[&sealed, &extra[..]].concat()).is_err());
        }
    }

    #[test]
    fn the_longest_payload_opens_and_one_symbol_more_is_refused() {
        let mut longest = seal(1, &[7; MOST - OVERHEAD]).unwrap();
        assert_eq!(longest.len(), MOST);
        assert!(open(&longest).is_ok());
        assert_eq!(seal(1, &[7; MOST - OVERHEAD + 1]), None);
        for _ in 0..2 {
            longest.push(0);
            assert_eq!(open(&longest), Err(LinkError::TooLong { most: MOST }));
        }
        let endless = "1".repeat(MOST + 1);
        assert_eq!(symbols(&endless), Err(LinkError::TooLong { most: MOST }));
    }

    #[test]
    fn a_cut_says_how_much_is_missing() {
        let sealed = seal(1, &[9; 40]).unwrap();
        assert_eq!(open(&sealed[..45]), Err(LinkError::Cut { found: 45, missing: 3 }));
        assert_eq!(
            open(&[&sealed[..], &[1, 2]].concat()),
            Err(LinkError::Grown { found: 50, extra: 2 })
        );
        assert_eq!(open(&sealed[..7]), Err(LinkError::TooShort));
    }
}
