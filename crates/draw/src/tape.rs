//! The tape picture: the stretch of tape around a reading, as the tape shows it.

use crate::glyph::{Size, text_width};
use crate::number::push_whole;
use crate::point::Point;
use crate::rect::Rect;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::{Length, Unit};

/// The picture's size, in drawing units: narrower than the others, since a page shows
/// it beside a field, within a frame.
const SIZE: (f64, f64) = (280.0, 112.0);
/// Half its width, in whole units.
const HALF: i64 = 140;
/// The middle of the picture, where the arrow points, in hundredths of a unit.
const MIDDLE: i64 = 100 * HALF;
/// The blade's edges.
const TOP: f64 = 34.0;
const BOTTOM: f64 = 108.0;
/// The middle of the numerals.
const NUMERALS: f64 = 95.0;
/// The longest a tape is drawn: beyond it there is a blade without marks.
const LONGEST: Length = Length::from_mm(100_000);

/// The length that one drawing unit stands for, of the 280 the picture is wide:
/// 1/160 in on an inch tape, 5/32 mm on a metric one.
#[must_use]
pub const fn tape_unit(unit: Unit) -> Length {
    match unit {
        Unit::Inch => Length::from_nm(158_750),
        Unit::Millimetre => Length::from_nm(156_250),
    }
}

/// How much tape the picture shows from edge to edge.
#[must_use]
pub const fn tape_across(unit: Unit) -> Length {
    tape_unit(unit).times(2 * HALF)
}

/// The inch or so of tape on either side of `reading` with its marks and
/// numerals, and an arrow at the reading: to hold beside the real tape.
///
/// Marks are placed by whole numbers and rounded once, to 1/100 unit.
#[must_use]
pub fn tape(sheet: Sheet<'_>, reading: Length) -> String {
    let words = sheet.words();
    let text = sheet.drawn(reading);
    let description = (words.tape)(&sheet.speaker.length(reading));
    let mut svg = Svg::new(sheet, "tape", SIZE, words.tape_title, &description);
    let ruler = Ruler { reading, unit: sheet.speaker.unit };
    let drawable = (Length::ZERO..=LONGEST).contains(&reading);
    let start = if drawable { ruler.x(Length::ZERO).max(0) } else { 0 };
    #[expect(clippy::cast_precision_loss, reason = "within the picture")]
    let left = start as f64 / 100.0;
    svg.rect("blade", Rect::new(left, TOP, SIZE.0, BOTTOM));
    let tip = Point::new(SIZE.0 / 2.0, TOP + 1.0);
    if drawable {
        ruler.marks(&mut svg);
        svg.line("needle", tip, Point::new(tip.x, NUMERALS - 12.0));
        ruler.numerals(&mut svg, words.foot, words.metre);
    }
    svg.line("blade-edge", Point::new(left, TOP), Point::new(SIZE.0, TOP));
    svg.line("blade-edge", Point::new(left, BOTTOM), Point::new(SIZE.0, BOTTOM));
    if start > 0 {
        // The end of the tape, with its hook.
        svg.line("end", Point::new(left, TOP - 4.0), Point::new(left, BOTTOM));
    }
    if drawable {
        svg.path("solid", |path| {
            path.polyline(&[tip, tip.moved(-8.0, -13.0), tip.moved(8.0, -13.0)]).close();
        });
    }
    let text = if drawable && text_width(&text, Size::Value) < SIZE.0 {
        text
    } else {
        words.off_scale.to_owned()
    };
    svg.text("", Size::Value, Anchor::Middle, Point::new(SIZE.0 / 2.0, 10.0), &text);
    svg.finish()
}

/// The marks around a reading. All positions are hundredths of a unit.
struct Ruler {
    reading: Length,
    unit: Unit,
}

impl Ruler {
    /// Where `mark` is, exactly, rounded to 1/100 unit.
    fn x(&self, mark: Length) -> i64 {
        let step = tape_unit(self.unit).nm();
        let off = (mark - self.reading).nm();
        // Half up, on whole numbers.
        let halves = off.saturating_mul(200).saturating_add(step);
        let hundredths = halves.checked_div_euclid(step.saturating_mul(2)).unwrap_or(0);
        MIDDLE.saturating_add(hundredths)
    }

    /// The finest marks, numbered from the tape's zero.
    fn step(&self) -> Length {
        self.unit.step()
    }

    /// The numbers of the marks that are in the picture.
    fn numbers(&self, step: Length, margin: Length) -> core::ops::RangeInclusive<i64> {
        let half = tape_unit(self.unit).times(HALF) + margin;
        let first = (self.reading - half).nm().max(0).div_euclid(step.nm());
        let last = (self.reading + half).nm().div_euclid(step.nm());
        first..=last
    }

    /// How far mark number `n` reaches down, in units, and its class.
    fn reach(&self, n: i64) -> (usize, i64) {
        match self.unit {
            Unit::Inch => match n.rem_euclid(16) {
                0 => (0, 74),
                8 => (1, 44),
                4 | 12 => (1, 33),
                2 | 6 | 10 | 14 => (2, 24),
                _ => (2, 15),
            },
            Unit::Millimetre => match n.rem_euclid(10) {
                0 => (0, 74),
                5 => (1, 28),
                _ => (2, 16),
            },
        }
    }

    fn marks(&self, svg: &mut Svg) {
        for (index, class) in ["mark major", "mark", "mark minor"].into_iter().enumerate() {
            svg.path(class, |path| {
                for n in self.numbers(self.step(), Length::ZERO) {
                    let (weight, reach) = self.reach(n);
                    let x = self.x(self.step().times(n));
                    if weight == index && (0..=2 * MIDDLE).contains(&x) {
                        path.mark(x, 34, reach);
                    }
                }
            });
        }
    }

    /// Inches beside their marks, with the feet; or centimetres, as metric tapes
    /// have them, with the millimetre's zero small behind it, and the metres.
    fn numerals(&self, svg: &mut Svg, foot: [&str; 2], metre: &str) {
        let (step, whole, name, small) = match self.unit {
            Unit::Inch => (Length::INCH, 12, foot, ""),
            Unit::Millimetre => (Length::from_mm(10), 100, [metre; 2], "0"),
        };
        let tail = text_width(small, Size::Small);
        for n in self.numbers(step, Length::ZERO).filter(|&n| n > 0) {
            #[expect(clippy::cast_precision_loss, reason = "within the picture")]
            let x = self.x(step.times(n)) as f64 / 100.0;
            let numeral = counted(n, "");
            let end = x - 4.0 - tail;
            if end - text_width(&numeral, Size::Large) < 0.0 || x > SIZE.0 {
                continue;
            }
            svg.text("on", Size::Large, Anchor::End, Point::new(end, NUMERALS), &numeral);
            if !small.is_empty() {
                let at = Point::new(x - 4.0, NUMERALS + 2.0);
                svg.text("on", Size::Small, Anchor::End, at, small);
            }
            if n.checked_rem(whole) == Some(0) {
                let [one, more] = name;
                let flag =
                    counted(n.checked_div(whole).unwrap_or(0), if n == whole { one } else { more });
                let left = x + 3.0;
                let right = left + text_width(&flag, Size::Small) + 9.0;
                if right < SIZE.0 {
                    let at = Rect::new(left, 64.0, right, 82.0);
                    svg.round_rect("flag", at, 2.0);
                    svg.text("flagged", Size::Small, Anchor::Middle, at.at(0.5, 0.5), &flag);
                }
            }
        }
    }
}

/// `8 ft`; the number alone if there is no `name`.
fn counted(n: i64, name: &str) -> String {
    let mut out = String::new();
    push_whole(&mut out, n.unsigned_abs());
    if !name.is_empty() {
        out.push(' ');
        out.push_str(name);
    }
    out
}
