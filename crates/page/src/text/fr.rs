//! French (Canada).
//!
//! The words of the trade are those of the domain's catalogue, which lists them.

mod dealer;
pub(super) mod desk;
mod handover;
pub(super) mod hang;
mod kept;

use super::{
    Buttons, Check, DimensionText, FieldText, Frame, Judge, Later, Opened, Proof, Send, Start, Text,
};
use hangtrue_core::{Dimension, Spot};

/// The French page.
pub(super) static TEXT: Text = Text {
    title: "Hangtrue\u{a0}: mesurez l’ouverture arrière pour une porte à enroulement",
    language: "Langue",
    colon: "\u{a0}: ",
    quotes: ["«\u{a0}", "\u{a0}»"],
    progress: |at, of| format!("Étape {at} sur {of}"),
    button: Buttons {
        next: "Continuer",
        next_all_the_same: "C’est exact, continuer",
        back: "Retour",
        change: "Changer",
        read_again: "Mesurer de nouveau",
        skip: "La laisser de côté",
        use_text: |text| format!("Mettre {text}"),
        letters: "abc",
        numbers: "123",
        share: "Partager",
        print: "Imprimer",
        restart: "Mesurer une autre ouverture",
    },
    start: Start {
        heading: "Mesurez une ouverture pour une porte à enroulement",
        lede: "Quatre dimensions décident de la coupe de la porte. Vous les prenez une à une; \
               chacune est comparée aux autres avant que la commande quitte vos mains.",
        bring_heading: "Apportez",
        bring: [
            "un ruban d’acier dont le crochet est bon, et une deuxième personne pour le lire avec \
             vous",
            "une échelle qui atteint le linteau, sur un sol ferme",
            "de la craie pour marquer où vous mesurez, et une lampe",
            "une règle droite à poser sur un seuil usé",
        ],
        caution_heading: "Avant de monter",
        cautions: [
            "Stationnez sur un sol plat, loin de la circulation. Serrez le frein et calez les \
             roues.",
            "Un hayon qui n’est pas verrouillé peut tomber. N’y montez pas pour mesurer.",
            "Posez l’échelle sur un sol ferme, les pieds de niveau, et gardez trois points d’appui.",
            "Ne mesurez jamais sous une porte qui n’est pas étayée ou verrouillée en position \
             ouverte.",
            "Un ressort bandé peut tuer. Il est réservé à des personnes formées\u{a0}: laissez-le \
             bandé et n’y touchez pas.",
        ],
        unit: "Que montre votre ruban?",
        inches: "Pouces et seizièmes",
        millimetres: "Millimètres",
        privacy: "Rien de ce que vous tapez ne quitte cet appareil avant que vous partagiez \
                  vous-même le lien.",
        begin: "Commencer à mesurer",
        go_on: "Continuer à mesurer",
        desk: "Au comptoir? Vérifiez les commandes reçues par téléphone ou par lien",
        open_heading: "Ouvrir une commande",
        open_hint: "Un fichier enregistré ici, ou tout texte qui contient un lien de commande.",
        choose_file: "Choisir un fichier",
    },
    frame: Frame {
        heading: "Le cadre peut‑il recevoir une porte?",
        lede: "Les rails verticaux se fixent aux poteaux; le rail du haut et le ressort, au \
               linteau.",
        old_door: "L’ancienne porte est-elle encore en place?",
        old_door_caution: "Mesurez l’acier, pas les anciens rails ni les joints. Ne touchez pas à \
                           l’ancien ressort ni à ses câbles\u{a0}: ils sont sous tension même \
                           quand la porte est ouverte.",
        prepared: "Le cadre est-il comme il restera?",
        yes: "Oui",
        no: "Non",
        prepared_yes: "Oui\u{a0}: il atteint le minimum, ou n’a besoin de rien",
        prepared_no: "Pas encore\u{a0}: dites-moi ce qu’il faut y faire",
        common_practice: "Pratique courante",
        minimums: |source, post, header| {
            format!(
                "{source}\u{a0}: des poteaux d’au moins {post} de large et un linteau \
                 d’au moins {header} de profond. Un poteau plus étroit est épaissi; un linteau \
                 moins profond est abaissé avec un profilé en U ou une tôle pliée."
            )
        },
        weld_caution: "Couper et souder sur un fourgon est un travail pour des gens qualifiés; les \
                       règlements locaux et les consignes du fabricant passent d’abord.",
        build_heading: "À faire sur le cadre",
    },
    dimension,
    place,
    field: FieldText {
        hint_inch: "Par exemple 96 1/4, 8' 0 1/4\" ou quatre-vingt-seize et un quart",
        hint_millimetre: "Par exemple 2445, 2,445 m ou 96 1/4 po",
        problems: "Avant de continuer",
        questions: "Regardez ceci de nouveau",
        keys: "Touches de fraction",
        tape: "Comparez avec votre ruban",
    },
    coming: "Un instant\u{a0}: le reste de la page arrive.",
    missing: "Le reste de la page n’est pas encore arrivé. Un nouvel essai se fait tout \
              seul, et plus tôt s’il y a du réseau. Ce que vous avez tapé reste tant que \
              cette page est ouverte.",
    order: "Commande de porte à enroulement",
};

/// See [`Later`].
pub(super) static LATER: Later = Later {
    proof: Proof {
        heading: "Une mesure de plus",
        again_heading: "Mesurez le même point de nouveau",
        again: "Allez à votre marque de craie et mesurez sans regarder le premier nombre. Mieux \
                encore, laissez une autre personne mesurer.",
        hidden: "La première mesure reste cachée jusqu’à ce que celle-ci soit là",
        empty: "Tapez la mesure, ou laissez-la de côté.",
    },
    check: Check {
        heading: "Vérifiez la commande",
        numbers: "La commande dira",
        tightest: |count, place, reading| match count {
            1 => format!("la seule mesure, {place}\u{a0}: {reading}"),
            _ => format!("la plus serrée de {count} mesures, {place}\u{a0}: {reading}"),
        },
        as_found: |found| format!("actuellement {found}"),
        not_read: "pas mesurée",
        rounding: |step| format!("Arrondi à {step}, du côté où la porte entre encore."),
        remeasure: "Mesurez de nouveau une fois le cadre préparé",
        readings: "Ce que vous avez mesuré",
        struck: "remesurée",
        findings: "Ce qui a été trouvé",
        clear: "Rien ne s’oppose à cette commande.",
        confirm: "J’ai regardé de nouveau, et c’est exact",
        measure: "Mesurer maintenant",
        confirmed: "confirmé par l’auteur",
        send: "Faire la commande",
        verdict: ["Sans réserve", "À revérifier", "Arrêt"],
    },
    judge: Judge {
        fits: "concorde",
        doubtful: "douteuse",
        missing: "manque",
        settles: "tranche",
        next: "Une mesure de plus vaut la minute qu’elle prend",
        take: "La prendre maintenant",
        unseen: "Ce que ces mesures ne peuvent pas montrer",
        never: "Aucune mesure ne montre qu’il s’agit du mauvais camion, qu’un nombre a été copié \
                sur le premier ou que le même mauvais bord a été mesuré partout.",
        working: "Voir le calcul",
        working_lede: "Un réseau de moindres carrés sur toutes les mesures, en millimètres. w est \
                       le résidu divisé par son écart type; la plus petite erreur détectable se \
                       voit dans 80 cas sur 100.",
        columns: ["Mesure", "Mesuré", "Ajusté", "±", "w", "Plus petite détectable"],
    },
    dealer: dealer::DEALER,
    kept: kept::KEPT,
    send: Send {
        heading: "La commande",
        lede: "Le lien contient toute la commande. Envoyez-le à votre distributeur\u{a0}: il \
               s’ouvre avec les mêmes nombres et toutes les mesures qui les appuient.",
        vehicle: "Camion ou remorque",
        note: "Remarque",
        contact: "Comment le distributeur peut vous joindre",
        optional: "peut rester vide",
        room: |count, most| format!("{count} caractères sur {most}"),
        full: "Il n’y a plus de place. S’il manque la fin, raccourcissez le texte.",
        link: "Lien de cette commande",
        lasting: "Gardez le lien\u{a0}: c’est lui qui reste. Ce navigateur peut oublier ce que \
                  vous avez tapé.",
        copied: "Copié.",
        not_yet: "Il n’y a pas encore de lien\u{a0}: quelque chose s’oppose encore à la commande.",
    },
    opened: Opened {
        heading: "Une commande de porte à enroulement",
        lede: "Toutes les règles ont été appliquées de nouveau ici\u{a0}: ce qui a été envoyé \
               affirme, et ne prouve pas.",
        disagrees: |claimed, found| {
            format!(
                "L’auteur a vu «\u{a0}{claimed}\u{a0}»; vérifiée ici, c’est «\u{a0}{found}\u{a0}». \
                 Demandez à l’expéditeur avant de couper quoi que ce soit."
            )
        },
        readings: "Ce qui a été mesuré",
        damaged: "Ce lien ne peut pas être ouvert",
        record: "La fiche d’une porte",
        to_record: "Ouvrir la fiche",
        damaged_file: "Ce fichier ne peut pas être ouvert",
        no_order: "Ce n’est ni le lien d’une commande ni un message avec un lien. Le comptoir ouvre aussi d’autres \
                   fichiers : commandes enregistrées là-bas, photos d’un code, tableaux.",
        adopt: "Travailler sur cette commande",
        own: "À mes propres mesures",
        written: |date| format!("Écrite le {date}"),
        old_door: |still_in| {
            if still_in {
                "Mesurée avec l’ancienne porte en place"
            } else {
                "Mesurée sans l’ancienne porte"
            }
        },
        frame: |prepared| {
            if prepared { "Cadre comme il restera" } else { "Cadre dans son état actuel" }
        },
    },
    handover: handover::HANDOVER,
    paper: handover::PAPER,
};

const fn dimension(dimension: Dimension) -> DimensionText {
    match dimension {
        Dimension::Width => DimensionText {
            lede: "Le passage libre entre les faces intérieures des poteaux de la porte.",
            places: "Un endroit suffit pour continuer. En bas, au milieu et en haut ensemble \
                     montrent si les poteaux penchent ou bombent, et la porte est coupée à la \
                     mesure la plus serrée.",
            wrong_heading: "Ce qui va mal ici",
            wrong: [
                "Le ruban pend ou monte de travers, et mesure trop long\u{a0}: tenez-le tendu et \
                 de niveau.",
                "Il part d’une soudure, d’une tête de boulon ou d’un joint\u{a0}: trouvez l’acier \
                 nu.",
            ],
            tape: [
                "On mesure à partir du trait de 1 po, ou on prend le pouce suivant.",
                "On mesure à partir du trait de 10 cm, ou on prend le centimètre suivant.",
            ],
            caution: Some(
                "En haut, on mesure depuis l’échelle. Faites-lui face, et déplacez-la plutôt que \
                 de vous pencher.",
            ),
        },
        Dimension::Height => DimensionText {
            lede: "De la surface où repose la porte fermée jusqu’au dessous du linteau.",
            places: "Un endroit suffit pour continuer. À gauche, au centre et à droite ensemble \
                     montrent un seuil usé ou un linteau affaissé.",
            wrong_heading: "Ce qui va mal ici",
            wrong: [
                "Le crochet est dans une rigole ou sur une plaque de rampe, pas là où repose la \
                 porte.",
                "Le ruban penche\u{a0}: tenez-le d’aplomb, et prenez la plus petite mesure en le \
                 balançant.",
            ],
            tape: [
                "On se trompe d’une dizaine ou d’un pied en haut du ruban\u{a0}: lisez aussi la \
                 marque des pieds.",
                "On se trompe de dix centimètres ou d’un mètre en haut du ruban\u{a0}: lisez aussi la \
                 marque des mètres.",
            ],
            caution: Some("Redescendez avant d’écrire. Attention au bord du seuil."),
        },
        Dimension::Header => DimensionText {
            lede: "Du dessous du linteau jusqu’à la tôle ou au revêtement du toit.",
            places: "Un endroit suffit pour continuer. À gauche, au centre et à droite ensemble \
                     montrent un toit plié, ou un ruban arrêté par un arceau.",
            wrong_heading: "Ce qui va mal ici",
            wrong: [
                "Le ruban s’arrête à un arceau du toit, pas à la tôle.",
                "Le ruban est plié dans le coin et son boîtier n’est pas ajouté.",
            ],
            tape: [
                "Un isolant ou un revêtement cache la tôle\u{a0}: dites-le dans la remarque.",
                "Un isolant ou un revêtement cache la tôle\u{a0}: dites-le dans la remarque.",
            ],
            caution: Some(
                "Bords coupants et pointes de vis derrière le linteau\u{a0}: portez des gants.",
            ),
        },
        Dimension::Bow => DimensionText {
            lede: "Du dessous d’un arceau du toit jusqu’à la tôle, aux premiers arceaux derrière \
                   la porte.",
            places: "Un arceau suffit pour continuer. Les trois premiers ensemble montrent le plus \
                     profond, et la porte doit passer sous celui-là.",
            wrong_heading: "Ce qui va mal ici",
            wrong: [
                "On mesure l’aile de l’arceau, pas toute sa profondeur.",
                "On manque un arceau plus profond, plus loin\u{a0}: regardez les trois premiers.",
            ],
            tape: [
                "Sur une mesure si courte, les seizièmes sont comptés comme des huitièmes.",
                "On écrit des centimètres pour des millimètres\u{a0}: 3 cm font 30 mm.",
            ],
            caution: Some(
                "Dans le fourgon, prenez l’échelle ou une plateforme solide, jamais le chargement \
                 ni un rail.",
            ),
        },
    }
}

const fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "une main au-dessus du seuil",
        Spot::WidthMiddle => "à mi-hauteur des poteaux",
        Spot::WidthHigh => "une main sous le linteau",
        Spot::HeightLeft | Spot::HeaderLeft => "à côté du poteau gauche, vu de derrière",
        Spot::HeightCenter | Spot::HeaderCenter => "à mi-chemin entre les poteaux",
        Spot::HeightRight | Spot::HeaderRight => "à côté du poteau droit, vu de derrière",
        Spot::BowFirst => "le plus près de la porte",
        Spot::BowSecond => "le suivant vers l’intérieur",
        Spot::BowThird => "et celui d’après",
        Spot::DiagonalRising => "du coin bas à gauche au coin haut à droite",
        Spot::DiagonalFalling => "du coin haut à gauche au coin bas à droite",
        Spot::LoopSillToRoof => {
            "d’une règle posée de niveau sur le seuil, tout droit jusqu’à la tôle du toit"
        }
        Spot::LoopSillToBow => {
            "d’une règle posée de niveau sur le seuil, tout droit jusqu’au dessous du premier arceau"
        }
        Spot::PostLeft | Spot::PostRight => {
            "la largeur de la face où le rail se fixe; peut rester vide"
        }
    }
}
