//! How an input is written, told from its name and its first line.

use std::path::Path;

use hangtrue_link::csv::{Column, Delimiter, What};
use serde::de::IgnoredAny;

use crate::args::Format;

/// What `path` holds, whose first line that is not blank is the last of `head`.
///
/// The first line decides where it can; the name where it cannot. Nothing further is
/// looked at, so that the guess does not depend on how the input arrives.
pub(super) fn guess(path: &Path, head: &str) -> Format {
    let first = head.trim_start_matches('\u{feff}').trim();
    if first.starts_with(['{', '[']) {
        // A line that is whole, or wrong, is a line; one that ends too soon goes on.
        return match serde_json::from_str::<IgnoredAny>(first) {
            Err(error) if error.is_eof() => Format::Json,
            _ => Format::JsonLines,
        };
    }
    let extension = path.extension().and_then(|extension| extension.to_str());
    match extension.map(str::to_ascii_lowercase).as_deref() {
        Some("csv" | "tsv" | "tab") => return Format::Csv,
        Some("jsonl" | "ndjson") => return Format::JsonLines,
        Some("json") => return Format::Json,
        _ => {}
    }
    if hangtrue_link::find(first).is_ok() || first.contains("://") {
        return Format::Links;
    }
    let table = first.contains(Delimiter::ALL.map(Delimiter::character))
        || Column::guess(first).what == What::Link;
    if table { Format::Csv } else { Format::JsonLines }
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_line_decides_where_it_can_and_the_name_where_it_cannot() {
        let link = "1V8009500Q1GSC02C00A0QK3PJ7";
        for (path, head, format) in [
            ("-", "{\"format\":\"hangtrue-survey/1\"}\n", Format::JsonLines),
            ("-", "\u{feff}\n \n{\n", Format::Json),
            ("a.csv", "{\"format\":\n", Format::Json),
            ("-", "{oops}\n", Format::JsonLines),
            ("-", "[{},\n", Format::Json),
            ("-", "", Format::JsonLines),
            ("-", "oops\n", Format::JsonLines),
            ("a.json", "oops\n", Format::Json),
            ("A.CSV", "oops\n", Format::Csv),
            ("-", "Order #;Width\n", Format::Csv),
            ("-", "92\t101\t9\t1\n", Format::Csv),
            ("-", "Link\n", Format::Csv),
            ("-", link, Format::Links),
            ("-", &format!("W 92, H 101: https://dealer.example/#{link}\n"), Format::Links),
            ("-", "https://dealer.example/#1V80\n", Format::Links),
            ("links.csv", &format!("https://dealer.example/#{link}\n"), Format::Csv),
        ] {
            assert_eq!(guess(Path::new(path), head), format, "{path} {head}");
        }
    }
}
