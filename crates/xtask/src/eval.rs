//! `cargo xtask eval [--seed N] [--surveys N]`: the judge on invented surveys, by seed.
//!
//! `tests/sim` makes them and shares no code with the judge. A row is a set of readings:
//! false alarms on clean surveys; of the slips that damage (an ordered number off by a
//! quarter inch or more) those found, beside what the rules alone find and what rules and
//! Baarda's w together find; readings rightly named; proposed values that are right;
//! further readings asked for. Behind each share the half width of its 95 % interval.

use anyhow::{Context as _, Result};
use hangtrue_sim::mark::{Marked, mark};
use hangtrue_sim::{LAYOUTS, Layout, Population, Rng, Weights, World, clean, slipped};
use std::io::Write as _;

/// Baarda's critical value at a significance of 0.001.
const W: f64 = 3.29;

/// What the judge is to reach: found and named, in percent, in the order of [`LAYOUTS`].
const AIMS: [(f64, f64); 5] =
    [(47.0, 95.0), (70.0, 95.0), (87.0, 90.0), (95.0, 95.0), (93.0, 93.0)];

/// Prints the table. It judges; it does not fail.
///
/// # Errors
/// When an argument is no number, or nothing can be written.
pub(crate) fn run(words: &[&str]) -> Result<()> {
    let number = |name: &str, usual: u64| -> Result<u64> {
        let at = words.iter().position(|word| *word == name);
        let Some(text) = at.and_then(|at| words.get(at.saturating_add(1))) else {
            return Ok(usual);
        };
        text.parse().with_context(|| format!("{name} takes a number, not `{text}`"))
    };
    let seed = number("--seed", 2_026)?;
    let surveys = usize::try_from(number("--surveys", 6_000)?)?;
    let usual = World::default();
    let noisy = World::default().noisier(1.5);
    let mut out = std::io::stdout().lock();
    for (what, population, world, weights) in [
        ("usual yard", Population::Yard, &usual, Weights::Assumed),
        ("noise 1.5 times larger", Population::Yard, &noisy, Weights::Assumed),
        (
            "sizes uniform over all plausible openings",
            Population::Uniform,
            &usual,
            Weights::Assumed,
        ),
        ("freight containers", Population::Container, &usual, Weights::Assumed),
        ("narrow city bodies", Population::City, &usual, Weights::Assumed),
        ("all slips equally likely", Population::Yard, &usual, Weights::Equal),
    ] {
        writeln!(
            out,
            "\n{what}, seed {seed}, {surveys} clean and {} slipped a row",
            slips(surveys)
        )?;
        writeln!(
            out,
            "{:42} {:>13} {:>13} {:>6} {:>7} {:>13} {:>13} {:>6}",
            "readings",
            "false alarms",
            "found",
            "rules",
            "rules+w",
            "named",
            "value right",
            "asked"
        )?;
        for (layout, (found, named)) in LAYOUTS.iter().zip(AIMS) {
            let row = Row::of(layout, population, world, weights, seed, surveys);
            writeln!(out, "{:42} {}   (aim {found:.0} / {named:.0})", layout.name, row.text())?;
        }
    }
    Ok(())
}

fn slips(surveys: usize) -> usize {
    surveys.saturating_mul(2) / 3
}

/// The marks of one set of readings.
struct Row {
    clean: Vec<Marked>,
    slipped: Vec<Marked>,
}

impl Row {
    fn of(
        layout: &Layout,
        population: Population,
        world: &World,
        weights: Weights,
        seed: u64,
        surveys: usize,
    ) -> Self {
        let mut rng = Rng::new(seed);
        let clean =
            (0..surveys).map(|_| mark(&clean(layout, population, world, &mut rng))).collect();
        let slipped = (0..slips(surveys))
            .map(|_| mark(&slipped(layout, population, world, weights, &mut rng)))
            .collect();
        Self { clean, slipped }
    }

    fn text(&self) -> String {
        let found: Vec<&Marked> = self.slipped.iter().filter(|one| one.alarm).collect();
        let proposed: Vec<&Marked> =
            self.slipped.iter().filter(|one| one.proposed.is_some()).collect();
        let all: Vec<&Marked> = self.slipped.iter().collect();
        let clean: Vec<&Marked> = self.clean.iter().collect();
        let asked: usize = self.clean.iter().map(|one| one.asked).sum();
        format!(
            "{} {} {:6.1} {:7.1} {} {} {:6.1}",
            share(&clean, |one| one.alarm),
            share(&all, |one| one.alarm),
            percent(&all, |one| one.by_rules),
            percent(&all, |one| one.by_rules || one.w > W),
            share(&found, |one| one.named),
            share(&proposed, |one| one.proposed == Some(true)),
            real(asked) / real(self.clean.len()),
        )
    }
}

fn percent(of: &[&Marked], is: impl Fn(&Marked) -> bool) -> f64 {
    100.0 * real(of.iter().filter(|one| is(one)).count()) / real(of.len().max(1))
}

/// The share in percent, and the half width of its 95 % interval (Wilson).
fn share(of: &[&Marked], is: impl Fn(&Marked) -> bool) -> String {
    let p = percent(of, is) / 100.0;
    let (n, z) = (real(of.len().max(1)), 1.96);
    let half = z * (p * (1.0 - p) / n + z * z / (4.0 * n * n)).sqrt() / (1.0 + z * z / n);
    format!("{:6.2} ± {:4.2}", 100.0 * p, 100.0 * half)
}

#[expect(clippy::cast_precision_loss, reason = "counts of a few thousand")]
fn real(count: usize) -> f64 {
    count as f64
}
