//! The words of the counter desk. They stand beside the page's own, not among them:
//! the walk must not carry them.

pub mod many;

use crate::desk::ask::Ask;
use hangtrue_core::Unit;
use hangtrue_core::judge::SlipKind;
use hangtrue_core::say::{Language, Speaker};

/// The desk in one language.
#[derive(Debug)]
pub struct Desk {
    /// Heading.
    pub heading: &'static str,
    /// To the page that measures.
    pub measure: &'static str,
    /// The order that is being said.
    pub phone: Phone,
    /// Reading back, and the check characters.
    pub voice: Voice,
    /// Orders that were sent.
    pub sent: Sent,
    /// Many orders at once.
    pub many: many::Many,
    /// A newer build of the page waits, and the desk keeps nothing.
    pub newer: &'static str,
    /// What to ask the caller next, in one sentence.
    pub ask: fn(&Ask, Speaker) -> String,
    /// What probably happened where two numbers differ; empty where nothing stands out.
    pub slip: fn(SlipKind) -> &'static str,
}

impl Desk {
    /// The desk's words of `language`.
    #[must_use]
    pub const fn of(language: Language) -> &'static Self {
        match language {
            Language::English => &super::en::desk::DESK,
            Language::Spanish => &super::es::desk::DESK,
            Language::French => &super::fr::desk::DESK,
        }
    }
}

/// The order that is being said.
#[derive(Debug)]
pub struct Phone {
    /// Heading over the fields.
    pub heading: &'static str,
    /// Which unit the caller speaks in.
    pub unit: &'static str,
    /// Inches.
    pub inches: &'static str,
    /// Millimetres.
    pub millimetres: &'static str,
    /// What the numbers are of.
    pub frame: &'static str,
    /// Of the frame as it is.
    pub as_it_is: &'static str,
    /// Of the frame after it is built.
    pub as_it_will_be: &'static str,
    /// Behind the name of a field that takes a repeat.
    pub again: &'static str,
    /// Under a field whose text is no reading.
    pub unread: &'static str,
    /// What Enter does.
    pub next: &'static str,
    /// Make an order of what was said, to print, save or send.
    pub keep: &'static str,
    /// The note of an order whose numbers are said to be of the frame after it is built.
    pub built: &'static str,
    /// Another call.
    pub fresh: &'static str,
    /// The call before comes back.
    pub before: &'static str,
    /// Heading over the question.
    pub ask: &'static str,
    /// The caller says that it is as it was said.
    pub stands: &'static str,
    /// The caller cannot take this reading.
    pub cannot: &'static str,
    /// The caller says it is this.
    pub it_is: fn(&str) -> String,
    /// Heading over the findings.
    pub found: &'static str,
    /// Before anything was typed.
    pub nothing_yet: &'static str,
    /// Nothing stands against the numbers so far.
    pub so_far: &'static str,
    /// Over the numbers that building changes.
    pub after_building: &'static str,
}

/// Reading back, and the check characters.
#[derive(Debug)]
pub struct Voice {
    /// Heading over what to say.
    pub heading: &'static str,
    /// Before all four numbers are there.
    pub not_yet: &'static str,
    /// The field of the check characters.
    pub heard: &'static str,
    /// How they may be typed.
    pub heard_hint: &'static str,
    /// Everything was heard as it was said.
    pub agrees: &'static str,
    /// More is wrong than the characters can tell.
    pub refused: &'static str,
    /// A number was misheard: its name, what was typed, what it probably was.
    pub number: fn(name: &str, typed: Option<&str>, likely: &[String]) -> String,
    /// The unit or the frame's state was misheard: what they probably are.
    pub frame: fn(unit: Unit, build: bool) -> String,
    /// A check character was misheard: its place, what it probably is.
    pub character: fn(at: usize, likely: char) -> String,
}

/// Orders that were sent.
#[derive(Debug)]
pub struct Sent {
    /// Heading.
    pub heading: &'static str,
    /// The box that takes them.
    pub paste: &'static str,
    /// The same where one is open.
    pub another: &'static str,
    /// What may be put into it.
    pub paste_hint: &'static str,
    /// Open what is in the box.
    pub open: &'static str,
    /// Choose a file.
    pub choose: &'static str,
    /// Look for a code with the camera.
    pub look: &'static str,
    /// No more.
    pub look_away: &'static str,
    /// While the browser asks whether the camera may be used.
    pub asked: &'static str,
    /// While the camera looks for a code.
    pub looking: &'static str,
    /// The camera may not be used.
    pub camera_refused: &'static str,
    /// There is no camera, or another program has it.
    pub camera_missing: &'static str,
    /// A file that is neither text nor picture.
    pub no_text: &'static str,
    /// A picture without a code.
    pub no_code: &'static str,
    /// There is nothing in it that is an order.
    pub nothing: &'static str,
    /// It has more bytes than are read.
    pub too_long: fn(most: usize) -> String,
    /// What the only order is called.
    pub only: &'static str,
    /// What the first of two is called.
    pub first: &'static str,
    /// What the second is called.
    pub second: &'static str,
    /// Over the table of what was said and what was sent.
    pub against: fn(&str) -> String,
    /// All numbers are the same.
    pub agrees: &'static str,
    /// Those that were said so far are.
    pub agrees_so_far: &'static str,
    /// Some differ.
    pub differs: &'static str,
    /// Over the table of two orders.
    pub both: &'static str,
    /// They differ.
    pub both_differ: &'static str,
    /// They do not.
    pub both_agree: &'static str,
    /// What such a table is, for who listens.
    pub table: &'static str,
    /// The columns: which number, what was said, what was sent, the difference, why.
    pub what: &'static str,
    /// As above.
    pub phoned: &'static str,
    /// As above.
    pub was_sent: &'static str,
    /// As above.
    pub difference: &'static str,
    /// As above.
    pub likely: &'static str,
    /// Nothing was read.
    pub none: &'static str,
    /// The two are the same.
    pub same: &'static str,
    /// They are as close as two careful readings.
    pub close: &'static str,
    /// Only one of them has it.
    pub one_only: &'static str,
    /// They are apart and no slip explains it.
    pub unexplained: &'static str,
    /// Characters that were put right, by their places.
    pub corrected: fn(&[usize]) -> String,
    /// Before the check characters of an order.
    pub characters: &'static str,
    /// Put an order away.
    pub close_order: &'static str,
}
