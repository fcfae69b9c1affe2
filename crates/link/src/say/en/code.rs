//! What is wrong with characters that were read out, in English (US).

use crate::code::{HeardError, SmallError};

pub(crate) fn heard(error: &HeardError) -> String {
    match error {
        HeardError::Piece(piece) => {
            format!("“{piece}” is neither letters and digits nor a spelling word.")
        }
        HeardError::Count { found, expected } => {
            format!("{found} of {expected} characters.")
        }
    }
}

pub(crate) fn small(error: &SmallError) -> String {
    match error {
        SmallError::Heard(error) => heard(error),
        SmallError::Refused => "Too many of the thirty characters are wrong to tell what they \
                                were. Ask for them again, five at a time."
            .to_owned(),
        SmallError::Contents => "The thirty characters are whole, but no order of this page. Ask \
                                 for the link."
            .to_owned(),
    }
}
