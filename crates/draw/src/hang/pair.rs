//! The two vertical tracks: where they stand, larger than life, and what each needs.

use super::text::words;
use crate::dimension::{plate, tag, within};
use crate::glyph::{Size, text_width};
use crate::number::{limit, push_whole};
use crate::point::Point;
use crate::rect::Rect;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::Length;
use hangtrue_core::hang::tracks::{Level, Side, Solved};

/// The picture's size, in drawing units.
const SIZE: (f64, f64) = (320.0, 268.0);
/// Where the pair would stand if it were square.
const PAIR: Rect = Rect::new(106.0, 26.0, 214.0, 226.0);
/// How far from the ends of the tracks the low and high fastenings are.
const INSET: f64 = 16.0;
/// The farthest a fastening is moved, and the largest exaggeration, units per mm.
const BENT: f64 = 14.0;
const LARGEST: f64 = 2.0;

/// The pair as it was found, its departures drawn larger; dashed, as it will stand; at each
/// fastening its shim. The numbers are true.
#[must_use]
pub fn pair(sheet: Sheet<'_>, solved: &Solved) -> String {
    let words = words(sheet.speaker.language);
    let mut svg = Svg::new(sheet, "pair", SIZE, words.pair_title, &description(sheet, solved));
    svg.line(
        "edge",
        Point::new(PAIR.left - 40.0, PAIR.bottom),
        Point::new(PAIR.right + 40.0, PAIR.bottom),
    );
    let scale = tracks(&mut svg, solved);
    for (spacing, y) in solved.spacing.into_iter().zip(HEIGHTS) {
        let text = sheet.drawn(spacing.round_to(sheet.speaker.unit.step()));
        plate(&mut svg, Point::new(SIZE.0 / 2.0, y), &text);
    }
    shims(&mut svg, sheet, solved);
    let mut times = String::new();
    let drawn = PAIR.width() / solved.target.to_mm().max(1.0);
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "1 to 10 000")]
    push_whole(&mut times, limit(scale / drawn, 1.0, 1e4).round_ties_even() as u64);
    let note = (words.exaggerated)(&times);
    svg.text("", Size::Small, Anchor::Middle, Point::new(SIZE.0 / 2.0, 255.0), &note);
    svg.finish()
}

/// The picture in words: each shim and where it goes.
fn description(sheet: Sheet<'_>, solved: &Solved) -> String {
    let (words, unit) = (words(sheet.speaker.language), sheet.speaker.unit);
    let mut description = words.pair.to_owned();
    for (side, side_name) in Side::ALL.into_iter().zip(words.sides) {
        for (level, level_name) in Level::ALL.into_iter().zip(words.levels) {
            let shim = solved.shims.at(side, level);
            if shim > Length::ZERO {
                let shim = sheet.speaker.length(shim.round_to(unit.finest()));
                description.push(' ');
                description.push_str(&(words.shim)(side_name, level_name, &shim));
            }
        }
    }
    if solved.shims.is_none() {
        description.push(' ');
        description.push_str(words.no_shim);
    }
    description
}

/// The tracks as they were found, their diagonals where they were read and, dashed, as they will
/// stand. Returns the scale of their departures, drawing units per mm.
fn tracks(svg: &mut Svg, solved: &Solved) -> f64 {
    let off = offsets(solved);
    let largest = off.iter().flatten().fold(0.0_f64, |most, one| most.max(one.abs()));
    let scale = (BENT / largest.max(f64::MIN_POSITIVE)).min(LARGEST);
    let mut all = [[Point::new(0.0, 0.0); 3]; 2];
    for ((points, offsets), base) in all.iter_mut().zip(off).zip([PAIR.left, PAIR.right]) {
        for ((point, by), up) in points.iter_mut().zip(offsets).zip(HEIGHTS) {
            *point = Point::new(base + limit(by * scale, -BENT, BENT), up);
        }
    }
    // As it will stand: straight lines at the places the shims bring the tracks to.
    for (points, side) in all.iter().zip(Side::ALL) {
        let inward = if side == Side::Left { 1.0 } else { -1.0 };
        let levels = points.iter().zip(Level::ALL);
        let moved = levels.map(|(point, level)| {
            point.moved(inward * solved.shims.at(side, level).to_mm() * scale, 0.0)
        });
        let moved: Vec<Point> = moved.collect();
        svg.path("edge guess", |path| {
            path.polyline(&moved);
        });
    }
    for points in &all {
        svg.path("outline", |path| {
            path.polyline(points);
        });
        for point in points {
            svg.circle("solid", *point, 3.0);
        }
    }
    if solved.lean.is_some() {
        let [[low_left, _, high_left], [low_right, _, high_right]] = all;
        svg.line("quiet", low_left, high_right);
        svg.line("quiet", high_left, low_right);
    }
    scale
}

/// Beside each fastening its shim; 0 where there is none.
fn shims(svg: &mut Svg, sheet: Sheet<'_>, solved: &Solved) {
    for (side, edge) in Side::ALL.into_iter().zip([(2.0, 86.0), (234.0, 318.0)]) {
        for (level, y) in Level::ALL.into_iter().zip(HEIGHTS) {
            let shim = solved.shims.at(side, level);
            let center = Point::new((edge.0 + edge.1) / 2.0, y);
            if shim > Length::ZERO {
                let text = sheet.drawn(shim.round_to(sheet.speaker.unit.finest()));
                let text = short(text, edge.1 - edge.0);
                tag(svg, within(center, &text, edge.0, edge.1), &text);
            } else {
                svg.text("", Size::Value, Anchor::Middle, center, "0");
            }
        }
    }
}

/// `text` without its unit where there is no room for both.
fn short(text: String, room: f64) -> String {
    if text_width(&text, Size::Value) + 10.0 <= room {
        return text;
    }
    text.trim_end_matches(|letter: char| !letter.is_ascii_digit()).to_owned()
}

/// The heights of the fastenings in the picture, low, middle, high.
const HEIGHTS: [f64; 3] = [PAIR.bottom - INSET, (PAIR.top + PAIR.bottom) / 2.0, PAIR.top + INSET];

/// How far each track stands to the right of where it would with the target spacing and no
/// lean, mm: left and right, low, middle, high.
fn offsets(solved: &Solved) -> [[f64; 3]; 2] {
    let lean = solved.lean.map_or(0.0, Length::to_mm);
    let half = 0.5 * solved.target.to_mm();
    let mut all = [[0.0; 3]; 2];
    for (sign, side) in [-1.0, 1.0].into_iter().zip(&mut all) {
        let levels = side.iter_mut().zip(solved.spacing).zip([-0.5, 0.0, 0.5]);
        for ((cell, spacing), share) in levels {
            *cell = share * lean + sign * (0.5 * spacing.to_mm() - half);
        }
    }
    all
}
