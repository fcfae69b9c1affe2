//! `hangtrue read`: text to length, one a line.

use std::io::BufReader;
use std::process::ExitCode;

use anyhow::Context as _;

use hangtrue_core::say::Speaker;
use hangtrue_link::json::Reading;

use crate::args;
use crate::lines::{Line, Lines};
use crate::out::Out;
use crate::table::Table;

pub(crate) fn run(args: args::Read, out: &mut Out) -> anyhow::Result<ExitCode> {
    let speaker = Speaker { unit: args.unit.into(), ..Speaker::default() };
    let mut table = Table::new(["text", "reading", "nm", "why not"]);
    let mut lines = Lines::new(BufReader::with_capacity(1 << 16, std::io::stdin()));
    while let Some((_, line)) = lines.next().context("reading standard input")? {
        let reading = match line {
            Line::Whole(text) => Reading::of(&text, speaker),
            Line::TooLong(beginning) => Reading::too_long(&beginning, speaker),
        };
        if !out.is_table() {
            out.json(&reading)?;
            continue;
        }
        let row = match reading {
            Reading::Read { text, nm, canonical } => {
                [text.into(), canonical.into(), nm.to_string().into(), "".into()]
            }
            Reading::Refused { text, error } => {
                [text.into(), "".into(), "".into(), error.message.into()]
            }
        };
        if table.push(row) {
            out.rows(&mut table)?;
        }
    }
    if out.is_table() {
        out.rows(&mut table)?;
    }
    Ok(ExitCode::SUCCESS)
}
