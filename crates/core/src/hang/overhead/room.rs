//! What the room overhead is reckoned from: the order, the profile, and what is assumed.

use super::{BOW_WIDTH, Bows, Curtain, Path};
use crate::length::Length;
use crate::order::Numbers;
use crate::profile;
use crate::spot::Dimension;

/// The arc, to the rollers' axes, where nothing is known of the door. Common practice, no
/// source: a door that needs no more than the least header depth turns as sharply.
pub const RADIUS: Length = Length::from_sixteenths(48);
/// From the header's underside up to where the arc begins. Common practice, no source.
pub const RISE: Length = Length::from_sixteenths(4);
/// From the rollers' axes to the panels' inner faces. Common practice, no source.
pub const OFFSET: Length = Length::from_sixteenths(16);
/// A panel's thickness. Common practice, no source.
pub const THICKNESS: Length = Length::from_sixteenths(12);
/// A panel, hinge to hinge. Common practice, no source.
pub const PANEL: Length = Length::from_sixteenths(12 * 16);
/// From the closed door's outer face to the header's inner face, which the seal fills.
/// Common practice, no source.
pub const GAP: Length = Length::from_sixteenths(4);

/// A figure that nobody gave.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Assumed {
    /// The radius of the arc.
    Radius,
    /// From the header's underside up to where the arc begins.
    Rise,
    /// From the rollers' axes to the panels' inner faces.
    Offset,
    /// A panel's thickness.
    Thickness,
    /// A panel's height.
    Panel,
    /// From the closed door to the header.
    Gap,
    /// How wide a bow is.
    BowWidth,
}

/// What is known of a door and its track; what is missing is assumed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Track {
    /// Radius of the arc, to the rollers' axes.
    pub radius: Option<Length>,
    /// From the header's underside up to where the arc begins.
    pub rise: Option<Length>,
    /// Fall of the upper track towards the rear, in degrees; level where nothing is said.
    pub slope: Option<f64>,
    /// From the rollers' axes to the panels' inner faces.
    pub offset: Option<Length>,
    /// A panel's thickness.
    pub thickness: Option<Length>,
    /// A panel, hinge to hinge.
    pub panel: Option<Length>,
    /// From the closed door's outer face to the header's inner face.
    pub gap: Option<Length>,
}

impl Track {
    /// What a dealer's profile says of a door line.
    #[must_use]
    pub fn of(door: &profile::Door) -> Self {
        Self {
            radius: door.track.radius,
            rise: door.track.rise,
            slope: door.track.slope,
            offset: door.track.offset,
            thickness: door.panel.thickness,
            panel: door.panel.height,
            gap: None,
        }
    }

    /// The same, where `other` is silent.
    #[must_use]
    pub fn under(self, other: Self) -> Self {
        Self {
            radius: other.radius.or(self.radius),
            rise: other.rise.or(self.rise),
            slope: other.slope.or(self.slope),
            offset: other.offset.or(self.offset),
            thickness: other.thickness.or(self.thickness),
            panel: other.panel.or(self.panel),
            gap: other.gap.or(self.gap),
        }
    }
}

/// The opening, the roof above it, and the door that is to run there.
#[derive(Clone, Debug, PartialEq)]
pub struct Room {
    /// Sill to header.
    pub height: Length,
    /// Header depth.
    pub header: Length,
    /// Roof-bow depth; none where it is not known.
    pub bow: Option<Length>,
    /// Radius of the arc.
    pub radius: Length,
    /// From the header's underside up to where the arc begins.
    pub rise: Length,
    /// Fall of the upper track towards the rear, in degrees.
    pub slope: f64,
    /// From the rollers' axes to the panels' inner faces.
    pub offset: Length,
    /// A panel's thickness.
    pub thickness: Length,
    /// A panel, hinge to hinge, at most.
    pub panel: Length,
    /// From the closed door's outer face to the header's inner face.
    pub gap: Length,
    /// Where the bows hang.
    pub bows: Bows,
    /// What nobody gave.
    pub assumed: Vec<Assumed>,
}

/// The highest door that is reckoned with, and the lowest panel: together some 150 panels.
const HEIGHT_MOST: Length = Length::from_mm(6000);
const PANEL_LEAST: Length = Length::from_mm(40);

impl Room {
    /// The room of an order, with what is known of the door. None without a height and a
    /// header depth, and where a height or a panel is of no door.
    #[must_use]
    pub fn of(numbers: &Numbers, track: Track) -> Option<Self> {
        let height = numbers.ordered(Dimension::Height)?;
        let header = numbers.ordered(Dimension::Header)?;
        let mut assumed = Vec::new();
        let mut take = |given: Option<Length>, usual: Length, what| {
            given.unwrap_or_else(|| {
                assumed.push(what);
                usual
            })
        };
        let room = Self {
            height,
            header,
            bow: numbers.ordered(Dimension::Bow),
            radius: take(track.radius, RADIUS, Assumed::Radius),
            rise: take(track.rise, RISE, Assumed::Rise),
            slope: track.slope.unwrap_or(0.0),
            offset: take(track.offset, OFFSET, Assumed::Offset),
            thickness: take(track.thickness, THICKNESS, Assumed::Thickness),
            panel: take(track.panel, PANEL, Assumed::Panel),
            gap: take(track.gap, GAP, Assumed::Gap),
            bows: Bows::Anywhere,
            assumed,
        };
        let real = room.height > room.panel
            && room.height <= HEIGHT_MOST
            && room.panel >= PANEL_LEAST
            && room.radius >= Length::ZERO;
        real.then_some(room)
    }

    /// The same with what is known of its bows: from the header's inner face to the first, from
    /// one to the next, and their width.
    #[must_use]
    pub fn with_bows(
        mut self,
        first: Option<Length>,
        spacing: Option<Length>,
        width: Option<Length>,
    ) -> Self {
        self.bows = Bows::of(first, spacing, width.unwrap_or(BOW_WIDTH));
        if width.is_none() && matches!(self.bows, Bows::Every { .. }) {
            self.assumed.push(Assumed::BowWidth);
        }
        self
    }

    /// The header's inner face, from the axes of the closed door's rollers, in mm.
    #[must_use]
    pub fn face(&self) -> f64 {
        -(self.offset + self.thickness + self.gap).to_mm()
    }

    /// The path of the rollers.
    #[must_use]
    pub fn path(&self) -> Path {
        Path::new((self.height + self.rise).to_mm(), self.radius.to_mm(), self.slope)
    }

    /// The door's panels: as many as the height needs, all of one height.
    #[must_use]
    pub fn curtain(&self) -> Curtain {
        let whole = self.height.nm().checked_div(self.panel.nm()).unwrap_or(1);
        let over = self.panel.times(whole) < self.height;
        let count = whole.saturating_add(i64::from(over)).max(1);
        Curtain {
            path: self.path(),
            panels: u32::try_from(count).unwrap_or(1),
            height: self.height.to_mm(),
            offset: self.offset.to_mm(),
            thickness: self.thickness.to_mm(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_door_lines_track_is_what_its_profile_says() {
        let mm = |mm| Some(Length::from_mm(mm));
        let door = profile::Door {
            track: profile::Track {
                radius: mm(300),
                rise: mm(40),
                slope: Some(1.5),
                offset: mm(25),
            },
            panel: profile::Panel { thickness: mm(19), height: mm(250), weight: Some(9_000) },
            ..profile::Door::default()
        };
        let track = Track::of(&door);
        assert_eq!((track.radius, track.rise, track.slope), (mm(300), mm(40), Some(1.5)));
        assert_eq!((track.offset, track.thickness, track.panel), (mm(25), mm(19), mm(250)));
        assert_eq!(track.gap, None, "it is measured");
    }
}
