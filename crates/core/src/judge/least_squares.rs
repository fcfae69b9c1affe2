//! Least squares with weights: adjusted values, residuals, redundancy, Baarda's w.
//!
//! Small and dense: the normal equations N = AᵀWA of at most a few dozen unknowns,
//! by Cholesky. W. Baarda, *A testing procedure for use in geodetic networks* (1968),
//! is the source of the redundancy numbers, of w and of the least detectable bias.

use crate::short::within;

/// Baarda's critical value of |w| at a significance of 0.001: the normal quantile 0.9995.
pub const CRITICAL: f64 = 3.290_526_731;
/// Baarda's non-centrality: what shifts w so far that |w| passes [`CRITICAL`] in 80 of 100 cases.
pub const NON_CENTRALITY: f64 = 4.132_147_965;

/// A square symmetric matrix of `U` rows.
pub type Square<const U: usize> = [[f64; U]; U];

/// One observation: what was seen less what the starting values say, as a linear
/// function of the corrections to the unknowns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row<const U: usize> {
    /// Derivative of the observation with respect to each unknown.
    pub design: [f64; U],
    /// Observed less computed, in the unit of `sigma`.
    pub value: f64,
    /// Standard deviation of the observation, above zero.
    pub sigma: f64,
}

/// The sum of products of two rows.
#[must_use]
pub fn dot<const U: usize>(a: &[f64; U], b: &[f64; U]) -> f64 {
    a.iter().zip(b).map(|(x, y)| x * y).sum()
}

/// A matrix times a column.
#[must_use]
pub fn times<const U: usize>(matrix: &Square<U>, column: &[f64; U]) -> [f64; U] {
    let mut product = [0.0; U];
    for (out, row) in product.iter_mut().zip(matrix) {
        *out = dot(row, column);
    }
    product
}

/// The lower triangle L with LLᵀ = `matrix`; none if it is not positive definite.
#[must_use]
pub fn cholesky<const U: usize>(matrix: &Square<U>) -> Option<Square<U>> {
    let mut lower = [[0.0; U]; U];
    for i in 0..U {
        let (done, rest) = lower.split_at_mut(i);
        let row = rest.first_mut()?;
        let source = matrix.get(i)?;
        for (j, other) in done.iter().enumerate() {
            let so_far: f64 = row.iter().zip(other).take(j).map(|(a, b)| a * b).sum();
            *row.get_mut(j)? = (source.get(j)? - so_far) / other.get(j)?;
        }
        let so_far: f64 = row.iter().take(i).map(|a| a * a).sum();
        let pivot = source.get(i)? - so_far;
        // Also refuses NaN.
        if !(pivot > 0.0 && pivot.is_finite()) {
            return None;
        }
        *row.get_mut(i)? = pivot.sqrt();
    }
    Some(lower)
}

/// The inverse of LLᵀ from its lower triangle.
#[must_use]
pub fn inverse<const U: usize>(lower: &Square<U>) -> Option<Square<U>> {
    // Columns of M = L⁻¹, kept as rows of its transpose.
    let mut columns = [[0.0; U]; U];
    for (j, column) in columns.iter_mut().enumerate() {
        for (i, row) in lower.iter().enumerate().skip(j) {
            let so_far: f64 = row.iter().zip(column.iter()).take(i).map(|(a, b)| a * b).sum();
            let right = if i == j { 1.0 } else { 0.0 };
            *column.get_mut(i)? = (right - so_far) / row.get(i)?;
        }
    }
    // (LLᵀ)⁻¹ = MᵀM; columns[j] is column j of M.
    let mut product = [[0.0; U]; U];
    for (out, left) in product.iter_mut().zip(&columns) {
        for (cell, right) in out.iter_mut().zip(&columns) {
            *cell = dot(left, right);
        }
    }
    Some(product)
}

/// An adjusted network of `U` unknowns.
#[derive(Clone, Debug, PartialEq)]
pub struct Adjusted<const U: usize> {
    /// Corrections to the starting values.
    pub corrections: [f64; U],
    /// Their covariance: the inverse of the normal matrix.
    pub covariance: Square<U>,
    /// Logarithm of the determinant of the covariance of the *observations*
    /// (up to a constant that depends on their number only).
    pub log_det: f64,
    /// Σ (v/σ)².
    pub square_sum: f64,
}

impl<const U: usize> Adjusted<U> {
    /// Adjusts `rows`; none if they do not determine every unknown.
    #[must_use]
    pub fn of(rows: &[Row<U>]) -> Option<Self> {
        let mut normal = [[0.0; U]; U];
        let mut right = [0.0; U];
        let mut log_det = 0.0;
        for row in rows {
            let weight = 1.0 / (row.sigma * row.sigma);
            log_det += 2.0 * libm::log(row.sigma);
            let entries = normal.iter_mut().zip(right.iter_mut()).zip(&row.design);
            for ((normal_row, right_cell), a) in entries {
                // Most derivatives are nought.
                if *a != 0.0 {
                    let wa = weight * a;
                    *right_cell += wa * row.value;
                    for (cell, b) in normal_row.iter_mut().zip(&row.design) {
                        *cell += wa * b;
                    }
                }
            }
        }
        let lower = cholesky(&normal)?;
        for (i, row) in lower.iter().enumerate() {
            log_det += 2.0 * libm::log(*row.get(i)?);
        }
        let covariance = inverse(&lower)?;
        let corrections = times(&covariance, &right);
        let mut adjusted = Self { corrections, covariance, log_det, square_sum: 0.0 };
        adjusted.square_sum = rows
            .iter()
            .map(|row| {
                let v = adjusted.residual(row) / row.sigma;
                v * v
            })
            .sum();
        Some(adjusted)
    }

    /// Observed less adjusted.
    #[must_use]
    pub fn residual(&self, row: &Row<U>) -> f64 {
        row.value - dot(&row.design, &self.corrections)
    }

    /// The share of an error in this observation that shows in its own residual:
    /// 0, nothing checks it; 1, it adds nothing to what the others say.
    #[must_use]
    pub fn redundancy(&self, row: &Row<U>) -> f64 {
        let spread = dot(&row.design, &times(&self.covariance, &row.design));
        within(1.0 - spread / (row.sigma * row.sigma), 0.0, 1.0)
    }

    /// Baarda's w: the residual in units of its own standard deviation; nought
    /// where nothing checks the observation.
    #[must_use]
    pub fn w(&self, row: &Row<U>) -> f64 {
        let redundancy = self.redundancy(row);
        if redundancy < NOT_CHECKED {
            0.0
        } else {
            self.residual(row) / (row.sigma * redundancy.sqrt())
        }
    }

    /// Observed less what the others alone say: the residual over the redundancy. The residual where
    /// nothing checks it.
    #[must_use]
    pub fn error(&self, row: &Row<U>) -> f64 {
        let redundancy = self.redundancy(row);
        self.residual(row) / if redundancy < NOT_CHECKED { 1.0 } else { redundancy }
    }

    /// The least error of this observation that shows in 80 of 100 cases; none
    /// where nothing checks it.
    #[must_use]
    pub fn least_detectable(&self, row: &Row<U>) -> Option<f64> {
        let redundancy = self.redundancy(row);
        (redundancy >= NOT_CHECKED).then(|| NON_CENTRALITY * row.sigma / redundancy.sqrt())
    }
}

/// A redundancy below this is rounding error.
const NOT_CHECKED: f64 = 1e-5;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_triangle_times_its_transpose_is_the_matrix() {
        let matrix = [[4.0, 2.0, 0.6], [2.0, 5.0, 1.5], [0.6, 1.5, 3.8]];
        let lower = cholesky(&matrix).unwrap();
        for (left, row) in lower.iter().zip(&matrix) {
            for (right, cell) in lower.iter().zip(row) {
                assert!((dot(left, right) - cell).abs() < 1e-12);
            }
        }
        let inverse = inverse(&lower).unwrap();
        for (i, row) in matrix.iter().enumerate() {
            // Symmetric: its rows are its columns.
            for (j, column) in inverse.iter().enumerate() {
                let unit = f64::from(u8::from(i == j));
                assert!((dot(row, column) - unit).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn what_is_not_positive_definite_is_refused() {
        assert!(cholesky(&[[1.0, 2.0], [2.0, 1.0]]).is_none());
        assert!(cholesky(&[[0.0]]).is_none());
        assert!(cholesky(&[[f64::NAN]]).is_none());
    }

    #[test]
    fn two_readings_of_one_length_check_each_other_by_half() {
        let rows = [3.0, 5.0].map(|value| Row { design: [1.0], value, sigma: 1.0 });
        let adjusted = Adjusted::of(&rows).unwrap();
        assert!((adjusted.corrections[0] - 4.0).abs() < 1e-12);
        assert!((adjusted.redundancy(&rows[0]) - 0.5).abs() < 1e-12);
        assert!((adjusted.w(&rows[1]) - 2.0_f64.sqrt()).abs() < 1e-12);
        assert!((adjusted.error(&rows[1]) - 2.0).abs() < 1e-12);
        let least = adjusted.least_detectable(&rows[0]).unwrap();
        assert!((least - NON_CENTRALITY * 2.0_f64.sqrt()).abs() < 1e-9);
    }

    #[test]
    fn one_reading_is_checked_by_nothing() {
        let rows = [Row { design: [1.0], value: 3.0, sigma: 0.5 }];
        let adjusted = Adjusted::of(&rows).unwrap();
        assert_eq!(adjusted.w(&rows[0]), 0.0);
        assert_eq!(adjusted.error(&rows[0]), adjusted.residual(&rows[0]));
        assert_eq!(adjusted.least_detectable(&rows[0]), None);
    }
}
