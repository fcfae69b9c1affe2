//! As much of matrices as the baselines need: rows of numbers, small and dense.

/// A matrix: its rows.
pub(crate) type Matrix = Vec<Vec<f64>>;

/// Rows for columns.
pub(crate) fn transposed(matrix: &[Vec<f64>]) -> Matrix {
    let width = matrix.first().map_or(0, Vec::len);
    (0..width).map(|j| matrix.iter().filter_map(|row| row.get(j).copied()).collect()).collect()
}

/// The product of two.
pub(crate) fn product(left: &[Vec<f64>], right: &[Vec<f64>]) -> Matrix {
    let columns = transposed(right);
    let dot = |row: &[f64], column: &[f64]| row.iter().zip(column).map(|(a, b)| a * b).sum();
    left.iter().map(|row| columns.iter().map(|column| dot(row, column)).collect()).collect()
}

/// The inverse, by Gauss and Jordan with pivoting; none of a singular one.
pub(crate) fn inverse(matrix: &[Vec<f64>]) -> Option<Matrix> {
    let n = matrix.len();
    let unit = |i: usize| (0..n).map(move |j| if i == j { 1.0 } else { 0.0 });
    let mut rows: Matrix = matrix
        .iter()
        .enumerate()
        .map(|(i, row)| row.iter().copied().chain(unit(i)).collect())
        .collect();
    for i in 0..n {
        let size =
            |at: &usize| rows.get(*at).and_then(|row| row.get(i)).map_or(0.0, |cell| cell.abs());
        let pivot = (i..n).max_by(|a, b| size(a).total_cmp(&size(b)))?;
        rows.swap(i, pivot);
        let own = rows.get(i)?.get(i).copied().filter(|own| own.abs() > 1e-12)?;
        let row: Vec<f64> = rows.get(i)?.iter().map(|cell| cell / own).collect();
        for (k, other) in rows.iter_mut().enumerate() {
            if k == i {
                other.clone_from(&row);
                continue;
            }
            let factor = other.get(i).copied()?;
            for (cell, own) in other.iter_mut().zip(&row) {
                *cell -= factor * own;
            }
        }
    }
    Some(rows.into_iter().map(|row| row.into_iter().skip(n).collect()).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_matrix_times_its_inverse_is_one() {
        let matrix = vec![vec![0.0, 2.0, 1.0], vec![2.0, 0.5, 0.0], vec![1.0, 0.0, 3.0]];
        let one = product(&matrix, &inverse(&matrix).unwrap());
        for (i, row) in one.iter().enumerate() {
            for (j, cell) in row.iter().enumerate() {
                assert!((cell - if i == j { 1.0 } else { 0.0 }).abs() < 1e-12, "{one:?}");
            }
        }
        assert!(inverse(&[vec![1.0, 2.0], vec![2.0, 4.0]]).is_none());
    }
}
