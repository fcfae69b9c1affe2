//! What happens on this page, in its own terms.

use super::step::Step;

/// One thing that happened.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Event {
    /// What happens on the walk too.
    Page(crate::Event),
}

impl From<crate::Event> for Event {
    fn from(event: crate::Event) -> Self {
        Self::Page(event)
    }
}

/// What a button or a box asks for. Written as one word, with an argument behind a colon.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// On to the next screen.
    Next,
    /// Back to the one before.
    Back,
    /// To a screen.
    Go(Step),
    /// Open the link that was pasted.
    Open,
    /// Tick a named box, or take the tick away.
    Tick(String),
    /// Put the service that was typed into the record.
    AddService,
    /// Take a service out of the record.
    DropService(usize),
    /// Put the record's link on the clipboard.
    Copy,
    /// Hand it over by the share sheet.
    Share,
    /// Print what is chosen.
    Print,
    /// Begin with another door.
    Restart,
    /// Go on with a door that was set aside.
    TakeUp(u32),
    /// Throw one away that was set aside.
    DropAside(u32),
}

impl Action {
    /// As it stands in the markup.
    #[must_use]
    pub fn code(&self) -> String {
        match self {
            Self::Next => "next".into(),
            Self::Back => "back".into(),
            Self::Go(step) => ["go:/", step.slug()].concat(),
            Self::Open => "open".into(),
            Self::Tick(name) => ["tick:", name].concat(),
            Self::AddService => "add-service".into(),
            Self::DropService(index) => ["drop-service:", &index.to_string()].concat(),
            Self::Copy => "copy".into(),
            Self::Share => "share".into(),
            Self::Print => "print".into(),
            Self::Restart => "restart".into(),
            Self::TakeUp(number) => ["take-up:", &number.to_string()].concat(),
            Self::DropAside(number) => ["drop-aside:", &number.to_string()].concat(),
        }
    }

    /// The action of a code; none for anything else.
    #[must_use]
    pub fn from_code(code: &str) -> Option<Self> {
        let (word, rest) = code.split_once(':').unwrap_or((code, ""));
        Some(match word {
            "next" => Self::Next,
            "back" => Self::Back,
            "go" => Self::Go(Step::from_address(rest)?),
            "open" => Self::Open,
            "tick" => Self::Tick(rest.to_owned()),
            "add-service" => Self::AddService,
            "drop-service" => Self::DropService(rest.parse().ok()?),
            "copy" => Self::Copy,
            "share" => Self::Share,
            "print" => Self::Print,
            "restart" => Self::Restart,
            "take-up" => Self::TakeUp(rest.parse().ok()?),
            "drop-aside" => Self::DropAside(rest.parse().ok()?),
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_action_is_read_back_from_its_code() {
        for action in [
            Action::Next,
            Action::Back,
            Action::Go(Step::Spring),
            Action::Open,
            Action::Tick("part.3".into()),
            Action::AddService,
            Action::DropService(2),
            Action::Copy,
            Action::Share,
            Action::Print,
            Action::Restart,
            Action::TakeUp(3),
            Action::DropAside(1),
        ] {
            assert_eq!(Action::from_code(&action.code()), Some(action));
        }
        for code in ["", "go:nowhere", "drop-service:x", "toString"] {
            assert_eq!(Action::from_code(code), None, "{code}");
        }
    }
}
