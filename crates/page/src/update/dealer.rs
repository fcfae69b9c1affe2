//! A dealer's rules, and the answers to a dealer's questions.

use super::walk;
use crate::effect::Effect;
use crate::model::Model;
use crate::rules::in_force;
use crate::step::Step;
use hangtrue_core::order::Answer;
use hangtrue_core::profile::{Kind, Profile, Question};
use hangtrue_core::{Entry, Unit};

/// The name of an answer's field begins with this; the question's key follows.
pub(crate) const ANSWER: &str = "answer:";

impl Model {
    /// Takes a dealer's rules, or what was wrong with them: then the built-in ones hold,
    /// and the page says so.
    pub fn rule_by(&mut self, rules: Result<Profile, String>) {
        let untouched = (!self.has_draft()).then_some(&mut self.order.survey);
        (self.profile, self.profile_fault) = in_force(rules, untouched);
    }

    /// The answer to the question of `key`; empty where there is none.
    #[must_use]
    pub fn answer(&self, key: &str) -> &str {
        let found = self.order.answers.iter().find(|answer| answer.question == key);
        found.map_or("", |answer| answer.answer.as_str())
    }
}

/// The question of `key` is answered with `text`.
pub(super) fn answer(model: &mut Model, key: &str, text: &str) {
    let answers = &mut model.order.answers;
    answers.retain(|answer| answer.question != key);
    if !text.is_empty() {
        answers.push(Answer { question: key.to_owned(), answer: text.to_owned() });
    }
}

/// The unit was another: no answer changes its meaning; see [`crate::rest::keep_answers`].
pub(crate) fn keep_answers(model: &mut Model, was: Unit) {
    let is_length = |question: &Question| matches!(question.kind, Kind::Length { .. });
    let unit = model.order.survey.unit;
    for answer in &mut model.order.answers {
        let mut asked = model.profile.questions.iter();
        if asked.any(|question| question.key == answer.question && is_length(question)) {
            answer.answer = Entry::kept(&answer.answer, was, unit);
        }
    }
}

/// To the field of an answer, and Continue from there comes back here.
pub(super) fn change(model: &mut Model, key: &str) -> Vec<Effect> {
    let focus = Effect::Focus([ANSWER, key].concat());
    if model.step == Step::Questions {
        return vec![focus];
    }
    let here = model.step;
    let mut effects = walk::go(model, Step::Questions);
    model.back_to = Some(here);
    effects.retain(|effect| *effect != Effect::Top);
    effects.push(focus);
    effects
}

/// The screen after the readings: the dealer's questions, if there are any.
pub(crate) fn after_the_readings(model: &Model) -> Step {
    if model.profile.questions.is_empty() { Step::Check } else { Step::Questions }
}
