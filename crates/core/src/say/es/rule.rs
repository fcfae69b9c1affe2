//! What the rules say, in Spanish.

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
            ["Falta medir ", &names::the_dimension(*dimension), "."].concat()
        }
        RuleSays::NotPositive { spot, value } => fill(
            "{}: se midió {}. Una medida tiene que ser más de 0.",
            &[&capital(names::spot(*spot)), &text(*value)],
        ),
        RuleSays::Beyond { subject, value, bound, above, because } => fill(
            "{}: {}, {} de {}; {}.",
            &[
                &self::subject(*subject),
                &text(*value),
                if *above { "más" } else { "menos" },
                &text(*bound),
                &self::because(because),
            ],
        ),
        RuleSays::BowFillsHeader { header, bow } => fill(
            "La profundidad del dintel, {}, no es más que la profundidad del arco del techo, {}: el arco \
             colgaría más abajo que el dintel.",
            &[&text(*header), &text(*bow)],
        ),
        RuleSays::Spread { dimension, least, most, bound, because } => fill(
            "Las medidas {} van de {} a {}, con {} de diferencia. Se espera a lo más {}; {}.",
            &[
                &names::of_the_dimension(*dimension),
                &text(*least),
                &text(*most),
                &text(*most - *least),
                &text(*bound),
                &self::because(because),
            ],
        ),
        RuleSays::Repeats { spot, least, most, bound, because } => fill(
            "{}: en el mismo punto se midió {} y {}, con {} de diferencia. El mismo punto da la \
             misma medida con a lo más {} de diferencia{}.",
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
            [dealer, " pide una medida más: ", names::spot(*spot), "."].concat()
        }
        RuleSays::Exchanged { first, first_value, second, second_value } => fill(
            "Parece que se intercambiaron {}, {}, y {}, {}.",
            &[
                &names::the_dimension(*first),
                &text(*first_value),
                &names::the_dimension(*second),
                &text(*second_value),
            ],
        ),
        RuleSays::HeaderToBow { spot, value, expected, bow } => fill(
            "{}: {}. Según las otras medidas son {}, y la diferencia es la profundidad del arco \
             del techo, {}: quizá la cinta topó con el arco y no con la lámina del techo.",
            &[&capital(names::spot(*spot)), &text(*value), &text(*expected), &text(*bow)],
        ),
        RuleSays::ShallowHeader { value, least, because } => fill(
            "La profundidad del dintel es de {}. Arriba de la abertura, una puerta necesita al \
             menos {}{}.",
            &[&text(*value), &text(*least), &theirs(because)],
        ),
        RuleSays::NarrowPost { spot, value, least, because } => fill(
            "{}: {}. Un riel vertical necesita al menos {}{}.",
            &[&capital(names::spot(*spot)), &text(*value), &text(*least), &theirs(because)],
        ),
    }
}

pub(crate) fn hint(hint: &Hint, unit: Unit) -> String {
    let text = |length| text(length, unit);
    match hint {
        Hint::ReadAgain(spot) => ["Mida otra vez ", &names::the_spot(*spot), "."].concat(),
        Hint::Read(dimension) => {
            ["Mida ", &names::the_dimension(*dimension), " en al menos un lugar."].concat()
        }
        Hint::ReadSpot(spot) => ["Mida ", &names::the_spot(*spot), "."].concat(),
        Hint::DidYouMean(meant) => {
            let meant = super::Language::Spanish.written(meant);
            ["Si eso se quiso decir, escriba ", &meant, "."].concat()
        }
        Hint::HowToRead(dimension) => how_to_read(*dimension).to_owned(),
        Hint::PutBack { first, first_value, second, second_value } => fill(
            "Si es así, escriba {} en {} y {} en {}.",
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
                "Baje el dintel {} con un canal o un perfil de lámina. Eso quita {} a la \
                 altura del umbral al dintel y suma {} a la profundidad del dintel. Mida de \
                 nuevo cuando el marco esté hecho.",
                &[&by, &by, &by],
            )
        }
        Hint::BuildOut { spot, by } => {
            let by = text(*by);
            fill(
                "Engruese el {} {} hacia la abertura. Eso quita {} al ancho de poste a poste. \
                 Mida de nuevo cuando el marco esté hecho.",
                &[names::place(*spot), &by, &by],
            )
        }
        Hint::Straighten => {
            "Si vuelve a dar lo mismo, el marco está torcido: mándelo enderezar antes de pedir \
             una puerta."
                .to_owned()
        }
    }
}

const fn how_to_read(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => {
            "Mida entre las caras interiores de los postes, no por fuera de la caja."
        }
        Dimension::Height => {
            "Mida desde donde asienta la puerta cerrada hasta la parte de abajo del dintel."
        }
        Dimension::Header => {
            "Mida desde la parte de abajo del dintel hasta la lámina del techo, no hasta un arco."
        }
        Dimension::Bow => "Mida desde la parte de abajo del arco hasta la lámina del techo.",
    }
}

fn subject(subject: Subject) -> String {
    match subject {
        Subject::Reading(spot) => capital(names::spot(spot)),
        Subject::HeightAndHeader => "Altura y profundidad del dintel juntas".to_owned(),
        Subject::UnderBow => "Espacio entre la parte de abajo del dintel y el arco".to_owned(),
        Subject::Built(dimension) => {
            [&capital(names::dimension(dimension)), " cuando el marco esté hecho"].concat()
        }
    }
}

/// Why a limit is there, as a clause.
fn because(because: &Because) -> String {
    match because {
        Because::Known(reason) => self::reason(*reason).to_owned(),
        Because::Dealer { name, reason } => {
            [name, " dice: ", reason.in_language("es").trim_end_matches('.')].concat()
        }
        Because::Door(name) => [name.in_language("es"), " lo necesita"].concat(),
    }
}

/// The same behind a colon, where the sentence already holds our own reason.
fn theirs(because: &Because) -> String {
    match because {
        Because::Known(_) => String::new(),
        theirs => [": ", &self::because(theirs)].concat(),
    }
}

pub(crate) const fn reason(reason: Reason) -> &'static str {
    match reason {
        Reason::LegalWidth => {
            "una caja puede medir a lo más 102\u{a0}pulg o 2.6\u{a0}m de ancho (23 CFR 658.15), y de cada \
             lado va un poste"
        }
        Reason::LegalHeight => {
            "con un piso debajo, el vehículo pasaría de toda altura que permite la ley"
        }
        Reason::NoSuchOpening => "ninguna caja ni remolque se hace así",
        Reason::UnusualOpening => "pocas cajas se hacen así",
        Reason::HeaderRoom => "el riel superior y el resorte necesitan ese espacio",
        Reason::UnusualHeader => "pocos dinteles se hacen tan profundos",
        Reason::PostRoom => "ahí se fija el riel vertical",
        Reason::UsualBow => {
            "los arcos del techo tienen de 3/4 a 2\u{a0}pulg de profundidad (19 a 51\u{a0}mm)"
        }
        Reason::RoomUnderBow => "por ahí corre la puerta cuando está abierta",
        Reason::FrameShape => "un marco que admite una puerta no está más fuera de escuadra",
        Reason::BentFrame => "ningún marco que admita una puerta está tan fuera de escuadra",
    }
}
