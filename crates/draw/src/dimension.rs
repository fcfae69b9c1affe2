//! How a measured stretch is drawn: as a tape where it is asked for, else as a
//! dimension line (ISO 129-1 in spirit: thin, slender arrowheads, the value on the line).

use crate::glyph::{Size, text_width};
use crate::number::limit;
use crate::point::Point;
use crate::reading::{OPEN, Role};
use crate::rect::Rect;
use crate::svg::{Anchor, Svg};

/// Half the length of the bars at a tape's ends.
const END: f64 = 9.0;
/// Length and half width of an arrowhead.
const ARROW: (f64, f64) = (9.0, 2.6);
/// A stretch shorter than this has its arrowheads outside.
const SHORT: f64 = 24.0;

/// The tape from `from` to `to`, with a bar where it is read from and to.
pub(crate) fn tape(svg: &mut Svg, from: Point, to: Point) {
    svg.line("band-edge", from, to);
    svg.line("band", from, to);
    svg.line("band-marks", from, to);
    let (dx, dy) = from.direction(to);
    for end in [from, to] {
        svg.line("end", end.moved(-dy * END, dx * END), end.moved(dy * END, -dx * END));
    }
}

/// A dimension line from `from` to `to`.
pub(crate) fn dimension(svg: &mut Svg, from: Point, to: Point) {
    let (dx, dy) = from.direction(to);
    if from.distance(to) < SHORT {
        let tail = 2.0 * ARROW.0;
        svg.line("thin", from.moved(-dx * tail, -dy * tail), to.moved(dx * tail, dy * tail));
        arrow(svg, from, (dx, dy));
        arrow(svg, to, (-dx, -dy));
    } else {
        svg.line("thin", from, to);
        arrow(svg, from, (-dx, -dy));
        arrow(svg, to, (dx, dy));
    }
}

/// A tape that fits, where others do not: faint, with a tick where it was read.
pub(crate) fn quiet(svg: &mut Svg, from: Point, to: Point) {
    svg.line("quiet", from, to);
    let (dx, dy) = from.direction(to);
    svg.line("quiet", to.moved(-dy * 4.0, dx * 4.0), to.moved(dy * 4.0, -dx * 4.0));
}

/// An arrowhead with its tip at `tip`, pointing along (`dx`, `dy`).
fn arrow(svg: &mut Svg, tip: Point, (dx, dy): (f64, f64)) {
    let (length, half) = ARROW;
    let foot = tip.moved(-dx * length, -dy * length);
    svg.path("solid", |path| {
        path.polyline(&[tip, foot.moved(-dy * half, dx * half), foot.moved(dy * half, -dx * half)])
            .close();
    });
}

/// How high a tag is.
pub(crate) const TAG: f64 = 23.0;

/// The box a tag with `text` takes around `center`.
pub(crate) fn tag_box(center: Point, text: &str) -> Rect {
    let half = (text_width(text, Size::Value) / 2.0 + 5.0).max(TAG / 2.0);
    Rect::new(center.x - half, center.y - TAG / 2.0, center.x + half, center.y + TAG / 2.0)
}

/// `center`, moved sideways as far as it takes for a tag with `text` to lie
/// between `left` and `right`; in their middle if it fits nowhere.
pub(crate) fn within(center: Point, text: &str, left: f64, right: f64) -> Point {
    let half = tag_box(center, text).width() / 2.0;
    let (least, most) = (left + half, right - half);
    let x = if least > most { (left + right) / 2.0 } else { limit(center.x, least, most) };
    Point::new(x, center.y)
}

/// A reading on its tape: ink on tape yellow.
pub(crate) fn tag(svg: &mut Svg, center: Point, text: &str) {
    svg.round_rect("tag", tag_box(center, text), 3.0);
    svg.text("on", Size::Value, Anchor::Middle, center, text);
}

/// The reading of a spot, or that there is none yet; `place` says where a text goes.
pub(crate) fn mark(
    svg: &mut Svg,
    role: Role,
    reading: Option<String>,
    place: impl Fn(&str) -> Point,
) {
    match (role, reading) {
        (Role::Asked, reading) => {
            let text = reading.as_deref().unwrap_or(OPEN);
            tag(svg, place(text), text);
        }
        (Role::Beside, Some(text)) => plate(svg, place(&text), &text),
        (Role::Beside, None) => {}
    }
}

/// A reading on its dimension line: ink on paper.
pub(crate) fn plate(svg: &mut Svg, center: Point, text: &str) {
    let plate = tag_box(center, text);
    svg.rect("plate", Rect { top: plate.top + 2.5, bottom: plate.bottom - 2.5, ..plate });
    svg.text("", Size::Value, Anchor::Middle, center, text);
}
