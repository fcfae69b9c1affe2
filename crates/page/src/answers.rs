//! What an order answers to a dealer's questions, as people read it.

use crate::text::{Later, Text};
use hangtrue_core::length::read;
use hangtrue_core::order::Answer;
use hangtrue_core::profile::{DOOR, Kind, Profile};
use hangtrue_core::say::Speaker;

/// The question and the answer: in the words of `profile` where it has them, else as the order has
/// them. A length says its unit, as the order's need not be its reader's: `speaker` has the order's.
pub(crate) fn told(profile: &Profile, speaker: Speaker, given: &Answer) -> [String; 2] {
    let Answer { question: key, answer } = given;
    let language = speaker.language.key();
    if key == DOOR {
        let door = profile.doors.iter().find(|door| door.key == *answer);
        let name = door.map_or(answer.as_str(), |door| door.name.in_language(language));
        return [Later::of(speaker.language).dealer.door, name].map(str::to_owned);
    }
    let Some(question) = profile.questions.iter().find(|question| question.key == *key) else {
        return [key.clone(), answer.clone()];
    };
    let text = &Text::of(speaker.language).frame;
    let shown = match (&question.kind, answer.as_str()) {
        (Kind::YesNo, "yes") => text.yes.to_owned(),
        (Kind::YesNo, "no") => text.no.to_owned(),
        (Kind::Length { .. }, _) => match read(answer, speaker.unit) {
            Ok(length) => speaker.length(length),
            Err(_) => answer.clone(),
        },
        _ => question.shown(answer, language).to_owned(),
    };
    [question.ask.in_language(language).to_owned(), shown]
}
