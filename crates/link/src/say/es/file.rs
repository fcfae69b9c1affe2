//! What is wrong with a file, in Spanish.

use crate::json::text::Syntax;
use crate::json::{Fault, FileError, NodeKind};

pub(crate) fn say(error: &FileError) -> String {
    let place = if error.place.is_empty() { "La entrada" } else { error.place.as_str() };
    match &error.fault {
        Fault::NotJson { column, what, .. } => {
            format!("Este renglón no es JSON: {} en la columna {column}.", syntax(*what))
        }
        Fault::TooLong { most } => {
            format!("Este renglón tiene más de {most} bytes. Escriba un objeto por renglón.")
        }
        fault => of(place, fault),
    }
}

/// Of a file that is one order, over any number of lines.
pub(crate) fn say_whole(error: &FileError) -> String {
    match &error.fault {
        Fault::NotJson { line, column, what } => {
            let reason = syntax(*what);
            format!("El archivo no es JSON: {reason} en el renglón {line}, columna {column}.")
        }
        Fault::TooLong { most } => format!("El archivo tiene más de {most} bytes."),
        _ => say(error),
    }
}

/// What is wrong at `place`.
pub(super) fn of(place: &str, fault: &Fault) -> String {
    match fault {
        Fault::Kind { expected, found } => {
            format!("{place} es {}; se espera {}.", kind(*found), kind(*expected))
        }
        Fault::NumberForText { number } => format!(
            "{place} es el número {number}. Escriba la medida entre comillas, tal como se anotó: \
             \"{number}\"."
        ),
        Fault::Reading { found } => format!(
            "{place} es {}. Un lugar lleva una medida entre comillas o una lista de ellas; déjelo \
             fuera si no se midió.",
            kind(*found)
        ),
        Fault::Missing { key } => format!("{place} no tiene \"{key}\"."),
        Fault::Twice { key } => format!("{place} tiene \"{key}\" dos veces."),
        Fault::Unknown { key, known } => {
            format!(
                "{place} tiene una clave \"{key}\" que no se conoce. Se conocen: {}.",
                list(known)
            )
        }
        Fault::Choice { found, known } => {
            format!("{place} es \"{found}\". Puede ser: {}.", list(known))
        }
        Fault::NotWhole { number } => {
            format!("{place} es {number}. Puede ser un número entero de 0 a 4294967295.")
        }
        Fault::Date { found } => {
            format!("{place} es \"{found}\". Escriba el día como 2026-11-25.")
        }
        Fault::Profile(fault) => super::profile::of(place, fault),
        Fault::NotJson { what, .. } => format!("{place} no es JSON: {}.", syntax(*what)),
        Fault::TooLong { most } => format!("{place} tiene más de {most} bytes."),
    }
}

/// Why a text is no JSON; "en la columna 5" can follow.
pub(super) fn syntax(what: Syntax) -> String {
    match what {
        Syntax::Long { most } => format!("tiene más de {most} bytes"),
        Syntax::Deep { most } => format!("hay listas y objetos a más de {most} niveles"),
        Syntax::Value => "se espera un valor".to_owned(),
        Syntax::Key => "se espera una clave entre comillas".to_owned(),
        Syntax::Colon => "se esperan dos puntos".to_owned(),
        Syntax::Comma { end } => format!("se espera una coma o {end}"),
        Syntax::After => "hay algo después del final".to_owned(),
        Syntax::Open => "a un texto le faltan las comillas de cierre".to_owned(),
        Syntax::Control => "un texto trae un fin de línea o un carácter de control".to_owned(),
        Syntax::Escape => "una diagonal invertida está donde no puede estar".to_owned(),
        Syntax::Surrogate => "media pareja \\u está sola".to_owned(),
        Syntax::Number => "un número no está escrito como en JSON".to_owned(),
    }
}

fn list(known: &[&str]) -> String {
    known.join(", ")
}

const fn kind(kind: NodeKind) -> &'static str {
    match kind {
        NodeKind::Null => "null",
        NodeKind::Bool => "true o false",
        NodeKind::Number => "un número",
        NodeKind::Text => "un texto",
        NodeKind::List => "una lista",
        NodeKind::Object => "un objeto",
    }
}
