//! A length to text.

use super::number::on_inch_tape;
use super::unit::Measure;
use super::{Length, Unit};
use crate::short::{digits, holds};

/// How a length is written. Every style reads back as the same length, in a field of
/// any unit but for the bare ones, which name the unit of theirs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Style {
    /// `96 3/16 in`, `2443 mm`: the canonical one.
    Plain(Unit),
    /// `8 ft 0 3/16 in`; below a foot as [`Style::Plain`].
    FeetInches,
    /// `96 3/16`, `2443`.
    Bare(Unit),
    /// `96-3/16`, in a field for inches.
    Dashed,
    /// `96.1875`, in a field for inches.
    InchDecimal,
    /// `96 3/16"`.
    InchMark,
    /// `8' 0 3/16"`; below a foot as [`Style::InchMark`].
    FeetMarks,
    /// `244.3 cm`.
    Centimetres,
    /// `2.443 m`.
    Metres,
}

impl Style {
    /// Every style.
    pub const ALL: [Self; 11] = [
        Self::Plain(Unit::Inch),
        Self::Plain(Unit::Millimetre),
        Self::FeetInches,
        Self::Bare(Unit::Inch),
        Self::Bare(Unit::Millimetre),
        Self::Dashed,
        Self::InchDecimal,
        Self::InchMark,
        Self::FeetMarks,
        Self::Centimetres,
        Self::Metres,
    ];

    /// Inches or millimetres: the system it is written in.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::Plain(unit) | Self::Bare(unit) => unit,
            Self::Centimetres | Self::Metres => Unit::Millimetre,
            Self::FeetInches
            | Self::Dashed
            | Self::InchDecimal
            | Self::InchMark
            | Self::FeetMarks => Unit::Inch,
        }
    }
    /// Whether it names no unit, so that only a field of [`Style::unit`] reads it back.
    #[must_use]
    pub const fn is_bare(self) -> bool {
        matches!(self, Self::Bare(_) | Self::Dashed | Self::InchDecimal)
    }
}

/// How an exact length is written where its unit may have to give way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Form {
    In(Unit),
    FeetInches,
}

impl Form {
    pub(super) const INCH: Self = Self::In(Unit::Inch);
    pub(super) const MM: Self = Self::In(Unit::Millimetre);

    pub(super) const fn unit(self) -> Unit {
        match self {
            Self::In(unit) => unit,
            Self::FeetInches => Unit::Inch,
        }
    }
}

impl Length {
    /// Written out canonically; a length between the marks is rounded to the nearest
    /// 1/64 in or 0.1 mm (the even one at the midpoint) and marked with a leading `≈`,
    /// which no field reads back.
    #[must_use]
    pub fn print(self, style: Style) -> String {
        let rounded = self.round_to(style.unit().finest());
        let plain = Style::Plain(style.unit());
        let Some(text) = rounded.write(style).or_else(|| rounded.write(plain)) else {
            // Saturated: the last nanometres of an `i64` are on no mark.
            return self.exactly(Form::In(Unit::Millimetre));
        };
        if rounded == self { text } else { ["≈ ", &text].concat() }
    }

    /// [`Style::Plain`] in `unit`, approximate where it must be: for sentences.
    #[must_use]
    pub fn text(self, unit: Unit) -> String {
        self.print(Style::Plain(unit))
    }

    /// Exact, always: in `unit` if that can be (`96 3/16 in`, `96.14 in`, `2443.15 mm`),
    /// else in millimetres. Reads back as the same length in a field of either unit.
    #[must_use]
    pub fn canonical(self, unit: Unit) -> String {
        self.exactly(Form::In(unit))
    }

    /// Exactly, or not at all.
    #[must_use]
    pub fn write(self, style: Style) -> Option<String> {
        let sign = if self < Self::ZERO { "-" } else { "" };
        let nm = self.nm().unsigned_abs();
        let text = match style {
            Style::Plain(Unit::Inch) => [&fraction(nm, " ")?, " in"].concat(),
            Style::Plain(Unit::Millimetre) => [&decimal(nm, Measure::Millimetre)?, " mm"].concat(),
            Style::FeetInches => feet(nm, &fraction, " ft ", " in")?,
            Style::Bare(Unit::Inch) => fraction(nm, " ")?,
            Style::Bare(Unit::Millimetre) => decimal(nm, Measure::Millimetre)?,
            Style::Dashed => fraction(nm, "-").filter(|text| holds(text, b'-'))?,
            Style::InchDecimal => decimal(nm, Measure::Inch)?,
            Style::InchMark => [&fraction(nm, " ")?, "\""].concat(),
            Style::FeetMarks => feet(nm, &fraction, "' ", "\"")?,
            Style::Centimetres => [&decimal(nm, Measure::Centimetre)?, " cm"].concat(),
            Style::Metres => [&decimal(nm, Measure::Metre)?, " m"].concat(),
        };
        Some([sign, &text].concat())
    }

    pub(super) fn exactly(self, form: Form) -> String {
        let sign = if self < Self::ZERO { "-" } else { "" };
        let nm = self.nm().unsigned_abs();
        let inches = |nm, join: &str| fraction(nm, join).or_else(|| decimal(nm, Measure::Inch));
        let text = match form {
            Form::In(Unit::Inch) => inches(nm, " ").map(|text| [&text, " in"].concat()),
            Form::In(Unit::Millimetre) => None,
            Form::FeetInches => feet(nm, &inches, " ft ", " in"),
        };
        // Six decimals of a millimetre are whole nanometres: this always can be.
        let text = text.unwrap_or_else(|| {
            [&decimal(nm, Measure::Millimetre).unwrap_or_default(), " mm"].concat()
        });
        [sign, &text].concat()
    }
}

/// `96 3/16`: whole inches and the reduced fraction with `join` between.
fn fraction(nm: u64, join: &str) -> Option<String> {
    const INCH: u64 = Length::INCH.nm().unsigned_abs();
    const MARK: u64 = Length::SIXTY_FOURTH.nm().unsigned_abs();
    if !nm.is_multiple_of(MARK) {
        return None;
    }
    let (whole, marks) = (nm / INCH, nm % INCH / MARK);
    if marks == 0 {
        return Some(digits(whole));
    }
    let halvings = marks.trailing_zeros();
    let (over, under) = (marks >> halvings, 64_u64 >> halvings);
    debug_assert!(on_inch_tape(under));
    let part = [&digits(over), "/", &digits(under)].concat();
    Some(if whole == 0 { part } else { [&digits(whole), join, &part].concat() })
}

/// Whole feet, and the inches as `inches` writes them.
fn feet(
    nm: u64,
    inches: &dyn Fn(u64, &str) -> Option<String>,
    foot: &str,
    inch: &str,
) -> Option<String> {
    const FOOT: u64 = Length::FOOT.nm().unsigned_abs();
    const INCH: u64 = Length::INCH.nm().unsigned_abs();
    let (whole, rest) = (nm / FOOT, nm % FOOT);
    let inches = inches(rest, " ")?;
    Some(match whole {
        0 => [&inches, inch].concat(),
        // `8 ft 1/4 in` would do; `8 ft 0 1/4 in` cannot be misheard.
        _ if (1..INCH).contains(&rest) && holds(&inches, b'/') => {
            [&digits(whole), foot, "0 ", &inches, inch].concat()
        }
        _ => [&digits(whole), foot, &inches, inch].concat(),
    })
}

/// All decimals, up to whole nanometres (millionths of an inch), or nothing.
///
/// Three decimals behind one to three digits look like a thousands group to the
/// reader, which asks; a nought behind them settles it.
fn decimal(nm: u64, measure: Measure) -> Option<String> {
    let one = measure.nm().unsigned_abs();
    let whole = nm.checked_div(one)?;
    let mut rest = nm.checked_rem(one)?;
    let mut text = digits(whole);
    let mut places = 0_usize;
    let most = if measure == Measure::Inch { 6 } else { 9 };
    for _ in 0..most {
        if rest == 0 {
            break;
        }
        if places == 0 {
            text.push('.');
        }
        rest = rest.saturating_mul(10);
        text.push(char::from_digit(u32::try_from(rest.checked_div(one)?).ok()?, 10)?);
        rest = rest.checked_rem(one)?;
        places = places.saturating_add(1);
    }
    if rest > 0 {
        return None;
    }
    let eighths = measure == Measure::Inch && nm.is_multiple_of(one / 8);
    if places == 3 && (1..1000).contains(&whole) && measure != Measure::Metre && !eighths {
        text.push('0');
    }
    Some(text)
}
