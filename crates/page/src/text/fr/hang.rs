//! Hanging the door, in French (Canada).
//!
//! Beside the words of the domain's catalogue (common practice, no source): set screw, vis de
//! pression; winding cone and bar, cône de tension, barre de tension; to wind, bander; drum,
//! tambour; shaft, arbre; bearing, palier; roller, roulette; washer, rondelle; shim, cale; clamp,
//! serre; latch, loquet; lockout, cadenassage; roadside, le côté rue.

mod care;
mod names;
mod spring;

use crate::text::hang::{
    Delivery, FitText, Hang, InspectionText, Order, Overhead, RecordText, Tracks,
};
use hangtrue_core::say::Language;

/// The French page.
pub(in crate::text) static HANG: Hang = Hang {
    language: Language::French,
    steps: [
        "Commande",
        "Livraison",
        "Rails",
        "Dégagement",
        "Ressort",
        "Loquet et joints",
        "Inspection finale",
        "Entretien",
        "Fiche",
    ],
    list: "Toutes les étapes",
    next: "Continuer",
    back: "Retour",
    restart: "Une autre porte",
    unread: [
        "Pas encore une longueur\u{a0}: essayez 92 1/4 ou 2343 mm.",
        "Pas encore un poids\u{a0}: essayez 132 lb ou 60 kg.",
        "Pas encore un nombre\u{a0}: essayez 12 ou 12 1/4.",
        "Pas encore un jour\u{a0}: écrivez-le comme 2026-11-25.",
    ],
    beyond: |least, most| {
        format!("Vérifiez\u{a0}: rien n’est pris au-dessous de {least} ni au-dessus de {most}.")
    },
    yes_no: ["en ordre", "pas en ordre"],
    no_order: "Ouvrez d’abord une commande\u{a0}: tout ici se calcule à partir de ses nombres.",
    order: ORDER,
    delivery: DELIVERY,
    tracks: TRACKS,
    overhead: OVERHEAD,
    spring: spring::SPRING,
    balance: spring::BALANCE,
    fit: FIT,
    inspection: INSPECTION,
    care: care::CARE,
    record: RECORD,
};

const ORDER: Order = Order {
    heading: "Posez la porte d’après sa commande",
    lede: "Les nombres de la commande sont ceux de la pose. Ouvrez la commande, ou la fiche d’une \
           porte déjà posée.",
    paste: "Lien de la commande ou de la fiche",
    paste_hint: "Collez tout le message si vous voulez",
    open: "L’ouvrir",
    type_them: "Pas de lien? Tapez les quatre nombres de la commande.",
    unit: "Mesuré en",
    units: ["pouces", "millimètres"],
    numbers: "La porte a été commandée pour",
    caution_heading: "Avant de commencer",
    cautions: [
        "Travaillez sur un sol plat, loin de la circulation, roues calées, clé retirée.",
        "La porte se lève à deux. Gants, lunettes, échelle solide.",
        "Un ressort bandé peut tuer. Seules des personnes formées le bandent ou le relâchent.",
        "Les règlements locaux, le cadenassage, les consignes du fabricant et le travail qualifié \
         passent d’abord. Couper, souder et percer un véhicule est un travail pour des gens \
         qualifiés.",
    ],
    measure: "Mesurer une ouverture",
    aside: "Autres portes sur cet appareil",
    take_up: |door| format!("Continuer avec {door}"),
    drop_aside: "Jeter",
};

const DELIVERY: Delivery = Delivery {
    heading: "Livraison",
    lede: "Cochez ce qui est là et en bon état. Puis mesurez de nouveau l’ouverture\u{a0}: ce qui a \
           été fait depuis la commande se voit maintenant, pas quand les panneaux sont en place.",
    caution: "Les moitiés d’une porte sont lourdes et tendent à se plier. Deux personnes, des \
              gants, et personne sous la charge. Un ressort doit arriver débandé\u{a0}: s’il est \
              bandé, laissez-le ainsi et appelez le fournisseur.",
    parts: "Pièces",
    part: names::part,
    option: "si elle a été commandée",
    ordered: "Selon la commande",
    ticked: |done, of| format!("{done} sur {of} sont là"),
    tools_heading: "Outils",
    tools: [
        "Deux rubans qui concordent, niveau, équerre",
        "Cales\u{a0}: 1/16, 1/8 et 1/4 po",
        "Perceuse, forets, pointeau",
        "Clés et douilles, clé dynamométrique",
        "Deux barres de tension qui vont dans le cône\u{a0}: de la taille que dit le fabricant, et \
         rien d’autre",
        "Pinces-étaux, deux serres pour le rail",
        "Pèse-bagages",
        "Échelle, gants, lunettes",
    ],
    again: "Mesurez de nouveau l’ouverture",
    again_lede: "Aux mêmes endroits, dans le cadre tel qu’il est maintenant.",
    spare: |by| format!("entre, {by} de jeu"),
    short: |by| format!("trop serré de {by}"),
    far: |by| format!("{by} de plus que la commande"),
    fits: "L’ouverture reçoit la porte commandée.",
    stop: "Arrêt\u{a0}: la porte n’entre pas dans cette ouverture. Appelez le fournisseur avant de \
           couper ou de monter quoi que ce soit.",
    other: "À revérifier\u{a0}: c’est beaucoup plus grand que ce que dit la commande. Est-ce la même \
            ouverture?",
};

const TRACKS: Tracks = Tracks {
    heading: "Rails parallèles et d’équerre",
    lede: "Fixez les rails verticaux sans serrer, mesurez entre eux au ruban et calez comme le dit \
           la liste. Puis serrez et mesurez de nouveau.",
    caution: "Échelle solide, trois points d’appui, personne dessous. Avant de percer un poteau, \
              sachez ce qui passe derrière.",
    vertical: "Rails verticaux",
    vertical_how: "Entre les faces intérieures des rails, et les deux diagonales entre les mêmes \
                   marques du bas et du haut.",
    upper: "Rails horizontaux",
    upper_how: "Entre les rails à l’avant du fourgon, à mi-chemin et à la porte.",
    place: names::place,
    holds: "Ces rails sont parallèles et d’équerre. Rien n’est à déplacer.",
    out: "Ces rails sont à déplacer.",
    stands: |spacing, diagonals| match diagonals {
        Some(by) => format!("L’écartement varie de {spacing}, les diagonales diffèrent de {by}."),
        None => format!("L’écartement varie de {spacing}."),
    },
    no_diagonals: "Mesurez aussi les deux diagonales\u{a0}: sans elles, personne ne sait si la paire \
                   est d’équerre.",
    contradict: "Ces mesures se contredisent. Mesurez de nouveau les diagonales et la hauteur entre \
                 les marques avant de caler.",
    shims: "Cales derrière les fixations",
    shim: |side, level, by| {
        let side = if side == 0 { "Gauche" } else { "Droite" };
        let level = ["en bas", "au milieu", "en haut"].get(level).copied().unwrap_or("");
        format!("{side}, {level}\u{a0}: {by}")
    },
    result: |spacing, diagonals| match diagonals {
        Some(by) => {
            format!("Alors l’écartement varie de {spacing} et les diagonales diffèrent de {by}.")
        }
        None => format!("Alors l’écartement varie de {spacing}."),
    },
    result_holds: [
        "C’est dans la limite de 1/8 po.",
        "C’est hors de la limite de 1/8 po\u{a0}: mesurez à nouveau, et corrigez les poteaux avant de caler.",
    ],
    target: |spacing| format!("Les rails seront à {spacing} l’un de l’autre."),
    station: names::station,
    inward: |left, right| {
        format!("gauche vers l’intérieur de {left}, droite vers l’intérieur de {right}")
    },
    outward: |left, right| {
        format!("gauche vers l’extérieur de {left}, droite vers l’extérieur de {right}")
    },
    as_is: "comme il doit être",
    square_how: "D’équerre avec le rail vertical\u{a0}: posez une barre droite le long de la \
                 partie droite du rail vertical et une autre le long du rail horizontal, et \
                 trouvez le point où les deux se rencontreraient, hors de la courbe. De ce point, \
                 marquez 36 po vers le bas sur le rail vertical et 48 po le long du rail \
                 horizontal. D’une marque à l’autre, c’est 60 po.",
    on_side: |side, found| {
        format!("{}\u{a0}: {found}", if side == 0 { "Gauche" } else { "Droite" })
    },
    off: |degrees, up| {
        let way = if up { "haut" } else { "bas" };
        format!("{degrees}° d’écart\u{a0}: il pointe trop vers le {way}.")
    },
    off_far: |degrees| {
        format!(
            "{degrees}° d’écart, c’est plus que ce dont un rail dévie (pratique courante, sans \
             source publiée). Ne pliez rien\u{a0}: vérifiez d’où les deux marques ont été mesurées, et \
             mesurez de nouveau de l’une à l’autre."
        )
    },
    square: "D’équerre avec le rail vertical.",
    no_triangle: "Aucun triangle n’a de tels côtés. Mesurez de nouveau.",
    fastenings: "Au moins quatre fixations par côté, aucune lâche.",
    source: "Limite\u{a0}: 1/8 po pour l’écartement et les diagonales. Pratique courante, sans \
             source publiée.",
};

const OVERHEAD: Overhead = Overhead {
    heading: "Dégagement en haut",
    lede: "La porte passe-t-elle sous le toit en chemin, et où est-ce le plus serré? Déplacez le \
           curseur.",
    caution: "Ne restez jamais sous une porte qui n’est pas étayée ou verrouillée ouverte, et n’y \
              passez pas la main. Tenez les doigts loin des roulettes et des charnières\u{a0}: \
              elles se ferment comme des ciseaux.",
    slider: "Ouvrir la porte",
    ends: ["fermée", "ouverte"],
    fit: names::fit,
    left: |against, left, lift| {
        format!("{}\u{a0}: il reste {left}, la porte levée de {lift}", names::against(against))
    },
    strikes: |against, by, lift| {
        format!("{}\u{a0}: heurté de {by}, la porte levée de {lift}", names::against(against))
    },
    reach: |by| format!("La porte ouverte avance de {by} dans le fourgon."),
    bows: "Où sont les arceaux du toit",
    bows_how: "Mesurez le long du toit, la porte fermée. Les arceaux hors du chemin de la porte ne \
               l’arrêtent pas.",
    bow: [
        "De la face intérieure du linteau au bord proche du premier arceau",
        "De ce bord au même bord de l’arceau suivant",
        "Largeur d’un arceau, le long du fourgon",
    ],
    bows_anywhere: "On suppose qu’un arceau peut pendre partout sur le chemin de la porte\u{a0}: la \
                    réponse prudente. Dites ci-dessous où ils sont, et eux seuls comptent.",
    bows_from: |first| {
        format!(
            "On suppose qu’un arceau peut pendre partout à partir de {first} derrière le \
             linteau\u{a0}: la réponse prudente. Avec l’espacement aussi, eux seuls comptent."
        )
    },
    bows_every: |first, spacing| {
        format!(
            "Arceaux là où vous les placez\u{a0}: le premier à {first} du linteau, puis tous les \
             {spacing}."
        )
    },
    figures: "La porte et son rail",
    assumed: "Les mesures marquées comme supposées sont de pratique courante, sans source publiée. \
              Prenez-les dans la fiche du fabricant, ou mesurez.",
    figure: names::figure,
    slope: "Pente du rail du haut vers la porte",
    degrees: "degrés",
    assumed_as: |by| format!("supposé\u{a0}: {by}"),
    no_door: "Aucune porte n’est faite ainsi. Regardez la hauteur du panneau et celle de \
              l’ouverture.",
    how: "Panneaux rigides, chaque roulette sur le rail, ouverte par pas jusqu’à ce que l’espace \
          balayé change de moins de 0,1 mm.",
};

const FIT: FitText = FitText {
    heading: "Loquet, jeu latéral, joints",
    caution: "Étayez ou verrouillez la porte avant de passer les mains entre panneau et poteau. \
              Personne ne touche plus au ressort.",
    latch: "Gâche du loquet",
    half: |half| {
        format!("Centrez-la à {half} de chaque poteau. Marquez depuis la gauche, puis la droite.")
    },
    centered: "Les deux poteaux donnent le même centre.",
    move_by: |by, right| {
        let side = if right { "droite" } else { "gauche" };
        format!(
            "Les deux ne concordent pas\u{a0}: déplacez la gâche de {by} vers la {side}, ou mesurez \
             de nouveau la largeur."
        )
    },
    shift: "Jeu latéral",
    shift_how: "Poussez la porte fermée à fond à gauche, marquez-la, poussez-la à fond à \
                droite\u{a0}: c’est tout le jeu. Environ 3/8 po convient (pratique courante, sans \
                source publiée).",
    washer: "Épaisseur d’une rondelle",
    washers: |left, right, result| {
        let side = |count: i64| match count {
            0 => "aucune".to_owned(),
            n if n > 0 => format!("ajoutez-en {n}"),
            n => format!("enlevez-en {}", -n),
        };
        format!(
            "À chaque roulette\u{a0}: gauche, {}; droite, {}. Alors le jeu est de {result}.",
            side(left),
            side(right)
        )
    },
    no_washers: "Pas de rondelles\u{a0}: le jeu est celui qu’il faut.",
    seals: "Joints à couper",
    seals_how: "Un joint ne s’étire jamais\u{a0}: coupez-le plus long et pressez-le en place.",
    seal: ["Côté gauche", "Côté droit", "Linteau"],
    source: "Un pour cent plus long, au 1/4 po suivant. Pratique courante, sans source publiée.",
};

const INSPECTION: InspectionText = InspectionText {
    heading: "Dernière inspection",
    lede: "Mesurez là où il y a quelque chose à mesurer. Ce qui reste vide reste ouvert.",
    caution: "Avant que la porte bouge\u{a0}: personne dessous, mains loin des rails, des charnières \
              et des câbles. Si quelque chose racle, coince ou pend de travers, arrêtez et \
              étayez-la.",
    check: names::check,
    between: |least, most| format!("de {least} à {most}"),
    most: |most| format!("au plus {most}"),
    least: |least| format!("au moins {least}"),
    as_wound: |turns| format!("{turns}, comme il a été bandé"),
    finding: ["tient", "ne tient pas"],
    outcome: [
        "Réussie\u{a0}: tous les points tiennent.",
        "Ouverte\u{a0}: des points n’ont pas encore été regardés.",
        "Échouée\u{a0}: ne remettez pas la porte avant que tous les points tiennent.",
    ],
    done: |done, of| format!("{done} points sur {of} regardés"),
    source: "Les limites sont de pratique courante, sans source publiée, sauf la traction\u{a0}: 51 \
             lb est la constante de charge de l’équation de levage du NIOSH.",
};

const RECORD: RecordText = RecordText {
    heading: "La fiche de la porte",
    lede: "Un autocollant dans le fourgon ouvre cette fiche sur n’importe quel téléphone, sans \
           serveur derrière\u{a0}: les nombres, les tours, ce qui a été fait.",
    serial: "Numéro de série de la porte",
    holds: "Ce qu’elle contient",
    rows: [
        "Véhicule",
        "Ouverture",
        "Tours du ressort",
        "Poids de la porte",
        "Posée le",
        "Dernière inspection",
        "À faire ensuite",
    ],
    none: "pas noté",
    copy: "Copier le lien",
    share: "Partager",
    file: "Enregistrer un fichier",
    print: "Imprimer",
    what: "Quoi imprimer",
    forms: ["Autocollant, 50 × 30 mm", "Carte, A6", "Fiche entière"],
    copied: ["Copié.", "Ce navigateur ne copie pas. Sélectionnez le lien plus bas et copiez-le."],
    stick: "Posez l’autocollant dans le fourgon à côté de la porte, là où il reste propre et sec, et \
            la carte avec les papiers du véhicule.",
    code: "Code de cette fiche",
    scan: "Fiche de la porte\u{a0}: balayez",
    warning: "Ressort bandé. Personnes formées seulement.",
    too_long: "Cette fiche est trop longue pour un code. Raccourcissez les remarques.",
    link: "Le lien",
    lasting: "Le lien est la fiche. Cet appareil oublie; le lien, non.",
};
