//! The residuals: how the frame leans, and which tape does not fit it, exaggerated.

use crate::bent::Bent;
use crate::cut::{Cut, Stand};
use crate::dimension::{quiet, tag, tape, within};
use crate::glyph::{Size, text_width};
use crate::number::{limit, push_whole};
use crate::point::Point;
use crate::reading::OPEN;
use crate::rear::Rear;
use crate::rect::Rect;
use crate::shape::Shape;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::{Dimension, Group, Length, Spot};

/// One reading, and how far it is from what all readings together say.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Residual {
    /// Where it was read.
    pub spot: Spot,
    /// What was read.
    pub reading: Length,
    /// The reading less its adjusted value: above zero, the tape read too much.
    pub residual: Length,
    /// The reading less what the others alone say: what is lettered. A part of it, which may be small,
    /// shows in `residual`, as the reading has its say in what all say.
    pub error: Length,
    /// It stands out from the others.
    pub doubtful: bool,
}

impl Residual {
    fn adjusted(&self) -> Length {
        self.reading - self.residual
    }
}

/// The picture's size, in drawing units.
const SIZE: (f64, f64) = (320.0, 268.0);
/// Where the rear view stands.
const AREA: Rect = Rect::new(24.0, 28.0, 196.0, 244.0);
/// Where the section stands.
const STAND: Stand<'static> =
    Stand { header: (222.0, 240.0), bows: &[284.0], end: 318.0, skin: 46.0, lowest: 112.0 };
const SILL: f64 = 222.0;
const BREAK: f64 = 196.0;
/// Where the tapes stand in the section.
const HEADER_AT: f64 = 212.0;
const ROOF_AT: f64 = 254.0;
const BOW_AT: f64 = 306.0;
/// The largest exaggeration, drawing units per mm: a frame that is square within
/// the tape's own error shall look square.
const LARGEST: f64 = 1.5;
/// The farthest the frame is moved, and a tape sticks out or falls short.
const BENT: f64 = 14.0;
const OFF: f64 = 18.0;

/// The frame as the adjusted readings say it is, its departures from square
/// drawn larger, and each tape with the end where it was read: one that sticks
/// out of the frame or falls short of it does not fit. The doubtful ones stand out.
///
/// In the section at the right, where three places lie behind each other, the
/// one that fits worst is drawn.
#[must_use]
pub fn residuals(sheet: Sheet<'_>, residuals: &[Residual]) -> String {
    let together = sheet.together();
    let adjusted = |spot| residuals.iter().find(|one| one.spot == spot).map(Residual::adjusted);
    let bent = Bent::of(adjusted);
    let numbers = Dimension::ALL.map(|dimension| dimension.spots().into_iter().find_map(adjusted));
    let shape = Shape::new(numbers, [Spot::PostLeft, Spot::PostRight].map(adjusted));
    let rear = Rear::fit(&shape, AREA);
    let scale = (BENT / bent.largest().max(f64::MIN_POSITIVE)).min(LARGEST);

    let title = together.residuals_title;
    let mut svg = Svg::new(sheet, "residuals", SIZE, title, &account(sheet, residuals, &bent));
    draw_frame(&mut svg, &rear, &bent, scale);
    let cut = Cut::fit(&shape, STAND);
    cut.draw_below(&mut svg, BREAK, Some(SILL));
    cut.draw(&mut svg, &shape);

    let tapes: Vec<(Residual, Point, Point)> = shown(residuals)
        .into_iter()
        // A post is in no sum with others: it is drawn only if someone doubts it.
        .filter(|one| one.doubtful || one.spot.group() != Group::Post)
        .filter_map(|one| {
            let (from, to) = place(one.spot, &rear, &cut, &bent, scale)?;
            let off = limit(one.residual.to_mm() * scale, -OFF, OFF);
            let (dx, dy) = from.direction(to);
            Some((one, inside(from), inside(to.moved(dx * off, dy * off))))
        })
        .collect();
    // The doubtful ones over those that fit, and their tags over all tapes.
    for &(_, from, to) in tapes.iter().filter(|(one, ..)| !one.doubtful) {
        quiet(&mut svg, from, to);
    }
    for &(_, from, to) in tapes.iter().filter(|(one, ..)| one.doubtful) {
        tape(&mut svg, from, to);
    }
    for (one, from, to) in tapes.into_iter().filter(|(one, ..)| one.doubtful) {
        let (at, left, right) = tag_place(one.spot, from, to);
        let text = signed(sheet, one.error, right - left - 10.0);
        tag(&mut svg, within(at, &text, left, right), &text);
    }
    let mut times = String::new();
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "10 to 10 000")]
    push_whole(&mut times, limit(scale / rear.scale, 1.0, 1e4).round_ties_even() as u64);
    let note = (together.exaggerated)(&times);
    svg.text("", Size::Small, Anchor::Middle, Point::new(SIZE.0 / 2.0, 257.0), &note);
    svg.finish()
}

/// The residuals that are drawn: of places that lie behind each other in the
/// section, and of repeats at one spot, the one that fits worst.
fn shown(residuals: &[Residual]) -> Vec<Residual> {
    let same = |one: Spot, other: Spot| {
        let hidden = matches!(one.group(), Group::Header | Group::Bow);
        one == other || (hidden && one.group() == other.group())
    };
    let mut shown: Vec<Residual> = Vec::with_capacity(residuals.len());
    for &one in residuals {
        match shown.iter_mut().find(|other| same(other.spot, one.spot)) {
            Some(other) => {
                let rank = |one: &Residual| (one.doubtful, one.residual.abs());
                if rank(&one) > rank(other) {
                    *other = one;
                }
            }
            None => shown.push(one),
        }
    }
    shown
}

/// From where to where a tape that fits lies at `spot`.
fn place(
    spot: Spot,
    rear: &Rear,
    cut: &Cut<'_>,
    bent: &Bent,
    scale: f64,
) -> Option<(Point, Point)> {
    let up = |x, from, to| Some((Point::new(x, from), Point::new(x, to)));
    match spot.group() {
        Group::Header => up(HEADER_AT, cut.header, STAND.skin),
        Group::Bow => up(BOW_AT, cut.bow, STAND.skin),
        Group::Loop if spot == Spot::LoopSillToRoof => up(ROOF_AT, SILL, STAND.skin),
        Group::Loop => up(STAND.bows.first().copied()?, SILL, cut.bow),
        Group::Width | Group::Height | Group::Diagonal | Group::Post => {
            let opening = rear.opening;
            let bend = |point: Point| {
                let across = (point.x - opening.left) / opening.width();
                bent.at(opening, scale, across, (opening.bottom - point.y) / opening.height())
            };
            rear.ends(spot).map(|(from, to)| (bend(from), bend(to)))
        }
    }
}

/// `point`, not so near the edge of the picture that a tape's end is cut off.
fn inside(point: Point) -> Point {
    const MARGIN: f64 = 10.0;
    Point::new(limit(point.x, MARGIN, SIZE.0 - MARGIN), limit(point.y, MARGIN, SIZE.1 - MARGIN))
}

/// Where the tag of a tape goes, and between which sides it has to stay.
fn tag_place(spot: Spot, from: Point, to: Point) -> (Point, f64, f64) {
    let rear = |at| (at, 4.0, AREA.right + 6.0);
    let section = |at| (at, HEADER_AT - 12.0, SIZE.0 - 2.0);
    match spot {
        Spot::HeightLeft => rear(from.toward(to, 0.76)),
        Spot::HeightRight => rear(from.toward(to, 0.24)),
        Spot::DiagonalRising | Spot::DiagonalFalling => rear(from.toward(to, 0.68)),
        Spot::LoopSillToRoof => section(Point::new(from.x, 150.0)),
        Spot::LoopSillToBow => section(Point::new(from.x, 178.0)),
        _ => match spot.group() {
            Group::Header => section(from.moved(0.0, 20.0)),
            Group::Bow => section(from.moved(0.0, 36.0)),
            _ => rear(from.toward(to, 0.5)),
        },
    }
}

/// Draws the body with its opening as it is, and dashed as it would be if square.
fn draw_frame(svg: &mut Svg, rear: &Rear, bent: &Bent, scale: f64) {
    let at = |across, up| bent.at(rear.opening, scale, across, up);
    // Up the left post, along the header, down the right post: enough points
    // for a bulge to show as a curve.
    let steps = || (0..=8_u8).map(|n| f64::from(n) / 8.0);
    let mut edge: Vec<Point> = steps().map(|up| at(0.0, up)).collect();
    edge.extend(steps().skip(1).map(|across| at(across, 1.0)));
    edge.extend(steps().skip(1).map(|down| at(1.0, 1.0 - down)));
    rear.draw_body(svg, &edge);
    svg.rect("edge guess", rear.opening);
    svg.path("outline", |path| {
        path.polyline(&edge).close();
    });
}

/// What the picture shows, in words.
fn account(sheet: Sheet<'_>, residuals: &[Residual], bent: &Bent) -> String {
    let (words, together) = (sheet.words(), sheet.together());
    let step = sheet.speaker.unit.step();
    let mut out = together.residuals.to_owned();
    let lean = Length::from_mm_f64(bent.lean).round_to(step);
    if lean != Length::ZERO {
        out.push(' ');
        let text = sheet.speaker.length(lean.abs());
        out.push_str(&if lean > Length::ZERO {
            (together.leans_right)(&text)
        } else {
            (together.leans_left)(&text)
        });
    }
    let mut fits = true;
    for one in residuals.iter().filter(|one| one.doubtful) {
        fits = false;
        let text = sheet.speaker.length(one.error.abs().round_to(step));
        let name = (words.spot)(one.spot);
        out.push(' ');
        out.push_str(&if one.error > Length::ZERO {
            (together.too_much)(name, &text)
        } else {
            (together.too_little)(name, &text)
        });
    }
    if fits {
        out.push(' ');
        out.push_str(together.all_fit);
    }
    out
}

/// `+1 in`, `−3/16 in`, rounded to what a tape shows.
fn signed(sheet: Sheet<'_>, error: Length, room: f64) -> String {
    let size = error.abs().round_to(sheet.speaker.unit.step());
    if size == Length::ZERO {
        return OPEN.to_owned();
    }
    let sign = if error > Length::ZERO { "+" } else { "\u{2212}" };
    let text = [sign, &sheet.drawn(size)].concat();
    if text_width(&text, Size::Value) > room { sheet.words().off_scale.to_owned() } else { text }
}
