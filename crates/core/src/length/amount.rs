//! One number with its fraction: the tokens between two units.

use super::number::{
    self, Number, neighbours, on_inch_tape, proper, sixty_fourths, slash_restored, space_restored,
    times,
};
use super::scan::Token;
use super::unit::Measure;
use super::words::cardinal::{cardinal, concatenated};
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

impl Place<'_> {
    fn unit(self) -> Unit {
        self.measure.unit()
    }
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
        return slashed(run, place);
    }
    match run {
        [] => Err(ReadErrorKind::Unknown.into()),
        [.., Token::Word(Word::Part(..) | Word::Ordinal(..))] => named(&spoken(run)?, place),
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
        let (nm, left) = (part.nm() / under_nm, part.nm() % under_nm);
        let sum = base + Length::from_nm(nm);
        if over >= under {
            let refusal = Refusal::from(ReadErrorKind::TopHeavy);
            let sensible = left == 0 && on_inch_tape(under) && sum.nm() < i64::MAX;
            return Err(if sensible { refusal.or(sum, unit) } else { refusal });
        }
        let on_tape = match unit {
            Unit::Inch => on_inch_tape(under),
            Unit::Millimetre => left == 0 && nm % Unit::Millimetre.finest().nm() == 0,
        };
        if on_tape {
            return Ok(sum);
        }
        let refusal = Refusal::from(ReadErrorKind::NotOnTape);
        // `96 1/4` in a field for millimetres was read on the inch side of the tape.
        if measure == Measure::Millimetre && !said && on_inch_tape(under) {
            let inches = self.number.unwrap_or_default().length(Measure::Inch)?;
            return Err(refusal.or(inches + sixty_fourths(over, under), Unit::Inch));
        }
        Err(refusal.or_all(neighbours(sum, unit), unit))
    }
}

/// Without what joins it to its neighbours: `and` before it, `of an` behind.
fn trimmed<'r, 't>(run: &'r [Token<'t>], place: Place<'_>) -> &'r [Token<'t>] {
    let mut run = run;
    if place.follows
        && let [Token::Word(Word::And) | Token::Dash | Token::Comma, rest @ ..] = run
    {
        run = rest;
    }
    if place.said {
        // `96-inch`.
        if let [rest @ .., Token::Dash] = run {
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
            [.., Token::Word(Word::Part(..) | Word::Ordinal(..) | Word::Ending)]
                | [.., Token::Slash, Token::Digits(_)]
        );
        if behind_fraction {
            run = short;
        }
    }
    run
}

/// A run that ends in a fraction in digits: `96 1/4`.
fn slashed(run: &[Token<'_>], place: Place<'_>) -> Result<Amount, Refusal> {
    let run = match run {
        [rest @ .., Token::Word(Word::Ending)] => rest,
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
        [rest @ .., Token::Word(Word::And) | Token::Dash] if !rest.is_empty() => rest,
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
        && over.len() > 1
        && place.measure == Measure::Inch
    {
        // `9 61/4`: the space slipped.
        let slipped = [whole, *over].concat();
        let refusal = Refusal::from(ReadErrorKind::TopHeavy)
            .or_all(space_restored(&slipped, under), Unit::Inch);
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
    let refusal = Refusal::from(ReadErrorKind::LostSpace);
    match (number::digits(whole), proper(over, under)) {
        (Ok(whole), Some(part)) if alone => match times(whole, Measure::Inch) {
            Ok(whole) => refusal.or(whole + part, Unit::Inch),
            Err(_) => refusal,
        },
        _ => ReadErrorKind::Unknown.into(),
    }
}

/// `961/4` has lost a space; `5/4` is only top-heavy. Never the quotient of the first.
fn lost_space(over: &str, under: &str, (n, d): (u64, u64), place: Place<'_>) -> Refusal {
    if over.len() > 1 {
        let refusal =
            Refusal::from(ReadErrorKind::LostSpace).or_all(space_restored(over, under), Unit::Inch);
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

/// The number that all of `run` makes up.
fn whole(run: &[Token<'_>], place: Place<'_>) -> Result<Number, Refusal> {
    match run {
        [Token::Digits(raw)] => number::number(raw, place.measure),
        [Token::Digits(_), ..]
            if run.iter().all(|t| matches!(t, Token::Digits(_) | Token::Dash)) =>
        {
            several(run, place)
        }
        _ => said(&spoken(run)?, place),
    }
}

/// Several numbers in a row: digits in groups of three, or something lost.
fn several(run: &[Token<'_>], place: Place<'_>) -> Result<Number, Refusal> {
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
fn feet_and(feet: u64, inches: u64, place: Place<'_>) -> Option<Length> {
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

/// The words of `run`; hyphens and commas between words say nothing.
fn spoken(run: &[Token<'_>]) -> Result<Vec<Word>, Refusal> {
    let mut words = Vec::with_capacity(run.len());
    for token in run {
        match token {
            Token::Word(word) => words.push(*word),
            Token::Digits(raw) if raw.contains(['.', ',']) => {
                return Err(ReadErrorKind::DecimalAndFraction.into());
            }
            Token::Digits(raw) => words.push(Word::Figure(number::digits(raw)?)),
            Token::Dash | Token::Comma => {}
            Token::Slash | Token::Mark(_) => return Err(ReadErrorKind::Unknown.into()),
        }
    }
    Ok(words)
}

/// A number in words.
fn said(words: &[Word], place: Place<'_>) -> Result<Number, Refusal> {
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
        let decimals = concatenated(decimals, place.vocabulary).ok_or_else(unknown)?;
        let padded = number::padded(decimals.value, decimals.places);
        return Ok(Number::decimal(whole, &padded));
    }
    let digits = concatenated(words, place.vocabulary).ok_or_else(unknown)?;
    let one_by_one = digits.groups == digits.places && digits.groups > 2;
    if place.measure.is_metric() || one_by_one {
        return Ok(Number::whole(digits.value));
    }
    // `eight six` is 86 in or 8 ft 6 in; `ninety six fourteen` lost its slash.
    let refusal = Refusal::from(ReadErrorKind::TwoMeanings);
    let refusal = match digits.pair {
        Some((first, second)) => {
            let inches = times(first, Measure::Inch)?;
            let restored = number::padded(second, 1);
            let slash = slash_restored(&restored).map(|part| inches + part);
            let feet = feet_and(first, second, place);
            let joined = times(digits.value, Measure::Inch)?;
            if digits.places < 4 {
                feet.into_iter().fold(refusal.or(joined, Unit::Inch), Refusal::or_feet)
            } else {
                feet.into_iter().fold(refusal.or_all(slash, Unit::Inch), Refusal::or_feet)
            }
        }
        None => refusal,
    };
    if digits.places < 4 {
        return Err(refusal);
    }
    Err(refusal.or(times(digits.value, Measure::Millimetre)?, Unit::Millimetre))
}

/// A run that ends in the name of a part: `ninety six and three sixteenths`.
///
/// Every cut between whole and numerator is tried. An `and` at the cut, or a whole
/// that is complete without the numerator, makes it the one meant; where the words
/// run together into one number (`twenty three sixteenths`), it is asked.
fn named(words: &[Word], place: Place<'_>) -> Result<Amount, Refusal> {
    let unknown = || Refusal::from(ReadErrorKind::Unknown);
    let (head, under, plural) = denominator(words).ok_or_else(unknown)?;
    let mut cuts: Vec<Cut> = Vec::new();
    let mut refused = None;
    for at in 0..=head.len() {
        let (left, right) = head.split_at_checked(at).ok_or_else(unknown)?;
        let (left, joined) = match left {
            [rest @ .., Word::And] if !rest.is_empty() => (rest, true),
            _ => (left, false),
        };
        let over = match right {
            // `half` alone, `ninety six and half`.
            [] if head.is_empty() || joined => Some(1),
            _ => cardinal(right, place.vocabulary),
        };
        // `one quarters` is no number; `three quarter` is how people talk.
        let Some(over) = over.filter(|over| *over != 1 || !plural) else { continue };
        let number = match left {
            [] => None,
            _ => match said(left, place) {
                Ok(number) => Some(number),
                Err(refusal) if joined && refusal.has_meanings() && over < under => {
                    refused = Some(refusal.plus(sixty_fourths(over, under)));
                    continue;
                }
                Err(_) => continue,
            },
        };
        let formal = left.is_empty() || cardinal(left, place.vocabulary).is_some();
        cuts.push(Cut { amount: Amount { number, fraction: Some((over, under)) }, joined, formal });
    }
    choose(&cuts, plural, place).unwrap_or_else(|| Err(refused.unwrap_or_else(unknown)))
}

/// One way to tell the whole from the numerator.
#[derive(Clone, Copy)]
struct Cut {
    amount: Amount,
    /// An `and` stood at the cut.
    joined: bool,
    /// The whole is a number said in full.
    formal: bool,
}

impl Cut {
    fn is_proper(&self) -> bool {
        self.amount.fraction.is_some_and(|(over, under)| over < under)
    }
    fn is_fraction_only(&self) -> bool {
        self.amount.number.is_none()
    }
}

fn choose(cuts: &[Cut], plural: bool, place: Place<'_>) -> Option<Result<Amount, Refusal>> {
    let meanings = |cuts: &[&Cut], kind: ReadErrorKind| {
        let lengths =
            cuts.iter().filter_map(|cut| cut.amount.length(place.measure, place.said).ok());
        Refusal::from(kind).or_all(lengths, place.unit())
    };
    let proper: Vec<&Cut> = cuts.iter().filter(|cut| cut.is_proper()).collect();
    let joined: Vec<&Cut> = proper.iter().copied().filter(|cut| cut.joined).collect();
    let whole_head = cuts.iter().find(|cut| cut.is_fraction_only());
    if let [cut] = *joined {
        return Some(match whole_head {
            Some(other) if other.is_proper() => {
                Err(meanings(&[cut, other], ReadErrorKind::TwoMeanings))
            }
            _ => Ok(cut.amount),
        });
    }
    match whole_head {
        Some(cut) if cut.is_proper() => return Some(Ok(cut.amount)),
        // `twenty three sixteenths`.
        Some(_) if !proper.is_empty() => {
            return Some(Err(meanings(&proper, ReadErrorKind::LostSpace)));
        }
        // `ninety six half` has lost a word; `five quarters` is only top-heavy.
        Some(_) if !plural => return None,
        Some(cut) => return Some(Ok(cut.amount)),
        None => {}
    }
    let formal: Vec<&Cut> = proper.iter().copied().filter(|cut| cut.formal).collect();
    match (&*formal, &*proper) {
        ([cut], _) | ([], [cut]) => Some(Ok(cut.amount)),
        ([], []) => cuts.first().map(|cut| Ok(cut.amount)),
        (several, _) => Some(Err(meanings(several, ReadErrorKind::TwoMeanings))),
    }
}

/// The words before the name of the part, the part, and whether it is plural.
fn denominator(words: &[Word]) -> Option<(&[Word], u64, bool)> {
    match words {
        [head @ .., Word::Tens(30), Word::Ordinal(2, plural)] => Some((head, 32, *plural)),
        [head @ .., Word::Tens(60), Word::Ordinal(4, plural)] => Some((head, 64, *plural)),
        [.., Word::Ordinal(2, _)] => None,
        [head @ .., Word::Part(under, plural) | Word::Ordinal(under, plural)] => {
            Some((head, *under, *plural))
        }
        _ => None,
    }
}
