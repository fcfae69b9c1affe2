//! What is wrong with a table, in Spanish.

use crate::csv::Fault;
use hangtrue_core::say::Language;
use hangtrue_core::{Length, Unit};

pub(crate) fn say(fault: &Fault) -> String {
    match fault {
        Fault::Empty => "No hay nada en ella. Una tabla tiene un renglón de nombres y un renglón \
                         por pedido."
            .to_owned(),
        Fault::Inside { column } => format!(
            "El campo {column} trae comillas pero no empieza con ellas. Ponga el campo entre \
             comillas y duplique las de adentro: \"92 3/16\"\"\"."
        ),
        Fault::Behind { column } => format!(
            "Hay algo después de las comillas que cierran el campo {column}. Desde ahí no se leyó \
             nada. Duplique las comillas dentro del campo."
        ),
        Fault::Open { column } => format!(
            "Las comillas que abren el campo {column} nunca se cierran. Desde ahí no se leyó nada."
        ),
        Fault::Count { found, expected } => format!(
            "El renglón tiene {found} {}; el primero tiene {expected}. Un campo con coma va \
             entre comillas.",
            if *found == 1 { "campo" } else { "campos" }
        ),
        Fault::Word { column, found, known } => {
            format!("{column} es “{found}”. Puede ser: {}.", known.join(", "))
        }
        Fault::Differs { column, found, ordered, unit } => {
            let link = match ordered {
                Some(length) => ["pide ", &written(*length, *unit)].concat(),
                None => "no trae esa medida".to_owned(),
            };
            format!(
                "{column} es “{found}”, pero el enlace de este renglón {link}. Corrija el dato \
                 que esté mal, o deje vacía la celda."
            )
        }
        Fault::Link(error) => {
            let advice = super::link::read(*error);
            [&advice.what, " ", advice.ask].concat()
        }
        Fault::NoReading => "El renglón no tiene ninguna medida.".to_owned(),
    }
}

fn written(length: Length, unit: Unit) -> String {
    Language::Spanish.written(&length.text(unit))
}
