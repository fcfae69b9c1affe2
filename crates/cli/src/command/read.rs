//! `hangtrue read`: text to length, one a line.

use std::path::Path;
use std::process::ExitCode;

use hangtrue_core::say::Speaker;
use hangtrue_link::json::Reading;

use crate::args;
use crate::lines::{self, Line};
use crate::out::Out;
use crate::table::Table;

pub(crate) fn run(args: args::Read, out: &mut Out) -> anyhow::Result<ExitCode> {
    let speaker = Speaker { unit: args.unit.into(), ..Speaker::default() };
    let mut table = Table::new(["text", "reading", "nm", "why not"]);
    lines::of_file(Path::new("-"), &mut |_, line| {
        let reading = match line {
            Line::Whole(text) => Reading::of(text, speaker),
            Line::TooLong(beginning) => Reading::too_long(beginning, speaker),
        };
        if !out.is_table() {
            return out.json(&reading);
        }
        let row = match reading {
            Reading::Read { text, nm, canonical } => {
                [text, canonical, nm.to_string(), String::new()]
            }
            Reading::Refused { text, error } => [text, String::new(), String::new(), error.message],
        };
        if table.push(row) { out.rows(&mut table) } else { Ok(()) }
    })?;
    if out.is_table() {
        out.rows(&mut table)?;
    }
    Ok(ExitCode::SUCCESS)
}
