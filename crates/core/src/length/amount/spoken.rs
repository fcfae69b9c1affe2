//! A number in words.

use super::Place;
use super::several::feet_and;
use crate::length::number::{self, Number, or_slash, times};
use crate::length::print::Form;
use crate::length::scan::Token;
use crate::length::unit::Measure;
use crate::length::words::Word;
use crate::length::words::cardinal::{cardinal, concatenated};
use crate::length::{ReadErrorKind, Refusal};

/// The words of `run`; hyphens between words say nothing.
pub(super) fn words(run: &[Token<'_>]) -> Result<Vec<Word>, Refusal> {
    let mut words = Vec::with_capacity(run.len());
    for token in run {
        match token {
            Token::Word(word) => words.push(*word),
            Token::Digits(raw) if raw.contains(['.', ',']) => {
                return Err(ReadErrorKind::DecimalAndFraction.into());
            }
            Token::Digits(raw) => words.push(Word::Figure(number::digits(raw)?)),
            Token::Comma if !matches!(words.last(), None | Some(Word::Stop)) => {
                words.push(Word::Stop);
            }
            Token::Dash | Token::Comma => {}
            Token::Slash | Token::Mark(_) => return Err(ReadErrorKind::Unknown.into()),
        }
    }
    Ok(words)
}

/// `words` without a stop at their end.
pub(super) fn before_stop(words: &[Word]) -> &[Word] {
    match words {
        [rest @ .., Word::Stop] => rest,
        _ => words,
    }
}

/// A number with words in it.
#[inline(never)]
pub(super) fn number(run: &[Token<'_>], place: Place<'_>) -> Result<Number, Refusal> {
    let words = words(run)?;
    number_in(before_stop(&words), place)
}

/// A number in words.
pub(super) fn number_in(words: &[Word], place: Place<'_>) -> Result<Number, Refusal> {
    let unknown = || Refusal::from(ReadErrorKind::Unknown);
    if let Some(n) = cardinal(words, place.vocabulary) {
        return Ok(Number::whole(n));
    }
    if let Some(at) = words.iter().position(|w| *w == Word::Point) {
        let (before, after) = words.split_at_checked(at).ok_or_else(unknown)?;
        let whole = match before {
            [] => 0,
            _ => cardinal(before, place.vocabulary)
                .or_else(|| concatenated(before, place.vocabulary).map(|d| d.value))
                .ok_or_else(unknown)?,
        };
        let decimals = after.get(1..).unwrap_or_default();
        // Digit by digit, or as one number: `virgule quatre cent quarante-cinq`.
        let (value, places) = match concatenated(decimals, place.vocabulary) {
            Some(digits) => (digits.value, digits.places),
            None => (cardinal(decimals, place.vocabulary).ok_or_else(unknown)?, 0),
        };
        return Ok(Number::decimal(whole, &number::padded(value, places)));
    }
    let digits = concatenated(words, place.vocabulary).ok_or_else(unknown)?;
    let one_by_one = digits.groups == digits.places && digits.groups > 2;
    if place.measure.is_metric() || one_by_one {
        return Ok(Number::whole(digits.value));
    }
    // `eight six` is 86 in or 8 ft 6 in; `ninety six fourteen` lost its slash.
    let mut refusal = Refusal::from(ReadErrorKind::TwoMeanings);
    if let Some((first, second)) = digits.pair {
        refusal = if digits.places < 4 {
            refusal.or(times(digits.value, Measure::Inch)?, Form::INCH)
        } else {
            or_slash(refusal, times(first, Measure::Inch)?, &second.to_string(), Form::INCH)
        };
        refusal = refusal.or_maybe(feet_and(first, second, place), Form::FeetInches);
    }
    if digits.places < 4 {
        return Err(refusal);
    }
    Err(refusal.or(times(digits.value, Measure::Millimetre)?, Form::MM))
}
