//! Measured to the wrong edge: a width to the outside of a post, a height to the
//! lip of the header, a header only to the bow, a diagonal into a rounded corner.

use super::{Meant, Slip, SlipKind, Written};
use crate::spot::Group;

pub(super) const SLIP: Slip = Slip { kind: SlipKind::WrongEdge, weight: 0.06, meant };

fn meant(written: &Written, meant: &mut Meant<'_>) {
    match written.group {
        Group::Width | Group::Diagonal => {
            meant.shift(0.75, 2.0, 0.2);
            meant.shift(2.0, 6.25, 0.4);
            meant.shift(-2.25, -0.4, 0.4);
        }
        Group::Height | Group::Loop => {
            meant.shift(0.4, 2.75, 0.5);
            meant.shift(-2.75, -0.4, 0.5);
        }
        Group::Header => {
            if let Some(bow) = written.bow {
                meant.value(written.length + bow, 0.25);
                let (bow, near) = (bow.to_inches(), 0.2);
                meant.shift(-bow - near, -bow + near, 0.25);
            } else {
                meant.shift(-2.1, -0.7, 0.5);
            }
            meant.shift(0.2, 1.1, 0.5);
        }
        Group::Bow => {
            meant.shift(0.2, 1.1, 0.6);
            meant.shift(-0.8, -0.2, 0.4);
        }
        Group::Post => {}
    }
}

#[cfg(test)]
mod tests {
    use super::super::testing::values;
    use super::*;

    #[test]
    fn a_header_to_the_bow_lacks_the_bow() {
        // The bow is 1 1/4 in.
        let found = values(&SLIP, Group::Header, 8 * 16 + 4);
        assert!(found.len() == 1 && (found[0].0 - 152.0).abs() < 1e-9, "{found:?}");
    }
}
