//! Turns, winding, balance.

use crate::text::hang::{Balance, Spring};
use hangtrue_core::hang::spring::{Behaves, Height, Mismatch};

pub(super) const SPRING: Spring = Spring {
    heading: "Ressort",
    lede: "Calculez les tours ici. Les bander est pour des personnes formées, avec les bonnes \
           barres.",
    danger: "Un ressort bandé contient assez d’énergie pour casser un bras ou tuer. Il la rend \
             toute d’un coup, par ce qui le retient.",
    energy: |joules, weight, height| {
        format!(
            "Bandé, ce ressort contient environ {joules} joules\u{a0}: autant que {weight} tombant \
             de {height}. Il les rend tous d’un coup, par ce qui le retient."
        )
    },
    trained: "Pas formé aux ressorts? Arrêtez ici et faites-le bander. Rien sur cette page ne \
              remplace la formation.",
    turns: "Tours du ressort, porte fermée",
    count: |turns| format!("{turns} tours"),
    rule: "La règle\u{a0}: pouces de hauteur de porte ÷ 10, plus 3. Pratique courante, sans source \
           publiée; les millimètres donnent le même nombre.",
    means: |drum, travelled, preload| {
        format!(
            "Environ {drum} de porte par tour\u{a0}: l’ouverture enlève {travelled} tours, et il en \
             reste {preload} quand elle est ouverte."
        )
    },
    own: "D’après les mesures de cette porte\u{a0}: hauteur ÷ course par tour, plus les tours qui \
          restent quand elle est ouverte.",
    drum: "Course de la porte par tour du tambour",
    preload: "Tours qui restent, porte ouverte",
    weight: "Poids de la porte",
    weight_hint: "Du bon de livraison, ou de deux balances sous les moitiés",
    by_area: |weight| format!("D’après sa surface, la porte pèse environ {weight}."),
    heavy: |most| {
        format!(
            "Aucune main ne retient cette porte sans son ressort\u{a0}: une personne devrait lever \
             au plus {most}. Bloquez-la avec des serres avant qu’on touche au ressort."
        )
    },
    wound: "Tours qui ont été donnés",
    stripes: "Lignes comptées le long du ressort",
    agree: [
        "Les lignes disent la même chose\u{a0}: la ligne sur les spires fait un tour pour chaque \
         tour.",
        "Les lignes disent un autre nombre. Arrêtez, retenez le cône avec une barre et comptez de \
         nouveau avant que la porte bouge.",
    ],
    steps_heading: "Bander, étape par étape",
    steps: [
        (
            "D’abord le cadenassage et les règlements locaux. Portes, hayon élévateur et véhicule \
             ne peuvent pas bouger; personne d’autre n’est dans le fourgon.",
            "Fermez la porte et bloquez-la avec des serres aux deux rails, au-dessus d’une \
             roulette, pour qu’elle ne puisse pas monter.",
        ),
        (
            "Une barre usée ou pliée sort du cône. Des barres de la taille que dit le fabricant, \
             enfoncées jusqu’au fond. Pas de tournevis, pas de tige, pas de tuyau.",
            "Essayez les deux barres dans le cône. Regardez le cône, les vis de pression et les \
             câbles; remplacez ce qui est usé.",
        ),
        (
            "Pensez où le ressort lancerait les choses\u{a0}: visage et corps jamais dans la ligne \
             des barres, l’échelle d’un côté, pas de manches lâches.",
            "Placez les deux câbles dans leurs tambours, également tendus, et serrez les vis de \
             pression des tambours.",
        ),
        (
            "Dès le premier quart de tour, le ressort repousse. Une barre retient toujours le cône; \
             ne lâchez jamais une barre qui y est.",
            "Bandez vers le haut, un quart de tour à la fois\u{a0}: une barre retient, l’autre va \
             dans le trou suivant.",
        ),
        (
            "Les derniers tours sont les plus forts. Si une barre n’entre pas jusqu’au fond, \
             arrêtez et retenez.",
            "Comptez chaque quart à voix haute jusqu’au nombre plus haut. Les lignes du ressort \
             doivent dire la même chose.",
        ),
        (
            "Ne desserrez jamais le cône de tension quand le ressort est bandé, à moins qu’une \
             barre le retienne.",
            "Une barre reposant dans le cône, serrez ses vis de pression au couple du fabricant. \
             Puis retirez les barres, l’une après l’autre.",
        ),
        (
            "Enlevez les serres depuis le côté. Personne n’est sous la porte ni devant elle.",
            "Placez le support d’ancrage à 6 1/2 po (165 mm) du support côté rue (pratique courante, sans \
             source publiée), les bouts de l’arbre égaux. Puis enlevez les serres.",
        ),
        (
            "Si la porte saute, pend de travers ou si un câble se relâche\u{a0}: arrêtez, \
             bloquez-la, recommencez.",
            "Levez la porte d’un pied (30 cm) à la main et redescendez-la. Puis faites l’essai d’équilibre \
             plus bas.",
        ),
    ],
    measures: "Les mesures du ressort lui-même",
    wire: ["Diamètre du fil", "Diamètre de la spire, à l’extérieur", "Spires"],
    rate: |rate, torque| {
        format!("Ce ressort\u{a0}: {rate} par tour. Porte fermée, l’arbre porte {torque}.")
    },
    rate_off: |percent, stiffer| {
        let how = if stiffer { "plus raide" } else { "plus mou" };
        format!("Il est {percent}\u{a0}% {how} que ce que demande cette porte.")
    },
    stress: |stress, share| {
        format!(
            "Le fil travaille à {stress}, {share}\u{a0}% de la résistance du fil trempé à l’huile \
             (ASTM A229, de mémoire)."
        )
    },
    formula: "Raideur d⁴E ÷ 10,8·D·N, avec le diviseur des manuels, qui tient compte du frottement \
              entre les spires; sans lui 10,186, 6\u{a0}% plus raide.",
    no_spring: "Aucun ressort n’est fait ainsi. Le diamètre de la spire se mesure à l’extérieur.",
};

pub(super) const BALANCE: Balance = Balance {
    heading: "Équilibre",
    caution: "Une porte mal équilibrée tombe ou monte d’un coup. Gardez une main prête, les doigts \
              loin des charnières et des roulettes, personne dessous.",
    no_weight: "Tapez le poids de la porte\u{a0}: sans lui, personne ne connaît les forces.",
    open: |weight| format!("Ouverte, le ressort tire encore vers le haut avec {weight}."),
    quarter: |weight| format!("Un quart de tour de plus ou de moins change la levée de {weight}."),
    hand: |weight| format!("Bandé ainsi, la main lève au plus {weight}."),
    hand_over: |weight, most| {
        format!(
            "Bandé ainsi, la main lèverait {weight}\u{a0}: plus que les {most} qu’une personne \
             devrait, au mieux. Ne bougez pas la porte à la main."
        )
    },
    pulls_up: |weight, lift| {
        format!(
            "Bandé ainsi, la porte levée de {lift}, le ressort tire vers le haut avec {weight} de \
             plus que ce que la porte pèse là\u{a0}: retenez la porte à la montée."
        )
    },
    pulls_up_over: |weight, lift, most| {
        format!(
            "Bandé ainsi, la porte levée de {lift}, le ressort tire vers le haut avec {weight} de \
             plus que ce que la porte pèse là\u{a0}: plus que les {most} qu’une personne devrait \
             retenir, au mieux. Ne bougez pas la porte à la main."
        )
    },
    flies_up: |weight, lift| {
        format!(
            "Bandé ainsi, la porte levée de {lift}, le ressort tire vers le haut avec {weight} de \
             plus que ce que la porte pèse là\u{a0}: la porte monte d’un coup quand on enlève les \
             serres. Laissez les serres en place et faites enlever des tours par des gens formés."
        )
    },
    test: "Essai d’équilibre",
    scale: "Accrochez un pèse-bagages à la poignée et bougez la porte lentement. Rien de mesuré à la \
            montée et à la descente? Lâchez-la plutôt, comme plus bas.",
    pulls: [
        "Au seuil\u{a0}: traction pour la lever",
        "Au seuil\u{a0}: traction pour la retenir à la descente",
        "À mi-hauteur\u{a0}: traction pour la lever",
        "À mi-hauteur\u{a0}: traction pour la retenir à la descente",
    ],
    behaves: "Ou lâchez la porte, une main prête",
    height: |height| match height {
        Height::Low => "À hauteur de genou",
        Height::Middle => "À mi-hauteur",
        Height::High => "Aux trois quarts",
    },
    does: |does| match does {
        Behaves::Drops => "tombe",
        Behaves::Stays => "reste",
        Behaves::Rises => "monte",
    },
    contradict: "Ces tractions se contredisent; mesurez-les de nouveau.",
    add: |turns, give| format!("Tours à ajouter\u{a0}: {turns}, à {give} près."),
    take: |turns, give| format!("Tours à enlever\u{a0}: {turns}, à {give} près."),
    holds: |give| format!("Équilibrée, autant que cet essai le voit\u{a0}: à {give} tour près."),
    mismatch: |mismatch| match mismatch {
        Mismatch::TooSoft => {
            "Aucun nombre de tours n’y change rien\u{a0}: le ressort est trop mou pour la porte. \
             Demandez le bon au fournisseur."
        }
        Mismatch::TooStiff => {
            "Aucun nombre de tours n’y change rien\u{a0}: le ressort est trop raide pour la porte. \
             Demandez le bon au fournisseur."
        }
    },
    again: "Changer des tours, c’est bander\u{a0}: toutes les mises en garde plus haut valent. Puis \
            refaites l’essai.",
};
