//! What only a profile can have wrong, as data; the words are in [`crate::say`].

use hangtrue_core::Length;
use hangtrue_core::profile::{NumberError, Poor};

use crate::json::error::Fault;

/// What is wrong in a profile, beyond what can be wrong in any file.
#[derive(Clone, Debug, PartialEq)]
pub enum ProfileFault {
    /// A list that is too long.
    TooMany {
        /// The most items.
        most: usize,
    },
    /// A text of nothing.
    Empty,
    /// A text that is too long.
    TextTooLong {
        /// The most characters.
        most: usize,
    },
    /// A character that nobody sees.
    Letter {
        /// Which.
        letter: char,
    },
    /// A number out of its range.
    Range {
        /// The number.
        found: String,
        /// The least.
        least: u32,
        /// The most.
        most: u32,
    },
    /// No length, or one without its unit.
    Length {
        /// What is there.
        found: String,
    },
    /// No mass per area.
    Weight {
        /// What is there.
        found: String,
    },
    /// A limit whose least is above its most.
    UpsideDown {
        /// The least.
        least: Length,
        /// The most.
        most: Length,
    },
    /// A limit with neither end.
    NoEnd,
    /// An interval with neither months nor openings.
    NoInterval,
    /// A key of other letters than a key may have.
    Key {
        /// What is there.
        found: String,
    },
    /// Two items of a list have the same key.
    SameKey {
        /// The list.
        list: &'static str,
        /// The key.
        key: String,
    },
    /// A key that the order needs for itself.
    Taken {
        /// The key.
        key: String,
    },
    /// Something that belongs to a question of another kind.
    OtherKind {
        /// What.
        key: &'static str,
    },
    /// A choice of less than two.
    FewChoices,
    /// No e-mail address.
    Email {
        /// What is there.
        found: String,
    },
    /// No telephone number.
    Phone {
        /// What is there.
        found: String,
    },
    /// No address of a page on the web; a script, perhaps.
    Page {
        /// What is there.
        found: String,
    },
    /// No colour.
    Colour {
        /// What is there.
        found: String,
    },
    /// Text that its ground hides.
    Contrast(Poor),
    /// A format of order numbers that does not work.
    NumberFormat(NumberError),
}

impl ProfileFault {
    /// The name in files.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::TooMany { .. } => "too-many",
            Self::Empty => "empty",
            Self::TextTooLong { .. } => "text-too-long",
            Self::Letter { .. } => "hidden-character",
            Self::Range { .. } => "out-of-range",
            Self::Length { .. } => "no-length",
            Self::Weight { .. } => "no-weight",
            Self::UpsideDown { .. } => "upside-down",
            Self::NoEnd => "no-end",
            Self::NoInterval => "no-interval",
            Self::Key { .. } => "no-key",
            Self::SameKey { .. } => "same-key",
            Self::Taken { .. } => "key-taken",
            Self::OtherKind { .. } => "other-kind",
            Self::FewChoices => "few-choices",
            Self::Email { .. } => "no-email",
            Self::Phone { .. } => "no-phone",
            Self::Page { .. } => "no-page",
            Self::Colour { .. } => "no-color",
            Self::Contrast(_) => "low-contrast",
            Self::NumberFormat(_) => "no-number-format",
        }
    }
}

impl From<ProfileFault> for Fault {
    fn from(fault: ProfileFault) -> Self {
        Self::Profile(fault)
    }
}
