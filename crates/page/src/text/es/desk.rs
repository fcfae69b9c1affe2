//! The counter desk, in Spanish.

mod ask;
mod many;

use crate::text::desk::{Desk, Phone, Sent, Voice};
use hangtrue_core::Unit;

/// The Spanish desk.
pub(in crate::text) static DESK: Desk = Desk {
    heading: "Mostrador",
    measure: "Medir una abertura",
    phone: Phone {
        heading: "Por teléfono",
        unit: "Dicho en",
        inches: "pulgadas",
        millimetres: "milímetros",
        frame: "Del marco",
        as_it_is: "como está",
        as_it_will_be: "ya hecho",
        again: "(medido otra vez)",
        unread: "todavía no es una medida",
        next: "Casilla siguiente",
        keep: "Hacerlo pedido",
        built: "Los números son del marco ya hecho: mida de nuevo antes de cortar una puerta.",
        fresh: "Otra llamada",
        before: "Volver a la llamada anterior",
        ask: "Pregunte a quien llama",
        stands: "Está como se dijo",
        cannot: "Ahora no",
        it_is: |text| ["Quien llama dice ", text].concat(),
        found: "Lo que dicen los números",
        nothing_yet: "Escriba el ancho como se lo dicen; Enter pasa al número siguiente.",
        so_far: "Hasta aquí no hay nada en contra",
        after_building: "Con el marco ya hecho, el pedido dice:",
    },
    voice: Voice {
        heading: "Léalos de vuelta",
        not_yet: "Cuando estén los cuatro números, léalos de vuelta cifra por cifra.",
        heard: "Caracteres de control, como se oyeron",
        heard_hint: "seis letras y cifras, o sus palabras para deletrear; “?” por el que no se oyó",
        agrees: "Los seis caracteres concuerdan: los números se oyeron como se dijeron.",
        refused: "Se oyó mal más de lo que seis caracteres pueden distinguir. Pida otra vez los \
                  cuatro números y luego los seis caracteres.",
        number: misheard_number,
        frame: |unit, build| {
            let unit = match unit {
                Unit::Inch => "pulgadas",
                Unit::Millimetre => "milímetros",
            };
            let frame = if build { "ya hecho" } else { "como está" };
            format!(
                "Se oyó mal la unidad o el marco. Pregunte: ¿los números están en {unit} y son del \
                 marco {frame}?"
            )
        },
        character: |at, likely| {
            format!(
                "El carácter de control {at} se oyó mal; probablemente es {likely}. Los números \
                 están bien."
            )
        },
    },
    sent: Sent {
        heading: "Lo que se envió",
        paste: "Pegue lo que se envió",
        another: "Pegue otro pedido para el mismo camión",
        paste_hint: "un enlace o un correo completo, los treinta caracteres, un pedido guardado; o \
                     suelte archivos en cualquier lugar de esta página",
        open: "Abrir",
        choose: "Elegir archivos",
        look: "Escanear con la cámara",
        look_away: "Apagar la cámara",
        asked: "El navegador pregunta si esta página puede usar la cámara.",
        looking: "Sostenga el código sin moverlo, tan grande como quepa en la imagen.",
        camera_refused: "Esta página no puede usar la cámara. Permítalo en los ajustes del \
                         navegador para este sitio, o tome una foto del código y elija ese \
                         archivo.",
        camera_missing: "No hay cámara, o la está usando otro programa. Tome una foto del código y \
                         elija ese archivo.",
        no_text: "Este archivo no es un texto ni una imagen que se lea aquí, o pasa de 64 MB.",
        no_code: "En esta imagen no hay ningún código que se pueda leer. Tome la foto más de \
                  cerca, de frente y sin reflejos.",
        nothing: "Aquí no hay ningún pedido. Pegue el enlace o el mensaje completo, los treinta \
                  caracteres o un pedido guardado.",
        too_long: |most| {
            format!("Esto es más largo que los {most} bytes que se leen de un pedido.")
        },
        only: "El pedido",
        first: "Primer pedido",
        second: "Segundo pedido",
        against: |title| ["Lo dicho contra lo enviado: ", title].concat(),
        agrees: "Los cuatro números son los que se enviaron.",
        agrees_so_far: "Hasta aquí como se envió; todavía faltan números.",
        differs: "Lo dicho y lo enviado no son iguales. Pregunte a quien llama antes de cortar \
                  nada.",
        both: "Los dos pedidos, medida por medida",
        both_differ: "Los dos pedidos no son iguales.",
        both_agree: "Ninguna medida se aparta.",
        table: "Comparación, primero lo que no es igual",
        what: "Número",
        phoned: "Dicho",
        was_sent: "Enviado",
        difference: "Diferencia",
        likely: "Lo que pudo pasar",
        none: "ninguna",
        same: "igual",
        close: "tan cerca como dos medidas hechas con cuidado",
        one_only: "solo uno la tiene",
        unexplained: "ningún error común hace de una la otra",
        corrected: |at| {
            let at: Vec<String> = at.iter().map(usize::to_string).collect();
            format!(
                "Se oyeron mal algunos caracteres y se corrigieron (número {}). Lea los números de \
                 vuelta a quien llama antes de tomar este pedido.",
                at.join(", ")
            )
        },
        characters: "Caracteres de control:",
        close_order: "Guardar",
    },
    many: many::MANY,
    newer: "Hay una versión más nueva de esta página. Al usarla se vacía este mostrador: termine \
            antes lo que hay en él.",
    ask: ask::say,
    slip: ask::slip_clause,
};

fn misheard_number(name: &str, typed: Option<&str>, likely: &[String]) -> String {
    let likely = likely.join(" o ");
    match typed {
        Some(typed) => format!(
            "{name}: probablemente se oyó mal; se escribió {typed} y probablemente era {likely}. \
             Pregunte a quien llama."
        ),
        None => format!("{name}: probablemente era {likely}. Pregunte a quien llama."),
    }
}
