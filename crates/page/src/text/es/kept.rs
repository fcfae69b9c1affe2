//! Spanish: what is kept on the device.

use crate::draft::Unopened;
use crate::event::Trouble;
use crate::text::Kept;
use hangtrue_core::short::digits;

pub(in crate::text) const KEPT: Kept = Kept {
    newer: "Hay una versión más nueva de esta página. Lo que ya escribió se conserva.",
    take_over: "Usar la versión más nueva",
    trouble,
    noted: "Entendido",
    take_theirs: "Mostrarla como está allá",
    list: |count| match count {
        1 => "1 medición en este aparato".to_owned(),
        count => [&digits(count as u64), " mediciones en este aparato"].concat(),
    },
    heading: "Mediciones en este aparato",
    lede: "El navegador puede borrar lo que guarda. El enlace del pedido es el registro que dura: \
           envíelo, aunque sea a usted mismo.",
    none: "No hay ninguna.",
    nameless: "Sin nombre de camión",
    numbers: ["Ancho", "Alto", "Dintel", "Arco"],
    unopened: |why| match why {
        Unopened::Newer => {
            "La escribió una versión más nueva de esta página. Recargue la página para abrirla."
        }
        Unopened::Damaged => "Está dañada y no se puede abrir.",
    },
    open: "Abrir",
    delete: "Borrar",
    indeed: "¿Borrar esta medición del aparato? No se puede recuperar.",
    delete_indeed: "Borrarla",
    spare: "Conservarla",
    another: "Medir otra abertura",
};

fn trouble(trouble: Trouble) -> &'static str {
    match trouble {
        Trouble::Full => {
            "En este aparato ya no hay espacio para guardar la medición. Siga, y envíe el enlace \
             del pedido antes de salir de esta página; o borre mediciones ya terminadas."
        }
        Trouble::Blocked => {
            "Este navegador no deja que la página guarde la medición. Siga, y envíe el enlace del \
             pedido antes de salir de esta página."
        }
        Trouble::Emptied => {
            "El navegador había borrado lo que guardaba de esta medición. Desde ahora se guarda \
             otra vez; el enlace del pedido es el registro que dura."
        }
        Trouble::Newer => {
            "La medición en este aparato la escribió una versión más nueva de esta página y se \
             deja como está. Recargue la página para abrirla; lo que escriba ahora es otra medición."
        }
        Trouble::Changed => "Esta medición se cambió en otra pestaña.",
        Trouble::Split => {
            "Esta medición también se cambió en otra pestaña. Se conservan las dos: la que ve aquí \
             es ahora una medición aparte."
        }
        Trouble::Gone => {
            "Esta medición se borró en otra pestaña. Si sigue escribiendo, se guarda otra vez."
        }
    }
}
