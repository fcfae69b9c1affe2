//! What is wrong with a table, in French (Canada).

use crate::csv::Fault;
use hangtrue_core::say::Language;
use hangtrue_core::{Length, Unit};

pub(crate) fn say(fault: &Fault) -> String {
    match fault {
        Fault::Empty => "Il n’y a rien dedans. Un tableau a une ligne de noms et une ligne par \
                         commande."
            .to_owned(),
        Fault::Inside { column } => format!(
            "Le champ {column} contient un guillemet mais ne commence pas par un guillemet. \
             Mettez le champ entre guillemets et doublez ceux du dedans\u{a0}: \"92 3/16\"\"\"."
        ),
        Fault::Behind { column } => format!(
            "Il y a quelque chose après le guillemet qui ferme le champ {column}. Rien n’a été lu \
             à partir de là. Doublez les guillemets à l’intérieur du champ."
        ),
        Fault::Open { column } => format!(
            "Le guillemet qui ouvre le champ {column} n’est jamais fermé. Rien n’a été lu à \
             partir de là."
        ),
        Fault::Count { found, expected } => format!(
            "La ligne a {found} {}; la première en a {expected}. Un champ qui contient une \
             virgule se met entre guillemets.",
            if *found == 1 { "champ" } else { "champs" }
        ),
        Fault::Word { column, found, known } => format!(
            "{column} est «\u{a0}{found}\u{a0}». Valeurs possibles\u{a0}: {}.",
            known.join(", ")
        ),
        Fault::Differs { column, found, ordered, unit } => {
            let link = match ordered {
                Some(length) => ["commande ", &written(*length, *unit)].concat(),
                None => "n’a pas cette mesure".to_owned(),
            };
            format!(
                "{column} est «\u{a0}{found}\u{a0}», mais le lien de cette ligne {link}. \
                 Corrigez la valeur qui est fausse, ou laissez la cellule vide."
            )
        }
        Fault::Link(error) => {
            let advice = super::link::read(*error);
            [&advice.what, " ", advice.ask].concat()
        }
        Fault::NoReading => "La ligne n’a aucune mesure.".to_owned(),
    }
}

fn written(length: Length, unit: Unit) -> String {
    Language::French.written(&length.text(unit))
}
