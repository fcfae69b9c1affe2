//! The values of a profile that are more than a text: lengths, weights, addresses.

use hangtrue_core::hang::spring::DRUMS;
use hangtrue_core::profile::{Colour, LANGUAGES, Numbering, Words, is_email, is_page, is_phone};
use hangtrue_core::{Length, Unit, length};

use super::fault::ProfileFault;
use super::read::Read;
use crate::json::error::{Fault, FileError, NodeKind};
use crate::json::text::Value;
use crate::json::walk::{At, shown};

/// A text of one line or, where its use allows, several; at most `MOST` characters.
pub(super) struct Text<const MOST: usize>(pub(super) String);

impl<const MOST: usize> Read for Text<MOST> {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let text = at.text()?.trim();
        if text.is_empty() {
            return Err(at.error(ProfileFault::Empty));
        }
        if text.chars().nth(MOST).is_some() {
            return Err(at.error(ProfileFault::TextTooLong { most: MOST }));
        }
        if let Some(letter) = text.chars().find(|letter| hidden(*letter)) {
            return Err(at.error(ProfileFault::Letter { letter }));
        }
        Ok(Self(text.to_owned()))
    }
}

/// Control characters, and marks that change the direction of what stands around them.
fn hidden(letter: char) -> bool {
    letter.is_control()
        || matches!(letter, '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
}

/// A dealer's own text, in one language or by language.
pub(super) struct Spoken(pub(super) Words);

/// The most characters of such a text.
pub(super) const SPOKEN_MOST: usize = 400;

impl Read for Spoken {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        if matches!(at.node.value, Value::Text(_)) {
            let Text(text) = Text::<SPOKEN_MOST>::read(at)?;
            return Ok(Self(Words::plain(&text)));
        }
        let texts = at.object(LANGUAGES)?;
        let mut words = Vec::new();
        for (language, text) in LANGUAGES.into_iter().zip(texts) {
            if let Some(text) = text {
                words.push((language, Text::<SPOKEN_MOST>::read(&at.child(language, text))?.0));
            }
        }
        if words.is_empty() {
            return Err(at.error(ProfileFault::Empty));
        }
        Ok(Self(Words(words)))
    }
}

/// A length with its unit: `96 1/4 in`, `2445 mm`.
#[derive(Clone, Copy)]
pub(super) struct Measure(pub(super) Length);

impl Read for Measure {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let text = at.text()?;
        let fault = || at.error(ProfileFault::Length { found: shown(text) });
        let inch = length::read(text, Unit::Inch).map_err(|_| fault())?;
        // A bare number would be another length in the other unit.
        let same = length::read(text, Unit::Millimetre) == Ok(inch);
        if same { Ok(Self(inch)) } else { Err(fault()) }
    }
}

/// How far a turn lifts a door. Beyond [`DRUMS`] the page that hangs the door would go by the usual
/// drum, and the spring be wound for another.
pub(super) struct Drum(pub(super) Length);

impl Read for Drum {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let Measure(drum) = Measure::read(at)?;
        let found = drum.text(Unit::Inch);
        let fault = ProfileFault::Range { found, least: 3, most: 60 };
        if DRUMS.contains(&drum) { Ok(Self(drum)) } else { Err(at.error(fault)) }
    }
}

/// A mass of a square metre, in grams: `10.5 kg/m2`, `2.15 lb/ft2`.
#[derive(Clone, Copy)]
pub(super) struct Weight(pub(super) u32);

/// No panel is heavier, in grams to the square metre.
const WEIGHT_MOST: u32 = 100_000;

impl Weight {
    pub(super) fn parse(text: &str) -> Option<Self> {
        let (number, unit) = text.trim().split_once(' ')?;
        let (whole, part) = number.split_once('.').unwrap_or((number, "0"));
        let digits = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
        if !digits(whole) || !digits(part) || whole.len() > 4 || part.len() > 3 {
            return None;
        }
        let scale = 10_u64.pow(3_u32.saturating_sub(u32::try_from(part.len()).ok()?));
        let part = part.parse::<u64>().ok()?.saturating_mul(scale);
        let thousandths = whole.parse::<u64>().ok()?.saturating_mul(1000).saturating_add(part);
        let grams = match unit.trim() {
            "kg/m2" | "kg/m²" => thousandths,
            // 0.453 592 37 kg to the pound, 0.092 903 04 m² to the square foot (NIST SP 811).
            "lb/ft2" | "lb/ft²" => thousandths.saturating_mul(4_882_428) / 1_000_000,
            _ => return None,
        };
        u32::try_from(grams).ok().filter(|grams| (1..=WEIGHT_MOST).contains(grams)).map(Self)
    }
}

impl Read for Weight {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let text = at.text()?;
        Self::parse(text).ok_or_else(|| at.error(ProfileFault::Weight { found: shown(text) }))
    }
}

/// A number from `LEAST` to `MOST`.
#[derive(Clone, Copy)]
pub(super) struct Number<const LEAST: u32, const MOST: u32>(pub(super) f64);

impl<const LEAST: u32, const MOST: u32> Read for Number<LEAST, MOST> {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let Value::Number(number) = &at.node.value else {
            let found = at.node.into();
            return Err(at.error(Fault::Kind { expected: NodeKind::Number, found }));
        };
        let value = number.as_f64().filter(|n| (f64::from(LEAST)..=f64::from(MOST)).contains(n));
        let fault = ProfileFault::Range { found: number.to_string(), least: LEAST, most: MOST };
        value.map(Self).ok_or_else(|| at.error(fault))
    }
}

/// A whole number from `LEAST` to `MOST`.
#[derive(Clone, Copy)]
pub(super) struct Whole<const LEAST: u32, const MOST: u32>(pub(super) u32);

impl<const LEAST: u32, const MOST: u32> Read for Whole<LEAST, MOST> {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let Value::Number(number) = &at.node.value else {
            let found = at.node.into();
            return Err(at.error(Fault::Kind { expected: NodeKind::Number, found }));
        };
        let value = number.as_u64().and_then(|n| u32::try_from(n).ok());
        let fault = ProfileFault::Range { found: number.to_string(), least: LEAST, most: MOST };
        value
            .filter(|value| (LEAST..=MOST).contains(value))
            .map(Self)
            .ok_or_else(|| at.error(fault))
    }
}

/// Declares a text that must be of some kind, with what it is said to be otherwise.
macro_rules! texts {
    ($($(#[$doc:meta])* $name:ident($kind:ty): $parse:expr, $fault:expr;)*) => {$(
        $(#[$doc])*
        pub(super) struct $name(pub(super) $kind);

        impl Read for $name {
            fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
                let text: &str = at.text()?;
                let parse: fn(&str) -> Option<$kind> = $parse;
                parse(text).map(Self).ok_or_else(|| at.error($fault(shown(text))))
            }
        }
    )*};
}

texts! {
    /// A key: what files and orders call a thing.
    Key(String): |text| is_key(text).then(|| text.to_owned()), |found| ProfileFault::Key { found };
    /// An e-mail address.
    Email(String): |text| is_email(text).then(|| text.to_owned()), |found| ProfileFault::Email { found };
    /// A telephone number.
    Phone(String): |text| is_phone(text).then(|| text.to_owned()), |found| ProfileFault::Phone { found };
    /// The address of a page.
    Page(String): |text| is_page(text).then(|| text.to_owned()), |found| ProfileFault::Page { found };
    /// A colour, `#rrggbb`.
    Hex(Colour): Colour::from_hex, |found| ProfileFault::Colour { found };
}

/// How an order's number is made.
pub(super) struct NumberFormat(pub(super) Numbering);

impl Read for NumberFormat {
    fn read(at: &At<'_, '_>) -> Result<Self, FileError> {
        let parsed = Numbering::parse(at.text()?);
        parsed.map(Self).map_err(|error| at.error(ProfileFault::NumberFormat(error)))
    }
}

/// The most characters of a key.
pub(super) const KEY_MOST: usize = 32;

/// Lower-case letters, digits and dashes, a letter first.
fn is_key(text: &str) -> bool {
    text.len() <= KEY_MOST
        && text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
}

/// For tooling: the schema of each of these.
#[cfg(feature = "schema")]
mod schemas {
    use std::borrow::Cow;

    use super::*;
    use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};

    macro_rules! schemas {
        ($($name:ty, $schema:tt;)*) => {$(
            impl JsonSchema for $name {
                fn inline_schema() -> bool { true }
                fn schema_name() -> Cow<'static, str> { stringify!($name).into() }
                fn json_schema(_: &mut SchemaGenerator) -> Schema { json_schema!($schema) }
            }
        )*};
    }

    schemas! {
        Measure, {
            "type": "string",
            "description": "A length with its unit: 96 1/4 in, 2445 mm.",
            "examples": ["96 1/4 in", "2445 mm"]
        };
        Drum, {
            "type": "string",
            "description": "A length with its unit, 3 to 60 in.",
            "examples": ["12 1/2 in", "318 mm"]
        };
        Weight, {
            "type": "string",
            "pattern": "^[0-9]{1,4}(\\.[0-9]{1,3})? +(kg/m[2²]|lb/ft[2²])$",
            "examples": ["10.5 kg/m2", "2.15 lb/ft2"]
        };
        Key, { "type": "string", "pattern": "^[a-z][a-z0-9-]{0,31}$", "examples": ["side-seal"] };
        Email, { "type": "string", "format": "email", "maxLength": 254 };
        Phone, { "type": "string", "pattern": "^\\+?[0-9 .()-]{3,32}$", "format": "tel" };
        Page, { "type": "string", "format": "uri", "pattern": "^https?://", "maxLength": 2000 };
        Hex, { "type": "string", "pattern": "^#[0-9a-fA-F]{6}$", "format": "color" };
        NumberFormat, {
            "type": "string",
            "maxLength": 40,
            "pattern": "^[A-Za-z0-9./ {}-]*\\{check\\}[A-Za-z0-9./ {}-]*$",
            "examples": ["PD-{date}-{check}"]
        };
    }

    impl<const MOST: usize> JsonSchema for Text<MOST> {
        fn inline_schema() -> bool {
            true
        }
        fn schema_name() -> Cow<'static, str> {
            "Text".into()
        }
        fn json_schema(_: &mut SchemaGenerator) -> Schema {
            json_schema!({ "type": "string", "minLength": 1, "maxLength": MOST })
        }
    }

    impl JsonSchema for Spoken {
        fn schema_name() -> Cow<'static, str> {
            "Words".into()
        }
        fn json_schema(_: &mut SchemaGenerator) -> Schema {
            let text = json_schema!({ "type": "string", "minLength": 1, "maxLength": SPOKEN_MOST });
            json_schema!({
                "description": "A text, for all languages or by language.",
                "anyOf": [
                    text,
                    {
                        "type": "object",
                        "properties": { "en": text, "es": text, "fr": text },
                        "additionalProperties": false,
                        "minProperties": 1
                    }
                ]
            })
        }
    }

    impl<const LEAST: u32, const MOST: u32> JsonSchema for Number<LEAST, MOST> {
        fn inline_schema() -> bool {
            true
        }
        fn schema_name() -> Cow<'static, str> {
            "Number".into()
        }
        fn json_schema(_: &mut SchemaGenerator) -> Schema {
            json_schema!({ "type": "number", "minimum": LEAST, "maximum": MOST })
        }
    }

    impl<const LEAST: u32, const MOST: u32> JsonSchema for Whole<LEAST, MOST> {
        fn inline_schema() -> bool {
            true
        }
        fn schema_name() -> Cow<'static, str> {
            "Whole".into()
        }
        fn json_schema(_: &mut SchemaGenerator) -> Schema {
            json_schema!({ "type": "integer", "minimum": LEAST, "maximum": MOST })
        }
    }
}
