//! What is not weighed changes nothing.

use super::*;
use crate::judge::likely::log_total;
use crate::judge::{pattern, reading, size};
use crate::profile::Profile;
use crate::{Spot, Survey, Unit};
use proptest::prelude::*;

/// A survey of an opening of about 92 by 101 in, read well or wrongly.
fn surveys() -> impl Strategy<Value = Survey> {
    let reading = (any::<bool>(), -3..=3_i64, prop::option::weighted(0.2, -400..400_i64));
    prop::array::uniform18(reading).prop_map(|readings| {
        let mut survey = Survey::new(Unit::Inch);
        survey.prepared = true;
        for (spot, (read, noise, slip)) in Spot::ALL.into_iter().zip(readings) {
            let usual = match spot.group() {
                Group::Width => 1475,
                Group::Height => 1624,
                Group::Header => 152,
                Group::Bow => 20,
                Group::Diagonal => 2194,
                Group::Loop if spot == Spot::LoopSillToBow => 1756,
                Group::Loop => 1776,
                Group::Post => 48,
            };
            let sixteenths = usual + noise + slip.unwrap_or(0);
            if read && sixteenths > 0 {
                survey.add(spot, &Length::from_sixteenths(sixteenths).text(Unit::Inch));
            }
        }
        survey
    })
}

proptest! {
    /// To the bit: what is left out is what every sum takes for nought.
    #[test]
    fn no_sum_notices_the_guesses_that_are_not_weighed(survey in surveys()) {
        let readings = reading::Readings::of(&survey);
        let list = readings.list.as_slice();
        let plausible = size::Plausible::new(true, known(list), &Profile::default());
        let Some(fit) = Fit::of(list, start(list), &plausible) else { return Ok(()) };
        let patterns = pattern::all(&readings);
        let all = fit.weigh_from(f64::NEG_INFINITY, &patterns);
        let weighed = fit.weigh(&patterns);
        let total = log_total(&fit, &all);
        prop_assert_eq!(total.to_bits(), log_total(&fit, &weighed).to_bits());
        let felt = all.iter().filter(|guess| guess.log - total >= NOUGHT).count();
        let kept = weighed.iter().filter(|guess| guess.log - total >= NOUGHT).count();
        prop_assert_eq!(felt, kept);
    }

    #[test]
    fn no_gain_is_above_its_ceiling(
        a in prop_oneof![Just(0.0), 1e-9..10.0_f64], b in -1e4..1e4_f64,
        bend in prop::array::uniform3(-1.0..1.0_f64), bent in -1.0..1.0_f64,
        least in -500.0..500.0_f64, width in prop_oneof![Just(0.0), 0.0..50.0_f64],
    ) {
        let felt = Felt { a, b, bend };
        let ceiling = gain_at_most(&felt, bent, least, least + width);
        prop_assert!(gain(&felt, bent, least, least + width) <= ceiling + 1e-6 * ceiling.abs().max(1.0));
    }
}
