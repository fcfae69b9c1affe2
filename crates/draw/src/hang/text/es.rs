//! Spanish, as spoken in Mexico and the United States.

use super::Words;
use hangtrue_core::hang::overhead::Against;

pub(super) static WORDS: Words = Words {
    overhead_title: "La puerta en su riel, vista de lado",
    overhead: "El dintel está a la izquierda, el interior de la caja a la derecha, el techo \
               arriba. La línea de trazo y punto es el espacio que la puerta barre al abrir.",
    lifted: |value| ["La puerta está levantada ", value, "."].concat(),
    left: |against, value| [name(against), ": quedan ", value, "."].concat(),
    through: |against, value| [name(against), ": la puerta choca por ", value, "."].concat(),
    roof: "lámina del techo",
    rear: "atrás",
    inside: "adentro",
    pair_title: "Los dos rieles verticales, vistos desde atrás",
    pair: "Cada riel con sus tres fijaciones. Punteado: donde va a quedar.",
    shim: |side, level, value| [side, ", ", level, ": calza de ", value, "."].concat(),
    no_shim: "No hace falta ninguna calza.",
    sides: ["izquierda", "derecha"],
    levels: ["abajo", "en medio", "arriba"],
    exaggerated: |times| ["desvíos aumentados ", times, " veces"].concat(),
    balance_title: "El balance, de cerrada a abierta",
    balance: "Lo que cuelga de los cables, lo que levanta el resorte y el jalón que queda para la \
              mano.",
    most: |pull, push| {
        let up = [" y el resorte jala hacia arriba con ", push, " más de lo que ahí cuelga."];
        ["A lo más la mano levanta ", pull, &up.concat()].concat()
    },
    hangs: "cuelga",
    lifts: "resorte",
    hand: "mano",
    closed: "cerrada",
    open: "abierta",
};

fn name(against: Against) -> &'static str {
    match against {
        Against::Header => "Dintel",
        Against::Roof => "Lámina del techo",
        Against::Bow => "Arco",
    }
}
