//! What is amiss with an answer to a dealer's question, in English (US).

use crate::length::Unit;
use crate::profile::Amiss;
use crate::say::AnswerSays;

pub(crate) fn say(says: &AnswerSays, unit: Unit) -> String {
    let ask = says.ask.in_language("en");
    let answer = says.answer.as_str();
    match &says.amiss {
        Amiss::Unanswered => ["“", ask, "” has not been answered."].concat(),
        Amiss::NotOffered => {
            ["“", ask, "”: “", answer, "” is not one of the answers offered."].concat()
        }
        Amiss::Unreadable(_) => ["“", ask, "”: “", answer, "” is not a reading."].concat(),
        Amiss::Beyond { value, bound, above } => [
            "“",
            ask,
            "”: ",
            &value.text(unit),
            if *above { " is more than " } else { " is less than " },
            &bound.text(unit),
            ".",
        ]
        .concat(),
        Amiss::TooLong { most } => {
            ["“", ask, "”: write at most ", &most.to_string(), " characters."].concat()
        }
    }
}
