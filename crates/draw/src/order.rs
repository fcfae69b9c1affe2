//! The order drawing: the rear and its header, with the four numbers large.

use crate::cut::{Cut, Stand};
use crate::dimension::tape;
use crate::glyph::{Size, text_width};
use crate::number::limit;
use crate::point::Point;
use crate::reading::OPEN;
use crate::rear::Rear;
use crate::rect::Rect;
use crate::shape::Shape;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::order::Numbers;
use hangtrue_core::{Dimension, Survey};

/// The picture's size, in drawing units.
const SIZE: (f64, f64) = (320.0, 252.0);
/// Where the rear view stands.
const AREA: Rect = Rect::new(6.0, 8.0, 198.0, 246.0);
/// Where the section through the header stands.
const STAND: Stand<'static> =
    Stand { header: (222.0, 244.0), bows: &[276.0], end: 314.0, skin: 74.0, lowest: 158.0 };
/// Where header and bow are dimensioned in it.
const HEADER_AT: f64 = 212.0;
const BOW_AT: f64 = 300.0;
/// The widest a number may be written.
const ROOM: f64 = 160.0;

/// The opening with the four ordered numbers, `numbers` of `survey`: for the
/// check, the summary and the print sheet. A number that is missing is a `?`.
#[must_use]
pub fn order(sheet: Sheet<'_>, survey: &Survey, numbers: &Numbers) -> String {
    let (words, together) = (sheet.words(), sheet.together());
    let shape = Shape::of_order(survey, numbers);
    let number = |dimension| {
        let ordered = numbers.ordered(dimension);
        ordered.map_or_else(|| OPEN.to_owned(), |length| sheet.length(length, Size::Large, ROOM))
    };
    let mut description = together.order.to_owned();
    for dimension in Dimension::ALL {
        let name = (together.dimension)(dimension);
        description.push(' ');
        description.push_str(&match numbers.ordered(dimension) {
            Some(length) => (words.reads)(name, &sheet.speaker.length(length)),
            None => (words.unread)(name),
        });
    }
    description.push_str(&sheet.caveats(&shape));
    let mut svg = Svg::new(sheet, "order", SIZE, together.order_title, &description);

    let rear = Rear::fit(&shape, AREA);
    rear.draw(&mut svg, &shape);
    let opening = rear.opening;
    let (low, up) = (0.72, 0.1);
    tape(&mut svg, opening.at(0.0, low), opening.at(1.0, low));
    tape(&mut svg, opening.at(up, 1.0), opening.at(up, 0.0));
    let cut = Cut::fit(&shape, STAND);
    detail(&mut svg, &rear, &shape, &cut);

    let mut say = |dimension, anchor, at: Point, below: f64| {
        let (text, name) = (number(dimension), (together.dimension_short)(dimension));
        // Never out of the picture, however long the number.
        let width = text_width(&text, Size::Large);
        let x = match anchor {
            Anchor::Start => at.x.min(SIZE.0 - 2.0 - width),
            Anchor::Middle => limit(at.x, width / 2.0, SIZE.0 - 2.0 - width / 2.0),
            Anchor::End => at.x.max(width + 2.0),
        };
        svg.text("halo", Size::Large, anchor, Point::new(x, at.y), &text);
        svg.text("halo", Size::Small, anchor, Point::new(x, at.y + below), name);
    };
    say(Dimension::Width, Anchor::Middle, opening.at(0.56, low).moved(0.0, -19.0), 36.0);
    say(Dimension::Height, Anchor::Start, opening.at(up, 0.2).moved(9.0, 0.0), 19.0);
    say(Dimension::Header, Anchor::End, Point::new(SIZE.0 - 4.0, STAND.lowest + 24.0), 19.0);
    say(Dimension::Bow, Anchor::End, Point::new(SIZE.0 - 4.0, 16.0), 19.0);
    if shape.limited() {
        let at = Point::new(SIZE.0 - 4.0, SIZE.1 - 11.0);
        svg.text("halo", Size::Small, Anchor::End, at, words.not_to_scale_short);
    }
    svg.finish()
}

/// The section through the header, beside the place in the rear view it is of.
fn detail(svg: &mut Svg, rear: &Rear, shape: &Shape, cut: &Cut<'_>) {
    let ring = Point::new(rear.body.right - 15.0, (rear.skin + rear.opening.top) / 2.0);
    let radius = limit((rear.opening.top - rear.skin) / 2.0 + 3.0, 6.0, 13.0);
    svg.circle("thin", ring, radius);
    let roof = Point::new(STAND.header.0, STAND.skin - 5.0);
    let (dx, dy) = ring.direction(roof);
    svg.line("thin", ring.moved(dx * radius, dy * radius), roof);
    cut.draw_below(svg, STAND.lowest + 8.0, None);
    cut.draw(svg, shape);
    for y in [STAND.skin, cut.header] {
        svg.line("thin", Point::new(HEADER_AT - 5.0, y), Point::new(STAND.header.0 - 3.0, y));
    }
    tape(svg, Point::new(HEADER_AT, cut.header), Point::new(HEADER_AT, STAND.skin));
    svg.line("thin", Point::new(285.0, cut.bow), Point::new(BOW_AT + 5.0, cut.bow));
    tape(svg, Point::new(BOW_AT, cut.bow), Point::new(BOW_AT, STAND.skin));
}
