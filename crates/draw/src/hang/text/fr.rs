//! French (Canada).

use super::Words;
use hangtrue_core::hang::overhead::Against;

pub(super) static WORDS: Words = Words {
    overhead_title: "La porte sur son rail, vue de côté",
    overhead: "Le linteau est à gauche, l’intérieur du fourgon à droite, le toit en haut. Le trait \
               mixte est l’espace que la porte balaie en s’ouvrant.",
    lifted: |value| ["La porte est levée de ", value, "."].concat(),
    left: |against, value| [name(against), "\u{a0}: il reste ", value, "."].concat(),
    through: |against, value| {
        [name(against), "\u{a0}: la porte le heurte de ", value, "."].concat()
    },
    roof: "tôle du toit",
    rear: "arrière",
    inside: "intérieur",
    pair_title: "Les deux rails verticaux, vus de derrière",
    pair: "Chaque rail avec ses trois fixations. En tirets\u{a0}: là où il sera.",
    shim: |side, level, value| [side, ", ", level, "\u{a0}: cale de ", value, "."].concat(),
    no_shim: "Aucune cale n’est nécessaire.",
    sides: ["gauche", "droite"],
    levels: ["en bas", "au milieu", "en haut"],
    exaggerated: |times| ["écarts grossis ", times, " fois"].concat(),
    balance_title: "L’équilibre, de fermée à ouverte",
    balance: "Ce qui pend aux câbles, ce que le ressort lève, et la traction qui reste à la main.",
    most: |pull, push| {
        let up = [" et le ressort tire vers le haut avec ", push, " de plus que ce qui y pend."];
        ["Au plus, la main lève ", pull, &up.concat()].concat()
    },
    hangs: "pend",
    lifts: "ressort",
    hand: "main",
    closed: "fermée",
    open: "ouverte",
};

fn name(against: Against) -> &'static str {
    match against {
        Against::Header => "Linteau",
        Against::Roof => "Toit",
        Against::Bow => "Arceau",
    }
}
