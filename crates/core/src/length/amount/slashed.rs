//! A fraction in digits behind a number: `96 1/4`, and what becomes of its space.

use super::{Amount, Place, whole};
use crate::length::number::{self, inches_and, on_inch_tape, or_space};
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
    // `9 61/4`: the space slipped, where the fraction is two or more. Nobody counts so far.
    if let [Token::Digits(whole)] = head
        && let Some((slipped, rest)) = over.split_at_checked(1)
        && whole.len() == 1
        && fraction.0 / 2 >= fraction.1
        && place.measure == Measure::Inch
        && !place.follows
        && let Some(length) = inches_and(&[whole, slipped].concat(), rest, under)
    {
        return Err(Refusal::from(ReadErrorKind::TopHeavy).or(length, Form::INCH));
    }
    let number = whole(head, place).map_err(|refusal| match refusal.kind {
        ReadErrorKind::ThousandsOrDecimal | ReadErrorKind::TwoPoints => refusal.kind.into(),
        _ => refusal.with_part(fraction, place.measure),
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

/// `961/4` has lost a space; `5/4` is only top-heavy, `17/16` may be either. The quotient of two or
/// more is nobody's: `96 /4` has lost its numerator.
fn lost_space(over: &str, under: &str, (n, d): (u64, u64), place: Place<'_>) -> Refusal {
    if n / 2 < d {
        let top_heavy = Amount { number: None, fraction: Some((n, d)) };
        let top_heavy = top_heavy.length(place.measure, place.said).err();
        return or_space(top_heavy.unwrap_or(ReadErrorKind::TopHeavy.into()), over, under);
    }
    let refusal = or_space(ReadErrorKind::LostSpace.into(), over, under);
    if refusal.has_meanings() {
        return refusal;
    }
    if over.len() > 1 && !on_inch_tape(d) {
        return ReadErrorKind::NotOnTape.into();
    }
    ReadErrorKind::TopHeavy.into()
}
