//! The first moment: the link in the address, or what this device remembers.

use super::draft;
use super::effect::Effect;
use super::event::Event;
use super::model::Model;
use super::step::Step;
use super::update::update;
use crate::model::Environment;
use hangtrue_core::say::Language;

/// How the page was come to.
#[derive(Clone, Copy, Debug, Default)]
pub struct Arrival<'a> {
    /// The whole address.
    pub href: &'a str,
    /// The address's fragment, without its `#`.
    pub fragment: &'a str,
    /// The draft this device remembers of a door being hung.
    pub draft: Option<&'a str>,
    /// Those of other doors that were set aside, by their numbers.
    pub aside: &'a [(u32, String)],
}

/// The model to begin with. An order or a record in the address is opened; else the draft
/// goes on where it was left, or at the screen the address names.
#[must_use]
pub fn boot(environment: Environment, arrival: Arrival<'_>) -> (Model, Vec<Effect>) {
    let mut model = Model::new(environment);
    model.aside = arrival.aside.to_vec();
    if let Some(draft) = arrival.draft {
        draft::restore(&mut model, draft);
    }
    // The document comes in English.
    let speak = (model.language() != Language::English).then(|| model.speak());
    if let Some(step) = Step::from_address(arrival.fragment) {
        model.step = step;
        return (model, speak.into_iter().collect());
    }
    let effects = if !arrival.fragment.is_empty() || hangtrue_link::find(arrival.href).is_ok() {
        update(&mut model, Event::Page(crate::Event::Open(arrival.href.to_owned())))
    } else {
        vec![Effect::Replace(model.step)]
    };
    // The page has just been loaded: the focus is the browser's affair.
    let top = Effect::Page(crate::Effect::Top);
    let effects = effects.into_iter().filter(|effect| *effect != top);
    (model, speak.into_iter().chain(effects).collect())
}
