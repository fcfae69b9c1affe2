//! Care of the door.

use crate::text::hang::{Care, Guide};
use hangtrue_core::hang::care::Work;

pub(super) const CARE: Care = Care {
    heading: "Entretien",
    before: "Avant chaque usage",
    before_list: [
        "Les câbles sont dans leurs tambours, sans brins cassés, également tendus",
        "Les roulettes vont dans leurs rails, aucune fendue ni absente",
        "Les rails ne sont pas pliés, rien n’est lâche",
        "Les panneaux sont entiers, les charnières serrées",
        "Le loquet tombe et tient",
        "Personne n’est sous la porte",
    ],
    before_stop: "Un de ces points ne va pas? Laissez la porte comme elle est, étayez-la ou \
                  verrouillez-la, et faites-la réparer.",
    due: "Ce qui est dû",
    hung: "Posée le",
    day_hint: "Comme 2026\u{2011}11\u{2011}25",
    per_day: "Ouvertures par jour",
    no_day: "Tapez le jour de la pose, et ce qui est dû se calcule.",
    due_in: |days, day| match days {
        0 => format!("aujourd’hui ({day})"),
        1 => format!("demain ({day})"),
        n if n > 90 => format!("dans {} mois ({day})", n / 30),
        n if n > 1 => format!("dans {n} jours ({day})"),
        -1 => format!("depuis hier ({day})"),
        n => format!("{} jours de retard ({day})", n.unsigned_abs()),
    },
    work: |work| match work {
        Work::Lubrication => "Huiler",
        Work::CablesChecked => "Regarder les câbles",
        Work::Cables => "Les deux câbles remplacés",
        Work::Rollers => "Roulettes remplacées",
        Work::Panel => "Panneau remplacé",
        Work::Spring => "Ressort remplacé ou bandé de nouveau",
        Work::Tracks => "Rails réglés de nouveau",
        Work::Inspected => "Porte inspectée en entier",
    },
    source: "Par mois ou par usage, selon ce qui vient d’abord. Pratique courante, sans source \
             publiée\u{a0}: les consignes du fabricant passent d’abord.",
    oil: "Huile",
    oil_list: [
        "Huile légère sur les tiges de roulettes, charnières, paliers, et le long des spires du \
         ressort",
        "Essuyez les rails. Pas de graisse dans les rails\u{a0}: elle ramasse la saleté et freine \
         les roulettes",
        "N’huilez jamais les joints\u{a0}: l’huile ronge le caoutchouc. Eau et savon",
        "Mains loin du ressort lui-même\u{a0}: huilez-le porte fermée, et ne touchez à rien d’autre",
    ],
    guides_heading: "Remplacer des pièces",
    guides: [
        Guide {
            title: "Les câbles, toujours les deux",
            caution: "Les câbles portent toute la traction du ressort. Il faut d’abord débander le \
                      ressort\u{a0}: des personnes formées, avec deux barres. Le cadenassage passe \
                      d’abord.",
            steps: &[
                "Fermez la porte et bloquez-la avec des serres aux deux rails.",
                "Faites débander le ressort jusqu’à ce que les câbles soient lâches.",
                "Enlevez les deux câbles. Comparez leur longueur\u{a0}: la nouvelle paire doit \
                 correspondre, et l’un à l’autre.",
                "Fixez les bouts du bas, passez les câbles derrière les roulettes, placez-les dans \
                 les tambours.",
                "Faites bander le ressort et faire l’essai d’équilibre.",
            ],
            stop: "Un support du bas est plié ou fendu, un tambour est usé, ou les câbles ne \
                   correspondent pas.",
        },
        Guide {
            title: "Une roulette",
            caution: "N’ouvrez jamais un support du bas quand le ressort est bandé\u{a0}: le câble y \
                      est fixé. Étayez la porte pour qu’elle ne puisse ni tomber ni monter.",
            steps: &[
                "Étayez ou bloquez la porte, la charnière à hauteur de travail.",
                "Enlevez le porte-roulette de la charnière, un à la fois. Jamais deux.",
                "Changez la roulette; gardez le même nombre de rondelles.",
                "Fixez le porte-roulette et passez l’endroit en bougeant la porte à la main.",
            ],
            stop: "C’est la roulette la plus basse, il faut ouvrir le rail en le pliant, ou la \
                   charnière est fendue.",
        },
        Guide {
            title: "Un panneau",
            caution: "Les panneaux sont lourds, et la porte perd son équilibre quand on les enlève. \
                      D’abord, ressort débandé par des personnes formées. On lève à deux.",
            steps: &[
                "Fermez la porte, bloquez-la et faites débander le ressort.",
                "Enlevez les panneaux de haut en bas jusqu’à celui qui est brisé.",
                "Comparez le nouveau panneau\u{a0}: hauteur, épaisseur, largeur, trous de charnière.",
                "Remontez, charnière par charnière, et vérifiez le jeu latéral.",
                "Faites bander le ressort pour le nouveau poids de la porte, et faire l’essai \
                 d’équilibre.",
            ],
            stop: "Le nouveau panneau diffère en hauteur ou en poids, ou le cadre est plié.",
        },
        Guide {
            title: "Le ressort",
            caution: "Pour des personnes formées seulement, même si ça presse. Un ressort bandé ou \
                      brisé peut garder des tours à son autre bout.",
            steps: &[
                "Fermez la porte, bloquez-la, étiquetez-la et appelez des personnes formées.",
                "Commandez-le par fil, diamètre de spire, nombre de spires et sens d’enroulement.",
                "Ensuite\u{a0}: essai d’équilibre, lignes, et les nouveaux tours dans cette fiche.",
            ],
            stop: "Toujours\u{a0}: ne desserrez rien vous-même sur l’arbre.",
        },
    ],
    stop: "Arrêtez si\u{a0}:",
    done: "Ce qui a été fait",
    add_heading: "Ajoutez ce qui a été fait",
    add_fields: ["Travail", "Jour", "Remarque"],
    add: "Ajouter à la fiche",
    drop: "Enlever",
    new_link: "Chaque ajout fait un nouveau lien. Partagez-le, et imprimez un nouvel autocollant.",
    not_here: |rules| {
        format!(
            "Commandée selon\u{a0}: {rules}. Elles ne sont pas ici\u{a0}: ce qui est dû suit les intervalles \
             ci-dessous. Ouvrez la fiche par le lien du distributeur pour les avoir."
        )
    },
    sizes: "Dimensions à commander",
    sizes_list: |[width, height], panels, rollers, [side, head]| {
        [
            format!("Porte pour une ouverture de {width} × {height}"),
            format!(
                "{panels} panneaux (calculés d’après la hauteur du panneau\u{a0}: mesurez celui qui \
                 est brisé)"
            ),
            format!("{rollers} roulettes, câbles par paire"),
            format!(
                "Joints, coupés\u{a0}: deux de {side} pour les côtés, un de {head} pour le linteau"
            ),
        ]
    },
};
