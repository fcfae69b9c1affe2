//! What is wrong with a profile, in Spanish.

use super::file;
use crate::json::profile::ProfileFault;
use crate::json::{Fault, FileError};
use hangtrue_core::profile::{CONTRAST_LEAST, NumberError, Numbering};
use hangtrue_core::say::{Language, Speaker};

const SPEAKER: Speaker = Speaker { language: Language::Spanish, unit: hangtrue_core::Unit::Inch };

pub(crate) fn say(error: &FileError) -> String {
    let place = if error.place.is_empty() { "El perfil" } else { error.place.as_str() };
    match &error.fault {
        Fault::NotJson { line, column, what } => {
            let reason = file::syntax(*what);
            format!("El perfil no es JSON: {reason} en el renglón {line}, columna {column}.")
        }
        Fault::TooLong { most } => {
            format!("El perfil tiene más de {most} bytes. Acorte sus textos y listas.")
        }
        fault => file::of(place, fault),
    }
}

/// What is wrong at `place`, of that which only a profile holds.
pub(super) fn of(place: &str, fault: &ProfileFault) -> String {
    match fault {
        ProfileFault::TooMany { most } => format!("{place} tiene más de {most} elementos."),
        ProfileFault::Empty => {
            format!("{place} está vacío. Escriba un texto, o deje fuera la clave.")
        }
        ProfileFault::TextTooLong { most } => {
            format!("{place} tiene más de {most} caracteres. Acórtelo.")
        }
        ProfileFault::Letter { letter } => {
            format!("{place} trae un carácter que nadie ve, U+{:04X}. Quítelo.", u32::from(*letter))
        }
        ProfileFault::Range { found, least, most } => {
            format!("{place} es {found}. Puede ser de {least} a {most}.")
        }
        ProfileFault::Length { found } => format!(
            "{place} es \"{found}\". Escriba una longitud con su unidad, como 96 1/4 in o 2445 mm."
        ),
        ProfileFault::Weight { found } => format!(
            "{place} es \"{found}\". Escriba un peso por área, como 10.5 kg/m2 o 2.15 lb/ft2."
        ),
        ProfileFault::UpsideDown { least, most } => format!(
            "{place} tiene un mínimo de {} arriba de su máximo de {}: nada pasaría.",
            SPEAKER.length(*least),
            SPEAKER.length(*most)
        ),
        ProfileFault::NoEnd => {
            format!("{place} no tiene \"least\" ni \"most\". Escriba uno de los dos.")
        }
        ProfileFault::NoInterval => {
            format!("{place} no tiene \"months\" ni \"cycles\". Escriba uno de los dos, o ambos.")
        }
        ProfileFault::Key { found } => format!(
            "{place} es \"{found}\". Una clave es una letra y hasta 31 letras minúsculas, cifras y \
             guiones más."
        ),
        ProfileFault::SameKey { list, key } => {
            format!("{place} tiene \"{key}\" dos veces en {list}. Dé a cada uno su propia clave.")
        }
        ProfileFault::Taken { key } => {
            format!("{place} tiene la clave \"{key}\", que el pedido guarda para sí. Use otra.")
        }
        ProfileFault::OtherKind { key } => {
            format!("{place} tiene {key}, que es de otra clase de pregunta.")
        }
        ProfileFault::FewChoices => format!("{place} ofrece menos de dos opciones."),
        ProfileFault::Email { found } => format!(
            "{place} es \"{found}\". Escriba una dirección de correo, como orders@doors.example."
        ),
        ProfileFault::Phone { found } => format!(
            "{place} es \"{found}\". Escriba un teléfono de 3 a 15 cifras, como +1 555 010 0199."
        ),
        ProfileFault::Page { found } => format!(
            "{place} es \"{found}\". Escriba la dirección de una página, que empiece con https:// \
             y sin #; no se abre ningún script."
        ),
        ProfileFault::Colour { found } => {
            format!("{place} es \"{found}\". Escriba un color como # y seis cifras: #ffc914.")
        }
        ProfileFault::Contrast(poor) => format!(
            "{place}: {} sobre {} tiene un contraste de {} a 1. El texto necesita {} a 1 (WCAG \
             2.2).",
            poor.text,
            poor.ground,
            SPEAKER.decimal(downwards(poor.contrast), 2),
            SPEAKER.decimal(CONTRAST_LEAST, 1)
        ),
        ProfileFault::NumberFormat(error) => number_format(place, error),
    }
}

/// To two decimals, downwards: 4.499 is not 4.5.
fn downwards(contrast: f64) -> f64 {
    (contrast * 100.0).floor() / 100.0
}

fn number_format(place: &str, error: &NumberError) -> String {
    match error {
        NumberError::Brace => format!("{place} tiene una llave sin su pareja."),
        NumberError::Unknown(name) => format!(
            "{place} tiene {{{name}}}, que no se conoce. Se conocen: {}.",
            Numbering::NAMES.map(|name| ["{", name, "}"].concat()).join(", ")
        ),
        NumberError::NoCheck => format!(
            "{place} no tiene {{check}}: dos pedidos del mismo día llevarían el mismo número."
        ),
        NumberError::Text => format!(
            "{place} tiene más de 40 caracteres, o uno que no es letra, cifra, espacio, -, . ni /."
        ),
    }
}
