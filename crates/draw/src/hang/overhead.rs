//! The side view in motion: panels on their track, and the room they sweep.

use super::text::words;
use crate::dimension::{tag, within};
use crate::glyph::Size;
use crate::hatch::hatch;
use crate::number::limit;
use crate::point::Point;
use crate::rect::Rect;
use crate::sheet::Sheet;
use crate::svg::{Anchor, Svg};
use hangtrue_core::Length;
use hangtrue_core::hang::overhead::{Bows, Panel, Place, Room, Swept, Tight};

/// The picture's size, in drawing units.
const SIZE: (f64, f64) = (320.0, 320.0);
/// What the section has to fit in.
const AREA: Rect = Rect::new(34.0, 30.0, 314.0, 292.0);
/// The header, from its rear face to the inner one, mm.
const HEADER: f64 = 60.0;
/// Nothing is drawn nearer to the edge of the picture, however far it goes.
const EDGE: f64 = 4.0;
/// So many bows are drawn; the picture is not wide enough for more.
const BOWS_MOST: usize = 160;
/// Thickness of the roof, in drawing units.
const ROOF: f64 = 6.0;

/// Where millimetres of the side view lie in the picture.
#[derive(Clone, Copy)]
struct View {
    scale: f64,
    /// Where the rollers of the closed door stand.
    zero: f64,
    sill: f64,
}

impl View {
    /// As large as it goes: the open door's reach across, sill to roof up.
    fn fit(room: &Room, reach: f64) -> Self {
        let face = -room.face();
        let across = HEADER + reach.max(400.0) * 1.04;
        let up = (room.height + room.header).to_mm();
        let scale = (AREA.width() / across).min(AREA.height() / up);
        Self { scale, zero: AREA.left + (HEADER + face) * scale, sill: AREA.top + up * scale }
    }

    fn at(&self, place: Place) -> Point {
        let x = limit(self.zero + place.x * self.scale, EDGE, SIZE.0 - EDGE);
        Point::new(x, limit(self.sill - place.y * self.scale, EDGE, SIZE.1 - EDGE))
    }

    fn height(&self, up: Length) -> f64 {
        self.at(Place { x: 0.0, y: up.to_mm() }).y
    }
}

/// The door of `room`, lifted by `lift`, on its track, with the room it sweeps and the
/// tightest place.
#[must_use]
pub fn overhead(sheet: Sheet<'_>, room: &Room, swept: &Swept, lift: Length) -> String {
    let words = words(sheet.speaker.language);
    let unit = sheet.speaker.unit;
    let told = |length: Length| sheet.speaker.length(length.round_to(unit.step()));
    let lift = lift.max(Length::ZERO).min(room.height);
    let mut description = [words.overhead, " ", &(words.lifted)(&told(lift))].concat();
    for tight in &swept.tight {
        let say = if tight.left > Length::ZERO { words.left } else { words.through };
        description.push(' ');
        description.push_str(&say(tight.against, &told(tight.told(unit.step()).abs())));
    }
    let mut svg = Svg::new(sheet, "overhead", SIZE, words.overhead_title, &description);
    let view = View::fit(room, swept.reach.to_mm());
    frame(&mut svg, room, &view);
    let outline: Vec<Point> = swept.outline.iter().map(|place| view.at(*place)).collect();
    svg.path("chain", |path| {
        path.polyline(&outline);
    });
    track(&mut svg, room, &view);
    for panel in room.curtain().at(lift.to_mm()) {
        draw_panel(&mut svg, &view, &panel);
    }
    let small = |svg: &mut Svg, anchor, x, y, text| {
        svg.text("halo", Size::Small, anchor, Point::new(x, y), text);
    };
    let roof = view.height(room.height + room.header);
    small(&mut svg, Anchor::Start, AREA.left, roof - ROOF - 10.0, words.roof);
    small(&mut svg, Anchor::Start, 4.0, SIZE.1 - 9.0, words.rear);
    small(&mut svg, Anchor::End, SIZE.0 - 4.0, SIZE.1 - 9.0, words.inside);
    tightest(&mut svg, room, swept, &view, &|tight| {
        let left = tight.told(unit.step());
        let sign = if left < Length::ZERO { "\u{2212}" } else { "" };
        [sign, &sheet.drawn(left.abs())].concat()
    });
    svg.finish()
}

/// Roof, header, sill, floor, and the line the bows hang down to.
fn frame(svg: &mut Svg, room: &Room, view: &View) {
    let roof = view.height(room.height + room.header);
    let underside = view.height(room.height);
    let inner = view.zero + room.face() * view.scale;
    let outer = inner - HEADER * view.scale;
    svg.rect("solid", Rect::new(outer - 2.0, roof - ROOF, SIZE.0 - 2.0, roof));
    let header = Rect::new(outer, roof, inner, underside);
    hatch(svg, header);
    svg.rect("outline", header);
    let sill = Rect::new(outer, view.sill, inner + 14.0, view.sill + 12.0);
    hatch(svg, sill);
    svg.rect("outline", sill);
    svg.line("edge", sill.at(1.0, 0.0), Point::new(SIZE.0 - 2.0, view.sill));
    if let Some(depth) = room.bow {
        bows(svg, room, view, depth);
    }
}

/// Bows where they hang; a line at their undersides where they may hang anywhere.
fn bows(svg: &mut Svg, room: &Room, view: &View, depth: Length) {
    let roof = view.height(room.height + room.header);
    let under = view.height(room.height + room.header - depth);
    let face = -room.face();
    let at = |from_header: Length| view.zero + (from_header.to_mm() - face) * view.scale;
    let end = SIZE.0 - 2.0;
    let anywhere = |svg: &mut Svg, from: f64| {
        svg.line("guess edge", Point::new(from, under), Point::new(end, under));
    };
    match room.bows {
        Bows::Anywhere => anywhere(svg, at(Length::ZERO)),
        Bows::From(first) => {
            let from = at(first).min(end);
            svg.line("guess edge", Point::new(from, roof), Point::new(from, under));
            anywhere(svg, from);
        }
        Bows::Every { first, spacing, width } => {
            let (step, wide) = (spacing.to_mm() * view.scale, width.to_mm() * view.scale);
            let mut left = at(first);
            // Nearer to each other than a line is wide, they are a band.
            for _ in 0..BOWS_MOST {
                if left >= end {
                    break;
                }
                svg.rect("outline", Rect::new(left, roof, (left + wide).min(end), under));
                left += step.max(2.0);
            }
        }
    }
}

/// The rollers' path, as far as the open door reaches.
fn track(svg: &mut Svg, room: &Room, view: &View) {
    let path = room.path();
    let (begin, end) = (path.arc_begin(), path.arc_end());
    let mut places = vec![path.at(0.0)];
    places.extend((0..=12_u8).map(|n| path.at(begin + (end - begin) * f64::from(n) / 12.0)));
    places.push(path.at(end + room.height.to_mm()));
    let points: Vec<Point> = places.into_iter().map(|place| view.at(place)).collect();
    svg.path("thin", |path| {
        path.polyline(&points);
    });
}

fn draw_panel(svg: &mut Svg, view: &View, panel: &Panel) {
    let ([inner, inner_up], [outer, outer_up]) = (panel.inner, panel.outer);
    let corners = [inner, inner_up, outer_up, outer].map(|place| view.at(place));
    svg.path("panel", |path| {
        path.polyline(&corners).close();
    });
    for roller in panel.rollers {
        svg.circle("solid", view.at(roller), 2.2);
    }
}

/// The place to look at: a tag, and a line to it.
fn tightest(
    svg: &mut Svg,
    room: &Room,
    swept: &Swept,
    view: &View,
    told: &dyn Fn(&Tight) -> String,
) {
    let Some(tight) = swept.tightest() else { return };
    let at = view.at(tight.at);
    let text = told(tight);
    let low = view.height(room.height) + 46.0;
    let center = within(Point::new(at.x, low), &text, 40.0, SIZE.0 - 6.0);
    svg.line("thin", at, Point::new(at.x.max(44.0), low));
    svg.circle("tag", at, 3.5);
    tag(svg, center, &text);
}
