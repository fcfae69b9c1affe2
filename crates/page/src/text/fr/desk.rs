//! The counter desk, in French (Canada).

mod ask;
mod many;

use crate::text::desk::{Desk, Phone, Sent, Voice};
use hangtrue_core::Unit;

/// The French desk.
pub(in crate::text) static DESK: Desk = Desk {
    heading: "Comptoir",
    measure: "Mesurer une ouverture",
    phone: Phone {
        heading: "Au téléphone",
        unit: "Dit en",
        inches: "pouces",
        millimetres: "millimètres",
        frame: "Du cadre",
        as_it_is: "dans son état actuel",
        as_it_will_be: "une fois préparé",
        again: "(remesuré)",
        unread: "pas encore une mesure",
        next: "Case suivante",
        keep: "En faire une commande",
        built: "Les nombres valent une fois le cadre préparé\u{a0}: remesurez avant de couper une porte.",
        fresh: "Nouvel appel",
        before: "Revenir à l’appel précédent",
        ask: "Demandez à la personne",
        stands: "C’est comme on l’a dit",
        cannot: "Pas maintenant",
        it_is: |text| ["La personne dit ", text].concat(),
        found: "Ce que disent les nombres",
        nothing_yet: "Tapez la largeur comme on la dit; Entrée passe au nombre suivant.",
        so_far: "Rien ne s’y oppose jusqu’ici",
        after_building: "Une fois le cadre préparé, la commande dit\u{a0}:",
    },
    voice: Voice {
        heading: "Relisez",
        not_yet: "Quand les quatre nombres sont là, relisez-les chiffre par chiffre.",
        heard: "Caractères de contrôle, comme entendus",
        heard_hint: "six lettres et chiffres, ou leurs mots d’épellation; «\u{a0}?\u{a0}» pour celui qui a \
                     échappé",
        agrees: "Les six caractères concordent\u{a0}: les nombres ont été entendus comme ils ont \
                 été dits.",
        refused: "Plus de choses ont été mal entendues que six caractères ne peuvent distinguer. \
                  Redemandez les quatre nombres, puis les six caractères.",
        number: misheard_number,
        frame: |unit, build| {
            let unit = match unit {
                Unit::Inch => "pouces",
                Unit::Millimetre => "millimètres",
            };
            let frame = if build { "une fois préparé" } else { "dans son état actuel" };
            format!(
                "L’unité ou le cadre a été mal entendu. Demandez\u{a0}: les nombres sont-ils en \
                 {unit}, et ceux du cadre {frame}?"
            )
        },
        character: |at, likely| {
            format!(
                "Le caractère de contrôle {at} a été mal entendu; c’est probablement {likely}. Les \
                 nombres sont exacts."
            )
        },
    },
    sent: Sent {
        heading: "Ce qui a été envoyé",
        paste: "Collez ce qui a été envoyé",
        another: "Collez une autre commande pour le même camion",
        paste_hint: "un lien ou tout un courriel, les trente caractères, une commande enregistrée; \
                     ou déposez des fichiers n’importe où sur cette page",
        open: "Ouvrir",
        choose: "Choisir des fichiers",
        look: "Balayer avec la caméra",
        look_away: "Arrêter la caméra",
        asked: "Le navigateur demande si cette page peut utiliser la caméra.",
        looking: "Tenez le code sans bouger, aussi grand que l’image le permet.",
        camera_refused: "Cette page ne peut pas utiliser la caméra. Permettez-le dans les réglages \
                         du navigateur pour ce site, ou prenez une photo du code et choisissez ce \
                         fichier.",
        camera_missing: "Il n’y a pas de caméra, ou un autre programme l’utilise. Prenez une photo \
                         du code et choisissez ce fichier.",
        no_text: "Ce fichier n’est ni un texte ni une image qui se lit ici, ou il dépasse 64 Mo.",
        no_code: "Aucun code ne peut être lu dans cette image. Prenez la photo de plus près, bien \
                  en face, sans reflet.",
        nothing: "Il n’y a pas de commande là-dedans. Collez le lien ou tout le message, les \
                  trente caractères ou une commande enregistrée.",
        too_long: |most| {
            format!("C’est plus long que les {most} octets qui sont lus d’une commande.")
        },
        only: "La commande",
        first: "Première commande",
        second: "Deuxième commande",
        against: |title| ["Ce qui est dit et ce qui a été envoyé\u{a0}: ", title].concat(),
        agrees: "Les quatre nombres sont ceux qui ont été envoyés.",
        agrees_so_far: "Comme envoyé jusqu’ici; il manque encore des nombres.",
        differs: "Ce qui est dit et ce qui a été envoyé diffèrent. Demandez à la personne avant de \
                  couper quoi que ce soit.",
        both: "Les deux commandes, mesure par mesure",
        both_differ: "Les deux commandes diffèrent.",
        both_agree: "Aucune mesure ne s’écarte.",
        table: "Comparaison, ce qui diffère d’abord",
        what: "Nombre",
        phoned: "Dit",
        was_sent: "Envoyé",
        difference: "Écart",
        likely: "Ce qui a pu arriver",
        none: "aucune",
        same: "identique",
        close: "aussi proches que deux mesures soignées",
        one_only: "une seule l’a",
        unexplained: "aucune erreur courante ne fait de l’une l’autre",
        corrected: |at| {
            let at: Vec<String> = at.iter().map(usize::to_string).collect();
            format!(
                "Des caractères ont été mal entendus et corrigés (numéro {}). Relisez les nombres à \
                 la personne avant de prendre cette commande.",
                at.join(", ")
            )
        },
        characters: "Caractères de contrôle\u{a0}:",
        close_order: "Ranger",
    },
    many: many::MANY,
    newer: "Une version plus récente de cette page est prête. L’utiliser vide ce comptoir\u{a0}: \
            terminez d’abord ce qui s’y trouve.",
    ask: ask::say,
    slip: ask::slip_clause,
};

fn misheard_number(name: &str, typed: Option<&str>, likely: &[String]) -> String {
    let likely = likely.join(" ou ");
    match typed {
        Some(typed) => format!(
            "{name}\u{a0}: probablement mal entendu; on a tapé {typed}, c’était probablement \
             {likely}. Demandez à la personne."
        ),
        None => {
            format!("{name}\u{a0}: c’était probablement {likely}. Demandez à la personne.")
        }
    }
}
