//! What the judge says, as data.

use super::Message;
use crate::judge::{SlipKind, Why};
use crate::length::Length;
use crate::spot::{Dimension, Spot};

/// What the judge found, and what to do.
#[derive(Clone, Debug, PartialEq)]
pub enum JudgeSays {
    /// A reading does not fit the others.
    Doubtful {
        /// The suspect first; several where they are off together.
        spots: Vec<Spot>,
        /// What the suspect reads.
        value: Length,
        /// What probably went wrong, where that is clear enough to say.
        slip: Option<SlipKind>,
        /// Whether no other reading checks it: then only the usual sizes speak against it.
        alone: bool,
    },
    /// What the suspect was probably meant to be.
    DidYouMean {
        /// Where.
        spot: Spot,
        /// The probable reading.
        meant: Length,
    },
    /// Read these again.
    ReadAgain {
        /// Where, the most suspect first.
        spots: Vec<Spot>,
    },
    /// Nearly as suspect.
    OrReadAgain {
        /// Where.
        spot: Spot,
    },
    /// What the next reading is worth.
    Next {
        /// Where to read.
        spot: Spot,
        /// Why.
        why: Why,
        /// The ordered numbers that it checks.
        checks: Vec<Dimension>,
    },
    /// What would go unnoticed in an ordered number.
    Unseen {
        /// Which number.
        dimension: Dimension,
        /// The least slip that would be noticed; none where nothing checks it.
        least: Option<Length>,
        /// How many readings there are of it.
        readings: usize,
    },
}

impl From<JudgeSays> for Message {
    fn from(says: JudgeSays) -> Self {
        Self::Judge(says)
    }
}
