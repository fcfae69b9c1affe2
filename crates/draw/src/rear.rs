//! The rear of the body, laid out to scale: where its parts and the tapes are.

use crate::point::Point;
use crate::rect::Rect;
use crate::shape::Shape;
use crate::svg::Svg;
use hangtrue_core::Spot;

/// Thickness of the roof over its skin, and depth of the rear sill, mm.
const ROOF: f64 = 35.0;
const SILL: f64 = 190.0;
/// How much of the wheels shows, mm, however high the floor really is.
const WHEELS: f64 = 280.0;
/// How far the outer tapes keep from the edges of the opening, of its width or height.
const INSET: f64 = 0.09;
/// How far above and below the middle the posts are measured, in drawing units:
/// their enlargements find room between.
const APART: f64 = 32.0;

/// The rear of the body, in drawing units.
pub(crate) struct Rear {
    /// Drawing units per millimetre.
    pub(crate) scale: f64,
    /// The clear opening.
    pub(crate) opening: Rect,
    /// The body's outline, roof and sill included.
    pub(crate) body: Rect,
    /// The roof skin, as a height in the picture.
    pub(crate) skin: f64,
}

impl Rear {
    /// As large as it goes in `area`, standing on its lower edge.
    pub(crate) fn fit(shape: &Shape, area: Rect) -> Self {
        let (left, right) = (shape.post_left.mm, shape.post_right.mm);
        let width = left + shape.width.mm + right;
        let height = WHEELS + SILL + shape.height.mm + shape.header.mm + ROOF;
        let scale = (area.width() / width).min(area.height() / height);
        let start = area.left + (area.width() - width * scale) / 2.0;
        let sill = area.bottom - (WHEELS + SILL) * scale;
        let opening = Rect::new(
            start + left * scale,
            sill - shape.height.mm * scale,
            start + (left + shape.width.mm) * scale,
            sill,
        );
        let skin = opening.top - shape.header.mm * scale;
        let body = Rect::new(
            start,
            skin - ROOF * scale,
            start + width * scale,
            opening.bottom + SILL * scale,
        );
        Self { scale, opening, body, skin }
    }

    /// From where to where the tape lies at `spot`; none if it is not seen from behind.
    pub(crate) fn ends(&self, spot: Spot) -> Option<(Point, Point)> {
        let opening = self.opening;
        let across = |down| Some((opening.at(0.0, down), opening.at(1.0, down)));
        let up = |across| Some((opening.at(across, 1.0), opening.at(across, 0.0)));
        let header = |across| {
            let from = opening.at(across, 0.0);
            Some((from, Point::new(from.x, self.skin)))
        };
        let post = |outer: f64, inner: f64, below: f64| {
            let y = opening.at(0.0, 0.48).y.min(self.body.bottom - 2.0 * APART) + below;
            Some((Point::new(outer, y), Point::new(inner, y)))
        };
        match spot {
            Spot::WidthLow => across(1.0 - INSET),
            Spot::WidthMiddle => across(0.5),
            Spot::WidthHigh => across(INSET),
            Spot::HeightLeft => up(INSET),
            Spot::HeightCenter => up(0.5),
            Spot::HeightRight => up(1.0 - INSET),
            Spot::HeaderLeft => header(INSET),
            Spot::HeaderCenter => header(0.5),
            Spot::HeaderRight => header(1.0 - INSET),
            Spot::DiagonalRising => Some((opening.at(0.0, 1.0), opening.at(1.0, 0.0))),
            Spot::DiagonalFalling => Some((opening.at(0.0, 0.0), opening.at(1.0, 1.0))),
            Spot::PostLeft => post(self.body.left, opening.left, -APART),
            Spot::PostRight => post(opening.right, self.body.right, APART),
            Spot::BowFirst
            | Spot::BowSecond
            | Spot::BowThird
            | Spot::LoopSillToRoof
            | Spot::LoopSillToBow => None,
        }
    }

    /// Draws the body with its clear opening: outline, posts, header, sill, wheels.
    pub(crate) fn draw(&self, svg: &mut Svg, shape: &Shape) {
        let opening = self.opening;
        self.draw_body(svg, &corners(opening));
        let edge = shape.width.edge();
        svg.line(edge, opening.at(0.0, 0.0), opening.at(0.0, 1.0));
        svg.line(edge, opening.at(1.0, 0.0), opening.at(1.0, 1.0));
        svg.line(shape.height.edge(), opening.at(0.0, 0.0), opening.at(1.0, 0.0));
    }

    /// Draws the body around an opening with the outline `hole`, whose own edges are left to the caller.
    pub(crate) fn draw_body(&self, svg: &mut Svg, hole: &[Point]) {
        let Self { scale, opening, body, .. } = *self;
        self.wheels(svg);
        svg.path("steel", |path| {
            path.polyline(&corners(body)).close().polyline(hole).close();
        });
        svg.path("outline", |path| {
            let round = (90.0 * scale).min(body.width() / 4.0).min(body.height() / 4.0);
            let (top_left, top_right) = (body.at(0.0, 0.0), body.at(1.0, 0.0));
            path.start(body.at(0.0, 1.0))
                .line(top_left.moved(0.0, round))
                .curve(top_left, top_left.moved(round, 0.0))
                .line(top_right.moved(-round, 0.0))
                .curve(top_right, top_right.moved(0.0, round))
                .line(body.at(1.0, 1.0))
                .close();
        });
        svg.line(
            "edge",
            Point::new(body.left, opening.bottom),
            Point::new(body.right, opening.bottom),
        );
        // Lamps in the sill: which end of the truck this is.
        let lamp = ((body.bottom - opening.bottom) * 0.22).min(body.width() / 20.0);
        let y = (body.bottom + opening.bottom) / 2.0;
        for (x, step) in [(body.left + 3.0 * lamp, 1.0), (body.right - 3.0 * lamp, -1.0)] {
            svg.circle("lamp", Point::new(x, y), lamp);
            svg.circle("lamp", Point::new(x + step * 2.6 * lamp, y), lamp);
        }
    }

    fn wheels(&self, svg: &mut Svg) {
        let Self { scale, body, .. } = *self;
        let ground = body.bottom + WHEELS * scale;
        let tyre = body.width() * 0.1;
        let gap = body.width() * 0.012;
        let inset = body.width() * 0.035;
        let (left, right) = (body.left + inset, body.right - inset - 2.0 * tyre - gap);
        for x in [left, left + tyre + gap, right, right + tyre + gap] {
            let tyre = Rect::new(x, body.bottom - 4.0, x + tyre, ground);
            svg.round_rect("tyre", tyre, tyre.width() * 0.22);
        }
        svg.line("thin", Point::new(body.left - 4.0, ground), Point::new(body.right + 4.0, ground));
    }
}

fn corners(rect: Rect) -> [Point; 4] {
    [rect.at(0.0, 0.0), rect.at(1.0, 0.0), rect.at(1.0, 1.0), rect.at(0.0, 1.0)]
}
