//! A person with a tape: what is written for what is there.

use crate::rng::Rng;
use crate::world::World;

/// A number as a person writes it.
#[derive(Clone, Debug, PartialEq)]
pub enum Written {
    /// Whole inches and sixteenths.
    Inch(i64, i64),
    /// Whole millimetres.
    Metric(i64),
    /// As typed, in inches, with the number it says (for what has left the marks).
    Loose(String, f64),
}

impl Written {
    /// To the text in a survey.
    #[must_use]
    pub fn text(&self) -> String {
        match self {
            Self::Inch(whole, 0) => whole.to_string(),
            Self::Inch(whole, sixteenths) => {
                let (mut upper, mut lower) = (*sixteenths, 16);
                while upper % 2 == 0 {
                    upper /= 2;
                    lower /= 2;
                }
                if *whole == 0 {
                    format!("{upper}/{lower}")
                } else {
                    format!("{whole} {upper}/{lower}")
                }
            }
            Self::Metric(mm) => mm.to_string(),
            Self::Loose(text, _) => text.clone(),
        }
    }

    /// In mm.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "numbers on a tape")]
    pub fn mm(&self) -> f64 {
        match self {
            Self::Inch(whole, sixteenths) => (whole * 16 + sixteenths) as f64 * 1.5875,
            Self::Metric(mm) => *mm as f64,
            Self::Loose(_, inches) => inches * 25.4,
        }
    }

    /// Longer by `mm`, to the nearest mark of the same tape.
    #[must_use]
    #[expect(clippy::cast_possible_truncation, reason = "numbers on a tape")]
    pub fn longer(&self, mm: f64) -> Self {
        match self {
            Self::Inch(whole, part) => {
                Self::sixteenths(whole * 16 + part + (mm / 1.5875).round() as i64)
            }
            Self::Metric(old) => Self::Metric(old + mm.round() as i64),
            Self::Loose(..) => self.clone(),
        }
    }

    /// The nearest marks of an inch tape, for a number of sixteenths.
    #[must_use]
    pub const fn sixteenths(n: i64) -> Self {
        Self::Inch(n.div_euclid(16), n.rem_euclid(16))
    }
}

/// One reader with one tape.
#[derive(Clone, Debug)]
pub struct Reader {
    /// Reads a metric tape.
    pub metric: bool,
    /// Parts in a thousand that the tape is long.
    scale: f64,
    habit: usize,
}

impl Reader {
    /// Someone of `world`.
    pub fn draw(world: &World, rng: &mut Rng) -> Self {
        let metric = rng.chance(world.metric);
        let scale = rng.normal(world.scale);
        let habit = rng.weighted(&world.habit);
        Self { metric, scale, habit }
    }

    /// Reads `length` mm, once.
    #[expect(clippy::cast_possible_truncation, reason = "numbers on a tape")]
    pub fn read(&self, length: f64, world: &World, rng: &mut Rng) -> Written {
        let mut seen = length * (1.0 + self.scale / 1000.0) + rng.normal(world.hand);
        if rng.chance(world.hook) {
            seen += if rng.chance(0.5) { 1.6 } else { -1.6 };
        }
        let habit = if world.fickle { rng.weighted(&world.habit) } else { self.habit };
        // Nobody reads a roof bow to the half inch.
        let habit = if length < 100.0 { habit.min(1) } else { habit };
        if self.metric {
            let step = [1.0, 1.0, 5.0, 10.0].get(habit).copied().unwrap_or(1.0);
            return Written::Metric(((seen / step).round() * step) as i64);
        }
        let step = [1, 2, 4, 8].get(habit).copied().unwrap_or(1);
        let marks = (seen / 1.5875 / f64::from(step)).round() as i64 * i64::from(step);
        Written::sixteenths(marks)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_is_written_in_lowest_terms() {
        assert_eq!(Written::Inch(92, 4).text(), "92 1/4");
        assert_eq!(Written::Inch(92, 0).text(), "92");
        assert_eq!(Written::Inch(0, 14).text(), "7/8");
        assert_eq!(Written::Metric(2341).text(), "2341");
        assert!((Written::Inch(1, 8).mm() - 38.1).abs() < 1e-12);
    }
}
