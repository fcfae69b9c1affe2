//! The section through header and roof, laid out: what it cuts and where.

use crate::hatch::hatch;
use crate::point::Point;
use crate::rect::Rect;
use crate::shape::Shape;
use crate::svg::Svg;

/// Thickness of the roof, in drawing units.
pub(crate) const ROOF: f64 = 6.0;
/// The largest scale, units per mm: a low header is not blown up beyond it.
const LARGEST: f64 = 0.42;

/// Where a section stands in its picture: places and heights in drawing units.
#[derive(Clone, Copy)]
pub(crate) struct Stand<'a> {
    /// The header from the rear face to the face towards the inside.
    pub(crate) header: (f64, f64),
    /// The middle of each bow, the first one first.
    pub(crate) bows: &'a [f64],
    /// Where the roof is broken off.
    pub(crate) end: f64,
    /// The underside of the roof skin.
    pub(crate) skin: f64,
    /// The lowest that header or bow may reach.
    pub(crate) lowest: f64,
}

/// A section, header and bows to one scale.
pub(crate) struct Cut<'a> {
    stand: Stand<'a>,
    /// The underside of the header.
    pub(crate) header: f64,
    /// The underside of the bows.
    pub(crate) bow: f64,
}

impl<'a> Cut<'a> {
    /// As large as it goes at `stand`.
    pub(crate) fn fit(shape: &Shape, stand: Stand<'a>) -> Self {
        let deepest = shape.header.mm.max(shape.bow.mm);
        let scale = ((stand.lowest - stand.skin) / deepest).min(LARGEST);
        Self {
            stand,
            header: stand.skin + shape.header.mm * scale,
            bow: stand.skin + shape.bow.mm * scale,
        }
    }

    /// Draws roof, header and bows.
    pub(crate) fn draw(&self, svg: &mut Svg, shape: &Shape) {
        let Stand { header: (back, front), bows, end, skin, .. } = self.stand;
        svg.rect("solid", Rect::new(back - 2.0, skin - ROOF, end, skin));
        let block = Rect::new(back, skin, front, self.header);
        hatch(svg, block);
        svg.path("outline", |path| {
            path.polyline(&[block.at(0.0, 1.0), block.at(0.0, 0.0)]);
            path.polyline(&[block.at(1.0, 0.0), block.at(1.0, 1.0)]);
        });
        svg.line(shape.header.edge(), block.at(0.0, 1.0), block.at(1.0, 1.0));
        let (foot, flank, side) = (15.0, 10.0, 7.0);
        for &x in bows {
            svg.path(if shape.bow.assumed() { "bow guess" } else { "bow" }, |path| {
                path.polyline(&[
                    Point::new(x - foot, skin + 1.0),
                    Point::new(x - flank, skin + 1.0),
                    Point::new(x - side, self.bow - 1.0),
                    Point::new(x + side, self.bow - 1.0),
                    Point::new(x + flank, skin + 1.0),
                    Point::new(x + foot, skin + 1.0),
                ]);
            });
        }
    }

    /// Draws the post seen beyond the cut, from the header down to a break at
    /// `down`; with `sill`, on from the break to the sill there, and the floor.
    pub(crate) fn draw_below(&self, svg: &mut Svg, down: f64, sill: Option<f64>) {
        let Stand { header: (back, front), end, .. } = self.stand;
        let break_at = |svg: &mut Svg, y: f64| {
            zigzag(svg, Point::new(back - 8.0, y), Point::new(front + 8.0, y));
        };
        for x in [back, front] {
            svg.line("thin", Point::new(x, self.header), Point::new(x, down));
        }
        break_at(svg, down);
        let Some(sill) = sill else { return };
        for x in [back, front] {
            svg.line("thin", Point::new(x, down + GAP), Point::new(x, sill));
        }
        break_at(svg, down + GAP);
        let block = Rect::new(back - 10.0, sill, front + 26.0, sill + 20.0);
        hatch(svg, block);
        svg.rect("outline", block);
        svg.line("edge", block.at(1.0, 0.0), Point::new(end, sill));
    }

    /// Draws the way of the door, closed and open: chain lines, as for what is
    /// not there yet. It is broken at `down` and stands on `sill`.
    pub(crate) fn draw_door(&self, svg: &mut Svg, down: f64, sill: f64) {
        let front = self.stand.header.1;
        let (top, bend) = (self.bow + 12.0, 34.0);
        for thick in [0.0, 7.0] {
            let (x, y, turn) = (front + 5.0 + thick, top + thick, bend - thick);
            svg.path("chain", |path| {
                path.start(Point::new(x, down))
                    .line(Point::new(x, y + turn))
                    .curve(Point::new(x, y), Point::new(x + turn, y))
                    .line(Point::new(self.stand.end, y));
            });
            svg.line("chain", Point::new(x, down + GAP), Point::new(x, sill));
        }
    }
}

/// How far apart the two lines of a break are.
const GAP: f64 = 8.0;

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
