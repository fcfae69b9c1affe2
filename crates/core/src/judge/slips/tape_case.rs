//! The tape's case was set against the far side and its length not added.

use super::{Meant, Slip, SlipKind, Written};

pub(super) const SLIP: Slip = Slip { kind: SlipKind::TapeCase, weight: 0.03, meant };

fn meant(_: &Written, meant: &mut Meant<'_>) {
    meant.shift(-3.55, -2.45, 1.0);
}

#[cfg(test)]
mod tests {
    use super::super::testing::values;
    use super::*;
    use crate::spot::Group;

    #[test]
    fn a_case_has_no_single_length() {
        assert!(values(&SLIP, Group::Width, 92 * 16).is_empty());
    }
}
