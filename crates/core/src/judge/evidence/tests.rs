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

    #[test]
    fn no_guess_is_left_out_that_weighs_what_is_noticed(survey in surveys()) {
        let readings = reading::Readings::of(&survey);
        let list = readings.list.as_slice();
        let plausible = size::Plausible::new(true, known(list), &Profile::default());
        let Some(fit) = Fit::of(list, start(list), &plausible) else { return Ok(()) };
        for (index, pattern) in pattern::all(&readings).iter().enumerate() {
            let effect = fit.effect(index, pattern);
            for guess in &pattern.guesses {
                let log = fit.guess(&effect, guess, f64::NEG_INFINITY).unwrap().log;
                prop_assert!(fit.guess(&effect, guess, log).is_some(), "{guess:?} {log}");
            }
        }
    }

    /// By the sum over a fine grid of changes. Where only the nearest end counts, z from 6, it falls
    /// as an exponential, which is off by 1/z², without its other end, which is off by −log(1 − e⁻ᵗ)
    /// where it falls by t, and by no more than where t is 1.
    #[test]
    fn a_gain_is_what_the_likelihood_gains_in_the_mean(
        a in 1e-4..1.0_f64, z in -20.0..20.0_f64, least in -50.0..50.0_f64, width in 0.01..40.0_f64,
    ) {
        let best = least + z / a.sqrt();
        let felt = Felt { a, b: a * best, bend: [0.0; 3] };
        let steps = 20_000;
        let at = |step: i32| {
            let change = least + width * (f64::from(step) + 0.5) / f64::from(steps);
            felt.b * change - 0.5 * a * change * change
        };
        let logs: Vec<f64> = (0..steps).map(at).collect();
        let mean = log_sum(&logs) - f64::from(steps).ln();
        let gain = gain(&felt, 0.0, least, least + width);
        // How many standard deviations from the best change the nearest end is, and the fall there.
        let near = (-z).max(z - width * a.sqrt()).max(0.0);
        let fall = near * width * a.sqrt();
        let off = if near > 6.0 && fall < 4.0 { 0.48 } else { 0.05 };
        prop_assert!((gain - mean).abs() < off, "{gain} for {mean}");
    }
}

/// Q(9) and Q(1) − Q(2) by the tables of Abramowitz and Stegun, 26.1, from memory.
#[test]
fn a_tail_is_as_exact_as_the_middle() {
    for (from, to, mass) in [(9.0, 10.0, 1.128_6e-19), (1.0, 2.0, 0.135_905_122)] {
        for between in [normal_between(from, to), normal_between(-to, -from)] {
            assert!((between / mass - 1.0).abs() < 1e-4, "{from} to {to}: {between}");
        }
    }
}

#[test]
fn what_no_tape_read_is_begun_with_from_the_diagonal_or_as_usual() {
    let begun = |readings: &[(Spot, i64)]| {
        let mut survey = Survey::new(Unit::Inch);
        for (spot, inches) in readings {
            survey.add(*spot, &inches.to_string());
        }
        start(&reading::Readings::of(&survey).list).map(|mm| (mm / 2.54).round() / 10.0)
    };
    // 3, 4, 5.
    assert_eq!(begun(&[(Spot::DiagonalRising, 125), (Spot::HeightLeft, 100)])[..2], [75.0, 100.0]);
    assert_eq!(begun(&[(Spot::DiagonalRising, 125), (Spot::WidthLow, 75)])[..2], [75.0, 100.0]);
    // A diagonal that is too short says nothing.
    assert_eq!(begun(&[(Spot::DiagonalRising, 99), (Spot::HeightLeft, 100)])[..2], [90.6, 100.0]);
    assert_eq!(begun(&[]), [90.6, 94.5, 9.8, 1.2]);
    // The middle one of three, whatever their order.
    let three = [(Spot::WidthLow, 92), (Spot::WidthMiddle, 29), (Spot::WidthHigh, 93)];
    assert_eq!(begun(&three)[0], 92.0);
}
