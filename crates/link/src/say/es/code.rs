//! What is wrong with characters that were read out, in Spanish.

use crate::code::{HeardError, SmallError};

pub(crate) fn heard(error: &HeardError) -> String {
    match error {
        HeardError::Piece(piece) => {
            format!("“{piece}” no son letras ni cifras, ni una palabra del alfabeto.")
        }
        HeardError::Count { found, expected } => {
            format!("{found} de {expected} caracteres.")
        }
    }
}

pub(crate) fn small(error: &SmallError) -> String {
    match error {
        SmallError::Heard(error) => heard(error),
        SmallError::Refused => "Son demasiados los caracteres equivocados de los treinta para \
                                saber cuáles eran. Pídalos otra vez, de cinco en cinco."
            .to_owned(),
        SmallError::Contents => "Los treinta caracteres están completos, pero no son un pedido de \
                                 esta página. Pida el enlace."
            .to_owned(),
    }
}
