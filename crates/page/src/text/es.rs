//! Spanish, as spoken in Mexico and the United States.
//!
//! The words of the trade are those of the domain's catalogue, which lists them.

mod dealer;
pub(super) mod desk;
mod handover;
pub(super) mod hang;
mod kept;

use super::{
    Buttons, Check, DimensionText, FieldText, Frame, Judge, Later, Opened, Proof, Send, Start, Text,
};
use hangtrue_core::{Dimension, Spot};

/// The Spanish page.
pub(super) static TEXT: Text = Text {
    title: "Hangtrue: mida la abertura trasera para una puerta enrollable",
    language: "Idioma",
    colon: ": ",
    quotes: ["“", "”"],
    progress: |at, of| format!("Paso {at} de {of}"),
    button: Buttons {
        next: "Continuar",
        next_all_the_same: "Está bien, continuar",
        back: "Atrás",
        change: "Cambiar",
        read_again: "Medir otra vez",
        skip: "Dejarla fuera",
        use_text: |text| format!("Usar {text}"),
        letters: "abc",
        numbers: "123",
        share: "Compartir",
        print: "Imprimir",
        restart: "Medir otra abertura",
    },
    start: Start {
        heading: "Mida una abertura para una puerta enrollable",
        lede: "Cuatro dimensiones deciden el corte de la puerta. Las toma una por una, y cada una \
               se compara con las otras antes de que el pedido salga de sus manos.",
        bring_heading: "Lleve",
        bring: [
            "una cinta de acero con el gancho en buen estado, y otra persona que lea con usted",
            "una escalera que llegue al dintel, sobre piso firme",
            "gis para marcar dónde mide, y una luz",
            "una regla recta para ponerla sobre un umbral gastado",
        ],
        caution_heading: "Antes de subir",
        cautions: [
            "Estaciónese en piso parejo, lejos del tránsito. Ponga el freno y calce las ruedas.",
            "Una compuerta o plataforma sin seguro puede caer. No se pare en ella para medir.",
            "Ponga la escalera en piso firme, con las patas a nivel, y mantenga tres puntos de \
             apoyo.",
            "Nunca mida debajo de una puerta que no esté apuntalada o asegurada abierta.",
            "Un resorte tensado puede matar. Es solo para personal capacitado: déjelo tensado y no \
             lo toque.",
        ],
        unit: "¿Qué muestra su cinta?",
        inches: "Pulgadas y dieciseisavos",
        millimetres: "Milímetros",
        privacy: "Nada de lo que escribe sale de este aparato hasta que usted mismo comparta el \
                  enlace.",
        begin: "Empezar a medir",
        go_on: "Seguir midiendo",
        desk: "¿Está en el mostrador? Revise pedidos por teléfono o por enlace",
        open_heading: "Abrir un pedido",
        open_hint: "Un archivo que se guardó aquí, o cualquier texto con el enlace de un pedido.",
        choose_file: "Elegir un archivo",
    },
    frame: Frame {
        heading: "¿El marco admite una puerta?",
        lede: "Los rieles verticales se fijan a los postes; el riel superior y el resorte, al \
               dintel.",
        old_door: "¿Todavía está puesta la puerta vieja?",
        old_door_caution: "Mida el acero, no los rieles ni los sellos viejos. No toque el resorte \
                           viejo ni sus cables: están en tensión aunque la puerta esté abierta.",
        prepared: "¿El marco ya está como va a quedar?",
        yes: "Sí",
        no: "No",
        prepared_yes: "Sí: ya cumple el mínimo, o no necesita nada",
        prepared_no: "Todavía no: dígame qué hay que hacerle",
        common_practice: "Práctica común",
        minimums: |source, post, header| {
            format!(
                "{source}: postes de al menos {post} de ancho y un dintel de al menos \
                 {header} de profundidad. Un poste más angosto se engruesa; un dintel menos \
                 profundo se baja con un canal o un perfil de lámina."
            )
        },
        weld_caution: "Cortar y soldar en una caja es trabajo de personal autorizado; los \
                       reglamentos locales y las reglas del fabricante van primero.",
        build_heading: "Por hacer en el marco",
    },
    dimension,
    place,
    field: FieldText {
        hint_inch: "Por ejemplo 96 1/4, 8' 0 1/4\" o noventa y seis y un cuarto",
        hint_millimetre: "Por ejemplo 2445, 2.445 m o 96 1/4 pulg",
        problems: "Antes de seguir",
        questions: "Vea esto otra vez",
        keys: "Teclas de fracción",
        tape: "Compare con su cinta",
    },
    coming: "Un momento: el resto de la página está en camino.",
    missing: "El resto de la página aún no ha llegado. Se intenta de nuevo por sí solo, y \
              antes si hay red. Lo que ha escrito queda mientras esta página siga abierta.",
    order: "Pedido de puerta enrollable",
};

/// See [`Later`].
pub(super) static LATER: Later = Later {
    proof: Proof {
        heading: "Una medida más",
        again_heading: "Mida otra vez el mismo punto",
        again: "Vaya a su marca de gis y mida sin ver el primer número. Mejor aún, que mida otra \
                persona.",
        hidden: "La primera medida queda oculta hasta que esté esta",
        empty: "Escriba la medida, o déjela fuera.",
    },
    check: Check {
        heading: "Revise el pedido",
        numbers: "El pedido va a decir",
        tightest: |count, place, reading| match count {
            1 => format!("la única medida, {place}: {reading}"),
            _ => format!("la más justa de {count} medidas, {place}: {reading}"),
        },
        as_found: |found| format!("como está ahora {found}"),
        not_read: "sin medir",
        rounding: |step| {
            format!("Redondeado a {step}, hacia el lado en que la puerta todavía entra.")
        },
        remeasure: "Mida de nuevo cuando el marco esté hecho",
        readings: "Lo que usted midió",
        struck: "medida otra vez",
        findings: "Lo que se encontró",
        clear: "No hay nada en contra de este pedido.",
        confirm: "Lo vi otra vez, y está bien",
        measure: "Medir ahora",
        confirmed: "confirmado por quien lo escribió",
        send: "Hacer el pedido",
        verdict: ["Sin reparos", "Revisar", "Alto"],
    },
    judge: Judge {
        fits: "concuerda",
        doubtful: "dudosa",
        missing: "falta",
        settles: "lo decide",
        next: "Una medida más vale el minuto que toma",
        take: "Tomarla ahora",
        unseen: "Lo que estas medidas no pueden mostrar",
        never: "Ninguna medida muestra si es otro camión, si un número se copió del primero o si \
                en todas partes se midió el mismo borde equivocado.",
        working: "Ver el cálculo",
        working_lede: "Una red de mínimos cuadrados con todas las medidas, en milímetros. w es el \
                       residuo entre su desviación estándar; el menor error detectable se nota en \
                       80 de 100 casos.",
        columns: ["Medida", "Medido", "Ajustado", "±", "w", "Menor detectable"],
    },
    dealer: dealer::DEALER,
    kept: kept::KEPT,
    send: Send {
        heading: "El pedido",
        lede: "El enlace lleva el pedido completo. Mándelo a su distribuidor: se abre con los \
               mismos números y con todas las medidas que los sostienen.",
        vehicle: "Camión o remolque",
        note: "Nota",
        contact: "Cómo puede localizarlo el distribuidor",
        optional: "puede quedar vacío",
        room: |count, most| format!("{count} de {most} caracteres"),
        full: "Ya no cabe más. Si falta el final, acórtelo.",
        link: "Enlace de este pedido",
        lasting: "Guarde el enlace: es lo que queda. Este navegador puede olvidar lo que escribió.",
        copied: "Copiado.",
        not_yet: "Todavía no hay enlace: aún hay algo en contra del pedido.",
    },
    opened: Opened {
        heading: "Un pedido de puerta enrollable",
        lede: "Aquí se aplicaron otra vez todas las reglas: lo enviado afirma, no prueba.",
        disagrees: |claimed, found| {
            format!(
                "A quien lo escribió se le mostró “{claimed}”; aquí resulta “{found}”. Pregunte a \
                 quien lo envió antes de cortar nada."
            )
        },
        readings: "Lo que se midió",
        damaged: "Este enlace no se puede abrir",
        record: "El registro de una puerta",
        to_record: "Abrir el registro",
        damaged_file: "Este archivo no se puede abrir",
        no_order: "No es el enlace de un pedido ni un mensaje con uno. El mostrador abre también otros archivos: \
                   pedidos guardados allí, fotos de un código, tablas.",
        adopt: "Trabajar con este pedido",
        own: "A mis propias medidas",
        written: |date| format!("Escrito el {date}"),
        old_door: |still_in| {
            if still_in {
                "Medido con la puerta vieja puesta"
            } else {
                "Medido sin la puerta vieja"
            }
        },
        frame: |prepared| {
            if prepared { "Marco como va a quedar" } else { "Marco como está ahora" }
        },
    },
    handover: handover::HANDOVER,
    paper: handover::PAPER,
};

const fn dimension(dimension: Dimension) -> DimensionText {
    match dimension {
        Dimension::Width => DimensionText {
            lede: "El paso libre entre las caras interiores de los postes de la puerta.",
            places: "Un lugar basta para seguir. Abajo, en medio y arriba juntos muestran si los \
                     postes se inclinan o se abomban, y la puerta se corta a la medida más justa.",
            wrong_heading: "Lo que sale mal aquí",
            wrong: [
                "La cinta cuelga o va inclinada, y mide de más: téngala tensa y a nivel.",
                "Empieza en una soldadura, un tornillo o un sello: busque el acero limpio.",
            ],
            tape: [
                "Se mide desde la marca de 1 pulg, o se toma la pulgada siguiente.",
                "Se mide desde la marca de 10 cm, o se toma el centímetro siguiente.",
            ],
            caution: Some(
                "Arriba se mide desde la escalera. Póngase de frente y muévala en vez de estirarse.",
            ),
        },
        Dimension::Height => DimensionText {
            lede: "Desde la superficie donde asienta la puerta cerrada hasta la parte de abajo del \
                   dintel.",
            places: "Un lugar basta para seguir. Izquierda, centro y derecha juntos muestran un \
                     umbral gastado o un dintel vencido.",
            wrong_heading: "Lo que sale mal aquí",
            wrong: [
                "El gancho está en una canaleta o en una placa de rampa, no donde asienta la \
                 puerta.",
                "La cinta va ladeada: téngala a plomo y tome la medida menor al mecerla.",
            ],
            tape: [
                "Se cuenta mal una decena o un pie muy arriba en la cinta: vea también la marca \
                 de pies.",
                "Se cuentan mal diez centímetros o un metro muy arriba en la cinta: vea también la \
                 marca de metros.",
            ],
            caution: Some("Baje antes de escribir. Cuidado con el filo del umbral."),
        },
        Dimension::Header => DimensionText {
            lede: "Desde la parte de abajo del dintel hasta la lámina o el forro del techo.",
            places: "Un lugar basta para seguir. Izquierda, centro y derecha juntos muestran un \
                     techo doblado, o una cinta que topó con un arco.",
            wrong_heading: "Lo que sale mal aquí",
            wrong: [
                "La cinta topa con un arco del techo, no con la lámina.",
                "La cinta se dobla en la esquina y no se suma su caja.",
            ],
            tape: [
                "Un aislante o un forro tapa la lámina: dígalo en la nota.",
                "Un aislante o un forro tapa la lámina: dígalo en la nota.",
            ],
            caution: Some("Filos y puntas de tornillo detrás del dintel: use guantes."),
        },
        Dimension::Bow => DimensionText {
            lede: "Desde la parte de abajo de un arco del techo hasta la lámina, en los primeros \
                   arcos adentro de la puerta.",
            places: "Un arco basta para seguir. Los tres primeros juntos muestran el más profundo, \
                     y la puerta tiene que pasar por debajo de ese.",
            wrong_heading: "Lo que sale mal aquí",
            wrong: [
                "Se mide el ala del arco, no toda su profundidad.",
                "Se pasa por alto un arco más profundo más adentro: vea los tres primeros.",
            ],
            tape: [
                "En una medida tan corta, los dieciseisavos se cuentan como octavos.",
                "Se escriben centímetros por milímetros: 3 cm son 30 mm.",
            ],
            caution: Some(
                "Adentro de la caja use la escalera o una plataforma firme, nunca la carga ni un \
                 riel.",
            ),
        },
    }
}

const fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "un palmo arriba del umbral",
        Spot::WidthMiddle => "a media altura de los postes",
        Spot::WidthHigh => "un palmo abajo del dintel",
        Spot::HeightLeft | Spot::HeaderLeft => "junto al poste izquierdo, visto desde atrás",
        Spot::HeightCenter | Spot::HeaderCenter => "a la mitad entre los postes",
        Spot::HeightRight | Spot::HeaderRight => "junto al poste derecho, visto desde atrás",
        Spot::BowFirst => "el más cercano a la puerta",
        Spot::BowSecond => "el que sigue hacia adentro",
        Spot::BowThird => "y el siguiente",
        Spot::DiagonalRising => "de la esquina de abajo a la izquierda a la de arriba a la derecha",
        Spot::DiagonalFalling => {
            "de la esquina de arriba a la izquierda a la de abajo a la derecha"
        }
        Spot::LoopSillToRoof => {
            "desde una regla puesta a nivel sobre el umbral, derecho hacia arriba hasta la lámina del techo"
        }
        Spot::LoopSillToBow => {
            "desde una regla puesta a nivel sobre el umbral, derecho hacia arriba hasta la parte de \
             abajo del primer arco"
        }
        Spot::PostLeft | Spot::PostRight => {
            "el ancho de la cara donde se fija el riel; puede quedar vacío"
        }
    }
}
