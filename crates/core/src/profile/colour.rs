//! A dealer's colours, and whether text in them can be read.

use core::fmt;

/// The least contrast of text (WCAG 2.2, success criterion 1.4.3).
pub const CONTRAST_LEAST: f64 = 4.5;

/// A colour of the sRGB space.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Colour([u8; 3]);

impl Colour {
    /// From red, green and blue.
    #[must_use]
    pub const fn new(rgb: [u8; 3]) -> Self {
        Self(rgb)
    }

    /// From `#rrggbb`.
    #[must_use]
    pub fn from_hex(text: &str) -> Option<Self> {
        let digits = text.strip_prefix('#')?;
        if digits.len() != 6 || !digits.bytes().all(|byte| byte.is_ascii_hexdigit()) {
            return None;
        }
        let part = |at| u8::from_str_radix(digits.get(at..)?.get(..2)?, 16).ok();
        Some(Self([part(0)?, part(2)?, part(4)?]))
    }

    /// Relative luminance, 0 to 1 (WCAG 2.2, *relative luminance*).
    #[must_use]
    pub fn luminance(self) -> f64 {
        let linear = self.0.map(|part| {
            let part = f64::from(part) / 255.0;
            if part <= 0.04045 { part / 12.92 } else { libm::pow((part + 0.055) / 1.055, 2.4) }
        });
        let [red, green, blue] = linear;
        0.2126 * red + 0.7152 * green + 0.0722 * blue
    }

    /// The contrast of the two, 1 to 21 (WCAG 2.2, *contrast ratio*).
    #[must_use]
    pub fn contrast(self, other: Self) -> f64 {
        let (a, b) = (self.luminance(), other.luminance());
        let (light, dark) = if a > b { (a, b) } else { (b, a) };
        (light + 0.05) / (dark + 0.05)
    }
}

impl fmt::Display for Colour {
    /// As `#rrggbb`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        const DIGITS: [char; 16] =
            ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'];
        f.write_str("#")?;
        for part in self.0 {
            for digit in [part >> 4, part & 15] {
                let digit = DIGITS.get(usize::from(digit)).copied().unwrap_or('0');
                fmt::Write::write_char(f, digit)?;
            }
        }
        Ok(())
    }
}

/// The colours of one scheme.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Palette {
    /// Text and lines.
    pub ink: Colour,
    /// What they stand on.
    pub paper: Colour,
    /// Buttons that go on, marks.
    pub accent: Colour,
    /// Text on the accent.
    pub on_accent: Colour,
    /// What stops an order; the ink where it is not set.
    pub stop: Option<Colour>,
}

/// A pair that cannot be read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poor {
    /// The text's colour, by its key in files.
    pub text: &'static str,
    /// The ground's, by its key in files.
    pub ground: &'static str,
    /// Their contrast.
    pub contrast: f64,
}

impl Palette {
    /// The first pair of text and ground that is below [`CONTRAST_LEAST`].
    #[must_use]
    pub fn poor(&self) -> Option<Poor> {
        let pairs = [
            ("ink", self.ink, "paper", self.paper),
            ("on_accent", self.on_accent, "accent", self.accent),
            ("stop", self.stop.unwrap_or(self.ink), "paper", self.paper),
        ];
        let measured = pairs.into_iter().map(|(text, a, ground, b)| {
            let contrast = a.contrast(b);
            Poor { text, ground, contrast }
        });
        measured.into_iter().find(|pair| pair.contrast < CONTRAST_LEAST)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn colour(hex: &str) -> Colour {
        Colour::from_hex(hex).unwrap()
    }

    /// Below 0.04045 the curve is a line (WCAG 2.2, *relative luminance*): 3 / 255 / 12.92.
    #[test]
    fn what_is_nearly_black_is_on_the_line() {
        assert!((colour("#030303").luminance() - 0.000_910_6).abs() < 1e-7);
    }

    /// #767676 on white passes by a hair, #777777 fails (computed by the formula of WCAG 2.2).
    #[test]
    fn the_greys_either_side_of_the_limit() {
        let white = colour("#ffffff");
        for (grey, expected) in [("#767676", 4.5422), ("#777777", 4.4781), ("#000000", 21.0)] {
            assert!((colour(grey).contrast(white) - expected).abs() < 5e-5, "{grey}");
            assert!((white.contrast(colour(grey)) - expected).abs() < 5e-5, "{grey}");
        }
    }

    #[test]
    fn a_pair_below_the_limit_is_named_with_its_ratio() {
        let palette = Palette {
            ink: colour("#000000"),
            paper: colour("#ffffff"),
            accent: colour("#777777"),
            on_accent: colour("#ffffff"),
            stop: None,
        };
        let poor = palette.poor().unwrap();
        assert_eq!((poor.text, poor.ground), ("on_accent", "accent"));
        assert_eq!(Palette { accent: colour("#767676"), ..palette }.poor(), None);
    }

    #[test]
    fn a_colour_is_six_digits_and_reads_back() {
        assert_eq!(colour("#Ffc914").to_string(), "#ffc914");
        for bad in ["", "#fff", "ffffff", "#12345g", "#+12345", "red", "#ffffff0", "#ÿÿÿ"] {
            assert_eq!(Colour::from_hex(bad), None, "{bad}");
        }
    }
}
