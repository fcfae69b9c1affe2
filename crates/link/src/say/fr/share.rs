//! An order as text, in French (Canada).

use crate::say::share::Lines;
use hangtrue_core::Dimension;

pub(crate) static LINES: Lines = Lines {
    short: |dimension| match dimension {
        Dimension::Width => "largeur",
        Dimension::Height => "hauteur",
        Dimension::Header => "linteau",
        Dimension::Bow => "arceau",
    },
    once_built: " UNE FOIS LE CADRE FAIT; mesure ce jour ",
    measure_again: ". Mesurez de nouveau ensuite.",
    heading: "Commande de porte arrière",
    colon: "\u{a0}: ",
    about: ["Véhicule", "Coordonnées", "Remarque"],
    date: "Date",
    not_read: "pas mesurée",
    built: |ordered, found| {
        [ordered, " une fois le cadre préparé (actuellement\u{a0}: ", found, ")"].concat()
    },
    build: "Préparez d’abord le cadre, puis mesurez de nouveau\u{a0}:",
    build_by: [
        "abaisser le linteau de",
        "épaissir le poteau gauche de",
        "épaissir le poteau droit de",
    ],
    verdict: [
        "Rien ne s’oppose à cette commande.",
        "À revérifier avant de couper\u{a0}:",
        "Ceci est impossible\u{a0}:",
    ],
    readings: "Mesures, comme elles ont été tapées\u{a0}:",
    replaced: " (remplacée par une mesure plus récente)",
};
