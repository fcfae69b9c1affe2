//! Folded text to tokens.

use super::ReadErrorKind;
use super::fold::MINUS;
use super::unit::Measure;
use super::words::{Vocabulary, Word};

/// One token of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Token<'t> {
    /// Digits with the points and commas among them, as typed.
    Digits(&'t str),
    Slash,
    Dash,
    Comma,
    /// A prime or a quotation mark.
    Mark(Measure),
    Word(Word),
}

impl Token<'_> {
    /// The unit it names, if it is one.
    pub(super) const fn measure(self) -> Option<Measure> {
        match self {
            Self::Mark(measure) | Self::Word(Word::Unit(measure)) => Some(measure),
            _ => None,
        }
    }
}

/// The tokens of `folded`, its words looked up in `vocabulary`.
pub(super) fn scan<'t>(
    folded: &'t str,
    vocabulary: &Vocabulary,
) -> Result<Vec<Token<'t>>, ReadErrorKind> {
    let mut tokens: Vec<Token<'t>> = Vec::with_capacity(12);
    let mut rest = folded;
    let mut before = b' ';
    while let Some(first) = rest.bytes().next() {
        let second = rest.as_bytes().get(1).copied().unwrap_or(b' ');
        let starts_number = first.is_ascii_digit()
            || (matches!(first, b'.' | b',')
                && second.is_ascii_digit()
                && matches!(before, b' ' | b'-'));
        let mut used = 1;
        if starts_number {
            used = run(rest, |b| b.is_ascii_digit() || matches!(b, b'.' | b','));
            tokens.push(Token::Digits(rest.get(..used).unwrap_or_default()));
        } else if first.is_ascii_lowercase() {
            used = run(rest, |b| b.is_ascii_lowercase());
            let word = rest.get(..used).unwrap_or_default();
            let next = rest.as_bytes().get(used).copied().unwrap_or(b' ');
            let exponent = next.is_ascii_digit() || matches!(next, b'+' | b'-');
            if word == "e" && before.is_ascii_digit() && exponent {
                return Err(ReadErrorKind::Exponent);
            }
            tokens.push(Token::Word(known(word, vocabulary)?));
            // `ft.`, `in.`, and the full stop of a dictated sentence.
            if next == b'.' {
                used = used.saturating_add(1);
            }
        } else {
            match first {
                b' ' => {}
                b'/' => tokens.push(Token::Slash),
                b'-' => tokens.push(Token::Dash),
                b',' => tokens.push(Token::Comma),
                b'&' => tokens.push(Token::Word(Word::And)),
                b'"' => tokens.push(Token::Mark(Measure::Inch)),
                b'\'' if second == b'\'' => {
                    used = 2;
                    tokens.push(Token::Mark(Measure::Inch));
                }
                // An elided word: `d'un`.
                b'\'' if tokens.last() == Some(&Token::Word(Word::Of)) => {}
                b'\'' => tokens.push(Token::Mark(Measure::Foot)),
                b'+' => return Err(ReadErrorKind::PlusSign),
                b'~' | b'?' | b'<' | b'>' => return Err(ReadErrorKind::Approximate),
                b'*' | b';' => return Err(ReadErrorKind::TwoReadings),
                b'^' => return Err(ReadErrorKind::Exponent),
                _ if first == MINUS as u8 => return Err(ReadErrorKind::Negative),
                _ => return Err(ReadErrorKind::Unknown),
            }
        }
        let (done, next) = rest.split_at_checked(used).unwrap_or((rest, ""));
        before = done.bytes().last().unwrap_or(b' ');
        rest = next;
    }
    Ok(tokens)
}

fn known(word: &str, vocabulary: &Vocabulary) -> Result<Word, ReadErrorKind> {
    match vocabulary.find(word).ok_or(ReadErrorKind::Unknown)? {
        Word::About => Err(ReadErrorKind::Approximate),
        Word::Minus => Err(ReadErrorKind::Negative),
        Word::By => Err(ReadErrorKind::TwoReadings),
        word => Ok(word),
    }
}

/// How many bytes at the start `belongs` holds for.
fn run(text: &str, belongs: impl Fn(u8) -> bool) -> usize {
    text.bytes().take_while(|b| belongs(*b)).count()
}
