//! What is wrong with a profile, in French (Canada).

use super::file;
use crate::json::profile::ProfileFault;
use crate::json::{Fault, FileError};
use hangtrue_core::profile::{CONTRAST_LEAST, NumberError, Numbering};
use hangtrue_core::say::{Language, Speaker};

const SPEAKER: Speaker = Speaker { language: Language::French, unit: hangtrue_core::Unit::Inch };

pub(crate) fn say(error: &FileError) -> String {
    let place = if error.place.is_empty() { "Le profil" } else { error.place.as_str() };
    match &error.fault {
        Fault::NotJson { line, column, what } => {
            let reason = file::syntax(*what);
            format!(
                "Le profil n’est pas du JSON\u{a0}: {reason} à la ligne {line}, colonne {column}."
            )
        }
        Fault::TooLong { most } => {
            format!("Le profil a plus de {most} octets. Raccourcissez ses textes et ses listes.")
        }
        fault => file::of(place, fault),
    }
}

/// What is wrong at `place`, of that which only a profile holds.
pub(super) fn of(place: &str, fault: &ProfileFault) -> String {
    match fault {
        ProfileFault::TooMany { most } => format!("{place} a plus de {most} éléments."),
        ProfileFault::Empty => format!("{place} est vide. Écrivez un texte, ou omettez la clé."),
        ProfileFault::TextTooLong { most } => {
            format!("{place} a plus de {most} caractères. Raccourcissez-le.")
        }
        ProfileFault::Letter { letter } => format!(
            "{place} a un caractère que personne ne voit, U+{:04X}. Enlevez-le.",
            u32::from(*letter)
        ),
        ProfileFault::Range { found, least, most } => {
            format!("{place} est {found}. Ce peut être de {least} à {most}.")
        }
        ProfileFault::Length { found } => format!(
            "{place} est \"{found}\". Écrivez une longueur avec son unité, comme 96 1/4 in ou \
             2445 mm."
        ),
        ProfileFault::Weight { found } => format!(
            "{place} est \"{found}\". Écrivez un poids par surface, comme 10.5 kg/m2 ou \
             2.15 lb/ft2."
        ),
        ProfileFault::UpsideDown { least, most } => format!(
            "{place} a un minimum de {} au-dessus de son maximum de {}\u{a0}: rien ne passerait.",
            SPEAKER.length(*least),
            SPEAKER.length(*most)
        ),
        ProfileFault::NoEnd => {
            format!("{place} n’a ni \"least\" ni \"most\". Écrivez l’un des deux.")
        }
        ProfileFault::NoInterval => {
            format!("{place} n’a ni \"months\" ni \"cycles\". Écrivez l’un des deux, ou les deux.")
        }
        ProfileFault::Key { found } => format!(
            "{place} est \"{found}\". Une clé est une lettre et jusqu’à 31 autres minuscules, \
             chiffres et tirets."
        ),
        ProfileFault::SameKey { list, key } => {
            format!("{place} a \"{key}\" deux fois dans {list}. Donnez à chacun sa propre clé.")
        }
        ProfileFault::Taken { key } => format!(
            "{place} a la clé \"{key}\", que la commande garde pour elle. Prenez-en une autre."
        ),
        ProfileFault::OtherKind { key } => {
            format!("{place} a {key}, qui appartient à une autre sorte de question.")
        }
        ProfileFault::FewChoices => format!("{place} offre moins de deux choix."),
        ProfileFault::Email { found } => format!(
            "{place} est \"{found}\". Écrivez une adresse courriel, comme orders@doors.example."
        ),
        ProfileFault::Phone { found } => format!(
            "{place} est \"{found}\". Écrivez un numéro de téléphone de 3 à 15 chiffres, comme \
             +1 555 010 0199."
        ),
        ProfileFault::Page { found } => format!(
            "{place} est \"{found}\". Écrivez l’adresse d’une page, qui commence par https:// et \
             sans #; un script n’est pas ouvert."
        ),
        ProfileFault::Colour { found } => format!(
            "{place} est \"{found}\". Écrivez une couleur comme # et six chiffres, par exemple \
             #ffc914."
        ),
        ProfileFault::Contrast(poor) => format!(
            "{place}\u{a0}: {} sur {} a un contraste de {} à 1. Un texte demande {} à 1 (WCAG \
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
        NumberError::Brace => format!("{place} a une accolade sans sa compagne."),
        NumberError::Unknown(name) => format!(
            "{place} a {{{name}}}, qui n’est pas connu. Noms connus\u{a0}: {}.",
            Numbering::NAMES.map(|name| ["{", name, "}"].concat()).join(", ")
        ),
        NumberError::NoCheck => format!(
            "{place} n’a pas de {{check}}\u{a0}: deux commandes du même jour auraient le même \
             numéro."
        ),
        NumberError::Text => format!(
            "{place} a plus de 40 caractères, ou un caractère qui n’est ni lettre, ni chiffre, ni \
             espace, ni -, . ou /."
        ),
    }
}
