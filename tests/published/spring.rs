//! The spring against a published example, and against identities of mechanics.
//!
//! J. E. Shigley et al., *Mechanical Engineering Design*, example 10-8: music wire of
//! .072 in, outside diameter 19/32 in, 4.25 body coils, ends of 1 in each, E 28.5 Mpsi. The
//! inputs are from a copy of the text; the results are computed from its equations 10-48
//! and 10-50.

// A panic here is a failed test.
#![allow(clippy::unwrap_used)]

use hangtrue_core::Length;
use hangtrue_core::hang::spring::{
    A229, Balance, DIVISOR, DIVISOR_THEORY, ELASTICITY, Turns, Wire,
};
use hangtrue_core::hang::weight::{GRAVITY, Weight};

const INCH: f64 = 0.0254;
/// A pound-force inch, in N·m.
const LBF_IN: f64 = 4.448_221_615_260_5 * INCH;
const PSI: f64 = 4.448_221_615_260_5 / (INCH * INCH);

fn example() -> Wire {
    let (wire, outside) = (0.072, 19.0 / 32.0);
    let coil = outside - wire;
    let coils = Wire::active(4.25, [1.0, 1.0], coil);
    Wire { wire: wire * INCH, coil: coil * INCH, coils, elasticity: ELASTICITY }
}

#[test]
fn shigley_example_10_8() {
    let spring = example();
    assert!((ELASTICITY / PSI - 28.5e6).abs() < 1.0);
    assert!((spring.coil / INCH - 0.521_75).abs() < 1e-12);
    assert!((spring.coils - 4.656_721).abs() < 1e-6, "{}", spring.coils);
    let rate = spring.rate(DIVISOR) / LBF_IN;
    assert!((rate - 29.188_275).abs() < 1e-5, "{rate} lbf·in a turn");
}

/// EN 13906-3 has no friction between the coils: 64 a radian. 6.03 % stiffer.
#[test]
fn the_theory_is_six_percent_stiffer() {
    let spring = example();
    let share = spring.rate(DIVISOR_THEORY) / spring.rate(DIVISOR);
    assert!((share - 1.0603).abs() < 5e-5, "{share}");
}

/// The stress at the inside of the coil under the straight bar's 32M/πd³ times Kᵢ; for a
/// large coil Kᵢ goes to 1, and so to the straight bar.
#[test]
fn the_stress_of_a_wide_coil_is_that_of_a_straight_bar() {
    let wide = Wire { wire: 0.005, coil: 5.0, coils: 10.0, elasticity: ELASTICITY };
    let bar = 32.0 * 100.0 / (core::f64::consts::PI * 0.005_f64.powi(3));
    assert!((wide.stress(100.0) / bar - 1.0).abs() < 1e-3);
    // By hand for C = 10: Kᵢ = (400 − 10 − 1) / (40·9) = 1.080556.
    let close = Wire { coil: 0.05, ..wide };
    assert!((close.stress(100.0) / bar - 1.080_556).abs() < 1e-6);
}

/// A229 from memory: 147 kpsi at one inch of wire, by definition of A.
#[test]
fn the_strength_at_one_inch_is_a() {
    let inch = Wire { wire: INCH, coil: 1.0, coils: 1.0, elasticity: ELASTICITY };
    assert!((inch.strength(A229) / PSI - 147_000.0).abs() < 1e-6);
}

/// Energy is torque over angle: the trapezoid rule over the turns against U = π·k·n², and
/// against the potential energy that a linear spring of the same work would lift.
#[test]
fn the_energy_is_the_work_of_winding() {
    let turns = Turns::of(Length::from_inches(90), None);
    let door = Balance::ideal(Weight::from_grams(60_000), turns);
    let steps = 10_000;
    let step = door.wound / f64::from(steps);
    let torque = |n: f64| door.rate * n;
    let work: f64 = (0..steps)
        .map(|i| {
            let n = f64::from(i) * step;
            0.5 * (torque(n) + torque(n + step)) * step * core::f64::consts::TAU
        })
        .sum();
    assert!((work - door.energy()).abs() < 1e-6 * work, "{work} J");
    // W·c·n₀ / 2: half the door's weight lifted by all the cable that was wound.
    let lifted = 0.5 * 60.0 * GRAVITY * 0.254 * 12.0;
    assert!((door.energy() - lifted).abs() < 1e-9);
}
