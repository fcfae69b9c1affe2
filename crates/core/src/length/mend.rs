//! What a refused text may mean, found by mending the text and reading it again.

use super::fold::{MINUS, Unseen, fold};
use super::print::Form;
use super::worded::read_folded;
use super::{ReadErrorKind, Refusal, Unit, words};
use crate::say::Language;
use crate::short::cut_first;

/// `refusal` with the meanings that mending `text` brings, where it has none.
pub(super) fn with_meanings(
    refusal: Refusal,
    text: &str,
    unit: Unit,
    language: Language,
) -> Refusal {
    use ReadErrorKind as Kind;
    if refusal.has_meanings() {
        return refusal;
    }
    let mends: &[fn(&str) -> Option<String>] = match refusal.kind {
        Kind::ControlCharacter | Kind::DirectionMark | Kind::HiddenCharacter => &[as_it_is],
        Kind::Negative => &[without_minus],
        Kind::PlusSign => &[|text| Some(text.replace('+', " "))],
        Kind::Approximate => &[without_hedges],
        Kind::Unknown | Kind::LostDigits => &[slashes_turned, letters_to_digits, misheard, one_of],
        _ => return refusal,
    };
    let Ok(folded) = fold(text, Unseen::Drop) else { return refusal };
    mends.iter().filter_map(|mend| mend(&folded)).fold(
        refusal,
        |refusal, mended| match read_folded(&mended, unit, language) {
            Ok(reading) => refusal.or(reading.length, Form::In(reading.unit)),
            Err(_) => refusal,
        },
    )
}

fn as_it_is(text: &str) -> Option<String> {
    Some(text.to_owned())
}

/// `-4` as 4; a typographic minus between inches and fraction as a space.
fn without_minus(text: &str) -> Option<String> {
    let text = text.replace(MINUS, " ");
    let text = text.trim_start().trim_start_matches('-');
    // `96 minus a sixteenth` is another matter.
    Some(match cut_first(text, " ") {
        Some((word, rest)) if words::is_minus(word) => rest.to_owned(),
        _ => text.to_owned(),
    })
}

/// `96 1/4?` as 96 1/4.
fn without_hedges(text: &str) -> Option<String> {
    let bare = text.replace(['~', '?', '<', '>'], " ");
    Some(words_replaced(&bare, |word| words::is_about(word).then_some("")))
}

/// `96 1\4`.
fn slashes_turned(text: &str) -> Option<String> {
    text.contains(['\\', '|']).then(|| text.replace(['\\', '|'], "/"))
}

/// `9O` and `l/4`: a letter O or L among digits. The `i` of `96i` is a begun `in`: it is a 1 only
/// before a figure.
fn letters_to_digits(text: &str) -> Option<String> {
    let bytes = text.as_bytes();
    let numeric = |at: Option<usize>| {
        at.and_then(|at| bytes.get(at)).is_some_and(|b| b.is_ascii_digit() || *b == b'/')
    };
    let mended: String = text
        .char_indices()
        .map(|(at, c)| match c {
            _ if !numeric(at.checked_sub(1)) && !numeric(at.checked_add(1)) => c,
            'o' => '0',
            'l' => '1',
            'i' if numeric(at.checked_add(1)) => '1',
            _ => c,
        })
        .collect();
    (mended != text).then_some(mended)
}

/// Dictation: `ninety six and for sixteenths`.
fn misheard(text: &str) -> Option<String> {
    let mended = words_replaced(text, |word| {
        Some(match word {
            "to" | "too" => "two",
            "for" | "fore" => "four",
            "ate" => "eight",
            "won" => "one",
            "sicks" => "six",
            "tree" | "free" => "three",
            "forth" => "fourth",
            "forths" => "fourths",
            _ => return None,
        })
    });
    (mended != text).then_some(mended)
}

/// `inch and a quarter`, `and 1/4`; of `in 3/4` it is the number that is lost.
fn one_of(text: &str) -> Option<String> {
    let text = text.trim_start();
    let (first, rest) = cut_first(text, " ").unwrap_or((text, ""));
    let second = cut_first(rest, " ").map_or(rest, |(second, _)| second);
    let meant = text.starts_with(|c: char| c.is_ascii_lowercase())
        && (!words::is_unit(first.trim_end_matches('.')) || words::is_and(second));
    meant.then(|| ["a ", text].concat())
}

fn words_replaced(text: &str, by: impl Fn(&str) -> Option<&'static str>) -> String {
    let words: Vec<&str> = text.split(' ').map(|word| by(word).unwrap_or(word)).collect();
    words.join(" ")
}
