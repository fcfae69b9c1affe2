//! Why a text is not JSON, as data; the words are in [`crate::say`].

/// What is wrong with the text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Syntax {
    /// The text is longer than is read.
    Long {
        /// The most bytes.
        most: usize,
    },
    /// Lists and objects stand in one another deeper than is read.
    Deep {
        /// The most levels.
        most: usize,
    },
    /// A value is expected.
    Value,
    /// A key in quotation marks is expected.
    Key,
    /// A colon is expected between key and value.
    Colon,
    /// A comma is expected, or the end of the list or object.
    Comma {
        /// What would end it.
        end: char,
    },
    /// Something stands after the end.
    After,
    /// A text has no closing quotation mark.
    Open,
    /// A line end or another control character stands in a text as it is.
    Control,
    /// A backslash is followed by nothing that it can stand before.
    Escape,
    /// Half of a pair of `\u` stands alone.
    Surrogate,
    /// Digits stand as in no number of JSON.
    Number,
}

/// What is wrong, and where.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wrong {
    /// The byte.
    pub at: usize,
    /// What is wrong there.
    pub what: Syntax,
}

/// The line of the byte `at` of `text`, and the character in that line; both from 1.
#[must_use]
pub fn line_and_column(text: &str, at: usize) -> (usize, usize) {
    let (mut line, mut column) = (1_usize, 1_usize);
    for (index, letter) in text.char_indices() {
        if index >= at {
            break;
        }
        (line, column) = if letter == '\n' {
            (line.saturating_add(1), 1)
        } else {
            (line, column.saturating_add(1))
        };
    }
    (line, column)
}
