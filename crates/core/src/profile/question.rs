//! Questions of the dealer's own, and what is amiss with an answer.

use super::{End, Words, limits};
use crate::length::{Length, ReadError, Unit, read};

/// A question.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// Its key in files and orders.
    pub key: String,
    /// The question.
    pub ask: Words,
    /// How to answer it.
    pub hint: Words,
    /// Whether an order needs the answer.
    pub required: bool,
    /// What an answer is.
    pub kind: Kind,
}

/// What an answer is.
#[derive(Clone, Debug, PartialEq)]
pub enum Kind {
    /// One of these.
    Choice(Vec<Choice>),
    /// `yes` or `no`.
    YesNo,
    /// A reading, kept as it was typed.
    Length {
        /// The least.
        least: Option<Length>,
        /// The most.
        most: Option<Length>,
    },
    /// A line of text.
    Text {
        /// The most characters.
        most: u16,
    },
}

/// One answer that can be chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// Its key, which the order keeps.
    pub key: String,
    /// What the customer reads.
    pub label: Words,
}

/// What is wrong with an answer.
#[derive(Clone, Debug, PartialEq)]
pub enum Amiss {
    /// The order needs it.
    Unanswered,
    /// None of those that can be chosen.
    NotOffered,
    /// No reading.
    Unreadable(ReadError),
    /// A reading beyond a limit.
    Beyond {
        /// The reading.
        value: Length,
        /// The end of the limit.
        bound: Length,
        /// Above the most, or below the least.
        above: bool,
    },
    /// More text than is taken.
    TooLong {
        /// The most characters.
        most: u16,
    },
}

impl Question {
    /// What is amiss with `answer`, typed where a bare number is in `unit`.
    #[must_use]
    pub fn amiss(&self, answer: &str, unit: Unit) -> Option<Amiss> {
        if answer.trim().is_empty() {
            return self.required.then_some(Amiss::Unanswered);
        }
        match &self.kind {
            Kind::Choice(choices) => {
                (!choices.iter().any(|c| c.key == answer)).then_some(Amiss::NotOffered)
            }
            Kind::YesNo => (!matches!(answer, "yes" | "no")).then_some(Amiss::NotOffered),
            Kind::Text { most } => {
                let long = answer.chars().nth(usize::from(*most)).is_some();
                long.then_some(Amiss::TooLong { most: *most })
            }
            Kind::Length { least, most } => match read(answer, unit) {
                Err(error) => Some(Amiss::Unreadable(error)),
                Ok(value) => limits::beyond(*least, *most, value).map(|(bound, end)| {
                    let above = end == End::Most;
                    Amiss::Beyond { value, bound, above }
                }),
            },
        }
    }

    /// The answer as it is shown: a choice by its label, the rest as it stands.
    #[must_use]
    pub fn shown<'a>(&'a self, answer: &'a str, language: &str) -> &'a str {
        match &self.kind {
            Kind::Choice(choices) => choices
                .iter()
                .find(|choice| choice.key == answer)
                .map_or(answer, |choice| choice.label.in_language(language)),
            _ => answer,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn question(kind: Kind) -> Question {
        Question {
            key: "q".into(),
            ask: Words::plain("Which?"),
            hint: Words::default(),
            required: true,
            kind,
        }
    }

    #[test]
    fn an_answer_is_held_to_its_kind() {
        let choice = Choice { key: "a".into(), label: Words::plain("Bulb seal") };
        let choice = question(Kind::Choice(vec![choice]));
        let amiss = |question: &Question, answer: &str| question.amiss(answer, Unit::Inch);
        assert_eq!(amiss(&choice, " "), Some(Amiss::Unanswered));
        assert_eq!(amiss(&choice, "b"), Some(Amiss::NotOffered));
        assert_eq!(amiss(&choice, "a"), None);
        assert_eq!(choice.shown("a", "en"), "Bulb seal");
        assert_eq!(choice.shown("gone", "en"), "gone");
        assert_eq!(amiss(&question(Kind::YesNo), "maybe"), Some(Amiss::NotOffered));
        assert_eq!(amiss(&question(Kind::YesNo), "no"), None);
        let text = question(Kind::Text { most: 3 });
        assert_eq!(amiss(&text, "äöü"), None);
        assert_eq!(amiss(&text, "äöüß"), Some(Amiss::TooLong { most: 3 }));
        let optional = Question { required: false, ..text };
        assert_eq!(amiss(&optional, ""), None);
    }

    #[test]
    fn a_length_is_read_as_a_tape_reads_and_held_to_its_limits() {
        let inch = Length::INCH;
        let offset =
            question(Kind::Length { least: Some(inch.times(2)), most: Some(inch.times(4)) });
        assert_eq!(offset.amiss("4", Unit::Inch), None);
        let beyond = |answer| match offset.amiss(answer, Unit::Inch) {
            Some(Amiss::Beyond { bound, above, .. }) => Some((bound, above)),
            _ => None,
        };
        assert_eq!(beyond("5"), Some((inch.times(4), true)));
        assert_eq!(beyond("1"), Some((inch.times(2), false)));
        assert!(matches!(offset.amiss("some", Unit::Inch), Some(Amiss::Unreadable(_))));
    }
}
