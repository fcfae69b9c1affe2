//! `hostile payloads COUNT`: random payloads, what the worst of them costs.
//! `hostile seeds TARGET FOLDER`: writes what a fuzzer begins with.

use std::io::Write as _;
use std::process::ExitCode;
use std::{env, fs, io};

use hangtrue_hostile::payload::{self, BYTES_MOST, Seen, TIME_MOST};
use hangtrue_hostile::seeds::seeds;

fn main() -> io::Result<ExitCode> {
    let words: Vec<String> = env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match words[..] {
        ["payloads", count] => payloads(count.parse().unwrap_or(0)),
        ["seeds", target, folder] => {
            fs::create_dir_all(folder)?;
            for (at, seed) in seeds(target).iter().enumerate() {
                fs::write(format!("{folder}/seed-{at}"), seed)?;
            }
            Ok(ExitCode::SUCCESS)
        }
        _ => Ok(ExitCode::FAILURE),
    }
}

fn payloads(count: u64) -> io::Result<ExitCode> {
    let (random, dense) = (payload::random(count, 2, true), payload::dense(true));
    for (what, Seen { tried, opened, bytes, time }) in [("random", &random), ("densest", &dense)] {
        writeln!(
            io::stdout(),
            "{what}: {tried} payloads, {opened} opened, each at most {bytes} bytes and {time:?}"
        )?;
    }
    let within =
        random.time <= TIME_MOST && random.bytes <= BYTES_MOST && dense.bytes <= BYTES_MOST;
    writeln!(io::stdout(), "at most {BYTES_MOST} bytes for any, {TIME_MOST:?} for a random one")?;
    Ok(if within && count > 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}
