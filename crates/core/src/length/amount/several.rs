//! Several numbers in a row, in digits: groups of three, or something lost.

use super::Place;
use crate::length::number::{self, Number, inches_and, or_slash, times};
use crate::length::print::Form;
use crate::length::scan::Token;
use crate::length::unit::Measure;
use crate::length::{Length, ReadErrorKind, Refusal};

/// Several numbers in a row: digits in groups of three, or something lost.
pub(super) fn several(run: &[Token<'_>], place: Place<'_>) -> Result<Number, Refusal> {
    let dashed = run.contains(&Token::Dash);
    let raws: Vec<&str> = run
        .iter()
        .filter_map(|token| match token {
            Token::Digits(raw) => Some(*raw),
            _ => None,
        })
        .collect();
    let in_groups = groups_of_three(&raws).filter(|_| !dashed);
    if place.measure.is_metric()
        && let Some(number) = in_groups
    {
        return Ok(number);
    }
    if place.measure == Measure::Foot {
        return Err(ReadErrorKind::LostMark.into());
    }
    let slash = Refusal::from(ReadErrorKind::LostSlash);
    let mark = Refusal::from(ReadErrorKind::LostMark);
    match *raws {
        [first, second] => {
            let (a, b) = (number::digits(first)?, number::digits(second)?);
            if place.measure.is_metric() {
                let joined = number::digits(&[first, second].concat())?;
                return Err(mark.or(times(joined, place.measure)?, Form::MM));
            }
            let slash = or_slash(slash, times(a, Measure::Inch)?, second, Form::INCH);
            if slash.has_meanings() {
                return Err(slash);
            }
            let mm = in_groups.and_then(|number| number.length(Measure::Millimetre).ok());
            let mark = mark.or_maybe(feet_and(a, b, place), Form::FeetInches);
            Err(mark.or_maybe(mm, Form::MM))
        }
        [first, over, under] => {
            let length = inches_and(first, over, under);
            Err(length.map_or(mark, |length| slash.or(length, Form::INCH)))
        }
        _ => Err(mark),
    }
}

/// `8 6` may be 8 ft 6 in, as far as a truck is tall.
pub(super) fn feet_and(feet: u64, inches: u64, place: Place<'_>) -> Option<Length> {
    if place.follows || !(1..=20).contains(&feet) || inches >= 12 {
        return None;
    }
    Some(times(feet, Measure::Foot).ok()? + times(inches, Measure::Inch).ok()?)
}

/// `2 445` or `2 445,5`.
fn groups_of_three(raws: &[&str]) -> Option<Number> {
    let (last, rest) = raws.split_last()?;
    let (last, decimals) = last.split_once(['.', ',']).unwrap_or((last, ""));
    let first = rest.first()?;
    let fits = (1..=3).contains(&first.len())
        && !first.starts_with('0')
        && rest.iter().skip(1).chain([&last]).all(|group| group.len() == 3)
        && decimals.bytes().all(|b| b.is_ascii_digit());
    let joined = [rest.concat().as_str(), last].concat();
    fits.then(|| Some(Number::decimal(number::digits(&joined).ok()?, decimals)))?
}
