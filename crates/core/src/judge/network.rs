//! The network: every reading of a survey as an equation in the same few unknowns.
//!
//! Four sizes, W, H, T (header depth) and B (roof-bow depth), and ten ways in
//! which a real frame departs from a box. The departures are unknowns too, each
//! with a pseudo-observation "nought, give or take so much".
//!
//! Diagonals enter by Euler's relation for the quadrilateral, linearised:
//! W(dW₁+dW₂) + H(dH₁+dH₂) = D(dD₁+dD₂). (The Cayley–Menger determinant says the
//! same and is ill-conditioned.)

use super::least_squares::{Adjusted, Row, dot, times};
use super::noise::Scale;
use super::reading::Reading;
use crate::spot::{Group, Spot};

/// How many unknowns there are: four sizes and ten departures.
pub(super) const UNKNOWNS: usize = 14;

/// Row of the network.
pub(super) type Equation = Row<UNKNOWNS>;

/// A departure of a frame from a box: its place among the unknowns, and its usual
/// size, sd in mm.
#[derive(Clone, Copy, Debug)]
pub(super) struct Departure {
    pub(super) unknown: usize,
    pub(super) usual: f64,
    /// Of roof, floor and bows rather than of the rear frame.
    pub(super) of_roof: bool,
}

/// The departures; sizes are assumed (no field data was to be had), and scaled by
/// what the readings say, see [`super::noise`]. Height and header are those at the
/// center, the bow is the first: there the closing reading passes.
pub(super) const DEPARTURES: [Departure; 10] = [
    Departure { unknown: 4, usual: 1.5, of_roof: false }, // taper: high and low width
    Departure { unknown: 5, usual: 1.5, of_roof: false }, // bulge: middle width
    Departure { unknown: 6, usual: 1.5, of_roof: false }, // tilt: right and left height
    Departure { unknown: 7, usual: 2.0, of_roof: false }, // sag of the header at the center
    Departure { unknown: 8, usual: 1.5, of_roof: true },  // tilt of the roof: right and left
    Departure { unknown: 9, usual: 1.8, of_roof: true },  // crown of the roof at the center
    Departure { unknown: 10, usual: 1.6, of_roof: true }, // second bow against the first
    Departure { unknown: 11, usual: 1.6, of_roof: true }, // third bow against the first
    Departure { unknown: 12, usual: 2.8, of_roof: false }, // racking: one diagonal longer, the other shorter
    Departure { unknown: 13, usual: 2.5, of_roof: true }, // roof and floor between the header and the first bow
];

/// Sizes are flat: "some length, give or take ten metres" keeps N invertible where
/// nothing was read.
const FLAT: f64 = 10_000.0;

/// The four sizes, mm, in the order of `Dimension::ALL`.
pub(super) type Sizes = [f64; 4];

/// The diagonal of an opening, mm.
pub(super) fn diagonal(sizes: &Sizes) -> f64 {
    let [w, h, _, _] = *sizes;
    (w * w + h * h).sqrt()
}

/// What a tape at `spot` would read in a frame of `sizes` without departures, and
/// the derivatives. None for the posts: nothing ties them to the opening.
pub(super) fn model(spot: Spot, sizes: &Sizes) -> Option<(f64, [f64; UNKNOWNS])> {
    let [w, h, t, b] = *sizes;
    let d = diagonal(sizes).max(1.0);
    let (value, terms): (f64, &[(usize, f64)]) = match spot {
        Spot::WidthLow => (w, &[(0, 1.0), (4, -1.0)]),
        Spot::WidthMiddle => (w, &[(0, 1.0), (5, 1.0)]),
        Spot::WidthHigh => (w, &[(0, 1.0), (4, 1.0)]),
        Spot::HeightLeft => (h, &[(1, 1.0), (6, -1.0), (7, 1.0)]),
        Spot::HeightCenter => (h, &[(1, 1.0)]),
        Spot::HeightRight => (h, &[(1, 1.0), (6, 1.0), (7, 1.0)]),
        // What the header's underside gives up, the header depth gains.
        Spot::HeaderLeft => (t, &[(2, 1.0), (6, 1.0), (7, -1.0), (8, -1.0), (9, -1.0)]),
        Spot::HeaderCenter => (t, &[(2, 1.0)]),
        Spot::HeaderRight => (t, &[(2, 1.0), (6, -1.0), (7, -1.0), (8, 1.0), (9, -1.0)]),
        Spot::BowFirst => (b, &[(3, 1.0)]),
        Spot::BowSecond => (b, &[(3, 1.0), (10, 1.0)]),
        Spot::BowThird => (b, &[(3, 1.0), (11, 1.0)]),
        Spot::DiagonalRising => (d, &[(0, w / d), (1, h / d), (7, h / d), (12, 1.0)]),
        Spot::DiagonalFalling => (d, &[(0, w / d), (1, h / d), (7, h / d), (12, -1.0)]),
        Spot::LoopSillToRoof => (h + t, &[(1, 1.0), (2, 1.0), (13, 1.0)]),
        Spot::LoopSillToBow => (h + t - b, &[(1, 1.0), (2, 1.0), (3, -1.0), (13, 1.0)]),
        Spot::PostLeft | Spot::PostRight => return None,
    };
    let mut design = [0.0; UNKNOWNS];
    for (unknown, derivative) in terms {
        if let Some(cell) = design.get_mut(*unknown) {
            *cell = *derivative;
        }
    }
    Some((value, design))
}

/// Extra scatter of a spot's reading, sd mm: a diagonal ends in corners that are
/// not sharp, a closing reading passes the header.
pub(super) fn placing(group: Group) -> f64 {
    match group {
        Group::Diagonal | Group::Loop => 1.0,
        _ => 0.0,
    }
}

/// The adjusted network of one survey under one [`Scale`] of the noise.
#[derive(Clone, Debug)]
pub(super) struct Network {
    pub(super) adjusted: Adjusted<UNKNOWNS>,
    /// One row a reading, in the order of the readings.
    pub(super) rows: Vec<Equation>,
    /// P of the readings, n × n: the inverse of their covariance with the sizes
    /// left free. Row by row.
    precision: Vec<f64>,
    /// P times the readings: what each says against the others.
    pub(super) pull: Vec<f64>,
}

impl Network {
    /// Adjusts `readings`, linearised at `start`.
    pub(super) fn of(readings: &[Reading], start: &Sizes, scale: Scale) -> Option<Self> {
        let rows: Vec<Equation> = readings
            .iter()
            .filter_map(|reading| {
                let (computed, design) = model(reading.spot, start)?;
                let sigma = reading.sigma(scale.tape);
                Some(Row { design, value: reading.mm - computed, sigma })
            })
            .collect();
        let mut all = rows.clone();
        let unit = |unknown: usize, sigma| {
            let mut design = [0.0; UNKNOWNS];
            if let Some(cell) = design.get_mut(unknown) {
                *cell = 1.0;
            }
            Row { design, value: 0.0, sigma }
        };
        all.extend((0..4).map(|size| unit(size, FLAT)));
        all.extend(DEPARTURES.map(|d| {
            let times = if d.of_roof { scale.roof } else { scale.frame };
            unit(d.unknown, d.usual * times)
        }));
        let adjusted = Adjusted::of(&all)?;
        let pull =
            rows.iter().map(|row| adjusted.residual(row) / (row.sigma * row.sigma)).collect();
        let mut precision = Vec::with_capacity(rows.len().saturating_mul(rows.len()));
        for (i, row) in rows.iter().enumerate() {
            let spread = times(&adjusted.covariance, &row.design);
            for (j, other) in rows.iter().enumerate() {
                let own = if i == j { 1.0 / (row.sigma * row.sigma) } else { 0.0 };
                let weights = row.sigma * row.sigma * other.sigma * other.sigma;
                precision.push(own - dot(&spread, &other.design) / weights);
            }
        }
        Some(Self { adjusted, rows, precision, pull })
    }

    /// P times a change of the readings.
    pub(super) fn felt(&self, change: &[f64]) -> Vec<f64> {
        let n = self.rows.len().max(1);
        let rows = self.precision.chunks_exact(n);
        rows.map(|row| row.iter().zip(change).map(|(p, c)| p * c).sum()).collect()
    }

    /// How the four adjusted sizes move when the readings change by `change`.
    pub(super) fn moves(&self, change: &[f64]) -> Sizes {
        let mut right = [0.0; UNKNOWNS];
        for (row, change) in self.rows.iter().zip(change) {
            if *change != 0.0 {
                let weight = change / (row.sigma * row.sigma);
                for (cell, a) in right.iter_mut().zip(&row.design) {
                    *cell += weight * a;
                }
            }
        }
        let all = times(&self.adjusted.covariance, &right);
        let [w, h, t, b, ..] = all;
        [w, h, t, b]
    }

    /// Logarithm of the density of the readings, up to what is the same for every scale.
    pub(super) fn evidence(&self) -> f64 {
        -0.5 * (self.adjusted.square_sum + self.adjusted.log_det)
    }
}
