//! The trade's names, in Spanish.

use crate::spot::{Dimension, Spot};

pub(crate) const fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "ancho de poste a poste",
        Dimension::Height => "altura del umbral al dintel",
        Dimension::Header => "profundidad del dintel",
        Dimension::Bow => "profundidad del arco del techo",
    }
}

/// With its article: `el ancho de poste a poste`.
pub(crate) fn the_dimension(dimension: Dimension) -> String {
    let article = if matches!(dimension, Dimension::Width) { "el " } else { "la " };
    [article, self::dimension(dimension)].concat()
}

/// Behind `de`: `del ancho de poste a poste`.
pub(crate) fn of_the_dimension(dimension: Dimension) -> String {
    let article = if matches!(dimension, Dimension::Width) { "del " } else { "de la " };
    [article, self::dimension(dimension)].concat()
}

pub(crate) const fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "abajo",
        Spot::WidthMiddle => "en medio",
        Spot::WidthHigh => "arriba",
        Spot::HeightLeft | Spot::HeaderLeft => "izquierda",
        Spot::HeightCenter | Spot::HeaderCenter => "centro",
        Spot::HeightRight | Spot::HeaderRight => "derecha",
        Spot::BowFirst => "primer arco",
        Spot::BowSecond => "segundo arco",
        Spot::BowThird => "tercer arco",
        Spot::DiagonalRising => "de abajo a la izquierda a arriba a la derecha",
        Spot::DiagonalFalling => "de arriba a la izquierda a abajo a la derecha",
        Spot::LoopSillToRoof => "del umbral a la lámina del techo",
        Spot::LoopSillToBow => "del umbral al arco",
        Spot::PostLeft => "poste izquierdo",
        Spot::PostRight => "poste derecho",
    }
}

/// To stand within a sentence.
pub(crate) const fn spot(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "ancho de poste a poste, abajo",
        Spot::WidthMiddle => "ancho de poste a poste, en medio",
        Spot::WidthHigh => "ancho de poste a poste, arriba",
        Spot::HeightLeft => "altura del umbral al dintel, a la izquierda",
        Spot::HeightCenter => "altura del umbral al dintel, al centro",
        Spot::HeightRight => "altura del umbral al dintel, a la derecha",
        Spot::HeaderLeft => "profundidad del dintel, a la izquierda",
        Spot::HeaderCenter => "profundidad del dintel, al centro",
        Spot::HeaderRight => "profundidad del dintel, a la derecha",
        Spot::BowFirst => "profundidad del arco del techo, primer arco",
        Spot::BowSecond => "profundidad del arco del techo, segundo arco",
        Spot::BowThird => "profundidad del arco del techo, tercer arco",
        Spot::DiagonalRising => "diagonal de abajo a la izquierda a arriba a la derecha",
        Spot::DiagonalFalling => "diagonal de arriba a la izquierda a abajo a la derecha",
        Spot::LoopSillToRoof => "distancia del umbral a la lámina del techo",
        Spot::LoopSillToBow => "distancia del umbral a la parte de abajo del arco",
        Spot::PostLeft => "ancho del poste izquierdo",
        Spot::PostRight => "ancho del poste derecho",
    }
}

/// With its article: `la profundidad del dintel, al centro`.
pub(crate) fn the_spot(spot: Spot) -> String {
    let masculine = matches!(
        spot,
        Spot::WidthLow | Spot::WidthMiddle | Spot::WidthHigh | Spot::PostLeft | Spot::PostRight
    );
    [if masculine { "el " } else { "la " }, self::spot(spot)].concat()
}
