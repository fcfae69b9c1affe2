//! Random numbers by seed: SplitMix64 (Steele, Lea, Flood 2014). The same on every machine.

/// A source of random numbers.
#[derive(Clone, Debug)]
pub struct Rng(u64);

impl Rng {
    /// From a seed; near seeds give unrelated streams.
    #[must_use]
    pub const fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0x5851_F42D_4C95_7F2D)
    }

    /// Of one survey: the `index`th of a `stream`, whoever draws it and when.
    #[must_use]
    pub const fn of(seed: u64, stream: u64, index: u64) -> Self {
        let mut rng = Self::new(seed);
        rng.0 ^= Self::new(stream ^ rng.bits()).bits();
        rng.0 ^= Self::new(index ^ rng.bits()).bits();
        rng
    }

    /// Sixty-four random bits.
    pub const fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Evenly in [0, 1).
    #[expect(clippy::cast_precision_loss, reason = "53 bits")]
    pub fn unit(&mut self) -> f64 {
        (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Evenly in [least, most).
    pub fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.unit()
    }

    /// Normal, mean nought, of standard deviation `sd` (Box and Muller 1958).
    pub fn normal(&mut self, sd: f64) -> f64 {
        let (u, v) = (1.0 - self.unit(), self.unit());
        sd * (-2.0 * u.ln()).sqrt() * (core::f64::consts::TAU * v).cos()
    }

    /// With probability `p`.
    pub fn chance(&mut self, p: f64) -> bool {
        self.unit() < p
    }

    /// A whole number below `n`; nought for nought.
    #[expect(clippy::cast_possible_truncation, reason = "below n")]
    pub const fn below(&mut self, n: usize) -> usize {
        if n == 0 { 0 } else { (self.bits() % n as u64) as usize }
    }

    /// One of `items`.
    pub fn pick<T: Copy>(&mut self, items: &[T], otherwise: T) -> T {
        let at = self.below(items.len());
        items.get(at).copied().unwrap_or(otherwise)
    }

    /// A place in `weights`, as often as its weight says.
    pub fn weighted(&mut self, weights: &[f64]) -> usize {
        let mut left = self.unit() * weights.iter().sum::<f64>();
        for (i, weight) in weights.iter().enumerate() {
            if left < *weight {
                return i;
            }
            left -= weight;
        }
        weights.len().saturating_sub(1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_seed_gives_its_numbers_again_and_they_are_normal() {
        let (mut one, mut two) = (Rng::new(7), Rng::new(7));
        assert!((0..100).all(|_| one.bits() == two.bits()));
        let draws: Vec<f64> = (0..20_000).map(|_| one.normal(2.0)).collect();
        let mean = draws.iter().sum::<f64>() / 20_000.0;
        let variance = draws.iter().map(|d| (d - mean) * (d - mean)).sum::<f64>() / 20_000.0;
        assert!(mean.abs() < 0.06 && (variance.sqrt() - 2.0).abs() < 0.05, "{mean} {variance}");
    }
}
