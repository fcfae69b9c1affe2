//! Spanish, as spoken in Mexico and the United States.
//!
//! The words of the trade are those of the domain's Spanish catalogue, which lists them. Inside
//! a picture inches have the double prime: `pulg` would not find room.

use super::{Together, Words};
use hangtrue_core::{Dimension, Spot};

pub(super) static WORDS: Words = Words {
    place,
    spot,
    drawn: |length| length.replace("\u{a0}pulg", "″"),
    reads: |spot, value| [spot, ": ", value, "."].concat(),
    unread: |spot| [spot, ": aún sin medir."].concat(),
    off_scale: "no cabe",
    not_to_scale: "No está a escala: una medida se sale por mucho.",
    not_to_scale_short: "no a escala",
    assumed: "Lo punteado aún no tiene medida y se dibuja como suele ser.",
    elevation_title: "Parte trasera de la caja, vista desde atrás",
    elevation: "La abertura entre los dos postes de la puerta, el umbral abajo, el dintel arriba. \
                La cinta va donde está la línea.",
    section_title: "Dintel y techo, cortados de atrás hacia adelante, vistos de lado",
    section: "El dintel está a la izquierda, el interior de la caja a la derecha. La lámina del \
              techo pasa por encima de los dos; los arcos del techo cuelgan de ella y la puerta \
              abierta queda debajo de los arcos. La abertura está acortada con un corte.",
    tape_title: "La cinta en esta medida",
    tape: |value| ["Una flecha señala ", value, " en la cinta."].concat(),
    foot: ["pie", "pies"],
    metre: "m",
    roof_skin: "lámina del techo",
    header: "dintel",
    bow: "arco",
    sill: "umbral",
    open_door: "puerta abierta",
    rear: "atrás",
    inside: "adentro",
};

pub(super) static TOGETHER: Together = Together {
    dimension,
    dimension_short,
    order_title: "La abertura con los cuatro números del pedido",
    order: "A la izquierda, la parte trasera de la caja, vista desde atrás, con ancho y altura. A \
            la derecha, el dintel y un arco del techo en corte, con sus profundidades.",
    residuals_title: "Cómo cuadran las medidas",
    residuals: "El marco como lo dan todas las medidas juntas, con los desvíos aumentados; \
                punteado, un marco a escuadra. Una cinta que no termina en el marco no cuadra.",
    leans_left: |value| ["Arriba se inclina a la izquierda ", value, "."].concat(),
    leans_right: |value| ["Arriba se inclina a la derecha ", value, "."].concat(),
    too_much: |spot, value| [spot, ": mide ", value, " más de lo que dicen las otras."].concat(),
    too_little: |spot, value| {
        [spot, ": mide ", value, " menos de lo que dicen las otras."].concat()
    },
    all_fit: "Todas las medidas cuadran.",
    exaggerated: |times| ["desvíos aumentados hasta ", times, " veces"].concat(),
};

fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "abajo",
        Spot::WidthMiddle => "medio",
        Spot::WidthHigh => "arriba",
        Spot::HeightLeft | Spot::HeaderLeft => "izq.",
        Spot::HeightCenter | Spot::HeaderCenter => "centro",
        Spot::HeightRight | Spot::HeaderRight => "der.",
        Spot::BowFirst => "1.er arco",
        Spot::BowSecond => "2.º",
        Spot::BowThird => "3.º",
        Spot::DiagonalRising => "sube",
        Spot::DiagonalFalling => "baja",
        Spot::LoopSillToRoof => "hasta el techo",
        Spot::LoopSillToBow => "hasta el arco",
        Spot::PostLeft => "izquierdo",
        Spot::PostRight => "derecho",
    }
}

fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "Ancho de poste a poste",
        Dimension::Height => "Altura del umbral al dintel",
        Dimension::Header => "Profundidad del dintel",
        Dimension::Bow => "Profundidad del arco del techo",
    }
}

fn dimension_short(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "ancho",
        Dimension::Height => "altura",
        Dimension::Header => "dintel",
        Dimension::Bow => "arco",
    }
}

fn spot(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "Ancho abajo, cerca del umbral",
        Spot::WidthMiddle => "Ancho a media altura",
        Spot::WidthHigh => "Ancho arriba, cerca del dintel",
        Spot::HeightLeft => "Altura junto al poste izquierdo",
        Spot::HeightCenter => "Altura al centro",
        Spot::HeightRight => "Altura junto al poste derecho",
        Spot::HeaderLeft => "Profundidad del dintel a la izquierda",
        Spot::HeaderCenter => "Profundidad del dintel al centro",
        Spot::HeaderRight => "Profundidad del dintel a la derecha",
        Spot::BowFirst => "Profundidad del primer arco del techo, adentro de la puerta",
        Spot::BowSecond => "Profundidad del segundo arco del techo",
        Spot::BowThird => "Profundidad del tercer arco del techo",
        Spot::DiagonalRising => "Diagonal de abajo a la izquierda a arriba a la derecha",
        Spot::DiagonalFalling => "Diagonal de arriba a la izquierda a abajo a la derecha",
        Spot::LoopSillToRoof => "Del umbral derecho hacia arriba hasta la lámina del techo",
        Spot::LoopSillToBow => {
            "Del umbral derecho hacia arriba hasta la parte de abajo del primer arco"
        }
        Spot::PostLeft => "Ancho del poste izquierdo",
        Spot::PostRight => "Ancho del poste derecho",
    }
}
