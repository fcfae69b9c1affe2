//! What holds for a sentence in any language.

use hangtrue_core::say::Language;

/// English words that are no word of the other two, or hardly one in such a sentence.
const ENGLISH: [&str; 16] = [
    "the", "and", "of", "is", "not", "than", "reads", "reading", "width", "height", "depth",
    "header", "door", "left", "right", "again",
];

/// `said` is `source` in another language: the same numbers, no English left.
pub(crate) fn alike(source: &str, said: &str, language: Language) {
    assert_ne!(source, said);
    assert_eq!(numbers(source), numbers(said), "{language:?}: {source} / {said}");
    for word in said.split(|letter: char| !letter.is_alphabetic()) {
        assert!(!ENGLISH.contains(&word.to_lowercase().as_str()), "{language:?}: {word} in {said}");
    }
}

/// Every run of digits, in order of size: a comma for a point changes nothing.
fn numbers(text: &str) -> Vec<&str> {
    let mut numbers: Vec<_> =
        text.split(|letter: char| !letter.is_ascii_digit()).filter(|run| !run.is_empty()).collect();
    numbers.sort_unstable();
    numbers
}

/// `text` is set as the language is printed.
pub(crate) fn well_set(text: &str, language: Language) {
    assert!(!text.trim().is_empty());
    // The mark itself, as something to be typed.
    let text = text.replace("“?”", "").replace("«\u{a0}?\u{a0}»", "");
    let text = text.as_str();
    assert!(!text.contains("   ") && text.trim() == text, "{text:?}");
    match language {
        Language::English => {}
        Language::Spanish => {
            assert_eq!(text.matches('¿').count(), text.matches('?').count(), "{text}");
            assert!(!text.contains(['«', '»']), "{text}");
        }
        Language::French => {
            for (at, _) in text.match_indices(':').filter(|(at, _)| !text[*at..].starts_with("://"))
            {
                assert!(
                    text[..at].ends_with('\u{a0}'),
                    "a no-break space before the colon: {text}"
                );
            }
            for spaced in [" ;", " ?", " !", "\u{a0};", "\u{a0}?", "\u{a0}!"] {
                assert!(!text.contains(spaced), "{text}");
            }
            assert_eq!(text.matches('«').count(), text.matches("«\u{a0}").count(), "{text}");
            assert_eq!(text.matches('»').count(), text.matches("\u{a0}»").count(), "{text}");
            assert!(!text.contains(['“', '”']), "{text}");
            let letters: Vec<char> = text.chars().collect();
            let elided = |three: &[char]| matches!(three, [a, '\'', b] if a.is_alphabetic() && b.is_alphabetic());
            assert!(!letters.windows(3).any(elided), "a typewriter's apostrophe: {text}");
        }
    }
}
