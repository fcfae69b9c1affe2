//! What the keys beside a field do to the text in it.
//!
//! A key never guesses: where the text is no reading, it leaves it alone.

use crate::length::{Length, Unit, read};

/// `text` with its fraction of an inch replaced by `eighths` eighths; an empty
/// text becomes the fraction alone. `None` where the text is no reading.
#[must_use]
pub fn set_eighths(text: &str, unit: Unit, eighths: u8) -> Option<String> {
    let whole = if text.trim().is_empty() {
        Length::ZERO
    } else {
        read(text, unit).ok()?.floor_to(Length::INCH)
    };
    Some(typed(whole + Length::from_sixteenths(i64::from(eighths).saturating_mul(2)), unit))
}

/// `text` with `by` added; `None` where the text is no reading, or nothing would be left.
#[must_use]
pub fn nudge(text: &str, unit: Unit, by: Length) -> Option<String> {
    let moved = read(text, unit).ok()? + by;
    (moved >= Length::ZERO).then(|| typed(moved, unit))
}

/// `text` moved by `marks` of the tape in `unit`: from the mark it is at, or between two
/// from the next one that way. `None` where the text is no reading, or nothing would be left.
#[must_use]
pub fn slide(text: &str, unit: Unit, marks: i64) -> Option<String> {
    let (at, step) = (read(text, unit).ok()?, unit.step());
    let from = if marks > 0 { at.floor_to(step) } else { at.ceil_to(step) };
    let moved = from + step.times(marks);
    (moved >= Length::ZERO).then(|| typed(moved, unit))
}

/// As a person types it: without the unit where the field's own is meant.
fn typed(length: Length, unit: Unit) -> String {
    let text = length.canonical(unit);
    let bare = text.strip_suffix(unit.key()).map(str::trim_end);
    match bare {
        Some(bare) if read(bare, unit) == Ok(length) => bare.to_owned(),
        _ => text,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_eighth_takes_the_place_of_the_fraction() {
        let set = |text, n| set_eighths(text, Unit::Inch, n);
        assert_eq!(set("96", 2).as_deref(), Some("96 1/4"));
        assert_eq!(set("96 1/8", 3).as_deref(), Some("96 3/8"));
        assert_eq!(set("8' 0 1/2\"", 7).as_deref(), Some("96 7/8"));
        assert_eq!(set("", 4).as_deref(), Some("1/2"));
        assert_eq!(set("96 1/8", 0).as_deref(), Some("96"));
        assert_eq!(set("961/4", 2), None);
    }

    #[test]
    fn a_nudge_moves_by_one_mark_and_never_below_nothing() {
        let sixteenth = Length::SIXTEENTH;
        assert_eq!(nudge("96 15/16", Unit::Inch, sixteenth).as_deref(), Some("97"));
        assert_eq!(nudge("96", Unit::Inch, -sixteenth).as_deref(), Some("95 15/16"));
        assert_eq!(nudge("0", Unit::Inch, -sixteenth), None);
        assert_eq!(nudge("", Unit::Inch, sixteenth), None);
        let mm = Length::MILLIMETRE;
        assert_eq!(nudge("2445", Unit::Millimetre, mm).as_deref(), Some("2446"));
        assert_eq!(nudge("2 445 mm", Unit::Millimetre, -mm).as_deref(), Some("2444"));
    }

    #[test]
    fn a_slide_comes_to_a_mark() {
        let slid = |text, marks| slide(text, Unit::Inch, marks);
        assert_eq!(slid("96 1/4", 3).as_deref(), Some("96 7/16"));
        assert_eq!(slid("96 1/4", -5).as_deref(), Some("95 15/16"));
        // Between two marks: to the next one that way.
        assert_eq!(slid("96 1/32", 1).as_deref(), Some("96 1/16"));
        assert_eq!(slid("96 1/32", -1).as_deref(), Some("96"));
        assert_eq!(slid("0", -1), None);
        assert_eq!(slid("", 1), None);
        assert_eq!(slide("2445", Unit::Millimetre, -7).as_deref(), Some("2438"));
    }
}
