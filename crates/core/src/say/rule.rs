//! What the rules say, as data.

use super::{Because, Message};
use crate::bounds::Limit;
use crate::length::Length;
use crate::profile::Beyond;
use crate::spot::{Dimension, Spot};

/// What a compared value is a value of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Subject {
    /// One reading.
    Reading(Spot),
    /// Height and header depth, one above the other.
    HeightAndHeader,
    /// What the header depth leaves under the bow.
    UnderBow,
    /// An ordered number of a frame that has to be built first.
    Built(Dimension),
}

/// What a rule found.
#[derive(Clone, Debug, PartialEq)]
pub enum RuleSays {
    /// A dimension was read nowhere.
    Missing(Dimension),
    /// A reading of nothing, or less.
    NotPositive {
        /// Where.
        spot: Spot,
        /// What was read.
        value: Length,
    },
    /// A value beyond a limit.
    Beyond {
        /// What is compared.
        subject: Subject,
        /// Its value.
        value: Length,
        /// The end of the limit it is beyond.
        bound: Length,
        /// Above the most, or below the least.
        above: bool,
        /// Why the limit is there.
        because: Because,
    },
    /// The header is not deeper than the bow that runs above it.
    BowFillsHeader {
        /// Header depth, as it will be.
        header: Length,
        /// Roof-bow depth.
        bow: Length,
    },
    /// Readings of one dimension lie too far apart.
    Spread {
        /// Which dimension.
        dimension: Dimension,
        /// The smallest reading.
        least: Length,
        /// The largest.
        most: Length,
        /// How far apart they may be.
        bound: Length,
        /// Why.
        because: Because,
    },
    /// Repeats at one marked spot lie too far apart.
    Repeats {
        /// Where.
        spot: Spot,
        /// The smallest reading.
        least: Length,
        /// The largest.
        most: Length,
        /// How far apart they may be.
        bound: Length,
        /// Why.
        because: Because,
    },
    /// A closing reading that a dealer asks for.
    Closing {
        /// Where.
        spot: Spot,
        /// Who asks.
        dealer: String,
    },
    /// Two dimensions look exchanged.
    Exchanged {
        /// The one that holds the other's value.
        first: Dimension,
        /// Its value.
        first_value: Length,
        /// The other.
        second: Dimension,
        /// Its value.
        second_value: Length,
    },
    /// A header depth that is less than the others by the depth of a bow.
    HeaderToBow {
        /// Where.
        spot: Spot,
        /// What was read.
        value: Length,
        /// What the other readings make it.
        expected: Length,
        /// The bow's depth.
        bow: Length,
    },
    /// The header is shallower than a door needs.
    ShallowHeader {
        /// The header's depth.
        value: Length,
        /// The least.
        least: Length,
        /// Why.
        because: Because,
    },
    /// A post is narrower than a track needs.
    NarrowPost {
        /// Which post.
        spot: Spot,
        /// Its width.
        value: Length,
        /// The least.
        least: Length,
        /// Why.
        because: Because,
    },
}

impl RuleSays {
    /// `value` against both ends of `limit`.
    #[must_use]
    pub fn beyond(subject: Subject, value: Length, limit: &Limit) -> Option<Self> {
        let (bound, above) = match (limit.least, limit.most) {
            (Some(least), _) if value < least => (least, false),
            (_, Some(most)) if value > most => (most, true),
            _ => return None,
        };
        let because = Because::Known(limit.reason);
        Some(Self::Beyond { subject, value, bound, above, because })
    }

    /// `value`, which is beyond a limit of the profile.
    #[must_use]
    pub fn ruled(subject: Subject, value: Length, beyond: Beyond) -> Self {
        let Beyond { bound, above, because, .. } = beyond;
        Self::Beyond { subject, value, bound, above, because }
    }
}

/// What to do next.
#[derive(Clone, Debug, PartialEq)]
pub enum Hint {
    /// Read a spot again.
    ReadAgain(Spot),
    /// Read a dimension that is missing.
    Read(Dimension),
    /// Read a spot that is missing.
    ReadSpot(Spot),
    /// Type this instead, if it was meant.
    DidYouMean(String),
    /// How a dimension is read, where the value looks like the wrong edge.
    HowToRead(Dimension),
    /// Put the two values in each other's fields, if they were exchanged.
    PutBack {
        /// One dimension.
        first: Dimension,
        /// The value that belongs to it.
        first_value: Length,
        /// The other.
        second: Dimension,
        /// The value that belongs to it.
        second_value: Length,
    },
    /// Build the header down.
    BuildDown(Length),
    /// Build a post out.
    BuildOut {
        /// Which post.
        spot: Spot,
        /// By how much.
        by: Length,
    },
    /// The frame is bent: have it straightened, then measure.
    Straighten,
}

impl Hint {
    /// As a list of messages.
    pub(crate) fn list<const N: usize>(hints: [Self; N]) -> Vec<Message> {
        hints.into_iter().map(Message::from).collect()
    }
}
