//! The counter desk: an order that is said over the telephone, typed as it is said.
//!
//! One screen, no steps, for staff at a keyboard; behind a switch, many orders at once. It
//! is a page of its own, built from the same crates: nothing of it weighs on the walk.

pub mod ask;
mod effect;
mod event;
pub mod many;
mod model;
mod phone;
mod sent;
mod update;
mod view;

pub use effect::Effect;
pub use event::{Action, Camera, Event};
pub use model::{Model, Screen};
pub use phone::{FIELDS, Phone};
pub use sent::{Sent, Trouble};
pub use update::update;
pub use view::view;

use crate::field::Field;
use crate::model::Environment;
use hangtrue_core::Dimension;
use hangtrue_core::say::Language;

/// The desk to begin with: an order whose link was opened here, or the first field ready
/// to be typed in. `environment` holds the address of the desk itself.
#[must_use]
pub fn boot(mut environment: Environment, href: &str) -> (Model, Vec<Effect>) {
    // Links of orders lead to the walk, which stands in the same folder.
    let folder = environment.base.rfind('/').map_or(0, |at| at.saturating_add(1));
    environment.base.truncate(folder);
    let mut model = Model::new(environment);
    // The document comes in English.
    let speak = (model.environment.language != Language::English).then(|| model.speak());
    let behind = href.split_once('#').map_or("", |(_, behind)| behind);
    if !behind.is_empty() {
        let effects = update(&mut model, Event::Page(crate::Event::Open(behind.to_owned())));
        return (model, speak.into_iter().chain(effects).collect());
    }
    let first = Field::first(Dimension::Width.main_spot()).name();
    (model, speak.into_iter().chain([Effect::focus(first)]).collect())
}

/// The desk before any script has run.
#[must_use]
pub fn first_screen() -> String {
    view(&Model::new(Environment::default()))
}
