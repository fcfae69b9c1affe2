//! Anything else: as likely to be off by an eighth of an inch as by a yard.

use super::{Meant, Slip, SlipKind, Written};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Other, weight: 0.10, meant };

/// Ends of the stretches, inches; each is as likely as the next.
const ENDS: [f64; 10] = [0.1, 0.22, 0.5, 1.0, 2.0, 4.0, 8.0, 16.0, 32.0, 100.0];

fn meant(_: &Written, meant: &mut Meant<'_>) {
    for (least, most) in ENDS.iter().zip(ENDS.iter().skip(1)) {
        let share = 0.5 / 9.0;
        meant.shift(*least, *most, share);
        meant.shift(-most, -least, share);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stretches_ascend_and_are_nine() {
        assert!(ENDS.windows(2).all(|ends| ends[0] < ends[1]) && ENDS.len() == 10);
    }
}
