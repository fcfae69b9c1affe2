//! Care of the door.

use crate::text::hang::{Care, Guide};
use hangtrue_core::hang::care::Work;

pub(super) const CARE: Care = Care {
    heading: "Cuidado",
    before: "Antes de cada uso",
    before_list: [
        "Los cables asientan en sus tambores, sin alambres rotos, con la misma tensión",
        "Los rodillos corren en sus rieles, ninguno roto ni falta",
        "Los rieles no están doblados, nada está flojo",
        "Los paneles están enteros, las bisagras firmes",
        "El cerrojo cae y sostiene",
        "Nadie está debajo de la puerta",
    ],
    before_stop: "¿Algo de esto no es así? Deje la puerta como está, apuntálela o asegúrela, y \
                  mándela reparar.",
    due: "Lo que toca",
    hung: "Colgada el",
    day_hint: "Como 2026\u{2011}11\u{2011}25",
    per_day: "Veces que se abre al día",
    no_day: "Escriba el día en que se colgó, y se calcula lo que toca.",
    due_in: |days, day| match days {
        0 => format!("hoy ({day})"),
        1 => format!("mañana ({day})"),
        n if n > 90 => format!("en {} meses ({day})", n / 30),
        n if n > 1 => format!("en {n} días ({day})"),
        -1 => format!("desde ayer ({day})"),
        n => format!("con {} días de atraso ({day})", n.unsigned_abs()),
    },
    work: |work| match work {
        Work::Lubrication => "Aceitar",
        Work::CablesChecked => "Ver los cables",
        Work::Cables => "Los dos cables cambiados",
        Work::Rollers => "Rodillos cambiados",
        Work::Panel => "Panel cambiado",
        Work::Spring => "Resorte cambiado o tensado de nuevo",
        Work::Tracks => "Rieles ajustados de nuevo",
        Work::Inspected => "Puerta inspeccionada completa",
    },
    source: "Por meses o por uso, lo que llegue primero. Práctica común, sin fuente publicada: las \
             instrucciones del fabricante van primero.",
    oil: "Aceite",
    oil_list: [
        "Aceite ligero en vástagos de rodillos, bisagras, baleros y a lo largo de las espiras del \
         resorte",
        "Limpie los rieles con un trapo. Sin grasa en los rieles: junta mugre y frena los rodillos",
        "Nunca aceite los sellos: se come el hule. Agua y jabón",
        "Manos fuera del resorte mismo: acéitelo con la puerta cerrada y no toque nada más",
    ],
    guides_heading: "Cambio de piezas",
    guides: [
        Guide {
            title: "Cables, siempre los dos",
            caution: "Los cables cargan todo el jalón del resorte. Primero hay que destensar el \
                      resorte: personal capacitado con dos barras. El bloqueo y etiquetado va \
                      primero.",
            steps: &[
                "Cierre la puerta y sujétela con prensas a los dos rieles.",
                "Mande destensar el resorte hasta que los cables queden flojos.",
                "Quite los dos cables. Compare su largo: el par nuevo tiene que ser igual, y uno al \
                 otro.",
                "Fije las puntas de abajo, pase los cables por detrás de los rodillos y asiéntelos \
                 en los tambores.",
                "Mande tensar el resorte y probar el balance.",
            ],
            stop: "Un soporte de abajo está doblado o roto, un tambor está gastado, o los cables no \
                   son iguales.",
        },
        Guide {
            title: "Un rodillo",
            caution: "Nunca abra un soporte de abajo con el resorte tensado: ahí se sujeta el \
                      cable. Apuntale la puerta para que no pueda caer ni subir.",
            steps: &[
                "Apuntale la puerta o sujétela con prensas, con la bisagra a la altura de trabajo.",
                "Quite el portarrodillo de la bisagra, uno a la vez. Nunca dos.",
                "Cambie el rodillo; deje el mismo número de rondanas.",
                "Fije el portarrodillo y mueva la puerta a mano más allá de ese punto.",
            ],
            stop: "Es el rodillo de más abajo, hay que abrir el riel doblándolo, o la bisagra está \
                   rota.",
        },
        Guide {
            title: "Un panel",
            caution: "Los paneles pesan, y la puerta pierde su balance al quitarlos. Primero, \
                      resorte destensado por personal capacitado. Levantan dos personas.",
            steps: &[
                "Cierre la puerta, sujétela con prensas y mande destensar el resorte.",
                "Quite los paneles de arriba hacia abajo hasta el que está roto.",
                "Compare el panel nuevo: altura, espesor, ancho, agujeros de bisagra.",
                "Arme otra vez, bisagra por bisagra, y revise el juego lateral.",
                "Mande tensar el resorte para el peso nuevo de la puerta y probar el balance.",
            ],
            stop: "El panel nuevo tiene otra altura u otro peso, o el marco está doblado.",
        },
        Guide {
            title: "El resorte",
            caution: "Solo para personal capacitado, por más prisa que haya. Un resorte tensado o \
                      roto puede guardar vueltas en su otro extremo.",
            steps: &[
                "Cierre la puerta, sujétela con prensas, póngale una etiqueta y llame a personal \
                 capacitado.",
                "Pídalo por alambre, diámetro de espira, número de espiras y sentido de enrollado.",
                "Después: prueba de balance, rayas, y las vueltas nuevas en este registro.",
            ],
            stop: "Siempre: usted no afloje nada de la flecha.",
        },
    ],
    stop: "Pare si:",
    done: "Lo que se hizo",
    add_heading: "Agregue lo que se hizo",
    add_fields: ["Trabajo", "Día", "Nota"],
    add: "Agregar al registro",
    drop: "Quitar",
    new_link: "Cada anotación hace un enlace nuevo. Compártalo e imprima otra calcomanía.",
    not_here: |rules| {
        format!(
            "Se pidió con: {rules}. Aquí no están, así que lo pendiente va por los intervalos de \
             abajo. Abra el registro con el enlace del distribuidor para tenerlas."
        )
    },
    sizes: "Medidas para pedir",
    sizes_list: |[width, height], panels, rollers, [side, head]| {
        [
            format!("Puerta para una abertura de {width} × {height}"),
            format!("{panels} paneles (calculados con la altura del panel: mida el roto)"),
            format!("{rollers} rodillos, cables por par"),
            format!("Sellos, cortados: dos de {side} para los lados, uno de {head} para el dintel"),
        ]
    },
};
