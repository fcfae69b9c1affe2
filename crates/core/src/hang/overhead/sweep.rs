//! The envelope that the panels' outer faces sweep, and what it leaves.

use super::{Curtain, Panel, Place, Room};
use crate::length::Length;

/// The room a running door needs above it: panels bounce, a roof gives. Common practice, no
/// source.
pub const CLEARANCE_LEAST: Length = Length::from_sixteenths(8);

/// What the door may touch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Against {
    /// The header's inner face.
    Header,
    /// The roof skin.
    Roof,
    /// A roof bow, where the room has them.
    Bow,
}

/// Where the door comes nearest to something.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tight {
    /// To what.
    pub against: Against,
    /// How much is left; less than nothing where it would go through.
    pub left: Length,
    /// The corner of the panel that comes nearest.
    pub at: Place,
    /// With the door lifted by so much.
    pub lift: Length,
}

/// Whether it passes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fit {
    /// With room to spare.
    Passes,
    /// With less than [`CLEARANCE_LEAST`] to roof or bow.
    Tight,
    /// It does not.
    Strikes,
}

/// What the opening door sweeps.
#[derive(Clone, Debug, PartialEq)]
pub struct Swept {
    /// The nearest to the header, to the roof skin, and to the bows where they are known.
    pub tight: Vec<Tight>,
    /// The outline of the swept room on the roof's side, from the sill on.
    pub outline: Vec<Place>,
    /// How far the open door reaches into the body, from the header's inner face.
    pub reach: Length,
    /// How many positions of the door were looked at.
    pub positions: u32,
    /// How far the outline still moved when they were doubled, mm; below 0.1.
    pub moved: f64,
}

impl Swept {
    /// The tightest place of all.
    #[must_use]
    pub fn tightest(&self) -> Option<&Tight> {
        self.tight.iter().reduce(|best, next| if next.left < best.left { next } else { best })
    }

    /// Whether the door passes.
    #[must_use]
    pub fn fit(&self) -> Fit {
        let mut fit = Fit::Passes;
        for tight in &self.tight {
            if tight.left <= Length::ZERO {
                return Fit::Strikes;
            }
            if tight.against != Against::Header && tight.left < CLEARANCE_LEAST {
                fit = Fit::Tight;
            }
        }
        fit
    }
}

/// The outline may move so much, mm, when twice as many positions are looked at.
const REFINED: f64 = 0.1;
/// Positions to begin with, and at most.
const POSITIONS: u32 = 64;
const POSITIONS_MOST: u32 = 8192;
/// Places of the outline.
const STATIONS: u32 = 96;

/// Opens the door of `room` in steps that are halved until its outline moves by less than
/// 0.1 mm.
#[must_use]
pub fn sweep(room: &Room) -> Swept {
    let mut positions = POSITIONS;
    let mut seen = Seen::of(room, positions);
    loop {
        positions = positions.saturating_mul(2);
        let finer = Seen::of(room, positions);
        let moved = finer.moved(&seen);
        seen = finer;
        if moved < REFINED || positions >= POSITIONS_MOST {
            return seen.swept(room, positions, moved);
        }
    }
}

/// A place of the outline: a ray out of the curve, and how far out the door was seen on it.
struct Station {
    foot: Place,
    out: Place,
    reach: f64,
}

/// What was seen of the door.
struct Seen {
    stations: Vec<Station>,
    header: Tight,
    roof: Tight,
    bow: Tight,
    deepest: f64,
}

impl Seen {
    fn of(room: &Room, positions: u32) -> Self {
        let curtain = room.curtain();
        let mut seen = Self::new(&curtain);
        let mut before: Vec<Panel> = Vec::new();
        for step in 0..=positions {
            let lift = curtain.height * f64::from(step) / f64::from(positions);
            let now = curtain.at(lift);
            for panel in &now {
                seen.face(panel);
                seen.below_bows(room, panel, lift);
                for corner in panel.outer {
                    seen.corner(room, corner, lift);
                }
            }
            for (was, is) in before.iter().zip(&now) {
                for (was, is) in was.outer.into_iter().zip(is.outer) {
                    seen.between(was, is);
                }
            }
            before = now;
        }
        seen
    }

    fn new(curtain: &Curtain) -> Self {
        let path = curtain.path;
        let far = path.next(curtain.height, curtain.height);
        let stations = (0..=STATIONS).map(|at| {
            // Half of them on the arc and a panel before and behind it, where it matters.
            let share = f64::from(at) / f64::from(STATIONS);
            let (from, to) = (path.arc_begin() - curtain.panel(), path.arc_end() + curtain.panel());
            let along = if share < 0.2 {
                from * share * 5.0
            } else if share < 0.8 {
                from + (to - from) * (share - 0.2) / 0.6
            } else {
                to + (far - to).max(0.0) * (share - 0.8) * 5.0
            };
            let (foot, out) = (path.at(along), path.direction(along).left());
            Station { foot, out, reach: 0.0 }
        });
        let none = |against| Tight {
            against,
            left: Length::from_nm(i64::MAX),
            at: Place { x: 0.0, y: 0.0 },
            lift: Length::ZERO,
        };
        let [header, roof, bow] = [Against::Header, Against::Roof, Against::Bow].map(none);
        Self { stations: stations.collect(), header, roof, bow, deepest: 0.0 }
    }

    /// Where an outer face crosses the rays.
    fn face(&mut self, panel: &Panel) {
        let [from, to] = panel.outer;
        self.segment(from, to);
    }

    /// Where the way of a corner crosses the rays: between two positions it is all but straight.
    fn between(&mut self, was: Place, is: Place) {
        self.segment(was, is);
    }

    fn segment(&mut self, from: Place, to: Place) {
        let way = to.less(from);
        for station in &mut self.stations {
            let across = station.out.cross(way);
            if across.abs() < 1e-12 {
                continue;
            }
            let start = from.less(station.foot);
            let out = start.cross(way) / across;
            let share = start.cross(station.out) / across;
            // Foot behind the face, and not a ray that meets the door elsewhere.
            if (-1e-9..=1.0 + 1e-9).contains(&share) && out > station.reach && out < NEAR {
                station.reach = out;
            }
        }
    }

    /// What one corner leaves to the header and to the roof skin.
    fn corner(&mut self, room: &Room, corner: Place, lift: f64) {
        let face = room.face();
        let underside = room.height.to_mm();
        let below = (underside - corner.y).max(0.0);
        let beside = corner.x - face;
        let header = if below > 0.0 { (below * below + beside * beside).sqrt() } else { beside };
        let roof = (room.height + room.header).to_mm() - corner.y;
        for (tight, left) in [(&mut self.header, header), (&mut self.roof, roof)] {
            let left = Length::from_mm_f64(left);
            if left < tight.left {
                *tight = Tight { left, at: corner, lift: Length::from_mm_f64(lift), ..*tight };
            }
        }
        self.deepest = self.deepest.max(beside);
    }

    /// What an outer face leaves to the bows.
    fn below_bows(&mut self, room: &Room, panel: &Panel, lift: f64) {
        let Some(depth) = room.bow else { return };
        let under = (room.height + room.header - depth).to_mm();
        let [from, to] = panel.outer;
        let (left, at) = room.bows.left(room.face(), under, from, to);
        let left = Length::from_mm_f64(left);
        if left < self.bow.left {
            self.bow = Tight { left, at, lift: Length::from_mm_f64(lift), ..self.bow };
        }
    }

    /// The most that any place of the outline differs by.
    fn moved(&self, coarser: &Self) -> f64 {
        let pairs = self.stations.iter().zip(&coarser.stations);
        let outline =
            pairs.fold(0.0_f64, |most, (fine, coarse)| most.max((fine.reach - coarse.reach).abs()));
        let tight = |fine: &Tight, coarse: &Tight| (fine.left - coarse.left).abs().to_mm();
        let pairs = [
            (&self.header, &coarser.header),
            (&self.roof, &coarser.roof),
            (&self.bow, &coarser.bow),
        ];
        pairs.into_iter().fold(outline, |most, (fine, coarse)| most.max(tight(fine, coarse)))
    }

    fn swept(self, room: &Room, positions: u32, moved: f64) -> Swept {
        let mut tight = vec![self.header, self.roof];
        if room.bow.is_some() {
            tight.push(self.bow);
        }
        let reach = Length::from_mm_f64(self.deepest);
        let reached = self.stations.iter().filter(|station| station.reach > 0.0);
        let outline = reached.map(|station| station.foot.on(station.out, station.reach)).collect();
        Swept { tight, outline, reach, positions, moved }
    }
}

/// A face further out than this belongs to another part of the door, mm.
const NEAR: f64 = 400.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::hang::overhead::{Bows, Track};
    use proptest::prelude::*;

    fn room(header: i64, bow: Option<i64>, slope: f64, radius: i64) -> Room {
        Room {
            height: Length::from_inches(90),
            header: Length::from_inches(header),
            bow: bow.map(Length::from_sixteenths),
            radius: Length::from_inches(radius),
            rise: Length::from_inches(1),
            slope,
            offset: Length::from_inches(1),
            thickness: Length::from_sixteenths(12),
            panel: Length::from_inches(12),
            gap: Length::from_sixteenths(4),
            bows: Bows::Anywhere,
            assumed: Vec::new(),
        }
    }

    fn left(swept: &Swept, against: Against) -> f64 {
        swept.tight.iter().find(|tight| tight.against == against).unwrap().left.to_mm()
    }

    /// On a level track the highest face is rise + radius + offset + thickness above the
    /// header's underside, exactly.
    #[test]
    fn a_level_track_leaves_what_the_sum_says() {
        let swept = sweep(&room(9, Some(20), 0.0, 3));
        let above = (1.0 + 3.0 + 1.0 + 0.75) * 25.4;
        assert!((left(&swept, Against::Roof) - (9.0 * 25.4 - above)).abs() < 1e-3);
        assert!((left(&swept, Against::Bow) - (7.75 * 25.4 - above)).abs() < 1e-3);
        assert!((left(&swept, Against::Header) - 6.35).abs() < 1e-3);
        assert!(swept.moved < 0.1);
        assert_eq!(swept.fit(), Fit::Passes);
        assert_eq!(swept.tightest().unwrap().against, Against::Header);
    }

    /// A track that falls towards the rear rises into the body: the far end is tightest.
    #[test]
    fn a_sloping_track_is_tightest_where_the_open_door_ends() {
        let level = sweep(&room(9, None, 0.0, 3));
        let sloped = sweep(&room(9, None, 1.5, 3));
        let roof =
            |swept: &Swept| *swept.tight.iter().find(|t| t.against == Against::Roof).unwrap();
        assert!(roof(&sloped).left < roof(&level).left);
        assert_eq!(roof(&sloped).lift, Length::from_inches(90));
        let end = room(9, None, 1.5, 3).curtain().at(90.0 * 25.4).last().unwrap().outer[1];
        assert!((roof(&sloped).at.y - end.y).abs() < 1e-9);
    }

    /// Wholly on the arc, a panel's corners run on a circle about the arc's center with
    /// radius² = (R − sagitta + offset + thickness)² + (chord / 2)², and the sagitta of the
    /// chord is R − √(R² − (chord / 2)²).
    #[test]
    fn on_a_wide_arc_the_outline_is_the_circle_of_the_corners() {
        let room = Room { radius: Length::from_inches(40), ..room(60, None, 0.0, 40) };
        let swept = sweep(&room);
        let (radius, half) = (40.0 * 25.4, room.curtain().panel() / 2.0);
        let sagitta = radius - (radius * radius - half * half).sqrt();
        let depth = radius - sagitta + 1.75 * 25.4;
        let circle = (depth * depth + half * half).sqrt();
        let center = Place { x: radius, y: 91.0 * 25.4 };
        let middle: Vec<f64> = swept
            .outline
            .iter()
            .map(|place| place.less(center))
            .filter(|out| {
                let angle = libm::atan2(out.y, -out.x).to_degrees();
                (30.0..60.0).contains(&angle)
            })
            .map(Place::length)
            .collect();
        assert!(middle.len() > 5);
        for out in middle {
            assert!((out - circle).abs() < 0.1, "{out} {circle}");
        }
    }

    #[test]
    fn a_roof_too_low_is_struck_and_a_narrow_one_is_tight() {
        assert_eq!(sweep(&room(5, None, 0.0, 3)).fit(), Fit::Strikes);
        assert_eq!(sweep(&room(6, None, 0.0, 3)).fit(), Fit::Tight);
        assert_eq!(sweep(&room(7, Some(20), 0.0, 3)).fit(), Fit::Strikes);
    }

    /// The usual figures pass under the least header with the usual bow.
    #[test]
    fn the_assumed_door_passes_under_the_least_header() {
        let mut room = room(7, Some(20), 0.0, 3);
        room.rise = super::super::RISE;
        let track = Track::default();
        assert_eq!(track.under(Track { rise: Some(room.rise), ..track }).rise, Some(room.rise));
        assert_eq!(sweep(&room).fit(), Fit::Passes);
    }

    /// On a track that rises into the body the open door's end is highest: bows anywhere stop
    /// it, the same bows pass where none hangs there, and do not where one does.
    #[test]
    fn bows_clear_of_the_way_let_a_door_pass_that_bows_anywhere_would_stop() {
        let bare = sweep(&room(10, None, 2.0, 3));
        // 1/10 in more than what is left to the roof.
        let bow = Length::from_mm_f64(left(&bare, Against::Roof) + 2.54);
        let room = Room { bow: Some(bow), ..room(10, None, 2.0, 3) };
        let anywhere = sweep(&room);
        assert!((left(&anywhere, Against::Bow) - -2.54).abs() < 1e-3);
        assert_eq!(anywhere.fit(), Fit::Strikes);
        let inches = Length::from_inches;
        let swept = |short: i64, spacing: Option<Length>| {
            let first = Some(bare.reach - inches(short));
            sweep(&room.clone().with_bows(first, spacing, None))
        };
        // The last bow over the door ends 18 in before the door does: 18 in × tan 2° = 0.63 in
        // lower there.
        let clear = swept(20, Some(inches(30)));
        let expected = 18.0 * 25.4 * 2.0_f64.to_radians().tan() - 2.54;
        assert!((left(&clear, Against::Bow) - expected).abs() < 0.1, "{:?}", clear.tight);
        assert_eq!(clear.fit(), Fit::Passes);
        assert_eq!(swept(2, Some(inches(30))).fit(), Fit::Strikes);
        // No word of the others: there may be one at the end.
        assert_eq!(swept(20, None).fit(), Fit::Strikes);
        assert_eq!(swept(-10, None).fit(), Fit::Passes);
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(32))]

        /// Knowing where the bows hang never makes the answer worse, and never passes what a
        /// finer look would not.
        #[test]
        fn placed_bows_leave_at_least_what_bows_anywhere_leave(
            header in 7_i64..14, bow in 0_i64..64, slope in 0.0_f64..4.0, radius in 2_i64..8,
            first in 0_i64..900, spacing in 1_i64..900,
        ) {
            let careful = room(header, Some(bow), slope, radius);
            let mm = |mm| Some(Length::from_mm(mm));
            let known = careful.clone().with_bows(mm(first), mm(spacing), None);
            let partly = careful.clone().with_bows(mm(first), None, None);
            let [anywhere, from, placed] = [&careful, &partly, &known].map(sweep);
            let bow = |swept: &Swept| left(swept, Against::Bow);
            prop_assert!(bow(&from) >= bow(&anywhere) - 0.1 && bow(&placed) >= bow(&from) - 0.1);
            if anywhere.fit() == Fit::Passes {
                prop_assert!(placed.fit() != Fit::Strikes || bow(&placed) > -0.1);
            }
            // What is told is what a look eight times as fine sees.
            for (room, swept) in [(&careful, &anywhere), (&known, &placed)] {
                let finer = Seen::of(room, swept.positions * 8);
                let finer = finer.swept(room, 0, 0.0);
                for (one, fine) in swept.tight.iter().zip(&finer.tight) {
                    let off = (one.left - fine.left).abs().to_mm();
                    prop_assert!(off < 0.1, "{off} {one:?} {fine:?} {}", swept.positions);
                }
            }
        }
    }
}
