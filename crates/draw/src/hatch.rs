//! Hatching: what the section cuts through.

use crate::point::Point;
use crate::rect::Rect;
use crate::svg::Svg;

/// Between two hatching lines, measured level, in drawing units.
const STEP: f64 = 8.0;

/// Lines rising at 45° over `rect`, as one path (ISO 128: cut faces).
pub(crate) fn hatch(svg: &mut Svg, rect: Rect) {
    let reach = rect.width() + rect.height();
    svg.rect("steel", rect);
    svg.path("hatch", |path| {
        // Each line is where x + y (from the left upper corner) is `sum`.
        let mut sum = STEP / 2.0;
        while sum < reach {
            let over = (sum - rect.height()).max(0.0);
            let from = Point::new(rect.left + over, rect.top + sum - over);
            let across = sum.min(rect.width());
            let to = Point::new(rect.left + across, rect.top + sum - across);
            path.polyline(&[from, to]);
            sum += STEP;
        }
    });
}
