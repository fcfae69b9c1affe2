//! `hangtrue profile`: whether dealers' profiles are as their format says.

use std::io::Read as _;
use std::path::Path;
use std::process::ExitCode;

use anyhow::{Context as _, bail};
use hangtrue_core::check::Verdict;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_link::json::profile::{MOST, parse};
use hangtrue_link::say;
use serde::Serialize;

use crate::args;
use crate::out::Out;
use crate::style::{REFUSED, of};
use crate::table::{Cell, Table};

/// What is said of one file.
#[derive(Serialize)]
struct Told {
    file: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    profile: Option<Summary>,
    #[serde(skip_serializing_if = "Option::is_none")]
    error: Option<Wrong>,
}

/// What a profile holds.
#[derive(Serialize)]
struct Summary {
    name: String,
    revision: u32,
    limits: usize,
    doors: usize,
    questions: usize,
}

/// What is wrong with one.
#[derive(Serialize)]
struct Wrong {
    code: &'static str,
    #[serde(skip_serializing_if = "String::is_empty")]
    place: String,
    message: String,
}

pub(crate) fn run(args: args::Profile, out: &mut Out) -> anyhow::Result<ExitCode> {
    let mut table =
        Table::new(["file", "name", "revision", "limits", "doors", "questions", "what"]);
    let mut code = ExitCode::SUCCESS;
    for file in args.files {
        let told = told(&file)?;
        if told.error.is_some() {
            code = ExitCode::from(1);
        }
        if !out.is_table() {
            out.json(&told)?;
        } else if table.push(row(told)) {
            out.rows(&mut table)?;
        }
    }
    if out.is_table() {
        out.rows(&mut table)?;
    }
    Ok(code)
}

/// The rules in `file`, for the commands that check by them.
pub(crate) fn rules(file: &Path) -> anyhow::Result<Profile> {
    parse(&text(file)?).map_err(|error| {
        let message = say::profile(Language::English, &error);
        anyhow::anyhow!("{} is refused: {message}", file.display())
    })
}

fn told(file: &Path) -> anyhow::Result<Told> {
    let (profile, error) = match parse(&text(file)?) {
        Ok(profile) => (Some(summary(profile)), None),
        Err(error) => {
            let message = say::profile(Language::English, &error);
            (None, Some(Wrong { code: error.fault.code(), place: error.place, message }))
        }
    };
    Ok(Told { file: file.display().to_string(), profile, error })
}

fn summary(profile: Profile) -> Summary {
    Summary {
        revision: profile.revision,
        limits: profile.rulings.len(),
        doors: profile.doors.len(),
        questions: profile.questions.len(),
        name: profile.name,
    }
}

fn row(told: Told) -> [Cell; 7] {
    let Told { file, profile, error } = told;
    let Some(profile) = profile else {
        let mut row = [const { String::new() }; 7].map(Cell::from);
        let [first, .., what] = &mut row;
        *first = file.into();
        *what = Cell::new(error.map(|error| error.message).unwrap_or_default(), REFUSED);
        return row;
    };
    let Summary { name, revision, limits, doors, questions } = profile;
    let count = |count: usize| Cell::from(count.to_string());
    let (limits, doors, questions) = (count(limits), count(doors), count(questions));
    let fine = Cell::new("can be used", of(Verdict::Clear));
    [file.into(), name.into(), revision.to_string().into(), limits, doors, questions, fine]
}

/// The text of `file`, as far as a profile is read and one byte more: what is larger is
/// refused as too large, and not held in memory.
fn text(file: &Path) -> anyhow::Result<String> {
    let opened =
        std::fs::File::open(file).with_context(|| format!("cannot open {}", file.display()))?;
    let mut bytes = Vec::new();
    let most = u64::try_from(MOST).unwrap_or(u64::MAX);
    opened
        .take(most.saturating_add(1))
        .read_to_end(&mut bytes)
        .with_context(|| format!("cannot read {}", file.display()))?;
    match String::from_utf8(bytes) {
        Ok(text) => Ok(text),
        // A character that the limit cuts in two.
        Err(error) if error.as_bytes().len() > MOST => Ok(" ".repeat(MOST.saturating_add(1))),
        Err(_) => bail!("{} is not UTF-8: save it as UTF-8", file.display()),
    }
}
