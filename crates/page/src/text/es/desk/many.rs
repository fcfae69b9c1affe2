//! Many orders at once, in Spanish.

use crate::desk::many::Counts;
use crate::text::desk::many::Many;
use crate::text::es::kept::KEPT;
use hangtrue_core::finding::RuleCode;

pub(super) const MANY: Many = Many {
    screens: "Qué se revisa",
    one: "Un pedido",
    many: "Muchos a la vez",
    paste: "Pegue la lista",
    paste_hint: "una tabla (CSV), líneas JSON o un enlace por línea; o suelte el archivo en \
                 cualquier lugar de esta página",
    open: "Leer la lista",
    nothing: "Aquí no hay ninguna lista de pedidos. Una lista es una tabla con un renglón de \
              nombres, líneas JSON o un enlace por línea.",
    pasted: "Lista pegada",
    columns: "¿Es cada columna lo que dice? Corrija la que no lo sea y luego revise los pedidos.",
    column: "Columna",
    holds: "Contiene",
    measured: "En",
    as_the_rest: "no lo dice",
    row: |number| format!("Renglón {number}"),
    others: [
        "no se usa",
        "número o nombre del pedido",
        "unidad del renglón",
        "marco ya hecho (yes o no)",
        "camión",
        "nota",
        "contacto",
        "enlace con todo el pedido",
    ],
    bare: "Si nada más lo dice, los números van en",
    missing: |names| {
        format!("Ninguna columna contiene: {}. Así ningún pedido está completo.", names.join(", "))
    },
    check: "Revisar los pedidos",
    another: "Otra lista",
    change: "Cambiar las columnas",
    progress: "Revisando",
    checked: |count, percent| match count {
        1 => format!("1 pedido revisado, {percent} % de la lista"),
        _ => format!("{count} pedidos revisados, {percent} % de la lista"),
    },
    stop: "Parar la revisión",
    stopped: |percent| format!("Se paró en {percent} % de la lista. Abajo está lo revisado."),
    resume: "Seguir revisando",
    summary,
    so_many: |count| match count {
        1 => "Se muestra 1 pedido".to_owned(),
        _ => format!("Se muestran {count} pedidos"),
    },
    verdicts: "Resultado",
    all: "Todos",
    unread: "No es pedido",
    findings: "Lo que se encontró",
    find: "Pedido o camión",
    none: "Ningún pedido de la lista es así. Oprima Todos, o vacíe la casilla.",
    table: "Pedidos revisados",
    heads: ["Línea", "Pedido", "Resultado"],
    numbers: KEPT.numbers,
    first_finding: "Lo primero que se encontró",
    line: |number| format!("línea {number}"),
    rows: |first, last, all| format!("{first} a {last} de {all}"),
    previous: "Renglones anteriores",
    next: "Renglones siguientes",
    save: ["Guardar como CSV", "Guardar como líneas JSON"],
    writing: "Escribiendo el archivo",
    rule,
};

fn summary(counts: &Counts) -> String {
    let [stop, unread, recheck, clear] = counts.verdicts;
    let mut text = match counts.all() {
        1 => "1 pedido revisado: ".to_owned(),
        all => format!("{all} pedidos revisados: "),
    };
    text += &format!("{stop} alto, {recheck} revisar, {clear} sin reparos");
    match unread {
        0 => {}
        1 => text += "; 1 no es pedido",
        _ => text += &format!("; {unread} no son pedidos"),
    }
    text + "."
}

fn rule(code: RuleCode) -> &'static str {
    match code {
        "unreadable" => "no es una medida",
        "missing" => "falta un número",
        "closing" => "falta la medida de cierre",
        "not-positive" => "cero o menos",
        "exchanged-width-height" => "ancho y alto cambiados",
        "exchanged-header-bow" => "dintel y arco cambiados",
        "too-wide" => "demasiado ancho",
        "too-tall" => "demasiado alto",
        "no-such-opening" => "no hay tal abertura",
        "bow-fills-header" => "el arco llena el dintel",
        "spread" => "lugares muy distintos",
        "repeats" => "repeticiones que no concuerdan",
        "header-to-bow" => "dintel medido hasta el arco",
        "room-under-bow" => "poco espacio bajo el arco",
        "unusual-opening" => "abertura poco común",
        "unusual-bow" => "arco poco común",
        "shallow-header" => "dintel por bajar",
        "narrow-post" => "poste por ensanchar",
        "wide-post" => "poste más ancho de lo que cabe",
        "slip" => "error probable",
        "answer" => "pregunta del distribuidor",
        _ => "",
    }
}
