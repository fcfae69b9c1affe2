//! Identities of plane geometry, as outside checks of the arithmetic by which an
//! opening is judged.
//!
//! Heron's formula in Kahan's stable form, and the Cayley–Menger determinant
//! (288 V² of four points): classical; the values are computed from the stated
//! formulas.

// A panic here is a failed test.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::needless_range_loop)]

use hangtrue_core::Length;

/// Area of a triangle by Heron's formula, sides sorted as Kahan advises.
fn heron(sides: [f64; 3]) -> f64 {
    let mut s = sides;
    s.sort_by(|a, b| b.total_cmp(a));
    let [a, b, c] = s;
    0.25 * ((a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c))).sqrt()
}

/// Determinant by Gaussian elimination with pivoting.
fn determinant<const N: usize>(mut m: [[f64; N]; N]) -> f64 {
    let mut result = 1.0;
    for i in 0..N {
        let pivot = (i..N).max_by(|a, b| m[*a][i].abs().total_cmp(&m[*b][i].abs())).unwrap();
        if m[pivot][i] == 0.0 {
            return 0.0;
        }
        if pivot != i {
            m.swap(pivot, i);
            result = -result;
        }
        result *= m[i][i];
        for row in i + 1..N {
            let factor = m[row][i] / m[i][i];
            for column in i..N {
                m[row][column] -= factor * m[i][column];
            }
        }
    }
    result
}

/// The Cayley–Menger determinant of four points: distances ab, ac, ad, bc, bd, cd.
fn cayley_menger([ab, ac, ad, bc, bd, cd]: [f64; 6]) -> f64 {
    let q = |x: f64| x * x;
    determinant([
        [0.0, 1.0, 1.0, 1.0, 1.0],
        [1.0, 0.0, q(ab), q(ac), q(ad)],
        [1.0, q(ab), 0.0, q(bc), q(bd)],
        [1.0, q(ac), q(bc), 0.0, q(cd)],
        [1.0, q(ad), q(bd), q(cd), 0.0],
    ])
}

#[test]
fn heron_of_whole_triangles_and_of_a_needle() {
    assert!((heron([3.0, 4.0, 5.0]) - 6.0).abs() < 1e-12);
    assert!((heron([13.0, 14.0, 15.0]) - 84.0).abs() < 1e-10);
    // The needle on which the textbook form fails (Kahan): 9.9999999895.
    assert!((heron([100_000.0, 99_999.999_79, 0.000_29]) - 9.999_999_989_5).abs() < 1e-7);
}

#[test]
fn cayley_menger_of_a_tetrahedron_and_of_a_flat_rectangle() {
    assert!((cayley_menger([1.0; 6]) - 4.0).abs() < 1e-12);
    let rectangle = |second| cayley_menger([3.0, 5.0, 4.0, 4.0, second, 3.0]);
    assert!(rectangle(5.0).abs() < 1e-9);
    assert!((rectangle(5.01) - -115.816_200_5).abs() < 1e-6);
}

/// An opening's diagonals as the core holds them close the same plane figure that
/// Heron measures: two triangles on one diagonal make the rectangle's area.
#[test]
fn two_triangles_make_the_opening() {
    for (width, height) in [(92 * 16 + 3, 101 * 16 + 8), (54 * 16, 122 * 16), (96 * 16, 96 * 16)] {
        let [w, h] = [width, height].map(|n| Length::from_sixteenths(n).to_mm());
        let diagonal = Length::from_mm_f64(w.hypot(h)).to_mm();
        let area = 2.0 * heron([w, h, diagonal]);
        assert!((area - w * h).abs() / (w * h) < 1e-8, "{area} {}", w * h);
        let flat = cayley_menger([w, diagonal, h, h, diagonal, w]);
        let scale = (w * h).powi(4);
        assert!(flat.abs() / scale < 1e-6, "{flat}");
    }
}
