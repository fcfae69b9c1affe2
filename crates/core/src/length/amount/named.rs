//! A fraction in words behind a number: `ninety six and three sixteenths`.

use super::{Amount, Place, spoken};
use crate::length::scan::Token;
use crate::length::words::Word;
use crate::length::words::cardinal::cardinal;
use crate::length::{ReadErrorKind, Refusal};

/// A run that ends in the name of a part: `ninety six and three sixteenths`.
///
/// Every cut between whole and numerator is tried. An `and` at the cut, or a whole
/// that is complete without the numerator, makes it the one meant; where the words
/// run together into one number (`twenty three sixteenths`), it is asked.
#[inline(never)]
pub(super) fn named(run: &[Token<'_>], place: Place<'_>) -> Result<Amount, Refusal> {
    let words = &*spoken::words(run)?;
    let unknown = || Refusal::from(ReadErrorKind::Unknown);
    let (head, under, plural) = denominator(words).ok_or_else(unknown)?;
    let mut cuts: Vec<Cut> = Vec::new();
    let mut refused = None;
    for at in 0..=head.len() {
        let (left, right) = head.split_at_checked(at).ok_or_else(unknown)?;
        let (left, joined) = match left {
            [rest @ .., Word::And | Word::With] if !rest.is_empty() => (rest, true),
            _ => (left, false),
        };
        let left = spoken::before_stop(left);
        let over = match right {
            // `half` alone, `ninety six and half`.
            [] if head.is_empty() || joined => Some(1),
            _ => cardinal(right, place.vocabulary),
        };
        // `one quarters` is no number; `three quarter` is how people talk.
        let Some(over) = over.filter(|over| *over != 1 || !plural) else { continue };
        let number = match left {
            [] => None,
            _ => match spoken::number_in(left, place) {
                Ok(number) => Some(number),
                Err(refusal) if refusal.has_meanings() && over < under => {
                    refused = Some(refusal.with_part((over, under), place.measure));
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
    let asked = |cuts: &[&Cut]| {
        cuts.iter().fold(Refusal::from(ReadErrorKind::TwoMeanings), |refusal, cut| {
            let length = cut.amount.length(place.measure, place.said).ok();
            refusal.or_maybe(length, place.measure.form())
        })
    };
    let proper: Vec<&Cut> = cuts.iter().filter(|cut| cut.is_proper()).collect();
    let joined: Vec<&Cut> = proper.iter().copied().filter(|cut| cut.joined).collect();
    let whole_head = cuts.iter().find(|cut| cut.is_fraction_only());
    if let Some(cut) = whole_head.filter(|cut| place.follows && cut.is_proper()) {
        // `una pulgada y treinta y tres sesentaicuatroavos`: the inches were said before.
        return Some(Ok(cut.amount));
    }
    if let [cut] = *joined {
        return Some(match whole_head {
            Some(other) if other.is_proper() => Err(asked(&[cut, other])),
            _ => Ok(cut.amount),
        });
    }
    match whole_head {
        Some(cut) if cut.is_proper() => return Some(Ok(cut.amount)),
        // `twenty three sixteenths`.
        Some(_) if !proper.is_empty() => {
            return Some(Err(asked(&proper)));
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
        (several, _) => Some(Err(asked(several))),
    }
}

/// The words before the name of the part, the part, and whether it is plural.
fn denominator(words: &[Word]) -> Option<(&[Word], u64, bool)> {
    match words {
        [head @ .., Word::Tens(30), Word::Ordinal(2, plural)] => Some((head, 32, *plural)),
        [head @ .., Word::Tens(60), Word::Ordinal(4, plural)] => Some((head, 64, *plural)),
        [head @ .., Word::Tens(30), Word::And, Word::Ordinal(2, plural)] => {
            Some((head, 32, *plural))
        }
        [head @ .., Word::Tens(60), Word::And, Word::Ordinal(4, plural)] => {
            Some((head, 64, *plural))
        }
        [head @ .., Word::Number(16), Word::Avos(plural)] => Some((head, 16, *plural)),
        [head @ .., Word::Tens(30), Word::And, Word::Number(2), Word::Avos(plural)] => {
            Some((head, 32, *plural))
        }
        [head @ .., Word::Tens(60), Word::And, Word::Number(4), Word::Avos(plural)] => {
            Some((head, 64, *plural))
        }
        [.., Word::Ordinal(2, _)] => None,
        [head @ .., Word::Part(under, plural) | Word::Ordinal(under, plural)] => {
            Some((head, *under, *plural))
        }
        _ => None,
    }
}
