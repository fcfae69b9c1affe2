//! A fraction in digits behind a number: `96 1/4`, and what becomes of its space.

use super::{Amount, Place, whole};
use crate::length::number::{self, inches_and, on_inch_tape, or_space, proper};
use crate::length::print::Form;
use crate::length::scan::Token;
use crate::length::unit::Measure;
use crate::length::words::Word;
use crate::length::{ReadErrorKind, Refusal};

/// A run that ends in a fraction in digits: `96 1/4`.
pub(super) fn slashed(run: &[Token<'_>], place: Place<'_>) -> Result<Amount, Refusal> {
    let run = match run {
        [rest @ .., Token::Word(Word::Ending | Word::Avos(_))] => rest,
        _ => run,
    };
    let [head @ .., Token::Digits(over), Token::Slash, Token::Digits(under)] = run else {
        let lost = matches!(run, [.., Token::Slash] | [Token::Slash, ..]);
        let kind = if lost { ReadErrorKind::LostDigits } else { ReadErrorKind::Unknown };
        return Err(kind.into());
    };
    // A full stop behind a fraction ends a sentence, a unit behind it or not; behind a bare number
    // it may have lost its digits, and stays.
    let under = under.strip_suffix('.').unwrap_or(under);
    if head.contains(&Token::Slash) {
        return Err(ReadErrorKind::Unknown.into());
    }
    let head = match head {
        [rest @ .., Token::Word(Word::Article)] if *over == "1" => rest,
        _ => head,
    };
    let head = match head {
        [rest @ .., Token::Word(Word::And | Word::With) | Token::Dash] if !rest.is_empty() => rest,
        _ => head,
    };
    if let Some((whole, over)) = over.split_once(['.', ',']) {
        return Err(point_for_space(whole, over, under, head.is_empty()));
    }
    let fraction = (number::digits(over)?, number::digits(under)?);
    if head.is_empty() {
        if fraction.1 != 0 && fraction.0 >= fraction.1 && place.measure != Measure::Foot {
            return Err(lost_space(over, under, fraction, place));
        }
        return Ok(Amount { number: None, fraction: Some(fraction) });
    }
    if let [Token::Digits(whole)] = head
        && fraction.0 >= fraction.1
        && place.measure == Measure::Inch
    {
        // `9 61/4`: the space slipped.
        let slipped = [whole, *over].concat();
        let refusal = or_space(ReadErrorKind::TopHeavy.into(), &slipped, under);
        if refusal.has_meanings() {
            return Err(refusal);
        }
    }
    let part = proper(over, under).unwrap_or_default();
    let number = whole(head, place).map_err(|refusal| match refusal.kind {
        ReadErrorKind::ThousandsOrDecimal | ReadErrorKind::TwoPoints => refusal.kind.into(),
        _ => refusal.plus(part),
    })?;
    Ok(Amount { number: Some(number), fraction: Some(fraction) })
}

/// `96.1/4`: a point where the space should be.
fn point_for_space(whole: &str, over: &str, under: &str, alone: bool) -> Refusal {
    match inches_and(whole, over, under) {
        Some(length) if alone => Refusal::from(ReadErrorKind::LostSpace).or(length, Form::INCH),
        _ => ReadErrorKind::Unknown.into(),
    }
}

/// `961/4` has lost a space; `5/4` is only top-heavy. Never the quotient of the first.
fn lost_space(over: &str, under: &str, (n, d): (u64, u64), place: Place<'_>) -> Refusal {
    if over.len() > 1 {
        let refusal = or_space(ReadErrorKind::LostSpace.into(), over, under);
        if refusal.has_meanings() {
            return refusal;
        }
        if !on_inch_tape(d) {
            return ReadErrorKind::NotOnTape.into();
        }
    }
    let top_heavy = Amount { number: None, fraction: Some((n, d)) };
    top_heavy.length(place.measure, place.said).err().unwrap_or(ReadErrorKind::TopHeavy.into())
}
