//! A typed reading, verbatim: the usual spellings as a form and a number, others as text.
//!
//! A form is a way of spelling, not a meaning: it prints a number as the text that was
//! typed, and what that text says is for `core` to read again. Consecutive readings are
//! mostly spelled alike, so the form in force costs one bit.

use super::text;
use crate::bits::{Reader, Short, Writer};
use hangtrue_core::Unit;
use hangtrue_core::short::{cut_first, cut_last, digits};

/// What a form's number counts, and how it is spelled.
#[derive(Clone, Copy)]
enum Shape {
    /// `92 3/16`: the fraction in lowest terms, `parts` to the inch.
    Fraction { parts: u32, gap: &'static str },
    /// `92 4/16`: sixteenths as they were counted.
    Sixteenths,
    /// `92 ¼`: eighths in one character.
    Eighths { gap: &'static str },
    /// `8 ft 0 3/16`, `8' 0 3/16`: sixteenths, twelve inches to the foot.
    Feet { mark: &'static str },
    /// `2443`: whole numbers to 4095.
    Whole,
    /// `92.25`: up to four decimals.
    Decimal { point: char },
}

/// A spelling.
#[derive(Clone, Copy)]
struct Form {
    shape: Shape,
    suffix: &'static str,
}

const fn form(shape: Shape, suffix: &'static str) -> Form {
    Form { shape, suffix }
}

const fn fraction(parts: u32, gap: &'static str, suffix: &'static str) -> Form {
    form(Shape::Fraction { parts, gap }, suffix)
}

const fn decimal(point: char, suffix: &'static str) -> Form {
    form(Shape::Decimal { point }, suffix)
}

/// The forms by number. The first that spells a text is the one that is written.
const FORMS: [Form; 32] = [
    fraction(16, " ", ""),
    fraction(16, " ", " in"),
    fraction(16, " ", "\""),
    fraction(16, "-", ""),
    fraction(16, "-", "\""),
    fraction(16, "-", " in"),
    fraction(64, " ", ""),
    fraction(64, " ", " in"),
    fraction(64, " ", "\""),
    form(Shape::Sixteenths, ""),
    form(Shape::Eighths { gap: " " }, ""),
    form(Shape::Eighths { gap: "" }, ""),
    form(Shape::Eighths { gap: " " }, "\""),
    form(Shape::Eighths { gap: "" }, "\""),
    form(Shape::Eighths { gap: " " }, " in"),
    form(Shape::Feet { mark: " ft " }, " in"),
    form(Shape::Feet { mark: "' " }, "\""),
    form(Shape::Feet { mark: "'-" }, "\""),
    form(Shape::Whole, ""),
    form(Shape::Whole, " mm"),
    form(Shape::Whole, "mm"),
    decimal('.', ""),
    decimal(',', ""),
    decimal('.', " in"),
    decimal('.', "\""),
    decimal('.', " mm"),
    decimal('.', "mm"),
    decimal(',', " mm"),
    decimal('.', " cm"),
    decimal(',', " cm"),
    decimal('.', " m"),
    decimal(',', " m"),
];
const FORM_BITS: u32 = 5;
const EIGHTHS: [char; 8] = [' ', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];
const DECIMALS_MOST: u32 = 4;

/// The form in force before the first reading.
pub(crate) const fn first_form(unit: Unit) -> u32 {
    match unit {
        Unit::Inch => 0,
        Unit::Millimetre => 18,
    }
}

/// Bits of a form's number, behind three bits of decimals for a decimal form.
const fn bits(shape: Shape) -> u32 {
    match shape {
        Shape::Fraction { parts: 64, .. } => 14,
        Shape::Fraction { .. } | Shape::Sixteenths | Shape::Feet { .. } | Shape::Whole => 12,
        Shape::Eighths { .. } => 11,
        Shape::Decimal { .. } => 20,
    }
}

impl Form {
    /// How this form spells `number`, with `decimals` of them behind the point.
    fn spell(self, number: u32, decimals: u32) -> Option<String> {
        let mut text = String::new();
        let parts_of = |text: &mut String, whole: u32, part: u32, parts: u32, gap: &str| {
            if whole != 0 || part == 0 {
                text.push_str(&digits(whole));
            }
            if part != 0 {
                if whole != 0 {
                    text.push_str(gap);
                }
                let shift = part.trailing_zeros();
                text.push_str(&digits(part >> shift));
                text.push('/');
                text.push_str(&digits(parts >> shift));
            }
        };
        match self.shape {
            Shape::Fraction { parts, gap } => {
                let whole = number.checked_div(parts).unwrap_or(number);
                let over = number.checked_rem(parts).unwrap_or(0);
                parts_of(&mut text, whole, over, parts, gap);
            }
            Shape::Sixteenths => {
                if number >= 16 {
                    text.push_str(&digits(number / 16));
                    text.push(' ');
                }
                text.push_str(&digits(number % 16));
                text.push_str("/16");
            }
            Shape::Eighths { gap } => {
                let (whole, part) = (number / 8, number % 8);
                if part == 0 {
                    return None;
                }
                if whole != 0 {
                    text.push_str(&digits(whole));
                    text.push_str(gap);
                }
                text.push(*EIGHTHS.get(part as usize)?);
            }
            Shape::Feet { mark } => {
                let (feet, rest) = (number / 192, number % 192);
                text.push_str(&digits(feet));
                text.push_str(mark);
                let (whole, part) = (rest / 16, rest % 16);
                text.push_str(&digits(whole));
                if part != 0 {
                    text.push(' ');
                    parts_of(&mut text, 0, part, 16, "");
                }
            }
            Shape::Whole => text.push_str(&digits(number)),
            Shape::Decimal { point } => {
                let scale = 10_u32.checked_pow(decimals)?;
                text.push_str(&digits(number.checked_div(scale)?));
                if decimals != 0 {
                    text.push(point);
                    let part = digits(number.checked_rem(scale)?);
                    let zeros = (decimals as usize).saturating_sub(part.len());
                    text.extend(core::iter::repeat_n('0', zeros));
                    text.push_str(&part);
                }
            }
        }
        text.push_str(self.suffix);
        Some(text)
    }

    /// The number, and its decimals, that this form spells exactly as `text`.
    fn number(self, text: &str) -> Option<(u32, u32)> {
        let body = text.strip_suffix(self.suffix)?;
        let (number, decimals) = match self.shape {
            Shape::Fraction { parts, gap } => (parts_in(body, parts, gap)?, 0),
            Shape::Sixteenths => (parts_in(body, 16, " ")?, 0),
            Shape::Eighths { gap } => {
                let last = body.chars().next_back()?;
                let part = EIGHTHS.iter().position(|&eighth| eighth == last)?;
                let whole = body.strip_suffix(last)?;
                let whole =
                    if whole.is_empty() { 0 } else { from_digits(whole.strip_suffix(gap)?)? };
                (whole.checked_mul(8)?.checked_add(u32::try_from(part).ok()?)?, 0)
            }
            Shape::Feet { mark } => {
                let (feet, inches) = cut_first(body, mark)?;
                let feet = from_digits(feet)?.checked_mul(192)?;
                (feet.checked_add(parts_in(inches, 16, " ")?)?, 0)
            }
            Shape::Whole => (from_digits(body)?, 0),
            Shape::Decimal { point } => match body.split_once(point) {
                None => (from_digits(body)?, 0),
                Some((whole, part)) => {
                    let decimals = u32::try_from(part.len()).ok()?;
                    if decimals > DECIMALS_MOST {
                        return None;
                    }
                    let scale = 10_u32.checked_pow(decimals)?;
                    (
                        from_digits(whole)?.checked_mul(scale)?.checked_add(from_digits(part)?)?,
                        decimals,
                    )
                }
            },
        };
        let fits = number.checked_shr(bits(self.shape)) == Some(0);
        // The parsing above is generous; spelling it again is what makes it exact.
        (fits && self.spell(number, decimals).as_deref() == Some(text))
            .then_some((number, decimals))
    }
}

/// Digits; a plus before them, which is taken too, is not spelled again.
fn from_digits(text: &str) -> Option<u32> {
    text.parse().ok()
}

/// `92`, `3/16` or `92 3/16`, counted in `parts`.
fn parts_in(text: &str, parts: u32, gap: &str) -> Option<u32> {
    let Some((upper, lower)) = cut_first(text, "/") else {
        return from_digits(text)?.checked_mul(parts);
    };
    let (whole, upper) = match cut_last(upper, gap) {
        Some((whole, upper)) => (from_digits(whole)?, upper),
        None => (0, upper),
    };
    let each = parts.checked_div(from_digits(lower)?)?;
    from_digits(upper)?.checked_mul(each)?.checked_add(whole.checked_mul(parts)?)
}

/// Writes `text`; `form` is the form in force and becomes the one that was used.
pub(crate) fn write(typed: &str, form: &mut u32, out: &mut Writer) {
    let spelled = |at: u32| {
        let form = FORMS.get(at as usize)?;
        form.number(typed).map(|(number, decimals)| (at, *form, number, decimals))
    };
    let same = spelled(*form);
    let Some((at, shape, number, decimals)) =
        same.or_else(|| (0..FORMS.len()).find_map(|at| spelled(u32::try_from(at).ok()?)))
    else {
        out.put(0b11, 2);
        return text::write(typed, out);
    };
    if at == *form {
        out.flag(false);
    } else {
        out.put(0b10, 2);
        out.put(at, FORM_BITS);
        *form = at;
    }
    if let Shape::Decimal { .. } = shape.shape {
        out.put(decimals, 3);
    }
    out.put(number, bits(shape.shape));
}

/// The counterpart of [`write`].
pub(crate) fn read(form: &mut u32, from: &mut Reader<'_>) -> Result<String, Short> {
    if from.flag()? {
        if from.flag()? {
            return text::read(from);
        }
        *form = from.take(FORM_BITS)?;
    }
    let form = FORMS.get(*form as usize).ok_or(Short)?;
    let decimals = match form.shape {
        Shape::Decimal { .. } => from.take(3)?,
        _ => 0,
    };
    if decimals > DECIMALS_MOST {
        return Err(Short);
    }
    form.spell(from.take(bits(form.shape))?, decimals).ok_or(Short)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn bits_of(texts: &[&str]) -> usize {
        let (mut out, mut form) = (Writer::default(), first_form(Unit::Inch));
        for text in texts {
            write(text, &mut form, &mut out);
        }
        let length = out.len();
        let symbols = out.finish();
        let (mut from, mut form) = (Reader::new(&symbols), first_form(Unit::Inch));
        for text in texts {
            assert_eq!(read(&mut form, &mut from).as_deref(), Ok(*text));
        }
        length
    }

    #[test]
    fn usual_spellings_are_short_and_all_come_back() {
        assert_eq!(bits_of(&["92 3/16", "0", "3/4", "101", "255 15/16"]), 5 * 13);
        assert_eq!(bits_of(&["92 3/16\"", "92 1/4\""]), 19 + 13);
        for text in [
            "96",
            "96 1/4 in",
            "96-1/4",
            "96-1/4\"",
            "96 ¼",
            "96¼\"",
            "¼",
            "96 5/32",
            "96 4/16",
            "8 ft 0 3/16 in",
            "8' 0 1/4\"",
            "8'-0 1/4\"",
            "2443",
            "2443 mm",
            "2443mm",
            "96.25",
            "96,25",
            "96.0625",
            "244.5 cm",
            "2.445 m",
            "2,445 m",
            "0.5",
            "12.",
        ] {
            let length = bits_of(&[text]);
            assert!(length <= 30, "{text}: {length} bits");
        }
    }

    #[test]
    fn what_no_form_spells_is_kept_as_text() {
        for text in [
            "",
            " ",
            "096",
            "96 1/3",
            "96 1/0",
            "961/4",
            "96 2/8",
            "96  1/4",
            "0 1/4",
            "8.6'",
            "ninety six and a quarter",
            "1,234,5",
            "4294967296",
            "99999999999999999999",
            "-4",
            "+96",
            "96 +1/4",
            "96 1/+4",
            "96.+5",
            "/",
            "1/",
            "96 ¼ ",
            "½½",
            "2 445 mm",
            ".5",
            "1e3",
            "8' ",
            "' 4\"",
            "９６",
        ] {
            bits_of(&[text]);
            let (mut out, mut form) = (Writer::default(), first_form(Unit::Inch));
            write(text, &mut form, &mut out);
            assert_eq!(Reader::new(&out.finish()).take(2), Ok(0b11), "{text}");
        }
    }

    proptest! {
        #[test]
        fn any_texts_in_any_order_come_back(
            texts in prop::collection::vec("([0-9]{0,4}[ -]?)?[0-9]{0,2}[/.,'¼½]?[0-9]{0,4}( in| mm|\"|mm| m| cm)?", 0..12),
        ) {
            bits_of(&texts.iter().map(String::as_str).collect::<Vec<_>>());
        }
        #[test]
        fn no_symbols_make_it_panic(symbols in prop::collection::vec(0..32_u8, 0..30)) {
            let (mut from, mut form) = (Reader::new(&symbols), 0);
            while read(&mut form, &mut from).is_ok() {}
        }
    }
}
