//! The proportions a picture is drawn in.

use crate::number::limit;
use hangtrue_core::order::Numbers;
use hangtrue_core::{Dimension, Length, Spot, Survey};

/// Where a proportion comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Basis {
    /// From a reading: to scale.
    Read,
    /// Nothing is read yet: a usual one.
    Assumed,
    /// A reading that does not fit in a picture: drawn as large or small as it goes.
    Limited,
}

/// One proportion.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Part {
    /// Its length, always within what can be drawn.
    pub(crate) mm: f64,
    pub(crate) basis: Basis,
}

impl Part {
    /// `reading` within `least` to `most`, or `usual`; inches.
    fn new(reading: Option<Length>, [least, usual, most]: [f64; 3]) -> Self {
        let Some(reading) = reading else {
            return Self { mm: usual * 25.4, basis: Basis::Assumed };
        };
        let mm = limit(reading.to_mm(), least * 25.4, most * 25.4);
        let fits = mm == reading.to_mm();
        Self { mm, basis: if fits { Basis::Read } else { Basis::Limited } }
    }

    pub(crate) fn assumed(self) -> bool {
        self.basis == Basis::Assumed
    }

    /// What an edge that rests on this is drawn as.
    pub(crate) fn edge(self) -> &'static str {
        if self.assumed() { "edge guess" } else { "edge" }
    }
}

/// Everything a picture of an opening is drawn from.
///
/// The usual proportions and the limits are only for drawing; they judge nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Shape {
    pub(crate) width: Part,
    pub(crate) height: Part,
    pub(crate) header: Part,
    pub(crate) bow: Part,
    pub(crate) post_left: Part,
    pub(crate) post_right: Part,
}

impl Shape {
    /// The proportions `survey` tells, the tightest reading of each dimension.
    pub(crate) fn of(survey: &Survey) -> Self {
        let tightest = |dimension| survey.tightest(dimension).map(|(_, length)| length);
        Self::new(Dimension::ALL.map(tightest), posts(survey))
    }

    /// The proportions of the opening as ordered, posts from `survey`.
    pub(crate) fn of_order(survey: &Survey, numbers: &Numbers) -> Self {
        Self::new(Dimension::ALL.map(|dimension| numbers.ordered(dimension)), posts(survey))
    }

    /// From width, height, header, bow, and the left and right post.
    pub(crate) fn new(
        [width, height, header, bow]: [Option<Length>; 4],
        [left, right]: [Option<Length>; 2],
    ) -> Self {
        Self {
            width: Part::new(width, [24.0, 92.0, 130.0]),
            height: Part::new(height, [24.0, 102.0, 150.0]),
            header: Part::new(header, [1.5, 9.5, 24.0]),
            bow: Part::new(bow, [0.375, 1.25, 6.0]),
            post_left: Part::new(left, [1.0, 4.0, 12.0]),
            post_right: Part::new(right, [1.0, 4.0, 12.0]),
        }
    }

    /// Whether some reading could not be drawn at its own length.
    pub(crate) fn limited(&self) -> bool {
        self.parts().into_iter().any(|part| part.basis == Basis::Limited)
    }

    /// Whether some proportion is only a usual one.
    pub(crate) fn guessed(&self) -> bool {
        self.parts().into_iter().any(Part::assumed)
    }

    fn parts(&self) -> [Part; 6] {
        [self.width, self.height, self.header, self.bow, self.post_left, self.post_right]
    }
}

fn posts(survey: &Survey) -> [Option<Length>; 2] {
    [Spot::PostLeft, Spot::PostRight].map(|spot| survey.lengths(spot).next())
}
