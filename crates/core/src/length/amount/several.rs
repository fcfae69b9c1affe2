//! Several numbers in a row, in digits: groups of three, or something lost.

use super::Place;
use crate::length::number::{self, Number, proper, slash_restored, times};
use crate::length::scan::Token;
use crate::length::unit::Measure;
use crate::length::{Length, ReadErrorKind, Refusal, Unit};

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
    match *raws {
        [first, second] => {
            let (a, b) = (number::digits(first)?, number::digits(second)?);
            if place.measure.is_metric() {
                let joined = number::digits(&[first, second].concat())?;
                let length = times(joined, place.measure)?;
                return Err(Refusal::from(ReadErrorKind::LostMark).or(length, Unit::Millimetre));
            }
            let inches = times(a, Measure::Inch)?;
            let slash = slash.or_all(slash_restored(second).map(|f| inches + f), Unit::Inch);
            if slash.has_meanings() {
                return Err(slash);
            }
            let mark = feet_and(a, b, place)
                .into_iter()
                .fold(Refusal::from(ReadErrorKind::LostMark), Refusal::or_feet);
            Err(match in_groups {
                Some(mm) => mark.or(mm.length(Measure::Millimetre)?, Unit::Millimetre),
                None => mark,
            })
        }
        [first, over, under] => {
            let inches = times(number::digits(first)?, Measure::Inch)?;
            Err(match proper(over, under) {
                Some(part) => slash.or(inches + part, Unit::Inch),
                None => ReadErrorKind::LostMark.into(),
            })
        }
        _ => Err(ReadErrorKind::LostMark.into()),
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
