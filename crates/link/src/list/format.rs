//! How a list is written, told from its name and its first line.

use crate::csv::{Column, Delimiter, What};
use crate::json::text::{Syntax, parse};

/// How it is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Format {
    /// JSON, a survey or an order a line.
    JsonLines,
    /// One survey or order as JSON, over any number of lines.
    Json,
    /// A table, fields separated by commas, semicolons or tabs.
    Table,
    /// A link a line.
    Links,
}

impl Format {
    /// How a file of this name is written whose first line that is not blank is `first`.
    ///
    /// The line decides where it can; the name where it cannot. Nothing further is looked
    /// at, so that the guess does not depend on how the file arrives.
    #[must_use]
    pub fn guess(name: &str, first: &str) -> Self {
        let first = first.trim_start_matches('\u{feff}').trim();
        if first.starts_with(['{', '[']) {
            // A line that is whole, or wrong, is a line; one that ends too soon goes on.
            return match parse(first) {
                Err(wrong) if wrong.at >= first.len() || wrong.what == Syntax::Open => Self::Json,
                _ => Self::JsonLines,
            };
        }
        let extension = name.rsplit_once('.').map(|(_, extension)| extension.to_ascii_lowercase());
        match extension.as_deref() {
            Some("csv" | "tsv" | "tab") => return Self::Table,
            Some("jsonl" | "ndjson") => return Self::JsonLines,
            Some("json") => return Self::Json,
            _ => {}
        }
        if crate::holds(first) || first.contains("://") {
            return Self::Links;
        }
        let table = first.contains(Delimiter::ALL.map(Delimiter::character))
            || Column::guess(first).what == What::Link;
        if table { Self::Table } else { Self::JsonLines }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_line_decides_where_it_can_and_the_name_where_it_cannot() {
        let link = "1V8009500Q1GSC02C00A0QK3PJ7";
        for (name, first, format) in [
            ("-", "{\"format\":\"hangtrue-survey/1\"}\n", Format::JsonLines),
            ("-", "\u{feff}\n \n{\n", Format::Json),
            ("a.csv", "{\"format\":\n", Format::Json),
            ("-", "{\"format\":\"hang\n", Format::Json),
            ("-", "{oops}\n", Format::JsonLines),
            ("-", "[{},\n", Format::Json),
            ("-", "", Format::JsonLines),
            ("-", "oops\n", Format::JsonLines),
            ("a.json", "oops\n", Format::Json),
            ("A.CSV", "oops\n", Format::Table),
            ("a.jsonl", "oops,no\n", Format::JsonLines),
            ("-", "Order #;Width\n", Format::Table),
            ("-", "92\t101\t9\t1\n", Format::Table),
            ("-", "Link\n", Format::Table),
            ("-", link, Format::Links),
            ("-", &format!("W 92, H 101: https://dealer.example/#{link}\n"), Format::Links),
            ("-", "https://dealer.example/#1V80\n", Format::Links),
            ("links.csv", &format!("https://dealer.example/#{link}\n"), Format::Table),
        ] {
            assert_eq!(Format::guess(name, first), format, "{name} {first}");
        }
    }
}
