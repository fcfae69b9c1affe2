//! The judge's least squares against values from outside: published adjustments, tables,
//! certified fits, and crate `statrs` as an independent source of distributions.
//!
//! Marks, as in every file of this folder: *seen*, read in a copy of the text; *computed*,
//! worked out from a stated formula and cross-checked; *memory*, from memory.
//!
//! The core has no code of its own for Pope's tau, for Grubbs' test, for expanded
//! uncertainty. It has residuals, redundancy numbers and standard deviations, of which those
//! are made; so the published tables are asked whether *these* are right.

// A panic here is a failed test.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)]

use hangtrue_core::judge::least_squares::{
    Adjusted, CRITICAL, NON_CENTRALITY, Row, cholesky, dot, inverse, times,
};
use hangtrue_sim::Rng;
use statrs::distribution::{ContinuousCDF, Normal, StudentsT};

fn normal() -> Normal {
    Normal::new(0.0, 1.0).unwrap()
}

fn near(ours: f64, published: f64, within: f64) {
    assert!((ours - published).abs() <= within, "{ours} is not {published} ± {within}");
}

/// Adjusts six distances of four points in a plane, in the order ab ac ad bc bd cd, all of
/// equal weight: the adjusted distances, the rows at the solution, and the adjustment there.
///
/// Unknowns: b on the first axis; c and d anywhere. Gauss–Newton, by the core's own code.
fn quadrilateral(observed: [f64; 6]) -> ([f64; 6], [Row<5>; 6], Adjusted<5>) {
    let [ab, ac, ad, bc, bd, _] = observed;
    let third = |from_a: f64, from_b: f64| {
        let x = (from_a * from_a - from_b * from_b + ab * ab) / (2.0 * ab);
        [x, (from_a * from_a - x * x).sqrt()]
    };
    let ([cx, cy], [dx, dy]) = (third(ac, bc), third(ad, bd));
    let mut unknowns = [ab, cx, cy, dx, dy];
    for _ in 0..20 {
        let [bx, cx, cy, dx, dy] = unknowns;
        // From, to, and which unknown each of the four coordinates is.
        let (a, b, c, d) = ([0.0, 0.0], [bx, 0.0], [cx, cy], [dx, dy]);
        let (free_a, free_b) = ([None, None], [Some(0), None]);
        let (free_c, free_d) = ([Some(1), Some(2)], [Some(3), Some(4)]);
        let sides = [
            (a, free_a, b, free_b),
            (a, free_a, c, free_c),
            (a, free_a, d, free_d),
            (b, free_b, c, free_c),
            (b, free_b, d, free_d),
            (c, free_c, d, free_d),
        ];
        let mut computed = [0.0; 6];
        let mut rows = [Row { design: [0.0; 5], value: 0.0, sigma: 1.0 }; 6];
        for (i, (from, free_from, to, free_to)) in sides.into_iter().enumerate() {
            let along = [to[0] - from[0], to[1] - from[1]];
            computed[i] = along[0].hypot(along[1]);
            rows[i].value = observed[i] - computed[i];
            for axis in 0..2 {
                let cosine = along[axis] / computed[i];
                if let Some(unknown) = free_from[axis] {
                    rows[i].design[unknown] -= cosine;
                }
                if let Some(unknown) = free_to[axis] {
                    rows[i].design[unknown] += cosine;
                }
            }
        }
        let adjusted = Adjusted::of(&rows).unwrap();
        let step = adjusted.corrections.iter().fold(0.0, |most: f64, c| most.max(c.abs()));
        if step < 1e-9 {
            return (computed, rows, adjusted);
        }
        for (unknown, correction) in unknowns.iter_mut().zip(adjusted.corrections) {
            *unknown += correction;
        }
    }
    panic!("the adjustment does not settle");
}

/// Observed: Zaki, El Kady, Ahmed, *ISPRS* XVII (1992), part B3, seen. Adjusted with equal
/// weights: computed. One redundancy: all six standardised residuals are alike, so that a
/// slip is seen and cannot be placed.
#[test]
fn the_published_braced_quadrilateral() {
    let observed = [1341.785, 2775.364, 2167.437, 1937.887, 2173.715, 1511.014];
    let (adjusted, rows, fit) = quadrilateral(observed);
    let published =
        [1_341.781_487, 2_775.370_183, 2_167.432_871, 1_937.882_075, 2_173.719_724, 1_511.011_206];
    let redundancy = [0.101_168, 0.313_399, 0.139_740, 0.198_819, 0.182_887, 0.063_986];
    let mut sum = 0.0;
    for i in 0..6 {
        near(adjusted[i], published[i], 6e-7);
        near(fit.redundancy(&rows[i]), redundancy[i], 6e-7);
        near(fit.w(&rows[i]).abs(), 0.011_045_4, 6e-8);
        sum += fit.redundancy(&rows[i]);
    }
    near(sum, 1.0, 1e-9);
    near(fit.square_sum, 1.220_017e-4, 6e-11);
}

/// An opening the size of a door: invented data, computed elsewhere.
#[test]
fn a_door_sized_quadrilateral() {
    let observed = [2438.0, 3560.0, 2591.0, 2590.0, 3555.0, 2440.0];
    let (adjusted, rows, fit) = quadrilateral(observed);
    let computed =
        [2_437.826_640, 3_560.252_970, 2_590.815_983, 2_589.815_912, 3_555.252_615, 2_439.826_783];
    for (ours, theirs) in adjusted.into_iter().zip(computed) {
        near(ours, theirs, 6e-7);
    }
    near(fit.square_sum, 0.255_616_6, 6e-8);
    near(rows.iter().map(|row| fit.redundancy(row)).sum(), 1.0, 1e-9);
}

/// Euler's relation for the quadrilateral, as the judge's network has it in the first order,
/// holds at the solution of the same quadrilateral: W(dW₁+dW₂) + H(dH₁+dH₂) = D(dD₁+dD₂),
/// d from a rectangle to the adjusted door. What is left is of the second order.
#[test]
fn the_first_order_of_eulers_relation_is_what_is_left_of_it() {
    let ([ab, ac, ad, bc, bd, cd], ..) =
        quadrilateral([2438.0, 3560.0, 2591.0, 2590.0, 3555.0, 2440.0]);
    let (width, height) = (f64::midpoint(ab, cd), f64::midpoint(ad, bc));
    let diagonal = width.hypot(height);
    let sides = width * (ab + cd - 2.0 * width) + height * (ad + bc - 2.0 * height);
    let diagonals = diagonal * (ac + bd - 2.0 * diagonal);
    let second_order = (ab - cd).powi(2) + (ad - bc).powi(2) + (ac - bd).powi(2);
    assert!((sides - diagonals).abs() <= second_order, "{sides} {diagonals} {second_order}");
    // In the diagonals that is less than a hundredth of a millimetre.
    assert!((sides - diagonals).abs() / (2.0 * diagonal) < 0.01);
}

/// The redundancy numbers of any network add up to observations less unknowns.
#[test]
fn redundancy_numbers_add_up() {
    let mut rng = Rng::new(1968);
    for observations in 4..12_usize {
        let rows: Vec<Row<4>> = (0..observations)
            .map(|_| Row {
                design: [0; 4].map(|_| rng.normal(1.0)),
                value: rng.normal(3.0),
                sigma: rng.between(0.1, 4.0),
            })
            .collect();
        let fit = Adjusted::of(&rows).unwrap();
        let sum: f64 = rows.iter().map(|row| fit.redundancy(row)).sum();
        near(sum, f64::from(u32::try_from(observations - 4).unwrap()), 1e-7);
    }
}

/// Baarda 1968: α₀ 0.001 and power 0.80 give k 3.290527, δ₀ 4.132148, λ₀ 17.074647.
/// Computed; the attribution is from memory. Beside them crate `statrs`.
#[test]
fn baardas_constants() {
    near(CRITICAL, 3.290_527, 5e-7);
    near(NON_CENTRALITY, 4.132_148, 5e-7);
    near(NON_CENTRALITY * NON_CENTRALITY, 17.074_647, 5e-7);
    near(normal().inverse_cdf(1.0 - 0.01 / 2.0), 2.575_829, 5e-7);
    near(normal().inverse_cdf(1.0 - 0.05 / 2.0), 1.959_964, 5e-7);
    near(CRITICAL, normal().inverse_cdf(1.0 - 0.001 / 2.0), 1e-8);
    near(NON_CENTRALITY, CRITICAL + normal().inverse_cdf(0.80), 1e-8);
    // What it means: so far off, |w| passes the critical value in 80 of 100 cases.
    let seen =
        1.0 - normal().cdf(CRITICAL - NON_CENTRALITY) + normal().cdf(-CRITICAL - NON_CENTRALITY);
    near(seen, 0.80, 1e-8);
}

/// The least detectable error of the core's own adjustment, planted: noticed in 80 of 100
/// cases; without an error, in one of 1,000. By simulation, at a fixed seed.
#[test]
fn a_least_detectable_error_shows_as_often_as_it_says() {
    const CASES: u32 = 20_000;
    let mut rng = Rng::new(80);
    // A width three times at differing accuracy, a height twice, and their sum.
    let rows = [
        ([1.0, 0.0], 0.8),
        ([1.0, 0.0], 1.2),
        ([1.0, 0.0], 2.5),
        ([0.0, 1.0], 1.0),
        ([0.0, 1.0], 1.5),
        ([1.0, 1.0], 1.3),
    ]
    .map(|(design, sigma)| Row { design, value: 0.0, sigma });
    let fit = Adjusted::of(&rows).unwrap();
    for (i, row) in rows.iter().enumerate() {
        let least = fit.least_detectable(row).unwrap();
        let (mut seen, mut false_alarms) = (0_u32, 0_u32);
        for _ in 0..CASES {
            let mut drawn = rows;
            for row in &mut drawn {
                row.value = rng.normal(row.sigma);
            }
            let w = |rows: &[Row<2>]| Adjusted::of(rows).unwrap().w(&rows[i]).abs();
            false_alarms += u32::from(w(&drawn) > CRITICAL);
            drawn[i].value += least;
            seen += u32::from(w(&drawn) > CRITICAL);
        }
        // Four standard deviations of a share of 20,000.
        near(f64::from(seen) / f64::from(CASES), 0.80, 0.0114);
        near(f64::from(false_alarms) / f64::from(CASES), 0.001, 0.0009);
    }
}

/// Pope 1976: critical values of tau at .05, .01, .001 by degrees of freedom. Computed.
#[expect(clippy::approx_constant, reason = "a printed table")]
const TAU: [(u32, [f64; 3]); 5] = [
    (2, [1.4099, 1.4140, 1.4142]),
    (3, [1.6454, 1.7147, 1.7303]),
    (4, [1.7567, 1.9175, 1.9823]),
    (5, [1.8143, 2.0509, 2.1781]),
    (10, [1.9039, 2.3236, 2.6786]),
];

/// Grubbs 1969, two-sided: critical values at .05, .01 by number of readings. Computed,
/// agrees with a published table.
const GRUBBS: [(u32, [f64; 2]); 5] = [
    (3, [1.1543, 1.1547]),
    (4, [1.4813, 1.4962]),
    (5, [1.7150, 1.7637]),
    (6, [1.8871, 1.9728]),
    (10, [2.2900, 2.4821]),
];

/// Tau from Student's t by crate `statrs`: t√f / √(f − 1 + t²), t of f − 1 degrees of freedom.
#[test]
fn the_table_of_tau_is_what_students_t_makes_of_it() {
    for (f, taus) in TAU {
        let f = f64::from(f);
        for (tau, alpha) in taus.into_iter().zip([0.05, 0.01, 0.001]) {
            let student = StudentsT::new(0.0, 1.0, f - 1.0).unwrap();
            let t = student.inverse_cdf(1.0 - alpha / 2.0);
            near(t * f.sqrt() / (f - 1.0 + t * t).sqrt(), tau, 6e-5);
        }
    }
}

/// Grubbs' G from Student's t by crate `statrs`.
#[test]
fn the_table_of_grubbs_is_what_students_t_makes_of_it() {
    for (n, gs) in GRUBBS {
        let n = f64::from(n);
        for (g, alpha) in gs.into_iter().zip([0.05, 0.01]) {
            let student = StudentsT::new(0.0, 1.0, n - 2.0).unwrap();
            let t = student.inverse_cdf(1.0 - alpha / (2.0 * n));
            near((n - 1.0) / n.sqrt() * (t * t / (n - 2.0 + t * t)).sqrt(), g, 6e-5);
        }
    }
}

/// One length read `n` times, adjusted by the core: w of each reading over the standard
/// deviation of unit weight that the same adjustment gives. That is Pope's tau.
fn taus(n: u32, rng: &mut Rng) -> Vec<f64> {
    let rows: Vec<Row<1>> = (0..n)
        .map(|_| Row { design: [1.0], value: 2300.0 + rng.normal(1.7), sigma: 1.0 })
        .collect();
    let fit = Adjusted::of(&rows).unwrap();
    let unit_weight = (fit.square_sum / f64::from(n - 1)).sqrt();
    rows.iter().map(|row| fit.w(row) / unit_weight).collect()
}

/// The core's w, redundancy numbers and sum of squares make a tau that passes Pope's values
/// as often as they say. By simulation, at a fixed seed: a share within four of its standard
/// deviations.
#[test]
fn the_adjustments_own_tau_passes_popes_values_as_often_as_they_say() {
    const CASES: u32 = 40_000;
    let mut rng = Rng::new(1976);
    for (f, critical) in TAU {
        let drawn: Vec<f64> = (0..CASES).map(|_| taus(f + 1, &mut rng)[0].abs()).collect();
        assert!(drawn.iter().all(|tau| *tau <= f64::from(f).sqrt() + 1e-9));
        // At .001 and f = 2 the table's four places are too few: tau ends at 1.41421.
        for (tau, alpha) in critical.into_iter().zip([0.05, 0.01]) {
            let beyond = drawn.iter().filter(|drawn| **drawn > tau).count();
            let share = f64::from(u32::try_from(beyond).unwrap()) / f64::from(CASES);
            let rounded = if f == 2 { 0.15 * alpha } else { 0.002 * alpha };
            let chance = 4.0 * (alpha * (1.0 - alpha) / f64::from(CASES)).sqrt();
            near(share, alpha, chance + rounded);
        }
    }
}

/// The same for the largest of a few readings, and Grubbs' values: G = τ√((n − 1)/n).
#[test]
fn the_adjustments_own_outlier_passes_grubbs_values_as_often_as_they_say() {
    const CASES: u32 = 20_000;
    let mut rng = Rng::new(1969);
    for (n, [critical, _]) in GRUBBS {
        let n_real = f64::from(n);
        let beyond = (0..CASES).filter(|_| {
            let most =
                taus(n, &mut rng).into_iter().fold(0.0, |most: f64, tau| most.max(tau.abs()));
            most * ((n_real - 1.0) / n_real).sqrt() > critical
        });
        let share = f64::from(u32::try_from(beyond.count()).unwrap()) / f64::from(CASES);
        // Three readings: four places of the table leave some of the last thousandth.
        let rounded = if n == 3 { 0.0025 } else { 0.0005 };
        near(share, 0.05, 4.0 * (0.05 * 0.95 / f64::from(CASES)).sqrt() + rounded);
    }
}

/// GUM, annex H.1 (JCGM 100), the end gauge of 50 mm: the combined standard uncertainty of a
/// linear function of uncorrelated inputs, by the way the judge makes the ± of a reading.
/// Budget 25, 16.599, 6.7, 5.8, 3.9, 2.88679 nm; the text says u 32, ν 16, t 2.92, U₉₉ 93.
/// Seen. (The judge tells no expanded uncertainty; ν and t are checked beside it.)
#[test]
fn the_end_gauge_of_the_gum() {
    let budget = [25.0, 16.599, 6.7, 5.8, 3.9, 2.886_79];
    let freedom = [18.0, 2.0, 8.0, 24.0, 5.0, 50.0];
    let mut rows = [Row { design: [0.0; 6], value: 0.0, sigma: 1.0 }; 6];
    for (i, row) in rows.iter_mut().enumerate() {
        // Each input in a unit of its own, that its weight is not always one.
        row.design[i] = f64::from(u32::try_from(i + 1).unwrap());
        row.sigma = budget[i] * row.design[i];
    }
    let fit = Adjusted::of(&rows).unwrap();
    let length = [1.0; 6];
    let u = dot(&length, &times(&fit.covariance, &length)).sqrt();
    near(u.round(), 32.0, 0.0);
    near(u * u, 1002.6, 0.05);
    let welch: f64 = budget.iter().zip(freedom).map(|(u, f)| u.powi(4) / f).sum();
    let effective = (u.powi(4) / welch).floor();
    near(effective, 16.0, 0.0);
    let t = StudentsT::new(0.0, 1.0, effective).unwrap().inverse_cdf(0.995);
    near(t, 2.92, 0.005);
    near((2.92 * u.round()).round(), 93.0, 0.0);
}

/// NIST StRD, Norris (linear regression): the data from memory, the certified values seen.
/// That the one gives the other to twelve figures proves the data.
#[test]
fn norris_of_the_nist_reference_datasets() {
    #[rustfmt::skip]
    let data = [
        (0.2, 0.1), (337.4, 338.8), (118.2, 118.1), (884.6, 888.0), (10.1, 9.2), (226.5, 228.1),
        (666.3, 668.5), (996.3, 998.5), (448.6, 449.1), (777.0, 778.9), (558.2, 559.2), (0.4, 0.3),
        (0.6, 0.1), (775.5, 778.1), (666.9, 668.8), (338.0, 339.3), (447.5, 448.9), (11.6, 10.8),
        (556.0, 557.7), (228.1, 228.3), (995.8, 998.0), (887.6, 888.8), (120.2, 119.6), (0.3, 0.3),
        (0.3, 0.6), (556.8, 557.6), (339.1, 339.3), (887.2, 888.0), (999.0, 998.5), (779.0, 778.9),
        (11.1, 10.2), (118.3, 117.6), (229.2, 228.9), (669.1, 668.4), (448.9, 449.2), (0.5, 0.2),
    ];
    let rows = data.map(|(x, y)| Row { design: [1.0, x], value: y, sigma: 1.0 });
    let fit = Adjusted::of(&rows).unwrap();
    near(fit.corrections[0], -0.262_323_073_774_029, 1e-11);
    near(fit.corrections[1], 1.002_116_818_020_45, 1e-13);
    near((fit.square_sum / 34.0).sqrt(), 0.884_796_396_144_373, 1e-12);
    // Certified standard deviations of the two, from memory.
    let deviation = |i: usize| (fit.square_sum / 34.0 * fit.covariance[i][i]).sqrt();
    near(deviation(0), 0.232_818_234_301_152, 1e-11);
    near(deviation(1), 0.429_796_848_199_937e-3, 1e-14);
}

/// NIST StRD, NumAcc1: large numbers that differ in the last figure. Seen.
#[test]
fn num_acc_1_of_the_nist_reference_datasets() {
    let rows = [10_000_001.0, 10_000_003.0, 10_000_002.0].map(|value| Row {
        design: [1.0],
        value,
        sigma: 1.0,
    });
    let fit = Adjusted::of(&rows).unwrap();
    near(fit.corrections[0], 10_000_002.0, 2e-9);
    near((fit.square_sum / 2.0).sqrt(), 1.0, 1e-9);
}

/// Hilbert's matrix of five: its inverse is whole numbers, known in closed form, and its
/// condition is half a million. (Classical, computed.)
#[test]
fn the_inverse_of_hilberts_matrix() {
    let mut matrix = [[0.0; 5]; 5];
    for (i, row) in matrix.iter_mut().enumerate() {
        for (j, cell) in row.iter_mut().enumerate() {
            *cell = 1.0 / f64::from(u32::try_from(i + j + 1).unwrap());
        }
    }
    let ours = inverse(&cholesky(&matrix).unwrap()).unwrap();
    let known = [
        [25.0, -300.0, 1050.0, -1400.0, 630.0],
        [-300.0, 4800.0, -18_900.0, 26_880.0, -12_600.0],
        [1050.0, -18_900.0, 79_380.0, -117_600.0, 56_700.0],
        [-1400.0, 26_880.0, -117_600.0, 179_200.0, -88_200.0],
        [630.0, -12_600.0, 56_700.0, -88_200.0, 44_100.0],
    ];
    for (ours, known) in ours.iter().flatten().zip(known.iter().flatten()) {
        near(*ours, *known, 1e-9 * 179_200.0);
    }
}
