//! `hangtrue open`: what was sent, with every rule run again.

use std::process::ExitCode;

use hangtrue_core::Length;
use hangtrue_core::check::{Report, Verdict};
use hangtrue_core::order::Date;
use hangtrue_core::say::{Speaker, capital};
use hangtrue_core::{Dimension, Spot};
use hangtrue_link::json::order::OrderFile;
use hangtrue_link::json::{Answer, Id};
use hangtrue_link::{code, share};
use serde::Serialize;

use super::{exit, refusal};
use crate::args;
use crate::input::{Content, Item, several};
use crate::out::Out;
use crate::rules::{Rules, speaker};
use crate::style::{FAINT, PLAIN, REFUSED, STRONG, of, severity};
use crate::table::{Cell, Table, printable};
use crate::words;

/// The answer to one order.
#[derive(Serialize)]
pub(super) struct Opened {
    /// What was sent.
    order: OrderFile,
    /// Characters of thirty that were misheard: the order is a proposal.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    corrected: Vec<usize>,
    /// What the rules say of it now.
    check: Answer,
}

impl Opened {
    pub(super) fn new(id: Id, content: Content, report: &Report) -> Self {
        let check = Answer::new(id.clone(), report, speaker(&content));
        let order = OrderFile::new(id, &content.order, report);
        Self { order, corrected: content.corrected, check }
    }
}

pub(crate) fn run(args: args::Open, out: &mut Out) -> anyhow::Result<ExitCode> {
    let rules = Rules::of(args.profile.as_deref())?;
    let stdin = ["-".to_owned()];
    let orders = if args.orders.is_empty() { &stdin[..] } else { &args.orders };
    let mut refused = false;
    let mut first = true;
    for argument in orders {
        for item in several(argument, &args.tables, rules.profile())? {
            let name = item.name();
            let Item { id, content, .. } = item;
            let content = match content {
                Ok(content) => content,
                Err(wrong) => {
                    refused = true;
                    if !out.is_table() && !args.summary {
                        out.json(&refusal(id, wrong))?;
                    } else {
                        let mut table = Table::bare(2);
                        table.push([name.into(), Cell::new(wrong.message, REFUSED)]);
                        out.rows(&mut table)?;
                    }
                    continue;
                }
            };
            let report = rules.report(&content);
            let content = content.claimed(&report, rules.profile());
            if args.order {
                out.json(&OrderFile::new(id, &content.order, &report))?;
            } else if args.summary || out.is_table() {
                if !core::mem::take(&mut first) {
                    out.text("\n")?;
                }
                if args.summary {
                    let speaker = speaker(&content);
                    out.text(&share::summary(&content.order, &report, "", speaker))?;
                } else {
                    show(&id, &content, &report, out)?;
                }
            } else {
                out.json(&Opened::new(id, content, &report))?;
            }
        }
    }
    Ok(exit(refused))
}

/// The order as a sheet on a terminal.
pub(super) fn show(
    id: &Id,
    content: &Content,
    report: &Report,
    out: &mut Out,
) -> anyhow::Result<()> {
    let speaker = speaker(content);
    let title = if id.is_none() {
        "Rear door order".into()
    } else {
        "Rear door order ".to_owned() + &id.text()
    };
    line(out, STRONG, &title)?;
    if !content.corrected.is_empty() {
        line(out, of(Verdict::Recheck), &words::corrected(&content.corrected))?;
    }
    out.rows(&mut about(content, speaker))?;
    out.text("\n")?;
    out.rows(&mut numbers(report, speaker))?;
    if report.preparation.needed() {
        line(out, PLAIN, "\nBuild the frame first, then re-measure:")?;
        out.rows(&mut build(report, speaker))?;
    }
    out.text("\n")?;
    out.rows(&mut findings(content, report, speaker))?;
    line(out, STRONG, "\nReadings, as typed")?;
    out.rows(&mut readings(content, speaker))
}

fn line(out: &mut Out, style: anstyle::Style, text: &str) -> anyhow::Result<()> {
    // A line end of ours is none of a stranger's.
    let (before, text) = text.strip_prefix('\n').map_or(("", text), |text| ("\n", text));
    out.text(&format!("{before}{style}{}{style:#}\n", printable(text)))
}

/// What goes with the order, as far as it was said.
fn about(content: &Content, speaker: Speaker) -> Table {
    let order = &content.order;
    let mut table = Table::bare(2);
    let mut add = |name: &str, value: String| {
        if !value.is_empty() {
            table.push([Cell::new(name, FAINT), value.into()]);
        }
    };
    add("vehicle", order.vehicle.clone());
    add("contact", order.contact.clone());
    add("note", order.note.clone());
    add("written", order.date.map(day).unwrap_or_default());
    let profile = order.profile.as_ref();
    add("rules", profile.map(|(name, n)| format!("{name}, revision {n}")).unwrap_or_default());
    for answer in &order.answers {
        add(&answer.question, answer.answer.clone());
    }
    let old_door = |still_in| if still_in { "still in when it was measured" } else { "out" };
    add("old door", order.old_door_in.map(old_door).unwrap_or_default().to_owned());
    let frame = if order.survey.prepared { "as it will stay" } else { "as found" };
    add("frame", frame.to_owned());
    add("unit", speaker.unit.key().to_owned());
    table
}

fn day(date: Date) -> String {
    format!("{:04}-{:02}-{:02}", date.year, date.month, date.day)
}

fn numbers(report: &Report, speaker: Speaker) -> Table {
    let mut table = Table::bare(3);
    for dimension in Dimension::ALL {
        let name = Cell::from(speaker.dimension(dimension));
        let Some(number) = report.numbers.get(dimension) else {
            table.push([name, Cell::new("not read", FAINT), "".into()]);
            continue;
        };
        let changed = report.preparation.change(dimension) != Length::ZERO;
        let was = if changed { number.as_found.text(speaker.unit) } else { String::new() };
        let was = if changed { ["as found ", &was].concat() } else { was };
        let ordered = Cell::new(number.ordered.text(speaker.unit), STRONG);
        table.push([name, ordered, Cell::new(was, FAINT)]);
    }
    if let Some(characters) = code::characters(&code::Said::of(report, speaker.unit)) {
        table.push(["check characters".into(), Cell::new(characters, STRONG), "".into()]);
    }
    table
}

fn build(report: &Report, speaker: Speaker) -> Table {
    let build = report.preparation;
    let mut table = Table::bare(2);
    for (what, by) in [
        ("header down by", build.header_down),
        ("left post out by", build.left_out),
        ("right post out by", build.right_out),
    ] {
        if by != Length::ZERO {
            table.push([what.into(), by.text(speaker.unit).into()]);
        }
    }
    table
}

/// The verdict, then everything found with what to do next.
fn findings(content: &Content, report: &Report, speaker: Speaker) -> Table {
    let mut table = Table::bare(2);
    let order = &content.order;
    let says = match report.verdict {
        Verdict::Clear => "Nothing stands against it.",
        Verdict::Recheck => "Not before this is confirmed or read again:",
        Verdict::Stop => "This cannot be:",
    };
    table.push([Cell::new(report.verdict.key(), of(report.verdict)), says.into()]);
    if content.is_order && order.claimed != report.verdict {
        let saw = ["The writer saw: ", order.claimed.key(), "."].concat();
        table.push(["".into(), Cell::new(saw, of(Verdict::Recheck))]);
    }
    for finding in &report.findings {
        let confirmed = order.confirmed.iter().any(|confirmed| {
            confirmed.rule == finding.rule
                && confirmed.spot.is_none_or(|spot| finding.spots.contains(&spot))
        });
        let mut says = speaker.say(&finding.message);
        if confirmed {
            says.push_str(" (The writer confirmed it.)");
        }
        table.push([Cell::new(finding.severity.key(), severity(finding.severity)), says.into()]);
        for hint in &finding.hints {
            table.push(["".into(), Cell::new(speaker.say(hint), FAINT)]);
        }
    }
    table
}

fn readings(content: &Content, speaker: Speaker) -> Table {
    let mut table = Table::bare(2);
    for spot in Spot::ALL {
        for entry in content.order.survey.entries(spot) {
            let style = if entry.struck { FAINT } else { PLAIN };
            let replaced = if entry.struck { "  (replaced by a later reading)" } else { "" };
            let text = [&entry.text, replaced].concat();
            table.push([capital(speaker.spot(spot)).into(), Cell::new(text, style)]);
        }
    }
    table
}
