//! Handing over, in French (Canada).

use crate::text::handover::{Handover, Paper, Picture, Replace, Voice};

pub(super) const HANDOVER: Handover = Handover {
    ways: "Transmettez-la",
    mail: "Courriel",
    sms: "Texto",
    hang: "La porte est arrivée? Posez-la avec ces mesures",
    copy: "Copier la commande",
    copy_link: "Copier seulement le lien",
    by_hand: "Copiez ceci à la main\u{a0}: maintenez-le appuyé, ou sélectionnez-le et faites \
              Ctrl+C.",
    save_file: "Enregistrer un fichier",
    save: ["Enregistrer un fichier", "Enregistrer pour un tableur", "Enregistrer en texte"],
    scan: "Montrer un code à balayer",
    say: "La lire au téléphone",
    picture: Picture {
        heading: "Balayez ce code",
        lede: "L’appareil photo de l’autre téléphone ouvre toute la commande, sans message entre \
               les deux.",
        title: "Code QR du lien de cette commande",
        too_long: "Cette commande est trop longue pour un code. Envoyez le lien, ou raccourcissez \
                   la remarque.",
    },
    voice: Voice {
        heading: "Lisez ceci à voix haute",
        lede: "Ligne par ligne, en attendant que chacune soit notée.",
        check: "Caractères de contrôle",
        check_hint: "Ils disent à la personne qui note quel nombre a été mal entendu, s’il y en a \
                     un.",
        small: "Ou les nombres en trente caractères",
        small_hint: "Lisez ou textez plutôt ces six groupes. Ils contiennent les quatre nombres, \
                     les poteaux, la mesure du seuil à l’arceau, une diagonale et la date; pas les \
                     autres mesures, ni la remarque, ni votre nom.",
        no_small: "Cette commande ne tient pas en trente caractères. Lisez les lignes ci-dessus, \
                   ou envoyez le lien.",
    },
    replace: Replace {
        question: "Remplacer ce que vous avez tapé sur cet appareil?",
        lost: |line| format!("Votre propre commande, {line}, disparaîtrait de cet appareil."),
        yes: "La remplacer",
        no: "Garder la mienne",
    },
};

pub(super) const PAPER: Paper = Paper {
    contact: |contact| format!("Pour joindre l’auteur\u{a0}: {contact}"),
    columns: ["Dimension", "Commande", "Mesuré", "Erreur invisible", "Remesuré"],
    unseen_below: |least| format!("sous {least}"),
    unseen_any: "de toute taille",
    unseen: "Une erreur aussi petite que le dit le tableau pourrait passer inaperçue; de toute \
             taille\u{a0}: rien ne vérifie ce nombre.",
    as_found: |found| format!("actuellement {found}"),
    rows: ["Diagonales", "Depuis le seuil", "Poteaux"],
    more_readings: |count| format!("et {count} de plus"),
    check: "Caractères de contrôle",
    thirty: "En trente caractères",
    scan: "Balayez le code pour voir toute la commande.",
    too_long: "Trop longue pour un code\u{a0}: demandez le lien à l’expéditeur.",
    findings: "Ce qui a été trouvé",
    more_findings: |count| format!("{count} de plus\u{a0}: le lien les contient."),
    confirmed: "Confirmé par l’auteur.",
    build: "À faire d’abord",
    build_by: [
        |by| format!("Abaisser le linteau de {by}"),
        |by| format!("Épaissir le poteau gauche de {by}"),
        |by| format!("Épaissir le poteau droit de {by}"),
    ],
    build_then: "Puis mesurez de nouveau. Couper et souder sur un fourgon est un travail pour des \
                 gens qualifiés; les règlements locaux et les consignes du fabricant passent \
                 d’abord.",
    options: "Options",
    note: "Remarque",
    cut: "(abrégé\u{a0}: le lien contient tout)",
    profile: |name, revision| format!("Règles\u{a0}: {name}, révision {revision}."),
    built_in: "Règles\u{a0}: celles de la page.",
    cautions: "Serrez le frein, calez les roues, verrouillez le hayon. Ne travaillez jamais sous \
               une porte qui n’est pas verrouillée ouverte. Ressorts et câbles sont sous tension \
               même porte ouverte et peuvent tuer\u{a0}: personnes formées seulement.",
    signature: ["Remesuré par", "Signature", "Date"],
};
