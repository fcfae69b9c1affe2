//! What this page asks of the browser.

use super::step::Step;

/// One thing for the browser to do, after the screen has been drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Effect {
    /// What the walk asks for too.
    Page(crate::Effect),
    /// Show this screen's address, as a new entry in the history.
    Show(Step),
    /// Show it in place of the present one.
    Replace(Step),
    /// Keep this text as the draft of a door being hung.
    Keep(String),
    /// Throw that draft away.
    Forget,
    /// Set this draft aside under a number of its own, beside the draft.
    SetAside(u32, String),
    /// The one that was set aside under this number is no longer wanted there.
    DropAside(u32),
}

impl From<crate::Effect> for Effect {
    fn from(effect: crate::Effect) -> Self {
        Self::Page(effect)
    }
}
