//! French (Canada).
//!
//! The words of the trade, in every catalogue the same (common practice, no source):
//!
//! | English | here | not |
//! |---|---|---|
//! | roll-up door | porte à enroulement | porte roulante: one that rolls aside |
//! | opening | ouverture | |
//! | truck body | fourgon | boîte: any box |
//! | trailer | remorque | |
//! | door post | poteau | montant: any upright of a wall |
//! | header | linteau | |
//! | sill | seuil | |
//! | roof bow | arceau du toit | |
//! | roof skin | tôle du toit | |
//! | depth (of header, of bow) | profondeur | |
//! | frame | cadre | |
//! | tape | ruban | galon |
//! | reading, to read | mesure, mesurer | lecture |
//! | track | rail | |
//! | spring | ressort | |
//! | lift, tailgate | hayon élévateur, hayon | |
//! | order, dealer | commande, distributeur | ordre, concessionnaire: of vehicles |
//! | slip | erreur | |
//!
//! A no-break space stands before the colon and inside « », none before `;`, `?` and `!`,
//! as is usual in Canada. The reader is spoken to as *vous*. A sentence takes the names of
//! dimensions and places with their article; their gender is known in `names` alone.

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
            [&capital(names::spot(*spot)), "\u{a0}: ", &refused].concat()
        }
        Message::Rule(says) => rule::say(says, unit),
        Message::Answer(says) => answer::say(says, unit),
        Message::Hint(hint) => rule::hint(hint, unit),
        Message::Judge(says) => judge::say(says, unit),
    }
}

fn text(length: Length, unit: Unit) -> String {
    Speaker { language: Language::French, unit }.length(length)
}
