//! What to ask the caller next, in French (Canada).

use crate::desk::ask::{Ask, said_as};
use hangtrue_core::judge::{SlipKind, Why};
use hangtrue_core::say::Speaker;
use hangtrue_core::{Dimension, Spot};

pub(super) fn say(ask: &Ask, speaker: Speaker) -> String {
    let text = |length| speaker.length(length);
    let the = |spot| the(spot, speaker);
    match ask {
        Ask::SayAgain { spot, text } => {
            format!("Redemandez {}\u{a0}: «\u{a0}{text}\u{a0}» n’est pas une mesure.", the(*spot))
        }
        Ask::Say(dimension) => {
            let how = match dimension {
                Dimension::Width => "entre les faces intérieures des poteaux",
                Dimension::Height => "du seuil jusqu’au dessous du linteau",
                Dimension::Header => "du dessous du linteau jusqu’à la tôle du toit",
                Dimension::Bow => "du dessous d’un arceau jusqu’à la tôle du toit",
            };
            format!("Demandez {}\u{a0}: {how}.", speaker.the_dimension(*dimension))
        }
        Ask::Digits { spot, value } => format!(
            "Demandez {} chiffre par chiffre, et dans quelle unité\u{a0}: {} n’est pas une \
             ouverture.",
            the(*spot),
            text(*value)
        ),
        Ask::Which { first, first_value, second, second_value } => format!(
            "Demandez laquelle est laquelle\u{a0}: {} est-elle {} et {} {}, ou l’inverse?",
            speaker.the_dimension(*first),
            text(*first_value),
            speaker.the_dimension(*second),
            text(*second_value)
        ),
        Ask::BetweenPosts(value) => format!(
            "Demandez si {} a été mesuré entre les poteaux ou à l’extérieur du fourgon.",
            text(*value)
        ),
        Ask::ToHeader(value) => format!(
            "Demandez si {} a été mesuré jusqu’au dessous du linteau ou jusqu’au toit.",
            text(*value)
        ),
        Ask::RoofOrBow { .. } => {
            "Demandez si le linteau a été mesuré jusqu’au toit ou jusqu’à l’arceau.".to_owned()
        }
        Ask::BowFrom(value) => format!(
            "Demandez si la mesure de l’arceau, {}, va de son dessous à la tôle du toit.",
            text(*value)
        ),
        Ask::Build(value) => format!(
            "Demandez si le linteau de {} sera encore abaissé ou restera comme il est.",
            text(*value)
        ),
        Ask::Meant { spot, said, meant, slip } => {
            let why = slip_clause(*slip);
            let stop = if why.is_empty() { "?" } else { "? " };
            format!(
                "Redemandez {}\u{a0}: est-ce {} ou {}{stop}{why}",
                the(*spot),
                text(*said),
                text(*meant)
            )
        }
        Ask::Misheard { spot, said, meant } => format!(
            "Redemandez {}\u{a0}: {} a été noté; d’après les caractères, c’était {}.",
            the(*spot),
            text(*said),
            text(*meant)
        ),
        Ask::ReadAgain(spots) => {
            let names: Vec<String> = spots.iter().take(3).map(|spot| the(*spot)).collect();
            let why = match names.as_slice() {
                [_] => "elle ne concorde pas avec les autres",
                _ => "elles ne concordent pas entre elles",
            };
            format!("Demandez de remesurer {}\u{a0}: {why}.", list(&names))
        }
        Ask::Unusual { spot, value } => format!(
            "Demandez si {} est vraiment de {}\u{a0}: peu de fourgons sont construits ainsi.",
            the(*spot),
            text(*value)
        ),
        Ask::Take { spot, why, checks } => take(*spot, *why, checks, speaker),
        Ask::Required(spot) => format!(
            "Demandez aussi {}\u{a0}: sans cette mesure, aucune porte n’est faite.",
            the(*spot)
        ),
        Ask::Nothing => "Plus rien à demander. Relisez les nombres.".to_owned(),
    }
}

fn take(spot: Spot, why: Why, checks: &[Dimension], speaker: Speaker) -> String {
    let the = the(spot, speaker);
    let names: Vec<String> = checks.iter().map(|d| speaker.the_dimension(*d)).collect();
    match why {
        Why::Settles => format!(
            "Demandez de mesurer {the} une fois de plus\u{a0}: cela tranche quelle mesure est \
             fausse."
        ),
        Why::Again => format!(
            "Demandez de mesurer {the} une fois de plus, sans regarder le premier nombre\u{a0}: \
             cela vérifie {}.",
            list(&names)
        ),
        Why::Missing | Why::ChecksSeveral | Why::ChecksOne => {
            format!("Demandez une mesure de plus, {the}\u{a0}: cela vérifie {}.", list(&names))
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
        Some((last, rest)) => [&rest.join(", "), " et ", last].concat(),
    }
}

/// What probably happened, as a sentence for the clerk.
pub(super) const fn slip_clause(slip: SlipKind) -> &'static str {
    match slip {
        SlipKind::Digit => "Un chiffre en est peut-être un autre.",
        SlipKind::Transpose => "Deux chiffres ont peut-être changé de place.",
        SlipKind::DropAdd => "Un chiffre manque peut-être, ou a été dit deux fois.",
        SlipKind::FootTen => "L’écart est peut-être d’un pied ou de dix pouces.",
        SlipKind::InchMark => "Le ruban partait peut-être du trait d’un pouce.",
        SlipKind::HalfInch => "L’écart est peut-être d’un demi-pouce.",
        SlipKind::WrongSide => "La fraction vient peut-être de l’autre côté du pouce.",
        SlipKind::SixteenthsEighths => "Des seizièmes ou des huitièmes?",
        SlipKind::Ticks => "Les petits traits ont peut-être été mal comptés.",
        SlipKind::FractionDropped => "La fraction a peut-être été oubliée.",
        SlipKind::Slash => "C’était peut-être une fraction, pas une décimale.",
        SlipKind::Units => "Pouces ou millimètres?",
        SlipKind::DecimalFeet => "Pieds et pouces, ou pieds décimaux?",
        SlipKind::TapeCase => "Le boîtier du ruban a-t-il été ajouté?",
        SlipKind::Sag => "Le ruban pendait peut-être ou était de travers.",
        SlipKind::WrongEdge => "De quel bord à quel bord?",
        SlipKind::Heard => "Les deux se ressemblent à l’oreille.",
        SlipKind::Exchange => "Il a peut-être changé de place avec un autre nombre.",
        SlipKind::WrongField => "Il appartient peut-être à un autre nombre.",
        SlipKind::Habit => "Toutes les longues mesures partaient peut-être du même mauvais trait.",
        SlipKind::Other => "",
    }
}
