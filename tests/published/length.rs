//! Units, conversion and rounding against published values and an independent converter.

#![expect(clippy::panic, reason = "a test fails by panicking, and says at which text")]

use hangtrue_core::length::{Length, Style, Unit, read};
use uom::si::f64::Length as Uom;
use uom::si::length::{centimeter, foot, inch, meter, millimeter};

fn inches(text: &str) -> Length {
    read(text, Unit::Inch).unwrap_or_else(|error| panic!("{text}: {error:?}"))
}

fn mm(text: &str) -> Length {
    read(text, Unit::Millimetre).unwrap_or_else(|error| panic!("{text}: {error:?}"))
}

/// Source: NIST SP 811, appendix B: inch 25.4 mm, foot 304.8 mm, both exact.
/// From memory; exact by definition.
#[test]
fn inch_and_foot_by_definition() {
    assert_eq!(inches("1"), mm("25.4"));
    assert_eq!(inches("1 ft"), mm("304.8"));
    assert_eq!(inches("1").nm(), 25_400_000);
    assert_eq!(inches("1 ft").nm(), 304_800_000);
}

/// Source: the definition above divided out by hand, all exact.
#[test]
fn fractions_of_an_inch_in_millimetres() {
    let table = [
        ("1/64", "0.396875"),
        ("1/32", "0.79375"),
        ("1/16", "1.5875"),
        ("1/8", "3.1750"),
        ("3/16", "4.7625"),
        ("1/4", "6.35"),
        ("3/8", "9.5250"),
        ("1/2", "12.7"),
        ("5/8", "15.8750"),
        ("3/4", "19.05"),
        ("7/8", "22.2250"),
        ("15/16", "23.8125"),
    ];
    for (fraction, millimetres) in table {
        assert_eq!(inches(fraction), mm(millimetres), "{fraction} in");
        let written = inches(fraction).write(Style::Plain(Unit::Millimetre));
        assert_eq!(written, Some([millimetres, " mm"].concat()));
    }
}

/// Source: NIST LC 1137, rounding of converted values: 36 in is 91 cm, 40.1 in is 101.9 cm.
#[test]
fn converted_values_are_rounded_as_nist_rounds_them() {
    let centimetre = Length::from_mm(10);
    assert_eq!(inches("36").round_to(centimetre), mm("91 cm"));
    assert_eq!(inches("40.1").round_to(Length::MILLIMETRE), mm("101.9 cm"));
}

/// Source: NIST Handbook 44, §10.3: the nearest graduation; at the midpoint the even one.
#[test]
fn a_reading_between_two_graduations() {
    let sixteenth = |text| inches(text).round_to(Length::SIXTEENTH);
    assert_eq!(sixteenth("96 3/32"), inches("96 2/16"));
    assert_eq!(sixteenth("96 5/32"), inches("96 2/16"));
    assert_eq!(sixteenth("96 7/32"), inches("96 4/16"));
    assert_eq!(sixteenth("96 5/64"), inches("96 1/16"));
    assert_eq!(sixteenth("96 7/64"), inches("96 2/16"));
    assert_eq!(sixteenth("96 31/32"), inches("97"));
    let millimetre = |text| mm(text).round_to(Length::MILLIMETRE);
    assert_eq!(millimetre("2443.5"), mm("2444"));
    assert_eq!(millimetre("2444.5"), mm("2444"));
    assert_eq!(millimetre("2444.6"), mm("2445"));
    // The echo in the other unit rounds the same way: 2444.75 mm lies between two tenths.
    assert_eq!(inches("96 1/4").text(Unit::Millimetre), "≈ 2444.8 mm");
    assert_eq!(inches("96 1/4").text(Unit::Inch), "96 1/4 in");
}

/// Source: crate `uom`, an independent converter; it counts in `f64`, so it agrees to
/// some parts in 10¹⁵.
#[test]
fn every_mark_agrees_with_an_independent_converter() {
    let agrees = |ours: Length, theirs: Uom| {
        let off = (ours.to_mm() - theirs.get::<millimeter>()).abs();
        assert!(off <= 1e-14 * ours.to_mm().max(1.0), "{ours:?} {theirs:?}");
    };
    for n in 0..=200_u32 * 64 {
        let value = f64::from(n) / 64.0;
        let length = inches(&format!("{} {}/64", n / 64, n % 64));
        agrees(length, Uom::new::<inch>(value));
        agrees(
            inches(&format!("{}' {} {}/64\"", n / 768, n / 64 % 12, n % 64)),
            Uom::new::<foot>(value / 12.0),
        );
        assert!((length.to_inches() - value).abs() <= 1e-13 * value.max(1.0));
    }
    for n in 0..=50_800_u32 {
        let value = f64::from(n) / 10.0;
        agrees(mm(&format!("{}.{}", n / 10, n % 10)), Uom::new::<millimeter>(value));
        agrees(mm(&format!("{}.{:02} cm", n / 100, n % 100)), Uom::new::<centimeter>(value / 10.0));
        agrees(mm(&format!("{}.{:04} m", n / 10_000, n % 10_000)), Uom::new::<meter>(value / 1e3));
    }
}
