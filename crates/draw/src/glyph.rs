//! How wide a text will be, without a font.

/// The sizes text is set in, in drawing units; `web/style/drawing.css` sets the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Size {
    /// Place names and notes.
    Small,
    /// Readings, bold.
    Value,
    /// Ordered numbers and the numerals of a tape, bold.
    Large,
}

impl Size {
    /// The class that sets it.
    pub(crate) const fn class(self) -> &'static str {
        match self {
            Self::Small => "t",
            Self::Value => "t v",
            Self::Large => "t n",
        }
    }

    /// Height of the type, in drawing units.
    pub(crate) const fn units(self) -> f64 {
        match self {
            Self::Small => 13.5,
            Self::Value => 14.5,
            Self::Large => 19.0,
        }
    }

    /// From the middle of the digits down to the baseline.
    pub(crate) fn drop(self) -> f64 {
        self.units() * 0.36
    }
}

/// The width `text` takes at most, in drawing units. The page's font is not
/// known here, so the letters are taken as wide as the widest common
/// sans-serif has them; a text comes out narrower, never wider.
pub(crate) fn text_width(text: &str, size: Size) -> f64 {
    let ems: f64 = text
        .chars()
        .map(|letter| match letter {
            ' ' | '\u{a0}' | '.' | ',' | '\'' | '’' | '′' | ':' | '|' => 0.38,
            'i' | 'j' | 'l' | 'í' | 'î' => 0.36,
            'f' | 't' | 'r' | '/' | '-' | '(' | ')' | '″' => 0.5,
            'm' | 'w' | 'M' | 'W' | 'œ' | '≈' => 1.03,
            'A'..='Z' => 0.77,
            _ => 0.65,
        })
        .sum();
    let weight = if matches!(size, Size::Small) { 1.0 } else { 1.1 };
    ems * weight * size.units()
}
