//! What is wrong with a text that is no reading, in French (Canada).

use crate::length::{ReadErrorKind, Unit};

/// Why `text` is no reading and what to do, in one sentence.
pub(crate) fn refused(kind: ReadErrorKind, text: &str, unit: Unit) -> String {
    let example = match unit {
        Unit::Inch => "96 3/16",
        Unit::Millimetre => "2443",
    };
    let quoted = |says: &str| ["«\u{a0}", text, "\u{a0}» ", says].concat();
    match kind {
        ReadErrorKind::Empty => ["Tapez la mesure, par exemple ", example, "."].concat(),
        ReadErrorKind::TooLong => [
            "C’est trop long pour une mesure\u{a0}: tapez une seule longueur, par exemple ",
            example,
            ".",
        ]
        .concat(),
        ReadErrorKind::ControlCharacter => {
            "Le texte contient une tabulation, un saut de ligne ou un autre caractère de \
             commande\u{a0}: tapez la mesure sur une seule ligne."
                .to_owned()
        }
        ReadErrorKind::DirectionMark => {
            "Le texte contient des marques cachées qui changent le sens de l’écriture, et n’est \
             peut-être pas ce qu’il paraît\u{a0}: tapez la mesure de nouveau."
                .to_owned()
        }
        ReadErrorKind::HiddenCharacter => {
            "Le texte contient des caractères invisibles\u{a0}: tapez la mesure de nouveau."
                .to_owned()
        }
        ReadErrorKind::LostSpace => {
            quoted("n’a pas d’espace entre les pouces et la fraction\u{a0}: mettez-en une.")
        }
        ReadErrorKind::LostSlash => {
            quoted("n’a pas de barre dans sa fraction\u{a0}: tapez-la, comme dans 96 1/4.")
        }
        ReadErrorKind::LostMark => quoted(
            "est plus d’un nombre\u{a0}: écrivez l’unité après chacun, comme 8 pi 6 po, ou tapez \
             un seul nombre.",
        ),
        ReadErrorKind::LostDigits => quoted(
            "s’arrête à une virgule, à un point ou à une barre\u{a0}: tapez les chiffres qui \
             manquent.",
        ),
        ReadErrorKind::TopHeavy => quoted(
            "a une fraction qui n’est pas plus petite que un\u{a0}: comptez de nouveau les traits.",
        ),
        ReadErrorKind::NotOnTape => match unit {
            Unit::Inch => quoted(
                "n’est sur aucun ruban\u{a0}: mesurez au trait le plus proche, par exemple au \
                 seizième.",
            ),
            Unit::Millimetre => {
                quoted("n’est sur aucun ruban\u{a0}: mesurez au millimètre le plus proche.")
            }
        },
        ReadErrorKind::ZeroDenominator => quoted(
            "a un 0 sous la barre de sa fraction\u{a0}: tapez la fraction comme le ruban la montre.",
        ),
        ReadErrorKind::InchesPastFoot => quoted(
            "a 12 pouces ou plus à côté des pieds\u{a0}: mesurez de nouveau les pieds et les \
             pouces.",
        ),
        ReadErrorKind::DecimalFeet => quoted(
            "peut être des pieds et des pouces ou une décimale de pied\u{a0}: tapez des pieds et \
             des pouces, comme 8 pi 6 po.",
        ),
        ReadErrorKind::FractionOfFoot => quoted(
            "peut être une partie de pied ou une partie de pouce\u{a0}: tapez des pieds et des \
             pouces, comme 8 pi 6 po.",
        ),
        ReadErrorKind::DecimalAndFraction => {
            quoted("a une décimale et une fraction\u{a0}: prenez l’une des deux.")
        }
        ReadErrorKind::ThousandsOrDecimal => quoted(
            "peut être des milliers ou des décimales\u{a0}: enlevez le signe pour des milliers, \
             ou mettez un 0 à la fin pour des décimales.",
        ),
        ReadErrorKind::TwoPoints => quoted("a plus d’un signe décimal\u{a0}: gardez-en un seul."),
        ReadErrorKind::TooFine => quoted(
            "a plus de décimales qu’un ruban n’a de traits\u{a0}: mesurez au trait le plus proche.",
        ),
        ReadErrorKind::Negative => quoted(
            "a un signe moins, et aucune mesure n’est de moins de 0\u{a0}: tapez-la sans le signe.",
        ),
        ReadErrorKind::Exponent => {
            quoted("est écrit avec un exposant\u{a0}: tapez le nombre en entier.")
        }
        ReadErrorKind::MixedUnits => quoted(
            "mélange des unités\u{a0}: tapez la mesure dans une seule unité, ou en pieds et \
             pouces.",
        ),
        ReadErrorKind::RepeatedUnit => {
            quoted("a deux fois la même unité\u{a0}: marquez les pieds par ' et les pouces par \".")
        }
        ReadErrorKind::TwoReadings => {
            quoted("est plus d’une mesure\u{a0}: tapez-en une dans chaque case.")
        }
        ReadErrorKind::TwoMeanings => [
            "«\u{a0}",
            text,
            "\u{a0}» peut être plus d’une longueur\u{a0}: tapez-la en chiffres, par exemple ",
            example,
            ".",
        ]
        .concat(),
        ReadErrorKind::Approximate => quoted(
            "n’est pas exact\u{a0}: mesurez au trait le plus proche et tapez cela seulement.",
        ),
        ReadErrorKind::PlusSign => quoted(
            "a un signe plus\u{a0}: mesurez au trait le plus proche et tapez la mesure sans lui.",
        ),
        ReadErrorKind::OutOfRange => {
            "Le nombre dépasse tous les rubans\u{a0}: mesurez de nouveau.".to_owned()
        }
        ReadErrorKind::Unknown => {
            quoted("n’est pas une mesure\u{a0}: tapez-la comme 96 3/16, 8' 0 3/16\" ou 2443 mm.")
        }
    }
}
