//! `hangtrue link`: an order's link.

use std::path::PathBuf;
use std::process::ExitCode;

use hangtrue_core::order::Order;
use hangtrue_core::say::Language;
use hangtrue_link::json::Id;
use hangtrue_link::{EncodeError, encode, say, url};
use serde::Serialize;

use super::{exit, json, refusal};
use crate::args;
use crate::input::{Input, Wrong};
use crate::out::Out;
use crate::rules::Rules;
use crate::style::REFUSED;
use crate::table::{Cell, Table, printable};

/// The answer to one order.
#[derive(Serialize)]
struct Linked {
    id: Id,
    link: String,
}

pub(crate) fn run(args: args::Link, out: &mut Out) -> anyhow::Result<ExitCode> {
    let rules = Rules::of(args.profile.as_deref())?;
    let stdin = [PathBuf::from("-")];
    let files = if args.files.is_empty() { &stdin[..] } else { &args.files };
    let mut table = Table::new(["id", "link"]);
    let mut refused = false;
    for file in files {
        let mut input = Input::open(file, &args.tables)?;
        input.reader.judge_by(rules.profile());
        let numbered = input.reader.is_numbered();
        input.each(&mut |item| {
            let line = numbered.then_some(item.line);
            let name = item.name();
            let link = item.content.and_then(|content| {
                let report = rules.report(&content);
                link(&content.claimed(&report, rules.profile()).order, args.base.as_deref())
                    .map_err(unwritable)
            });
            refused |= link.is_err();
            match (link, args.plain) {
                (Ok(link), true) => out.text(&(link + "\n")),
                (Err(wrong), true) => {
                    use std::io::Write as _;
                    let (name, message) = (printable(&name), printable(&wrong.message));
                    let _ = writeln!(std::io::stderr(), "hangtrue: {name}: {message}");
                    Ok(())
                }
                (link, false) if out.is_table() => {
                    let last = match link {
                        Ok(link) => Cell::from(link),
                        Err(wrong) => Cell::new(wrong.message, REFUSED),
                    };
                    if table.push([name.into(), last]) { out.rows(&mut table) } else { Ok(()) }
                }
                (Ok(link), false) => json(out, line, &Linked { id: item.id, link }),
                (Err(wrong), false) => json(out, line, &refusal(item.id, wrong)),
            }
        })?;
    }
    if out.is_table() && !args.plain {
        out.rows(&mut table)?;
    }
    Ok(exit(refused))
}

fn link(order: &Order, base: Option<&str>) -> Result<String, EncodeError> {
    match base {
        Some(base) => url(base, order),
        None => encode(order),
    }
}

fn unwritable(error: EncodeError) -> Wrong {
    let advice = say::encode(Language::English, error);
    let message = [&advice.what, " ", advice.ask].concat();
    Wrong { code: error.code(), place: String::new(), message }
}
