//! The words around a dealer's own rules, in English (US).

use crate::text::Dealer;

pub(super) const DEALER: Dealer = Dealer {
    unread: "The dealer’s rules could not be read, so the built-in rules are used.",
    rules: |name, revision| ["Rules of ", name, ", revision ", &revision.to_string()].concat(),
    other_rules: |made_under, checked_by| {
        ["Made under: ", made_under, ". Checked here by: ", checked_by, "."].concat()
    },
    built_in: "the built-in rules",
    door: "Which door?",
    no_door: "Not decided yet",
    needs: |header, post| match (header, post) {
        (Some(header), Some(post)) => {
            ["needs a header of ", header, " and posts of ", post].concat()
        }
        (Some(header), None) => ["needs a header of ", header].concat(),
        (None, Some(post)) => ["needs posts of ", post].concat(),
        (None, None) => String::new(),
    },
    questions: |name| [name, " also asks"].concat(),
    optional: "if you know",
    answers: "Your answers",
    mean: |count, mean, place, tightest| {
        let count = count.to_string();
        ["the mean of ", &count, " readings, ", mean, "; the tightest, ", place, ": ", tightest]
            .concat()
    },
    number: |number| ["Order number ", number].concat(),
    page: |name| ["Hand it to ", name, " now"].concat(),
    call: |number| ["Call ", number].concat(),
    send_to: |name| ["Send it to ", name].concat(),
};
