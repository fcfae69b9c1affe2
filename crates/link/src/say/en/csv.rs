//! What is wrong with a table, in English (US).

use crate::csv::Fault;
use hangtrue_core::say::Language;
use hangtrue_core::{Length, Unit};

pub(crate) fn say(fault: &Fault) -> String {
    match fault {
        Fault::Empty => "There is nothing in it. A table has a row of names and a row for each \
                         order."
            .to_owned(),
        Fault::Inside { column } => format!(
            "Field {column} holds a quotation mark but does not begin with one. Put the field in \
             quotation marks and double those inside: \"92 3/16\"\"\"."
        ),
        Fault::Behind { column } => format!(
            "Something stands behind the quotation mark that ends field {column}. Nothing was \
             read from here on. Double the quotation marks inside the field."
        ),
        Fault::Open { column } => format!(
            "The quotation mark that begins field {column} is never closed. Nothing was read \
             from here on."
        ),
        Fault::Count { found, expected } => format!(
            "The row has {found} {}; the first row has {expected}. A field with a comma in it is \
             put in quotation marks.",
            if *found == 1 { "field" } else { "fields" }
        ),
        Fault::Word { column, found, known } => {
            format!("{column} is “{found}”. It can be: {}.", known.join(", "))
        }
        Fault::Differs { column, found, ordered, unit } => {
            let link = match ordered {
                Some(length) => ["orders ", &written(*length, *unit)].concat(),
                None => "has no such number".to_owned(),
            };
            format!(
                "{column} is “{found}”, but the link in this row {link}. Put right the one that \
                 is wrong, or leave the cell empty."
            )
        }
        Fault::Link(error) => {
            let advice = super::link::read(*error);
            [&advice.what, " ", advice.ask].concat()
        }
        Fault::NoReading => "The row has no reading.".to_owned(),
    }
}

fn written(length: Length, unit: Unit) -> String {
    Language::English.written(&length.text(unit))
}
