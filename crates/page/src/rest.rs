//! What the first screens do not need: it comes in a second module, while the first are used.
//!
//! A build may be cut in two (`crates/xtask/src/split`): every function of this file, and all
//! that only they reach, goes into the second module. Until that has come
//! ([`Environment::partial`](crate::Environment)) none of them may be called, and none is: an
//! event that needs one waits ([`Model::waiting`]), a language other than English is not spoken.
//! A function stays one, and is called as it stands here: `inline(never)`.

use crate::boot::{self, Arrival};
use crate::effect::Effect;
use crate::event::Event;
use crate::model::{Environment, Model};
use crate::problems::{self, Problem};
use crate::step::Step;
use crate::text::{Later, Text};
use crate::view;
use hangtrue_core::Unit;
use hangtrue_core::check::{Report, check_order, check_order_as_judged};
use hangtrue_core::judge::Judgement;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use maud::Markup;

/// Opens the page where something is remembered or was sent.
#[inline(never)]
pub(crate) fn boot(environment: Environment, arrival: Arrival<'_>) -> (Model, Vec<Effect>) {
    boot::later(environment, arrival)
}

/// What a dealer puts on the first screen: whose rules these are, and the dealer's own words.
#[inline(never)]
pub(crate) fn dealer_at_start(scene: view::Scene<'_>) -> [Markup; 2] {
    view::dealer_at_start(scene)
}

/// The door lines of a dealer.
#[inline(never)]
pub(crate) fn doors(scene: view::Scene<'_>) -> Markup {
    view::doors(scene)
}

/// A dealer's rules as they hold for the chosen door line.
#[inline(never)]
pub(crate) fn rules(model: &Model) -> Profile {
    model.profile.chosen(&model.order.answers).into_owned()
}

/// The whole check, with the judge.
#[inline(never)]
pub(crate) fn report(model: &Model) -> Report {
    debug_assert!(!model.environment.partial, "the judge is not there yet");
    check_order(&model.order, &model.profile)
}

/// The same, with what the judge said before.
#[inline(never)]
pub(crate) fn as_judged(model: &Model, judgement: &Judgement) -> Report {
    check_order_as_judged(&model.order, &model.profile, judgement)
}

/// What stands against leaving the present screen, in the order in which it is told.
#[inline(never)]
pub(crate) fn problems(model: &Model, report: &Report) -> Vec<Problem> {
    problems::problems(model, report)
}

/// The summary of that.
#[inline(never)]
pub(crate) fn summary(scene: view::Scene<'_>) -> Markup {
    view::summary(scene)
}

/// The same at its field.
#[inline(never)]
pub(crate) fn at_field(scene: view::Scene<'_>, field: &str, here: &[&Problem]) -> Markup {
    view::at_field(scene, field, here)
}

/// What is amiss with keeping the draft, and a newer build.
#[inline(never)]
pub(crate) fn notices(scene: view::Scene<'_>) -> Markup {
    view::notices(scene)
}

/// The way to the drafts that this device keeps.
#[inline(never)]
pub(crate) fn drafts(scene: view::Scene<'_>) -> Markup {
    view::drafts(scene)
}

/// What a frame must have at least by a dealer's rules.
#[inline(never)]
pub(crate) fn minimums(scene: view::Scene<'_>) -> String {
    view::minimums_by_rules(scene)
}

/// What has to be built of the frame.
#[inline(never)]
pub(crate) fn to_be_built(scene: view::Scene<'_>) -> Markup {
    view::to_be_built(scene)
}

/// The answers that are lengths, in another unit than they were typed in.
#[inline(never)]
pub(crate) fn keep_answers(model: &mut Model, was: Unit) {
    crate::update::keep_answers(model, was);
}

/// What is not found any more is not confirmed either.
#[inline(never)]
pub(crate) fn unconfirm(model: &mut Model) -> Option<Effect> {
    crate::update::unconfirm(model)
}

/// Asks the judge for what is shown of it while a reading is typed, and notes what was confirmed
/// before the page was opened.
#[inline(never)]
pub(crate) fn hold(model: &mut Model) {
    crate::update::note_confirmed(model);
    let offered = model.proof.filter(|_| model.step == Step::Proof);
    model.held.judgement = model.told.then(|| report(model).judgement);
    model.held.before = offered.map(|field| report(&view::before(model, field)).judgement);
}

/// What stands on the screens after the four dimensions, and on those beside the walk.
#[inline(never)]
pub(crate) fn body(scene: view::Scene<'_>) -> Markup {
    debug_assert!(!scene.model.environment.partial, "this screen is not there yet");
    view::later(scene)
}

/// Takes in what the first screens do not know.
#[inline(never)]
pub(crate) fn update(model: &mut Model, event: Event) -> Vec<Effect> {
    debug_assert!(!model.environment.partial, "not there yet: {event:?}");
    crate::update::later(model, event)
}

/// The words of the later screens.
#[inline(never)]
pub(crate) fn words(language: Language) -> &'static Later {
    Later::of(language)
}

/// The words of another language than English.
#[inline(never)]
pub(crate) fn text(language: Language) -> &'static Text {
    Text::translated(language)
}
