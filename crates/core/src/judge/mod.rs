//! The judge: which reading is wrong, and which one reading would settle it.
//!
//! # In the words of the person with the tape
//! The steel around an opening is never quite square, a tape is read on a ladder, and
//! a wrong number costs a door. The judge looks at all readings at once. Some say the
//! same thing twice: a number read again at the same chalk mark; a diagonal, which
//! follows from width and height; the reading from the sill to the underside of a bow,
//! which is height and header less the bow. Where they do not agree, it asks: *what
//! slip would make them agree?* An inch, because the tape started at the one-inch mark?
//! Two digits changed places? If one answer stands out it is said: "Did you mean
//! 92 3/16 in?" If none does: "Read the left header again." Where the frame may simply
//! be out of square, nobody is accused. And what it *cannot* see, it says.
//!
//! # How
//! 1. [`least_squares`]: one network over all readings; unknowns are the four sizes and
//!    ten ways in which a frame departs from a box, each with a pseudo-observation.
//!    Baarda's w, redundancy numbers and least detectable errors (minimal detectable
//!    biases) come from it.
//! 2. The noise is not believed: tape (OIML R 35), the rounding this reader really does,
//!    and the frame are taken at several scales, weighed by the readings themselves.
//! 3. [`slips`]: each slip lists the readings that it would have turned into what was
//!    written. Every reading × slip, whole dimensions, exchanges, one inch on all long
//!    readings, a catch-all, and knocked frames compete by Bayes' rule, in closed form.
//!    Sizes have a flat prior with soft edges.
//! 4. The alarm: the posterior that any ordered number is off by a quarter inch or more
//!    passes [`ALARM`] (or its like). It is low because slips are rare: of those asked, most have slipped.
//! 5. What to read next: for every reading that could be taken, the share of the
//!    damaging slips still hidden that it would uncover, times what a miss costs, less
//!    what a minute costs.
//!
//! The same survey gives the same bytes everywhere: fixed order, `libm`, no clock.

pub mod least_squares;
pub mod tape;

mod evidence;
mod findings;
mod habit;
mod likely;
mod network;
mod noise;
mod pattern;
mod reading;
mod size;
mod slips;
mod told;
mod worth;

pub use findings::findings;
pub use slips::{SlipKind, Way, between};

use crate::length::Length;
use crate::profile::Profile;
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

/// The posterior of damage from which a person is asked to read again, where an ordered
/// number was read more than once. Fixed on development seeds of `tests/sim`, as the two
/// that follow.
pub const ALARM: f64 = 0.032;

/// The same where readings check one another, but nothing was read twice: how well this
/// tape reads this frame is then a guess, and more is asked for before anyone is doubted.
pub const ALARM_UNMEASURED: f64 = 0.036;

/// The same where no reading checks another. Only the sizes and the marks speak, and the
/// noise of tape and frame, which may be understated, has no part in it.
pub const ALARM_ALONE: f64 = 0.021;

/// "Did you mean …?" is said only from this posterior of the value.
pub const SURE: f64 = 0.90;

/// One answer to "what went wrong".
#[derive(Clone, Debug, PartialEq)]
pub struct Likely {
    /// The likeliest slip.
    pub slip: SlipKind,
    /// The most suspect reading's spot.
    pub spot: Spot,
    /// Which entry of the spot, struck ones counted.
    pub index: usize,
    /// What was read there.
    pub read: Length,
    /// Every spot that takes part, the suspect first: several where a whole dimension
    /// is off, two are exchanged, or every long reading shares a habit.
    pub spots: Vec<Spot>,
    /// What the suspect probably meant, as a tape shows it; only from [`SURE`].
    pub value: Option<Length>,
    /// What it meant at best guess.
    pub guess: Length,
    /// Posterior probability of just that value, 0 to 1.
    pub guess_posterior: f64,
    /// Posterior probability that this reading (or these readings) slipped, 0 to 1.
    pub posterior: f64,
}

/// The adjusted value of one reading, with what checks it. Lengths in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AdjustedReading {
    /// Where.
    pub spot: Spot,
    /// Which entry of the spot.
    pub index: usize,
    /// What all readings together make of it, mm.
    pub value: f64,
    /// Standard deviation of `value`, mm.
    pub sigma: f64,
    /// Read less adjusted, mm.
    pub residual: f64,
    /// Share of an error in this reading that shows in its residual, 0 to 1.
    pub redundancy: f64,
    /// Baarda's w.
    pub w: f64,
    /// What the reading is off from what the others alone say, mm: the residual over the redundancy.
    /// The residual itself where nothing checks it.
    pub error: f64,
    /// Least error that shows in 80 of 100 cases, mm; none where nothing checks it.
    pub least_detectable: Option<f64>,
}

/// The adjusted size of one ordered dimension, mm, and its standard deviation.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AdjustedSize {
    /// Which.
    pub dimension: Dimension,
    /// The middle of the dimension, mm.
    pub value: f64,
    /// Standard deviation of `value`, mm.
    pub sigma: f64,
}

/// Why a reading should be taken next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// An ordered number without any reading.
    Missing,
    /// The suspect, once more: it settles who is wrong.
    Settles,
    /// It checks several ordered numbers at once.
    ChecksSeveral,
    /// It checks one ordered number.
    ChecksOne,
    /// The same spot again, without looking at the first number.
    Again,
}

impl Why {
    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Missing => "missing",
            Self::Settles => "settles",
            Self::ChecksSeveral => "checks-several",
            Self::ChecksOne => "checks-one",
            Self::Again => "again",
        }
    }
}

/// A reading to take next.
#[derive(Clone, Debug, PartialEq)]
pub struct Next {
    /// Where.
    pub spot: Spot,
    /// Whether it repeats a reading at the same marked spot.
    pub repeat: bool,
    /// What it is worth, in the profile's money: damage it is expected to prevent.
    pub worth: f64,
    /// The ordered numbers that it checks.
    pub checks: Vec<Dimension>,
    /// Why.
    pub why: Why,
}

/// How a spot stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Read, and in keeping with the rest.
    Fits,
    /// Read, and suspected.
    Doubtful,
    /// An ordered number that has no reading.
    Missing,
    /// The reading that would settle it.
    Settles,
}

impl State {
    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Fits => "fits",
            Self::Doubtful => "doubtful",
            Self::Missing => "missing",
            Self::Settles => "settles",
        }
    }
}

/// All that the judge says of a survey.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Judgement {
    /// Posterior that any ordered number is off by a quarter inch or more.
    pub wrong: f64,
    /// Whether `wrong` passes [`ALARM`], [`ALARM_UNMEASURED`] or [`ALARM_ALONE`], whichever
    /// applies.
    pub alarm: bool,
    /// What went wrong, likeliest first; at most five.
    pub likely: Vec<Likely>,
    /// Every reading that counts, adjusted.
    pub adjusted: Vec<AdjustedReading>,
    /// The ordered dimensions that are known, adjusted.
    pub sizes: Vec<AdjustedSize>,
    /// For each of [`Dimension::ALL`]: the least slip of one reading that would be
    /// noticed in 80 of 100 cases; none where no other reading checks it.
    pub unseen: [Option<Length>; 4],
    /// What to read next, worth most first; empty when nothing is worth its minute.
    pub next: Vec<Next>,
    /// How each spot stands that is read, missing, or to be read next.
    pub states: Vec<(Spot, State)>,
}

/// Judges `survey`, with the costs of `profile`.
#[must_use]
pub fn judge(survey: &Survey, profile: &Profile) -> Judgement {
    let readings = reading::Readings::of(survey);
    let list = readings.list.as_slice();
    let plausible = size::Plausible::new(survey.prepared, evidence::known(list), profile);
    let Some(fit) = evidence::Fit::of(list, evidence::start(list), &plausible) else {
        return Judgement::default();
    };
    let patterns = pattern::all(&readings);
    let weighed = fit.weigh(&patterns);
    let verdict = likely::Verdict::of(&fit, &patterns, &weighed);
    let mut judgement = Judgement {
        wrong: verdict.wrong,
        alarm: verdict.wrong >= alarm_at(list),
        likely: verdict.likely,
        ..Judgement::default()
    };
    told::tell(&fit, &mut judgement);
    judgement.next =
        worth::next(survey, profile, &fit, &patterns, (&weighed, verdict.total), &judgement);
    judgement.states = told::states(survey, &judgement);
    judgement
}

/// The alarm that applies to these readings.
fn alarm_at(readings: &[reading::Reading]) -> f64 {
    let times =
        Dimension::ALL.map(|d| readings.iter().filter(|r| r.spot.dimension() == Some(d)).count());
    if times.iter().any(|count| *count > 1) {
        ALARM
    } else if times.iter().sum::<usize>() < readings.len() {
        ALARM_UNMEASURED
    } else {
        ALARM_ALONE
    }
}

#[cfg(test)]
mod tests;
