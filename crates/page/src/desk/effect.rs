//! What the desk asks of the browser.

/// One thing for the browser to do, after the screen has been drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Effect {
    /// What the walk asks for too.
    Page(crate::Effect),
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
