//! What the judge says of a survey, as a part of its [`Answer`](super::Answer).

use hangtrue_core::Dimension;
use hangtrue_core::judge::{AdjustedReading, AdjustedSize, Judgement, Likely, Next};
use hangtrue_core::say::{JudgeSays, Speaker};
use serde::Serialize;

use super::answer::Value;

/// One answer to "what went wrong".
#[derive(Clone, Debug, Serialize)]
pub struct LikelySlip {
    /// The slip's name.
    pub slip: &'static str,
    /// The most suspect reading.
    pub reading: String,
    /// What it was probably meant to be; `null` where no value stands out.
    pub value: Option<String>,
    /// Posterior probability that this reading slipped, 0 to 1.
    pub probability: f64,
}

impl LikelySlip {
    /// Below this a slip is not likely, only possible.
    pub(super) const LEAST: f64 = 0.05;

    pub(super) fn new(likely: &Likely, speaker: Speaker) -> Self {
        Self {
            slip: likely.slip.key(),
            reading: likely.spot.key(),
            value: likely.value.map(|value| value.text(speaker.unit)),
            probability: rounded(likely.posterior),
        }
    }
}

/// What all readings together make of the opening. Figures in millimetres.
#[derive(Clone, Debug, Serialize)]
pub struct Adjusted {
    /// The ordered dimensions.
    pub sizes: Vec<Size>,
    /// Every reading that counts.
    pub readings: Vec<Residual>,
}

/// An adjusted dimension.
#[derive(Clone, Debug, Serialize)]
pub struct Size {
    /// Which.
    pub dimension: &'static str,
    /// Its value, mm.
    pub mm: f64,
    /// Standard deviation, mm.
    pub sigma: f64,
}

/// A reading beside what the others make of it.
#[derive(Clone, Debug, Serialize)]
pub struct Residual {
    /// Where.
    pub reading: String,
    /// Which of the readings there, from 0.
    pub index: usize,
    /// Adjusted value, mm.
    pub mm: f64,
    /// Standard deviation of that, mm.
    pub sigma: f64,
    /// Read less adjusted, mm.
    pub residual: f64,
    /// Share of an error here that shows in the residual, 0 to 1.
    pub redundancy: f64,
    /// Baarda's w.
    pub w: f64,
    /// Least error here that shows in 80 of 100 cases, mm; `null` where nothing checks it.
    pub least_detectable: Option<f64>,
}

impl Adjusted {
    pub(super) fn new(judgement: &Judgement) -> Self {
        Self {
            sizes: judgement.sizes.iter().map(Size::new).collect(),
            readings: judgement.adjusted.iter().map(Residual::new).collect(),
        }
    }
}

impl Size {
    fn new(size: &AdjustedSize) -> Self {
        Self {
            dimension: size.dimension.key(),
            mm: rounded(size.value),
            sigma: rounded(size.sigma),
        }
    }
}

impl Residual {
    fn new(reading: &AdjustedReading) -> Self {
        Self {
            reading: reading.spot.key(),
            index: reading.index,
            mm: rounded(reading.value),
            sigma: rounded(reading.sigma),
            residual: rounded(reading.residual),
            redundancy: rounded(reading.redundancy),
            w: rounded(reading.w),
            least_detectable: reading.least_detectable.map(rounded),
        }
    }
}

/// The least slip in each ordered number that would be noticed; `null` where no other
/// reading checks it.
#[derive(Clone, Debug, Serialize)]
pub struct Unseen {
    /// Post-to-post width.
    pub width: Option<Value>,
    /// Sill-to-header height.
    pub height: Option<Value>,
    /// Header depth.
    pub header: Option<Value>,
    /// Roof-bow depth.
    pub bow: Option<Value>,
}

impl Unseen {
    pub(super) fn new(judgement: &Judgement, speaker: Speaker) -> Self {
        let least = |dimension: Dimension| {
            let least = judgement.unseen.get(dimension.index()).copied().flatten();
            // Up to the next mark of the speaker's tape.
            least.map(|least| Value::new(least.ceil_to(speaker.unit.step()), speaker))
        };
        Self {
            width: least(Dimension::Width),
            height: least(Dimension::Height),
            header: least(Dimension::Header),
            bow: least(Dimension::Bow),
        }
    }
}

/// A reading that is worth its minute.
#[derive(Clone, Debug, Serialize)]
pub struct NextReading {
    /// Where.
    pub reading: String,
    /// Whether it repeats a reading at the same marked spot.
    pub repeat: bool,
    /// Why, in one sentence.
    pub why: String,
}

impl NextReading {
    pub(super) fn new(next: &Next, speaker: Speaker) -> Self {
        let says = JudgeSays::Next { spot: next.spot, why: next.why, checks: next.checks.clone() };
        let why = speaker.say(&says.into());
        Self { reading: next.spot.key(), repeat: next.repeat, why }
    }
}

/// To a thousandth: more would be noise, and longer lines.
fn rounded(value: f64) -> f64 {
    let thousandths = (value * 1000.0).round() / 1000.0;
    // No `-0.0`.
    if thousandths == 0.0 { 0.0 } else { thousandths }
}
