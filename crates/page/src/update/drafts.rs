//! The drafts that this device keeps.

use super::walk;
use crate::draft::{self, Unopened};
use crate::effect::Effect;
use crate::event::Trouble;
use crate::model::{Environment, Model};

/// A draft was opened: from the list, or as another tab left it.
pub(super) fn loaded(model: &mut Model, text: &str) -> Vec<Effect> {
    // Nothing of the draft before may be taken for this one's.
    let mut opened = fresh(model);
    match draft::restore(&mut opened, text) {
        Ok(()) => {
            let step = opened.step;
            *model = opened;
            walk::go(model, step)
        }
        Err(why) => {
            model.trouble = (why == Unopened::Newer).then_some(Trouble::Newer);
            vec![Effect::Fresh]
        }
    }
}

/// A model without a draft, in the same surroundings and by the same rules.
pub(super) fn fresh(model: &Model) -> Model {
    let environment: Environment = model.environment.clone();
    Model {
        profile: model.profile.clone(),
        profile_fault: model.profile_fault.clone(),
        newer: model.newer,
        drafts: model.drafts.clone(),
        ..Model::new(environment)
    }
}

/// The list, the one that was written last first.
pub(super) fn listed(model: &mut Model, kept: &[(u32, String)]) -> Vec<Effect> {
    let mut list: Vec<_> =
        kept.iter().map(|(id, text)| draft::listed(*id, text, &model.profile)).collect();
    let day = |one: &draft::Listed| one.told.as_ref().ok().and_then(|told| told.day);
    hangtrue_core::short::sort(&mut list, |a, b| (day(a), a.id) > (day(b), b.id));
    model.drafts = list;
    Vec::new()
}

/// The notice has been read.
pub(super) fn noted(model: &mut Model) -> Vec<Effect> {
    model.trouble = None;
    vec![Effect::Focus("heading".to_owned())]
}

/// Asks whether the draft shall go.
pub(super) fn delete(model: &mut Model, id: u32) -> Vec<Effect> {
    model.deleting = model.drafts.iter().any(|one| one.id == id).then_some(id);
    vec![Effect::Focus("delete".to_owned())]
}

/// It goes.
pub(super) fn delete_indeed(model: &mut Model) -> Vec<Effect> {
    let Some(id) = model.deleting.take() else { return Vec::new() };
    vec![Effect::Forget(id), Effect::List, Effect::Focus("heading".to_owned())]
}

/// It stays.
pub(super) fn spare(model: &mut Model) -> Vec<Effect> {
    model.deleting = None;
    vec![Effect::Focus("heading".to_owned())]
}
