//! What a process cost: by the clock, of the processor, of memory. Linux, by `/proc`.

use std::fs::{self, File};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use anyhow::{Context as _, Result, bail};

use crate::sh;

/// What a process took.
pub(super) struct Cost {
    /// Seconds by the clock: on a shared machine the least telling of them.
    pub(super) wall: f64,
    /// Seconds of the processor, its own and the system's on its behalf.
    pub(super) processor: f64,
    /// The most memory it had resident, in MB, looked at every few milliseconds.
    pub(super) megabytes: f64,
}

/// Runs a command to its end, its output into a file.
///
/// # Errors
/// When it does not start, fails, or there is no `/proc`.
pub(super) fn cost(command: &mut Command, output: &Path) -> Result<Cost> {
    let ticks = sh::output(&mut sh::command("getconf", &["CLK_TCK"]))?;
    let ticks: f64 = ticks.trim().parse().context("getconf CLK_TCK")?;
    let begun = Instant::now();
    let mut child = command.stdout(File::create(output)?).stdin(Stdio::null()).spawn()?;
    let mut megabytes = 0.0_f64;
    // A process that has ended and was not waited for keeps its account of the processor.
    let processor = loop {
        let (state, used) = account(&child)?;
        if state == "Z" {
            break used / ticks;
        }
        megabytes = megabytes.max(resident(&child));
        thread::sleep(Duration::from_millis(4));
    };
    let wall = begun.elapsed().as_secs_f64();
    let status = child.wait()?;
    if !status.success() {
        bail!("{:?} failed ({status})", command.get_program());
    }
    Ok(Cost { wall, processor, megabytes })
}

/// State, and processor time in ticks: proc(5), `stat`, the third field and those two after the
/// thirteenth. The name before them may hold spaces, but ends at the last bracket.
fn account(child: &Child) -> Result<(String, f64)> {
    let stat = fs::read_to_string(format!("/proc/{}/stat", child.id()))
        .context("what a process costs is read from /proc, which Linux has")?;
    let fields: Vec<&str> =
        stat.rsplit_once(')').map_or("", |(_, rest)| rest).split_whitespace().collect();
    let ticks = |at: usize| fields.get(at).and_then(|field| field.parse::<f64>().ok());
    let used = ticks(11).zip(ticks(12)).context("/proc tells no times")?;
    Ok((fields.first().copied().unwrap_or_default().to_owned(), used.0 + used.1))
}

/// The most it has had until now, in MB; nothing once it has ended.
fn resident(child: &Child) -> f64 {
    let status = fs::read_to_string(format!("/proc/{}/status", child.id())).unwrap_or_default();
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kibibytes = line.and_then(|line| line.trim().trim_end_matches(" kB").parse::<f64>().ok());
    kibibytes.unwrap_or(0.0) * 1024.0 / 1e6
}
