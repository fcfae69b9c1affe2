//! The names of things.

use hangtrue_core::hang::delivery::Part;
use hangtrue_core::hang::inspection::Check;
use hangtrue_core::hang::overhead::{Against, Assumed, Fit};
use hangtrue_core::hang::record::Place;
use hangtrue_core::hang::tracks::upper::Station;

pub(super) fn part(part: Part, rollers: u32) -> String {
    match part {
        Part::UpperHalf => "Mitad de arriba de la puerta: bordes rectos, bisagras firmes",
        Part::LowerHalf => "Mitad de abajo de la puerta, con el cerrojo",
        Part::SpringAssembly => {
            "Conjunto del resorte: resorte, flecha, dos tambores, soporte de anclaje"
        }
        Part::VerticalTracks => "Dos rieles verticales, con soportes y baleros",
        Part::HorizontalTracks => "Dos rieles horizontales, con sus curvas",
        Part::Hangers => "Colgantes de los rieles horizontales",
        Part::Rollers => return format!("Rodillos: {rollers}, todos giran"),
        Part::Cables => "Dos cables del mismo largo, sin alambres rotos",
        Part::Hardware => "Pernos, tornillos, rondanas",
        Part::LatchPlate => "Placa del cerrojo para el umbral",
        Part::SideSeals => "Sellos laterales",
        Part::HeaderSeal => "Sello del dintel",
    }
    .to_owned()
}

pub(super) fn place(place: Place) -> &'static str {
    match place {
        Place::TrackLow => "Separación, abajo",
        Place::TrackMiddle => "Separación, en medio",
        Place::TrackHigh => "Separación, arriba",
        Place::TrackRising => "Diagonal de abajo a la izquierda a arriba a la derecha",
        Place::TrackFalling => "Diagonal de arriba a la izquierda a abajo a la derecha",
        Place::TrackMarks => "Altura de las marcas de abajo a las de arriba",
        Place::UpperFront => "Separación, al frente de la caja",
        Place::UpperMiddle => "Separación, a la mitad",
        Place::UpperRear => "Separación, en la puerta",
        Place::SquareLeft => "Entre las marcas, izquierda",
        Place::SquareRight => "Entre las marcas, derecha",
        Place::LatchLeft => "Del poste izquierdo a la marca del centro",
        Place::LatchRight => "Del poste derecho a la marca del centro",
        Place::Shift => "Juego lateral completo",
    }
}

pub(super) fn station(station: Station) -> &'static str {
    match station {
        Station::Front => "Al frente",
        Station::Middle => "A la mitad",
        Station::Rear => "En la puerta",
    }
}

pub(super) fn fit(fit: Fit) -> &'static str {
    match fit {
        Fit::Passes => "La puerta pasa.",
        Fit::Tight => "La puerta pasa con menos de 1/2 pulg de sobra. Los paneles brincan: revise.",
        Fit::Strikes => "Alto: la puerta choca.",
    }
}

pub(super) fn against(against: Against) -> &'static str {
    match against {
        Against::Header => "Dintel",
        Against::Roof => "Lámina del techo",
        Against::Bow => "Arco del techo",
    }
}

pub(super) fn figure(figure: Assumed) -> &'static str {
    match figure {
        Assumed::Radius => "Radio de la curva, al centro del rodillo",
        Assumed::Rise => "De la parte de abajo del dintel a donde empieza la curva",
        Assumed::Offset => "Del centro del rodillo a la cara interior del panel",
        Assumed::Thickness => "Espesor del panel",
        Assumed::Panel => "Altura del panel, de bisagra a bisagra",
        Assumed::Gap => "De la puerta cerrada al dintel, lo que llena el sello",
        Assumed::BowWidth => "Ancho de un arco",
    }
}

pub(super) fn check(check: Check) -> &'static str {
    match check {
        Check::Spacing => "Rieles verticales: la separación varía",
        Check::Diagonals => "Rieles verticales: las diagonales difieren",
        Check::Shift => "Juego lateral completo",
        Check::GapLeft => "Claro entre paneles y poste izquierdo",
        Check::GapRight => "Claro entre paneles y poste derecho",
        Check::GapHeader => "Claro en el dintel",
        Check::HingeLeft => "De la bisagra de orilla al poste izquierdo",
        Check::HingeRight => "De la bisagra de orilla al poste derecho",
        Check::Pull => "Jalón que empieza a mover la puerta cerrada",
        Check::Stripes => "Vueltas según las rayas del resorte",
        Check::Fastenings => "Fijaciones del riel superior, del lado que tiene menos",
        Check::Cables => "Los dos cables asientan en sus tambores, con la misma tensión",
        Check::SetScrews => "Los prisioneros de tambores y cono tensor están apretados",
        Check::Anchor => {
            "Soporte de anclaje a 6 1/2 pulg del soporte del lado de la calle (práctica común), \
             puntas de la flecha iguales"
        }
        Check::Latch => "El cerrojo cae solo y sostiene",
        Check::Runs => "La puerta recorre todo, a mano, sin chocar",
        Check::Seals => "No entra luz alrededor de la puerta cerrada",
        Check::Labels => "Las etiquetas de advertencia se pueden leer",
    }
}
