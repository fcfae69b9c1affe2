//! One number with its fraction: the tokens between two units.

mod named;
mod several;
mod slashed;
mod spoken;

use super::number::{self, Number, neighbours, on_inch_tape, sixty_fourths, times};
use super::print::Form;
use super::scan::Token;
use super::unit::Measure;
use super::words::{Vocabulary, Word};
use super::{Length, ReadErrorKind, Refusal, Unit};

/// Where an amount stands.
#[derive(Clone, Copy)]
pub(super) struct Place<'v> {
    /// The unit it is in.
    pub(super) measure: Measure,
    /// That unit was written behind it.
    pub(super) said: bool,
    /// Feet, or a whole number with its unit, stand before it.
    pub(super) follows: bool,
    pub(super) vocabulary: &'v Vocabulary,
}

/// A number, a fraction, or both.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Amount {
    pub(super) number: Option<Number>,
    /// Numerator and denominator, as read; nothing has been checked.
    pub(super) fraction: Option<(u64, u64)>,
}

/// What the tokens of `run` say.
pub(super) fn amount(run: &[Token<'_>], place: Place<'_>) -> Result<Amount, Refusal> {
    let run = trimmed(run, place);
    if run.contains(&Token::Slash) {
        return slashed::slashed(run, place);
    }
    match run {
        [.., Token::Word(Word::Part(..) | Word::Ordinal(..) | Word::Avos(_))] => {
            named::named(run, place)
        }
        _ => Ok(Amount { number: Some(whole(run, place)?), fraction: None }),
    }
}

impl Amount {
    /// Its exact value. Feet take no fraction here: see `parse`.
    pub(super) fn length(self, measure: Measure, said: bool) -> Result<Length, Refusal> {
        let unit = measure.unit();
        let base = self.number.unwrap_or_default().length(measure)?;
        let Some((over, under)) = self.fraction else { return Ok(base) };
        if self.number.is_some_and(|n| !n.is_whole()) {
            return Err(ReadErrorKind::DecimalAndFraction.into());
        }
        if under == 0 {
            return Err(ReadErrorKind::ZeroDenominator.into());
        }
        let part = times(over, measure)?;
        let under_nm = i64::try_from(under).unwrap_or(i64::MAX);
        let nm = part.units(Length::from_nm(under_nm));
        let left = part.nm().checked_rem(under_nm).unwrap_or(0);
        let sum = base + Length::from_nm(nm);
        if over >= under {
            let refusal = Refusal::from(ReadErrorKind::TopHeavy);
            let sensible = left == 0 && on_inch_tape(under);
            return Err(refusal.or_maybe(sensible.then_some(sum), measure.form()));
        }
        let on_tape = match unit {
            Unit::Inch => on_inch_tape(under),
            Unit::Millimetre => left == 0 && Length::from_nm(nm).floor_to(unit.finest()).nm() == nm,
        };
        if on_tape {
            return Ok(sum);
        }
        // `96 1/4` in a field for millimetres was read on the inch side of the tape.
        if measure == Measure::Millimetre && !said && on_inch_tape(under) {
            let inches = self.number.unwrap_or_default().length(Measure::Inch)?;
            let refusal = Refusal::from(ReadErrorKind::NotOnTape);
            return Err(refusal.or(inches + sixty_fourths(over, under), Form::INCH));
        }
        Err(neighbours(ReadErrorKind::NotOnTape, sum, measure))
    }
}

/// Without what joins it to its neighbours: `and` before it, `of an` behind.
fn trimmed<'r, 't>(run: &'r [Token<'t>], place: Place<'_>) -> &'r [Token<'t>] {
    let mut run = run;
    while place.follows
        && let [Token::Word(Word::And | Word::With) | Token::Dash | Token::Comma, rest @ ..] = run
    {
        run = rest;
    }
    if place.said {
        // `96-inch`, `three quarters, inch`.
        if let [rest @ .., Token::Dash | Token::Comma] = run {
            run = rest;
        }
        let mut short = run;
        if let [rest @ .., Token::Word(Word::Article | Word::Number(1))] = short {
            short = rest;
        }
        if let [rest @ .., Token::Word(Word::Of)] = short {
            short = rest;
        }
        let behind_fraction = matches!(
            short,
            [.., Token::Word(Word::Part(..) | Word::Ordinal(..) | Word::Avos(_) | Word::Ending)]
                | [.., Token::Slash, Token::Digits(_)]
        );
        if behind_fraction {
            run = short;
        }
    }
    run
}

/// The number that all of `run` makes up.
fn whole(run: &[Token<'_>], place: Place<'_>) -> Result<Number, Refusal> {
    match run {
        [Token::Digits(raw)] => number::number(raw, place.measure),
        [Token::Digits(_), ..]
            if run.iter().all(|t| matches!(t, Token::Digits(_) | Token::Dash)) =>
        {
            several::several(run, place)
        }
        _ if run.iter().any(|token| matches!(token, Token::Word(_))) => spoken::number(run, place),
        _ => alone(run),
    }
}

/// A number beside dashes and commas, which say nothing there.
fn alone(run: &[Token<'_>]) -> Result<Number, Refusal> {
    let (mut count, mut number) = (0_u8, 0);
    for token in run {
        match token {
            Token::Dash | Token::Comma => {}
            Token::Digits(raw) if raw.contains(['.', ',']) => {
                return Err(ReadErrorKind::DecimalAndFraction.into());
            }
            Token::Digits(raw) => {
                (count, number) = (count.saturating_add(1), number::digits(raw)?);
            }
            _ => return Err(ReadErrorKind::Unknown.into()),
        }
    }
    if count == 1 { Ok(Number::whole(number)) } else { Err(ReadErrorKind::Unknown.into()) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::words::UNITS;
    use proptest::prelude::*;

    fn token() -> impl Strategy<Value = Token<'static>> {
        let digits = prop::sample::select(vec!["9", "96", "3.5", "0", "1234567890123456789"]);
        prop_oneof![
            digits.prop_map(Token::Digits),
            Just(Token::Dash),
            Just(Token::Comma),
            Just(Token::Slash),
            Just(Token::Mark(Measure::Foot)),
        ]
    }

    proptest! {
        /// Without a word in it, a run is a number by itself as it is a number in words.
        #[test]
        fn figures_alone_are_what_they_are_among_words(
            run in prop::collection::vec(token(), 0..5),
            measure in prop::sample::select(vec![Measure::Inch, Measure::Millimetre]),
        ) {
            let place = Place { measure, said: false, follows: false, vocabulary: &UNITS };
            let kind = |read: Result<Number, Refusal>| read.map_err(|refusal| refusal.into_error());
            prop_assert_eq!(kind(alone(&run)), kind(spoken::number(&run, place)));
        }
    }
}
