//! `hangtrue check`: surveys in, answers out, one a line.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use hangtrue_core::check;
use hangtrue_core::check::Verdict;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_link::json::{self, Answer, Fault, FileError, Id, Refusal, Request};

use crate::args;
use crate::lines::{self, Line};
use crate::out::Out;
use crate::table::Table;

pub(crate) fn run(args: args::Check, out: &mut Out) -> anyhow::Result<ExitCode> {
    let fail_on = args.fail_on.map(Verdict::from);
    let stdin = [PathBuf::from("-")];
    let files = if args.files.is_empty() { &stdin[..] } else { &args.files };
    let profile = match &args.profile {
        Some(file) => super::profile::rules(file)?,
        None => Profile::default(),
    };
    // The door line and the answers come with an order; a survey has neither.
    let profile = profile.chosen(&[]);
    let mut table =
        Table::new(["id", "verdict", "width", "height", "header", "bow", "first finding"]);
    let mut failed = false;
    for file in files {
        lines::of_file(Path::new(file), &mut |_, line| {
            let Some(request) = request(line) else { return Ok(()) };
            let verdict = match request {
                Ok(Request { id, survey }) => {
                    let report = check(&survey, &profile);
                    let speaker = Speaker { unit: survey.unit, ..Speaker::default() };
                    let answer = Answer::new(id, &report, speaker);
                    if !out.is_table() {
                        out.json(&answer)?;
                    } else if table.push(row(answer)) {
                        out.rows(&mut table)?;
                    }
                    Some(report.verdict)
                }
                Err((id, error)) => {
                    let refusal = Refusal::new(id, &error, Language::English);
                    if !out.is_table() {
                        out.json(&refusal)?;
                    } else if table.push(refused(&refusal)) {
                        out.rows(&mut table)?;
                    }
                    None
                }
            };
            if let Some(fail_on) = fail_on {
                failed |= verdict.is_none_or(|verdict| verdict >= fail_on);
            }
            Ok(())
        })?;
    }
    if out.is_table() {
        out.rows(&mut table)?;
    }
    Ok(if failed { ExitCode::from(1) } else { ExitCode::SUCCESS })
}

/// What a line holds; nothing for a blank line.
fn request(line: Line<'_>) -> Option<Result<Request, (Id, FileError)>> {
    match line {
        Line::Whole(text) if text.trim().is_empty() => None,
        Line::Whole(text) => Some(json::parse(text)),
        Line::TooLong(_) => {
            let fault = Fault::TooLong { most: lines::LONGEST };
            Some(Err((Id::None, FileError::new(String::new(), fault))))
        }
    }
}

fn row(answer: Answer) -> [String; 7] {
    let text = |value: Option<json::Value>| value.map_or_else(|| "—".to_owned(), |v| v.text);
    let order = answer.order;
    [
        answer.id.text(),
        answer.verdict.to_owned(),
        text(order.width),
        text(order.height),
        text(order.header),
        text(order.bow),
        answer.findings.into_iter().next().map_or_else(String::new, |finding| finding.message),
    ]
}

fn refused(refusal: &Refusal) -> [String; 7] {
    let mut row = [const { String::new() }; 7];
    let [id, verdict, .., finding] = &mut row;
    *id = refusal.id.text();
    "not a survey".clone_into(verdict);
    refusal.message().clone_into(finding);
    row
}
