//! Slips, forwards: a number on the tape becomes another on paper.
//!
//! Written from the list of slips, not from the judge: where the list leaves room
//! (which digit, how far the edge), this side chooses by itself.

use crate::reader::Written;
use crate::rng::Rng;

/// The slips, with their assumed relative frequencies.
pub const SLIPS: [(&str, f64); 20] = [
    ("digit", 0.15),
    ("transpose", 0.06),
    ("drop-add", 0.05),
    ("foot", 0.06),
    ("ten", 0.06),
    ("inch-mark", 0.12),
    ("half-inch", 0.04),
    ("wrong-side", 0.07),
    ("sixteenths-eighths", 0.06),
    ("ticks", 0.10),
    ("fraction-dropped", 0.04),
    ("slash", 0.02),
    ("units", 0.03),
    ("decimal-feet", 0.03),
    ("tape-case", 0.03),
    ("sag", 0.04),
    ("wrong-edge", 0.06),
    ("heard", 0.03),
    ("exchange", 0.03),
    ("other", 0.04),
];

/// How often each slip happens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Weights {
    /// As assumed.
    Assumed,
    /// All alike.
    Equal,
    /// Only this one, by its place in [`SLIPS`].
    Only(usize),
}

impl Weights {
    /// The weights, one for each of [`SLIPS`].
    #[must_use]
    pub fn list(self) -> Vec<f64> {
        let each = SLIPS.iter().enumerate();
        each.map(|(i, (_, weight))| match self {
            Self::Assumed => *weight,
            Self::Equal => 1.0,
            Self::Only(only) => f64::from(u8::from(only == i)),
        })
        .collect()
    }
}

const LOOKALIKES: [&str; 10] = ["69", "74", "73", "825", "97", "638", "580", "14", "306", "47"];

fn other_digit(digit: u8, rng: &mut Rng) -> u8 {
    let like = LOOKALIKES.get(usize::from(digit - b'0')).copied().unwrap_or("0");
    if rng.chance(0.5) {
        return rng.pick(like.as_bytes(), b'0');
    }
    loop {
        #[expect(clippy::cast_possible_truncation, reason = "below ten")]
        let new = b'0' + rng.below(10) as u8;
        if new != digit {
            return new;
        }
    }
}

/// The digits of the whole number.
fn digits(written: &Written) -> Vec<u8> {
    match written {
        Written::Inch(whole, _) => whole.to_string().into_bytes(),
        Written::Metric(mm) => mm.to_string().into_bytes(),
        Written::Loose(..) => Vec::new(),
    }
}

fn with_digits(written: &Written, digits: &[u8]) -> Option<Written> {
    let number: i64 = core::str::from_utf8(digits).ok()?.parse().ok()?;
    Some(match written {
        Written::Inch(_, part) => Written::Inch(number, *part),
        _ => Written::Metric(number),
    })
}

fn either(rng: &mut Rng) -> f64 {
    if rng.chance(0.5) { 1.0 } else { -1.0 }
}

/// What `written` at `spot` becomes by the slip of this name; none where the slip
/// cannot happen or changes nothing. `bow` is the roof-bow depth, mm.
#[must_use]
pub fn apply(
    name: &str,
    written: &Written,
    spot: &str,
    bow: f64,
    rng: &mut Rng,
) -> Option<Written> {
    let metric = matches!(written, Written::Metric(_));
    let long = written.mm() > 600.0;
    let new = match name {
        "digit" => digit(written, rng)?,
        "transpose" => {
            let mut digits = digits(written);
            let at = rng.below(digits.len().saturating_sub(1));
            if digits.len() < 2 {
                return None;
            }
            digits.swap(at, at + 1);
            with_digits(written, &digits)?
        }
        "drop-add" => {
            let mut digits = digits(written);
            let at = rng.below(digits.len());
            if rng.chance(0.5) && digits.len() > 1 {
                digits.remove(at);
            } else {
                let doubled = digits.get(at).copied()?;
                digits.insert(at, doubled);
            }
            with_digits(written, &digits)?
        }
        "foot" => written.longer(if metric { 100.0 } else { 304.8 } * either(rng)),
        "ten" => written.longer(if metric { 100.0 } else { 254.0 } * either(rng)),
        "inch-mark" => {
            let off = match (metric, rng.chance(0.5)) {
                (false, _) => 25.4,
                (true, true) => 10.0,
                (true, false) => 100.0,
            };
            written.longer(if rng.chance(0.6) { off } else { -off })
        }
        "half-inch" => written.longer(if metric { 10.0 } else { 12.7 } * either(rng)),
        "wrong-side" => match written {
            Written::Inch(whole, part) if *part > 0 => {
                Written::Inch(whole + i64::from(rng.chance(0.3)), 16 - part)
            }
            Written::Metric(mm) if mm % 10 != 0 => {
                Written::Metric(mm / 10 * 10 + 10 - mm % 10 + if rng.chance(0.3) { 10 } else { 0 })
            }
            _ => return None,
        },
        "sixteenths-eighths" => match written {
            Written::Inch(whole, part) if *part > 0 => {
                if part % 2 == 0 && rng.chance(0.5) {
                    Written::Inch(*whole, part / 2)
                } else if *part < 8 {
                    Written::Inch(*whole, part * 2)
                } else {
                    return None;
                }
            }
            _ => return None,
        },
        "ticks" => {
            let ticks = rng.pick(&[1.0, 2.0, 4.0], 1.0);
            written.longer(ticks * if metric { 1.0 } else { 1.5875 } * either(rng))
        }
        "fraction-dropped" => match written {
            Written::Inch(whole, part) if *part > 0 => Written::Inch(*whole, 0),
            Written::Metric(mm) if mm % 10 != 0 => Written::Metric(mm / 10 * 10),
            _ => return None,
        },
        "slash" => slash(written, rng)?,
        "units" => units(written, rng),
        "decimal-feet" => decimal_feet(written, rng)?,
        // Nobody sets the case of a tape against a roof bow.
        "tape-case" if written.mm() > 100.0 => written.longer(-25.4 * rng.between(2.5, 3.5)),
        "sag" if long => written.longer(25.4 * rng.between(1.0 / 16.0, 6.0 / 16.0)),
        "wrong-edge" => written.longer(25.4 * wrong_edge(spot, bow, rng)?),
        "heard" => heard(written, rng)?,
        "other" => written.longer(either(rng) * 25.4 * 2_f64.powf(rng.between(-3.0, 5.0))),
        _ => return None,
    };
    (new != *written && new.mm() > 0.0).then_some(new)
}

fn digit(written: &Written, rng: &mut Rng) -> Option<Written> {
    let mut digits = digits(written);
    let at = rng.below(digits.len());
    let cell = digits.get_mut(at)?;
    *cell = other_digit(*cell, rng);
    with_digits(written, &digits)
}

fn slash(written: &Written, rng: &mut Rng) -> Option<Written> {
    let Written::Inch(whole, part) = written else { return None };
    if *part == 0 {
        return None;
    }
    let text = written.text();
    let run = text.replace('/', "");
    let text = if rng.chance(0.5) { run.replace(' ', ".") } else { run.replace(' ', "") };
    let number: f64 = text.parse().ok()?;
    (*whole > 0).then_some(Written::Loose(text, number))
}

fn units(written: &Written, rng: &mut Rng) -> Written {
    let factor = rng.pick(&[2.54, 1.0 / 2.54, 25.4, 1.0 / 25.4, 10.0, 0.1], 10.0);
    #[expect(clippy::cast_possible_truncation, reason = "numbers on a tape")]
    match written {
        Written::Inch(..) => Written::sixteenths((written.mm() * factor / 1.5875).round() as i64),
        _ => Written::Metric((written.mm() * factor).round() as i64),
    }
}

fn decimal_feet(written: &Written, rng: &mut Rng) -> Option<Written> {
    let Written::Inch(whole, part) = written else { return None };
    let (feet, inches) = (whole / 12, whole % 12);
    if feet < 3 {
        return None;
    }
    if rng.chance(0.5) {
        // 7 ft 5 in is keyed as 7.5 ft.
        return ((1..10).contains(&inches)).then(|| {
            #[expect(clippy::cast_precision_loss, reason = "inches")]
            let sixteenths = (feet * 192) as f64 + inches as f64 * 19.2;
            #[expect(clippy::cast_possible_truncation, reason = "sixteenths")]
            Written::sixteenths(sixteenths.round() as i64)
        });
    }
    // 7.5 ft is taken for 7 ft 5 in.
    let tenths = ((inches * 16 + part) * 10 + 96) / 192;
    Some(Written::Inch(feet * 12 + tenths, 0))
}

/// Inches that the tape is long when it lies at the wrong edge.
fn wrong_edge(spot: &str, bow: f64, rng: &mut Rng) -> Option<f64> {
    Some(match spot.split('.').next()? {
        "width" | "diagonal" => {
            if rng.chance(0.5) {
                rng.between(1.0, 6.0)
            } else {
                -rng.between(0.5, 2.0)
            }
        }
        "height" | "loop" => either(rng) * rng.between(0.5, 2.5),
        "header" => {
            if rng.chance(0.5) {
                -bow / 25.4
            } else {
                rng.between(0.25, 1.0)
            }
        }
        _ => return None,
    })
}

fn heard(written: &Written, rng: &mut Rng) -> Option<Written> {
    let number = match written {
        Written::Inch(whole, _) => *whole,
        Written::Metric(mm) => *mm,
        Written::Loose(..) => return None,
    };
    let end = number % 100;
    let other = if (13..=19).contains(&end) {
        Some(end % 10 * 10)
    } else if end % 10 == 0 && (30..=90).contains(&end) {
        Some(end / 10 + 10)
    } else {
        None
    };
    let mut digits = digits(written);
    if let Some(other) = other {
        let text = (number - end + other).to_string();
        return with_digits(written, text.as_bytes());
    }
    let places: Vec<usize> = digits
        .iter()
        .enumerate()
        .filter(|(_, d)| **d == b'5' || **d == b'9')
        .map(|(i, _)| i)
        .collect();
    let at = rng.pick(&places, usize::MAX);
    let cell = digits.get_mut(at)?;
    *cell = if *cell == b'5' { b'9' } else { b'5' };
    with_digits(written, &digits)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_slip_happens_and_changes_something() {
        let mut rng = Rng::new(3);
        for (name, _) in SLIPS.iter().filter(|(name, _)| *name != "exchange") {
            let happened = (0..400).filter_map(|_| {
                #[expect(clippy::cast_possible_wrap, reason = "small")]
                let written = Written::Inch(80 + rng.below(20) as i64, rng.below(16) as i64);
                let new = apply(name, &written, "width.low", 30.0, &mut rng)?;
                assert_ne!(new.text(), written.text(), "{name}");
                Some(())
            });
            assert!(happened.count() > 20, "{name}");
        }
    }
}
