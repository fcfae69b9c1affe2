//! Parse(print(x)) = x, for every mark of every tape up to 200 in.

use hangtrue_core::length::{Length, Style, Unit, read};

/// Every multiple of 1/64 in and of 0.1 mm from 0 to 200 in.
fn marks() -> impl Iterator<Item = Length> {
    let inches = (0..=200 * 64).map(Length::from_sixty_fourths);
    let tenths = (0..=50_800).map(Length::from_tenths_mm);
    inches.chain(tenths)
}

#[test]
fn every_mark_in_every_style() {
    let mut written = [0_usize; Style::ALL.len()];
    for length in marks() {
        for (style, count) in Style::ALL.into_iter().zip(&mut written) {
            let Some(text) = length.write(style) else { continue };
            *count += 1;
            assert!(text.is_ascii(), "{text}");
            for unit in [Unit::Inch, Unit::Millimetre] {
                if unit == style.unit() || !style.is_bare() {
                    assert_eq!(read(&text, unit), Ok(length), "{text:?} in {unit:?}");
                }
            }
        }
    }
    // 12 801 marks of 1/64 in and 50 801 of 0.1 mm; every millimetre style writes them all.
    for (style, count) in Style::ALL.into_iter().zip(written) {
        let least = match style {
            Style::Dashed => 12_600,
            _ if style.unit() == Unit::Inch => 12_801,
            _ => 12_801 + 50_801,
        };
        assert!(count >= least, "{style:?} wrote only {count}");
    }
}

#[test]
fn the_canonical_text_is_exact_in_both_units() {
    for length in marks() {
        for unit in [Unit::Inch, Unit::Millimetre] {
            let text = length.canonical(unit);
            for field in [Unit::Inch, Unit::Millimetre] {
                assert_eq!(read(&text, field), Ok(length), "{text:?} in {field:?}");
            }
        }
    }
}

#[test]
fn text_is_exact_or_says_that_it_is_not() {
    for length in marks() {
        for unit in [Unit::Inch, Unit::Millimetre] {
            let text = length.text(unit);
            if let Some(rounded) = text.strip_prefix("≈ ") {
                let off = (read(rounded, unit).unwrap() - length).abs();
                assert!(off > Length::ZERO && off.times(2) <= unit.finest(), "{text}");
                assert!(read(&text, unit).is_err());
            } else {
                assert_eq!(read(&text, unit), Ok(length), "{text}");
            }
        }
    }
}

#[test]
fn written_out() {
    let x = Length::from_sixty_fourths(96 * 64 + 12);
    let texts: Vec<_> = Style::ALL.into_iter().map(|style| x.print(style)).collect();
    assert_eq!(
        texts,
        [
            "96 3/16 in",
            "≈ 2443.2 mm",
            "8 ft 0 3/16 in",
            "96 3/16",
            "≈ 2443.2",
            "96-3/16",
            "96.1875",
            "96 3/16\"",
            "8' 0 3/16\"",
            "≈ 244.32 cm",
            "≈ 2.4432 m",
        ]
    );
    let y = Length::from_mm(2443);
    assert_eq!(y.text(Unit::Millimetre), "2443 mm");
    assert_eq!(y.text(Unit::Inch), "≈ 96 3/16 in");
    assert_eq!(y.write(Style::Centimetres).as_deref(), Some("244.3 cm"));
    assert_eq!(y.write(Style::Metres).as_deref(), Some("2.443 m"));
    assert_eq!(y.write(Style::Plain(Unit::Inch)), None);
    assert_eq!(Length::from_sixteenths(3).print(Style::FeetInches), "3/16 in");
    assert_eq!((-Length::from_sixteenths(3)).text(Unit::Inch), "-3/16 in");
    assert_eq!(Length::from_inches(96).write(Style::Dashed), None);
    // The last nanometres of an `i64` are on no mark: exact, in millimetres.
    assert_eq!(Length::from_nm(i64::MIN).text(Unit::Inch), "-9223372036854.775808 mm");
}

/// What is read back only in its own field is what names no unit.
#[test]
fn bare_is_without_a_unit() {
    let x = Length::from_sixty_fourths(96 * 64 + 8);
    for style in Style::ALL {
        let text = x.print(style);
        let named = text.contains(|c: char| c.is_ascii_alphabetic() || matches!(c, '\'' | '"'));
        assert_eq!(style.is_bare(), !named, "{text}");
    }
    // Eighths of an inch are no thousands: no nought behind them, as behind other three decimals.
    assert_eq!(x.print(Style::InchDecimal), "96.125");
}

#[test]
fn units_have_names_in_files() {
    for (unit, key) in [(Unit::Inch, "in"), (Unit::Millimetre, "mm")] {
        assert_eq!(unit.key(), key);
        assert_eq!(Unit::from_key(key), Some(unit));
    }
    assert_eq!(Unit::from_key("ft"), None);
}
