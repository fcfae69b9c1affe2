//! Output: JSON lines or a table, through one buffer.

use std::io::{self, BufWriter, IsTerminal as _, Write};

use anstream::{AutoStream, ColorChoice};
use serde::Serialize;

use crate::args::{Color, Output};
use crate::table::Table;

/// Where answers go.
pub(crate) struct Out {
    stdout: BufWriter<Box<dyn Write>>,
    table: bool,
}

impl Out {
    pub(crate) fn new(output: Output, color: Color) -> Self {
        let stdout = io::stdout().lock();
        let table = match output {
            Output::Auto => stdout.is_terminal(),
            Output::Table => true,
            Output::Json => false,
        };
        let choice = match color {
            Color::Auto => ColorChoice::Auto,
            Color::Always => ColorChoice::Always,
            Color::Never => ColorChoice::Never,
        };
        // Only a table has color to take out.
        let stdout: Box<dyn Write> =
            if table { Box::new(AutoStream::new(stdout, choice)) } else { Box::new(stdout) };
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

    /// Text as it is.
    pub(crate) fn text(&mut self, text: &str) -> anyhow::Result<()> {
        self.stdout.write_all(text.as_bytes())?;
        Ok(())
    }

    /// The rows that `table` holds; shown at once.
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
