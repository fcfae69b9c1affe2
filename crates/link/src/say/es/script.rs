//! The script for the telephone, in Spanish.

use crate::say::script::Script;

pub(crate) static SCRIPT: Script = Script {
    inches: "Un pedido de puerta trasera, en pulgadas. Digo los números cifra por cifra.",
    millimetres: "Un pedido de puerta trasera, en milímetros. Digo los números cifra por cifra.",
    build: "Los números son del marco ya preparado.",
    names: [
        "Ancho de poste a poste",
        "Altura del umbral al dintel",
        "Profundidad del dintel",
        "Profundidad del arco del techo",
    ],
    colon: ": ",
    check: "Los seis caracteres de control",
    and: "y",
    parts: [
        ("dieciseisavo", "dieciseisavos"),
        ("octavo", "octavos"),
        ("cuarto", "cuartos"),
        ("medio", "medios"),
    ],
    counts: [
        "cero", "un", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez",
        "once", "doce", "trece", "catorce", "quince",
    ],
    figures: ["cero", "uno", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve"],
};
