//! Output: JSON lines or a table, through one buffer.

use std::io::{self, BufWriter, IsTerminal as _, StdoutLock, Write as _};

use serde::Serialize;

use crate::args::Output;
use crate::table::Table;

/// Where answers go.
pub(crate) struct Out {
    stdout: BufWriter<StdoutLock<'static>>,
    table: bool,
}

impl Out {
    pub(crate) fn new(output: Output) -> Self {
        let stdout = io::stdout().lock();
        let table = match output {
            Output::Auto => stdout.is_terminal(),
            Output::Table => true,
            Output::Json => false,
        };
        Self { stdout: BufWriter::with_capacity(1 << 16, stdout), table }
    }

    /// Whether people read this.
    pub(crate) const fn is_table(&self) -> bool {
        self.table
    }

    /// One JSON object, one line.
    pub(crate) fn json(&mut self, value: &impl Serialize) -> anyhow::Result<()> {
        serde_json::to_writer(&mut self.stdout, value).map_err(io::Error::from)?;
        self.stdout.write_all(b"\n")?;
        Ok(())
    }

    /// The rows that `table` has room-widths for.
    pub(crate) fn rows(&mut self, table: &mut Table) -> anyhow::Result<()> {
        table.write(&mut self.stdout)?;
        self.stdout.flush()?;
        Ok(())
    }

    /// Writes what is still held back.
    pub(crate) fn finish(&mut self) -> anyhow::Result<()> {
        self.stdout.flush()?;
        Ok(())
    }
}

/// Whether `error` only says that nobody reads any more.
pub(crate) fn is_broken_pipe(error: &anyhow::Error) -> bool {
    error.chain().any(|cause| {
        cause.downcast_ref::<io::Error>().is_some_and(|e| e.kind() == io::ErrorKind::BrokenPipe)
    })
}
