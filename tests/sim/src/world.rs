//! What is assumed of openings, frames and readers. None of it is known from the
//! field, so it is data: the judge must hold when it is something else.

use crate::rng::Rng;

/// Which openings there are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Population {
    /// Trailers, straight trucks, cutaway vans, in the shares a yard may have.
    Yard,
    /// Every size that passes for an opening, as often as any other.
    Uniform,
    /// Freight containers' door openings (ISO 668 / ISO 1496-1).
    Container,
    /// Narrow city bodies.
    City,
}

/// The nominal sizes of an opening, mm.
#[derive(Clone, Copy, Debug)]
pub struct Opening {
    /// Post-to-post width.
    pub width: f64,
    /// Sill-to-header height.
    pub height: f64,
    /// Header depth.
    pub header: f64,
    /// Roof-bow depth.
    pub bow: f64,
}

const INCH: f64 = 25.4;

impl Population {
    /// Its name.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Yard => "yard",
            Self::Uniform => "uniform",
            Self::Container => "container",
            Self::City => "city",
        }
    }

    /// One opening.
    pub fn draw(self, rng: &mut Rng) -> Opening {
        // Inches: width, height, header depth.
        let (width, height, header) = match self {
            Self::Yard => match rng.weighted(&[0.35, 0.50, 0.15]) {
                0 => ((90.0, 96.5), (98.0, 110.0), (7.2, 13.0)),
                1 => ((86.0, 95.0), (84.0, 104.0), (7.2, 13.0)),
                _ => ((76.0, 92.0), (72.0, 84.0), (7.2, 11.0)),
            },
            Self::Uniform => ((65.0, 97.0), (65.0, 115.0), (7.15, 18.0)),
            // Minimum openings, mm; real ones are a little larger.
            Self::Container => {
                let height = rng.pick(&[2261.0, 2134.0, 2566.0], 2261.0) / INCH;
                let width = 2286.0 / INCH;
                ((width, width + 2.0), (height, height + 1.5), (7.15, 12.0))
            }
            Self::City => ((64.0, 78.0), (64.0, 82.0), (7.15, 11.0)),
        };
        let mut inches = |(least, most)| rng.between(least, most) * INCH;
        Opening {
            width: inches(width),
            height: inches(height),
            header: inches(header),
            bow: inches((0.8, 1.95)),
        }
    }
}

/// What a knock bends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Knock {
    /// One departure: a post, the header, or the lean of the frame.
    One,
    /// Every departure of the rear frame.
    Frame,
    /// These, and roof, floor and bows with them.
    Everything,
}

/// How frames depart from a box and readers from the frame; sd in mm.
#[derive(Clone, Copy, Debug)]
pub struct World {
    /// Half the difference of the widths high and low.
    pub taper: f64,
    /// Of the width at the middle.
    pub bulge: f64,
    /// Half the difference of the heights right and left.
    pub tilt: f64,
    /// Of the header at the center.
    pub sag: f64,
    /// How far the header stands aside of the sill: both posts lean.
    pub racking: f64,
    /// Roof and floor between the header and the first bow.
    pub roof: f64,
    /// Of the roof skin above the header, left, center and right.
    pub header: f64,
    /// Of the bows against each other.
    pub bow: f64,
    /// Share of frames that were knocked.
    pub knocked: f64,
    /// How many times the departures of such a frame.
    pub knocked_times: f64,
    /// What a knock bends.
    pub knock: Knock,
    /// The hand and the eye.
    pub hand: f64,
    /// Of a tape, parts in a thousand of its length.
    pub scale: f64,
    /// Share of readings taken with the hook's play the wrong way, 1/16 in.
    pub hook: f64,
    /// How common readers are that stop at 1/16, 1/8, 1/4, 1/2 in (or 1, 5, 10 mm).
    pub habit: [f64; 4],
    /// Each reading by its own habit, rather than each reader.
    pub fickle: bool,
    /// Share of surveys on a metric tape.
    pub metric: f64,
    /// Share of bodies whose bows differ by design, by up to half an inch.
    pub odd_bows: f64,
}

impl Default for World {
    /// As assumed in the notes on slips.
    fn default() -> Self {
        Self {
            taper: 1.5,
            bulge: 1.5,
            tilt: 1.5,
            sag: 2.0,
            racking: 4.0,
            roof: 3.0,
            header: 1.5,
            bow: 1.0,
            knocked: 0.08,
            knocked_times: 3.0,
            knock: Knock::One,
            hand: 0.5,
            scale: 0.1,
            hook: 0.03,
            habit: [0.75, 0.18, 0.06, 0.01],
            fickle: true,
            metric: 0.1,
            odd_bows: 0.0,
        }
    }
}

impl World {
    /// Frame and tape noise `times` as large.
    #[must_use]
    pub fn noisier(self, times: f64) -> Self {
        Self {
            taper: self.taper * times,
            bulge: self.bulge * times,
            tilt: self.tilt * times,
            sag: self.sag * times,
            racking: self.racking * times,
            roof: self.roof * times,
            header: self.header * times,
            bow: self.bow * times,
            hand: self.hand * times,
            scale: self.scale * times,
            ..self
        }
    }
}
