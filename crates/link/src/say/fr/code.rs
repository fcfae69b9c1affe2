//! What is wrong with characters that were read out, in French.

use crate::code::{HeardError, SmallError};

pub(crate) fn heard(error: &HeardError) -> String {
    match error {
        HeardError::Piece(piece) => {
            format!("«\u{a0}{piece}\u{a0}» n’est ni lettres ni chiffres, ni un mot de l’alphabet.")
        }
        HeardError::Count { found, expected } => {
            let letters = if *found < 2 { "caractère" } else { "caractères" };
            format!("{found} {letters} sur {expected}.")
        }
    }
}

pub(crate) fn small(error: &SmallError) -> String {
    match error {
        SmallError::Heard(error) => heard(error),
        SmallError::Refused => "Trop des trente caractères sont faux pour savoir ce qu’ils \
                                étaient. Redemandez-les, cinq à la fois."
            .to_owned(),
        SmallError::Contents => "Les trente caractères sont complets, mais ce n’est pas une \
                                 commande de cette page. Demandez le lien."
            .to_owned(),
    }
}
