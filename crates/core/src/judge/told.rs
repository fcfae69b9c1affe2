//! The figures behind the verdict: adjusted values, what checks them, what goes unseen.

use super::evidence::Fit;
use super::least_squares::{dot, times};
use super::{AdjustedReading, AdjustedSize, Judgement, State};
use crate::length::Length;
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

/// Fills in the figures of `judgement`.
pub(super) fn tell(fit: &Fit<'_>, judgement: &mut Judgement) {
    let Some(network) = fit.told() else { return };
    let adjusted = &network.adjusted;
    judgement.adjusted = fit
        .readings
        .iter()
        .zip(&network.rows)
        .map(|(reading, row)| {
            let residual = adjusted.residual(row);
            AdjustedReading {
                spot: reading.spot,
                index: reading.index,
                value: reading.mm - residual,
                sigma: dot(&row.design, &times(&adjusted.covariance, &row.design)).sqrt(),
                residual,
                redundancy: adjusted.redundancy(row),
                w: adjusted.w(row),
                error: adjusted.error(row),
                least_detectable: adjusted.least_detectable(row),
            }
        })
        .collect();
    let known = super::evidence::known(fit.readings);
    judgement.sizes = Dimension::ALL
        .into_iter()
        .zip(fit.sizes)
        .zip(known)
        .filter(|(_, known)| *known)
        .map(|((dimension, value), _)| {
            let row = adjusted.covariance.get(dimension.index());
            let variance = row.and_then(|row| row.get(dimension.index())).copied();
            AdjustedSize { dimension, value, sigma: variance.unwrap_or(0.0).max(0.0).sqrt() }
        })
        .collect();
    judgement.unseen = Dimension::ALL.map(|dimension| unseen(judgement, dimension));
}

/// A least detectable error beyond this is no detection at all, mm.
const HOPELESS: f64 = 150.0;

impl Judgement {
    /// Whether no other reading says anything of the one at that place.
    pub(super) fn is_unchecked(&self, spot: Spot, index: usize) -> bool {
        let mut all = self.adjusted.iter().filter(|a| a.spot == spot && a.index == index);
        all.all(|a| a.least_detectable.is_none())
    }
}

/// The least slip in any one reading of `dimension` that would be noticed, to the
/// next 1/16 in or 1 mm up; none where one of them is checked by nothing.
fn unseen(judgement: &Judgement, dimension: Dimension) -> Option<Length> {
    let of = judgement.adjusted.iter().filter(|a| a.spot.dimension() == Some(dimension));
    let mut worst = None;
    for reading in of {
        let least = reading.least_detectable.filter(|mm| *mm < HOPELESS)?;
        worst = Some(f64::max(least, worst.unwrap_or(0.0)));
    }
    worst.map(|mm| Length::from_mm_f64(mm).ceil_to(Length::SIXTEENTH))
}

/// How each spot stands.
pub(super) fn states(survey: &Survey, judgement: &Judgement) -> Vec<(Spot, State)> {
    let suspects: &[Spot] = match judgement.likely.first() {
        Some(likely) if judgement.alarm => &likely.spots,
        _ => &[],
    };
    let settles = judgement.next.first().map(|next| next.spot);
    let mut states = Vec::new();
    for spot in Spot::ALL {
        let read = survey.lengths(spot).next().is_some();
        let state = if suspects.contains(&spot) {
            State::Doubtful
        } else if settles == Some(spot) && !read {
            State::Settles
        } else if read {
            State::Fits
        } else if spot
            .dimension()
            .is_some_and(|d| d.spots().first() == Some(&spot) && survey.of(d).next().is_none())
        {
            State::Missing
        } else {
            continue;
        };
        states.push((spot, state));
    }
    states
}
