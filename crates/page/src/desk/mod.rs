//! The counter desk: an order that is said over the telephone, typed as it is said.
//!
//! One screen, no steps, for staff at a keyboard. It is a page of its own, built from
//! the same crates: nothing of it weighs on the walk.

pub mod ask;
mod effect;
mod event;
mod model;
mod phone;
mod sent;
mod update;
mod view;

pub use effect::Effect;
pub use event::{Action, Event};
pub use model::Model;
pub use phone::{FIELDS, Phone, main_spot};
pub use sent::{Sent, Trouble};
pub use update::update;
pub use view::view;

use crate::field::Field;
use crate::model::Environment;
use hangtrue_core::Dimension;
use hangtrue_core::say::Language;

/// The desk to begin with, with the first field ready to be typed in.
#[must_use]
pub fn boot(environment: Environment) -> (Model, Vec<Effect>) {
    let first = Field::first(main_spot(Dimension::Width)).name();
    let model = Model::new(environment);
    // The document comes in English.
    let speak = (model.environment.language != Language::English).then(|| model.speak());
    (model, speak.into_iter().chain([Effect::focus(first)]).collect())
}

/// The desk before any script has run.
#[must_use]
pub fn first_screen() -> String {
    view(&Model::new(Environment::default()))
}
