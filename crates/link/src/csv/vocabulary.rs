//! The words of a column's name in Spanish and French, as the English ones that a guess goes by.

/// What each English word is called, without accents.
const WORDS: &[(&str, &[&str])] = &[
    // Dimensions.
    ("width", &["ancho", "anchura", "largeur", "larg"]),
    ("height", &["alto", "altura", "hauteur"]),
    ("header", &["dintel", "cabezal", "linteau"]),
    ("bow", &["arco", "arceau"]),
    ("bows", &["arcos", "arceaux"]),
    ("depth", &["profundidad", "profondeur"]),
    ("diagonal", &["diagonale", "diagonales"]),
    // What is wider and taller than its opening.
    ("body", &["caja", "carroceria", "caisse", "carrosserie"]),
    ("outside", &["exterieur", "exterieure", "hors"]),
    // What they are measured between.
    ("post", &["poste", "poteau", "montant"]),
    ("posts", &["postes", "poteaux", "montants"]),
    ("sill", &["umbral", "seuil"]),
    ("floor", &["piso", "plancher"]),
    ("roof", &["techo", "toit"]),
    ("between", &["entre"]),
    // Places.
    ("low", &["abajo", "bajo", "inferior", "bas", "inferieur"]),
    ("middle", &["medio", "mitad", "milieu"]),
    ("high", &["arriba", "superior", "haut", "superieur"]),
    ("left", &["izquierda", "izquierdo", "izq", "gauche"]),
    ("center", &["centro"]),
    ("right", &["derecha", "derecho", "der", "droite", "droit"]),
    ("front", &["delantero", "delante", "avant"]),
    ("rear", &["trasero", "atras", "arriere"]),
    ("first", &["primer", "primero", "primera", "premier", "premiere"]),
    ("second", &["segundo", "segunda", "deuxieme", "seconde"]),
    ("third", &["tercer", "tercero", "tercera", "troisieme"]),
    // Units.
    ("in", &["pulgada", "pulgadas", "pulg", "pouce", "pouces"]),
    ("ft", &["pie", "pies", "pied", "pieds"]),
    ("mm", &["milimetro", "milimetros", "millimetres"]),
    ("cm", &["centimetro", "centimetros", "centimetres"]),
    ("m", &["metro", "metros", "metres"]),
    // The rest of an order.
    ("unit", &["unidad", "unidades", "unite", "unites"]),
    ("number", &["numero", "nº"]),
    ("count", &["cantidad", "cant", "nombre", "nbre", "nb"]),
    ("order", &["pedido", "orden", "folio", "commande"]),
    ("truck", &["camion", "camiones", "camions"]),
    ("trailer", &["remolque", "remorque"]),
    ("vehicle", &["vehiculo", "vehicule"]),
    ("plate", &["placa", "placas", "plaque"]),
    ("prepared", &["preparado", "preparada", "prepare", "preparee"]),
    ("note", &["nota", "notas", "comentario", "comentarios", "remarque", "remarques"]),
    ("comment", &["commentaire", "commentaires"]),
    ("customer", &["cliente", "client"]),
    ("contact", &["contacto"]),
    ("phone", &["telefono", "telephone"]),
    ("mail", &["correo", "courriel"]),
    ("link", &["enlace", "vinculo", "lien"]),
];

/// Small words, only beside one of [`WORDS`]: `ancho del dintel` is that of the header, `ancho en
/// el dintel` is measured at it.
const JOINING: &[(&str, &[&str])] =
    &[("of", &["d", "de", "del", "des", "du"]), ("at", &["al", "au", "aux", "en"])];

/// Words that carry nothing here, but would mean something in an English name.
const SMALL: &[&str] = &["a", "el", "et", "l", "la", "le", "les", "los", "y"];

/// Puts English words in the place of Spanish and French ones, and leaves out the small words
/// beside them; a name without any stays as it is.
pub(super) fn in_english(words: Vec<String>) -> Vec<String> {
    let english: Vec<Option<&str>> = words.iter().map(|word| translated(word, WORDS)).collect();
    if english.iter().all(Option::is_none) {
        return words;
    }
    // Behind a name in French it is no purchase order.
    let unit = |word: String| match word.as_str() {
        "po" => "in".to_owned(),
        "pi" => "ft".to_owned(),
        _ => word,
    };
    let last = words.len().saturating_sub(1);
    words
        .into_iter()
        .zip(english)
        .enumerate()
        // `Diagonal A` is the first of two.
        .filter(|(at, (word, english))| {
            english.is_some() || *at == last || !SMALL.contains(&plain(word).as_str())
        })
        .map(|(at, (word, english))| {
            let joining = || translated(&word, JOINING).filter(|_| at < last);
            english.or_else(joining).map_or_else(|| unit(word.clone()), str::to_owned)
        })
        .collect()
}

fn translated(word: &str, by: &[(&'static str, &[&str])]) -> Option<&'static str> {
    let plain = plain(word);
    let row = by.iter().find(|(_, words)| words.contains(&plain.as_str()));
    row.map(|(english, _)| *english)
}

/// Without accents.
fn plain(word: &str) -> String {
    let letter = |letter| match letter {
        'á' | 'à' | 'â' => 'a',
        'é' | 'è' | 'ê' | 'ë' => 'e',
        'í' | 'î' | 'ï' => 'i',
        'ó' | 'ô' => 'o',
        'ú' | 'ù' | 'û' | 'ü' => 'u',
        'ñ' => 'n',
        'ç' => 'c',
        other => other,
    };
    word.chars().map(letter).collect()
}

#[cfg(test)]
mod tests {
    use super::super::{Column, Measure, What};
    use hangtrue_core::Spot;
    use hangtrue_core::say::{Language, Speaker};

    /// Whoever writes a table copies the words of the page.
    #[test]
    fn every_reading_is_found_by_its_name_in_each_language() {
        for language in Language::ALL {
            let speaker = Speaker { language, unit: hangtrue_core::Unit::Inch };
            for spot in Spot::ALL {
                let name = speaker.spot(spot);
                assert_eq!(Column::guess(name).what, What::Reading(spot), "{name}");
            }
        }
    }

    #[test]
    fn names_that_people_give_columns() {
        use Spot::*;
        let reading = What::Reading;
        for (name, what, measure) in [
            ("Ancho (pulgadas)", reading(WidthMiddle), Some(Measure::Inch)),
            ("ANCHO_MM", reading(WidthMiddle), Some(Measure::Millimetre)),
            ("Largeur po", reading(WidthMiddle), Some(Measure::Inch)),
            ("Hauteur", reading(HeightCenter), None),
            ("Altura izq.", reading(HeightLeft), None),
            ("Linteau à gauche", reading(HeaderLeft), None),
            ("Dintel", reading(HeaderCenter), None),
            ("Arco 2", reading(BowSecond), None),
            ("L’arceau", reading(BowFirst), None),
            ("Diagonale A", reading(DiagonalRising), None),
            ("Altura del dintel", What::Ignored, None),
            ("N.º de pedido", What::Id, None),
            ("Numéro de commande", What::Id, None),
            ("Camión", What::Vehicle, None),
            ("Remorque", What::Vehicle, None),
            ("Unidad", What::Unit, None),
            ("Unidad de medida", What::Unit, None),
            // Truck D, and not the unit of something.
            ("Unidad D", What::Vehicle, None),
            ("Remarques", What::Note, None),
            ("Teléfono", What::Contact, None),
            ("Lien", What::Link, None),
            ("PO", What::Id, None),
            ("Job PO", What::Id, None),
            ("Width A", reading(WidthLow), None),
            ("Ancho A", reading(WidthLow), None),
            ("Largeur pi", reading(WidthMiddle), Some(Measure::Foot)),
        ] {
            let column = Column::guess(name);
            assert_eq!((column.what, column.measure), (what, measure), "{name}");
        }
    }
}
