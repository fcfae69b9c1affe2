//! What to ask the caller next, in Spanish.

use crate::desk::ask::{Ask, said_as};
use hangtrue_core::judge::{SlipKind, Why};
use hangtrue_core::say::Speaker;
use hangtrue_core::{Dimension, Spot};

pub(super) fn say(ask: &Ask, speaker: Speaker) -> String {
    let text = |length| speaker.length(length);
    let the = |spot| the(spot, speaker);
    match ask {
        Ask::SayAgain { spot, text } => {
            format!("Pida otra vez {}: “{text}” no es una medida.", the(*spot))
        }
        Ask::Say(dimension) => {
            let how = match dimension {
                Dimension::Width => "entre las caras interiores de los postes",
                Dimension::Height => "del umbral a la parte de abajo del dintel",
                Dimension::Header => "de la parte de abajo del dintel a la lámina del techo",
                Dimension::Bow => "de la parte de abajo de un arco a la lámina del techo",
            };
            format!("Pida {}: {how}.", speaker.the_dimension(*dimension))
        }
        Ask::Digits { spot, value } => format!(
            "Pida {} cifra por cifra, y en qué unidad: {} no es ninguna abertura.",
            the(*spot),
            text(*value)
        ),
        Ask::Which { first, first_value, second, second_value } => format!(
            "Pregunte cuál es cuál: ¿{} es {} y {} es {}, o al revés?",
            speaker.the_dimension(*first),
            text(*first_value),
            speaker.the_dimension(*second),
            text(*second_value)
        ),
        Ask::BetweenPosts(value) => format!(
            "Pregunte si {} se midió entre los postes o por fuera de la caja.",
            text(*value)
        ),
        Ask::ToHeader(value) => format!(
            "Pregunte si {} se midió hasta la parte de abajo del dintel o hasta el techo.",
            text(*value)
        ),
        Ask::RoofOrBow { .. } => {
            "Pregunte si el dintel se midió hasta el techo o hasta el arco.".to_owned()
        }
        Ask::BowFrom(value) => format!(
            "Pregunte si lo que se midió del arco, {}, va de su parte de abajo a la lámina del \
             techo.",
            text(*value)
        ),
        Ask::Build(value) => format!(
            "Pregunte si el dintel de {} todavía se va a bajar o se queda como está.",
            text(*value)
        ),
        Ask::Meant { spot, said, meant, slip } => {
            let why = slip_clause(*slip);
            let stop = if why.is_empty() { "?" } else { "? " };
            format!(
                "Pida otra vez {}: ¿es {} o {}{stop}{why}",
                the(*spot),
                text(*said),
                text(*meant)
            )
        }
        Ask::Misheard { spot, said, meant } => format!(
            "Pida otra vez {}: se anotó {}; por los caracteres era {}.",
            the(*spot),
            text(*said),
            text(*meant)
        ),
        Ask::ReadAgain(spots) => {
            let names: Vec<String> = spots.iter().take(3).map(|spot| the(*spot)).collect();
            let why = match names.as_slice() {
                [_] => "no cuadra con las otras",
                _ => "no cuadran entre sí",
            };
            format!("Pida que midan otra vez {}: {why}.", list(&names))
        }
        Ask::Unusual { spot, value } => format!(
            "Pregunte si {} de verdad es {}: pocas cajas se hacen así.",
            the(*spot),
            text(*value)
        ),
        Ask::Take { spot, why, checks } => take(*spot, *why, checks, speaker),
        Ask::Required(spot) => {
            format!("Pida también {}: sin esa medida no se hace la puerta.", the(*spot))
        }
        Ask::Nothing => "Nada más que preguntar. Lea los números de vuelta.".to_owned(),
    }
}

fn take(spot: Spot, why: Why, checks: &[Dimension], speaker: Speaker) -> String {
    let the = the(spot, speaker);
    let names: Vec<String> = checks.iter().map(|d| speaker.the_dimension(*d)).collect();
    match why {
        Why::Settles => {
            format!("Pida que midan {the} una vez más: eso decide cuál medida está mal.")
        }
        Why::Again => format!(
            "Pida que midan {the} una vez más, sin ver el primer número: comprueba {}.",
            list(&names)
        ),
        Why::Missing | Why::ChecksSeveral | Why::ChecksOne => {
            format!("Pida una medida más, {the}: comprueba {}.", list(&names))
        }
    }
}

/// The dimension where a number is said without its place, else the spot.
fn the(spot: Spot, speaker: Speaker) -> String {
    said_as(spot)
        .map_or_else(|| speaker.the_spot(spot), |dimension| speaker.the_dimension(dimension))
}

fn list(items: &[String]) -> String {
    match items.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => [&rest.join(", "), " y ", last].concat(),
    }
}

/// What probably happened, as a sentence for the clerk.
pub(super) const fn slip_clause(slip: SlipKind) -> &'static str {
    match slip {
        SlipKind::Digit => "Quizá una cifra sea otra.",
        SlipKind::Transpose => "Quizá dos cifras cambiaron de lugar.",
        SlipKind::DropAdd => "Quizá falta una cifra o se dijo dos veces.",
        SlipKind::FootTen => "Quizá sobra o falta un pie o diez pulgadas.",
        SlipKind::InchMark => "Quizá la cinta se empezó en la marca de una pulgada.",
        SlipKind::HalfInch => "Quizá sobra o falta media pulgada.",
        SlipKind::WrongSide => "Quizá la fracción es del otro lado de la pulgada.",
        SlipKind::SixteenthsEighths => "¿Son dieciseisavos u octavos?",
        SlipKind::Ticks => "Quizá se contaron mal las rayas chicas.",
        SlipKind::FractionDropped => "Quizá se olvidó la fracción.",
        SlipKind::Slash => "Quizá era una fracción y no un decimal.",
        SlipKind::Units => "¿Pulgadas o milímetros?",
        SlipKind::DecimalFeet => "¿Pies y pulgadas, o pies decimales?",
        SlipKind::TapeCase => "¿Se sumó la caja de la cinta?",
        SlipKind::Sag => "Quizá la cinta se colgó o quedó inclinada.",
        SlipKind::WrongEdge => "¿De qué borde a qué borde?",
        SlipKind::Heard => "Los dos suenan parecido.",
        SlipKind::Exchange => "Quizá cambió de lugar con otro número.",
        SlipKind::WrongField => "Quizá es de otro número.",
        SlipKind::Habit => "Quizá todas las medidas largas empezaron en la misma marca equivocada.",
        SlipKind::Other => "",
    }
}
