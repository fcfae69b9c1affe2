//! What happens to the page, in the screen's own terms.

use crate::field::Field;
use crate::step::Step;
use hangtrue_core::say::Language;
use hangtrue_core::short::{cut_first, digits, signed};
use hangtrue_core::{Length, Spot, Unit};

/// One thing that happened.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Event {
    /// A named field now holds this text, or a named choice this value.
    Input {
        /// The element's name.
        name: String,
        /// What it holds.
        value: String,
    },
    /// The focus came to a named field.
    Focus(String),
    /// A button or link with this action was pressed; the form's own action is `next`.
    Press(String),
    /// The browser went to this fragment, without its `#`.
    Navigate(String),
    /// A link's payload, or a text that holds one, is to be opened.
    Open(String),
    /// A file was chosen or dropped: its name and what is in it.
    File {
        /// Its name.
        name: String,
        /// What is in it; none where it is too large or no text.
        text: Option<String>,
    },
    /// The person has stopped typing for a moment.
    Settled,
    /// The text is on the clipboard, or could not be put there.
    Copied(bool),
    /// The tape picture of a named field was moved by this many marks.
    Slide {
        /// The field's name.
        name: String,
        /// To longer readings; negative to shorter ones.
        marks: i64,
    },
    /// The second module is there.
    Whole,
    /// It could not be had; it is tried again.
    Missing,
    /// A newer build of the page is kept and waits.
    Newer,
    /// A draft that was asked for, as it is kept.
    Loaded(String),
    /// The drafts that this device keeps, by their numbers.
    Drafts(Vec<(u32, String)>),
    /// Something is amiss with keeping the draft.
    Trouble(Trouble),
}

/// What may be amiss with keeping the draft on the device.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// There is no room left.
    Full,
    /// The browser, or its owner, does not allow it.
    Blocked,
    /// What was kept is gone: the browser threw it away. The draft is kept anew.
    Emptied,
    /// The draft was written by a newer build of the page, and is left alone.
    Newer,
    /// The draft was changed in another tab, and nothing has been typed here since.
    Changed,
    /// It was changed in another tab and here: both are kept, this one as another draft.
    Split,
    /// It was thrown away in another tab.
    Gone,
}

/// A key beside a reading's field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Key {
    /// Make the fraction this many eighths of an inch.
    Eighths(u8),
    /// Add this much, which may be negative.
    Nudge(Length),
}

/// What a button asks for. Written as one word, with arguments behind colons.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// Go on.
    Next,
    /// Go to the screen before.
    Back,
    /// Go to a screen.
    Go(Step),
    /// Go to a field, wherever it is, and come back to where we were.
    Change(Field),
    /// A key of the field that has the focus.
    Key(Key),
    /// Bring the keyboard with letters, or the one with numbers.
    Letters,
    /// Go to the field of the answer to a dealer's question, and come back.
    Answer(String),
    /// Put a suggested text into a field.
    Use(Field, String),
    /// Confirm a finding, or take that back.
    Confirm(String),
    /// Read a spot again: the old reading is struck through.
    Reread(Field),
    /// Take one more reading at a spot.
    Take(Spot),
    /// Leave out the reading that is offered now.
    Skip,
    /// Put the message on the clipboard: the order in one line, then the link.
    Copy,
    /// Put the link alone on the clipboard.
    CopyLink,
    /// Hand the link over by the share sheet.
    Share,
    /// Print the order.
    Print,
    /// Make the opened order the draft; asks first where there is a draft.
    Adopt,
    /// The answer to that: yes, in place of the draft.
    Replace,
    /// The answer to that: no, the draft stays.
    Keep,
    /// Save the order as a file: the line and the link, which opens here again.
    SaveFile,
    /// Begin again with nothing.
    Restart,
    /// Speak this language.
    Speak(Language),
    /// Let the newer build of the page take over.
    TakeOver,
    /// The trouble with keeping the draft has been read.
    Noted,
    /// Show the draft as another tab left it.
    TakeTheirs,
    /// Open a draft from the list.
    OpenDraft(u32),
    /// Throw a draft of the list away; asks first.
    Delete(u32),
    /// The answer to that: yes.
    DeleteIndeed,
    /// The answer to that: no.
    Spare,
}

impl Action {
    /// As it stands in the markup.
    #[must_use]
    pub fn code(&self) -> String {
        match self {
            Self::Next => "next".into(),
            Self::Back => "back".into(),
            Self::Go(step) => ["go:", step.slug()].concat(),
            Self::Change(field) => ["change:", &field.name()].concat(),
            Self::Key(Key::Eighths(n)) => ["eighths:", &digits(*n)].concat(),
            Self::Key(Key::Nudge(by)) => ["nudge:", &signed(by.nm())].concat(),
            Self::Letters => "letters".into(),
            Self::Answer(key) => ["answer:", key].concat(),
            Self::Use(field, text) => ["use:", &field.name(), ":", text].concat(),
            Self::Confirm(key) => ["confirm:", key].concat(),
            Self::Reread(field) => ["reread:", &field.name()].concat(),
            Self::Take(spot) => ["take:", &spot.key()].concat(),
            Self::Skip => "skip".into(),
            Self::Copy => "copy".into(),
            Self::CopyLink => "copy-link".into(),
            Self::Share => "share".into(),
            Self::Print => "print".into(),
            Self::Adopt => "adopt".into(),
            Self::Replace => "replace".into(),
            Self::Keep => "keep".into(),
            Self::SaveFile => "save-file".into(),
            Self::Restart => "restart".into(),
            Self::Speak(language) => ["speak:", language.key()].concat(),
            Self::TakeOver => "take-over".into(),
            Self::Noted => "noted".into(),
            Self::TakeTheirs => "take-theirs".into(),
            Self::OpenDraft(id) => ["open-draft:", &digits(*id)].concat(),
            Self::Delete(id) => ["delete:", &digits(*id)].concat(),
            Self::DeleteIndeed => "delete-indeed".into(),
            Self::Spare => "spare".into(),
        }
    }

    /// Whether a code is that of a key.
    #[must_use]
    pub fn is_key(code: &str) -> bool {
        code.starts_with("eighths:") || code.starts_with("nudge:")
    }

    /// The action of a code; none for anything else.
    #[must_use]
    pub fn from_code(code: &str) -> Option<Self> {
        Self::of_first_screens(code).or_else(|| Self::of_later_screens(code))
    }

    /// The same of those that the first screens have.
    pub(crate) fn of_first_screens(code: &str) -> Option<Self> {
        let (word, rest) = cut_first(code, ":").unwrap_or((code, ""));
        Some(match word {
            "next" => Self::Next,
            "back" => Self::Back,
            "go" => Self::Go(Step::from_slug(rest)?),
            "eighths" => Self::Key(Key::Eighths(rest.parse().ok().filter(|n| *n < 8)?)),
            "nudge" => Self::Key(Key::Nudge(Length::from_nm(rest.parse().ok()?))),
            "letters" => Self::Letters,
            "speak" => Self::Speak(Language::from_key(rest)?),
            _ => return None,
        })
    }

    fn of_later_screens(code: &str) -> Option<Self> {
        let (word, rest) = cut_first(code, ":").unwrap_or((code, ""));
        Some(match word {
            "change" => Self::Change(Field::from_name(rest)?),
            "answer" => Self::Answer(rest.to_owned()),
            "use" => {
                let (field, text) = cut_first(rest, ":")?;
                Self::Use(Field::from_name(field)?, text.to_owned())
            }
            "confirm" => Self::Confirm(rest.to_owned()),
            "reread" => Self::Reread(Field::from_name(rest)?),
            "take" => Self::Take(Spot::from_key(rest)?),
            "skip" => Self::Skip,
            "copy" => Self::Copy,
            "copy-link" => Self::CopyLink,
            "share" => Self::Share,
            "print" => Self::Print,
            "adopt" => Self::Adopt,
            "replace" => Self::Replace,
            "keep" => Self::Keep,
            "save-file" => Self::SaveFile,
            "restart" => Self::Restart,
            "take-over" => Self::TakeOver,
            "noted" => Self::Noted,
            "take-theirs" => Self::TakeTheirs,
            "open-draft" => Self::OpenDraft(rest.parse().ok()?),
            "delete" => Self::Delete(rest.parse().ok()?),
            "delete-indeed" => Self::DeleteIndeed,
            "spare" => Self::Spare,
            _ => return None,
        })
    }
}

/// The keys of a field in `unit`: what is written on each, and what it does.
#[must_use]
pub fn keys(unit: Unit) -> Vec<(&'static str, Key)> {
    let nudge = |mm| Key::Nudge(Length::from_mm(mm));
    let sixteenth = Length::SIXTEENTH;
    match unit {
        Unit::Inch => vec![
            ("1/8", Key::Eighths(1)),
            ("1/4", Key::Eighths(2)),
            ("3/8", Key::Eighths(3)),
            ("1/2", Key::Eighths(4)),
            ("5/8", Key::Eighths(5)),
            ("3/4", Key::Eighths(6)),
            ("7/8", Key::Eighths(7)),
            ("−1/16", Key::Nudge(-sixteenth)),
            ("+1/16", Key::Nudge(sixteenth)),
        ],
        Unit::Millimetre => {
            vec![("−10", nudge(-10)), ("−1", nudge(-1)), ("+1", nudge(1)), ("+10", nudge(10))]
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_action_is_read_back_from_its_code() {
        let field = Field { spot: Spot::HeaderLeft, index: 1 };
        let mut all = vec![
            Action::Next,
            Action::Back,
            Action::Go(Step::Check),
            Action::Change(field),
            Action::Letters,
            Action::Answer("side-seal".into()),
            Action::Use(field, "96 1/4: in".into()),
            Action::Confirm("spread:width.low".into()),
            Action::Reread(field),
            Action::Take(Spot::LoopSillToBow),
            Action::Skip,
            Action::Copy,
            Action::CopyLink,
            Action::Share,
            Action::Print,
            Action::Adopt,
            Action::Replace,
            Action::Keep,
            Action::SaveFile,
            Action::Restart,
            Action::TakeOver,
            Action::Noted,
            Action::TakeTheirs,
            Action::OpenDraft(7),
            Action::Delete(12),
            Action::DeleteIndeed,
            Action::Spare,
        ];
        for unit in [Unit::Inch, Unit::Millimetre] {
            all.extend(keys(unit).into_iter().map(|(_, key)| Action::Key(key)));
        }
        for action in all {
            assert_eq!(Action::from_code(&action.code()), Some(action));
        }
        for code in ["", "go:", "go:nowhere", "eighths:9", "use:width.low", "toString"] {
            assert_eq!(Action::from_code(code), None, "{code}");
        }
    }
}
