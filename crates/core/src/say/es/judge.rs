//! What the judge says, in Spanish.

use super::{capital, names, text};
use crate::judge::{SlipKind, Why};
use crate::length::Unit;
use crate::say::JudgeSays;

pub(crate) fn say(says: &JudgeSays, unit: Unit) -> String {
    let text = |length| text(length, unit);
    match says {
        JudgeSays::Doubtful { spots, value, slip, alone } => {
            let first = spots.first().map_or("medida", |spot| names::spot(*spot));
            let does = match (spots.as_slice(), slip) {
                ([_, _, ..], Some(SlipKind::Exchange)) => "parece intercambiada con otra medida",
                ([_, _, ..], _) => {
                    "junto con las medidas que van con ella, no cuadra con las otras"
                }
                _ if *alone => "es poco probable por sí sola, y ninguna otra medida la comprueba",
                _ => "no cuadra con lo demás que se midió",
            };
            let because = slip.map_or("", slip_clause);
            [&capital(first), ": se midió ", &text(*value), "; ", does, because, "."].concat()
        }
        JudgeSays::DidYouMean { meant, .. } => ["¿Quiso decir ", &text(*meant), "?"].concat(),
        JudgeSays::ReadAgain { spots } => {
            let spots = list(spots.iter().map(|spot| names::the_spot(*spot)));
            ["Mida otra vez ", &spots, "."].concat()
        }
        JudgeSays::OrReadAgain { spot } => {
            ["Si eso queda igual, mida otra vez ", &names::the_spot(*spot), "."].concat()
        }
        JudgeSays::Next { spot, why, checks } => {
            let what = list(checks.iter().map(|dimension| names::the_dimension(*dimension)));
            let spot = names::the_spot(*spot);
            match why {
                Why::Missing => ["Mida ", &spot, ": el pedido la necesita."].concat(),
                Why::Settles => {
                    ["Mida otra vez ", &spot, ": eso decide cuál medida está mal."].concat()
                }
                Why::ChecksSeveral => {
                    let count = match checks.len() {
                        2 => "dos de sus cuatro números",
                        3 => "tres de sus cuatro números",
                        _ => "sus cuatro números",
                    };
                    let head = ["Mida ", &spot, ": esta sola medida comprueba ", count];
                    [&head.concat(), ", ", &what, "."].concat()
                }
                Why::ChecksOne => ["Mida ", &spot, ": comprueba ", &what, "."].concat(),
                Why::Again => [
                    "Mida otra vez ",
                    &spot,
                    ", en la marca de gis y sin ver el primer número: comprueba ",
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
                    "Un error de menos de ",
                    &text(*least),
                    " en ",
                    &name,
                    " podría no notarse",
                    if once { ": se midió una sola vez" } else { "" },
                    ".",
                ]
                .concat(),
                None => [
                    "Un error en ",
                    &name,
                    " no se notaría mientras el número pudiera ser el de una abertura",
                    if once { ": se midió una sola vez y nada lo comprueba" } else { "" },
                    ".",
                ]
                .concat(),
            }
        }
    }
}

/// a; a y b; a, b y c.
fn list(items: impl Iterator<Item = String>) -> String {
    let items: Vec<String> = items.collect();
    match items.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => [&rest.join(", "), " y ", last].concat(),
    }
}

/// What probably happened, as the end of a sentence.
const fn slip_clause(slip: SlipKind) -> &'static str {
    match slip {
        SlipKind::Digit => "; quizá una cifra sea otra",
        SlipKind::Transpose => "; quizá dos cifras cambiaron de lugar",
        SlipKind::DropAdd => "; quizá falta una cifra o está dos veces",
        SlipKind::FootTen => "; quizá sobra o falta un pie o diez pulgadas",
        SlipKind::InchMark => {
            "; quizá la cinta se empezó en la marca de una pulgada, o se leyó la marca siguiente"
        }
        SlipKind::HalfInch => "; quizá sobra o falta media pulgada",
        SlipKind::WrongSide => "; quizá la fracción se contó desde el otro lado de la pulgada",
        SlipKind::SixteenthsEighths => "; quizá se contaron dieciseisavos como octavos",
        SlipKind::Ticks => "; quizá se contaron mal las rayas chicas",
        SlipKind::FractionDropped => "; quizá se olvidó la fracción",
        SlipKind::Slash => "; quizá se perdió la diagonal de la fracción",
        SlipKind::Units => "; quizá el número es de otra unidad",
        SlipKind::DecimalFeet => "; quizá se tomaron pies decimales por pies y pulgadas",
        SlipKind::TapeCase => "; quizá no se sumó la caja de la cinta",
        SlipKind::Sag => "; quizá la cinta se colgó o quedó inclinada",
        SlipKind::WrongEdge => "; quizá se midió hasta otro borde",
        SlipKind::Heard => "; quizá se oyó mal",
        SlipKind::Exchange => "; quizá dos medidas cambiaron de lugar",
        SlipKind::WrongField => "; quizá va en otra casilla",
        SlipKind::Habit => {
            "; quizá todas las medidas largas empezaron en la misma marca equivocada"
        }
        SlipKind::Other => "",
    }
}
