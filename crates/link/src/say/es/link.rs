//! What is wrong with a link, in Spanish.

use crate::say::Advice;
use crate::{EncodeError, LinkError};

const AGAIN: &str = "Pida a quien lo envió que copie el enlace completo y lo mande otra vez, o que \
                     lea los cuatro números y los seis caracteres de control.";

pub(crate) fn read(error: LinkError) -> Advice {
    let what = match error {
        LinkError::NotFound => {
            return Advice {
                what: "En este texto no hay ningún enlace de pedido.".to_owned(),
                ask: "Pegue todo el mensaje, o el enlace desde “https” hasta el final.",
            };
        }
        LinkError::Several => {
            return Advice {
                what: "En este texto hay dos enlaces de pedido distintos.".to_owned(),
                ask: "Pegue solo el que vale.",
            };
        }
        LinkError::TooLong { most } => {
            return Advice {
                what: format!("Esto es más largo que los {most} caracteres que se leen."),
                ask: "Pegue solo el enlace.",
            };
        }
        LinkError::Letter { letter, at } => format!(
            "El carácter {at} del enlace es “{}”, que ningún enlace de pedido lleva.",
            letter.escape_debug()
        ),
        LinkError::TooShort => "Aquí solo está el principio del enlace.".to_owned(),
        LinkError::Cut { found, missing } => format!(
            "El enlace está dañado: tiene {found} caracteres después del # y parece que {} {missing}.",
            if missing == 1 { "falta" } else { "faltan" }
        ),
        LinkError::Grown { found, extra } => format!(
            "El enlace está dañado: tiene {found} caracteres después del # y parece que {} {extra}.",
            if extra == 1 { "sobra" } else { "sobran" }
        ),
        LinkError::Changed => {
            "El enlace está dañado: un carácter cambió, o dos se intercambiaron.".to_owned()
        }
        LinkError::Newer { version } => {
            return Advice {
                what: format!(
                    "El enlace llegó completo, pero lo escribió una versión más nueva de esta \
                     página (versión {version})."
                ),
                ask: "Vuelva a cargar esta página para tener la versión más nueva y abra el \
                      enlace otra vez.",
            };
        }
        LinkError::Record => {
            return Advice {
                what: "Este es el registro de una puerta ya colgada, no un pedido.".to_owned(),
                ask: "Ábralo en la página para colgar la puerta: hang.html, junto a esta.",
            };
        }
        LinkError::Contents => {
            "El enlace llegó completo, pero lo que trae no es un pedido de esta página.".to_owned()
        }
    };
    Advice { what, ask: AGAIN }
}

pub(crate) fn write(error: EncodeError) -> Advice {
    match error {
        EncodeError::TooLong { most } => Advice {
            what: format!(
                "Los textos de este pedido necesitan más que los {most} caracteres de un enlace."
            ),
            ask: "Acorte la nota, o mande el pedido como archivo.",
        },
        EncodeError::Date => Advice {
            what: "La fecha de este pedido no está entre 2000 y 2255.".to_owned(),
            ask: "Ponga a tiempo el reloj del aparato, o deje fuera la fecha.",
        },
    }
}
