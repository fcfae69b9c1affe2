//! What is kept on the device: drafts, and the page itself.

use crate::draft::Unopened;
use crate::event::Trouble;

/// The words about it.
#[derive(Debug)]
pub struct Kept {
    /// A newer build of the page waits.
    pub newer: &'static str,
    /// Let it take over.
    pub take_over: &'static str,
    /// What is amiss with keeping the draft, and what to do.
    pub trouble: fn(Trouble) -> &'static str,
    /// It has been read.
    pub noted: &'static str,
    /// Show the draft as another tab left it.
    pub take_theirs: &'static str,
    /// To the list of so many drafts.
    pub list: fn(usize) -> String,
    /// The list's heading.
    pub heading: &'static str,
    /// What the list is, and what lasts.
    pub lede: &'static str,
    /// There are none.
    pub none: &'static str,
    /// A draft without the name of a truck.
    pub nameless: &'static str,
    /// The four numbers, in a word each.
    pub numbers: [&'static str; 4],
    /// Why one cannot be opened.
    pub unopened: fn(Unopened) -> &'static str,
    /// Go on with it.
    pub open: &'static str,
    /// Throw it away.
    pub delete: &'static str,
    /// Whether it shall go.
    pub indeed: &'static str,
    /// It shall.
    pub delete_indeed: &'static str,
    /// It shall not.
    pub spare: &'static str,
    /// A new survey.
    pub another: &'static str,
}
