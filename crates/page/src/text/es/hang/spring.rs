//! Turns, winding, balance.

use crate::text::hang::{Balance, Spring};
use hangtrue_core::hang::spring::{Behaves, Height, Mismatch};

pub(super) const SPRING: Spring = Spring {
    heading: "Resorte",
    lede: "Calcule aquí las vueltas. Tensarlo es para personal capacitado con las barras \
           correctas.",
    danger: "Un resorte tensado guarda energía suficiente para romper un brazo o matar. La \
             devuelve toda de golpe, por lo que lo esté sujetando.",
    energy: |joules, weight, height| {
        format!(
            "Tensado, este resorte guarda unos {joules} joules: lo mismo que {weight} que caen \
             desde {height}. Los devuelve todos de golpe, por lo que lo esté sujetando."
        )
    },
    trained: "¿No está capacitado en resortes? Deténgase aquí y mándelo tensar. Nada de esta \
              página reemplaza la capacitación.",
    turns: "Vueltas del resorte, puerta cerrada",
    count: |turns| format!("{turns} vueltas"),
    rule: "La regla: pulgadas de altura de la puerta ÷ 10, más 3. Práctica común, sin fuente \
           publicada; con milímetros sale el mismo número.",
    means: |drum, travelled, preload| {
        format!(
            "Unos {drum} de puerta por vuelta: al abrir se gastan {travelled} vueltas, y quedan \
             {preload} cuando está abierta."
        )
    },
    own: "Con las medidas de esta puerta: altura ÷ avance por vuelta, más las vueltas que quedan \
          cuando está abierta.",
    drum: "Avance de la puerta por vuelta del tambor",
    preload: "Vueltas que quedan con la puerta abierta",
    weight: "Peso de la puerta",
    weight_hint: "De la nota de entrega, o con dos básculas debajo de las mitades",
    by_area: |weight| format!("Por su área, la puerta pesa más o menos {weight}."),
    heavy: |most| {
        format!(
            "Ninguna mano sostiene esta puerta sin su resorte: una persona debe levantar a lo más \
             {most}. Sujétela con prensas antes de tocar el resorte."
        )
    },
    wound: "Vueltas que se le dieron",
    stripes: "Rayas contadas a lo largo del resorte",
    agree: [
        "Las rayas dicen lo mismo: la línea sobre las espiras da una vuelta por cada vuelta.",
        "Las rayas dicen otro número. Pare, asegure el cono con una barra y cuente otra vez antes \
         de mover la puerta.",
    ],
    steps_heading: "Tensar, paso por paso",
    steps: [
        (
            "Primero el bloqueo y etiquetado y los reglamentos locales. Puertas, plataforma y \
             vehículo no se pueden mover; nadie más está en la caja.",
            "Cierre la puerta y sujétela con prensas a los dos rieles, arriba de un rodillo, para \
             que no pueda subir.",
        ),
        (
            "Una barra gastada o doblada se sale del cono. Barras de la medida que dice el \
             fabricante, metidas hasta el fondo. Ni desarmador, ni varilla, ni tubo.",
            "Pruebe las dos barras en el cono. Vea cono, prisioneros y cables; cambie lo gastado.",
        ),
        (
            "Piense a dónde aventaría las cosas el resorte: cara y cuerpo nunca en línea con las \
             barras, la escalera a un lado, sin mangas sueltas.",
            "Asiente los dos cables en sus tambores, con la misma tensión, y apriete los \
             prisioneros de los tambores.",
        ),
        (
            "Desde el primer cuarto de vuelta el resorte empuja de regreso. Una barra siempre \
             sujeta el cono; nunca suelte una barra que está en él.",
            "Tense hacia arriba de a cuarto de vuelta: una barra sujeta, la otra entra en el \
             agujero siguiente.",
        ),
        (
            "Las últimas vueltas son las más fuertes. Si una barra no entra hasta el fondo, pare y \
             sujete.",
            "Cuente en voz alta cada cuarto hasta el número de arriba. Las rayas del resorte tienen \
             que decir lo mismo.",
        ),
        (
            "Nunca afloje el cono tensor con el resorte tensado, a menos que una barra lo sujete.",
            "Con una barra descansando en el cono, apriete sus prisioneros al par que pide el \
             fabricante. Luego saque las barras, una después de la otra.",
        ),
        (
            "Quite las prensas desde un lado. Nadie se para debajo de la puerta ni frente a ella.",
            "Ponga el soporte de anclaje a 6 1/2 pulg (165 mm) del soporte del lado de la calle (práctica \
             común, sin fuente publicada), las puntas de la flecha iguales. Luego quite las \
             prensas.",
        ),
        (
            "Si la puerta brinca, queda chueca o un cable se afloja: pare, sujétela con prensas y \
             empiece de nuevo.",
            "Levante la puerta a mano un pie (30 cm) y bájela. Luego pruebe el balance, abajo.",
        ),
    ],
    measures: "Las medidas del resorte mismo",
    wire: ["Diámetro del alambre", "Diámetro de la espira, por fuera", "Espiras"],
    rate: |rate, torque| {
        format!("Este resorte: {rate} por vuelta. Cerrada, la flecha carga {torque}.")
    },
    rate_off: |percent, stiffer| {
        let how = if stiffer { "más duro" } else { "más blando" };
        format!("Es {percent} % {how} de lo que pide esta puerta.")
    },
    stress: |stress, share| {
        format!(
            "El alambre trabaja a {stress}, {share} % de la resistencia del alambre templado en \
             aceite (ASTM A229, de memoria)."
        )
    },
    formula: "Constante d⁴E ÷ 10.8·D·N, con el divisor de los manuales, que toma en cuenta la \
              fricción entre espiras; sin ella 10.186, 6 % más duro.",
    no_spring: "Ningún resorte se hace así. El diámetro de la espira se mide por fuera.",
};

pub(super) const BALANCE: Balance = Balance {
    heading: "Balance",
    caution: "Una puerta sin balance cae o sube de golpe. Tenga una mano lista, los dedos lejos de \
              bisagras y rodillos, nadie abajo.",
    no_weight: "Escriba cuánto pesa la puerta: sin eso nadie sabe las fuerzas.",
    open: |weight| format!("Abierta, el resorte todavía jala hacia arriba con {weight}."),
    quarter: |weight| format!("Un cuarto de vuelta más o menos cambia el levante en {weight}."),
    hand: |weight| format!("Tensado así, la mano levanta a lo más {weight}."),
    hand_over: |weight, most| {
        format!(
            "Tensado así, la mano levantaría {weight}: más que los {most} que una persona debe, en \
             el mejor caso. No mueva la puerta a mano."
        )
    },
    pulls_up: |weight, lift| {
        format!(
            "Tensado así, con la puerta levantada {lift}, el resorte jala hacia arriba con {weight} \
             más de lo que la puerta pesa ahí: detenga la puerta al subir."
        )
    },
    pulls_up_over: |weight, lift, most| {
        format!(
            "Tensado así, con la puerta levantada {lift}, el resorte jala hacia arriba con {weight} \
             más de lo que la puerta pesa ahí: más que los {most} que una persona debe detener, en \
             el mejor caso. No mueva la puerta a mano."
        )
    },
    flies_up: |weight, lift| {
        format!(
            "Tensado así, con la puerta levantada {lift}, el resorte jala hacia arriba con {weight} \
             más de lo que la puerta pesa ahí: la puerta sube de golpe al quitar las prensas. Deje \
             puestas las prensas y que gente capacitada quite vueltas."
        )
    },
    test: "Prueba de balance",
    scale: "Cuelgue una báscula de equipaje de la manija y mueva la puerta despacio. ¿No midió al \
            subir y al bajar? Entonces suéltela, como abajo.",
    pulls: [
        "En el umbral: jalón para subirla",
        "En el umbral: jalón para detenerla al bajar",
        "A la mitad: jalón para subirla",
        "A la mitad: jalón para detenerla al bajar",
    ],
    behaves: "O suelte la puerta, con una mano lista",
    height: |height| match height {
        Height::Low => "A la rodilla",
        Height::Middle => "A la mitad",
        Height::High => "A tres cuartos",
    },
    does: |does| match does {
        Behaves::Drops => "cae",
        Behaves::Stays => "se queda",
        Behaves::Rises => "sube",
    },
    contradict: "Estos jalones se contradicen; mídalos otra vez.",
    add: |turns, give| format!("Vueltas por dar: {turns}, con {give} de más o de menos."),
    take: |turns, give| format!("Vueltas por quitar: {turns}, con {give} de más o de menos."),
    holds: |give| format!("Balanceada, hasta donde ve esta prueba: a {give} vueltas."),
    mismatch: |mismatch| match mismatch {
        Mismatch::TooSoft => {
            "Ningún número de vueltas lo arregla: el resorte es muy blando para la puerta. Pida el \
             correcto al proveedor."
        }
        Mismatch::TooStiff => {
            "Ningún número de vueltas lo arregla: el resorte es muy duro para la puerta. Pida el \
             correcto al proveedor."
        }
    },
    again: "Cambiar vueltas es tensar: vale cada advertencia de arriba. Luego pruebe otra vez.",
};
