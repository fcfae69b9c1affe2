//! The side section: header, roof skin, bows, and the room for the door under them.

use crate::cut::{Cut, ROOF, Stand};
use crate::dimension::{dimension, mark, tape, within};
use crate::glyph::{Size, text_width};
use crate::point::Point;
use crate::reading::{Role, cast};
use crate::rect::Rect;
use crate::shape::Shape;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::{Group, Spot, Survey};

/// The picture's size, in drawing units.
pub(crate) const SIZE: (f64, f64) = (320.0, 268.0);
/// Where the section stands.
const STAND: Stand<'static> =
    Stand { header: (BACK, FRONT), bows: &BOWS, end: END, skin: SKIN, lowest: 126.0 };
const BACK: f64 = 94.0;
const FRONT: f64 = 120.0;
const BOWS: [f64; 3] = [170.0, 220.0, 270.0];
const END: f64 = 314.0;
const SKIN: f64 = 34.0;
/// The top of the sill.
const SILL: f64 = 230.0;
/// Where the header is dimensioned, and where the tape to the roof stands.
const HEADER_AT: f64 = 50.0;
const ROOF_AT: f64 = 140.0;
/// How far beside its bow a bow is dimensioned.
const BESIDE: f64 = 20.0;
/// Where the height is broken out.
const BREAK: f64 = 176.0;
/// The widest a reading may be written.
const ROOM: f64 = 118.0;

/// A section through header and roof from back (left) to front, its upper part
/// to scale from what `survey` tells so far, the opening below shortened; the
/// `asked` spots stand out as a tape.
///
/// Spots that only show from behind are left out; [`crate::spots`] chooses the
/// picture that shows them.
#[must_use]
pub fn section(sheet: Sheet<'_>, survey: &Survey, asked: &[Spot]) -> String {
    let words = sheet.words();
    let shape = Shape::of(survey);
    let mut description = words.section.to_owned();
    description.push_str(&sheet.account(survey, asked));
    description.push_str(&sheet.caveats(&shape));

    let mut svg = Svg::new(sheet, "section", SIZE, words.section_title, &description);
    let cut = Cut::fit(&shape, STAND);
    cut.draw_door(&mut svg, BREAK, SILL);
    cut.draw_below(&mut svg, BREAK, Some(SILL));
    cut.draw(&mut svg, &shape);
    annotate(&mut svg, sheet, &cut, asked);
    // Lines first, then words: no line crosses a reading.
    let mut cast = cast(asked);
    cast.retain(|&(spot, role)| shown(spot, role, asked));
    for &(spot, role) in &cast {
        if let Some((from, to)) = ends(&cut, spot) {
            match role {
                Role::Asked => tape(&mut svg, from, to),
                Role::Beside => dimension(&mut svg, from, to),
            }
            if spot.group() == Group::Bow {
                // A leader (ISO 128), as far as the name.
                let to = named_at(spot, from).moved(0.0, 9.0);
                svg.line("quiet", Point::new(to.x, cut.bow), to);
            }
        }
    }
    for (spot, role) in cast {
        label(&cut, &mut svg, sheet, survey, spot, role);
    }
    if shape.limited() {
        let at = Point::new(END, SILL + 12.0);
        svg.text("", Size::Small, Anchor::End, at, words.not_to_scale_short);
    }
    if asked.iter().any(|spot| spot.group() == Group::Header) {
        places(&mut svg, sheet, asked);
    }
    svg.finish()
}

/// The three places of the header lie behind each other: the first one asked for stands for all.
fn shown(spot: Spot, role: Role, asked: &[Spot]) -> bool {
    if spot.group() != Group::Header {
        return true;
    }
    let first = asked.iter().find(|other| other.group() == Group::Header);
    role == Role::Asked && first == Some(&spot)
}

/// From where to where the tape lies at `spot`; none if it is not seen from the side.
fn ends(cut: &Cut<'_>, spot: Spot) -> Option<(Point, Point)> {
    let up = |x, from, to| Some((Point::new(x, from), Point::new(x, to)));
    let [first, second, third] = BOWS;
    match spot {
        Spot::HeaderLeft | Spot::HeaderCenter | Spot::HeaderRight => {
            up(HEADER_AT, cut.header, SKIN)
        }
        Spot::BowFirst => up(first + BESIDE, cut.bow, SKIN),
        Spot::BowSecond => up(second + BESIDE, cut.bow, SKIN),
        Spot::BowThird => up(third + BESIDE, cut.bow, SKIN),
        Spot::LoopSillToRoof => up(ROOF_AT, SILL, SKIN),
        Spot::LoopSillToBow => up(first, SILL, cut.bow),
        Spot::WidthLow
        | Spot::WidthMiddle
        | Spot::WidthHigh
        | Spot::HeightLeft
        | Spot::HeightCenter
        | Spot::HeightRight
        | Spot::DiagonalRising
        | Spot::DiagonalFalling
        | Spot::PostLeft
        | Spot::PostRight => None,
    }
}

/// Where a bow that is dimensioned from `from` has its reading, and its name below.
fn named_at(spot: Spot, from: Point) -> Point {
    from.moved(-14.0, if spot == Spot::BowSecond { 80.0 } else { 34.0 })
}

fn label(cut: &Cut<'_>, svg: &mut Svg, sheet: Sheet<'_>, survey: &Survey, spot: Spot, role: Role) {
    let Some((from, to)) = ends(cut, spot) else { return };
    // Neighbours are staggered, so that two long readings stand clear of each other.
    let right = SIZE.0 - 2.0;
    let (at, left, right) = match spot {
        Spot::BowFirst => (named_at(spot, from), FRONT, BOWS[1] - 4.0),
        Spot::BowSecond | Spot::BowThird => (named_at(spot, from), FRONT, right),
        Spot::LoopSillToRoof => (Point::new(from.x, 152.0), 4.0, ROOF_AT + 10.0),
        Spot::LoopSillToBow => (Point::new(from.x, 152.0), from.x - 10.0, right),
        _ => (from.toward(to, 0.5), 4.0, right),
    };
    let text = sheet.reading(survey, spot, ROOM);
    // A loop needs no name: it ends at what it is named after.
    if spot.group() == Group::Bow {
        let name = (sheet.words().place)(spot);
        svg.text("halo", Size::Small, Anchor::Middle, at.moved(0.0, 21.0), name);
    }
    mark(svg, role, text, |text| within(at, text, left, right));
}

/// Names the parts that are not being measured, and draws extension lines from those that are.
fn annotate(svg: &mut Svg, sheet: Sheet<'_>, cut: &Cut<'_>, asked: &[Spot]) {
    let words = sheet.words();
    let small = |svg: &mut Svg, anchor, x, y, text| {
        svg.text("halo", Size::Small, anchor, Point::new(x, y), text);
    };
    small(svg, Anchor::Start, BACK - 2.0, SKIN - ROOF - 11.0, words.roof_skin);
    small(svg, Anchor::Start, FRONT + 32.0, SILL + 12.0, words.sill);
    small(svg, Anchor::Start, 6.0, SILL - 10.0, words.rear);
    small(svg, Anchor::End, END, SILL - 10.0, words.inside);
    let group = |group| asked.iter().any(|spot: &Spot| spot.group() == group);
    if group(Group::Header) {
        for y in [SKIN, cut.header] {
            svg.line("thin", Point::new(HEADER_AT - 12.0, y), Point::new(BACK - 3.0, y));
        }
    } else {
        small(svg, Anchor::End, BACK - 7.0, (SKIN + cut.header) / 2.0, words.header);
    }
    if group(Group::Bow) {
        for x in BOWS {
            let from = Point::new(x + 9.0, cut.bow);
            svg.line("thin", from, from.moved(BESIDE + 4.0, 0.0));
        }
    } else if !group(Group::Loop) {
        small(svg, Anchor::End, END, cut.bow + 31.0, words.open_door);
        let beside = BOWS[2] + 18.0;
        if beside + text_width(words.bow, Size::Small) <= SIZE.0 {
            small(svg, Anchor::Start, beside, cut.bow.max(SKIN + 8.0), words.bow);
        } else {
            // Above the roof, with a leader (ISO 128) to the bow.
            let above = SKIN - ROOF - 11.0;
            small(svg, Anchor::End, END, above, words.bow);
            let from = Point::new(BOWS[2], above + 7.0);
            svg.line("thin", from, Point::new(BOWS[2], f64::midpoint(SKIN, cut.bow)));
        }
    }
}

/// Where along the header the tape goes: a small rear view.
fn places(svg: &mut Svg, sheet: Sheet<'_>, asked: &[Spot]) {
    let body = Rect::new(186.0, 130.0, 310.0, 206.0);
    let opening = Rect::new(191.0, 149.0, 305.0, 206.0);
    svg.path("steel", |path| {
        for rect in [body, opening] {
            path.polyline(&[rect.at(0., 0.), rect.at(1., 0.), rect.at(1., 1.), rect.at(0., 1.)])
                .close();
        }
    });
    svg.rect("edge", body);
    svg.rect("edge", opening);
    for (spot, across, down) in [
        (Spot::HeaderLeft, 0.16, 18.0),
        (Spot::HeaderCenter, 0.5, 38.0),
        (Spot::HeaderRight, 0.81, 18.0),
    ] {
        let from = opening.at(across, 0.0);
        let to = Point::new(from.x, body.top);
        if asked.contains(&spot) {
            tape(svg, from, to);
        } else {
            svg.line("thin", from, to);
        }
        let name = (sheet.words().place)(spot);
        svg.text("", Size::Small, Anchor::Middle, from.moved(0.0, down), name);
    }
}
