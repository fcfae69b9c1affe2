//! Records of RFC 4180 that no spreadsheet takes for formulas.

/// One record, with its line end. Every field is made safe to open in a spreadsheet.
#[must_use]
pub fn line<T: AsRef<str>>(fields: &[T]) -> String {
    let mut line = String::new();
    for (at, field) in fields.iter().enumerate() {
        if at > 0 {
            line.push(',');
        }
        let field = guarded(field.as_ref());
        // At the begin of a file the mark would be taken for the file's own.
        let marked = field.starts_with('\u{feff}');
        if marked || field.contains([',', ';', '\t', '"', '\r', '\n', '\'']) {
            line.push('"');
            line.push_str(&field.replace('"', "\"\""));
            line.push('"');
        } else {
            line.push_str(&field);
        }
    }
    // A record of one empty field would be a blank line, which nobody reads.
    if line.is_empty() {
        line.push_str("\"\"");
    }
    line.push_str("\r\n");
    line
}

/// `field` with an apostrophe before it where a spreadsheet would calculate it.
#[must_use]
pub fn guarded(field: &str) -> String {
    let guard = is_formula(field);
    [if guard { "'" } else { "" }, field].concat()
}

/// Whether a spreadsheet may take the field for a formula: it begins, spaces aside, with
/// `= + - @`, one of their full-width forms, a tab, a line end or a null character, or
/// with apostrophes before one of these: they get one more, so that reading takes off
/// exactly what writing put there.
pub(super) fn is_formula(field: &str) -> bool {
    let bare = field.trim_start_matches('\'');
    if bare.starts_with(['\t', '\r', '\n', '\0']) {
        return true;
    }
    let first = bare.trim_start();
    first.starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠'])
}

#[cfg(test)]
mod tests {
    use super::super::{Delimiter, Mark, record};
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn nothing_that_calculates_leaves() {
        for field in [
            "=1+1",
            "+1",
            "-1/16",
            "@SUM(A1)",
            "\t=1",
            "\r=1",
            "\n=1",
            "\0=1",
            " =1",
            "＝1",
            "'=1",
            "=HYPERLINK(\"https://x.example\",\"y\")",
        ] {
            let line = line(&[field]);
            let first = line.trim_start_matches('"').chars().next();
            assert_eq!(first, Some('\''), "{field:?} → {line:?}");
        }
        assert_eq!(
            line(&["92 3/16 in", "a,b", "8' 5\"", ""]),
            "92 3/16 in,\"a,b\",\"8' 5\"\"\",\r\n"
        );
        assert_eq!(guarded("A-17"), "A-17");
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_back(
            fields in prop::collection::vec("[a=+@',;\"\t\r\n -]{0,6}", 1..5)
        ) {
            let text = line(&fields);
            let mut mark = Mark::start(&text);
            let read = record(&text, Delimiter::Comma, &mut mark).unwrap().unwrap();
            prop_assert_eq!(read, fields);
            prop_assert_eq!(mark.at, text.len());
        }
    }
}
