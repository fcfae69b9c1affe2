//! The script for the telephone, in French (Canada).

use crate::say::script::Script;

pub(crate) static SCRIPT: Script = Script {
    inches: "Une commande de porte arrière, en pouces. Je dis les nombres chiffre par chiffre.",
    millimetres: "Une commande de porte arrière, en millimètres. Je dis les nombres chiffre par \
                  chiffre.",
    build: "Les nombres sont ceux du cadre une fois préparé.",
    names: [
        "Largeur de poteau à poteau",
        "Hauteur du seuil au linteau",
        "Profondeur du linteau",
        "Profondeur de l’arceau du toit",
    ],
    colon: "\u{a0}: ",
    check: "Les six caractères de contrôle",
    and: "et",
    parts: [
        ("seizième", "seizièmes"),
        ("huitième", "huitièmes"),
        ("quart", "quarts"),
        ("demi", "demis"),
    ],
    counts: [
        "zéro", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf", "dix",
        "onze", "douze", "treize", "quatorze", "quinze",
    ],
    figures: ["zéro", "un", "deux", "trois", "quatre", "cinq", "six", "sept", "huit", "neuf"],
};
