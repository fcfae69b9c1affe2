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
const WIDEST: f64 = 62.0;
/// The frame around it.
const NARROWEST: f64 = 80.0;
const HEIGHT: f64 = 96.0;
/// The widest a reading may be written.
const ROOM: f64 = 74.0;

/// Draws the post at `spot` enlarged beside its place, with the tape across it.
pub(crate) fn post(
    svg: &mut Svg,
    sheet: Sheet<'_>,
    survey: &Survey,
    (rear, shape): (&Rear, &Shape),
    spot: Spot,
    role: Role,
) {
    let Some((outer, inner)) = rear.ends(spot) else { return };
    let opening = rear.opening;
    let center = opening.at(0.5, 0.0).x;
    let (part, left, right) = match spot {
        Spot::PostLeft => {
            (shape.post_left, (opening.left + 6.0).min(center - NARROWEST), center - 1.0)
        }
        _ => (shape.post_right, center + 1.0, (opening.right - 6.0).max(center + NARROWEST)),
    };
    let top = (outer.y - 30.0).min(rear.body.bottom - HEIGHT);
    let frame = Rect::new(left, top, right, top + HEIGHT);
    let width = (part.mm * rear.scale * ENLARGED).min(WIDEST);
    let middle = frame.at(0.5, 0.0).x;
    let strip = Rect::new(middle - width / 2.0, top, middle + width / 2.0, top + 46.0);
    // What is enlarged is ringed, and a thin line leads to the enlargement.
    let ring = outer.toward(inner, 0.5);
    svg.circle("thin", ring, 10.0);
    let near = if spot == Spot::PostLeft { (10.0, frame.left) } else { (-10.0, frame.right) };
    svg.line("thin", ring.moved(near.0, 0.0), Point::new(near.1, ring.y));
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
    let at = Point::new(middle, strip.bottom + 15.0);
    let text = sheet.reading(survey, spot, ROOM);
    mark(svg, role, text, |text| within(at, text, frame.left, frame.right));
    let name = (sheet.words().place)(spot);
    svg.text("", Size::Small, Anchor::Middle, at.moved(0.0, 22.0), name);
}
