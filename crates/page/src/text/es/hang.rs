//! Hanging the door, in Spanish.
//!
//! Beside the words of the domain's catalogue (common practice, no source): set screw,
//! prisionero; winding cone and bar, cono tensor, barra tensora; to wind, tensar; drum, tambor;
//! shaft, flecha; bearing, balero; roller, rodillo; washer, rondana; shim, calza; clamp, prensa;
//! latch, cerrojo; lockout, bloqueo y etiquetado; roadside, el lado de la calle.

mod care;
mod names;
mod spring;

use crate::text::hang::{
    Delivery, FitText, Hang, InspectionText, Order, Overhead, RecordText, Tracks,
};
use hangtrue_core::say::Language;

/// The Spanish page.
pub(in crate::text) static HANG: Hang = Hang {
    language: Language::Spanish,
    steps: [
        "Pedido",
        "Entrega",
        "Rieles",
        "Espacio arriba",
        "Resorte",
        "Cerrojo y sellos",
        "Inspección",
        "Cuidado",
        "Registro",
    ],
    list: "Todos los pasos",
    next: "Continuar",
    back: "Atrás",
    restart: "Otra puerta",
    unread: [
        "Todavía no es una longitud: pruebe 92 1/4 o 2343 mm.",
        "Todavía no es un peso: pruebe 132 lb o 60 kg.",
        "Todavía no es un número: pruebe 12 o 12 1/4.",
        "Todavía no es una fecha: escríbala como 2026-11-25.",
    ],
    beyond: |least, most| {
        format!("Revise: no se toma nada por debajo de {least} ni por encima de {most}.")
    },
    yes_no: ["en orden", "no está en orden"],
    no_order: "Primero abra un pedido: aquí todo se calcula con sus números.",
    order: ORDER,
    delivery: DELIVERY,
    tracks: TRACKS,
    overhead: OVERHEAD,
    spring: spring::SPRING,
    balance: spring::BALANCE,
    fit: FIT,
    inspection: INSPECTION,
    care: care::CARE,
    record: RECORD,
};

const ORDER: Order = Order {
    heading: "Cuelgue la puerta con su pedido",
    lede: "Los números con que se pidió la puerta son los números con que se cuelga. Abra el \
           pedido, o el registro de una puerta que ya está colgada.",
    paste: "Enlace del pedido o del registro",
    paste_hint: "Si quiere, pegue el mensaje completo",
    open: "Abrirlo",
    type_them: "¿No tiene enlace? Escriba los cuatro números del pedido.",
    unit: "Medido en",
    units: ["pulgadas", "milímetros"],
    numbers: "La puerta se pidió para",
    caution_heading: "Antes de empezar",
    cautions: [
        "Trabaje en piso parejo, lejos del tránsito, con las ruedas calzadas y sin la llave puesta.",
        "La puerta se levanta entre dos personas. Guantes, lentes, escalera firme.",
        "Un resorte tensado puede matar. Solo personal capacitado lo tensa o lo afloja.",
        "Los reglamentos locales, el bloqueo y etiquetado, las instrucciones del fabricante y el \
         personal autorizado van primero. Cortar, soldar y taladrar un vehículo es trabajo de \
         personal autorizado.",
    ],
    measure: "Medir una abertura",
    aside: "Otras puertas en este aparato",
    take_up: |door| format!("Seguir con {door}"),
    drop_aside: "Desechar",
};

const DELIVERY: Delivery = Delivery {
    heading: "Entrega",
    lede: "Marque lo que está y viene sano. Luego mida otra vez la abertura: lo que se le hizo \
           después del pedido se nota ahora, no cuando ya están los paneles.",
    caution: "Las mitades de una puerta pesan y tienden a doblarse. Dos personas, guantes, y nadie \
              debajo de la carga. El resorte tiene que venir sin tensar: si viene tensado, déjelo \
              como está y llame al proveedor.",
    parts: "Piezas",
    part: names::part,
    option: "si se pidió",
    ordered: "Según el pedido",
    ticked: |done, of| format!("{done} de {of} están aquí"),
    tools_heading: "Herramienta",
    tools: [
        "Dos cintas que midan lo mismo, nivel, escuadra",
        "Calzas: 1/16, 1/8 y 1/4 pulg",
        "Taladro, brocas, punzón de centros",
        "Llaves y dados, torquímetro",
        "Dos barras tensoras que entren bien en el cono: de la medida que dice el fabricante, y \
         nada más",
        "Pinzas de presión, dos prensas para el riel",
        "Báscula de equipaje",
        "Escalera, guantes, lentes",
    ],
    again: "Mida otra vez la abertura",
    again_lede: "En los mismos lugares, en el marco como quedó hecho.",
    spare: |by| format!("entra, sobran {by}"),
    short: |by| format!("queda justo por {by}"),
    far: |by| format!("{by} más que lo pedido"),
    fits: "La abertura admite la puerta que se pidió.",
    stop: "Alto: la puerta no entra en esta abertura. Llame al proveedor antes de cortar o montar \
           nada.",
    other: "Revise: esto es mucho más grande que lo que dice el pedido. ¿Es la misma abertura?",
};

const TRACKS: Tracks = Tracks {
    heading: "Rieles paralelos y a escuadra",
    lede: "Fije los rieles verticales sin apretar, mida con la cinta entre ellos y calce como dice \
           la lista. Luego apriete y mida otra vez.",
    caution: "Escalera firme, tres puntos de apoyo, nadie abajo. Antes de taladrar un poste, \
              averigüe qué pasa por detrás.",
    vertical: "Rieles verticales",
    vertical_how: "Entre las caras interiores de los rieles, y las dos diagonales entre las mismas \
                   marcas de abajo y de arriba.",
    upper: "Rieles horizontales",
    upper_how: "Entre los rieles: al frente de la caja, a la mitad y en la puerta.",
    place: names::place,
    holds: "Estos rieles están paralelos y a escuadra. No hay que mover nada.",
    out: "Hay que mover estos rieles.",
    stands: |spacing, diagonals| match diagonals {
        Some(by) => {
            format!("La separación varía {spacing}; las diagonales difieren {by}.")
        }
        None => format!("La separación varía {spacing}."),
    },
    no_diagonals: "Mida también las dos diagonales: sin ellas nadie sabe si el par está a escuadra.",
    contradict: "Estas medidas se contradicen. Antes de calzar, mida otra vez las diagonales y la \
                 altura entre las marcas.",
    shims: "Calzas detrás de las fijaciones",
    shim: |side, level, by| {
        let side = if side == 0 { "Izquierda" } else { "Derecha" };
        let level = ["abajo", "en medio", "arriba"].get(level).copied().unwrap_or("");
        format!("{side}, {level}: {by}")
    },
    result: |spacing, diagonals| match diagonals {
        Some(by) => {
            format!("Entonces la separación varía {spacing} y las diagonales difieren {by}.")
        }
        None => format!("Entonces la separación varía {spacing}."),
    },
    result_holds: [
        "Queda dentro del límite de 1/8 pulg.",
        "Queda fuera del límite de 1/8 pulg: mida de nuevo, y corrija los postes antes de calzar.",
    ],
    target: |spacing| format!("Los rieles van a quedar a {spacing} uno del otro."),
    station: names::station,
    inward: |left, right| format!("izquierda hacia adentro {left}, derecha hacia adentro {right}"),
    outward: |left, right| format!("izquierda hacia afuera {left}, derecha hacia afuera {right}"),
    as_is: "como debe ser",
    square_how: "A escuadra con el vertical: ponga una barra recta a lo largo de la parte recta \
                 del riel vertical y otra a lo largo del horizontal, y busque el punto donde los \
                 dos se encontrarían, por fuera de la curva. Desde ese punto marque 36 pulg hacia \
                 abajo en el vertical y 48 pulg a lo largo del horizontal. Entre las marcas son 60 \
                 pulg.",
    on_side: |side, found| format!("{}: {found}", if side == 0 { "Izquierda" } else { "Derecha" }),
    off: |degrees, up| {
        let way = if up { "arriba" } else { "abajo" };
        format!("{degrees}° fuera: apunta demasiado hacia {way}.")
    },
    off_far: |degrees| {
        format!(
            "{degrees}° fuera es más de lo que se desvía un riel (práctica común, sin fuente publicada). No \
             doble nada: revise desde dónde midió las dos marcas y mida otra vez entre ellas."
        )
    },
    square: "A escuadra con el vertical.",
    no_triangle: "Ningún triángulo tiene esos lados. Mida otra vez.",
    fastenings: "Al menos cuatro fijaciones por lado, ninguna floja.",
    source: "Límite: 1/8 pulg en separación y diagonales. Práctica común, sin fuente publicada.",
};

const OVERHEAD: Overhead = Overhead {
    heading: "Espacio arriba",
    lede: "¿La puerta pasa bajo el techo en su recorrido, y dónde queda más justa? Mueva el \
           control.",
    caution: "Nunca se pare ni meta las manos debajo de una puerta que no esté apuntalada o \
              asegurada abierta. Aleje los dedos de rodillos y bisagras: cierran como tijeras.",
    slider: "Abrir la puerta",
    ends: ["cerrada", "abierta"],
    fit: names::fit,
    left: |against, left, lift| {
        format!("{}: quedan {left} con la puerta levantada {lift}", names::against(against))
    },
    strikes: |against, by, lift| {
        format!("{}: choca por {by} con la puerta levantada {lift}", names::against(against))
    },
    reach: |by| format!("La puerta abierta entra {by} en la caja."),
    bows: "Dónde están los arcos del techo",
    bows_how: "Mida a lo largo del techo con la puerta cerrada. Los arcos que quedan fuera del \
               recorrido de la puerta no la detienen.",
    bow: [
        "De la cara interior del dintel a la orilla cercana del primer arco",
        "De esa orilla a la misma orilla del arco siguiente",
        "Ancho de un arco, a lo largo de la caja",
    ],
    bows_anywhere: "Se supone que puede haber arcos en cualquier punto del recorrido: la respuesta \
                    prudente. Diga abajo dónde están, y solo esos cuentan.",
    bows_from: |first| {
        format!(
            "Se supone que puede haber arcos en cualquier punto a partir de {first} detrás del \
             dintel: la respuesta prudente. Con la separación también, solo cuentan donde están."
        )
    },
    bows_every: |first, spacing| {
        format!(
            "Arcos donde usted los puso: el primero a {first} del dintel, luego cada {spacing}."
        )
    },
    figures: "La puerta y su riel",
    assumed: "Las medidas marcadas como supuestas son práctica común sin fuente publicada. Tómelas \
              de la hoja del fabricante, o mida.",
    figure: names::figure,
    slope: "Caída del riel superior hacia la puerta",
    degrees: "grados",
    assumed_as: |by| format!("supuesto: {by}"),
    no_door: "Ninguna puerta se hace así. Vea la altura del panel y la de la abertura.",
    how: "Paneles rígidos, cada rodillo en el riel, abierta por pasos hasta que el espacio barrido \
          cambie menos de 0.1 mm.",
};

const FIT: FitText = FitText {
    heading: "Cerrojo, juego lateral, sellos",
    caution: "Apuntale o asegure la puerta antes de meter las manos entre panel y poste. Ahora \
              nadie toca el resorte.",
    latch: "Placa del cerrojo",
    half: |half| {
        format!("Céntrela a {half} de cada poste. Marque desde la izquierda y desde la derecha.")
    },
    centered: "Los dos postes dan el mismo centro.",
    move_by: |by, right| {
        let side = if right { "derecha" } else { "izquierda" };
        format!(
            "Las dos medidas no concuerdan: mueva la placa {by} a la {side}, o mida otra vez el \
             ancho."
        )
    },
    shift: "Juego lateral",
    shift_how: "Empuje la puerta cerrada a tope a la izquierda, márquela, empújela a tope a la \
                derecha: ese es el juego completo. Lo correcto es más o menos 3/8 pulg (práctica \
                común, sin fuente publicada).",
    washer: "Espesor de una rondana",
    washers: |left, right, result| {
        let side = |count: i64| match count {
            0 => "ninguna".to_owned(),
            n if n > 0 => format!("ponga {n}"),
            n => format!("quite {}", -n),
        };
        format!(
            "En cada rodillo: izquierda, {}; derecha, {}. Entonces el juego es de {result}.",
            side(left),
            side(right)
        )
    },
    no_washers: "Sin rondanas: tiene el juego que debe.",
    seals: "Sellos por cortar",
    seals_how: "Un sello nunca se estira: córtelo más largo y métalo a presión.",
    seal: ["Lado izquierdo", "Lado derecho", "Dintel"],
    source: "Un uno por ciento más largo, al siguiente 1/4 pulg. Práctica común, sin fuente \
             publicada.",
};

const INSPECTION: InspectionText = InspectionText {
    heading: "Última inspección",
    lede: "Mida donde haya algo que medir. Lo que queda en blanco sigue pendiente.",
    caution: "Antes de mover la puerta: nadie debajo, manos fuera de rieles, bisagras y cables. Si \
              algo raspa, se atora o queda chueco, pare y apuntálela.",
    check: names::check,
    between: |least, most| format!("de {least} a {most}"),
    most: |most| format!("a lo más {most}"),
    least: |least| format!("al menos {least}"),
    as_wound: |turns| format!("{turns}, como se tensó"),
    finding: ["cumple", "no cumple"],
    outcome: [
        "Aprobada: cumple en todos los puntos.",
        "Pendiente: faltan puntos por ver.",
        "No aprobada: no entregue la puerta hasta que cumpla en todos los puntos.",
    ],
    done: |done, of| format!("{done} de {of} puntos vistos"),
    source: "Los límites son práctica común sin fuente publicada, salvo el jalón: 51 lb es la \
             constante de carga de la ecuación de levantamiento de NIOSH.",
};

const RECORD: RecordText = RecordText {
    heading: "El registro de la puerta",
    lede: "Una calcomanía en la caja abre este registro en cualquier teléfono, sin servidor: los \
           números, las vueltas, lo que se hizo.",
    serial: "Número de serie de la puerta",
    holds: "Lo que contiene",
    rows: [
        "Vehículo",
        "Abertura",
        "Vueltas del resorte",
        "Peso de la puerta",
        "Colgada el",
        "Última inspección",
        "Sigue",
    ],
    none: "sin anotar",
    copy: "Copiar el enlace",
    share: "Compartir",
    file: "Guardar como archivo",
    print: "Imprimir",
    what: "Qué imprimir",
    forms: ["Calcomanía, 50 × 30 mm", "Tarjeta, A6", "Registro completo"],
    copied: ["Copiado.", "Este navegador no copia. Marque el enlace de abajo y cópielo."],
    stick: "Pegue la calcomanía adentro de la caja junto a la puerta, donde siga limpia y seca, y \
            guarde la tarjeta con los papeles del vehículo.",
    code: "Código de este registro",
    scan: "Registro de la puerta: escanee",
    warning: "Resorte tensado. Solo personal capacitado.",
    too_long: "Este registro es muy largo para un código. Acorte las notas.",
    link: "El enlace",
    lasting: "El enlace es el registro. Este aparato olvida; el enlace no.",
};
