//! A share of some surveys, and how sure it is.

/// So many of so many.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Share {
    /// How many were.
    pub hits: usize,
    /// Of how many.
    pub of: usize,
}

/// The normal quantile 0.975.
const Z: f64 = 1.959_964;

impl Share {
    /// Of `all`, those that are.
    pub fn of<'a, T: 'a>(all: impl IntoIterator<Item = &'a T>, is: impl Fn(&T) -> bool) -> Self {
        let mut share = Self { hits: 0, of: 0 };
        for one in all {
            share.of += 1;
            share.hits += usize::from(is(one));
        }
        share
    }

    /// In percent; of none, nought.
    #[must_use]
    pub fn percent(&self) -> f64 {
        if self.of == 0 { 0.0 } else { 100.0 * real(self.hits) / real(self.of) }
    }

    /// The 95 % interval, in percent.
    ///
    /// E. B. Wilson, *Probable inference* (1927): holds for rare things too.
    #[must_use]
    pub fn interval(&self) -> (f64, f64) {
        if self.of == 0 {
            return (0.0, 100.0);
        }
        let (n, p) = (real(self.of), self.percent() / 100.0);
        let over = 1.0 + Z * Z / n;
        let middle = (p + Z * Z / (2.0 * n)) / over;
        let half = Z * (p * (1.0 - p) / n + Z * Z / (4.0 * n * n)).sqrt() / over;
        (100.0 * (middle - half), 100.0 * (middle + half))
    }
}

#[expect(clippy::cast_precision_loss, reason = "counts of a few thousand")]
fn real(count: usize) -> f64 {
    count as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Wilson's interval of 10 in 20 is 29.93 to 70.07, of 0 in 100 it is 0 to 3.70 percent.
    /// Computed.
    #[test]
    fn the_interval_is_wilsons() {
        let (least, most) = Share { hits: 10, of: 20 }.interval();
        assert!((least - 29.93).abs() < 0.01 && (most - 70.07).abs() < 0.01, "{least} {most}");
        let (least, most) = Share { hits: 0, of: 100 }.interval();
        assert!(least.abs() < 1e-9 && (most - 3.70).abs() < 0.01, "{least} {most}");
    }
}
