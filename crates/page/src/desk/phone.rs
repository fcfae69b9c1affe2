//! The order that is being said, as far as it has been typed.

use super::ask::{self, Ask};
use crate::field::Field;
use hangtrue_core::check::Report;
use hangtrue_core::profile::Profile;
use hangtrue_core::{Dimension, Spot, Survey, check};
use hangtrue_link::code::Said;

/// The four fields, in the order they are said.
pub const FIELDS: [Field; 4] = [
    Field::first(Dimension::Width.main_spot()),
    Field::first(Dimension::Height.main_spot()),
    Field::first(Dimension::Header.main_spot()),
    Field::first(Dimension::Bow.main_spot()),
];

/// An order that is being said.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Phone {
    /// What was typed. `prepared` where the numbers are said to be of the frame as it
    /// will be, after building.
    pub survey: Survey,
    /// Readings beyond the four that were asked for, in that order: a field that is
    /// being typed in stays where it is.
    pub extra: Vec<Field>,
    /// Questions that the caller has answered: it is as it was said.
    pub stands: Vec<Ask>,
}

impl Phone {
    /// The check of what was said.
    #[must_use]
    pub fn report(&self, profile: &Profile) -> Report {
        check(&self.survey, profile)
    }

    /// The first question that has not been answered.
    #[must_use]
    pub fn ask(&self, report: &Report) -> Ask {
        let asks = ask::all(&self.survey, report);
        asks.into_iter().find(|ask| !self.stands.contains(ask)).unwrap_or(Ask::Nothing)
    }

    /// Every field on the screen, in its order: the four, what was asked for, and
    /// what `ask` asks for now.
    #[must_use]
    pub fn fields(&self, ask: &Ask) -> Vec<Field> {
        let mut fields: Vec<Field> = FIELDS.into();
        fields.extend(&self.extra);
        if let Some(field) = self.wanted(ask)
            && !fields.contains(&field)
        {
            fields.push(field);
        }
        fields
    }

    /// The field of the reading that `ask` asks for, where it asks for one more.
    #[must_use]
    pub fn wanted(&self, ask: &Ask) -> Option<Field> {
        match ask {
            Ask::Take { spot, .. } | Ask::Required(spot) => {
                Some(Field { spot: *spot, index: self.survey.entries(*spot).len() })
            }
            _ => None,
        }
    }

    /// What is typed in `field`.
    #[must_use]
    pub fn typed(&self, field: Field) -> &str {
        let entries = self.survey.entries(field.spot);
        entries.get(field.index).map_or("", |entry| &entry.text)
    }

    /// Puts `text` into `field`.
    pub fn set(&mut self, field: Field, text: &str) {
        self.survey.set(field.spot, field.index, text);
        if !FIELDS.contains(&field) && !self.extra.contains(&field) {
            self.extra.push(field);
        }
    }

    /// What was said, in the terms of the check characters: each number as it was said
    /// first, the frame as the caller says it is.
    #[must_use]
    pub fn said(&self) -> Said {
        let step = self.survey.unit.step();
        let numbers = Dimension::ALL.map(|dimension| {
            let said = self.survey.lengths(dimension.main_spot()).next()?;
            Some(match dimension {
                Dimension::Bow => said.ceil_to(step),
                Dimension::Width | Dimension::Height | Dimension::Header => said.floor_to(step),
            })
        });
        Said { unit: self.survey.unit, build: self.survey.prepared, numbers }
    }

    /// Whether anything was typed.
    #[must_use]
    pub fn begun(&self) -> bool {
        Spot::ALL.into_iter().any(|spot| !self.survey.entries(spot).is_empty())
    }
}
