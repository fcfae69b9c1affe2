//! GF(32) = GF(2)[x] / (x⁵ + x³ + 1), α = x.

/// αⁿ for n = 0 … 30.
const POWERS: [u8; 31] = {
    let mut powers = [0; 31];
    let mut power: u8 = 1;
    let mut n = 0;
    while n < 31 {
        #[expect(clippy::indexing_slicing, reason = "n < 31; a constant")]
        {
            powers[n] = power;
        }
        power <<= 1;
        if power & 32 != 0 {
            power ^= 0b10_1001;
        }
        n += 1;
    }
    powers
};

/// αⁿ.
pub(super) fn power(n: usize) -> u8 {
    POWERS.get(n % 31).copied().unwrap_or_default()
}

/// Product: shift and add, five times.
pub(super) const fn times(a: u8, b: u8) -> u8 {
    let (mut a, mut b, mut product) = (a & 31, b & 31, 0);
    while b != 0 {
        if b & 1 == 1 {
            product ^= a;
        }
        a <<= 1;
        if a & 32 != 0 {
            a ^= 0b10_1001;
        }
        b >>= 1;
    }
    product
}

/// 1/a; 0 for 0, which has none.
pub(super) const fn inverse(a: u8) -> u8 {
    // a³¹ = 1, so 1/a = a³⁰ = a² a⁴ a⁸ a¹⁶.
    let a2 = times(a, a);
    let a4 = times(a2, a2);
    let a8 = times(a4, a4);
    times(times(a2, a4), times(a8, times(a8, a8)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_a_field() {
        let mut seen = [false; 32];
        for n in 0..31 {
            assert!(!core::mem::replace(&mut seen[usize::from(power(n))], true), "α is primitive");
        }
        for a in 0..32 {
            assert_eq!(times(a, 1), a);
            assert_eq!(times(a, inverse(a)), u8::from(a != 0));
            for b in 0..32 {
                assert_eq!(times(a, b), times(b, a));
                for c in 0..32 {
                    assert_eq!(times(a, b ^ c), times(a, b) ^ times(a, c));
                    assert_eq!(times(times(a, b), c), times(a, times(b, c)));
                }
            }
        }
        assert_eq!(times(power(20), power(15)), power(4));
    }
}
