//! Driver processes and everything they start, gone when dropped.

use std::fs::File;
use std::io::{BufRead as _, BufReader, Read};
use std::os::unix::process::CommandExt as _;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use anyhow::{Context as _, Result, bail};
use rustix::process::{Pid, Signal, kill_process, kill_process_group};
use tempfile::TempDir;

/// The file in a group's folder for what its programs say.
const SAID: &str = "said.log";

/// How many of its last lines are told when a scenario fails.
const LINES_TOLD: usize = 20;

/// Processes in a group of their own, with a folder for temporary files of their own.
///
/// A driver that is killed without ending its session leaves browsers and profiles behind; killing
/// the group and removing the folder leaves nothing.
#[derive(Debug)]
pub(crate) struct Group {
    /// The first leads the group.
    children: Vec<Child>,
    /// Removed after [`Drop::drop`] has killed what writes to it.
    folder: TempDir,
}

impl Group {
    /// A group without a process.
    pub(crate) fn new() -> Result<Self> {
        let folder = tempfile::Builder::new().prefix("hangtrue-browser-").tempdir()?;
        Ok(Self { children: Vec::new(), folder })
    }

    /// Its folder, which is its processes' home, too.
    pub(crate) fn folder(&self) -> &Path {
        self.folder.path()
    }

    /// Where a program may say what is kept for [`Group::said`].
    pub(crate) fn ear(&self) -> Result<Stdio> {
        let file = File::options().create(true).append(true).open(self.folder().join(SAID))?;
        Ok(file.into())
    }

    /// The last lines that its programs, and those they started, said at their [`Group::ear`].
    pub(crate) fn said(&self) -> String {
        let said = std::fs::read(self.folder().join(SAID)).unwrap_or_default();
        let said = String::from_utf8_lossy(&said);
        let lines: Vec<&str> = said.lines().collect();
        lines[lines.len().saturating_sub(LINES_TOLD)..].join("\n")
    }

    /// Starts a program in the group.
    pub(crate) fn start(&mut self, mut command: Command) -> Result<&mut Child> {
        let leader = self.children.first().and_then(|child| i32::try_from(child.id()).ok());
        command.process_group(leader.unwrap_or(0));
        command.env("TMPDIR", self.folder()).env("HOME", self.folder()).stdin(Stdio::null());
        let program = command.get_program().to_string_lossy().into_owned();
        let child = command.spawn().with_context(|| format!("cannot start {program}"))?;
        self.children.push(child);
        self.children.last_mut().context("no child")
    }
}

/// The first line of an output in which `find` finds something. What comes after is read and
/// thrown away, so that the program can go on writing.
///
/// # Errors
/// With all that was said, when the output ends before.
pub(crate) fn wait_for_line<T>(
    output: Option<impl Read + Send + 'static>,
    find: impl Fn(&str) -> Option<T>,
) -> Result<T> {
    let mut lines = BufReader::new(output.context("its output is not piped")?).lines();
    let mut said = String::new();
    for line in lines.by_ref() {
        let line = line?;
        if let Some(found) = find(&line) {
            std::thread::spawn(move || lines.for_each(drop));
            return Ok(found);
        }
        said += &format!("\n{line}");
    }
    bail!("it ended without saying what was waited for, but this:{said}")
}

/// The number a process goes by.
pub(crate) fn pid(child: &Child) -> Result<Pid> {
    let number = i32::try_from(child.id())?;
    Pid::from_raw(number).context("no process")
}

impl Drop for Group {
    fn drop(&mut self) {
        if let Some(leader) = self.children.first().and_then(|child| pid(child).ok()) {
            // The leader may have something to put away: a display has a lock outside the folder.
            let _ = kill_process(leader, Signal::TERM);
            let start = Instant::now();
            while let Some(Ok(None)) = self.children.first_mut().map(Child::try_wait)
                && start.elapsed() < Duration::from_secs(1)
            {
                std::thread::sleep(Duration::from_millis(5));
            }
            let _ = kill_process_group(leader, Signal::KILL);
        }
        for child in &mut self.children {
            let _ = child.wait();
        }
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
