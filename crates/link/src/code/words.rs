//! Letters and figures as words, for a bad line.
//!
//! The letters are the spelling alphabet of ICAO (Annex 10, volume II) and the ITU
//! (Radio Regulations, appendix 14), the same in every language; from memory. Figures
//! are said in the caller's own language.

use crate::say::script_words;
use hangtrue_core::say::Language;

/// A figure 0 to 9 in words of `language`.
pub(super) fn figure(figure: u8, language: Language) -> &'static str {
    script_words(language).figures.get(usize::from(figure)).copied().unwrap_or_default()
}

const ALPHABET: [(char, &str); 26] = [
    ('A', "Alfa"),
    ('B', "Bravo"),
    ('C', "Charlie"),
    ('D', "Delta"),
    ('E', "Echo"),
    ('F', "Foxtrot"),
    ('G', "Golf"),
    ('H', "Hotel"),
    ('I', "India"),
    ('J', "Juliett"),
    ('K', "Kilo"),
    ('L', "Lima"),
    ('M', "Mike"),
    ('N', "November"),
    ('O', "Oscar"),
    ('P', "Papa"),
    ('Q', "Quebec"),
    ('R', "Romeo"),
    ('S', "Sierra"),
    ('T', "Tango"),
    ('U', "Uniform"),
    ('V', "Victor"),
    ('W', "Whiskey"),
    ('X', "X-ray"),
    ('Y', "Yankee"),
    ('Z', "Zulu"),
];

/// Other spellings that a clerk types for the same word.
const ALSO: [(&str, char); 9] = [
    ("alpha", 'A'),
    ("juliet", 'J'),
    ("whisky", 'W'),
    ("oh", '0'),
    ("niner", '9'),
    ("zero", '0'),
    ("cero", '0'),
    ("une", '1'),
    ("zulú", 'Z'),
];

/// `letters` in words, one a letter.
#[must_use]
pub fn spell(letters: &str, language: Language) -> Vec<&'static str> {
    letters.chars().filter_map(|letter| word(letter, language)).collect()
}

fn word(letter: char, language: Language) -> Option<&'static str> {
    if let Some(figure) = letter.to_digit(10) {
        return Some(self::figure(u8::try_from(figure).ok()?, language));
    }
    let upper = letter.to_ascii_uppercase();
    ALPHABET.iter().find(|(known, _)| *known == upper).map(|(_, word)| *word)
}

/// The letter of a spelling word in any of the languages, case and accents aside.
pub(super) fn letter(word: &str) -> Option<char> {
    let plain: String = word
        .chars()
        .flat_map(char::to_lowercase)
        .filter(|letter| *letter != '-')
        .map(|letter| match letter {
            'é' | 'è' => 'e',
            'í' => 'i',
            other => other,
        })
        .collect();
    let same = |known: &str| {
        let known = known.chars().flat_map(char::to_lowercase).filter(|letter| *letter != '-');
        known.map(|letter| if letter == 'é' { 'e' } else { letter }).eq(plain.chars())
    };
    let spelled = ALPHABET.iter().find(|(_, known)| same(known)).map(|(letter, _)| *letter);
    spelled
        .or_else(|| ALSO.iter().find(|(known, _)| same(known)).map(|(_, letter)| *letter))
        .or_else(|| {
            Language::ALL.into_iter().find_map(|language| {
                let at = script_words(language).figures.iter().position(|known| same(known))?;
                char::from_digit(u32::try_from(at).ok()?, 10)
            })
        })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::alphabet;

    #[test]
    fn every_letter_of_the_code_is_said_and_understood_in_every_language() {
        for language in Language::ALL {
            for symbol in 0..32 {
                let letter = alphabet::letter(symbol);
                let word = super::word(letter, language).unwrap();
                assert_eq!(super::letter(word), Some(letter), "{word}");
                assert_eq!(super::letter(&word.to_uppercase()), Some(letter), "{word}");
            }
        }
        assert_eq!(
            spell("595YFQ", Language::Spanish).join(" "),
            "cinco nueve cinco Yankee Foxtrot Quebec"
        );
        assert_eq!(letter("xray"), Some('X'));
        assert_eq!(letter("ZERO"), Some('0'));
        assert_eq!(letter("zéro"), Some('0'));
        assert_eq!(letter("wheelbarrow"), None);
    }
}
