//! What is amiss with an answer to a dealer's question, in French (Canada).

use super::text;
use crate::length::Unit;
use crate::profile::Amiss;
use crate::say::AnswerSays;

pub(crate) fn say(says: &AnswerSays, unit: Unit) -> String {
    let ask = says.ask.in_language("fr");
    let answer = says.answer.as_str();
    match &says.amiss {
        Amiss::Unanswered => ["Il manque la réponse à «\u{a0}", ask, "\u{a0}»."].concat(),
        Amiss::NotOffered => [
            "«\u{a0}",
            ask,
            "\u{a0}»\u{a0}: «\u{a0}",
            answer,
            "\u{a0}» n’est pas une des réponses offertes.",
        ]
        .concat(),
        Amiss::Unreadable(_) => {
            ["«\u{a0}", ask, "\u{a0}»\u{a0}: «\u{a0}", answer, "\u{a0}» n’est pas une mesure."]
                .concat()
        }
        Amiss::Beyond { value, bound, above } => [
            "«\u{a0}",
            ask,
            "\u{a0}»\u{a0}: ",
            &text(*value, unit),
            if *above { ", c’est plus de " } else { ", c’est moins de " },
            &text(*bound, unit),
            ".",
        ]
        .concat(),
        Amiss::TooLong { most } => {
            ["«\u{a0}", ask, "\u{a0}»\u{a0}: écrivez au plus ", &most.to_string(), " caractères."]
                .concat()
        }
    }
}
