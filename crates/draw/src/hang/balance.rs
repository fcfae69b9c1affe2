//! The balance: forces over the whole travel, and what is left for the hand.

use super::text::words;
use crate::glyph::{Size, text_width};
use crate::number::limit;
use crate::point::Point;
use crate::rect::Rect;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::hang::spring::Point as At;
use hangtrue_core::hang::{Scale, Weight};

/// The picture's size, in drawing units.
const SIZE: (f64, f64) = (320.0, 232.0);
/// What hangs and what is lifted.
const FORCES: Rect = Rect::new(70.0, 20.0, 306.0, 112.0);
/// What is left for the hand.
const HAND: Rect = Rect::new(70.0, 134.0, 306.0, 204.0);

/// What hangs, what the spring lifts, and the hand's part, from closed (left) to open. Above
/// the line in the lower part the hand lifts, below it holds back.
#[must_use]
pub fn balance(sheet: Sheet<'_>, points: &[At]) -> String {
    let words = words(sheet.speaker.language);
    let scale = Scale::of(sheet.speaker.unit);
    let told = |newtons: f64| {
        let weight = Weight::from_newtons(newtons).in_scale(scale);
        let places = if weight.abs() < 10.0 { 1 } else { 0 };
        [&sheet.speaker.decimal(weight, places), " ", scale.key()].concat()
    };
    let most = |of: &dyn Fn(&At) -> f64| points.iter().map(of).fold(0.0_f64, f64::max);
    let (pull, push) = (most(&At::hand), most(&|at| -at.hand()));
    let heaviest = most(&|at| at.hanging.max(at.lifted));
    let description = [words.balance, " ", &(words.most)(&told(pull), &told(push))].concat();
    let mut svg = Svg::new(sheet, "balance", SIZE, words.balance_title, &description);

    let upper = Axis::new(FORCES, 0.0, heaviest.max(1.0), points.len());
    axes(&mut svg, FORCES, FORCES.bottom);
    curve(&mut svg, "edge", &upper, points, &|at| at.hanging);
    curve(&mut svg, "edge guess", &upper, points, &|at| at.lifted);
    label(&mut svg, FORCES.top, &told(heaviest));
    label(&mut svg, FORCES.bottom, "0");
    legend(&mut svg, words.hangs, words.lifts);

    // The hand's scale is its own, and never so fine that a balanced door looks wild.
    let least = 0.02 * heaviest.max(1.0);
    let (up, down) = (pull.max(least), push.max(least));
    let lower = Axis::new(HAND, -down, up, points.len());
    let zero = lower.height(0.0);
    let area: Vec<Point> = points
        .iter()
        .enumerate()
        .map(|(index, at)| lower.at(index, at.hand()))
        .chain([Point::new(HAND.right, zero), Point::new(HAND.left, zero)])
        .collect();
    svg.path("force", |path| {
        path.polyline(&area).close();
    });
    axes(&mut svg, HAND, zero);
    curve(&mut svg, "outline", &lower, points, &At::hand);
    if zero - HAND.top > 15.0 {
        label(&mut svg, HAND.top, &told(up));
    }
    if HAND.bottom - zero > 15.0 {
        label(&mut svg, HAND.bottom, &told(-down));
    }
    label(&mut svg, zero, "0");
    let small = |svg: &mut Svg, anchor, x, y, text| {
        svg.text("halo", Size::Small, anchor, Point::new(x, y), text);
    };
    small(&mut svg, Anchor::End, HAND.right, HAND.top - 10.0, words.hand);
    small(&mut svg, Anchor::Start, HAND.left, SIZE.1 - 12.0, words.closed);
    small(&mut svg, Anchor::End, HAND.right, SIZE.1 - 12.0, words.open);
    svg.finish()
}

/// A plot's box and what its heights mean.
struct Axis {
    area: Rect,
    least: f64,
    most: f64,
    last: f64,
}

impl Axis {
    fn new(area: Rect, least: f64, most: f64, count: usize) -> Self {
        let last = u32::try_from(count.saturating_sub(1)).unwrap_or(u32::MAX).max(1);
        Self { area, least, most, last: f64::from(last) }
    }

    fn height(&self, value: f64) -> f64 {
        let share = limit((value - self.least) / (self.most - self.least), 0.0, 1.0);
        self.area.bottom - share * self.area.height()
    }

    fn at(&self, index: usize, value: f64) -> Point {
        let share = f64::from(u32::try_from(index).unwrap_or(u32::MAX)) / self.last;
        Point::new(self.area.left + share * self.area.width(), self.height(value))
    }
}

fn curve(svg: &mut Svg, class: &str, axis: &Axis, points: &[At], of: &dyn Fn(&At) -> f64) {
    let line: Vec<Point> =
        points.iter().enumerate().map(|(index, at)| axis.at(index, of(at))).collect();
    svg.path(class, |path| {
        path.polyline(&line);
    });
}

fn axes(svg: &mut Svg, area: Rect, zero: f64) {
    svg.line("thin", Point::new(area.left, area.top), Point::new(area.left, area.bottom));
    svg.line("thin", Point::new(area.left, zero), Point::new(area.right, zero));
}

/// A value at the left of its axis.
fn label(svg: &mut Svg, y: f64, text: &str) {
    let at = Point::new(FORCES.left - 6.0, y);
    svg.text("", Size::Small, Anchor::End, at, text);
}

/// The two lines, named by a piece of each.
fn legend(svg: &mut Svg, hangs: &str, lifts: &str) {
    let y = FORCES.top - 8.0;
    let mut right = FORCES.right;
    for (class, text) in [("edge guess", lifts), ("edge", hangs)] {
        let width = text_width(text, Size::Small);
        svg.text("halo", Size::Small, Anchor::End, Point::new(right, y), text);
        let end = right - width - 4.0;
        svg.line(class, Point::new(end - 22.0, y), Point::new(end, y));
        right = end - 34.0;
    }
}
