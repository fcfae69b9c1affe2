//! Characters to the reader's own alphabet: lower-case ASCII.
//!
//! What looks the same to a person becomes the same here: the many spaces,
//! dashes, quotation marks and primes, full-width digits, `¼` and its kin.
//! What a person cannot see is refused.

use super::ReadErrorKind;

/// The longest text read, in bytes. The longest reading in words takes some 80.
pub(super) const LONGEST: usize = 200;

/// U+2212 in the folded text: unlike a hyphen it never joins inches to a fraction.
pub(super) const MINUS: char = '\u{1}';
/// A character that means nothing in a reading.
pub(super) const OTHER: char = '\u{2}';

/// What to do with characters that a person cannot see.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Unseen {
    Refuse,
    /// For a suggestion: a control character becomes a space, the others go.
    Drop,
}

/// `text` folded.
pub(super) fn fold(text: &str, unseen: Unseen) -> Result<String, ReadErrorKind> {
    let mut folded = String::with_capacity(text.len().saturating_add(16));
    for c in text.chars() {
        if let Some(kind) = unseen_kind(c) {
            match (unseen, kind) {
                (Unseen::Refuse, kind) => return Err(kind),
                (Unseen::Drop, ReadErrorKind::ControlCharacter) => folded.push(' '),
                (Unseen::Drop, _) => {}
            }
        } else if let Some(vulgar) = vulgar_fraction(c) {
            folded.push_str(vulgar);
        } else if matches!(c, '\u{300}'..='\u{308}' | '\u{327}')
            && folded.ends_with(|c: char| c.is_ascii_lowercase())
        {
            // A combining accent behind its letter.
        } else {
            folded.push(plain(c));
        }
    }
    Ok(folded)
}

const fn unseen_kind(c: char) -> Option<ReadErrorKind> {
    match c {
        '\0'..='\x1f' | '\x7f'..='\u{9f}' | '\u{2028}' | '\u{2029}' => {
            Some(ReadErrorKind::ControlCharacter)
        }
        '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' => {
            Some(ReadErrorKind::DirectionMark)
        }
        '\u{ad}'
        | '\u{34f}'
        | '\u{180e}'
        | '\u{200b}'..='\u{200d}'
        | '\u{2060}'..='\u{2064}'
        | '\u{206a}'..='\u{206f}'
        | '\u{fe00}'..='\u{fe0f}'
        | '\u{feff}'
        | '\u{fff9}'..='\u{fffb}'
        | '\u{e0000}'..='\u{e007f}' => Some(ReadErrorKind::HiddenCharacter),
        _ => None,
    }
}

/// A fraction in one character, apart from what stands beside it.
const fn vulgar_fraction(c: char) -> Option<&'static str> {
    Some(match c {
        '¼' => " 1/4 ",
        '½' => " 1/2 ",
        '¾' => " 3/4 ",
        '⅛' => " 1/8 ",
        '⅜' => " 3/8 ",
        '⅝' => " 5/8 ",
        '⅞' => " 7/8 ",
        '⅓' => " 1/3 ",
        '⅔' => " 2/3 ",
        '⅕' => " 1/5 ",
        '⅖' => " 2/5 ",
        '⅗' => " 3/5 ",
        '⅘' => " 4/5 ",
        '⅙' => " 1/6 ",
        '⅚' => " 5/6 ",
        '⅐' => " 1/7 ",
        '⅑' => " 1/9 ",
        '⅒' => " 1/10 ",
        _ => return None,
    })
}

const fn plain(c: char) -> char {
    match c {
        '\'' | '’' | '‘' | '‛' | '′' | '`' | '´' | 'ʹ' | 'ʼ' | 'ˈ' => '\'',
        '"' | '“' | '”' | '‟' | '″' | 'ʺ' | '˝' => '"',
        '⁄' | '∕' => '/',
        '‐' | '‑' | '‒' | '–' | '—' | '―' => '-',
        '−' => MINUS,
        '≈' | '±' | '≅' | '∼' => '~',
        '×' => '*',
        '\u{a0}' | '\u{2000}'..='\u{200a}' | '\u{202f}' | '\u{205f}' | '\u{3000}' => ' ',
        ' '..='~' => c.to_ascii_lowercase(),
        // The full-width forms stand 0xFEE0 above their ASCII twins.
        '！'..='～' => match char::from_u32((c as u32).saturating_sub(0xfee0)) {
            Some(ascii) => plain_ascii(ascii),
            None => OTHER,
        },
        'À'..='Å' | 'à'..='å' => 'a',
        'Ç' | 'ç' => 'c',
        'È'..='Ë' | 'è'..='ë' => 'e',
        'Ì'..='Ï' | 'ì'..='ï' => 'i',
        'Ñ' | 'ñ' => 'n',
        'Ò'..='Ö' | 'ò'..='ö' => 'o',
        'Ù'..='Ü' | 'ù'..='ü' => 'u',
        _ => OTHER,
    }
}

const fn plain_ascii(c: char) -> char {
    if c == '`' { '\'' } else { c.to_ascii_lowercase() }
}
