//! What is wrong with a text that is no reading, in Spanish.

use crate::length::{ReadErrorKind, Unit};

/// Why `text` is no reading and what to do, in one sentence.
pub(crate) fn refused(kind: ReadErrorKind, text: &str, unit: Unit) -> String {
    let example = match unit {
        Unit::Inch => "96 3/16",
        Unit::Millimetre => "2443",
    };
    let quoted = |says: &str| ["“", text, "” ", says].concat();
    match kind {
        ReadErrorKind::Empty => ["Escriba la medida, como ", example, "."].concat(),
        ReadErrorKind::TooLong => {
            ["Esto es muy largo para una medida: escriba una sola, como ", example, "."].concat()
        }
        ReadErrorKind::ControlCharacter => {
            "El texto trae un tabulador, un salto de línea u otro carácter de control: escriba la \
             medida en una sola línea."
                .to_owned()
        }
        ReadErrorKind::DirectionMark => {
            "El texto trae marcas ocultas que cambian el sentido de la escritura, y quizá no sea \
             lo que parece: escriba la medida otra vez."
                .to_owned()
        }
        ReadErrorKind::HiddenCharacter => {
            "El texto trae caracteres que no se ven: escriba la medida otra vez.".to_owned()
        }
        ReadErrorKind::LostSpace => {
            quoted("no tiene espacio entre las pulgadas y la fracción: póngalo.")
        }
        ReadErrorKind::LostSlash => {
            quoted("no tiene la diagonal de la fracción: escríbala, como en 96 1/4.")
        }
        ReadErrorKind::LostMark => quoted(
            "es más de un número: escriba la unidad después de cada uno, como 8 pies 6 pulg, o un \
             solo número.",
        ),
        ReadErrorKind::LostDigits => {
            quoted("termina en un punto o en una diagonal: escriba las cifras que faltan.")
        }
        ReadErrorKind::TopHeavy => {
            quoted("tiene una fracción que no es menos de uno: cuente las rayas otra vez.")
        }
        ReadErrorKind::NotOnTape => match unit {
            Unit::Inch => quoted(
                "no está en ninguna cinta: mida a la raya más cercana, por ejemplo a un \
                 dieciseisavo.",
            ),
            Unit::Millimetre => quoted("no está en ninguna cinta: mida al milímetro más cercano."),
        },
        ReadErrorKind::ZeroDenominator => {
            quoted("tiene un 0 abajo en la fracción: escriba la fracción que muestra la cinta.")
        }
        ReadErrorKind::InchesPastFoot => {
            quoted("tiene 12 pulgadas o más junto a los pies: mida otra vez pies y pulgadas.")
        }
        ReadErrorKind::DecimalFeet => quoted(
            "puede ser pies y pulgadas o un decimal de pie: escriba pies y pulgadas, como 8 pies \
             6 pulg.",
        ),
        ReadErrorKind::FractionOfFoot => quoted(
            "puede ser parte de un pie o parte de una pulgada: escriba pies y pulgadas, como 8 \
             pies 6 pulg.",
        ),
        ReadErrorKind::DecimalAndFraction => {
            quoted("tiene un decimal y una fracción: use uno de los dos.")
        }
        ReadErrorKind::ThousandsOrDecimal => quoted(
            "puede ser miles o decimales: quite el signo si son miles, o ponga un 0 al final si \
             son decimales.",
        ),
        ReadErrorKind::TwoPoints => quoted("tiene más de un punto o coma decimal: deje uno."),
        ReadErrorKind::TooFine => {
            quoted("tiene más decimales que rayas una cinta: mida a la raya más cercana.")
        }
        ReadErrorKind::Negative => {
            quoted("tiene un signo de menos, y ninguna medida es menos de 0: escríbala sin signo.")
        }
        ReadErrorKind::Exponent => {
            quoted("está escrito con exponente: escriba el número completo.")
        }
        ReadErrorKind::MixedUnits => {
            quoted("mezcla unidades: escriba la medida en una unidad, o en pies y pulgadas.")
        }
        ReadErrorKind::RepeatedUnit => {
            quoted("tiene dos veces la misma unidad: marque los pies con ' y las pulgadas con \".")
        }
        ReadErrorKind::TwoReadings => quoted("es más de una medida: escriba una en cada casilla."),
        ReadErrorKind::TwoMeanings => {
            ["“", text, "” puede ser más de una medida: escríbala con cifras, como ", example, "."]
                .concat()
        }
        ReadErrorKind::Approximate => {
            quoted("no es exacto: mida a la raya más cercana y escriba solo eso.")
        }
        ReadErrorKind::PlusSign => {
            quoted("tiene un signo de más: mida a la raya más cercana y escríbala sin él.")
        }
        ReadErrorKind::OutOfRange => {
            "El número es más largo que cualquier cinta: mida otra vez.".to_owned()
        }
        ReadErrorKind::Unknown => {
            quoted("no es una medida: escríbala como 96 3/16, 8' 0 3/16\" o 2443 mm.")
        }
    }
}
