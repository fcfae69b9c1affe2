//! The words of handing an order over, and of its print sheet.

/// The ways out of the page, and the question before an order takes another's place.
#[derive(Debug)]
pub struct Handover {
    /// Heading over the ways out.
    pub ways: &'static str,
    /// To the mail program.
    pub mail: &'static str,
    /// To the message program.
    pub sms: &'static str,
    /// To the page that hangs the door from this order.
    pub hang: &'static str,
    /// Put the order in one line and its link on the clipboard.
    pub copy: &'static str,
    /// The link alone, without the line before it.
    pub copy_link: &'static str,
    /// Over the message to be copied by hand.
    pub by_hand: &'static str,
    /// Save the order as a file that opens here again.
    pub save_file: &'static str,
    /// At the desk: save it for this page, for a spreadsheet, to be read.
    pub save: [&'static str; 3],
    /// To the picture of the link.
    pub scan: &'static str,
    /// To the script for the telephone.
    pub say: &'static str,
    /// The picture of the link.
    pub picture: Picture,
    /// The script for the telephone.
    pub voice: Voice,
    /// The question before an order takes the draft's place.
    pub replace: Replace,
}

/// The picture of the link.
#[derive(Debug)]
pub struct Picture {
    /// Heading.
    pub heading: &'static str,
    /// What to do with it.
    pub lede: &'static str,
    /// What a screen reader says of it.
    pub title: &'static str,
    /// The link is too long for any picture.
    pub too_long: &'static str,
}

/// The script for the telephone.
#[derive(Debug)]
pub struct Voice {
    /// Heading.
    pub heading: &'static str,
    /// What to do.
    pub lede: &'static str,
    /// Over the six characters.
    pub check: &'static str,
    /// What the six characters are for.
    pub check_hint: &'static str,
    /// Over the thirty characters.
    pub small: &'static str,
    /// What the thirty characters are for, and what is not in them.
    pub small_hint: &'static str,
    /// The order does not fit into thirty characters.
    pub no_small: &'static str,
}

/// The question before an order takes the draft's place.
#[derive(Debug)]
pub struct Replace {
    /// The question.
    pub question: &'static str,
    /// What would be lost: the draft's four numbers.
    pub lost: fn(&str) -> String,
    /// Yes.
    pub yes: &'static str,
    /// No.
    pub no: &'static str,
}

/// The print sheet.
#[derive(Debug)]
pub struct Paper {
    /// How to reach the writer.
    pub contact: fn(&str) -> String,
    /// Over the table: dimension, ordered number, readings, unseen slip, blank.
    pub columns: [&'static str; 5],
    /// A slip of less than that might not be noticed.
    pub unseen_below: fn(&str) -> String,
    /// A slip of any size would not be noticed.
    pub unseen_any: &'static str,
    /// What that column means.
    pub unseen: &'static str,
    /// The reading before anything is built, under the number.
    pub as_found: fn(&str) -> String,
    /// Rows of readings that are no ordered number: diagonals, past the header, posts.
    pub rows: [&'static str; 3],
    /// More readings than the sheet has room for.
    pub more_readings: fn(usize) -> String,
    /// The six check characters.
    pub check: &'static str,
    /// Over the thirty characters.
    pub thirty: &'static str,
    /// What the picture is for.
    pub scan: &'static str,
    /// There is no picture.
    pub too_long: &'static str,
    /// Over the findings.
    pub findings: &'static str,
    /// More findings than the sheet has room for.
    pub more_findings: fn(usize) -> String,
    /// Confirmed by the writer, behind a finding.
    pub confirmed: &'static str,
    /// Over what is to be built.
    pub build: &'static str,
    /// Header down, left post out, right post out.
    pub build_by: [fn(&str) -> String; 3],
    /// Re-measure after that.
    pub build_then: &'static str,
    /// Before the answers to the dealer's questions.
    pub options: &'static str,
    /// Note.
    pub note: &'static str,
    /// Stands behind a text that was cut short.
    pub cut: &'static str,
    /// The rules it was checked by: a dealer's, of that revision.
    pub profile: fn(&str, u32) -> String,
    /// The rules it was checked by: the page's own.
    pub built_in: &'static str,
    /// Cautions, in short.
    pub cautions: &'static str,
    /// Under the lines: name, signature, day.
    pub signature: [&'static str; 3],
}
