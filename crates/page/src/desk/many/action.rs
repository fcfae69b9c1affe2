//! What a button of the screen asks for.

use super::{By, Export, VERDICTS};

/// What a button asks for. Written as one word, with an argument behind a colon.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Action {
    /// The screen of one order.
    One,
    /// The screen of many.
    Many,
    /// Take what is in the box as a list.
    Open,
    /// Check all orders by the columns as they are now.
    Check,
    /// Look at the columns again.
    Columns,
    /// Check no further.
    Stop,
    /// Go on where it was stopped.
    Resume,
    /// Put the list away.
    Close,
    /// Show only what came to this verdict, a place in [`VERDICTS`]; none: all.
    Verdict(Option<usize>),
    /// Show only where this was found; if that is shown already, everything.
    Rule(String),
    /// Sort by this; if it is sorted so already, the other way round.
    Sort(By),
    /// Show this page.
    Page(usize),
    /// Save the rows that are shown.
    Save(Export),
    /// Open this one beside the call.
    Look(usize),
}

impl Action {
    /// As it stands in the markup.
    #[must_use]
    pub fn code(&self) -> String {
        match self {
            Self::One => "one".into(),
            Self::Many => "many".into(),
            Self::Open => "list-open".into(),
            Self::Check => "list-check".into(),
            Self::Columns => "list-columns".into(),
            Self::Stop => "list-stop".into(),
            Self::Resume => "list-resume".into(),
            Self::Close => "list-close".into(),
            Self::Verdict(verdict) => {
                let verdict = verdict.and_then(|at| VERDICTS.get(at)).unwrap_or(&"all");
                ["list-verdict:", verdict].concat()
            }
            Self::Rule(rule) => ["list-rule:", rule].concat(),
            Self::Sort(by) => ["list-sort:", by.key()].concat(),
            Self::Page(page) => ["list-page:", &page.to_string()].concat(),
            Self::Save(export) => ["list-save:", export.key()].concat(),
            Self::Look(at) => ["list-look:", &at.to_string()].concat(),
        }
    }

    /// The action of a code; none for anything else.
    #[must_use]
    pub fn from_code(code: &str) -> Option<Self> {
        let (word, rest) = code.split_once(':').unwrap_or((code, ""));
        Some(match word {
            "one" => Self::One,
            "many" => Self::Many,
            "list-open" => Self::Open,
            "list-check" => Self::Check,
            "list-columns" => Self::Columns,
            "list-stop" => Self::Stop,
            "list-resume" => Self::Resume,
            "list-close" => Self::Close,
            "list-verdict" if rest == "all" => Self::Verdict(None),
            "list-verdict" => Self::Verdict(Some(VERDICTS.iter().position(|it| *it == rest)?)),
            "list-rule" => Self::Rule(rest.to_owned()),
            "list-sort" => Self::Sort(By::from_key(rest)?),
            "list-page" => Self::Page(rest.parse().ok()?),
            "list-save" => Self::Save(Export::from_key(rest)?),
            "list-look" => Self::Look(rest.parse().ok()?),
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_action_is_read_back_from_its_code() {
        let mut all = vec![
            Action::One,
            Action::Many,
            Action::Open,
            Action::Check,
            Action::Columns,
            Action::Stop,
            Action::Resume,
            Action::Close,
            Action::Verdict(None),
            Action::Rule("slip".into()),
            Action::Page(7),
            Action::Save(Export::Csv),
            Action::Save(Export::JsonLines),
            Action::Look(99_999),
        ];
        all.extend((0..VERDICTS.len()).map(|at| Action::Verdict(Some(at))));
        all.extend(By::ALL.map(Action::Sort));
        for action in all {
            assert_eq!(Action::from_code(&action.code()), Some(action.clone()));
            // None is an action of the rest of the desk.
            assert_eq!(crate::desk::Action::from_code(&action.code()), None, "{action:?}");
        }
        for code in ["", "list-verdict", "list-sort:", "list-look:x", "list-save:txt"] {
            assert_eq!(Action::from_code(code), None, "{code}");
        }
    }
}
