//! A post, enlarged: at the scale of the elevation it is too narrow for a tape.

use crate::dimension::{dimension, mark, tape, within};
use crate::glyph::Size;
use crate::point::Point;
use crate::reading::Role;
use crate::rear::Rear;
use crate::rect::Rect;
use crate::shape::Shape;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::{Spot, Survey};

/// How much larger a post is drawn, and how wide it gets at most.
const ENLARGED: f64 = 5.0;
const WIDEST: f64 = 46.0;
/// The frame around it: size, and how much of its width is the post's.
const FRAME: (f64, f64) = (158.0, 56.0);
const POST: f64 = 56.0;
/// The widest a reading may be written.
const ROOM: f64 = 96.0;

/// Draws the post at `spot` enlarged in the opening, level with its place, with
/// the tape across it.
pub(crate) fn post(
    svg: &mut Svg,
    sheet: Sheet<'_>,
    survey: &Survey,
    (rear, shape): (&Rear, &Shape),
    spot: Spot,
    role: Role,
) {
    let Some((outer, inner)) = rear.ends(spot) else { return };
    let left = spot == Spot::PostLeft;
    let part = if left { shape.post_left } else { shape.post_right };
    let center = rear.opening.at(0.5, 0.0).x;
    let top = outer.y - FRAME.1 / 2.0;
    let frame = Rect::new(center - FRAME.0 / 2.0, top, center + FRAME.0 / 2.0, top + FRAME.1);
    // The post towards its own side, the reading towards the other.
    let (middle, words) = if left {
        (frame.left + POST / 2.0, frame.left + POST..frame.right)
    } else {
        (frame.right - POST / 2.0, frame.left..frame.right - POST)
    };
    let half = (part.mm * rear.scale * ENLARGED).min(WIDEST) / 2.0;
    let strip = Rect::new(middle - half, frame.top, middle + half, frame.bottom);

    // What is enlarged is ringed, and a thin line leads to the enlargement.
    let ring = outer.toward(inner, 0.5);
    let radius = (outer.distance(inner) / 2.0 + 5.0).min(16.0);
    let edge = if left { frame.left } else { frame.right };
    let toward = if left { radius } else { -radius };
    svg.line("thin", ring.moved(toward, 0.0), Point::new(edge, ring.y));
    svg.circle("thin", ring, radius);
    svg.rect("frame", frame);
    svg.rect("steel", strip);
    for across in [0.0, 1.0] {
        svg.line(part.edge(), strip.at(across, 0.0), strip.at(across, 1.0));
    }
    let (from, to) = (strip.at(0.0, 0.5), strip.at(1.0, 0.5));
    match role {
        Role::Asked => tape(svg, from, to),
        Role::Beside => dimension(svg, from, to),
    }
    let at = Point::new((words.start + words.end) / 2.0, frame.top + 18.0);
    let text = sheet.reading(survey, spot, ROOM);
    mark(svg, role, text, |text| within(at, text, words.start, words.end));
    let name = (sheet.words().place)(spot);
    svg.text("", Size::Small, Anchor::Middle, at.moved(0.0, 23.0), name);
}
