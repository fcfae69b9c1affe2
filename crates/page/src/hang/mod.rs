//! Hanging the door: from the order's numbers to a door that runs true, and its record.
//!
//! A page of its own, `hang.html`, built from the same crates: nothing of it weighs on the
//! walk. Everything that is worked out here is worked out in `hangtrue_core::hang`.

mod boot;
mod draft;
mod effect;
mod event;
mod fields;
mod model;
mod step;
mod update;
mod view;
mod work;

pub use boot::{Arrival, boot};
pub use effect::Effect;
pub use event::{Action, Event};
pub use fields::Fields;
pub use model::{Fault, Model};
pub use step::Step;
pub use update::update;
pub use view::view;

use crate::model::Environment;

/// The page before any script has run.
#[must_use]
pub fn first_screen() -> String {
    view(&Model::new(Environment::default()))
}
