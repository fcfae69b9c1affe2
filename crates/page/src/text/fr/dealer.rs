//! The words around a dealer's own rules, in French (Canada).

use crate::text::Dealer;

pub(super) const DEALER: Dealer = Dealer {
    unread: "Les règles du distributeur n’ont pas pu être lues; celles de la page sont donc \
             utilisées.",
    rules: |name, revision| ["Règles de ", name, ", révision ", &revision.to_string()].concat(),
    other_rules: |made_under, checked_by| {
        ["Faite selon\u{a0}: ", made_under, ". Vérifiée ici selon\u{a0}: ", checked_by, "."]
            .concat()
    },
    built_in: "les règles de la page",
    door: "Quelle porte?",
    no_door: "Pas encore décidé",
    needs: |header, post| match (header, post) {
        (Some(header), Some(post)) => {
            ["exige un linteau de ", header, " et des poteaux de ", post].concat()
        }
        (Some(header), None) => ["exige un linteau de ", header].concat(),
        (None, Some(post)) => ["exige des poteaux de ", post].concat(),
        (None, None) => String::new(),
    },
    questions: |name| [name, " demande aussi"].concat(),
    optional: "si vous le savez",
    answers: "Vos réponses",
    mean: |count, mean, place, tightest| {
        let count = count.to_string();
        [
            "la moyenne de ",
            &count,
            " mesures, ",
            mean,
            "; la plus serrée, ",
            place,
            "\u{a0}: ",
            tightest,
        ]
        .concat()
    },
    number: |number| ["Commande numéro ", number].concat(),
    page: |name| ["La remettre maintenant à ", name].concat(),
    call: |number| ["Appeler le ", number].concat(),
    send_to: |name| ["Envoyez-la à ", name].concat(),
};
