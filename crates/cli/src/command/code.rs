//! `hangtrue code`: an order over the telephone.

use std::process::ExitCode;

use anyhow::bail;
use hangtrue_core::check::Verdict;
use hangtrue_core::say::{Speaker, capital};
use hangtrue_core::{Dimension, Length, Unit};
use hangtrue_link::code::{
    self, CHECK, HeardError, Misheard, Outcome, Said, WORD, characters, heard, script, spaced,
};
use hangtrue_link::json::Id;
use serde::Serialize;

use super::{exit, open, refusal};
use crate::args::{self, Tables};
use crate::input::{Content, Item, Wrong, several, small};
use crate::out::Out;
use crate::rules::Rules;
use crate::style::{FAINT, STRONG, of};
use crate::table::{Cell, Table};
use crate::words;

pub(crate) fn run(args: args::Code, out: &mut Out) -> anyhow::Result<ExitCode> {
    let rules = Rules::of(args.profile.as_deref())?;
    match &args.heard {
        None => give(&args, &rules, out),
        Some(text) => match heard(text, CHECK) {
            Ok(_) => compare(&args, &rules, text, out),
            Err(HeardError::Count { found, .. }) if found.abs_diff(WORD) <= 2 => {
                open_small(text, &rules, out)
            }
            Err(HeardError::Count { found, .. }) => bail!(
                "--heard has {found} characters: {CHECK} are needed beside the numbers, or {WORD} \
                 for a small order. Write ? for each one that was not understood"
            ),
            Err(error) => bail!("--heard: {}", words::heard(&error)),
        },
    }
}

/// What an order's caller says.
#[derive(Serialize)]
struct Given {
    id: Id,
    /// The six check characters.
    check: String,
    /// The thirty characters; none where the order needs its link.
    small: Option<String>,
    /// What to read aloud.
    script: Vec<String>,
}

fn give(args: &args::Code, rules: &Rules, out: &mut Out) -> anyhow::Result<ExitCode> {
    let mut refused = false;
    let mut first = true;
    let items = if args.what.len() == 4 {
        let said = said(args)?;
        vec![(Id::None, Ok((said, None)))]
    } else {
        orders(args, rules)?
            .into_iter()
            .map(|Item { id, content, .. }| {
                let given = content.map(|content| {
                    let unit = content.order.survey.unit;
                    let said = Said::of(&rules.report(&content), unit);
                    (said, code::small(&content.order))
                });
                (id, given)
            })
            .collect()
    };
    for (id, given) in items {
        let given = given.and_then(|(said, small)| {
            let script = script(&said, args.language.into()).ok_or_else(|| no_code(&said))?;
            let (check, script) = (script.characters, script.lines);
            Ok(Given { id: id.clone(), check, small, script })
        });
        refused |= given.is_err();
        match given {
            Ok(given) if out.is_table() => {
                if !core::mem::take(&mut first) {
                    out.text("\n")?;
                }
                show(given, out)?;
            }
            Ok(given) => out.json(&given)?,
            Err(wrong) if out.is_table() => out.text(&(wrong.message + "\n"))?,
            Err(wrong) => out.json(&refusal(id, wrong))?,
        }
    }
    Ok(exit(refused))
}

/// The orders on the command line.
fn orders(args: &args::Code, rules: &Rules) -> anyhow::Result<Vec<Item>> {
    match args.what.as_slice() {
        [] => several("-", &Tables::default(), rules.profile()),
        [one] => several(one, &Tables::default(), rules.profile()),
        more => bail!(
            "there are {} values: one order is needed, or four numbers in the order width, height, \
             header depth, roof-bow depth. A number with a space in it is put in quotation marks: \
             \"92 3/16\"",
            more.len()
        ),
    }
}

fn no_code(said: &Said) -> Wrong {
    let missing: Vec<&str> = Dimension::ALL
        .into_iter()
        .zip(said.numbers)
        .filter(|(_, number)| number.is_none())
        .map(|(dimension, _)| Speaker::default().dimension(dimension))
        .collect();
    let (code, message) = if missing.is_empty() {
        let step = said.unit.step().text(said.unit);
        let message = format!(
            "A number is no whole multiple of {step}: it has no check characters. Send the link."
        );
        ("not-whole", message)
    } else {
        let message = format!(
            "Check characters need all four numbers; without a reading: {}.",
            missing.join(", ")
        );
        ("missing-number", message)
    };
    Wrong { code, place: String::new(), message }
}

fn show(given: Given, out: &mut Out) -> anyhow::Result<()> {
    let mut table = Table::bare(2);
    let small = given.small.map_or_else(
        || Cell::new("a reading does not fit: send the link", FAINT),
        |small| Cell::new(spaced(&small), STRONG),
    );
    if !given.id.is_none() {
        table.push([Cell::new("order", FAINT), given.id.text().into()]);
    }
    table.push([Cell::new("check characters", FAINT), Cell::new(given.check, STRONG)]);
    table.push([Cell::new("whole order", FAINT), small]);
    for (at, line) in given.script.into_iter().enumerate() {
        let name = if at == 0 { "read aloud" } else { "" };
        table.push([Cell::new(name, FAINT), line.into()]);
    }
    out.rows(&mut table)
}

/// The four numbers on the command line.
fn said(args: &args::Code) -> anyhow::Result<Said> {
    let unit = Unit::from(args.unit);
    let speaker = Speaker { unit, ..Speaker::default() };
    let mut numbers = [None; 4];
    for ((slot, text), dimension) in numbers.iter_mut().zip(&args.what).zip(Dimension::ALL) {
        if text.trim() == "?" {
            continue;
        }
        match hangtrue_core::length::read(text, unit) {
            Ok(length) => *slot = Some(length),
            Err(error) => {
                bail!("{}: {}", speaker.dimension(dimension), speaker.say_read_error(&error, text))
            }
        }
    }
    Ok(Said { unit, build: args.build, numbers })
}

/// Whether what was heard goes together.
#[derive(Serialize)]
struct Compared {
    /// `agrees`, `differs` or `refused`.
    outcome: &'static str,
    /// The six characters that go with the numbers as they were typed.
    expected: Option<String>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    misheard: Vec<Told>,
    /// What to ask the caller.
    says: String,
}

/// One thing that was misheard.
#[derive(Serialize)]
struct Told {
    /// `width`, `height`, `header`, `bow`, `frame` or `character`.
    what: &'static str,
    /// Which of the six characters, from 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    at: Option<usize>,
    /// As it was typed.
    typed: Option<String>,
    /// What it probably was, likeliest first.
    likely: Vec<String>,
    #[serde(skip)]
    name: String,
}

fn compare(
    args: &args::Code,
    rules: &Rules,
    text: &str,
    out: &mut Out,
) -> anyhow::Result<ExitCode> {
    let typed = if args.what.len() == 4 {
        said(args)?
    } else {
        let mut items = orders(args, rules)?;
        match (items.pop(), items.is_empty()) {
            (Some(Item { content: Ok(content), .. }), true) => {
                Said::of(&rules.report(&content), content.order.survey.unit)
            }
            (Some(Item { content: Err(wrong), .. }), true) => bail!("{}", wrong.message),
            _ => bail!("--heard is held against one order, or against four numbers"),
        }
    };
    let outcome = match code::compare(&typed, text) {
        Ok(outcome) => outcome,
        Err(error) => bail!("--heard: {}", words::heard(&error)),
    };
    let (outcome, misheard) = match outcome {
        Outcome::Agrees => ("agrees", Vec::new()),
        Outcome::Refused => ("refused", Vec::new()),
        Outcome::Differs(misheard) => {
            ("differs", misheard.iter().map(|misheard| told(misheard, &typed)).collect())
        }
    };
    let says = says(outcome, &misheard);
    let compared = Compared { outcome, expected: characters(&typed), misheard, says };
    let differs = outcome != "agrees";
    if out.is_table() {
        let style = if differs { of(Verdict::Recheck) } else { of(Verdict::Clear) };
        let mut table = Table::bare(4);
        table.push([Cell::new(outcome, style), compared.says.into(), "".into(), "".into()]);
        out.rows(&mut table)?;
        let mut table = Table::new(["misheard", "typed", "probably", "or"]);
        for told in &compared.misheard {
            let mut likely = told.likely.iter();
            let first = Cell::new(likely.next().cloned().unwrap_or_default(), STRONG);
            let others: Vec<&str> = likely.map(String::as_str).collect();
            let typed = told.typed.clone().unwrap_or_else(|| "?".to_owned());
            table.push([told.name.clone().into(), typed.into(), first, others.join(", ").into()]);
        }
        if !compared.misheard.is_empty() {
            out.rows(&mut table)?;
        }
    } else {
        out.json(&compared)?;
    }
    Ok(exit(differs))
}

fn told(misheard: &Misheard, typed: &Said) -> Told {
    let text = |length: &Length, unit: Unit| length.text(unit);
    match misheard {
        Misheard::Number { dimension, typed: was, likely } => Told {
            what: dimension.key(),
            at: None,
            typed: was.map(|length| text(&length, typed.unit)),
            likely: likely.iter().map(|length| text(length, typed.unit)).collect(),
            name: Speaker::default().dimension(*dimension).to_owned(),
        },
        Misheard::Frame { unit, build } => Told {
            what: "frame",
            at: None,
            typed: Some(frame(typed.unit, typed.build)),
            likely: vec![frame(*unit, *build)],
            name: "unit or the state of the frame".to_owned(),
        },
        Misheard::Character { at, likely } => Told {
            what: "character",
            at: Some(*at),
            typed: None,
            likely: vec![likely.to_string()],
            name: format!("check character {at}"),
        },
    }
}

fn frame(unit: Unit, build: bool) -> String {
    let unit = match unit {
        Unit::Inch => "inches",
        Unit::Millimetre => "millimeters",
    };
    [unit, if build { ", frame to be built" } else { ", frame as it is" }].concat()
}

fn says(outcome: &str, misheard: &[Told]) -> String {
    match (outcome, misheard) {
        ("agrees", _) => "The numbers were heard as they were said.".to_owned(),
        ("refused", _) => {
            "More was misheard than the characters can tell apart. Ask for all four numbers and \
             the six characters again."
                .to_owned()
        }
        (_, told) if told.iter().all(|told| told.what == "character") => {
            "A check character was misheard; the numbers are right.".to_owned()
        }
        (_, told) => {
            let names: Vec<&str> = told
                .iter()
                .filter(|told| told.what != "character")
                .map(|told| told.name.as_str())
                .collect();
            format!("{} misheard. Ask the caller to say it again.", capital(&was(&names)))
        }
    }
}

fn was(names: &[&str]) -> String {
    match names {
        [one] => format!("the {one} was probably"),
        more => format!("the {} were probably", more.join(" and the ")),
    }
}

/// Thirty characters as an order.
fn open_small(text: &str, rules: &Rules, out: &mut Out) -> anyhow::Result<ExitCode> {
    let content = match small(text) {
        Ok(content) => content,
        Err(error) => {
            let wrong = words::small(&error);
            if out.is_table() {
                out.text(&(wrong.message + "\n"))?;
            } else {
                out.json(&refusal(Id::None, wrong))?;
            }
            return Ok(exit(true));
        }
    };
    let corrected = !content.corrected.is_empty();
    opened(content, rules, out)?;
    Ok(exit(corrected))
}

fn opened(content: Content, rules: &Rules, out: &mut Out) -> anyhow::Result<()> {
    let report = rules.report(&content);
    if out.is_table() {
        return open::show(&Id::None, &content, &report, out);
    }
    out.json(&open::Opened::new(Id::None, content, &report))
}
