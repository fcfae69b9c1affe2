//! Every word on the screen that is not the domain's: one catalogue per language.
//!
//! A catalogue is one constant of one type, so a text that a language lacks, or
//! has too many, does not compile.

mod dealer;
pub mod desk;
mod en;
mod es;
mod fr;
mod handover;
pub mod hang;
mod kept;

pub use dealer::Dealer;
pub use handover::{Handover, Paper, Picture, Replace, Voice};
pub use kept::Kept;

use crate::rest;
use hangtrue_core::say::Language;
use hangtrue_core::{Dimension, Spot};

/// The words of the page in one language.
#[derive(Debug)]
pub struct Text {
    /// What the page is for, as its title.
    pub title: &'static str,
    /// The choice of languages, as a group.
    pub language: &'static str,
    /// What stands between a name and what it names.
    pub colon: &'static str,
    /// Around somebody's own words.
    pub quotes: [&'static str; 2],
    /// `Step 3 of 8`.
    pub progress: fn(usize, usize) -> String,
    /// Buttons.
    pub button: Buttons,
    /// The first screen.
    pub start: Start,
    /// The frame's screen.
    pub frame: Frame,
    /// The four dimensions' screens.
    pub dimension: fn(Dimension) -> DimensionText,
    /// What each place means, under its label.
    pub place: fn(Spot) -> &'static str,
    /// A reading's field.
    pub field: FieldText,
    /// What was asked for needs the second module, which is on its way.
    pub coming: &'static str,
    /// It could not be had; it is tried again.
    pub missing: &'static str,
    /// The heading of the share sheet.
    pub order: &'static str,
}

/// The words of the screens after the four dimensions and beside the walk: they come with the
/// second module ([`crate::rest`]).
#[derive(Debug)]
pub struct Later {
    /// The screen of one more reading.
    pub proof: Proof,
    /// The check.
    pub check: Check,
    /// What the judge sees.
    pub judge: Judge,
    /// A dealer's own rules.
    pub dealer: Dealer,
    /// What is kept on the device.
    pub kept: Kept,
    /// The order.
    pub send: Send,
    /// An order that was sent.
    pub opened: Opened,
    /// The ways out of the page.
    pub handover: Handover,
    /// The print sheet.
    pub paper: Paper,
}

impl Text {
    /// The words of `language`.
    #[must_use]
    pub fn of(language: Language) -> &'static Self {
        match language {
            Language::English => &en::TEXT,
            _ => rest::text(language),
        }
    }

    /// The words of a language that the page was not written in.
    pub(crate) const fn translated(language: Language) -> &'static Self {
        match language {
            Language::English => &en::TEXT,
            Language::Spanish => &es::TEXT,
            Language::French => &fr::TEXT,
        }
    }
}

impl Later {
    /// The words of `language`.
    #[must_use]
    pub const fn of(language: Language) -> &'static Self {
        match language {
            Language::English => &en::LATER,
            Language::Spanish => &es::LATER,
            Language::French => &fr::LATER,
        }
    }
}

/// What is written on buttons.
#[derive(Debug)]
pub struct Buttons {
    /// To the next screen.
    pub next: &'static str,
    /// To the next screen although a question stands.
    pub next_all_the_same: &'static str,
    /// To the screen before.
    pub back: &'static str,
    /// To a field, and back.
    pub change: &'static str,
    /// To a field, to take the reading anew.
    pub read_again: &'static str,
    /// Leave out a reading that was offered.
    pub skip: &'static str,
    /// Put a suggestion into the field.
    pub use_text: fn(&str) -> String,
    /// The keyboard with letters.
    pub letters: &'static str,
    /// The keyboard with numbers.
    pub numbers: &'static str,
    /// Open the share sheet.
    pub share: &'static str,
    /// Print the order.
    pub print: &'static str,
    /// A new survey.
    pub restart: &'static str,
}

/// The first screen.
#[derive(Debug)]
pub struct Start {
    /// Heading.
    pub heading: &'static str,
    /// What will happen.
    pub lede: &'static str,
    /// Heading of what to bring.
    pub bring_heading: &'static str,
    /// What to bring.
    pub bring: [&'static str; 4],
    /// Heading of the cautions.
    pub caution_heading: &'static str,
    /// The cautions.
    pub cautions: [&'static str; 5],
    /// Which unit the tape has.
    pub unit: &'static str,
    /// Inches and sixteenths.
    pub inches: &'static str,
    /// Millimetres.
    pub millimetres: &'static str,
    /// What becomes of what is typed.
    pub privacy: &'static str,
    /// To the first question.
    pub begin: &'static str,
    /// To the first question, when something has been typed already.
    pub go_on: &'static str,
    /// To the counter desk.
    pub desk: &'static str,
    /// Where somebody else's order is opened.
    pub open_heading: &'static str,
    /// What may be opened.
    pub open_hint: &'static str,
    /// The button that chooses a file.
    pub choose_file: &'static str,
}

/// The frame's screen.
#[derive(Debug)]
pub struct Frame {
    /// Heading.
    pub heading: &'static str,
    /// What it is for.
    pub lede: &'static str,
    /// Whether the old door is still in.
    pub old_door: &'static str,
    /// What to mind if it is.
    pub old_door_caution: &'static str,
    /// Whether the frame is as it will stay.
    pub prepared: &'static str,
    /// Yes.
    pub yes: &'static str,
    /// No.
    pub no: &'static str,
    /// It will stay as it is.
    pub prepared_yes: &'static str,
    /// It may have to be built up.
    pub prepared_no: &'static str,
    /// Where the built-in minimums come from.
    pub common_practice: &'static str,
    /// The minimums, and where they come from.
    pub minimums: fn(source: &str, post: &str, header: &str) -> String,
    /// Welding.
    pub weld_caution: &'static str,
    /// Heading of what has to be built.
    pub build_heading: &'static str,
}

/// One dimension's screen.
#[derive(Debug)]
pub struct DimensionText {
    /// From where to where.
    pub lede: &'static str,
    /// What the second and third place buy.
    pub places: &'static str,
    /// Heading of what goes wrong.
    pub wrong_heading: &'static str,
    /// What people get wrong.
    pub wrong: [&'static str; 2],
    /// What more they get wrong: with inches, with millimetres.
    pub tape: [&'static str; 2],
    /// What to mind, where it may hurt.
    pub caution: Option<&'static str>,
}

/// A reading's field.
#[derive(Debug)]
pub struct FieldText {
    /// How a reading may be typed.
    pub hint_inch: &'static str,
    /// The same for millimetres.
    pub hint_millimetre: &'static str,
    /// Heading of the summary of what stands against going on.
    pub problems: &'static str,
    /// Heading of the summary where there are only questions.
    pub questions: &'static str,
    /// The keys beside the field, as a group.
    pub keys: &'static str,
    /// Beside the tape picture.
    pub tape: &'static str,
}

/// The screen of one more reading.
#[derive(Debug)]
pub struct Proof {
    /// Heading over a closing reading.
    pub heading: &'static str,
    /// Heading over a repeat.
    pub again_heading: &'static str,
    /// How a repeat is taken.
    pub again: &'static str,
    /// What is typed in the first reading's place while a repeat is taken.
    pub hidden: &'static str,
    /// An empty field.
    pub empty: &'static str,
}

/// The check.
#[derive(Debug)]
pub struct Check {
    /// Heading.
    pub heading: &'static str,
    /// Over the four numbers.
    pub numbers: &'static str,
    /// Why the number is what it is: how many readings, where the tightest is.
    pub tightest: fn(count: usize, place: &str, reading: &str) -> String,
    /// Why it is that, where something is built on.
    pub as_found: fn(&str) -> String,
    /// No number yet.
    pub not_read: &'static str,
    /// Rounding.
    pub rounding: fn(step: &str) -> String,
    /// To be measured again after building.
    pub remeasure: &'static str,
    /// Over the readings.
    pub readings: &'static str,
    /// A reading that was replaced.
    pub struck: &'static str,
    /// Over the findings.
    pub findings: &'static str,
    /// Nothing found.
    pub clear: &'static str,
    /// The checkbox of a question.
    pub confirm: &'static str,
    /// To the field of a number that was never read.
    pub measure: &'static str,
    /// Confirmed in an opened order.
    pub confirmed: &'static str,
    /// To the order.
    pub send: &'static str,
    /// The three verdicts in words.
    pub verdict: [&'static str; 3],
}

/// What the judge sees.
#[derive(Debug)]
pub struct Judge {
    /// A reading in keeping with the rest.
    pub fits: &'static str,
    /// A suspected reading.
    pub doubtful: &'static str,
    /// An ordered number without a reading.
    pub missing: &'static str,
    /// The reading that would settle it.
    pub settles: &'static str,
    /// Over the next reading to take.
    pub next: &'static str,
    /// Take it.
    pub take: &'static str,
    /// Over what would go unnoticed.
    pub unseen: &'static str,
    /// What no reading shows.
    pub never: &'static str,
    /// Over the figures.
    pub working: &'static str,
    /// What the figures are.
    pub working_lede: &'static str,
    /// Reading, read, adjusted, uncertainty, w, least detectable.
    pub columns: [&'static str; 6],
}

/// The order.
#[derive(Debug)]
pub struct Send {
    /// Heading.
    pub heading: &'static str,
    /// What to do with it.
    pub lede: &'static str,
    /// Which truck.
    pub vehicle: &'static str,
    /// A note.
    pub note: &'static str,
    /// How to be reached.
    pub contact: &'static str,
    /// May be left empty.
    pub optional: &'static str,
    /// So many characters, of so many.
    pub room: fn(count: usize, most: usize) -> String,
    /// What is beyond was not taken.
    pub full: &'static str,
    /// The link.
    pub link: &'static str,
    /// The link is the lasting record.
    pub lasting: &'static str,
    /// Copied.
    pub copied: &'static str,
    /// Nothing can be sent yet.
    pub not_yet: &'static str,
}

/// An order that was sent.
#[derive(Debug)]
pub struct Opened {
    /// Heading.
    pub heading: &'static str,
    /// Every rule was run again here.
    pub lede: &'static str,
    /// What the writer was told does not agree with what is found here.
    pub disagrees: fn(&str, &str) -> String,
    /// Over the readings.
    pub readings: &'static str,
    /// Heading over a link that could not be read.
    pub damaged: &'static str,
    /// Heading over the record of a hung door.
    pub record: &'static str,
    /// To the page that opens it.
    pub to_record: &'static str,
    /// Heading over a file that could not be read.
    pub damaged_file: &'static str,
    /// It is no link and no message: a picture, a table, a file of another program.
    pub no_order: &'static str,
    /// Make it the draft.
    pub adopt: &'static str,
    /// To one's own survey.
    pub own: &'static str,
    /// Written on.
    pub written: fn(&str) -> String,
    /// Old door.
    pub old_door: fn(bool) -> &'static str,
    /// Frame prepared or as found.
    pub frame: fn(bool) -> &'static str,
}
