//! The first moment: where the page was opened, and what this device remembers.

use crate::address::{Address, DESK, DESK_PAGE};
use crate::draft::{self, Unopened};
use crate::effect::Effect;
use crate::event::{Event, Trouble};
use crate::language::title;
use crate::model::{Environment, Model};
use crate::rest;
use crate::step::Step;
use crate::update::update;
use hangtrue_core::say::Language;

/// How the page was come to.
#[derive(Clone, Copy, Debug, Default)]
pub struct Arrival<'a> {
    /// The whole address.
    pub href: &'a str,
    /// The address's fragment, without its `#`.
    pub fragment: &'a str,
    /// The text kept with the history entry, on a reload.
    pub kept: Option<&'a str>,
    /// The draft this device remembers.
    pub draft: Option<&'a str>,
}

/// The model to begin with where nothing is remembered, nothing was sent, and English is spoken:
/// the first screens are enough, and the second module is on its way ([`crate::rest`]).
#[must_use]
pub fn boot_partial(environment: Environment) -> (Model, Vec<Effect>) {
    let model = Model::new(Environment { partial: true, ..environment });
    let effects = vec![Effect::List, Effect::Replace(model.address(), None)];
    (model, effects)
}

/// The model to begin with. An order in the address is opened; else the draft goes
/// on where it was left, or at the screen the address names.
#[must_use]
pub fn boot(environment: Environment, arrival: Arrival<'_>) -> (Model, Vec<Effect>) {
    rest::boot(environment, arrival)
}

pub(crate) fn later(environment: Environment, arrival: Arrival<'_>) -> (Model, Vec<Effect>) {
    let mut model = Model::new(environment);
    if arrival.fragment == DESK {
        return (model, vec![Effect::Visit(DESK_PAGE)]);
    }
    let mut first = vec![Effect::List];
    if let Some(draft) = arrival.draft
        && let Err(why) = draft::restore(&mut model, draft)
    {
        model.trouble = (why == Unopened::Newer).then_some(Trouble::Newer);
        first.push(Effect::Fresh);
    }
    let step = Address::from_text(arrival.fragment).map(|address| address.step);
    let effects = match (step, arrival.kept) {
        (Some(Step::Opened), Some(kept)) => update(&mut model, Event::Open(kept.to_owned())),
        (Some(_), _) => update(&mut model, Event::Navigate(arrival.fragment.to_owned())),
        (None, _) if !arrival.fragment.is_empty() || hangtrue_link::find(arrival.href).is_ok() => {
            update(&mut model, Event::Open(arrival.href.to_owned()))
        }
        (None, _) => vec![Effect::Replace(model.address(), None)],
    };
    // The page has just been loaded: the focus is the browser's affair.
    let effects = effects.into_iter().filter(|effect| *effect != Effect::Top);
    let language = model.environment.language;
    // The document comes in English.
    let speak =
        (language != Language::English).then(|| Effect::Speak(language, title(language, "")));
    let effects = speak.into_iter().chain(first).chain(effects).collect();
    (model, effects)
}
