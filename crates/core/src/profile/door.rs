//! Door lines: what each needs of the frame, and what hanging one needs to know.

use super::Words;
use crate::length::Length;

/// A line of doors that a dealer offers.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Door {
    /// Its key in files and orders.
    pub key: String,
    /// Its name.
    pub name: Words,
    /// What to say of it.
    pub note: Words,
    /// The header depth it needs.
    pub header_least: Option<Length>,
    /// The post width its track needs.
    pub post_least: Option<Length>,
    /// Its track.
    pub track: Track,
    /// Its panels.
    pub panel: Panel,
    /// How far one turn of the drum lifts the door.
    pub drum_circumference: Option<Length>,
    /// Turns left on the spring when the door is open.
    pub preload_turns: Option<f64>,
}

/// The path of the rollers: straight up, an arc, straight on under the roof.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Track {
    /// Radius of the arc, to the rollers' axes.
    pub radius: Option<Length>,
    /// From the header's underside up to where the arc begins.
    pub rise: Option<Length>,
    /// Fall of the upper track towards the rear, in degrees.
    pub slope: Option<f64>,
    /// From the rollers' axes out to the panels' inner faces.
    pub offset: Option<Length>,
}

/// A door's panels.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Panel {
    /// Inner to outer face.
    pub thickness: Option<Length>,
    /// Hinge to hinge.
    pub height: Option<Length>,
    /// Mass of a square metre, in grams.
    pub weight: Option<u32>,
}
