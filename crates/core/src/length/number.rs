//! Digits with their points and commas, and fractions, to exact nanometres.

use super::print::Form;
use super::unit::Measure;
use super::{Length, ReadErrorKind, Refusal};
use crate::short;

/// A number as typed: `whole` and `part` over ten to the `places`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Number {
    pub(super) whole: u64,
    pub(super) part: u64,
    pub(super) places: u32,
    /// Decimal places as typed, noughts at the end with them.
    typed: u32,
    /// Digits other than 0 stood behind the ninth decimal place.
    finer: bool,
}

impl Number {
    pub(super) const fn whole(whole: u64) -> Self {
        Self { whole, part: 0, places: 0, typed: 0, finer: false }
    }

    /// From the digits around a decimal mark; noughts at the end count for nothing.
    pub(super) fn decimal(whole: u64, decimals: &str) -> Self {
        let typed = u32::try_from(decimals.len()).unwrap_or(u32::MAX);
        let decimals = decimals.trim_end_matches('0');
        let kept = decimals.get(..9).unwrap_or(decimals);
        // Nine digits at most: neither `parse` nor `len` can go wrong.
        let part = kept.parse().unwrap_or(0);
        let places = u32::try_from(kept.len()).unwrap_or(9);
        Self { whole, part, places, typed, finer: decimals.len() > kept.len() }
    }

    pub(super) const fn is_whole(self) -> bool {
        self.part == 0 && !self.finer
    }

    /// The digits behind the point as whole inches, if a foot has so many.
    pub(super) fn part_as_inches(self) -> Option<i64> {
        let noughts = self.typed.checked_sub(self.places)?;
        let inches = self.part.checked_mul(10_u64.checked_pow(noughts)?)?;
        i64::try_from(inches).ok().filter(|inches| *inches < 12 && !self.finer)
    }

    /// Its value, exact.
    pub(super) fn length(self, measure: Measure) -> Result<Length, Refusal> {
        let whole = times(self.whole, measure)?;
        // Below 10⁹ × 10⁹: it fits.
        let scaled = self.part.saturating_mul(measure.nm().unsigned_abs());
        let scale = 10_u64.saturating_pow(self.places);
        let part = i64::try_from(scaled.checked_div(scale).unwrap_or(0)).unwrap_or(i64::MAX);
        let length = whole.nm().checked_add(part).map(Length::from_nm);
        let length = length.ok_or(ReadErrorKind::OutOfRange)?;
        if self.finer || !scaled.is_multiple_of(scale) {
            return Err(neighbours(ReadErrorKind::TooFine, length, measure));
        }
        Ok(length)
    }
}

/// `n` of `measure`.
pub(super) fn times(n: u64, measure: Measure) -> Result<Length, ReadErrorKind> {
    let n = i64::try_from(n).map_err(|_| ReadErrorKind::OutOfRange)?;
    let nm = n.checked_mul(measure.nm()).ok_or(ReadErrorKind::OutOfRange)?;
    Ok(Length::from_nm(nm))
}

/// Only digits, and no more than an `i64` takes.
pub(super) fn digits(text: &str) -> Result<u64, ReadErrorKind> {
    if text.is_empty() || !text.bytes().all(|b| b.is_ascii_digit()) {
        return Err(ReadErrorKind::Unknown);
    }
    let short = text.trim_start_matches('0');
    if short.len() > 18 {
        return Err(ReadErrorKind::OutOfRange);
    }
    Ok(if short.is_empty() { 0 } else { short.parse().unwrap_or(0) })
}

/// The number in `raw`: digits, points and commas.
///
/// A point or comma with exactly three digits behind it and one to three before
/// could be a thousands mark. It is taken for a decimal mark only where the other
/// meaning is out of the question: before metres, and in inches where the decimals
/// are eighths (`96.125`; a thousand inches are longer than any truck).
pub(super) fn number(raw: &str, measure: Measure) -> Result<Number, Refusal> {
    let marks = raw.bytes().filter(|b| matches!(b, b'.' | b',')).count();
    let Some((before, after)) = raw.rsplit_once(['.', ',']) else {
        return Ok(Number::whole(digits(raw)?));
    };
    let decimal_mark = raw.as_bytes().get(before.len()).copied().unwrap_or(b'.');
    if marks == 1 {
        if after.is_empty() {
            let refusal = Refusal::from(ReadErrorKind::LostDigits);
            let length = times(digits(before)?, measure).ok();
            return Err(refusal.or_maybe(length, measure.form()));
        }
        if before.is_empty() {
            return Ok(Number::decimal(0, after));
        }
        let number = Number::decimal(digits(before)?, after);
        if looks_grouped(before, after) {
            let decimal_only = matches!(measure, Measure::Metre | Measure::Foot);
            let eighths =
                measure == Measure::Inch && decimal_mark == b'.' && digits(after)? % 125 == 0;
            if !decimal_only && !eighths {
                let refusal = Refusal::from(ReadErrorKind::ThousandsOrDecimal);
                let grouped = digits(before)?.saturating_mul(1000).saturating_add(digits(after)?);
                return Err(refusal
                    .or_maybe(times(grouped, measure).ok(), measure.form())
                    .or_maybe(number.length(measure).ok(), measure.form()));
            }
        }
        return Ok(number);
    }
    grouped(before, after, decimal_mark).ok_or_else(|| two_points(raw, measure))
}

/// One to three digits, then three: `1,234`. A number does not begin with 0.
fn looks_grouped(before: &str, after: &str) -> bool {
    after.len() == 3 && (1..=3).contains(&before.len()) && !before.starts_with('0')
}

/// Several marks that leave no doubt: `1,234,567` or `2,445.5`.
fn grouped(before: &str, after: &str, last_mark: u8) -> Option<Number> {
    let marks = before.bytes().filter(|b| !b.is_ascii_digit());
    let group_mark = marks.clone().next()?;
    if marks.clone().any(|mark| mark != group_mark) {
        return None;
    }
    let join = |text: &str| {
        let mut groups = text.split(char::from(group_mark));
        let first = groups.next()?;
        let well_formed = (1..=3).contains(&first.len()) && !first.starts_with('0');
        let joined: String = text.split(char::from(group_mark)).collect();
        (well_formed && groups.all(|group| group.len() == 3)).then_some(joined)
    };
    if group_mark == last_mark {
        let mark = if last_mark == b',' { "," } else { "." };
        return Some(Number::whole(digits(&join(&[before, mark, after].concat())?).ok()?));
    }
    if after.is_empty() {
        return None;
    }
    Some(Number::decimal(digits(&join(before)?).ok()?, after))
}

/// `96..5` was probably 96.5.
fn two_points(raw: &str, measure: Measure) -> Refusal {
    let refusal = Refusal::from(ReadErrorKind::TwoPoints);
    let (Some((before, _)), Some((_, after))) =
        (raw.split_once(['.', ',']), raw.rsplit_once(['.', ',']))
    else {
        return refusal;
    };
    let between = raw.len().saturating_sub(before.len()).saturating_sub(after.len());
    let only_marks = raw.bytes().filter(|b| !b.is_ascii_digit()).count() == between;
    let Ok(whole) = digits(before) else { return refusal };
    if !only_marks || after.is_empty() {
        return refusal;
    }
    refusal.or_maybe(Number::decimal(whole, after).length(measure).ok(), measure.form())
}

/// Whether an inch tape has marks for this part of an inch.
pub(super) const fn on_inch_tape(under: u64) -> bool {
    matches!(under, 2 | 4 | 8 | 16 | 32 | 64)
}

/// `refusal` with the readings that `run` of digits behind `base` can be when the
/// slash of a fraction is put back: `14` is 1/4, `1516` is 15/16.
pub(super) fn or_slash(refusal: Refusal, base: Length, run: &str, form: Form) -> Refusal {
    (1..run.len()).fold(refusal, |refusal, at| match run.split_at_checked(at) {
        Some((over, under)) => refusal.or_maybe(proper(over, under).map(|part| base + part), form),
        None => refusal,
    })
}

/// `over` / `under` of an inch, if it is on a tape and less than one.
pub(super) fn proper(over: &str, under: &str) -> Option<Length> {
    let (n, d) = (digits(over).ok()?, digits(under).ok()?);
    let plain = !over.starts_with('0') && !under.starts_with('0');
    (plain && on_inch_tape(d) && n < d).then(|| sixty_fourths(n, d))
}

/// `over` / `under` of an inch, `under` being on the tape and `over` less.
pub(super) fn sixty_fourths(over: u64, under: u64) -> Length {
    let marks = over.saturating_mul(64).checked_div(under).unwrap_or(0);
    Length::from_sixty_fourths(i64::try_from(marks).unwrap_or(0))
}

/// `refusal` with the readings that a fraction can be when the space before it is put
/// back: `961` over `4` is 96 1/4.
pub(super) fn or_space(refusal: Refusal, over: &str, under: &str) -> Refusal {
    // From the right: the shortest numerator first, so 113/16 is 11 3/16 before 1 13/16.
    (1..over.len()).rev().fold(refusal, |refusal, at| match over.split_at_checked(at) {
        Some((whole, over)) => refusal.or_maybe(inches_and(whole, over, under), Form::INCH),
        None => refusal,
    })
}

/// `whole` inches and `over` / `under`, if that is on a tape.
pub(super) fn inches_and(whole: &str, over: &str, under: &str) -> Option<Length> {
    Some(times(digits(whole).ok()?, Measure::Inch).ok()? + proper(over, under)?)
}

/// Between two marks of the usual tape: either may be meant.
pub(super) fn neighbours(kind: ReadErrorKind, length: Length, measure: Measure) -> Refusal {
    let step = measure.unit().step();
    let below = length.floor_to(step);
    Refusal::from(kind).or(below, measure.form()).or(below + step, measure.form())
}

/// `value` with noughts before it, up to `places` digits.
pub(super) fn padded(value: u64, places: u32) -> String {
    let digits = short::digits(value);
    let missing = usize::try_from(places).unwrap_or(0).saturating_sub(digits.len());
    ["0".repeat(missing), digits].concat()
}
