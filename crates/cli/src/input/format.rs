//! How an input is written.

use hangtrue_link::list;

use crate::args::Format;

impl From<list::Format> for Format {
    fn from(format: list::Format) -> Self {
        match format {
            list::Format::JsonLines => Self::JsonLines,
            list::Format::Json => Self::Json,
            list::Format::Table => Self::Csv,
            list::Format::Links => Self::Links,
        }
    }
}

/// What `name` holds, whose first line that is not blank is `first`.
pub(super) fn guess(name: &str, first: &str) -> Format {
    list::Format::guess(name, first).into()
}

/// For people.
pub(super) const fn name(format: Format) -> &'static str {
    match format {
        Format::Auto | Format::JsonLines => "JSON lines",
        Format::Json => "JSON",
        Format::Csv => "a table",
        Format::Links => "a list of links",
    }
}
