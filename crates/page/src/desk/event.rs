//! What happens at the desk, in its own terms.

use crate::field::Field;
use crate::file::Format;

/// One thing that happened.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Event {
    /// What happens on the walk too.
    Page(crate::Event),
    /// A picture was opened.
    Picture {
        /// Its file's name; empty for one of the camera.
        name: String,
        /// The texts of the codes in it; none where it is no picture that is read here.
        codes: Option<Vec<String>>,
    },
    /// What became of the camera.
    Camera(Camera),
    /// There is time for a few milliseconds of work.
    Work,
}

/// What the camera does.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Camera {
    /// Nothing.
    #[default]
    Off,
    /// The browser asks whether it may be used.
    Asked,
    /// It looks for a code.
    On,
    /// It may not be used.
    Refused,
    /// There is none, or another program has it.
    Missing,
}

impl From<crate::Event> for Event {
    fn from(event: crate::Event) -> Self {
        Self::Page(event)
    }
}

/// What a button asks for. Written as one word, with arguments behind colons.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// Enter: to the next field.
    Next,
    /// The caller says that it is so: on to the next question.
    Stands,
    /// The caller says it is this: put it into the field.
    Use(Field, String),
    /// Another call.
    Fresh,
    /// The call before comes back.
    Before,
    /// Open what is in the box.
    Open,
    /// Put this one of the opened orders away.
    Close(usize),
    /// Print this one of the opened orders.
    Print(usize),
    /// Save this one of the opened orders as a file.
    Save(usize, Format),
    /// Make an order of what was phoned in.
    Keep,
    /// Look for a code with the camera.
    Look,
    /// No more.
    LookAway,
}

impl Action {
    /// As it stands in the markup.
    #[must_use]
    pub fn code(&self) -> String {
        match self {
            Self::Next => "next".into(),
            Self::Stands => "stands".into(),
            Self::Use(field, text) => ["use:", &field.name(), ":", text].concat(),
            Self::Fresh => "fresh".into(),
            Self::Before => "before".into(),
            Self::Open => "open".into(),
            Self::Close(at) => ["close:", &at.to_string()].concat(),
            Self::Print(at) => ["print:", &at.to_string()].concat(),
            Self::Save(at, format) => ["save:", &at.to_string(), ":", format.key()].concat(),
            Self::Keep => "keep".into(),
            Self::Look => "look".into(),
            Self::LookAway => "look-away".into(),
        }
    }

    /// The action of a code; none for anything else.
    #[must_use]
    pub fn from_code(code: &str) -> Option<Self> {
        let (word, rest) = code.split_once(':').unwrap_or((code, ""));
        Some(match word {
            "next" => Self::Next,
            "stands" => Self::Stands,
            "use" => {
                let (field, text) = rest.split_once(':')?;
                Self::Use(Field::from_name(field)?, text.to_owned())
            }
            "fresh" => Self::Fresh,
            "before" => Self::Before,
            "open" => Self::Open,
            "close" => Self::Close(rest.parse().ok()?),
            "print" => Self::Print(rest.parse().ok()?),
            "save" => {
                let (at, format) = rest.split_once(':')?;
                Self::Save(at.parse().ok()?, Format::from_key(format)?)
            }
            "keep" => Self::Keep,
            "look" => Self::Look,
            "look-away" => Self::LookAway,
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use hangtrue_core::Spot;

    #[test]
    fn every_action_is_read_back_from_its_code() {
        let field = Field { spot: Spot::LoopSillToBow, index: 1 };
        let all = [
            Action::Next,
            Action::Stands,
            Action::Use(field, "96 1/4: in".into()),
            Action::Fresh,
            Action::Before,
            Action::Open,
            Action::Close(1),
            Action::Print(0),
            Action::Save(1, Format::Json),
            Action::Keep,
            Action::Look,
            Action::LookAway,
        ];
        for action in all {
            assert_eq!(Action::from_code(&action.code()), Some(action));
        }
        for code in ["", "use:width.low", "use:nowhere:1", "toString"] {
            assert_eq!(Action::from_code(code), None, "{code}");
        }
    }
}
