//! What is wrong with a link, in French (Canada).

use crate::say::Advice;
use crate::{EncodeError, LinkError};

const AGAIN: &str = "Demandez à la personne qui l’a envoyé de copier tout le lien et de le renvoyer, \
                     ou de lire les quatre nombres et les six caractères de contrôle.";

pub(crate) fn read(error: LinkError) -> Advice {
    let what = match error {
        LinkError::NotFound => {
            return Advice {
                what: "Il n’y a pas de lien de commande dans ce texte.".to_owned(),
                ask: "Collez tout le message, ou le lien de «\u{a0}https\u{a0}» jusqu’à la fin.",
            };
        }
        LinkError::Several => {
            return Advice {
                what: "Il y a deux liens de commande différents dans ce texte.".to_owned(),
                ask: "Collez seulement le bon.",
            };
        }
        LinkError::TooLong { most } => {
            return Advice {
                what: format!("C’est plus long que les {most} caractères qui sont lus."),
                ask: "Collez seulement le lien.",
            };
        }
        LinkError::Letter { letter, at } => format!(
            "Le caractère {at} du lien est «\u{a0}{}\u{a0}», qu’aucun lien de commande ne contient.",
            letter.escape_debug()
        ),
        LinkError::TooShort => "Il n’y a ici que le début du lien.".to_owned(),
        LinkError::Cut { found, missing } => format!(
            "Le lien est endommagé\u{a0}: il a {found} caractères après le # et il semble en \
             manquer {missing}."
        ),
        LinkError::Grown { found, extra } => format!(
            "Le lien est endommagé\u{a0}: il a {found} caractères après le # et il semble y en \
             avoir {extra} de trop."
        ),
        LinkError::Changed => {
            "Le lien est endommagé\u{a0}: un caractère a changé, ou deux ont été intervertis."
                .to_owned()
        }
        LinkError::Newer { version } => {
            return Advice {
                what: format!(
                    "Le lien est arrivé entier, mais une version plus récente de cette page l’a \
                     écrit (version {version})."
                ),
                ask: "Rechargez cette page pour avoir la version la plus récente, puis ouvrez le \
                      lien de nouveau.",
            };
        }
        LinkError::Record => {
            return Advice {
                what: "C’est la fiche d’une porte déjà posée, et non une commande.".to_owned(),
                ask: "Ouvrez-la dans la page de pose de la porte\u{a0}: hang.html, à côté de celle-ci.",
            };
        }
        LinkError::Contents => {
            "Le lien est arrivé entier, mais ce qu’il contient n’est pas une commande de cette page."
                .to_owned()
        }
    };
    Advice { what, ask: AGAIN }
}

pub(crate) fn write(error: EncodeError) -> Advice {
    match error {
        EncodeError::TooLong { most } => Advice {
            what: format!(
                "Les textes de cette commande demandent plus que les {most} caractères d’un lien."
            ),
            ask: "Raccourcissez la remarque, ou envoyez la commande comme fichier.",
        },
        EncodeError::Date => Advice {
            what: "La date de cette commande n’est pas entre 2000 et 2255.".to_owned(),
            ask: "Réglez l’horloge de l’appareil, ou omettez la date.",
        },
    }
}
