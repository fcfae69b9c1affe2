//! A small order in thirty characters: four numbers, two closing readings, the posts.
//!
//! Twenty-four symbols of data, 120 bits, the first bit the highest:
//! ```text
//!   3  form, 1
//!   1  unit: 0 inches, 1 millimetres
//!   1  the frame is prepared
//!   2  old door: 0 not said, 1 out, 2 still in
//!  17  date: 8 year − 2000, 4 month, 5 day; month 0: none
//!  56  width, height, header, bow: 2 place (0 to 2, 3 none), 12 steps
//!  12  sill to bow in steps, 0: none
//!  12  rising diagonal in steps, 0: none
//!  16  left post, right post: 8 steps each, 0: none
//! ```
//! A step is 1/16 in or 1 mm. Of each dimension the tightest reading travels, as it was
//! found; what was typed, the other readings and all texts need the link.

use hangtrue_core::check::{Report, check, check_by_rules};
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::{Dimension, Length, Spot, Survey, Unit};

use super::heard::{HeardError, heard};
use super::reed_solomon::{DATA, WORD, check as check_symbols, correct};
use crate::alphabet::letters;
use crate::bits::{Reader, Short, Writer};
use crate::v1::date;

const FORM: u32 = 1;
const CLOSING: [Spot; 2] = [Spot::LoopSillToBow, Spot::DiagonalRising];
const POSTS: [Spot; 2] = [Spot::PostLeft, Spot::PostRight];
const NO_PLACE: u32 = 3;

/// The thirty characters of `order`.
///
/// [`None`] when a reading that has to travel is no whole number of sixteenths or
/// millimetres, or is longer than the code carries (255 15/16 in; 4095 mm; a post
/// 15 15/16 in or 255 mm); and when what travels would be ordered, or judged, otherwise than all
/// that was read: such an order needs the link.
#[must_use]
pub fn small(order: &Order) -> Option<String> {
    let mut symbols = symbols(order)?;
    let sent = parse(&mut Reader::new(&symbols)).ok()?;
    let meant = check(&order.survey, &Profile::default());
    // Its verdict is there: only the numbers are made again.
    let opened = check_by_rules(&sent.survey, &Profile::default());
    let ordered = |report: &Report| Dimension::ALL.map(|which| report.numbers.ordered(which));
    if (ordered(&opened), sent.claimed) != (ordered(&meant), meant.verdict) {
        return None;
    }
    symbols.extend(check_symbols(&symbols));
    Some(letters(&symbols))
}

/// The data of the code.
fn symbols(order: &Order) -> Option<Vec<u8>> {
    let survey = &order.survey;
    let steps = |length: Length, bits: u32| {
        let step = survey.unit.step();
        let exact = length.floor_to(step) == length;
        let steps = u32::try_from(length.units(step)).ok()?;
        (exact && steps > 0 && steps >> bits == 0).then_some(steps)
    };
    let mut out = Writer::default();
    out.put(FORM, 3);
    out.flag(survey.unit == Unit::Millimetre);
    out.flag(survey.prepared);
    out.put(order.old_door_in.map_or(0, |still_in| u32::from(still_in).saturating_add(1)), 2);
    match order.date {
        None => out.put(0, date::BITS),
        Some(day) => date::write(day, &mut out).ok()?,
    }
    for dimension in Dimension::ALL {
        match survey.tightest(dimension) {
            None => out.put(NO_PLACE << 12, 14),
            Some((spot, length)) => {
                let place = dimension.spots().iter().position(|&known| known == spot)?;
                out.put(u32::try_from(place).ok()?, 2);
                out.put(steps(length, 12)?, 12);
            }
        }
    }
    // Of a closing reading the last one that counts, the re-reading where there is one; of a post
    // the narrowest, which is what is built out.
    let closing = CLOSING.map(|spot| (survey.lengths(spot).last(), 12));
    let posts = POSTS.map(|spot| (survey.lengths(spot).min(), 8));
    for (length, bits) in closing.into_iter().chain(posts) {
        out.put(length.map_or(Some(0), |length| steps(length, bits))?, bits);
    }
    Some(out.finish())
}

/// A small order that was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Small {
    /// The order; its texts are the canonical ones, its verdict that of the built-in
    /// rules.
    pub order: Order,
    /// The thirty characters as they must have been.
    pub letters: String,
    /// Which of them, from 1, were misheard or missing. Unless this is empty the order
    /// is a proposal: read it back to the caller.
    pub corrected: Vec<usize>,
}

/// Why a text is no small order.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SmallError {
    /// Not thirty characters.
    Heard(HeardError),
    /// Too many characters are wrong.
    Refused,
    /// Thirty good characters that no program of this form writes.
    Contents,
}

/// Reads thirty characters or spelling words.
///
/// # Errors
/// When they are not thirty, too many are wrong, or they are no order.
pub fn read_small(text: &str) -> Result<Small, SmallError> {
    let word = heard(text, WORD).map_err(SmallError::Heard)?;
    let changes = correct(&word).ok_or(SmallError::Refused)?;
    let mut symbols: Vec<u8> = word.iter().map(|symbol| symbol.unwrap_or(0)).collect();
    for change in &changes {
        if let Some(symbol) = symbols.get_mut(change.at) {
            *symbol = change.symbol;
        }
    }
    let data = symbols.get(..DATA).unwrap_or_default();
    let order = parse(&mut Reader::new(data)).map_err(|_| SmallError::Contents)?;
    let letters = letters(&symbols);
    // Only what `small` writes is read.
    if self::symbols(&order).as_deref() != Some(data) {
        return Err(SmallError::Contents);
    }
    let corrected = changes.iter().map(|change| change.at.saturating_add(1)).collect();
    Ok(Small { order, letters, corrected })
}

fn parse(from: &mut Reader<'_>) -> Result<Order, Short> {
    if from.take(3)? != FORM {
        return Err(Short);
    }
    let unit = if from.flag()? { Unit::Millimetre } else { Unit::Inch };
    let mut survey = Survey::new(unit);
    survey.prepared = from.flag()?;
    let old_door_in = match from.take(2)? {
        0 => None,
        1 => Some(false),
        2 => Some(true),
        _ => return Err(Short),
    };
    let date = Some(date::read(from)?).filter(|date| date.month != 0);
    let mut add = |spot, steps: u32| {
        let length = unit.step().times(i64::from(steps));
        survey.add(spot, &length.text(unit));
    };
    for dimension in Dimension::ALL {
        let (place, steps) = (from.take(2)?, from.take(12)?);
        if place != NO_PLACE {
            add(*dimension.spots().get(place as usize).ok_or(Short)?, steps);
        }
    }
    for (spots, bits) in [(CLOSING, 12), (POSTS, 8)] {
        for spot in spots {
            let steps = from.take(bits)?;
            if steps != 0 {
                add(spot, steps);
            }
        }
    }
    let claimed = check(&survey, &Profile::default()).verdict;
    Ok(Order { survey, claimed, old_door_in, date, ..Order::default() })
}

#[cfg(test)]
mod tests {
    use super::*;
    use hangtrue_core::order::Date;
    use proptest::prelude::*;

    prop_compose! {
        fn small_orders()(
            metric in any::<bool>(),
            prepared in any::<bool>(),
            old_door_in in any::<Option<bool>>(),
            date in prop::option::of((2000..=2255_u16, 1..=12_u8, 1..=31_u8)),
            numbers in prop::array::uniform4(prop::option::of((0..3_usize, 1..4096_i64))),
            closing in prop::array::uniform2(prop::option::of(1..4096_i64)),
            posts in prop::array::uniform2(prop::option::of(1..256_i64)),
        ) -> Order {
            let unit = if metric { Unit::Millimetre } else { Unit::Inch };
            let mut survey = Survey::new(unit);
            survey.prepared = prepared;
            let text = |steps| unit.step().times(steps).text(unit);
            for (dimension, number) in Dimension::ALL.into_iter().zip(numbers) {
                if let Some((place, steps)) = number {
                    survey.add(dimension.spots()[place], &text(steps));
                }
            }
            for (spot, steps) in CLOSING.into_iter().zip(closing).chain(POSTS.into_iter().zip(posts)) {
                if let Some(steps) = steps {
                    survey.add(spot, &text(steps));
                }
            }
            let claimed = check(&survey, &Profile::default()).verdict;
            let date = date.map(|(year, month, day)| Date { year, month, day });
            Order { survey, claimed, old_door_in, date, ..Order::default() }
        }
    }

    proptest! {
        #[test]
        fn a_small_order_comes_back(order in small_orders()) {
            let letters = small(&order).unwrap();
            prop_assert_eq!(letters.len(), 30);
            let expected = Small { order, letters: letters.clone(), corrected: vec![] };
            prop_assert_eq!(read_small(&crate::code::spaced(&letters)), Ok(expected));
        }

        #[test]
        fn two_misheard_characters_are_a_proposal(
            order in small_orders(), first in 0..30_usize, second in 0..30_usize, by in 1..32_u8,
        ) {
            prop_assume!(first != second);
            let letters = small(&order).unwrap();
            let wrong: String = letters.char_indices().map(|(at, letter)| {
                let symbol = crate::alphabet::symbol(letter).unwrap();
                let changed = if at == first || at == second { symbol ^ by } else { symbol };
                crate::alphabet::letter(changed)
            }).collect();
            let read = read_small(&wrong).unwrap();
            prop_assert_eq!((read.order, read.letters), (order, letters));
            let (low, high) = (first.min(second) + 1, first.max(second) + 1);
            prop_assert_eq!(read.corrected, vec![low, high]);
        }

        #[test]
        fn no_text_makes_it_panic(text in "[0-9A-Za-z? ]{28,34}") {
            let _ = read_small(&text);
        }
    }

    fn usual() -> Survey {
        let mut survey = Survey::new(Unit::Inch);
        for (spot, text) in [
            (Spot::WidthMiddle, "92"),
            (Spot::HeightCenter, "101"),
            (Spot::HeaderCenter, "9"),
            (Spot::BowFirst, "1 1/4"),
        ] {
            survey.add(spot, text);
        }
        survey
    }

    #[test]
    fn of_a_post_read_twice_the_narrower_is_built_out() {
        let mut survey = usual();
        for (spot, text) in
            [(Spot::PostLeft, "2 1/4"), (Spot::PostLeft, "2 1/2"), (Spot::PostRight, "3")]
        {
            survey.add(spot, text);
        }
        let ordered =
            |survey: &Survey| check(survey, &Profile::default()).numbers.ordered(Dimension::Width);
        let code = small(&Order { survey: survey.clone(), ..Order::default() }).unwrap();
        let sent = read_small(&code).unwrap().order.survey;
        assert_eq!(ordered(&sent), ordered(&survey));
        assert_eq!(ordered(&sent), Some(Length::from_sixteenths(91 * 16 + 12)));
    }

    #[test]
    fn what_would_be_judged_otherwise_needs_the_link() {
        let fits = |spot, text: &str| {
            let mut survey = usual();
            survey.add(spot, text);
            small(&Order { survey, ..Order::default() }).is_some()
        };
        assert!(fits(Spot::WidthLow, "92 1/8"));
        for (spot, text) in
            [(Spot::WidthLow, "91 x"), (Spot::WidthLow, "95"), (Spot::PostLeft, "0")]
        {
            assert!(!fits(spot, text), "{text}");
        }
    }

    #[test]
    fn what_does_not_fit_needs_the_link() {
        let fits = |text: &str| {
            let mut order = Order::default();
            order.survey.add(Spot::WidthLow, text);
            small(&order).is_some()
        };
        assert!(fits("92"));
        assert!(!fits("300"));
        // Nought stands for no reading.
        assert!(!fits("0"));
        // The order has no such reading at all, here or there.
        assert!(fits("wide"));
        let dated = |year, month, day| {
            let date = Some(Date { year, month, day });
            small(&Order { date, ..Order::default() }).is_some()
        };
        assert!(dated(2000, 1, 1) && dated(2255, 12, 31));
        for (year, month, day) in
            [(1999, 1, 1), (2256, 1, 1), (2026, 0, 1), (2026, 13, 1), (2026, 1, 0), (2026, 1, 32)]
        {
            assert!(!dated(year, month, day), "{year}-{month}-{day}");
        }
    }
}
