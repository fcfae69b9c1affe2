//! What sizes an opening may have: flat between soft edges.
//!
//! Flat, because a prior on common sizes accuses the owner of an uncommon truck.
//! Soft, because the edges are common practice without a published source (the
//! limits in [`crate::bounds`]): a size a little beyond is unlikely, not impossible.

use super::network::Sizes;
use crate::bounds::{ABOVE_FLOOR, BODY_WIDTH, BOW_USUAL, HEADER_LEAST, POST_LEAST, UNDER_BOW};
use crate::length::Length;
use crate::profile::{Limited, Profile};

/// A flat stretch, and over how much it fades at either end, mm.
#[derive(Clone, Copy, Debug)]
struct Stretch {
    least: f64,
    fades_below: f64,
    most: f64,
    fades_above: f64,
}

/// Beyond this (in powers of e) nothing gets less likely: no size is *proof* of a slip.
const LEAST: f64 = -14.0;

impl Stretch {
    /// Logarithm of the density, nought within.
    fn log(&self, mm: f64) -> f64 {
        let below = (self.least - mm) / self.fades_below;
        let above = (mm - self.most) / self.fades_above;
        let beyond = below.max(above).max(0.0);
        // Straight near the edge, steeper further out.
        (-beyond * (1.0 + beyond / 4.0)).max(LEAST)
    }
}

/// What is known of the sizes before anything was read.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plausible {
    stretches: [Stretch; 4],
    above_floor: Stretch,
    under_bow: Stretch,
    known: [bool; 4],
}

fn mm(length: Option<Length>) -> f64 {
    length.map_or(0.0, Length::to_mm)
}

impl Plausible {
    /// For a frame that is as it will stay (`prepared`) or not yet; `known` says
    /// which sizes were read at all. A dealer's wider limit widens the flat stretch: who
    /// sells such doors measures such openings. A narrower one is the rules' to say.
    pub(super) fn new(prepared: bool, known: [bool; 4], profile: &Profile) -> Self {
        let inch = 25.4;
        let widest = mm(BODY_WIDTH.most) - 2.0 * mm(POST_LEAST.least);
        // A frame not yet prepared may have a header that is still to be built down.
        let header = if prepared { mm(HEADER_LEAST.least) } else { 3.0 * inch };
        let under = if prepared { mm(UNDER_BOW.least) } else { inch };
        let stretches = [
            Stretch {
                least: 57.0 * inch,
                fades_below: 1.0 * inch,
                most: widest,
                fades_above: 0.25 * inch,
            },
            Stretch {
                least: 57.0 * inch,
                fades_below: 1.0 * inch,
                most: 115.0 * inch,
                fades_above: 1.5 * inch,
            },
            Stretch {
                least: header,
                fades_below: 0.25 * inch,
                most: 18.0 * inch,
                fades_above: 1.5 * inch,
            },
            Stretch {
                least: mm(BOW_USUAL.least),
                fades_below: 0.08 * inch,
                most: mm(BOW_USUAL.most),
                fades_above: 0.08 * inch,
            },
        ];
        let limits = [Limited::Width, Limited::Height, Limited::Header, Limited::Bow];
        let (mut stretches, built_in) = (stretches, Profile::default());
        for (stretch, what) in stretches.iter_mut().zip(limits) {
            let (ours, theirs) = (built_in.limit(what), profile.limit(what));
            if theirs.least() < ours.least() {
                stretch.least = stretch.least.min(mm(theirs.least()));
            }
            if theirs.most() > ours.most() {
                stretch.most = stretch.most.max(mm(theirs.most()));
            }
        }
        let above_floor = Stretch {
            least: 0.0,
            fades_below: 1.0,
            most: mm(ABOVE_FLOOR.most) - 6.0 * inch,
            fades_above: 1.0 * inch,
        };
        let under_bow =
            Stretch { least: under, fades_below: 0.25 * inch, most: 1e6, fades_above: 1.0 };
        Self { stretches, above_floor, under_bow, known }
    }

    /// Logarithm of the density of `sizes`, nought where all is usual.
    pub(super) fn log(&self, sizes: &Sizes) -> f64 {
        let each: f64 = self
            .stretches
            .iter()
            .zip(sizes)
            .zip(self.known)
            .map(|((stretch, size), known)| if known { stretch.log(*size) } else { 0.0 })
            .sum();
        let [_, height, header, bow] = *sizes;
        let [_, height_known, header_known, bow_known] = self.known;
        let floor =
            if height_known && header_known { self.above_floor.log(height + header) } else { 0.0 };
        let under = if header_known && bow_known { self.under_bow.log(header - bow) } else { 0.0 };
        (each + floor + under).max(2.0 * LEAST)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn usual_sizes_are_all_alike_and_unusual_ones_fade() {
        let plausible = Plausible::new(true, [true; 4], &Profile::default());
        let flat = |w: f64, h: f64, t: f64, b: f64| plausible.log(&[w, h, t, b].map(|i| i * 25.4));
        assert!(flat(92.0, 101.0, 9.5, 1.25).abs() < 1e-9);
        assert!(flat(70.0, 72.0, 14.0, 0.75).abs() < 1e-9);
        assert!(flat(97.6, 101.0, 9.5, 1.25) < -0.5);
        assert!(flat(97.6, 101.0, 9.5, 1.25) > -3.0);
        assert!(flat(110.0, 101.0, 9.5, 1.25) <= LEAST);
        assert!(flat(92.0, 101.0, 7.0, 6.0) <= LEAST);
    }

    #[test]
    fn what_was_not_read_is_not_judged() {
        let plausible = Plausible::new(true, [true, false, true, true], &Profile::default());
        assert_eq!(plausible.log(&[2336.0, 0.0, 240.0, 32.0]), 0.0);
    }
}
