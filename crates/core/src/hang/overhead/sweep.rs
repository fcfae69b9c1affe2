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

impl Tight {
    /// What is left, as it is told in whole `step`s: never more than there is, and where the
    /// door strikes never nothing.
    #[must_use]
    pub fn told(&self, step: Length) -> Length {
        // Nanometres that the sums of floats leave over do not cost a step.
        let careful = (self.left + MICROMETRE).floor_to(step);
        if self.left <= Length::ZERO { careful.min(-step) } else { careful }
    }
}

const MICROMETRE: Length = Length::from_nm(1000);

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
    /// The place to look at: where the door strikes deepest, else where it is tightest overhead. To
    /// the header it is always near: it closes along it.
    #[must_use]
    pub fn tightest(&self) -> Option<&Tight> {
        let counts =
            |tight: &&Tight| tight.against != Against::Header || tight.left <= Length::ZERO;
        let places = self.tight.iter().filter(counts);
        places.reduce(|best, next| if next.left < best.left { next } else { best })
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
        // Where the open door ends.
        let far = curtain.rollers(curtain.height).last().copied().unwrap_or_default();
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
mod tests;
