//! What is wrong with a file, in French (Canada).

use crate::json::text::Syntax;
use crate::json::{Fault, FileError, NodeKind};

pub(crate) fn say(error: &FileError) -> String {
    let place = if error.place.is_empty() { "L’entrée" } else { error.place.as_str() };
    match &error.fault {
        Fault::NotJson { column, what, .. } => {
            let reason = syntax(*what);
            format!("Cette ligne n’est pas du JSON\u{a0}: {reason} à la colonne {column}.")
        }
        Fault::TooLong { most } => {
            format!("Cette ligne a plus de {most} octets. Écrivez un objet par ligne.")
        }
        fault => of(place, fault),
    }
}

/// Of a file that is one order, over any number of lines.
pub(crate) fn say_whole(error: &FileError) -> String {
    match &error.fault {
        Fault::NotJson { line, column, what } => {
            let reason = syntax(*what);
            format!(
                "Le fichier n’est pas du JSON\u{a0}: {reason} à la ligne {line}, colonne {column}."
            )
        }
        Fault::TooLong { most } => format!("Le fichier a plus de {most} octets."),
        _ => say(error),
    }
}

/// What is wrong at `place`.
pub(super) fn of(place: &str, fault: &Fault) -> String {
    match fault {
        Fault::Kind { expected, found } => {
            format!("{place} est {}; on attend {}.", kind(*found), kind(*expected))
        }
        Fault::NumberForText { number } => format!(
            "{place} est le nombre {number}. Écrivez la mesure entre guillemets, comme elle a été \
             notée\u{a0}: \"{number}\"."
        ),
        Fault::Reading { found } => format!(
            "{place} est {}. Un endroit porte une mesure entre guillemets ou une liste de \
             mesures; omettez-le si rien n’a été mesuré.",
            kind(*found)
        ),
        Fault::Missing { key } => format!("{place} n’a pas de \"{key}\"."),
        Fault::Twice { key } => format!("{place} a \"{key}\" deux fois."),
        Fault::Unknown { key, known } => format!(
            "{place} a une clé \"{key}\" qui n’est pas connue. Clés connues\u{a0}: {}.",
            list(known)
        ),
        Fault::Choice { found, known } => {
            format!("{place} est \"{found}\". Valeurs possibles\u{a0}: {}.", list(known))
        }
        Fault::NotWhole { number } => {
            format!("{place} est {number}. Ce peut être un nombre entier de 0 à 4294967295.")
        }
        Fault::Date { found } => {
            format!("{place} est \"{found}\". Écrivez le jour comme 2026-11-25.")
        }
        Fault::Profile(fault) => super::profile::of(place, fault),
        Fault::NotJson { what, .. } => {
            format!("{place} n’est pas du JSON\u{a0}: {}.", syntax(*what))
        }
        Fault::TooLong { most } => format!("{place} a plus de {most} octets."),
    }
}

/// Why a text is no JSON; "à la colonne 5" can follow.
pub(super) fn syntax(what: Syntax) -> String {
    match what {
        Syntax::Long { most } => format!("plus de {most} octets"),
        Syntax::Deep { most } => format!("listes et objets sur plus de {most} niveaux"),
        Syntax::Value => "on attend une valeur".to_owned(),
        Syntax::Key => "on attend une clé entre guillemets".to_owned(),
        Syntax::Colon => "on attend un deux-points".to_owned(),
        Syntax::Comma { end } => format!("on attend une virgule ou {end}"),
        Syntax::After => "il y a quelque chose après la fin".to_owned(),
        Syntax::Open => "il manque à un texte son guillemet fermant".to_owned(),
        Syntax::Control => {
            "un texte contient une fin de ligne ou un caractère de commande".to_owned()
        }
        Syntax::Escape => "une barre oblique inverse est là où elle ne peut être".to_owned(),
        Syntax::Surrogate => "une moitié de paire \\u est seule".to_owned(),
        Syntax::Number => "un nombre n’est pas écrit comme en JSON".to_owned(),
    }
}

fn list(known: &[&str]) -> String {
    known.join(", ")
}

const fn kind(kind: NodeKind) -> &'static str {
    match kind {
        NodeKind::Null => "null",
        NodeKind::Bool => "true ou false",
        NodeKind::Number => "un nombre",
        NodeKind::Text => "un texte",
        NodeKind::List => "une liste",
        NodeKind::Object => "un objet",
    }
}
