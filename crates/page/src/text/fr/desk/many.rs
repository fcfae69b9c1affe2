//! Many orders at once, in French (Canada).

use crate::desk::many::Counts;
use crate::text::desk::many::Many;
use crate::text::fr::kept::KEPT;
use hangtrue_core::finding::RuleCode;

pub(super) const MANY: Many = Many {
    screens: "Ce qui est vérifié",
    one: "Une commande",
    many: "Plusieurs à la fois",
    paste: "Collez la liste",
    paste_hint: "un tableau (CSV), des lignes JSON ou un lien par ligne; ou déposez le fichier \
                 n’importe où sur cette page",
    open: "Lire la liste",
    nothing: "Il n’y a pas de liste de commandes là-dedans. Une liste est un tableau avec une rangée \
              de noms, des lignes JSON ou un lien par ligne.",
    pasted: "Liste collée",
    columns: "Chaque colonne est-elle ce qu’elle dit? Corrigez ce qui ne l’est pas, puis vérifiez \
              les commandes.",
    column: "Colonne",
    holds: "Contient",
    measured: "En",
    as_the_rest: "non précisé",
    row: |number| format!("Rangée {number}"),
    others: [
        "pas utilisée",
        "numéro ou nom de la commande",
        "unité de la rangée",
        "cadre déjà fait (yes ou no)",
        "camion",
        "remarque",
        "coordonnées",
        "lien avec toute la commande",
    ],
    bare: "Si rien d’autre ne le dit, les nombres sont en",
    missing: |names| {
        format!(
            "Aucune colonne ne contient\u{a0}: {}. Aucune commande n’est alors complète.",
            names.join(", ")
        )
    },
    check: "Vérifier les commandes",
    another: "Une autre liste",
    change: "Changer les colonnes",
    progress: "Vérification en cours",
    checked: |count, percent| match count {
        0 | 1 => format!("{count} commande vérifiée, {percent}\u{a0}% de la liste"),
        _ => format!("{count} commandes vérifiées, {percent}\u{a0}% de la liste"),
    },
    stop: "Arrêter la vérification",
    stopped: |percent| {
        format!("Arrêté à {percent}\u{a0}% de la liste. Ce qui a été vérifié est ci-dessous.")
    },
    resume: "Continuer la vérification",
    summary,
    so_many: |count| match count {
        0 | 1 => format!("{count} commande affichée"),
        _ => format!("{count} commandes affichées"),
    },
    verdicts: "Résultat",
    all: "Toutes",
    unread: "Pas une commande",
    findings: "Ce qui a été trouvé",
    find: "Commande ou camion",
    none: "Aucune commande de la liste n’est ainsi. Appuyez sur Toutes, ou videz la case.",
    table: "Commandes vérifiées",
    heads: ["Ligne", "Commande", "Résultat"],
    numbers: KEPT.numbers,
    first_finding: "Première constatation",
    line: |number| format!("ligne {number}"),
    rows: |first, last, all| format!("{first} à {last} sur {all}"),
    previous: "Rangées précédentes",
    next: "Rangées suivantes",
    save: ["Enregistrer en CSV", "Enregistrer en lignes JSON"],
    writing: "Écriture du fichier",
    rule,
};

fn summary(counts: &Counts) -> String {
    let [stop, unread, recheck, clear] = counts.verdicts;
    let mut text = match counts.all() {
        all @ (0 | 1) => format!("{all} commande vérifiée\u{a0}: "),
        all => format!("{all} commandes vérifiées\u{a0}: "),
    };
    text += &format!("{stop} arrêt, {recheck} à revérifier, {clear} sans réserve");
    match unread {
        0 => {}
        1 => text += "; 1 n’est pas une commande",
        _ => text += &format!("; {unread} ne sont pas des commandes"),
    }
    text + "."
}

fn rule(code: RuleCode) -> &'static str {
    match code {
        "unreadable" => "pas une mesure",
        "missing" => "nombre manquant",
        "closing" => "mesure de fermeture manquante",
        "not-positive" => "zéro ou moins",
        "exchanged-width-height" => "largeur et hauteur échangées",
        "exchanged-header-bow" => "linteau et arceau échangés",
        "too-wide" => "trop large",
        "too-tall" => "trop haut",
        "no-such-opening" => "aucune ouverture pareille",
        "bow-fills-header" => "l’arceau remplit le linteau",
        "spread" => "endroits trop différents",
        "repeats" => "reprises qui ne concordent pas",
        "header-to-bow" => "linteau mesuré jusqu’à l’arceau",
        "room-under-bow" => "peu de place sous l’arceau",
        "unusual-opening" => "ouverture inhabituelle",
        "unusual-bow" => "arceau inhabituel",
        "shallow-header" => "linteau à descendre",
        "narrow-post" => "poteau à élargir",
        "wide-post" => "poteau plus large que la place",
        "slip" => "erreur probable",
        "answer" => "question du distributeur",
        _ => "",
    }
}
