//! `hangtrue check`: orders in, answers out, in their order.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::process::ExitCode;

use hangtrue_core::check::Verdict;
use hangtrue_core::finding::RuleCode;
use hangtrue_core::say::Language;
use hangtrue_link::csv::{self, Sheet};
use hangtrue_link::json::{Answer, Id};
use hangtrue_link::list::{self, ANSWER_COLUMNS};
use serde::Serialize;

use super::{Numbered, exit, refusal};
use crate::args;
use crate::input::{Input, Item, Piece, Reader, Wrong};
use crate::jobs::Jobs;
use crate::out::Out;
use crate::progress::Progress;
use crate::rules::{Rules, speaker};
use crate::style::{REFUSED, of};
use crate::table::{Cell, Table};

pub(crate) fn run(args: args::Check, out: &mut Out) -> anyhow::Result<ExitCode> {
    let fail_on = args.fail_on.map(Verdict::from);
    let stdin = [PathBuf::from("-")];
    let files = if args.files.is_empty() { &stdin[..] } else { &args.files };
    let rules = Rules::of(args.profile.as_deref())?;
    let jobs = Jobs::new(args.jobs)?;
    let form = match (args.csv, out.is_table()) {
        (true, _) => Form::Csv,
        (false, true) => Form::Table,
        (false, false) => Form::Json,
    };
    let mut table =
        Table::new(["id", "verdict", "width", "height", "header", "bow", "first finding"]);
    let mut counts = Counts::default();
    if form == Form::Csv {
        out.text(&csv::line(&ANSWER_COLUMNS))?;
    }
    for file in files {
        let mut input = Input::open(file, &args.tables)?;
        input.reader.judge_by(rules.profile());
        if args.columns {
            tell_columns(&input, out)?;
            continue;
        }
        let mut progress = Progress::new(input.length);
        loop {
            let batch = input.batch()?;
            if batch.is_empty() {
                break;
            }
            let told = jobs.map(&batch, |piece| tell(piece, &input.reader, &rules, form));
            for (piece, told) in batch.iter().zip(told) {
                for Told { verdict, text, found } in told {
                    counts.add(verdict, &found);
                    match text {
                        Text::Line(line) => out.text(&line)?,
                        Text::Row(row) => {
                            if table.push(*row) {
                                out.rows(&mut table)?;
                            }
                        }
                    }
                }
                progress.advance(piece.bytes(), counts.all());
            }
        }
        progress.finish();
    }
    if form == Form::Table && !args.columns {
        out.rows(&mut table)?;
        if counts.all() > 1 {
            out.text(&counts.line())?;
        }
    }
    Ok(exit(fail_on.is_some_and(|fail_on| counts.reach(fail_on))))
}

/// How the answers are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Form {
    Table,
    Json,
    Csv,
}

/// What is said of one item, ready to be written.
struct Told {
    /// [`None`] where it is no order.
    verdict: Option<Verdict>,
    text: Text,
    /// The codes of what was found, each once; for a table, whose end counts them.
    found: Vec<RuleCode>,
}

enum Text {
    Line(String),
    Row(Box<[Cell; 7]>),
}

/// Everything that a piece of the input comes to; on any processor.
fn tell(piece: &Piece, reader: &Reader, rules: &Rules, form: Form) -> Vec<Told> {
    let items = reader.items(piece).into_iter();
    items
        .map(|item| {
            let line = reader.is_numbered().then_some(item.line);
            match form {
                Form::Json => json(item, line, rules),
                Form::Table => row(item, rules),
                Form::Csv => record(item, rules),
            }
        })
        .collect()
}

fn json(item: Item, line: Option<u64>, rules: &Rules) -> Told {
    match item.content {
        Ok(content) => {
            let report = rules.report(&content);
            let answer = Answer::new(item.id, &report, speaker(&content));
            Told {
                verdict: Some(report.verdict),
                text: Text::Line(json_line(line, &answer)),
                found: Vec::new(),
            }
        }
        Err(wrong) => {
            let refusal = refusal(item.id, wrong);
            Told { verdict: None, text: Text::Line(json_line(line, &refusal)), found: Vec::new() }
        }
    }
}

fn json_line(line: Option<u64>, answer: &impl Serialize) -> String {
    let text = match line {
        None => serde_json::to_string(answer),
        Some(line) => serde_json::to_string(&Numbered { line, answer }),
    };
    // Texts, numbers and lists: there is nothing among them that JSON cannot write.
    text.unwrap_or_default() + "\n"
}

fn row(item: Item, rules: &Rules) -> Told {
    let name = Cell::from(item.name());
    match item.content {
        Ok(content) => {
            let report = rules.report(&content);
            let answer = Answer::new(Id::None, &report, speaker(&content));
            let value = |value: Option<hangtrue_link::json::Value>| {
                value.map_or_else(|| Cell::from("—"), |value| Cell::from(value.text))
            };
            let numbers = answer.order;
            let first = answer.findings.into_iter().next().map(|finding| finding.message);
            let row = [
                name,
                Cell::new(answer.verdict, of(report.verdict)),
                value(numbers.width),
                value(numbers.height),
                value(numbers.header),
                value(numbers.bow),
                first.unwrap_or_default().into(),
            ];
            let mut found: Vec<RuleCode> = report.findings.iter().map(|f| f.rule).collect();
            found.sort_unstable();
            found.dedup();
            Told { verdict: Some(report.verdict), text: Text::Row(Box::new(row)), found }
        }
        Err(wrong) => {
            let mut row = [const { String::new() }; 7].map(Cell::from);
            let [id, verdict, .., finding] = &mut row;
            *id = name;
            *verdict = Cell::new("not an order", REFUSED);
            *finding = wrong.message.into();
            Told { verdict: None, text: Text::Row(Box::new(row)), found: Vec::new() }
        }
    }
}

fn record(item: Item, rules: &Rules) -> Told {
    let line = usize::try_from(item.line).unwrap_or(usize::MAX);
    let (cells, verdict) = match item.content {
        Ok(content) => {
            let report = rules.report(&content);
            let answer = list::Answer::order(line, &item.id, &content.order, &report);
            (answer.cells(Language::English), Some(report.verdict))
        }
        Err(wrong) => (unread(line, item.id.text(), wrong), None),
    };
    Told { verdict, text: Text::Line(csv::line(&cells)), found: Vec::new() }
}

/// As [`list::Answer`] writes what is no order, for what only the command refuses too.
fn unread(line: usize, id: String, wrong: Wrong) -> [String; 15] {
    ANSWER_COLUMNS.map(|column| match column {
        "line" => line.to_string(),
        "id" => id.clone(),
        "verdict" => "unread".to_owned(),
        "says" => wrong.message.clone(),
        _ => String::new(),
    })
}

/// How many came to what.
#[derive(Default)]
struct Counts {
    clear: u64,
    recheck: u64,
    stop: u64,
    unread: u64,
    /// In how many orders each thing was found.
    found: BTreeMap<RuleCode, u64>,
}

impl Counts {
    fn add(&mut self, verdict: Option<Verdict>, found: &[RuleCode]) {
        let count = match verdict {
            Some(Verdict::Clear) => &mut self.clear,
            Some(Verdict::Recheck) => &mut self.recheck,
            Some(Verdict::Stop) => &mut self.stop,
            None => &mut self.unread,
        };
        *count += 1;
        for rule in found {
            *self.found.entry(rule).or_default() += 1;
        }
    }

    const fn all(&self) -> u64 {
        self.clear + self.recheck + self.stop + self.unread
    }

    /// Whether something came to `verdict` or worse, or is no order.
    fn reach(&self, verdict: Verdict) -> bool {
        let recheck = verdict <= Verdict::Recheck && self.recheck > 0;
        let clear = verdict == Verdict::Clear && self.clear > 0;
        clear || recheck || self.stop > 0 || self.unread > 0
    }

    fn line(&self) -> String {
        let mut line = format!(
            "\n{} checked: {} clear, {} recheck, {} stop",
            self.all(),
            self.clear,
            self.recheck,
            self.stop
        );
        if self.unread > 0 {
            line.push_str(&format!(", {} not an order", self.unread));
        }
        line.push('\n');
        if !self.found.is_empty() {
            let mut found: Vec<(&RuleCode, &u64)> = self.found.iter().collect();
            // Stable: equals stay in the order of their names.
            found.sort_by_key(|(_, count)| core::cmp::Reverse(**count));
            let found: Vec<String> =
                found.into_iter().map(|(rule, count)| format!("{count} {rule}")).collect();
            line.push_str(&format!("found: {}\n", found.join(", ")));
        }
        line
    }
}

/// What a column of a table is taken for.
#[derive(Serialize)]
struct Taken<'a> {
    column: usize,
    name: &'a str,
    what: String,
    unit: Option<&'static str>,
}

fn tell_columns(input: &Input, out: &mut Out) -> anyhow::Result<()> {
    let Some(sheet) = input.reader.sheet() else {
        anyhow::bail!("{} is no table: only a table has columns", input.name)
    };
    let mut table = Table::new(["column", "name", "is taken for", "unit"]);
    for taken in taken(sheet) {
        if !out.is_table() {
            out.json(&taken)?;
            continue;
        }
        let Taken { column, name, what, unit } = taken;
        let column = column.to_string();
        table.push([column.into(), name.into(), what.into(), unit.unwrap_or_default().into()]);
    }
    if out.is_table() {
        out.rows(&mut table)?;
    }
    Ok(())
}

fn taken(sheet: &Sheet) -> impl Iterator<Item = Taken<'_>> {
    sheet.names.iter().zip(&sheet.columns).enumerate().map(|(at, (name, column))| {
        let reading = matches!(column.what, csv::What::Reading(_));
        let measure = column.measure.unwrap_or_else(|| sheet.unit.into());
        let unit = reading.then(|| measure.symbol());
        Taken { column: at + 1, name, what: column.what.key(), unit }
    })
}
