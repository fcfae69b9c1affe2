//! What the judge says, in French (Canada).

use super::{capital, names, text};
use crate::judge::{SlipKind, Why};
use crate::length::Unit;
use crate::say::JudgeSays;

pub(crate) fn say(says: &JudgeSays, unit: Unit) -> String {
    let text = |length| text(length, unit);
    match says {
        JudgeSays::Doubtful { spots, value, slip, alone } => {
            let first = spots.first().map_or("mesure", |spot| names::spot(*spot));
            let does = match (spots.as_slice(), slip) {
                ([_, _, ..], Some(SlipKind::Exchange)) => {
                    "semble intervertie avec une autre mesure"
                }
                ([_, _, ..], _) => {
                    "avec les mesures qui l’accompagnent, elle ne concorde pas avec les autres"
                }
                _ if *alone => {
                    "est peu probable à elle seule, et aucune autre mesure ne la vérifie"
                }
                _ => "ne concorde pas avec le reste des mesures",
            };
            let because = slip.map_or("", slip_clause);
            [&capital(first), "\u{a0}: ", &text(*value), "; ", does, because, "."].concat()
        }
        JudgeSays::DidYouMean { meant, .. } => ["Vouliez-vous dire ", &text(*meant), "?"].concat(),
        JudgeSays::ReadAgain { spots } => {
            let spots = list(spots.iter().map(|spot| names::the_spot(*spot)));
            ["Mesurez de nouveau ", &spots, "."].concat()
        }
        JudgeSays::OrReadAgain { spot } => {
            ["Si cela ne change pas, mesurez de nouveau ", &names::the_spot(*spot), "."].concat()
        }
        JudgeSays::Next { spot, why, checks } => {
            let what = list(checks.iter().map(|dimension| names::the_dimension(*dimension)));
            let spot = names::the_spot(*spot);
            match why {
                Why::Missing => {
                    ["Mesurez ", &spot, "\u{a0}: il la faut pour la commande."].concat()
                }
                Why::Settles => {
                    ["Mesurez de nouveau ", &spot, "\u{a0}: cela tranche quelle mesure est fausse."]
                        .concat()
                }
                Why::ChecksSeveral => {
                    let count = match checks.len() {
                        2 => "deux de vos quatre nombres",
                        3 => "trois de vos quatre nombres",
                        _ => "vos quatre nombres",
                    };
                    let head = ["Mesurez ", &spot, "\u{a0}: cette seule mesure vérifie ", count];
                    [&head.concat(), ", ", &what, "."].concat()
                }
                Why::ChecksOne => ["Mesurez ", &spot, "\u{a0}: cela vérifie ", &what, "."].concat(),
                Why::Again => [
                    "Mesurez de nouveau ",
                    &spot,
                    ", à la marque de craie et sans regarder le premier nombre\u{a0}: cela \
                     vérifie ",
                    &what,
                    ".",
                ]
                .concat(),
            }
        }
        JudgeSays::Unseen { dimension, least, readings } => {
            let name = names::the_dimension(*dimension);
            let once = *readings == 1;
            match least {
                Some(least) => [
                    "Une erreur de moins de ",
                    &text(*least),
                    " sur ",
                    &name,
                    " pourrait passer inaperçue",
                    if once { "\u{a0}: elle n’a été mesurée qu’une fois" } else { "" },
                    ".",
                ]
                .concat(),
                None => [
                    "Une erreur sur ",
                    &name,
                    " passerait inaperçue tant que le nombre peut être celui d’une ouverture",
                    if once {
                        "\u{a0}: elle n’a été mesurée qu’une fois, et rien ne la vérifie"
                    } else {
                        ""
                    },
                    ".",
                ]
                .concat(),
            }
        }
    }
}

/// a; a et b; a, b et c.
fn list(items: impl Iterator<Item = String>) -> String {
    let items: Vec<String> = items.collect();
    match items.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => [&rest.join(", "), " et ", last].concat(),
    }
}

/// What probably happened, as the end of a sentence.
const fn slip_clause(slip: SlipKind) -> &'static str {
    match slip {
        SlipKind::Digit => "; un chiffre en est peut-être un autre",
        SlipKind::Transpose => "; deux chiffres ont peut-être changé de place",
        SlipKind::DropAdd => "; un chiffre manque peut-être, ou est écrit deux fois",
        SlipKind::FootTen => "; l’écart est peut-être d’un pied ou de dix pouces",
        SlipKind::InchMark => {
            "; le ruban partait peut-être du trait d’un pouce, ou on a lu le trait suivant"
        }
        SlipKind::HalfInch => "; l’écart est peut-être d’un demi-pouce",
        SlipKind::WrongSide => "; la fraction a peut-être été comptée de l’autre côté du pouce",
        SlipKind::SixteenthsEighths => {
            "; des seizièmes ont peut-être été comptés comme des huitièmes"
        }
        SlipKind::Ticks => "; les petits traits ont peut-être été mal comptés",
        SlipKind::FractionDropped => "; la fraction a peut-être été oubliée",
        SlipKind::Slash => "; la barre de la fraction s’est peut-être perdue",
        SlipKind::Units => "; c’est peut-être le nombre d’une autre unité",
        SlipKind::DecimalFeet => {
            "; des pieds décimaux ont peut-être été pris pour des pieds et des pouces"
        }
        SlipKind::TapeCase => "; le boîtier du ruban n’a peut-être pas été ajouté",
        SlipKind::Sag => "; le ruban pendait peut-être ou était de travers",
        SlipKind::WrongEdge => "; on a peut-être mesuré jusqu’à un autre bord",
        SlipKind::Heard => "; on a peut-être mal entendu",
        SlipKind::Exchange => "; deux mesures ont peut-être changé de place",
        SlipKind::WrongField => "; elle va peut-être dans une autre case",
        SlipKind::Habit => "; toutes les longues mesures partaient peut-être du même mauvais trait",
        SlipKind::Other => "",
    }
}
