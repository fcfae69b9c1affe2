//! A driver process and everything it starts, gone when dropped.

use std::io::{BufRead as _, BufReader};
use std::os::unix::process::CommandExt as _;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use anyhow::{Context as _, Result, bail};
use rustix::process::{Pid, Signal, kill_process_group};
use tempfile::TempDir;

/// A process in a group of its own, with a folder for temporary files of its own.
///
/// A driver that is killed without ending its session leaves browsers and profiles behind; killing
/// the group and removing the folder leaves nothing.
#[derive(Debug)]
pub(crate) struct Group {
    child: Child,
    /// Removed after [`Drop::drop`] has killed what writes to it.
    folder: TempDir,
}

impl Group {
    /// Starts the program.
    pub(crate) fn start(mut command: Command) -> Result<Self> {
        let folder = tempfile::Builder::new().prefix("hangtrue-browser-").tempdir()?;
        command.process_group(0).env("TMPDIR", folder.path()).env("HOME", folder.path());
        command.stdin(Stdio::null());
        let program = command.get_program().to_string_lossy().into_owned();
        let child = command.spawn().with_context(|| format!("cannot start {program}"))?;
        Ok(Self { child, folder })
    }

    /// The first line of standard output (which must be piped) in which `find` finds something.
    pub(crate) fn wait_for_line<T>(&mut self, find: impl Fn(&str) -> Option<T>) -> Result<T> {
        let output = self.child.stdout.take().context("its output is not piped")?;
        for line in BufReader::new(output).lines() {
            if let Some(found) = find(&line?) {
                return Ok(found);
            }
        }
        bail!("it ended without saying what was waited for")
    }
}

impl Drop for Group {
    fn drop(&mut self) {
        if let Some(group) = i32::try_from(self.child.id()).ok().and_then(Pid::from_raw) {
            let _ = kill_process_group(group, Signal::KILL);
        }
        let _ = self.child.wait();
        // A browser process may still be writing while it dies: what it adds is removed with the rest.
        let start = Instant::now();
        while std::fs::remove_dir_all(self.folder.path()).is_err()
            && self.folder.path().exists()
            && start.elapsed() < Duration::from_secs(5)
        {
            std::thread::sleep(Duration::from_millis(10));
        }
    }
}
