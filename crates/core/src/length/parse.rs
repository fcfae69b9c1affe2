//! Tokens to a length: amounts and the units between them.

use super::amount::{Amount, Place, amount};
use super::number::{Number, or_slash, times};
use super::print::Form;
use super::scan::{Token, scan};
use super::unit::Measure;
use super::words::Vocabulary;
use super::{Length, ReadError, ReadErrorKind, Refusal, Unit, plain, worded};
use crate::say::Language;

/// A length, and the unit it was written in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reading {
    /// Its value.
    pub length: Length,
    /// Inches for feet and inches, millimetres for every metric unit.
    pub unit: Unit,
}

impl Reading {
    /// What `text` says; a bare number takes `unit`, words of `language` are tried first.
    ///
    /// # Errors
    /// Anything that is not exactly one length is refused with the reason.
    pub fn of(text: &str, unit: Unit, language: Language) -> Result<Self, ReadError> {
        if plain::is_plain(text) {
            return plain::read(text, unit);
        }
        worded::read(text, unit, language)
    }

    /// Written out canonically, exact, in the unit it was written in.
    #[must_use]
    pub fn canonical(self) -> String {
        self.length.canonical(self.unit)
    }
}

/// Reads `text`; a bare number takes `unit`. Words of every language are known.
///
/// # Errors
/// Anything that is not exactly one length is refused with the reason.
pub fn read(text: &str, unit: Unit) -> Result<Length, ReadError> {
    read_in(text, unit, Language::English)
}

/// Reads `text`; a bare number takes `unit`. Words of `language` are tried first.
///
/// # Errors
/// Anything that is not exactly one length is refused with the reason.
pub fn read_in(text: &str, unit: Unit, language: Language) -> Result<Length, ReadError> {
    Reading::of(text, unit, language).map(|reading| reading.length)
}

/// Reads `text`, its words being those of `vocabulary`.
pub(super) fn read_by(text: &str, unit: Unit, vocabulary: &Vocabulary) -> Result<Reading, Refusal> {
    parse(&scan(text, vocabulary)?, unit, vocabulary)
}

fn parse(tokens: &[Token<'_>], unit: Unit, vocabulary: &Vocabulary) -> Result<Reading, Refusal> {
    if tokens.first() == Some(&Token::Dash) {
        return Err(ReadErrorKind::Negative.into());
    }
    let (run, mark, rest) = cut(tokens);
    let measure = mark.and_then(Token::measure).unwrap_or(unit.measure());
    let place = Place { measure, said: mark.is_some(), follows: false, vocabulary };
    let length = if measure == Measure::Foot {
        let feet = feet(amount(run, place)?)?;
        let by_word = matches!(mark, Some(Token::Word(_)));
        inches_behind(feet, by_word, rest, place)?
    } else {
        let amount = amount(run, place).map_err(|refusal| plus_behind(refusal, rest, place))?;
        fraction_behind(amount, rest, place)?
    };
    Ok(Reading { length, unit: measure.unit() })
}

/// The tokens before the first unit, that unit, and those behind it.
fn cut<'r, 't>(tokens: &'r [Token<'t>]) -> (&'r [Token<'t>], Option<Token<'t>>, &'r [Token<'t>]) {
    let at = tokens.iter().position(|t| t.measure().is_some()).unwrap_or(tokens.len());
    let (run, rest) = tokens.split_at_checked(at).unwrap_or((tokens, &[]));
    match rest {
        [mark, rest @ ..] => (run, Some(*mark), rest),
        [] => (run, None, rest),
    }
}

/// Whole feet; anything else is asked.
fn feet(amount: Amount) -> Result<Length, Refusal> {
    let Amount { number, fraction } = amount;
    let number = number.unwrap_or_default();
    let feet = times(number.whole, Measure::Foot)?;
    if let Some((over, under)) = fraction {
        return Err(fraction_of_foot(feet, over, under));
    }
    if number.is_whole() {
        return Ok(feet);
    }
    // The digits behind the point as inches: 8.6 as 8 ft 6 in, 8.10 as 8 ft 10 in.
    let inches = number.part_as_inches().map(|inches| feet + Length::from_inches(inches));
    Err(Refusal::from(ReadErrorKind::DecimalFeet)
        .or_maybe(inches, Form::FeetInches)
        .or_maybe(number.length(Measure::Foot).ok(), Form::FeetInches))
}

/// Half of a foot is 6 in, and half an inch may be meant.
fn fraction_of_foot(feet: Length, over: u64, under: u64) -> Refusal {
    let part = Amount { number: None, fraction: Some((over, under)) };
    [Measure::Foot, Measure::Inch].iter().fold(
        ReadErrorKind::FractionOfFoot.into(),
        |refusal: Refusal, measure| {
            let part = part.length(*measure, true).ok();
            refusal.or_maybe(part.map(|part| feet + part), Form::FeetInches)
        },
    )
}

/// The inches behind the feet.
fn inches_behind(
    feet: Length,
    by_word: bool,
    rest: &[Token<'_>],
    place: Place<'_>,
) -> Result<Length, Refusal> {
    if rest.is_empty() {
        return Ok(feet);
    }
    let (run, mark, behind) = cut(rest);
    let said = mark.is_some();
    let place = Place { measure: Measure::Inch, said, follows: true, ..place };
    match mark.and_then(Token::measure) {
        None | Some(Measure::Inch) => {}
        Some(Measure::Foot) => {
            let refusal = Refusal::from(ReadErrorKind::RepeatedUnit);
            let inches =
                amount(run, place).and_then(|amount| amount.length(place.measure, place.said));
            return Err(match inches {
                Ok(inches) if behind.is_empty() => refusal.or(feet + inches, Form::FeetInches),
                _ => refusal,
            });
        }
        Some(_) => return Err(ReadErrorKind::MixedUnits.into()),
    }
    let inches = amount(run, place).map_err(|refusal| refusal.plus(feet, Form::FeetInches))?;
    if let Amount { number: None, fraction: Some((over, under)) } = inches
        && by_word
        && !said
    {
        return Err(fraction_of_foot(feet, over, under));
    }
    let inches = fraction_behind(inches, behind, place)
        .map_err(|refusal| refusal.plus(feet, Form::FeetInches))?;
    let length = feet.nm().checked_add(inches.nm()).ok_or(ReadErrorKind::OutOfRange)?;
    if inches < Length::FOOT {
        return Ok(Length::from_nm(length));
    }
    let refusal =
        Refusal::from(ReadErrorKind::InchesPastFoot).or(Length::from_nm(length), Form::FeetInches);
    Err(match run {
        [.., Token::Digits(raw)] => or_slash(refusal, feet, raw, Form::FeetInches),
        _ => refusal,
    })
}

/// `refusal` of a number whose unit is behind it, with the fraction behind that unit added to
/// what it may mean: `nueve seis pulgadas y un cuarto`.
fn plus_behind(refusal: Refusal, rest: &[Token<'_>], place: Place<'_>) -> Refusal {
    let place = Place { follows: true, ..place };
    match amount(rest, place) {
        Ok(Amount { number: None, fraction: Some(part) }) => refusal.with_part(part, place.measure),
        _ => refusal,
    }
}

/// What may stand behind a whole number and its unit: a fraction of that unit, as
/// in `96 inches and a quarter`.
fn fraction_behind(base: Amount, rest: &[Token<'_>], place: Place<'_>) -> Result<Length, Refusal> {
    if rest.is_empty() {
        return base.length(place.measure, place.said);
    }
    let (run, mark, behind) = cut(rest);
    let measure = mark.and_then(Token::measure).unwrap_or(place.measure);
    let length = base.length(place.measure, place.said)?;
    let (mixed, metric) = (measure != place.measure, place.measure.is_metric());
    let place = Place { measure, said: mark.is_some(), follows: true, ..place };
    if mixed || !behind.is_empty() {
        let refusal = Refusal::from(ReadErrorKind::MixedUnits);
        // `2 m 445 mm` has only one meaning, but no tape is read so.
        let metric = metric && measure.is_metric() && behind.is_empty();
        return Err(match amount(run, place).and_then(|a| a.length(measure, true)) {
            Ok(more) if metric && more < length => refusal.or(length + more, Form::MM),
            _ => refusal,
        });
    }
    let form = measure.form();
    let more = amount(run, place).map_err(|refusal| refusal.plus(length, form))?;
    let whole = base.number.is_some_and(Number::is_whole) && base.fraction.is_none();
    if more.number.is_none() && whole {
        let part =
            more.length(place.measure, place.said).map_err(|refusal| refusal.plus(length, form))?;
        return Ok(length + part);
    }
    if mark.is_some() {
        return Err(ReadErrorKind::RepeatedUnit.into());
    }
    if let [.., Token::Digits(raw)] = run
        && whole
        && measure == Measure::Inch
    {
        let refusal = or_slash(ReadErrorKind::LostSlash.into(), length, raw, Form::INCH);
        if refusal.has_meanings() {
            return Err(refusal);
        }
    }
    Err(ReadErrorKind::LostMark.into())
}
