//! What is amiss with an answer to a dealer's question, in Spanish.

use super::text;
use crate::length::Unit;
use crate::profile::Amiss;
use crate::say::AnswerSays;

pub(crate) fn say(says: &AnswerSays, unit: Unit) -> String {
    let ask = says.ask.in_language("es");
    let answer = says.answer.as_str();
    match &says.amiss {
        Amiss::Unanswered => ["Falta responder “", ask, "”."].concat(),
        Amiss::NotOffered => {
            ["“", ask, "”: “", answer, "” no es una de las respuestas que se ofrecen."].concat()
        }
        Amiss::Unreadable(_) => ["“", ask, "”: “", answer, "” no es una medida."].concat(),
        Amiss::Beyond { value, bound, above } => [
            "“",
            ask,
            "”: ",
            &text(*value, unit),
            if *above { " es más de " } else { " es menos de " },
            &text(*bound, unit),
            ".",
        ]
        .concat(),
        Amiss::TooLong { most } => {
            ["“", ask, "”: escriba a lo más ", &most.to_string(), " caracteres."].concat()
        }
    }
}
