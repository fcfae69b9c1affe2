//! Six check characters over what was said: four numbers, their unit, the frame's state.
//!
//! The caller says the numbers in plain words and then only these six characters. The
//! clerk's program works them out from what the clerk typed; where they differ, the code
//! tells *which* number differs and what it was, because no number has more than two of
//! the fifteen symbols.
//!
//! Two symbols hold 1024 values, so a number counts modulo 1024 steps of 1/16 in or
//! 1 mm. Numbers that are 64 in or 1024 mm apart look the same to the code; no change of
//! one digit, nor an exchange of two, makes such a difference.
//!
//! ```text
//! data     0 1     2 3      4 5      6 7   8
//!          width   height   header   bow   bit 0: mm; bit 1: the frame is to be built
//! ```
//! The low five bits of a number stand first.

use hangtrue_core::bounds::{
    ABOVE_FLOOR, BODY_WIDTH, HEADER_POSSIBLE, HEIGHT_POSSIBLE, Limit, WIDTH_POSSIBLE,
};
use hangtrue_core::check::Report;
use hangtrue_core::short::sort;
use hangtrue_core::{Dimension, Length, Unit};

use super::heard::{HeardError, heard};
use super::reed_solomon::{CHECK, Change, check, correct};
use crate::alphabet::{letter, letters};

/// What is said over the telephone.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Said {
    /// The unit of the numbers.
    pub unit: Unit,
    /// The numbers are of the frame as it will be: it is to be built first.
    pub build: bool,
    /// The ordered numbers, in the order of [`Dimension::ALL`]; [`None`] was not understood.
    pub numbers: [Option<Length>; 4],
}

impl Said {
    /// What the writer of an order says.
    #[must_use]
    pub fn of(report: &Report, unit: Unit) -> Self {
        let numbers = Dimension::ALL.map(|dimension| report.numbers.ordered(dimension));
        Self { unit, build: report.preparation.needed(), numbers }
    }

    /// The nine data symbols; [`None`] where a number is missing or is no whole number
    /// of steps.
    fn symbols(&self) -> [Option<u8>; DATA] {
        let [width, height, header, bow] = self.numbers.map(|number| {
            let steps = number.and_then(|number| steps(number, self.unit));
            [steps.map(|steps| (steps % 32) as u8), steps.map(|steps| (steps / 32 % 32) as u8)]
        });
        let ([a, b], [c, d], [e, f], [g, h]) = (width, height, header, bow);
        [a, b, c, d, e, f, g, h, Some(frame_symbol(self.unit, self.build))]
    }
}

const DATA: usize = 9;
/// A number counts modulo this many steps.
const MODULUS: i64 = 1024;

const fn frame_symbol(unit: Unit, build: bool) -> u8 {
    (build as u8) << 1
        | match unit {
            Unit::Inch => 0,
            Unit::Millimetre => 1,
        }
}

/// `number` in whole steps of `unit`, from 0 up.
fn steps(number: Length, unit: Unit) -> Option<i64> {
    let step = unit.step();
    let whole = number >= Length::ZERO && number.floor_to(step) == number;
    whole.then(|| number.units(step))
}

/// The six check characters; [`None`] while a number is missing, or is no whole number
/// of sixteenths or millimetres.
#[must_use]
pub fn characters(said: &Said) -> Option<String> {
    let mut data = [0; DATA];
    for (slot, symbol) in data.iter_mut().zip(said.symbols()) {
        *slot = symbol?;
    }
    Some(letters(&check(&data)))
}

/// What the six characters say of what was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Everything was heard as it was said.
    Agrees,
    /// Something was misheard; a person must ask the caller.
    Differs(Vec<Misheard>),
    /// More than the code can tell apart: read everything again.
    Refused,
}

/// One thing that was misheard.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Misheard {
    /// A number.
    Number {
        /// Which.
        dimension: Dimension,
        /// What was typed.
        typed: Option<Length>,
        /// What it probably was, likeliest first; never empty.
        likely: Vec<Length>,
    },
    /// The unit, or whether the frame is to be built.
    Frame {
        /// The unit it probably was.
        unit: Unit,
        /// Whether the frame probably is to be built.
        build: bool,
    },
    /// A check character itself; the numbers are right.
    Character {
        /// Its place, 1 to 6.
        at: usize,
        /// What it probably was.
        likely: char,
    },
}

/// Compares what was typed with the six characters that were `read_out`.
///
/// # Errors
/// When `read_out` is not six characters or spelling words.
pub fn compare(typed: &Said, read_out: &str) -> Result<Outcome, HeardError> {
    let word: Vec<Option<u8>> =
        typed.symbols().into_iter().chain(heard(read_out, CHECK)?).collect();
    let Some(changes) = correct(&word) else { return Ok(Outcome::Refused) };
    if changes.is_empty() {
        return Ok(Outcome::Agrees);
    }
    Ok(explain(typed, &word, &changes).map_or(Outcome::Refused, Outcome::Differs))
}

/// The changes in the terms of an order; [`None`] when they make no order.
fn explain(typed: &Said, word: &[Option<u8>], changes: &[Change]) -> Option<Vec<Misheard>> {
    let mut true_word: Vec<u8> = word.iter().map(|symbol| symbol.unwrap_or(0)).collect();
    for change in changes {
        *true_word.get_mut(change.at)? = change.symbol;
    }
    let mut misheard = Vec::new();
    let frame = *true_word.get(DATA - 1)?;
    let unit = if frame & 1 == 1 { Unit::Millimetre } else { Unit::Inch };
    let mut right = Said { unit, build: frame & 2 != 0, ..*typed };
    for dimension in Dimension::ALL {
        let at = dimension.index().saturating_mul(2);
        if changes.iter().any(|change| change.at / 2 == dimension.index()) {
            let [low, high] = true_word.get(at..)?.first_chunk()?;
            let residue = i64::from(*high).saturating_mul(32).saturating_add(i64::from(*low));
            let was = typed.numbers.get(dimension.index()).copied().flatten();
            let likely = likely(dimension, residue, was, unit);
            *right.numbers.get_mut(dimension.index())? = Some(*likely.first()?);
            misheard.push(Misheard::Number { dimension, typed: was, likely });
        }
    }
    if changes.iter().any(|change| change.at == DATA - 1) {
        misheard.push(Misheard::Frame { unit, build: right.build });
    }
    // In another unit the numbers that seemed to agree are other numbers, and most of what a
    // frame's symbol can be is no frame.
    let agrees = right.symbols().into_iter().zip(&true_word).all(|(own, is)| own == Some(*is));
    if !agrees {
        return None;
    }
    for change in changes.iter().filter(|change| change.at >= DATA) {
        let at = change.at.saturating_sub(DATA).saturating_add(1);
        misheard.push(Misheard::Character { at, likely: letter(change.symbol) });
    }
    Some(misheard)
}

/// The lengths of `residue` that `dimension` can have; those that look most like what
/// was typed stand first.
fn likely(dimension: Dimension, residue: i64, typed: Option<Length>, unit: Unit) -> Vec<Length> {
    let (least, most): (&Limit, &Limit) = match dimension {
        Dimension::Width => (&WIDTH_POSSIBLE, &BODY_WIDTH),
        Dimension::Height => (&HEIGHT_POSSIBLE, &ABOVE_FLOOR),
        Dimension::Header | Dimension::Bow => (&HEADER_POSSIBLE, &HEADER_POSSIBLE),
    };
    let mut likely: Vec<Length> = (0..4)
        .map(|round| unit.step().times(MODULUS.saturating_mul(round).saturating_add(residue)))
        .filter(|&length| length > Length::ZERO && least.holds(length) && most.holds(length))
        .collect();
    if let Some(typed) = typed {
        let unlikeness = |&length: &Length| {
            (unlike(&length.text(unit), &typed.text(unit)), (length - typed).abs())
        };
        sort(&mut likely, |a, b| unlikeness(a) < unlikeness(b));
    }
    likely
}

/// In how many characters two texts differ, place by place from the left.
fn unlike(a: &str, b: &str) -> usize {
    let differ = a.chars().zip(b.chars()).filter(|(a, b)| a != b).count();
    differ.saturating_add(a.len().abs_diff(b.len()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn inches(numbers: [i64; 4]) -> Said {
        let numbers = numbers.map(|n| Some(Length::from_sixteenths(n)));
        Said { unit: Unit::Inch, build: false, numbers }
    }
    /// 92 3/16, 101 1/2, 9 1/2, 1 1/4 in.
    fn demo() -> Said {
        inches([1475, 1624, 152, 20])
    }

    #[test]
    fn the_same_numbers_agree_in_letters_and_in_words() {
        let said = demo();
        let letters = characters(&said).unwrap();
        assert_eq!(compare(&said, &letters), Ok(Outcome::Agrees));
        let words = crate::code::spell(&letters, hangtrue_core::say::Language::French).join(" ");
        assert_eq!(compare(&said, &words), Ok(Outcome::Agrees));
    }

    /// An order's own numbers; none beside the steps, none below nought.
    #[test]
    fn what_has_no_steps_has_no_characters() {
        let report = hangtrue_core::check(&hangtrue_core::Survey::default(), &Default::default());
        let said = Said::of(&report, Unit::Millimetre);
        assert_eq!((said.unit, said.numbers), (Unit::Millimetre, [None; 4]));
        assert_eq!(characters(&said), None);
        for off in [Length::from_sixty_fourths(3), Length::from_sixteenths(-1)] {
            let mut said = demo();
            assert!(characters(&said).is_some());
            said.numbers[1] = Some(off);
            assert_eq!(characters(&said), None, "{off:?}");
        }
    }

    #[test]
    fn a_misheard_number_is_named_with_what_it_was() {
        let letters = characters(&demo()).unwrap();
        // "fifty" for "fifteen" and the like: any other value of one number.
        for dimension in Dimension::ALL {
            for wrong in 1..1800 {
                let mut typed = demo();
                let was = demo().numbers[dimension.index()].unwrap();
                let wrong = Length::from_sixteenths(wrong);
                if (wrong - was).nm() % Length::SIXTEENTH.times(1024).nm() == 0 {
                    continue;
                }
                typed.numbers[dimension.index()] = Some(wrong);
                let Ok(Outcome::Differs(misheard)) = compare(&typed, &letters) else {
                    panic!("{dimension:?} {wrong:?}")
                };
                let [Misheard::Number { dimension: named, typed, likely }] = &misheard[..] else {
                    panic!("{misheard:?}")
                };
                assert_eq!((*named, *typed), (dimension, Some(wrong)));
                assert!(likely.contains(&was));
            }
        }
    }

    /// First what is typed most like it, then what is nearest; nothing that cannot be.
    #[test]
    fn what_it_was_is_what_looks_like_it() {
        use Dimension::{Header, Height, Width};
        let mm = |dimension, residue, typed: Option<i64>| {
            let typed = typed.map(Length::from_mm);
            let likely = likely(dimension, residue, typed, Unit::Millimetre);
            likely.into_iter().map(|length| length.nm() / 1_000_000).collect::<Vec<_>>()
        };
        assert_eq!(mm(Height, 530, Some(2758)), [2578, 1554, 3602]);
        assert_eq!(mm(Height, 530, Some(2999)), [2578, 3602, 1554]);
        assert_eq!(mm(Height, 952, Some(2000)), [3000, 1976, 952]);
        assert_eq!(mm(Height, 952, None), [952, 1976, 3000]);
        assert_eq!(mm(Width, 294, Some(2324)), [2342, 1318]);
        assert_eq!(mm(Header, 0, Some(300)), [1024; 1]);
    }

    #[test]
    fn a_number_that_was_not_understood_is_told() {
        let mut typed = demo();
        typed.numbers[2] = None;
        assert_eq!(characters(&typed), None);
        let letters = characters(&demo()).unwrap();
        let header = Misheard::Number {
            dimension: Dimension::Header,
            typed: None,
            likely: vec![Length::from_sixteenths(152)],
        };
        assert_eq!(compare(&typed, &letters), Ok(Outcome::Differs(vec![header])));
    }

    #[test]
    fn unit_frame_and_check_characters_are_told_too() {
        let letters = characters(&demo()).unwrap();
        let typed = Said { build: true, ..demo() };
        let frame = Misheard::Frame { unit: Unit::Inch, build: false };
        assert_eq!(compare(&typed, &letters), Ok(Outcome::Differs(vec![frame])));
        let wrong: String = letters.chars().rev().collect();
        assert_eq!(compare(&demo(), &wrong), Ok(Outcome::Refused));
        let unheard = ["?", &letters[1..]].concat();
        let first = Misheard::Character { at: 1, likely: letters.chars().next().unwrap() };
        assert_eq!(compare(&demo(), &unheard), Ok(Outcome::Differs(vec![first])));
        assert!(compare(&demo(), "12345").is_err());
    }

    /// 640 in is 16256 mm, and 16256 counts other steps than 640 in does: to tell the unit
    /// and the header alone would leave three numbers wrong.
    #[test]
    fn another_unit_is_not_told_while_numbers_hang_on_it() {
        let inches = |inches| Some(Length::from_inches(inches));
        let header = Some(Length::from_sixty_fourths(41_010));
        let numbers = [inches(640), inches(640), header, inches(640)];
        let typed = Said { unit: Unit::Inch, build: true, numbers };
        assert_eq!(compare(&typed, "595YFQ"), Ok(Outcome::Refused));
    }

    #[test]
    fn all_four_numbers_in_the_other_unit_are_refused() {
        let letters = characters(&demo()).unwrap();
        let mm = [2342, 2578, 241, 32].map(|mm| Some(Length::from_mm(mm)));
        let typed = Said { unit: Unit::Millimetre, build: false, numbers: mm };
        assert_eq!(compare(&typed, &letters), Ok(Outcome::Refused));
    }

    /// No slip of one digit, and no exchange of two, is 1024 steps wide.
    #[test]
    fn no_single_digit_or_exchange_is_invisible_to_the_modulus() {
        // Millimetres have four digits; whole inches three, of sixteen steps each.
        for (scale, places) in [(1, &[1, 10, 100, 1000][..]), (16, &[1, 10, 100])] {
            for place in places {
                for other in places.iter().filter(|&other| other != place) {
                    for digit in 1..=9_i64 {
                        assert_ne!(scale * digit * place % 1024, 0);
                        assert_ne!(scale * digit * (other - place) % 1024, 0);
                    }
                }
            }
        }
    }

    proptest! {
        #[test]
        fn two_changed_symbols_of_the_fifteen_are_never_taken_for_right(
            numbers in prop::array::uniform4(1_i64..2400),
            characters_heard in "[0-9A-Z?]{6}",
        ) {
            let said = inches(numbers);
            let letters = characters(&said).unwrap();
            let outcome = compare(&said, &characters_heard);
            if outcome == Ok(Outcome::Agrees) {
                let heard = |text| heard(text, 6).unwrap();
                prop_assert_eq!(heard(&characters_heard), heard(&letters));
            }
        }
        #[test]
        fn nothing_typed_makes_it_panic(
            numbers in prop::array::uniform4(prop::option::of(any::<i64>())),
            build in any::<bool>(),
            metric in any::<bool>(),
            text in ".{0,20}",
        ) {
            let unit = if metric { Unit::Millimetre } else { Unit::Inch };
            let said = Said { unit, build, numbers: numbers.map(|n| n.map(Length::from_nm)) };
            let _ = (characters(&said), compare(&said, &text), compare(&said, "595YFQ"));
        }
    }
}
