//! The rear elevation: posts, header, sill, and where the tape lies.

use crate::detail;
use crate::dimension::{dimension, mark, tape, within};
use crate::glyph::Size;
use crate::point::Point;
use crate::reading::{Role, cast};
use crate::rear::Rear;
use crate::rect::Rect;
use crate::shape::Shape;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::{Group, Spot, Survey};

/// The picture's size, in drawing units.
pub(crate) const SIZE: (f64, f64) = (320.0, 268.0);
/// What is left for the body between the margins for words.
const AREA: Rect = Rect::new(64.0, 24.0, 256.0, 262.0);
/// The widest a reading may be written.
const ROOM: f64 = 118.0;

/// The rear of the body seen from behind the truck, to scale from what `survey`
/// tells so far; the `asked` spots stand out as a tape.
///
/// Spots that cannot be seen from behind are left out; [`crate::spots`] chooses
/// the picture that shows them.
#[must_use]
pub fn elevation(sheet: Sheet<'_>, survey: &Survey, asked: &[Spot]) -> String {
    let words = sheet.words();
    let shape = Shape::of(survey);
    let mut description = words.elevation.to_owned();
    description.push_str(&sheet.account(survey, asked));
    description.push_str(&sheet.caveats(&shape));

    let mut svg = Svg::new(sheet, "elevation", SIZE, words.elevation_title, &description);
    // A note below the wheels, where one is needed.
    let note = if shape.limited() { 16.0 } else { 0.0 };
    let rear = Rear::fit(&shape, Rect { bottom: AREA.bottom - note, ..AREA });
    rear.draw(&mut svg, &shape);
    // Lines first, then words: no line crosses a reading.
    let cast = cast(asked);
    for &(spot, role) in &cast {
        if spot.group() != Group::Post
            && let Some((from, to)) = rear.ends(spot)
        {
            match role {
                Role::Asked => tape(&mut svg, from, to),
                Role::Beside => dimension(&mut svg, from, to),
            }
        }
    }
    if shape.limited() {
        let at = AREA.at(0.5, 1.0).moved(0.0, -4.0);
        svg.text("", Size::Small, Anchor::Middle, at, words.not_to_scale_short);
    }
    for (spot, role) in cast {
        if spot.group() == Group::Post {
            detail::post(&mut svg, sheet, survey, (&rear, &shape), spot, role);
        } else {
            label(&mut svg, sheet, survey, &rear, spot, role);
        }
    }
    svg.finish()
}

fn label(svg: &mut Svg, sheet: Sheet<'_>, survey: &Survey, rear: &Rear, spot: Spot, role: Role) {
    let Some((from, to)) = rear.ends(spot) else { return };
    let name = (sheet.words().place)(spot);
    let (at, anchor, place) = name_at(rear, spot, from, to);
    svg.text("", Size::Small, anchor, place, name);
    let text = sheet.reading(survey, spot, ROOM);
    mark(svg, role, text, |text| {
        within(at, text, rear.opening.left + 3.0, rear.opening.right - 3.0)
    });
}

/// Where the reading of `spot` stands, and where and how its place name.
fn name_at(rear: &Rear, spot: Spot, from: Point, to: Point) -> (Point, Anchor, Point) {
    let right = rear.body.right + 8.0;
    let above = |x: f64| (Anchor::Middle, Point::new(x, rear.body.top - 11.0));
    let beside = |y: f64| (Anchor::Start, Point::new(right, y));
    let (at, (anchor, place)) = match spot {
        Spot::HeightLeft => (from.toward(to, 0.76), above(from.x)),
        Spot::HeightRight => (from.toward(to, 0.24), above(from.x)),
        Spot::HeightCenter => (from.toward(to, 0.5), above(from.x)),
        Spot::DiagonalRising => (from.toward(to, 0.68), beside(to.y + 8.0)),
        Spot::DiagonalFalling => (from.toward(to, 0.68), beside(to.y - 8.0)),
        Spot::HeaderLeft | Spot::HeaderCenter | Spot::HeaderRight => {
            (from.moved(0.0, 20.0), above(from.x))
        }
        _ => (from.toward(to, 0.5), beside(from.y)),
    };
    (at, anchor, place)
}
