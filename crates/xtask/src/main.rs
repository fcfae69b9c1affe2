//! The project's own commands, one file each: `cargo xtask serve | test | …`.

use std::env;
use std::process::ExitCode;

mod bench;
mod browser;
mod build;
mod dist;
mod embed;
mod eval;
mod functions;
mod fuzz;
mod hostile;
mod names;
mod reproduce;
mod serve;
mod sh;
mod site;
mod size;
mod split;
mod style;
mod supply;
mod table;
mod test;
mod weight;

const USAGE: &str = "\
usage: cargo xtask COMMAND

  serve [--port N]  build the page and serve it at http://127.0.0.1:8080
  test              everything CI runs: format, clippy, Rust tests, browser tests
  browser [--engine chromium|firefox|webkit] [NAME]  the browser tests alone, or those whose
                    name holds NAME
  embed             dist/embed/ as a webmaster's tools take it: types, manifest, schemas
  eval [--quick] [--check] [--seed N] [--surveys N] [--only TEXT]
                    the judge on invented surveys, by seed, beside simpler checks
  bench [judge | archive | pack | keystroke | cold | pages] [--long]
                    speed, beside what a web developer would pick: target/bench.json
  hostile [--payloads N]  ten million random links: what the worst of them costs
  fuzz TARGET [--seconds N] [--runs N]  libFuzzer on one of the ways in of tests/hostile
  audit             licences, sources, bans and advisories of all crates, by cargo-deny
  reproduce         the site built here and once more elsewhere: the same bytes
  dist              write the static site to dist/
  size              gzip sizes of dist/, held to the budget
  weight [FEATURE]  what the bytes of the module are, by crate and by function";

fn main() -> ExitCode {
    let words: Vec<String> = env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let done = match words.split_first() {
        Some((&"serve", rest)) => serve::run(rest),
        Some((&"test", rest)) => test::run(rest),
        Some((&"browser", rest)) => browser::run(rest),
        Some((&"embed", rest)) => embed::tools::run(rest),
        Some((&"eval", rest)) => eval::run(rest),
        Some((&"bench", rest)) => bench::run(rest),
        Some((&"hostile", rest)) => hostile::run(rest),
        Some((&"fuzz", rest)) => fuzz::run(rest),
        Some((&"audit", rest)) => supply::run(rest),
        Some((&"reproduce", rest)) => reproduce::run(rest),
        Some((&"dist", rest)) => dist::run(rest),
        Some((&"size", rest)) => size::run(rest),
        Some((&"weight", rest)) => weight::run(rest),
        _ => Err(anyhow::anyhow!("{USAGE}")),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("xtask: {error:#}");
            ExitCode::FAILURE
        }
    }
}

/// For commands that take nothing: an argument is a mistake, not something to ignore.
fn no_arguments(arguments: &[&str]) -> anyhow::Result<()> {
    match arguments.first() {
        None => Ok(()),
        Some(word) => anyhow::bail!("`{word}` is not an argument here\n{USAGE}"),
    }
}
