//! The side section: header, roof skin, bows, and the room for the door under them.

use crate::dimension::{dimension, mark, tape, within};
use crate::glyph::Size;
use crate::hatch::hatch;
use crate::point::Point;
use crate::reading::{Role, cast};
use crate::rect::Rect;
use crate::shape::Shape;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::{Group, Spot, Survey};

/// The picture's size, in drawing units.
pub(crate) const SIZE: (f64, f64) = (320.0, 268.0);
/// The underside of the roof skin, and the top of the sill.
const SKIN: f64 = 34.0;
const SILL: f64 = 230.0;
/// Thickness of the roof.
const ROOF: f64 = 6.0;
/// How far down a header reaches at most, and the largest scale, units per mm.
const HEADER: f64 = 92.0;
const LARGEST: f64 = 0.42;
/// The header from back to front.
const BACK: f64 = 94.0;
const FRONT: f64 = 120.0;
/// The bows, the first one first.
const BOWS: [f64; 3] = [170.0, 220.0, 270.0];
/// Where the body is broken off.
const END: f64 = 314.0;
/// Where the header is dimensioned, and where the tape to the roof stands.
const HEADER_AT: f64 = 50.0;
const ROOF_AT: f64 = 140.0;
/// How far beside its bow a bow is dimensioned.
const BESIDE: f64 = 20.0;
/// Where the height is broken out.
const BREAK: (f64, f64) = (176.0, 184.0);
/// The widest a reading may be written.
const ROOM: f64 = 112.0;

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
    let cut = Cut::of(&shape);
    cut.draw(&mut svg, &shape, sheet, asked);
    // Lines first, then words: no line crosses a reading.
    let cast: Vec<_> = cast(asked).filter(|&(spot, role)| shown(spot, role, asked)).collect();
    for &(spot, role) in &cast {
        if let Some((from, to)) = cut.ends(spot) {
            match role {
                Role::Asked => tape(&mut svg, from, to),
                Role::Beside => dimension(&mut svg, from, to),
            }
        }
    }
    for (spot, role) in cast {
        cut.label(&mut svg, sheet, survey, spot, role);
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

/// The section in drawing units.
struct Cut {
    /// The underside of the header.
    header: f64,
    /// The underside of the bows.
    bow: f64,
}

impl Cut {
    fn of(shape: &Shape) -> Self {
        let deepest = shape.header.mm.max(shape.bow.mm);
        let scale = (HEADER / deepest).min(LARGEST);
        Self { header: SKIN + shape.header.mm * scale, bow: SKIN + shape.bow.mm * scale }
    }

    /// From where to where the tape lies at `spot`; none if it is not seen from the side.
    fn ends(&self, spot: Spot) -> Option<(Point, Point)> {
        let up = |x, from, to| Some((Point::new(x, from), Point::new(x, to)));
        let [first, second, third] = BOWS;
        match spot {
            Spot::HeaderLeft | Spot::HeaderCenter | Spot::HeaderRight => {
                up(HEADER_AT, self.header, SKIN)
            }
            Spot::BowFirst => up(first + BESIDE, self.bow, SKIN),
            Spot::BowSecond => up(second + BESIDE, self.bow, SKIN),
            Spot::BowThird => up(third + BESIDE, self.bow, SKIN),
            Spot::LoopSillToRoof => up(ROOF_AT, SILL, SKIN),
            Spot::LoopSillToBow => up(first, SILL, self.bow),
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

    fn label(&self, svg: &mut Svg, sheet: Sheet<'_>, survey: &Survey, spot: Spot, role: Role) {
        let Some((from, to)) = self.ends(spot) else { return };
        // Neighbours are staggered, so that two long readings stand clear of each other.
        let (at, left) = match spot {
            Spot::BowFirst | Spot::BowThird => (from.moved(-14.0, 34.0), FRONT),
            Spot::BowSecond => (from.moved(-14.0, 80.0), FRONT),
            Spot::LoopSillToRoof => (Point::new(from.x, 152.0), FRONT - 4.0),
            Spot::LoopSillToBow => (Point::new(from.x, 202.0), FRONT - 4.0),
            _ => (from.toward(to, 0.5), 4.0),
        };
        let text = sheet.reading(survey, spot, ROOM);
        // A loop needs no name: it ends at what it is named after.
        if spot.group() == Group::Bow {
            let name = (sheet.words().place)(spot);
            svg.text("halo", Size::Small, Anchor::Middle, at.moved(0.0, 21.0), name);
        }
        mark(svg, role, text, |text| within(at, text, left, SIZE.0 - 2.0));
    }

    fn draw(&self, svg: &mut Svg, shape: &Shape, sheet: Sheet<'_>, asked: &[Spot]) {
        let Self { header, bow } = *self;
        self.door(svg);
        // The far post, seen beyond the cut, with its middle broken out.
        for x in [BACK, FRONT] {
            svg.line("thin", Point::new(x, header), Point::new(x, BREAK.0));
            svg.line("thin", Point::new(x, BREAK.1), Point::new(x, SILL));
        }
        for y in [BREAK.0, BREAK.1] {
            zigzag(svg, Point::new(BACK - 8.0, y), Point::new(FRONT + 8.0, y));
        }
        let skin = Rect::new(BACK - 2.0, SKIN - ROOF, END, SKIN);
        svg.rect("solid", skin);
        let block = Rect::new(BACK, SKIN, FRONT, header);
        hatch(svg, block);
        svg.path("outline", |path| {
            path.polyline(&[block.at(0.0, 1.0), block.at(0.0, 0.0)]);
            path.polyline(&[block.at(1.0, 0.0), block.at(1.0, 1.0)]);
        });
        svg.line(shape.header.edge(), block.at(0.0, 1.0), block.at(1.0, 1.0));
        for x in BOWS {
            let (foot, flank, side) = (15.0, 10.0, 7.0);
            svg.path(if shape.bow.assumed() { "bow guess" } else { "bow" }, |path| {
                path.polyline(&[
                    Point::new(x - foot, SKIN + 1.0),
                    Point::new(x - flank, SKIN + 1.0),
                    Point::new(x - side, bow - 1.0),
                    Point::new(x + side, bow - 1.0),
                    Point::new(x + flank, SKIN + 1.0),
                    Point::new(x + foot, SKIN + 1.0),
                ]);
            });
        }
        let sill = Rect::new(BACK - 10.0, SILL, FRONT + 26.0, SILL + 20.0);
        hatch(svg, sill);
        svg.rect("outline", sill);
        svg.line("edge", sill.at(1.0, 0.0), Point::new(END, SILL));
        let words = sheet.words();
        let small = |svg: &mut Svg, anchor, x, y, text| {
            svg.text("halo", Size::Small, anchor, Point::new(x, y), text);
        };
        small(svg, Anchor::Start, BACK - 2.0, SKIN - ROOF - 11.0, words.roof_skin);
        small(svg, Anchor::Start, FRONT + 32.0, SILL + 12.0, words.sill);
        small(svg, Anchor::Start, 6.0, SILL - 10.0, words.rear);
        small(svg, Anchor::End, END, SILL - 10.0, words.inside);
        let group = |group| asked.iter().any(|spot: &Spot| spot.group() == group);
        if !group(Group::Header) {
            small(svg, Anchor::End, BACK - 7.0, (SKIN + header) / 2.0, words.header);
        }
        if !group(Group::Bow) && !group(Group::Loop) {
            small(svg, Anchor::End, END, bow + 31.0, words.open_door);
            small(svg, Anchor::Start, BOWS[2] + 18.0, bow.max(SKIN + 8.0), words.bow);
        }
        // Extension lines: from the faces a tape is read between.
        if group(Group::Header) {
            for y in [SKIN, header] {
                svg.line("thin", Point::new(HEADER_AT - 12.0, y), Point::new(BACK - 3.0, y));
            }
        }
        if group(Group::Bow) {
            for x in BOWS {
                let from = Point::new(x + 9.0, bow);
                svg.line("thin", from, from.moved(BESIDE + 4.0, 0.0));
            }
        }
    }

    /// The way of the door, closed and open: chain lines, as for what is not there yet.
    fn door(&self, svg: &mut Svg) {
        let (near, far) = (FRONT + 5.0, FRONT + 12.0);
        let (top, under) = (self.bow + 12.0, self.bow + 19.0);
        let bend = 34.0;
        for (x, y) in [(near, top), (far, under)] {
            svg.path("chain", |path| {
                let turn = bend - (y - top);
                path.start(Point::new(x, BREAK.0))
                    .line(Point::new(x, y + turn))
                    .curve(Point::new(x, y), Point::new(x + turn, y))
                    .line(Point::new(END, y));
            });
            svg.line("chain", Point::new(x, BREAK.1), Point::new(x, SILL));
        }
    }
}

/// A break: a thin line with a zigzag in its middle (ISO 128, long break line).
fn zigzag(svg: &mut Svg, from: Point, to: Point) {
    svg.path("thin", |path| {
        path.polyline(&[
            from,
            from.toward(to, 0.4),
            from.toward(to, 0.45).moved(0.0, -4.0),
            from.toward(to, 0.55).moved(0.0, 4.0),
            from.toward(to, 0.6),
            to,
        ]);
    });
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
