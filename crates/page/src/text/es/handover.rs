//! Handing over, in Spanish.

use crate::text::handover::{Handover, Paper, Picture, Replace, Voice};

pub(super) const HANDOVER: Handover = Handover {
    ways: "Entréguelo",
    mail: "Correo",
    sms: "Mensaje de texto",
    hang: "¿Ya llegó la puerta? Instálela con estas medidas",
    copy: "Copiar el pedido",
    copy_link: "Copiar solo el enlace",
    by_hand: "Cópielo a mano: manténgalo presionado, o márquelo y oprima Ctrl+C.",
    save_file: "Guardar en un archivo",
    save: ["Guardar en un archivo", "Guardar para hoja de cálculo", "Guardar como texto"],
    scan: "Mostrar un código para escanear",
    say: "Leerlo por teléfono",
    picture: Picture {
        heading: "Escanee este código",
        lede: "La cámara del otro teléfono abre el pedido completo, sin mensaje de por medio.",
        title: "Código QR del enlace de este pedido",
        too_long: "Este pedido es muy largo para un código. Mande el enlace, o acorte la nota.",
    },
    voice: Voice {
        heading: "Lea esto en voz alta",
        lede: "Renglón por renglón, y espere a que anoten cada uno.",
        check: "Caracteres de control",
        check_hint: "Le dicen a quien anota qué número se oyó mal, si alguno se oyó mal.",
        small: "O los números en treinta caracteres",
        small_hint: "Lea o mande estos seis grupos en su lugar. Llevan los cuatro números, los \
                     postes, la medida del umbral al arco, una diagonal y la fecha; no las otras \
                     medidas, ni la nota, ni su nombre.",
        no_small: "Este pedido no cabe en treinta caracteres. Lea los renglones de arriba, o mande \
                   el enlace.",
    },
    replace: Replace {
        question: "¿Reemplazar lo que escribió en este aparato?",
        lost: |line| format!("Su propio pedido, {line}, se borraría de este aparato."),
        yes: "Reemplazarlo",
        no: "Conservar el mío",
    },
};

pub(super) const PAPER: Paper = Paper {
    contact: |contact| format!("Cómo localizar a quien lo escribió: {contact}"),
    columns: ["Dimensión", "Pedido", "Medido", "Error sin ver", "Medido de nuevo"],
    unseen_below: |least| format!("de menos de {least}"),
    unseen_any: "de cualquier tamaño",
    unseen: "Un error tan chico como dice la tabla podría no notarse; de cualquier tamaño: nada \
             comprueba ese número.",
    as_found: |found| format!("como está ahora {found}"),
    rows: ["Diagonales", "Desde el umbral", "Postes"],
    more_readings: |count| format!("y {count} más"),
    check: "Caracteres de control",
    thirty: "En treinta caracteres",
    scan: "Escanee el código para ver el pedido completo.",
    too_long: "Muy largo para un código: pida el enlace a quien lo envió.",
    findings: "Lo que se encontró",
    more_findings: |count| format!("{count} más: están en el enlace."),
    confirmed: "Confirmado por quien lo escribió.",
    build: "Primero hay que hacer",
    build_by: [
        |by| format!("Bajar el dintel {by}"),
        |by| format!("Engrosar el poste izquierdo {by}"),
        |by| format!("Engrosar el poste derecho {by}"),
    ],
    build_then: "Luego mida de nuevo. Cortar y soldar en una caja es trabajo de personal \
                 autorizado; los reglamentos locales y las reglas del fabricante van primero.",
    options: "Opciones",
    note: "Nota",
    cut: "(recortado: el enlace lo tiene todo)",
    profile: |name, revision| format!("Reglas: {name}, revisión {revision}."),
    built_in: "Reglas: las que trae la página.",
    cautions: "Ponga el freno, calce las ruedas, asegure la compuerta. Nunca trabaje debajo de una \
               puerta que no esté asegurada abierta. Los resortes y cables están en tensión aunque \
               la puerta esté abierta y pueden matar: solo para personal capacitado.",
    signature: ["Medido de nuevo por", "Firma", "Fecha"],
};
