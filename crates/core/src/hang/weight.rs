//! A weight as a person says it: pounds or kilograms.

/// A weight (a mass, strictly), in whole micrograms: every pound and every gram is exact.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Weight(i64);

/// Standard gravity, m/s² (CGPM 1901; exact by definition, from memory).
pub const GRAVITY: f64 = 9.806_65;

/// The most that is read: ten tonnes.
const MOST: i64 = 10_000_000_000_000;

/// The system a bare number of a weight is meant in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Scale {
    /// Pounds.
    #[default]
    Pound,
    /// Kilograms.
    Kilogram,
}

impl Scale {
    /// What goes with a unit of length.
    #[must_use]
    pub const fn of(unit: crate::Unit) -> Self {
        match unit {
            crate::Unit::Inch => Self::Pound,
            crate::Unit::Millimetre => Self::Kilogram,
        }
    }
    /// Micrograms in one. The pound is 0.45359237 kg exactly (NIST SP 811, from memory).
    const fn micrograms(self) -> i64 {
        match self {
            Self::Pound => 453_592_370,
            Self::Kilogram => 1_000_000_000,
        }
    }
    /// `lb` or `kg`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Pound => "lb",
            Self::Kilogram => "kg",
        }
    }
}

/// Why a text is no weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoWeight {
    /// Nothing was typed.
    Empty,
    /// No number with pounds or kilograms.
    NotANumber,
    /// Below nothing, nothing, or more than ten tonnes.
    OutOfReach,
}

impl Weight {
    /// From grams.
    #[must_use]
    pub const fn from_grams(grams: i64) -> Self {
        Self(grams.saturating_mul(1_000_000))
    }
    /// From micrograms.
    #[must_use]
    pub const fn from_micrograms(micrograms: i64) -> Self {
        Self(micrograms)
    }
    /// In micrograms.
    #[must_use]
    pub const fn micrograms(self) -> i64 {
        self.0
    }
    /// From kilograms; for figures, not for readings.
    #[must_use]
    #[expect(clippy::cast_possible_truncation, reason = "a float cast saturates")]
    pub fn from_kg_f64(kg: f64) -> Self {
        Self(libm::round(kg * 1e9) as i64)
    }
    /// In kilograms.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "far below 2^53 µg for a door")]
    pub const fn to_kg(self) -> f64 {
        self.0 as f64 / 1e9
    }
    /// In pounds.
    #[must_use]
    pub const fn to_lb(self) -> f64 {
        self.to_kg() / 0.453_592_37
    }
    /// In the unit of `scale`.
    #[must_use]
    pub const fn in_scale(self, scale: Scale) -> f64 {
        match scale {
            Scale::Pound => self.to_lb(),
            Scale::Kilogram => self.to_kg(),
        }
    }
    /// What it presses down with, in newtons.
    #[must_use]
    pub fn newtons(self) -> f64 {
        self.to_kg() * GRAVITY
    }
    /// The weight that presses down with so many newtons.
    #[must_use]
    pub fn from_newtons(newtons: f64) -> Self {
        Self::from_kg_f64(newtons / GRAVITY)
    }

    /// Reads `132`, `132.5 lb`, `60 kg`, `60,5 kg`; a bare number is in `scale`.
    ///
    /// # Errors
    /// When it is no such number, or no weight of a door or of a pull.
    pub fn read(text: &str, scale: Scale) -> Result<Self, NoWeight> {
        let text = text.trim();
        if text.is_empty() {
            return Err(NoWeight::Empty);
        }
        let digits = |c: char| c.is_ascii_digit() || c == '.' || c == ',';
        let cut = text.find(|c| !digits(c)).unwrap_or(text.len());
        let (number, unit) = text.split_at_checked(cut).ok_or(NoWeight::NotANumber)?;
        let scale = match unit.trim().trim_end_matches('.') {
            "" => scale,
            "lb" | "lbs" | "Lb" | "LB" | "LBS" | "#" | "pounds" | "pound" | "libras" | "livres" => {
                Scale::Pound
            }
            "kg" | "Kg" | "KG" | "kgs" | "kilo" | "kilos" | "kilograms" | "kilogram" => {
                Scale::Kilogram
            }
            _ => return Err(NoWeight::NotANumber),
        };
        let (whole, part) = number.split_once(['.', ',']).unwrap_or((number, ""));
        let plain = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
        if whole.is_empty() || !plain(whole) || !plain(part) || part.len() > 3 {
            return Err(NoWeight::NotANumber);
        }
        // A point with nothing behind it, `132.`: digits may be lost.
        if number.len() > whole.len() && part.is_empty() {
            return Err(NoWeight::NotANumber);
        }
        let whole: i64 = whole.parse().map_err(|_| NoWeight::OutOfReach)?;
        let mut thousandths = 0_i64;
        for (digit, worth) in part.bytes().zip([100, 10, 1]) {
            let digit = i64::from(digit.saturating_sub(b'0'));
            thousandths = thousandths.saturating_add(digit.saturating_mul(worth));
        }
        let one = scale.micrograms();
        // A thousandth of a pound is 453 592.37 µg: to the nearest.
        let part = one.saturating_mul(thousandths).saturating_add(500).div_euclid(1000);
        let micrograms = whole.saturating_mul(one).saturating_add(part);
        if (1..=MOST).contains(&micrograms) {
            Ok(Self(micrograms))
        } else {
            Err(NoWeight::OutOfReach)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_scale_goes_with_the_tape() {
        let [inch, metric] = [crate::Unit::Inch, crate::Unit::Millimetre].map(Scale::of);
        assert_eq!([inch, metric].map(Scale::key), ["lb", "kg"]);
        let weight = Weight::from_micrograms(1_360_777_110);
        assert_eq!(weight.micrograms(), 1_360_777_110);
        assert!((weight.in_scale(inch) - 3.0).abs() < 1e-12);
        assert!((weight.in_scale(metric) - 1.360_777_11).abs() < 1e-12);
    }

    #[test]
    fn weights_are_read_as_they_are_said() {
        let pound = Weight(453_592_370);
        for (text, scale, expected) in [
            ("1", Scale::Pound, Ok(pound)),
            ("1 lb", Scale::Kilogram, Ok(pound)),
            (" 1 lbs. ", Scale::Kilogram, Ok(pound)),
            ("60,5 kg", Scale::Pound, Ok(Weight::from_grams(60_500))),
            ("60.5", Scale::Kilogram, Ok(Weight::from_grams(60_500))),
            ("60.505", Scale::Kilogram, Ok(Weight::from_grams(60_505))),
            ("60.5050", Scale::Kilogram, Err(NoWeight::NotANumber)),
            ("60.", Scale::Kilogram, Err(NoWeight::NotANumber)),
            ("1.2.3", Scale::Kilogram, Err(NoWeight::NotANumber)),
            (".5", Scale::Kilogram, Err(NoWeight::NotANumber)),
            ("sixty", Scale::Kilogram, Err(NoWeight::NotANumber)),
            ("60 stone", Scale::Kilogram, Err(NoWeight::NotANumber)),
            ("-60", Scale::Kilogram, Err(NoWeight::NotANumber)),
            ("", Scale::Kilogram, Err(NoWeight::Empty)),
            ("0", Scale::Kilogram, Err(NoWeight::OutOfReach)),
            ("99999999999999999999", Scale::Kilogram, Err(NoWeight::OutOfReach)),
            ("10001", Scale::Kilogram, Err(NoWeight::OutOfReach)),
        ] {
            assert_eq!(Weight::read(text, scale), expected, "{text}");
        }
    }

    proptest! {
        #[test]
        fn no_text_makes_it_panic(text in ".*") {
            let _ = Weight::read(&text, Scale::Pound);
        }
        #[test]
        fn a_weight_is_the_same_in_either_unit(grams in 1_i64..5_000_000) {
            let weight = Weight::from_grams(grams);
            prop_assert!((weight.to_lb() * 0.453_592_37 - weight.to_kg()).abs() < 1e-9);
            prop_assert!((Weight::from_newtons(weight.newtons()).to_kg() - weight.to_kg()).abs() < 1e-8);
        }
    }
}
