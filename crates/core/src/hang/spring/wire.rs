//! The spring's own rate and stress, from wire, coil and count of coils.

use crate::length::Length;

/// Divisor of the rate per turn as the handbook has it: it allows for the friction between
/// the coils. Shigley, *Mechanical Engineering Design*, Eq. 10-50.
pub const DIVISOR: f64 = 10.8;
/// The same without friction: 64 a radian, so 64 / 2π a turn (EN 13906-3). 6.03 % stiffer.
pub const DIVISOR_THEORY: f64 = 64.0 / core::f64::consts::TAU;
/// Modulus of elasticity of spring wire, Pa: 28.5e6 psi (from memory, Shigley, table 10-5).
pub const ELASTICITY: f64 = 28.5e6 * PSI;
/// A pound to the square inch, in Pa.
const PSI: f64 = 4.448_221_615_260_5 / (0.0254 * 0.0254);

/// Wire by its tensile strength A / dᵐ.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strength {
    /// A, in Pa·mᵐ.
    pub a: f64,
    /// m.
    pub m: f64,
}

/// Oil-tempered wire to ASTM A229: 147 kpsi·inᵐ, m .187 (from memory, Shigley, table 10-4).
pub const A229: Strength = Strength { a: 147_000.0 * PSI, m: 0.187 };

/// A helical torsion spring.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wire {
    /// The wire's diameter, in m.
    pub wire: f64,
    /// The coils' mean diameter, middle of wire to middle of wire, in m.
    pub coil: f64,
    /// Active coils.
    pub coils: f64,
    /// Modulus of elasticity, Pa.
    pub elasticity: f64,
}

impl Wire {
    /// From what a caliper measures: the wire, the coil over its outside, and the coils
    /// counted. None where that is no spring: a coil needs at least three wires' width, and
    /// no door spring has a wire over 20 mm.
    #[must_use]
    pub fn measured(wire: Length, outside: Length, coils: f64) -> Option<Self> {
        let (d, over) = (wire.to_mm() / 1e3, outside.to_mm() / 1e3);
        let coil = over - d;
        let real = d > 0.0 && d <= 0.02 && coil >= 2.0 * d && (1.0..=2000.0).contains(&coils);
        real.then_some(Self { wire: d, coil, coils, elasticity: ELASTICITY })
    }

    /// The coils that straight ends of `first` and `second` add to `body` coils, all in the
    /// unit of `coil`: N = N_b + (l₁ + l₂) / 3πD (Shigley Eq. 10-48).
    #[must_use]
    pub fn active(body: f64, [first, second]: [f64; 2], coil: f64) -> f64 {
        body + (first + second) / (3.0 * core::f64::consts::PI * coil)
    }

    /// Torque per turn, N·m, by `divisor`: d⁴E / (divisor·D·N).
    #[must_use]
    pub fn rate(&self, divisor: f64) -> f64 {
        libm::pow(self.wire, 4.0) * self.elasticity / (divisor * self.coil * self.coils)
    }

    /// The bending stress at the inside of the coil under `torque`, Pa:
    /// σ = Kᵢ·32M / πd³ with Kᵢ = (4C² − C − 1) / 4C(C − 1) (Shigley Eq. 10-43 and 10-44).
    #[must_use]
    pub fn stress(&self, torque: f64) -> f64 {
        let c = self.coil / self.wire;
        let inner = (4.0 * c * c - c - 1.0) / (4.0 * c * (c - 1.0));
        inner * 32.0 * torque / (core::f64::consts::PI * libm::pow(self.wire, 3.0))
    }

    /// The tensile strength of the wire, Pa.
    #[must_use]
    pub fn strength(&self, of: Strength) -> f64 {
        of.a / libm::pow(self.wire / 0.0254, of.m)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_two_divisors_differ_by_six_percent() {
        assert!((DIVISOR / DIVISOR_THEORY - 1.060_29).abs() < 1e-5);
        let wire = Wire::measured(Length::from_mm(6), Length::from_mm(56), 100.0).unwrap();
        assert!(wire.rate(DIVISOR_THEORY) > wire.rate(DIVISOR));
    }

    #[test]
    fn what_is_no_spring_is_refused() {
        let of = |d, over, n| Wire::measured(Length::from_mm(d), Length::from_mm(over), n);
        assert!(of(6, 56, 100.0).is_some());
        assert!(of(0, 56, 100.0).is_none());
        assert!(of(6, 16, 100.0).is_none());
        assert!(of(6, 56, 0.0).is_none());
        assert!(of(6, 56, f64::NAN).is_none());
        assert!(of(25, 200, 10.0).is_none());
    }

    /// Twice the coils, half the rate; twice the wire, sixteen times.
    #[test]
    fn the_rate_goes_with_the_fourth_power_of_the_wire() {
        let one = Wire { wire: 0.005, coil: 0.05, coils: 50.0, elasticity: ELASTICITY };
        let thick = Wire { wire: 0.01, ..one };
        let long = Wire { coils: 100.0, ..one };
        assert!((thick.rate(DIVISOR) / one.rate(DIVISOR) - 16.0).abs() < 1e-9);
        assert!((long.rate(DIVISOR) / one.rate(DIVISOR) - 0.5).abs() < 1e-12);
    }
}
