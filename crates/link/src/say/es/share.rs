//! An order as text, in Spanish.

use crate::say::share::Lines;
use hangtrue_core::Dimension;

pub(crate) static LINES: Lines = Lines {
    short: |dimension| match dimension {
        Dimension::Width => "ancho",
        Dimension::Height => "alto",
        Dimension::Header => "dintel",
        Dimension::Bow => "arco",
    },
    once_built: " CON EL MARCO YA HECHO; hoy mide ",
    measure_again: ". Mida de nuevo entonces.",
    heading: "Pedido de puerta trasera",
    colon: ": ",
    about: ["Vehículo", "Contacto", "Nota"],
    date: "Fecha",
    not_read: "sin medir",
    built: |ordered, found| {
        [ordered, " con el marco ya hecho (como está ahora: ", found, ")"].concat()
    },
    build: "Primero haga el marco y luego mida otra vez:",
    build_by: ["bajar el dintel", "engrosar el poste izquierdo", "engrosar el poste derecho"],
    verdict: [
        "No hay nada en contra de este pedido.",
        "Por revisar antes de cortar:",
        "Esto no puede ser:",
    ],
    readings: "Medidas, como se escribieron:",
    replaced: " (reemplazada por otra posterior)",
};
