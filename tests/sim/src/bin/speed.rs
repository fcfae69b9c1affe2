//! `cargo xtask bench judge`: how long one judgement takes.
//!
//! Usage: `speed`, to time the judge on the clock; `speed --judgements N`, to judge N times
//! and no more, for a tool that counts instructions.

use std::hint::black_box;
use std::io::{self, Write};
use std::time::{Duration, Instant};

use hangtrue_core::check::check;
use hangtrue_core::judge::judge;
use hangtrue_core::profile::Profile;
use hangtrue_core::survey::Survey;
use hangtrue_sim::{LAYOUTS, Layout, Population, Rng, Weights, World, clean, mark, slipped};

/// Surveys of each set of readings, one in two with a slip in it.
const SURVEYS: u64 = 200;
/// Times that each is judged; the fastest counts, for what else the machine does only adds.
const TIMES: usize = 7;

fn main() -> io::Result<()> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words.as_slice() {
        [] => timed(&mut io::stdout().lock()),
        ["--judgements", count] => {
            let count = count.parse().map_err(io::Error::other)?;
            let eleven = LAYOUTS.last().map(|layout| surveys(layout, 1)).unwrap_or_default();
            let profile = Profile::default();
            for survey in eleven.iter().cycle().take(if eleven.is_empty() { 0 } else { count }) {
                black_box(judge(black_box(survey), &profile));
            }
            Ok(())
        }
        _ => Err(io::Error::other("usage: speed [--judgements N]")),
    }
}

fn surveys(layout: &Layout, count: u64) -> Vec<Survey> {
    let world = World::default();
    let one = |index: u64| {
        let mut rng = Rng::of(11, 0, index);
        let slips = index % 2 == 1;
        mark::survey(&if slips {
            slipped(layout, Population::Yard, &world, Weights::Assumed, &mut rng)
        } else {
            clean(layout, Population::Yard, &world, &mut rng)
        })
    };
    (0..count).map(one).collect()
}

fn timed(out: &mut impl Write) -> io::Result<()> {
    writeln!(
        out,
        "microseconds, {SURVEYS} surveys a row, the fastest of {TIMES} of each; half is between the quarters"
    )?;
    writeln!(
        out,
        "{:38} {:>8} {:>15} {:>8} {:>12}",
        "readings", "median", "quarters", "most", "with rules"
    )?;
    let profile = Profile::default();
    for layout in LAYOUTS {
        let surveys = surveys(&layout, SURVEYS);
        let judged = times(&surveys, |survey| {
            black_box(judge(black_box(survey), &profile));
        });
        let checked = times(&surveys, |survey| {
            black_box(check(black_box(survey), &profile));
        });
        let at = |times: &[f64], percent: usize| {
            times.get((times.len().saturating_sub(1)) * percent / 100).copied().unwrap_or(0.0)
        };
        let quarters = format!("{:.0}–{:.0}", at(&judged, 25), at(&judged, 75));
        writeln!(
            out,
            "{:38} {:8.0} {quarters:>15} {:8.0} {:12.0}",
            layout.name,
            at(&judged, 50),
            at(&judged, 100),
            at(&checked, 50)
        )?;
    }
    Ok(())
}

/// Microseconds for each survey, sorted.
fn times(surveys: &[Survey], run: impl Fn(&Survey)) -> Vec<f64> {
    let once = |survey: &Survey| {
        let started = Instant::now();
        run(survey);
        started.elapsed()
    };
    let mut times: Vec<f64> = surveys
        .iter()
        .map(|survey| (0..TIMES).map(|_| once(survey)).min().unwrap_or(Duration::ZERO))
        .map(|time| time.as_secs_f64() * 1e6)
        .collect();
    times.sort_by(f64::total_cmp);
    times
}
