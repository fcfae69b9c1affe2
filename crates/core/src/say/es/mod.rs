//! Spanish, as spoken in Mexico and the United States.
//!
//! The words of the trade, in every catalogue the same (common practice, no source):
//!
//! | English | here | not |
//! |---|---|---|
//! | roll-up door | puerta enrollable | cortina: a shop's shutter as well |
//! | opening | abertura | claro: also what is clear |
//! | truck body | caja | carrocería: the cab too |
//! | trailer | remolque | |
//! | door post | poste | |
//! | header | dintel | cabezal: a tractor in Mexico |
//! | sill | umbral | |
//! | roof bow | arco del techo | |
//! | roof skin | lámina del techo | |
//! | depth (of header, of bow) | profundidad | peralte: known to builders only |
//! | frame | marco | |
//! | tape | cinta | |
//! | reading, to read | medida, medir | lectura |
//! | track | riel | |
//! | spring | resorte | |
//! | lift, tailgate | plataforma de carga, compuerta | |
//! | order, dealer | pedido, distribuidor | orden |
//! | slip | error | |
//!
//! The reader is spoken to as *usted*. A sentence takes the names of dimensions and
//! places with their article; their gender is known in `names` alone.

pub(super) mod answer;
pub(super) mod judge;
pub(super) mod names;
pub(super) mod reading;
pub(super) mod rule;
pub(super) mod spoken;

use super::{Language, Message, Speaker, capital};
use crate::length::{Length, Unit};

pub(super) fn say(message: &Message, unit: Unit) -> String {
    match message {
        Message::Unreadable { spot, text, error } => {
            let refused = reading::refused(error.kind, text.trim(), unit);
            [&capital(names::spot(*spot)), ": ", &refused].concat()
        }
        Message::Rule(says) => rule::say(says, unit),
        Message::Answer(says) => answer::say(says, unit),
        Message::Hint(hint) => rule::hint(hint, unit),
        Message::Judge(says) => judge::say(says, unit),
    }
}

fn text(length: Length, unit: Unit) -> String {
    Speaker { language: Language::Spanish, unit }.length(length)
}
