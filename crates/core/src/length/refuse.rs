//! Why a text is refused, and what it probably meant.

use super::Length;
use super::amount::Amount;
use super::print::Form;
use super::unit::Measure;

/// Why a text is not a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ReadErrorKind {
    /// Nothing was typed.
    Empty,
    /// More text than any reading takes.
    TooLong,
    /// A tab, a line break or another control character.
    ControlCharacter,
    /// A mark that turns the direction of writing.
    DirectionMark,
    /// A character that takes no room, such as a zero-width space.
    HiddenCharacter,
    /// `961/4`: the space before the fraction is gone.
    LostSpace,
    /// `96 14`: the slash of the fraction is gone.
    LostSlash,
    /// `8 0 1/4`: several numbers, with no mark that says what each one is.
    LostMark,
    /// `96.` or `96 1/`: the digits after the point or the slash are missing.
    LostDigits,
    /// `96 5/4`: a fraction of one or more.
    TopHeavy,
    /// `96 1/3`: a fraction no tape has a mark for.
    NotOnTape,
    /// `96 1/0`.
    ZeroDenominator,
    /// `8' 13"`: twelve inches or more beside the feet.
    InchesPastFoot,
    /// `8.6'`: 8 ft 6 in, or six tenths of a foot?
    DecimalFeet,
    /// `8 1/2 ft`: half a foot, or half an inch?
    FractionOfFoot,
    /// `96.5 1/4`.
    DecimalAndFraction,
    /// `1,234`: a thousands mark or a decimal mark?
    ThousandsOrDecimal,
    /// `96..5`.
    TwoPoints,
    /// A decimal that is no whole number of nanometres.
    TooFine,
    /// A minus sign.
    Negative,
    /// `1e3`.
    Exponent,
    /// `96 in 2 mm`.
    MixedUnits,
    /// `8' 6'`: the same unit twice.
    RepeatedUnit,
    /// `96 x 84`.
    TwoReadings,
    /// `eight six`: words that say two different lengths.
    TwoMeanings,
    /// `about 96`, `96?`.
    Approximate,
    /// `96+`.
    PlusSign,
    /// A number past what a [`Length`] can hold.
    OutOfRange,
    /// Not understood.
    Unknown,
}

impl ReadErrorKind {
    /// Every kind.
    pub const ALL: [Self; 29] = [
        Self::Empty,
        Self::TooLong,
        Self::ControlCharacter,
        Self::DirectionMark,
        Self::HiddenCharacter,
        Self::LostSpace,
        Self::LostSlash,
        Self::LostMark,
        Self::LostDigits,
        Self::TopHeavy,
        Self::NotOnTape,
        Self::ZeroDenominator,
        Self::InchesPastFoot,
        Self::DecimalFeet,
        Self::FractionOfFoot,
        Self::DecimalAndFraction,
        Self::ThousandsOrDecimal,
        Self::TwoPoints,
        Self::TooFine,
        Self::Negative,
        Self::Exponent,
        Self::MixedUnits,
        Self::RepeatedUnit,
        Self::TwoReadings,
        Self::TwoMeanings,
        Self::Approximate,
        Self::PlusSign,
        Self::OutOfRange,
        Self::Unknown,
    ];

    /// The code in files.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::TooLong => "too-long",
            Self::ControlCharacter => "control-character",
            Self::DirectionMark => "direction-mark",
            Self::HiddenCharacter => "hidden-character",
            Self::LostSpace => "lost-space",
            Self::LostSlash => "lost-slash",
            Self::LostMark => "lost-mark",
            Self::LostDigits => "lost-digits",
            Self::TopHeavy => "top-heavy",
            Self::NotOnTape => "not-on-tape",
            Self::ZeroDenominator => "zero-denominator",
            Self::InchesPastFoot => "inches-past-foot",
            Self::DecimalFeet => "decimal-feet",
            Self::FractionOfFoot => "fraction-of-foot",
            Self::DecimalAndFraction => "decimal-and-fraction",
            Self::ThousandsOrDecimal => "thousands-or-decimal",
            Self::TwoPoints => "two-points",
            Self::TooFine => "too-fine",
            Self::Negative => "negative",
            Self::Exponent => "exponent",
            Self::MixedUnits => "mixed-units",
            Self::RepeatedUnit => "repeated-unit",
            Self::TwoReadings => "two-readings",
            Self::TwoMeanings => "two-meanings",
            Self::Approximate => "approximate",
            Self::PlusSign => "plus-sign",
            Self::OutOfRange => "out-of-range",
            Self::Unknown => "unknown",
        }
    }
}

/// A likely meaning of a refused text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Suggestion {
    /// What to type instead, canonical; it reads as `length` in a field of either unit.
    pub text: String,
    /// Its value.
    pub length: Length,
}

/// A refused text: why, and what was likely meant.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ReadError {
    /// Why.
    pub kind: ReadErrorKind,
    /// Likely meanings, likeliest first; never applied by themselves.
    pub suggestions: Vec<Suggestion>,
}

/// A refusal on its way out: meanings are lengths that may yet be added to.
///
/// Plain data with room for four meanings: there are never more, and without an
/// allocation no early return has anything to clean up.
#[derive(Clone, Copy, Debug)]
pub(super) struct Refusal {
    pub(super) kind: ReadErrorKind,
    meanings: [Option<(Length, Form)>; 4],
}

impl From<ReadErrorKind> for Refusal {
    fn from(kind: ReadErrorKind) -> Self {
        Self { kind, meanings: [None; 4] }
    }
}

impl Refusal {
    /// One more likely meaning, and how it is written; a fifth is dropped.
    pub(super) fn or(mut self, length: Length, form: Form) -> Self {
        if let Some(free) = self.meanings.iter_mut().find(|meaning| meaning.is_none()) {
            *free = Some((length, form));
        }
        self
    }
    /// One more likely meaning, if there is one.
    pub(super) fn or_maybe(self, length: Option<Length>, form: Form) -> Self {
        length.map_or(self, |length| self.or(length, form))
    }
    pub(super) const fn has_meanings(&self) -> bool {
        self.meanings[0].is_some()
    }
    /// With `more`, written in `form`, before every meaning, and all written so; one in the other
    /// units cannot have stood behind it.
    #[inline(never)]
    pub(super) fn plus(mut self, more: Length, form: Form) -> Self {
        for meaning in &mut self.meanings {
            *meaning = meaning
                .filter(|(_, was)| was.unit() == form.unit())
                .map(|(length, _)| (length + more, form));
        }
        self
    }
    /// With the fraction that stood behind the number added to every whole meaning, in the measure
    /// of that meaning: `measure` if it is of the same units.
    #[inline(never)]
    pub(super) fn with_part(mut self, part: (u64, u64), measure: Measure) -> Self {
        let part = Amount { number: None, fraction: Some(part) };
        for meaning in &mut self.meanings {
            let Some((length, form)) = *meaning else { continue };
            let unit = form.unit();
            let measure = if unit == measure.unit() { measure } else { unit.measure() };
            let whole = length.floor_to(Length::from_nm(measure.nm())) == length;
            let part = part.length(measure, true).ok().filter(|_| whole);
            *meaning = part.map(|part| (length + part, form));
        }
        self
    }
    /// Written out; a meaning beyond any tape is not offered, nor one twice.
    pub(super) fn into_error(self) -> ReadError {
        let mut suggestions: Vec<Suggestion> = Vec::new();
        for (length, form) in self.meanings.into_iter().flatten() {
            let known = suggestions.iter().any(|s| s.length == length);
            if !known && length >= Length::ZERO && length <= LONGEST_TAPE {
                suggestions.push(Suggestion { text: length.exactly(form), length });
            }
        }
        ReadError { kind: self.kind, suggestions }
    }
}

/// No meaning beyond this is offered: 50 m, the longest tape in a yard
/// (common practice, no source).
const LONGEST_TAPE: Length = Length::from_mm(50_000);
