//! What the rules say, in French (Canada).

use super::{capital, names, text};
use crate::bounds::Reason;
use crate::length::Unit;
use crate::say::{Because, Hint, RuleSays, Subject};
use crate::short::fill;
use crate::spot::Dimension;

pub(crate) fn say(says: &RuleSays, unit: Unit) -> String {
    let text = |length| text(length, unit);
    match says {
        RuleSays::Missing(dimension) => {
            ["Il manque ", &names::the_dimension(*dimension), "."].concat()
        }
        RuleSays::NotPositive { spot, value } => fill(
            "{}\u{a0}: {}. Une mesure doit être de plus de 0.",
            &[&capital(names::spot(*spot)), &text(*value)],
        ),
        RuleSays::Beyond { subject, value, bound, above, because } => fill(
            "{}\u{a0}: {}, {} de {}; {}.",
            &[
                &self::subject(*subject),
                &text(*value),
                if *above { "plus" } else { "moins" },
                &text(*bound),
                &self::because(because),
            ],
        ),
        RuleSays::BowFillsHeader { header, bow } => fill(
            "La profondeur du linteau, {}, n’est pas plus grande que la profondeur de l’arceau du toit, \
             {}\u{a0}: l’arceau pendrait plus bas que le linteau.",
            &[&text(*header), &text(*bow)],
        ),
        RuleSays::Spread { dimension, least, most, bound, because } => fill(
            "Les mesures de {} vont de {} à {}, soit {} d’écart. On attend au plus {}; {}.",
            &[
                &names::the_dimension(*dimension),
                &text(*least),
                &text(*most),
                &text(*most - *least),
                &text(*bound),
                &self::because(because),
            ],
        ),
        RuleSays::Repeats { spot, least, most, bound, because } => fill(
            "{}\u{a0}: au même point, on a mesuré {} et {}, soit {} d’écart. Le même point donne \
             la même mesure à {} près{}.",
            &[
                &capital(names::spot(*spot)),
                &text(*least),
                &text(*most),
                &text(*most - *least),
                &text(*bound),
                &theirs(because),
            ],
        ),
        RuleSays::Closing { spot, dealer } => {
            [dealer, " demande une mesure de plus\u{a0}: ", names::spot(*spot), "."].concat()
        }
        RuleSays::Exchanged { first, first_value, second, second_value } => fill(
            "{}, {}, et {}, {}, semblent interverties.",
            &[
                &capital(&names::the_dimension(*first)),
                &text(*first_value),
                &names::the_dimension(*second),
                &text(*second_value),
            ],
        ),
        RuleSays::HeaderToBow { spot, value, expected, bow } => fill(
            "{}\u{a0}: {}. D’après les autres mesures, ce serait {}, et la différence est la \
             profondeur de l’arceau du toit, {}\u{a0}: le ruban s’est peut-être arrêté à \
             l’arceau et non à la tôle du toit.",
            &[&capital(names::spot(*spot)), &text(*value), &text(*expected), &text(*bow)],
        ),
        RuleSays::ShallowHeader { value, least, because } => fill(
            "La profondeur du linteau est de {}. Au-dessus de l’ouverture, une porte a besoin \
             d’au moins {}{}.",
            &[&text(*value), &text(*least), &theirs(because)],
        ),
        RuleSays::NarrowPost { spot, value, least, because } => fill(
            "{}\u{a0}: {}. Un rail vertical a besoin d’au moins {}{}.",
            &[&capital(names::spot(*spot)), &text(*value), &text(*least), &theirs(because)],
        ),
    }
}

pub(crate) fn hint(hint: &Hint, unit: Unit) -> String {
    let text = |length| text(length, unit);
    match hint {
        Hint::ReadAgain(spot) => ["Mesurez de nouveau ", &names::the_spot(*spot), "."].concat(),
        Hint::Read(dimension) => {
            ["Mesurez ", &names::the_dimension(*dimension), " à au moins un endroit."].concat()
        }
        Hint::ReadSpot(spot) => ["Mesurez ", &names::the_spot(*spot), "."].concat(),
        Hint::DidYouMean(meant) => {
            let meant = super::Language::French.written(meant);
            ["Si c’est ce que vous vouliez dire, tapez ", &meant, "."].concat()
        }
        Hint::HowToRead(dimension) => how_to_read(*dimension).to_owned(),
        Hint::PutBack { first, first_value, second, second_value } => fill(
            "Si oui, tapez {} pour {} et {} pour {}.",
            &[
                &text(*first_value),
                &names::the_dimension(*first),
                &text(*second_value),
                &names::the_dimension(*second),
            ],
        ),
        Hint::BuildDown(by) => {
            let by = text(*by);
            fill(
                "Abaissez le linteau de {} avec un profilé en U ou une tôle pliée. Cela enlève \
                 {} à la hauteur du seuil au linteau et ajoute {} à la profondeur du linteau. \
                 Mesurez de nouveau une fois le cadre préparé.",
                &[&by, &by, &by],
            )
        }
        Hint::BuildOut { spot, by } => {
            let by = text(*by);
            fill(
                "Épaississez le {} de {} vers l’ouverture. Cela enlève {} à la largeur de \
                 poteau à poteau. Mesurez de nouveau une fois le cadre préparé.",
                &[names::place(*spot), &by, &by],
            )
        }
        Hint::Straighten => {
            "Si la mesure est encore la même, le cadre est tordu\u{a0}: faites-le redresser \
             avant de commander une porte."
                .to_owned()
        }
    }
}

const fn how_to_read(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => {
            "Mesurez entre les faces intérieures des poteaux, pas à l’extérieur du fourgon."
        }
        Dimension::Height => "Mesurez de là où repose la porte fermée jusqu’au dessous du linteau.",
        Dimension::Header => {
            "Mesurez du dessous du linteau jusqu’à la tôle du toit, pas jusqu’à un arceau."
        }
        Dimension::Bow => "Mesurez du dessous de l’arceau jusqu’à la tôle du toit.",
    }
}

fn subject(subject: Subject) -> String {
    match subject {
        Subject::Reading(spot) => capital(names::spot(spot)),
        Subject::HeightAndHeader => "Hauteur et profondeur du linteau ensemble".to_owned(),
        Subject::UnderBow => "Espace entre le dessous du linteau et l’arceau".to_owned(),
        Subject::Built(dimension) => {
            [&capital(names::dimension(dimension)), " une fois le cadre préparé"].concat()
        }
    }
}

/// Why a limit is there, as a clause.
fn because(because: &Because) -> String {
    match because {
        Because::Known(reason) => self::reason(*reason).to_owned(),
        Because::Dealer { name, reason } => {
            [name, " dit\u{a0}: ", reason.in_language("fr").trim_end_matches('.')].concat()
        }
        Because::Door(name) => [name.in_language("fr"), " l’exige"].concat(),
    }
}

/// The same behind a colon, where the sentence already holds our own reason.
fn theirs(because: &Because) -> String {
    match because {
        Because::Known(_) => String::new(),
        theirs => ["\u{a0}: ", &self::because(theirs)].concat(),
    }
}

pub(crate) const fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::LegalWidth => {
            "un fourgon peut avoir au plus 102\u{a0}po ou 2,6\u{a0}m de large (23 CFR 658.15), \
             et il y a un poteau de chaque côté"
        }
        Reason::LegalHeight => {
            "avec un plancher dessous, le véhicule dépasserait toute hauteur permise par la loi"
        }
        Reason::NoSuchOpening => "aucun fourgon, aucune remorque n’est construit ainsi",
        Reason::UnusualOpening => "peu de fourgons sont construits ainsi",
        Reason::HeaderRoom => "le rail du haut et le ressort ont besoin de cet espace",
        Reason::UnusualHeader => "peu de linteaux sont aussi profonds",
        Reason::PostRoom => "le rail vertical y est fixé",
        Reason::UsualBow => {
            "les arceaux du toit ont de 3/4 à 2\u{a0}po de profondeur (19 à 51\u{a0}mm)"
        }
        Reason::RoomUnderBow => "c’est là que passe la porte ouverte",
        Reason::FrameShape => {
            "un cadre qui peut recevoir une porte n’est pas plus déformé que cela"
        }
        Reason::BentFrame => "aucun cadre qui peut recevoir une porte n’est aussi déformé",
    }
}
