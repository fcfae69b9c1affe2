//! The rounding a reader really does, estimated from what they wrote.
//!
//! A tape is marked to 1/16 in, but people stop at the half, the quarter, the
//! eighth (64 % of 85,000 blood pressures ended in 0). A reading of 92 5/16 was
//! read to the sixteenth; a reading of 92 may have been read to the inch.

use crate::length::{Length, Unit};

/// The steps people round to, finest first, for one kind of tape.
#[derive(Clone, Copy, Debug)]
struct Steps {
    steps: [Length; 5],
    /// How common each habit is before anything was read. Assumed.
    usual: [f64; 5],
}

const INCH: Steps = Steps {
    steps: [
        Length::from_sixty_fourths(2),
        Length::SIXTEENTH,
        Length::from_sixteenths(2),
        Length::from_sixteenths(4),
        Length::from_sixteenths(8),
    ],
    usual: [0.05, 0.60, 0.22, 0.09, 0.04],
};

const METRIC: Steps = Steps {
    steps: [
        Length::from_tenths_mm(5),
        Length::MILLIMETRE,
        Length::from_mm(2),
        Length::from_mm(5),
        Length::from_mm(10),
    ],
    usual: [0.03, 0.72, 0.08, 0.13, 0.04],
};

/// How many readings the assumed habits count for.
const PRIOR_READINGS: f64 = 6.0;
/// Share of readings that lie on no mark at all: a laser, a decimal tape, a lost slash.
const OFF_THE_MARKS: f64 = 0.004;

/// One reader's habits.
#[derive(Clone, Copy, Debug)]
pub(super) struct Habit {
    steps: Steps,
    shares: [f64; 5],
    off: f64,
}

/// Whether a tape with a mark at each `step` shows `length`.
pub(super) fn on(length: Length, step: Length) -> bool {
    length.nm().checked_rem(step.nm()) == Some(0)
}

impl Habit {
    /// Estimated from `lengths`, read on a tape in `unit`: some turns of expectation
    /// and maximisation, starting from what is usual.
    pub(super) fn of(lengths: &[Length], unit: Unit) -> Self {
        let steps = match unit {
            Unit::Inch => INCH,
            Unit::Millimetre => METRIC,
        };
        let mut habit = Self { steps, shares: steps.usual, off: OFF_THE_MARKS };
        for _ in 0..6 {
            let mut counts = steps.usual.map(|share| share * PRIOR_READINGS);
            let mut off = OFF_THE_MARKS * PRIOR_READINGS;
            for length in lengths {
                match habit.weights(*length) {
                    Some(weights) => {
                        for (count, weight) in counts.iter_mut().zip(weights) {
                            *count += weight;
                        }
                    }
                    None => off += 1.0,
                }
            }
            let total: f64 = counts.iter().sum::<f64>() + off;
            habit.shares = counts.map(|count| count / total);
            habit.off = off / total;
        }
        habit
    }

    /// The probability of each step having been used for `length`; none if it lies
    /// on no mark.
    fn weights(&self, length: Length) -> Option<[f64; 5]> {
        let mut weights = [0.0; 5];
        let mut total = 0.0;
        for ((weight, step), share) in weights.iter_mut().zip(self.steps.steps).zip(self.shares) {
            if on(length, step) {
                *weight = share * step.to_mm();
                total += *weight;
            }
        }
        (total > 0.0).then(|| weights.map(|weight| weight / total))
    }

    /// Variance of rounding in `length` as written, mm²: step²/12 for each step
    /// that it may have been read to.
    pub(super) fn variance(&self, length: Length) -> f64 {
        let finest = self.steps.steps.first().map_or(0.0, |step| step.to_mm());
        match self.weights(length) {
            Some(weights) => weights
                .iter()
                .zip(self.steps.steps)
                .map(|(weight, step)| weight * step.to_mm() * step.to_mm() / 12.0)
                .sum(),
            None => finest * finest / 12.0,
        }
    }

    /// How often this reader writes exactly `length` rather than its neighbours, as a
    /// density relative to an even spread over all marks.
    pub(super) fn liking(&self, length: Length) -> f64 {
        let liking: f64 = self
            .steps
            .steps
            .iter()
            .zip(self.shares)
            .map(|(step, share)| if on(length, *step) { share * step.to_mm() } else { 0.0 })
            .sum();
        let base = self.steps.steps.get(1).map_or(1.0, |step| step.to_mm());
        // Off the marks, a reading is one of a hundred or so to the inch.
        if liking > 0.0 { liking / base } else { self.off * 0.2 }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sixteenths(readings: &[i64]) -> Vec<Length> {
        readings.iter().copied().map(Length::from_sixteenths).collect()
    }

    #[test]
    fn a_whole_inch_is_less_certain_than_a_sixteenth() {
        let habit = Habit::of(&sixteenths(&[1475, 1624, 152, 20]), Unit::Inch);
        let whole = habit.variance(Length::from_inches(92));
        let odd = habit.variance(Length::from_sixteenths(1475));
        assert!(whole > 3.0 * odd, "{whole} {odd}");
        // 1/16 in read to the mark: resolution/√12 = 0.458 mm.
        assert!((odd.sqrt() - 0.458).abs() < 0.03, "{odd}");
    }

    #[test]
    fn who_writes_only_quarters_is_taken_to_round_to_quarters() {
        let quarters = Habit::of(&sixteenths(&[1476, 1624, 152, 20, 1480, 1628]), Unit::Inch);
        let mixed = Habit::of(&sixteenths(&[1475, 1623, 151, 21, 1480, 1628]), Unit::Inch);
        let at = Length::from_sixteenths(1476);
        assert!(quarters.variance(at) > 1.5 * mixed.variance(at));
    }

    #[test]
    fn a_reading_off_the_marks_is_disliked_unless_all_are() {
        let lengths = sixteenths(&[1475, 1624, 152, 20]);
        let odd = Length::from_nm(2_441_956_000); // 96.14 in
        let once = Habit::of(&lengths, Unit::Inch).liking(odd);
        let always = Habit::of(&[odd, odd, odd, odd, odd, odd], Unit::Inch).liking(odd);
        assert!(once < 0.01 && always > 20.0 * once, "{once} {always}");
    }
}
