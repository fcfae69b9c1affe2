//! What the desk asks of the browser.

use super::event::Action;

/// One thing for the browser to do, after the screen has been drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Effect {
    /// What the walk asks for too.
    Page(crate::Effect),
    /// Look for a code with the camera, in the `video` of this id; what becomes of it is
    /// an [`Event::Camera`](super::Event::Camera), and what it finds an
    /// [`Event::Picture`](super::Event::Picture).
    Look(&'static str),
    /// Let go of the camera.
    LookAway,
    /// Do what this button does, now that what was typed is drawn.
    Press(Action),
    /// Send [`Event::Work`](super::Event::Work) again and again, without keeping the page
    /// from answering, until an update asks for no more.
    Work,
    /// Whether the browser is to ask before this page is left.
    AskBeforeLeaving(bool),
}

impl Effect {
    /// Put the focus on the element of this id.
    #[must_use]
    pub fn focus(id: impl Into<String>) -> Self {
        Self::Page(crate::Effect::Focus(id.into()))
    }

    /// Put this text on the clipboard.
    #[must_use]
    pub fn copy(text: impl Into<String>) -> Self {
        Self::Page(crate::Effect::Copy(text.into()))
    }
}
