//! `hangtrue check` over an archive of invented surveys, beside scripts that only look for the
//! least and the most of each reading.

use std::fs::{self, File};
use std::io::{BufRead as _, BufReader};
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Result, ensure};

use super::process::{Cost, cost};
use super::table::Table;
use crate::sh::{self, say};

/// How many surveys, and how often.
const ROUNDS: [(usize, usize); 2] = [(1_000, 5), (10_000, 3)];
/// The same where there is time.
const LONG: [(usize, usize); 4] = [(1_000, 5), (10_000, 3), (100_000, 1), (1_000_000, 1)];
/// The peers are spared the last: what they cost a survey is plain by then.
const MOST_FOR_PEERS: usize = 100_000;

/// A figure of what so many surveys have cost.
type Figure = fn(&Cost, f64) -> f64;

/// Adds surveys a second, seconds by the clock, and memory.
///
/// # Errors
/// When something cannot be installed, built or run, or a script leaves a survey out.
pub(super) fn run(table: &mut Table, long: bool) -> Result<()> {
    let folder = sh::target_folder()?.join("bench");
    fs::create_dir_all(&folder)?;
    install_from_npm()?;
    let python = install_from_pypi()?;
    let hangtrue = sh::built(&["--release", "--package=hangtrue-cli", "--bin=hangtrue"])?;
    let surveys = sh::built(&["--release", "--package=hangtrue-sim", "--bin=surveys"])?;
    let check = |jobs: &[&str]| {
        let mut command = Command::new(&hangtrue);
        command.args(["check", "--format", "json-lines", "--output", "json"]).args(jobs);
        command
    };
    let script = |program: &Path, name: &str| {
        let mut command = Command::new(program);
        command.arg(sh::root().join("tests/bench/archive").join(name));
        command
    };
    let all: [(&str, &dyn Fn() -> Command); 4] = [
        ("hangtrue check, one job, all of the judging", &|| check(&["--jobs", "1"])),
        ("hangtrue check, a job a processor", &|| check(&[])),
        ("Node.js, zod + mathjs, least and most only", &|| script(Path::new("node"), "minmax.mjs")),
        ("Python, pydantic + pint, least and most only", &|| script(&python, "minmax.py")),
    ];
    for (count, rounds) in if long { &LONG[..] } else { &ROUNDS } {
        let lines = folder.join(format!("surveys-{count}.jsonl"));
        cost(Command::new(&surveys).arg(count.to_string()), &lines)?;
        let sides = if *count > MOST_FOR_PEERS { 2 } else { all.len() };
        let mut costs: Vec<Vec<Cost>> = all.iter().map(|_| Vec::new()).collect();
        for round in 1..=*rounds {
            for ((who, command), costs) in all.iter().zip(&mut costs).take(sides) {
                let answers = folder.join("answers.jsonl");
                costs.push(cost(command().arg(&lines), &answers)?);
                let answered = BufReader::new(File::open(&answers)?).lines().count();
                ensure!(answered == *count, "{who} answers {answered} of {count} surveys");
                say!("{who}: {count} surveys, round {round} of {rounds}");
            }
        }
        let what = format!("{count} surveys");
        let each: [(&str, Figure); 3] = [
            ("surveys a processor second", |cost, count| count / cost.processor),
            ("surveys a second by the clock", |cost, count| count / cost.wall),
            ("MB at most", |cost, _| cost.megabytes),
        ];
        for (unit, figure) in each {
            for ((who, _), costs) in all.iter().zip(&costs).take(sides) {
                #[expect(clippy::cast_precision_loss, reason = "a million is no loss")]
                let values = costs.iter().map(|cost| figure(cost, *count as f64)).collect();
                table.add("archive", &what, who, unit, values);
            }
        }
    }
    Ok(())
}

/// The peers from npm, as the lock file has them.
///
/// # Errors
/// When they cannot be fetched.
pub(super) fn install_from_npm() -> Result<()> {
    let folder = sh::root().join("tests/bench");
    let current = |name: &str| fs::metadata(folder.join(name)).and_then(|it| it.modified()).ok();
    if current("node_modules/.package-lock.json") > current("package-lock.json") {
        return Ok(());
    }
    let words = ["ci", "--ignore-scripts", "--no-audit", "--no-fund"];
    sh::run(sh::command("npm", &words).current_dir(folder))
}

/// The peers from PyPI, in a place of their own; returns the Python that knows them.
fn install_from_pypi() -> Result<PathBuf> {
    let folder = sh::target_folder()?.join("bench/python");
    let wanted = fs::read_to_string(sh::root().join("tests/bench/requirements.txt"))?;
    let (python, installed) = (folder.join("bin/python"), folder.join("installed.txt"));
    if fs::read_to_string(&installed).is_ok_and(|text| text == wanted) {
        return Ok(python);
    }
    sh::run(sh::command("python3", &["-m", "venv"]).arg(&folder))?;
    let words =
        ["-m", "pip", "install", "--quiet", "--requirement", "tests/bench/requirements.txt"];
    sh::run(&mut sh::command(&python.to_string_lossy(), &words))?;
    fs::write(installed, wanted)?;
    Ok(python)
}
