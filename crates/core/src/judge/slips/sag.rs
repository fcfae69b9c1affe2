//! The tape sagged or lay aslant: L(1/cos θ − 1), always long.

use super::{Meant, Slip, SlipKind, Written};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::Sag, weight: 0.04, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    if written.long() {
        meant.shift(1.0 / 16.0, 3.0 / 16.0, 0.5);
        meant.shift(3.0 / 16.0, 7.0 / 16.0, 0.5);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::length::{Length, Unit};
    use crate::spot::Group;

    #[test]
    fn a_short_reading_does_not_sag() {
        let count = |inches| {
            let written = Written {
                group: Group::Width,
                length: Length::from_inches(inches),
                unit: Unit::Inch,
                feet: false,
                bow: None,
            };
            let mut count = 0;
            let mut take = |_: SlipKind, _: super::super::Candidate, _: f64| count += 1;
            meant(&written, &mut Meant { weight: 1.0, kind: SlipKind::Sag, take: &mut take });
            count
        };
        assert_eq!((count(9), count(92)), (0, 2));
    }
}
