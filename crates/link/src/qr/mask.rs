//! Which of the eight masks a code takes: the one whose picture is the least like what confuses a
//! reader (ISO/IEC 18004, 7.8.3, from memory).
//!
//! `qrcodegen` weighs all eight module by module, which was two thirds of what a link and its
//! code cost. Here a line of the code is one number and is weighed whole. The answer is the
//! library's, which a test holds; codes too large for a number are left to it.

use qrcodegen::{Mask, QrCode};

/// How many modules on a side a number has room for: enough to version 11, which has 61.
const MOST: u32 = 64;

/// The mask of `code`, which is drawn with mask 0; [`None`] where it is too large to say.
pub(super) fn best(code: &QrCode) -> Option<Mask> {
    let side = u32::try_from(code.size()).ok().filter(|side| *side <= MOST)?;
    let drawn = Lines::new(side, |x, y| code.get_module(x.cast_signed(), y.cast_signed()));
    let level = code.error_correction_level() as u32;
    let fixed = fixed(side);
    (0..8)
        .min_by_key(|&mask| {
            let mut lines = drawn.clone();
            lines.change(&fixed, |x, y| inverts(0, x, y) != inverts(mask, x, y));
            lines.name(level, mask);
            lines.penalty()
        })
        .map(Mask::new)
}

/// The modules of a square both ways: bit `x` of row `y`, bit `y` of column `x`.
#[derive(Clone)]
struct Lines {
    side: u32,
    rows: Vec<u64>,
    columns: Vec<u64>,
}

impl Lines {
    fn new(side: u32, dark: impl Fn(u32, u32) -> bool) -> Self {
        let line = |dark: &dyn Fn(u32) -> bool| {
            (0..side).rev().fold(0, |line, at| (line << 1) | u64::from(dark(at)))
        };
        Self {
            side,
            rows: (0..side).map(|y| line(&|x| dark(x, y))).collect(),
            columns: (0..side).map(|x| line(&|y| dark(x, y))).collect(),
        }
    }

    /// Inverts where `inverts` says, but not what is `fixed`, which is the same both ways.
    /// `inverts` repeats itself after twelve modules.
    fn change(&mut self, fixed: &[u64], inverts: impl Fn(u32, u32) -> bool) {
        let tile = |dark: &dyn Fn(u32) -> bool| {
            let twelve = (0..12).rev().fold(0_u64, |line, at| (line << 1) | u64::from(dark(at)));
            // Twelve bits, and again each twelve: the pieces do not meet.
            twelve.wrapping_mul(0x1001_0010_0100_1001)
        };
        let rows: [u64; 12] = core::array::from_fn(|y| tile(&|x| inverts(x, y as u32)));
        let columns: [u64; 12] = core::array::from_fn(|x| tile(&|y| inverts(x as u32, y)));
        for (lines, tiles) in [(&mut self.rows, rows), (&mut self.columns, columns)] {
            for ((line, fixed), tile) in lines.iter_mut().zip(fixed).zip(tiles.iter().cycle()) {
                *line ^= tile & !fixed;
            }
        }
    }

    fn set(&mut self, x: u32, y: u32, dark: bool) {
        for (lines, line, at) in [(&mut self.rows, y, x), (&mut self.columns, x, y)] {
            if let Some(line) = lines.get_mut(line as usize) {
                let bit = 1_u64.wrapping_shl(at);
                *line = if dark { *line | bit } else { *line & !bit };
            }
        }
    }

    /// Level and mask as the code says them to its reader, twice (7.9): five bits, ten more by
    /// which a wrong one is noticed, a pattern over all so that they are never all light.
    fn name(&mut self, level: u32, mask: u8) {
        // The standard's order is M, L, H, Q; the library's is L, M, Q, H.
        let data = ((level ^ 1) << 3) | u32::from(mask);
        let check = (0..10).fold(data, |rest, _| {
            let over = rest >> 9;
            (rest << 1) ^ over.wrapping_mul(0x537)
        });
        let bits = ((data << 10) | check) ^ 0x5412;
        let side = self.side;
        for i in 0..15 {
            let dark = bits.wrapping_shr(i) & 1 == 1;
            // Along the first finder: the timing pattern takes the seventh place either way.
            let skip = |at: u32| if at > 5 { at.wrapping_add(1) } else { at };
            let far = 14_u32.wrapping_sub(i);
            let (x, y) = if i < 8 { (8, skip(i)) } else { (skip(far), 8) };
            self.set(x, y, dark);
            let from = side.wrapping_sub(15).wrapping_add(i);
            let (x, y) = if i < 8 { (side.wrapping_sub(1).wrapping_sub(i), 8) } else { (8, from) };
            self.set(x, y, dark);
        }
    }

    fn penalty(&self) -> u32 {
        let squares = self.rows.iter().zip(self.rows.iter().skip(1));
        let squares: u32 = squares.map(|(line, next)| squares_of(*line, *next, self.side)).sum();
        let lines = self.rows.iter().chain(&self.columns);
        let lines: u32 =
            lines.map(|line| runs(*line, self.side).wrapping_add(finders(*line))).sum();
        let dark: u32 = self.rows.iter().map(|line| line.count_ones()).sum();
        let all = self.side.wrapping_mul(self.side);
        // Ten for each whole twentieth of the modules by which the dark ones are off the half.
        let off = dark.wrapping_mul(20).abs_diff(all.wrapping_mul(10));
        let off = off.div_ceil(all.max(1)).saturating_sub(1).wrapping_mul(10);
        squares.wrapping_add(lines).wrapping_add(off)
    }
}

/// Where bit `at` is like the next one, of a line of `side` bits.
fn like_next(line: u64, side: u32) -> u64 {
    !(line ^ (line >> 1)) & 1_u64.wrapping_shl(side.wrapping_sub(1)).wrapping_sub(1)
}

/// Three for five alike in a row, one more for each more.
fn runs(line: u64, side: u32) -> u32 {
    let two = like_next(line, side);
    let three = two & (two >> 1);
    let five = three & (three >> 2);
    let begins = five & !(five << 1);
    five.count_ones().wrapping_add(begins.count_ones().wrapping_mul(2))
}

/// Three for each two by two alike.
fn squares_of(line: u64, next: u64, side: u32) -> u32 {
    let down = !(line ^ next);
    (like_next(line, side) & down & (down >> 1)).count_ones().wrapping_mul(3)
}

/// Forty for what looks like a finder: dark, light, dark, light, dark as 1 : 1 : 3 : 1 : 1 of any
/// scale, with light around it, on one side four times as wide. Beyond the line all is light.
fn finders(line: u64) -> u32 {
    let mut found: u32 = 0;
    for n in 1..=MOST / 7 {
        let [mut dark, mut some, mut before] = [u64::MAX, 0, 0];
        for at in 0..n {
            dark &= line.wrapping_shr(at);
            some |= line.wrapping_shr(at);
            before |= (line << 1).wrapping_shl(at);
        }
        let later = |what: u64, by: u32| what.checked_shr(by.wrapping_mul(n)).unwrap_or(0);
        let three = dark & later(dark, 1) & later(dark, 2);
        if three == 0 {
            break;
        }
        let finder = dark & !later(some, 1) & later(three, 2) & !later(some, 5) & later(dark, 6);
        let four = |one: u64, shift: fn(u64, u32) -> u64| {
            (1..4).fold(one, |wide, by| wide | shift(one, n.wrapping_mul(by)))
        };
        let after = later(some, 7);
        let finder = finder & !before & !after;
        for wide in [four(before, u64::wrapping_shl), four(after, u64::wrapping_shr)] {
            found = found.wrapping_add((finder & !wide).count_ones().wrapping_mul(40));
        }
    }
    found
}

/// The modules that no mask changes, of a code of version 1 to 11; the same both ways. What is
/// beyond the code is not changed either.
fn fixed(side: u32) -> Vec<u64> {
    let bits = |from: u32, many: u32| 1_u64.wrapping_shl(many).wrapping_sub(1).wrapping_shl(from);
    let [far, last, version] = [8, 7, 11].map(|from_end| side.wrapping_sub(from_end));
    // Alignment patterns stand on a grid of six, middle and last, but for the finders' corners.
    let (with_version, middle) = (side >= 45, side / 2);
    let pattern = |x: u32| bits(x.wrapping_sub(2), 5);
    let patterns = match side {
        ..=21 => [(0, 0); 3],
        22..45 => [(last, pattern(last)); 3],
        _ => {
            let two = pattern(middle) | pattern(last);
            [(6, pattern(middle)), (middle, pattern(6) | two), (last, two)]
        }
    };
    (0..side)
        .map(|y| {
            let mut row = bits(6, 1) | u64::MAX.wrapping_shl(side);
            for (is, more) in [
                (y < 9 || y >= far, bits(0, 9)),
                (y < 9, bits(far, 8)),
                (y == 6, u64::MAX),
                (with_version && y < 6, bits(version, 3)),
                (with_version && (version..far).contains(&y), bits(0, 6)),
            ] {
                row |= if is { more } else { 0 };
            }
            for (center, more) in patterns {
                row |= if y.abs_diff(center) <= 2 { more } else { 0 };
            }
            row
        })
        .collect()
}

/// Whether a mask inverts a module (7.8.2).
fn inverts(mask: u8, x: u32, y: u32) -> bool {
    let (product, sum) = (x.wrapping_mul(y), x.wrapping_add(y));
    match mask {
        0 => sum % 2 == 0,
        1 => y.is_multiple_of(2),
        2 => x.is_multiple_of(3),
        3 => sum % 3 == 0,
        4 => (x / 3).wrapping_add(y / 2).is_multiple_of(2),
        5 => product % 6 == 0,
        6 => (product % 2).wrapping_add(product % 3) % 2 == 0,
        _ => (sum % 2).wrapping_add(product % 3) % 2 == 0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use qrcodegen::{QrCodeEcc, QrSegment, Version};

    fn code(text: &[u8], level: QrCodeEcc, version: u8, mask: Option<Mask>) -> Option<QrCode> {
        let [least, most] = [Version::new(version); 2];
        let segments = [QrSegment::make_bytes(text)];
        QrCode::encode_segments_advanced(&segments, level, least, most, mask, false).ok()
    }

    const LEVELS: [QrCodeEcc; 4] =
        [QrCodeEcc::Low, QrCodeEcc::Medium, QrCodeEcc::Quartile, QrCodeEcc::High];

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(400))]

        #[test]
        fn is_the_librarys(
            text in prop::collection::vec(any::<u8>(), 0..120),
            // A long run of one byte makes what random ones do not: large finders, large areas.
            fill in prop::collection::vec((any::<u8>(), 0_usize..40), 0..3),
            version in 1_u8..=11,
            level in 0_usize..4,
        ) {
            let level = LEVELS[level];
            let mut text = text;
            text.extend(fill.iter().flat_map(|(byte, times)| vec![*byte; *times]));
            while code(&text, level, version, None).is_none() {
                text.truncate(text.len() / 2);
            }
            let theirs = code(&text, level, version, None).unwrap();
            let drawn = code(&text, level, version, Some(Mask::new(0))).unwrap();
            prop_assert_eq!(best(&drawn).map(Mask::value), Some(theirs.mask().value()));
        }
    }

    /// Not only which is least, but each picture, to the module.
    #[test]
    fn each_mask_draws_what_the_library_draws() {
        for version in 1..=11 {
            for level in LEVELS {
                let drawn = code(b"96.375", level, version, Some(Mask::new(0))).unwrap();
                let side = drawn.size().cast_unsigned();
                let lines = |code: &QrCode| {
                    Lines::new(side, |x, y| code.get_module(x.cast_signed(), y.cast_signed()))
                };
                for mask in 0..8 {
                    let theirs =
                        lines(&code(b"96.375", level, version, Some(Mask::new(mask))).unwrap());
                    let mut ours = lines(&drawn);
                    ours.change(&fixed(side), |x, y| inverts(0, x, y) != inverts(mask, x, y));
                    ours.name(level as u32, mask);
                    assert_eq!(ours.rows, theirs.rows, "{version} {mask}");
                    assert_eq!(ours.columns, theirs.columns, "{version} {mask}");
                }
            }
        }
    }

    #[test]
    fn a_large_code_is_left_to_the_library() {
        let drawn = code(b"96.375", QrCodeEcc::Low, 12, Some(Mask::new(0))).unwrap();
        assert!(best(&drawn).is_none());
    }
}
