//! A column's name as words: whatever the case, the separators, the unit behind it.

use super::{Measure, vocabulary};

/// The words of a header, and the unit it names.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Header {
    /// Lower case, in their order, without the unit.
    words: Vec<String>,
    /// The unit.
    pub(super) measure: Option<Measure>,
    /// Whether there was a sign that says number: `Unit #`.
    pub(super) number_sign: bool,
}

/// What one, two and three are called.
const NUMBERS: [[&str; 4]; 3] =
    [["1", "first", "1st", "a"], ["2", "second", "2nd", "b"], ["3", "third", "3rd", "c"]];

impl Header {
    /// `postToPost_Width (in.)` → `post to post width`, inches.
    pub(super) fn of(name: &str) -> Self {
        let mut header = Self::default();
        // In a choice, `in/mm`, no `in` is the small word of `in mm`.
        let choice = name.contains(['/', '|']);
        let (mut two, mut small) = (false, false);
        let words = vocabulary::in_english(split(name));
        let named = words.len() > 1;
        for (at, word) in words.into_iter().enumerate() {
            // A header of nothing but `in` is no unit's, nor is the `m` before a name.
            let unit = Measure::from_name(&word).filter(|_| named && (at > 0 || word.len() > 1));
            match unit {
                _ if word == "#" => header.number_sign = true,
                None => header.words.push(word),
                Some(unit) => {
                    let known = header.measure.filter(|_| !small || choice);
                    two |= known.is_some_and(|known| known != unit);
                    header.measure = Some(unit);
                    small = word == "in";
                    continue;
                }
            }
            small = false;
        }
        // Nobody knows which: the row or the numbers have to say it.
        header.measure = header.measure.filter(|_| !two);
        header
    }

    /// Whether it has this word.
    pub(super) fn has(&self, word: &str) -> bool {
        self.words.iter().any(|own| own == word)
    }

    /// Whether it has any of these.
    pub(super) fn any(&self, words: &[&str]) -> bool {
        words.iter().any(|word| self.has(word))
    }

    /// Whether it is just this one word.
    pub(super) fn is(&self, words: &[&str]) -> bool {
        matches!(self.words.as_slice(), [only] if words.contains(&only.as_str()))
    }

    /// Whether this word stands directly before that one.
    pub(super) fn pair(&self, first: &str, second: &str) -> bool {
        self.words.windows(2).any(|pair| matches!(pair, [a, b] if a == first && b == second))
    }

    /// Whether one of `first` stands directly before one of `second`.
    pub(super) fn joined(&self, first: &[&str], second: &[&str]) -> bool {
        first.iter().any(|first| second.iter().any(|second| self.pair(first, second)))
    }

    /// Whether it is of one of `whose`: `width of the header`. `width of the door at the header`
    /// is not, nor is `of` behind one of `but`.
    pub(super) fn belongs_to(&self, whose: &[&str], but: &[&[&str]]) -> bool {
        let (mut before, mut of) = ("", false);
        for word in self.words.iter().map(String::as_str) {
            match word {
                "of" => of = !but.iter().any(|words| words.contains(&before)),
                "at" => of = false,
                word if of && whose.contains(&word) => return true,
                _ => {}
            }
            before = word;
        }
        false
    }

    /// Whether one of `first` stands somewhere before one of `second`.
    pub(super) fn before(&self, first: &[&str], second: &[&str]) -> bool {
        let mut words = self.words.iter().map(String::as_str);
        words.any(|word| first.contains(&word)) && words.any(|word| second.contains(&word))
    }

    /// How often it has this word.
    pub(super) fn count(&self, word: &str) -> usize {
        self.words.iter().filter(|own| *own == word).count()
    }

    /// The number in it, if there is one from 1 to 3: `width 2`, `bow third`.
    pub(super) fn number(&self) -> Option<usize> {
        NUMBERS.iter().position(|names| self.any(names))
    }

    /// The words that are neither a number nor one of those to be left out.
    pub(super) fn unnumbered(&self, left_out: impl Fn(&str) -> bool) -> String {
        let is_number = |word: &str| {
            let named = NUMBERS.iter().any(|names| names.contains(&word));
            named || word.bytes().all(|byte| byte.is_ascii_digit())
        };
        let words = self.words.iter().map(String::as_str);
        words.filter(|word| !is_number(word) && !left_out(word)).collect::<Vec<_>>().join(" ")
    }
}

/// Words and numbers: cut at everything else, before an upper-case letter behind a
/// lower-case one, and between letters and digits.
fn split(name: &str) -> Vec<String> {
    let mut words: Vec<String> = Vec::new();
    let mut word = String::new();
    let mut before = ' ';
    for letter in name.chars() {
        let kept = letter.is_alphanumeric();
        let cut = !kept
            || (letter.is_uppercase() && before.is_lowercase())
            || (letter.is_ascii_digit() != before.is_ascii_digit() && before.is_alphanumeric());
        if cut && !word.is_empty() {
            words.push(core::mem::take(&mut word));
        }
        match letter {
            '#' | '№' => words.push("#".to_owned()),
            '"' | '″' | '”' if !words.is_empty() => words.push("in".to_owned()),
            _ if kept => word.extend(letter.to_lowercase()),
            _ => {}
        }
        before = letter;
    }
    if !word.is_empty() {
        words.push(word);
    }
    // `1st` was cut between the digit and its ending.
    let mut joined: Vec<String> = Vec::with_capacity(words.len());
    for word in words {
        match joined.last_mut() {
            Some(last)
                if last.bytes().all(|byte| byte.is_ascii_digit())
                    && matches!(word.as_str(), "st" | "nd" | "rd") =>
            {
                last.push_str(&word);
            }
            _ => joined.push(word),
        }
    }
    joined
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_cut_into_words_and_a_unit() {
        for (name, words, measure) in [
            ("Width (in)", "width", Some(Measure::Inch)),
            ("WIDTH_IN", "width", Some(Measure::Inch)),
            ("post-to-post width, inches", "post to post width", Some(Measure::Inch)),
            ("postToPostWidthMm", "post to post width", Some(Measure::Millimetre)),
            ("Width\"", "width", Some(Measure::Inch)),
            ("\"Unit", "unit", None),
            ("width.low", "width low", None),
            ("Width2", "width 2", None),
            ("bow 1st [ft]", "bow 1st", Some(Measure::Foot)),
            ("In", "in", None),
            ("mm Width", "width", Some(Measure::Millimetre)),
            ("M width", "m width", None),
            ("Header depth in cm", "header depth", Some(Measure::Centimetre)),
            ("header_in_center", "header center", Some(Measure::Inch)),
            ("Width (in/mm)", "width", None),
            ("Width inches or mm", "width or", None),
            ("Width mm (millimeters)", "width", Some(Measure::Millimetre)),
            ("", "", None),
        ] {
            let header = Header::of(name);
            assert_eq!(
                (header.words.join(" ").as_str(), header.measure),
                (words, measure),
                "{name}"
            );
        }
        assert!(Header::of("Unit #").number_sign);
    }
}
