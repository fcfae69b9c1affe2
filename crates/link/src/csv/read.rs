//! Records of RFC 4180, one at a time.

use super::Fault;
use std::borrow::Cow;

/// What stands between fields.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Delimiter {
    /// `,`
    #[default]
    Comma,
    /// `;`, where the comma is the decimal sign.
    Semicolon,
    /// A tab: cells pasted from a spreadsheet.
    Tab,
}

impl Delimiter {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Comma, Self::Semicolon, Self::Tab];

    /// The character.
    #[must_use]
    pub const fn character(self) -> char {
        match self {
            Self::Comma => ',',
            Self::Semicolon => ';',
            Self::Tab => '\t',
        }
    }

    /// The one that the first line of `text` has most of outside quotation marks; a
    /// comma where it has none.
    #[must_use]
    pub fn guess(text: &str) -> Self {
        let mut counts = [0_usize; 3];
        let mut quoted = false;
        for letter in text.chars() {
            match letter {
                '"' => quoted = !quoted,
                '\n' | '\r' if !quoted => break,
                _ => {}
            }
            for (count, delimiter) in counts.iter_mut().zip(Self::ALL) {
                if !quoted && letter == delimiter.character() {
                    *count = count.saturating_add(1);
                }
            }
        }
        let [comma, semicolon, tab] = counts;
        if tab > 0 && tab >= comma.max(semicolon) {
            Self::Tab
        } else if semicolon > comma {
            Self::Semicolon
        } else {
            Self::Comma
        }
    }
}

/// A place in the text, between two records.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Mark {
    /// Bytes before it.
    pub at: usize,
    /// The line that begins there, from 1.
    pub line: usize,
}

impl Mark {
    /// The start of `text`, behind its byte order mark.
    #[must_use]
    pub fn start(text: &str) -> Self {
        Self { at: if text.starts_with('\u{feff}') { 3 } else { 0 }, line: 1 }
    }
}

/// The record at `mark`, which is moved behind it; [`None`] at the end. The fields have
/// the apostrophe taken off that [`super::guarded`] puts before formulas.
///
/// # Errors
/// What is wrong with the record; the mark then stands where reading can go on, or at
/// the end where it cannot.
pub fn record<'t>(
    text: &'t str,
    delimiter: Delimiter,
    mark: &mut Mark,
) -> Option<Result<Vec<Cow<'t, str>>, Fault>> {
    let rest = text.get(mark.at..).filter(|rest| !rest.is_empty())?;
    let mut scan = Scan { rest, line: mark.line, delimiter };
    let mut fields = Vec::new();
    let mut fault = None;
    loop {
        let column = fields.len().saturating_add(1);
        let (field, end) = match scan.field(column) {
            Ok(read) => read,
            Err(found) if found.ends_the_table() => {
                *mark = Mark { at: text.len(), line: scan.line };
                return Some(Err(found));
            }
            Err(found) => {
                // The first of them is told; the fields after it are read over.
                fault.get_or_insert(found);
                scan.skip();
                (Cow::Borrowed(""), scan.end())
            }
        };
        fields.push(unguarded(field));
        if end {
            break;
        }
    }
    *mark = Mark { at: text.len().saturating_sub(scan.rest.len()), line: scan.line };
    Some(fault.map_or(Ok(fields), Err))
}

struct Scan<'t> {
    rest: &'t str,
    line: usize,
    delimiter: Delimiter,
}

impl<'t> Scan<'t> {
    /// The next field, and whether it is the record's last.
    fn field(&mut self, column: usize) -> Result<(Cow<'t, str>, bool), Fault> {
        if let Some(quoted) = self.rest.strip_prefix('"') {
            let field = self.quoted(quoted, column)?;
            let behind = self.rest.chars().next();
            let ends = behind.is_none_or(|c| c == self.delimiter.character() || c == '\n')
                || self.rest.starts_with("\r\n");
            if !ends {
                return Err(Fault::Behind { column });
            }
            return Ok((field, self.end()));
        }
        let length = self.bare_length();
        let (field, rest) = self.rest.split_at_checked(length).unwrap_or((self.rest, ""));
        if self.delimiter != Delimiter::Tab && field.contains('"') {
            return Err(Fault::Inside { column });
        }
        self.rest = rest;
        Ok((Cow::Borrowed(field), self.end()))
    }

    /// Bytes of the bare field that stands here.
    fn bare_length(&self) -> usize {
        let ends = [self.delimiter.character(), '\n'];
        let length = self.rest.find(ends).unwrap_or(self.rest.len());
        let field = self.rest.get(..length).unwrap_or_default();
        // A carriage return belongs to the line end.
        let before_line_feed = self.rest.get(length..).is_some_and(|rest| rest.starts_with('\n'));
        if before_line_feed && field.ends_with('\r') { length.saturating_sub(1) } else { length }
    }

    /// Over the bare field that stands here.
    fn skip(&mut self) {
        self.rest = self.rest.get(self.bare_length()..).unwrap_or_default();
    }

    /// A field in quotation marks, of which the first has been read.
    fn quoted(&mut self, inner: &'t str, column: usize) -> Result<Cow<'t, str>, Fault> {
        let mut whole = String::new();
        let mut rest = inner;
        loop {
            let Some((part, behind)) = rest.split_once('"') else {
                return Err(Fault::Open { column });
            };
            let lines = part.bytes().filter(|byte| *byte == b'\n').count();
            self.line = self.line.saturating_add(lines);
            match behind.strip_prefix('"') {
                Some(further) => {
                    whole.push_str(part);
                    whole.push('"');
                    rest = further;
                }
                None => {
                    self.rest = behind;
                    if whole.is_empty() {
                        return Ok(Cow::Borrowed(part));
                    }
                    whole.push_str(part);
                    return Ok(Cow::Owned(whole));
                }
            }
        }
    }

    /// Over the delimiter or the line end behind a field; whether it was a line end, or
    /// the end of the text.
    fn end(&mut self) -> bool {
        if let Some(rest) = self.rest.strip_prefix(self.delimiter.character()) {
            self.rest = rest;
            return false;
        }
        let rest = self.rest.strip_prefix("\r\n").or_else(|| self.rest.strip_prefix('\n'));
        if let Some(rest) = rest {
            self.rest = rest;
            self.line = self.line.saturating_add(1);
        }
        true
    }
}

/// Without the apostrophe that keeps a spreadsheet from calculating.
fn unguarded(field: Cow<'_, str>) -> Cow<'_, str> {
    let guarded = field.strip_prefix('\'').is_some_and(super::write::is_formula);
    match (guarded, field) {
        (false, field) => field,
        (true, Cow::Borrowed(text)) => Cow::Borrowed(text.get(1..).unwrap_or_default()),
        (true, Cow::Owned(text)) => Cow::Owned(text.chars().skip(1).collect()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn all(text: &str) -> Vec<Result<Vec<String>, Fault>> {
        let delimiter = Delimiter::guess(text);
        let mut mark = Mark::start(text);
        core::iter::from_fn(|| record(text, delimiter, &mut mark))
            .map(|record| record.map(|fields| fields.into_iter().map(Into::into).collect()))
            .collect()
    }

    /// The examples of RFC 4180, section 2.
    #[test]
    fn the_standards_own_examples() {
        let abc = |record: &[&str]| Ok(record.iter().map(ToString::to_string).collect());
        assert_eq!(
            all("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"),
            [abc(&["aaa", "bbb", "ccc"]), abc(&["zzz", "yyy", "xxx"])]
        );
        assert_eq!(
            all("aaa,bbb,ccc\r\nzzz,yyy,xxx"),
            [abc(&["aaa", "bbb", "ccc"]), abc(&["zzz", "yyy", "xxx"])]
        );
        assert_eq!(
            all("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
            [abc(&["aaa", "b\r\nbb", "ccc"]), abc(&["zzz", "yyy", "xxx"])]
        );
        assert_eq!(all("\"aaa\",\"b\"\"bb\",\"ccc\""), [abc(&["aaa", "b\"bb", "ccc"])]);
        // Spaces are part of a field.
        assert_eq!(all(" a , b "), [abc(&[" a ", " b "])]);
    }

    #[test]
    fn spreadsheets_write_marks_semicolons_and_tabs() {
        let abc = |record: &[&str]| Ok(record.iter().map(ToString::to_string).collect());
        assert_eq!(all("\u{feff}a;b\n1,5;2"), [abc(&["a", "b"]), abc(&["1,5", "2"])]);
        assert_eq!(
            all("a\tb\n92 3/16\"\t8' 5\""),
            [abc(&["a", "b"]), abc(&["92 3/16\"", "8' 5\""])]
        );
        assert_eq!(all("a,\"x;y;z\",b"), [abc(&["a", "x;y;z", "b"])]);
        assert_eq!(all("'=1+1,'tis"), [abc(&["=1+1", "'tis"])]);
        assert_eq!(all(""), []);
        assert_eq!(all("\n"), [abc(&[""])]);
        assert_eq!(all("a,\n"), [abc(&["a", ""])]);
    }

    #[test]
    fn the_first_line_says_what_stands_between_fields() {
        use Delimiter::{Comma, Semicolon, Tab};
        for (text, delimiter) in [
            ("", Comma),
            ("abc", Comma),
            ("a,b;c", Comma),
            ("a,b;c;d", Semicolon),
            ("a,b,c\td", Comma),
            ("a,b\tc", Tab),
            // The first line alone, and all of it.
            ("a,b\n1;2;3;4", Comma),
            ("\"x\ny\";a;b\n1,2", Semicolon),
            // Inside quotation marks nothing counts.
            ("\"x;y;z\",a", Comma),
            ("\"x;y;z\n;;;\",a,b", Comma),
        ] {
            assert_eq!(Delimiter::guess(text), delimiter, "{text:?}");
        }
    }

    #[test]
    fn a_fault_is_named_and_reading_goes_on_where_it_can() {
        let abc = |record: &[&str]| Ok(record.iter().map(ToString::to_string).collect());
        assert_eq!(
            all("a,92 3/16\",c,d\"e\nx,y,z,w"),
            [Err(Fault::Inside { column: 2 }), abc(&["x", "y", "z", "w"])]
        );
        assert_eq!(all("a,\"b\"c\nx,y"), [Err(Fault::Behind { column: 2 })]);
        assert_eq!(all("a,b\n\"x,y\nz"), [abc(&["a", "b"]), Err(Fault::Open { column: 1 })]);
    }

    #[test]
    fn lines_are_counted_through_quoted_line_ends() {
        let text = "a,b\r\n\"1\n2\",x\r\n3,4";
        let mut mark = Mark::start(text);
        let mut lines = vec![mark.line];
        while record(text, Delimiter::Comma, &mut mark).is_some() {
            lines.push(mark.line);
        }
        assert_eq!(lines, [1, 2, 4, 4]);
    }

    proptest! {
        #[test]
        fn no_text_makes_it_panic_or_stand_still(text in "[a\",;\t\r\n'=é]{0,40}") {
            for delimiter in Delimiter::ALL {
                let mut mark = Mark::start(&text);
                let mut before = mark.at;
                while record(&text, delimiter, &mut mark).is_some() {
                    prop_assert!(mark.at > before || mark.at == text.len());
                    prop_assert!(text.is_char_boundary(mark.at));
                    if mark.at == before { break; }
                    before = mark.at;
                }
                prop_assert_eq!(mark.at, text.len());
            }
        }
    }
}
