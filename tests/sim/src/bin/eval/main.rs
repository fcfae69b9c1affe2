//! `cargo xtask eval`: the judge on invented surveys, by seed, beside simpler checks.
//!
//! Usage: `eval [--seed N] [--surveys N] [--quick] [--only TEXT] [--check]`.
//!
//! A row is a set of readings: false alarms on clean surveys; of the damaging slips (an
//! ordered number off by a quarter inch or more) those found by the product, by a range check
//! alone, with a limit on scatter, with Baarda's w; readings rightly named; proposed values
//! that are right. Behind each share its 95 % interval (Wilson). Same surveys for all of them.
//! `--check` compares with what was aimed at and fails, naming each aim that is missed.

mod aims;
mod table;

use std::io::{self, Write};
use std::process::ExitCode;
use std::time::Instant;

use hangtrue_sim::row::{Condition, Row, Size, conditions, limits};
use hangtrue_sim::{LAYOUTS, Layout};

use aims::Missed;

/// A seed that nothing was tuned on.
const SEED: u64 = 2_026;

/// What was asked for on the command line.
struct Asked {
    seed: u64,
    surveys: u64,
    only: String,
    check: bool,
}

impl Asked {
    fn of(words: &[String]) -> Result<Self, String> {
        let mut asked = Self { seed: SEED, surveys: 6_000, only: String::new(), check: false };
        let mut words = words.iter();
        while let Some(word) = words.next() {
            let mut value = || words.next().ok_or(format!("{word} takes a value"));
            let number = |text: &String| {
                text.parse().map_err(|_| format!("{word} takes a whole number, not `{text}`"))
            };
            match word.as_str() {
                "--seed" => asked.seed = number(value()?)?,
                "--surveys" => asked.surveys = number(value()?)?.max(3),
                "--quick" => asked.surveys = 600,
                "--only" => asked.only.clone_from(value()?),
                "--check" => asked.check = true,
                _ => return Err(format!("`{word}` is not an argument here")),
            }
        }
        Ok(asked)
    }

    /// The person goes on as assumed, and on a metric tape.
    fn size(&self, condition: &Condition, first: bool) -> Size {
        let on = first || condition.world.metric >= 1.0;
        let walked = if on { self.surveys / 6 } else { 0 };
        Size { clean: self.surveys, slipped: self.surveys / 3 * 2, walked }
    }
}

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let done = Asked::of(&words)
        .and_then(|asked| run(&asked, &mut io::stdout().lock()).map_err(|error| error.to_string()));
    match done {
        Ok(missed) if missed.is_empty() => ExitCode::SUCCESS,
        Ok(missed) => {
            for Missed { what, row } in missed {
                eprintln!("eval: missed: {what} ({row})");
            }
            ExitCode::FAILURE
        }
        Err(error) => {
            eprintln!("eval: {error}");
            ExitCode::FAILURE
        }
    }
}

/// Prints the tables; what was aimed at and missed, if that is asked.
fn run(asked: &Asked, out: &mut impl Write) -> io::Result<Vec<Missed>> {
    let started = Instant::now();
    let limits = limits();
    let mut missed = Vec::new();
    let mut usual: Vec<Row> = Vec::new();
    let all = conditions();
    let wanted = all.iter().enumerate().filter(|(_, one)| one.name.contains(&asked.only));
    for (place, condition) in wanted {
        let first = place == 0;
        let size = asked.size(condition, first);
        table::head(out, condition, asked.seed, size)?;
        let mut rows: Vec<(Layout, Row)> = Vec::new();
        for (layout, limits) in LAYOUTS.iter().zip(&limits) {
            let row = Row::of(layout, condition, asked.seed, size);
            table::line(out, layout, &row, limits)?;
            out.flush()?;
            rows.push((*layout, row));
        }
        missed.extend(checked(condition, first, &rows, &usual));
        if size.walked > 0 {
            table::further(out, &rows)?;
        }
        if first {
            table::by_slip(out, &rows)?;
            table::by_size(out, &rows)?;
            usual = rows.into_iter().map(|(_, row)| row).collect();
        }
    }
    writeln!(out, "\n{:.0} seconds in all", started.elapsed().as_secs_f64())?;
    if !asked.check {
        return Ok(Vec::new());
    }
    if missed.is_empty() {
        writeln!(out, "every aim is reached")?;
    }
    Ok(missed)
}

fn checked(
    condition: &Condition,
    first: bool,
    rows: &[(Layout, Row)],
    usual: &[Row],
) -> Vec<Missed> {
    let mut missed = Vec::new();
    for (place, (layout, row)) in rows.iter().enumerate() {
        let against = if first { None } else { usual.get(place) };
        for what in aims::missed(condition, first, place, row, against) {
            missed.push(Missed { what, row: format!("{}, {}", condition.name, layout.name) });
        }
    }
    missed
}
