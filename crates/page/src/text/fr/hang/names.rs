//! The names of things.

use hangtrue_core::hang::delivery::Part;
use hangtrue_core::hang::inspection::Check;
use hangtrue_core::hang::overhead::{Against, Assumed, Fit};
use hangtrue_core::hang::record::Place;
use hangtrue_core::hang::tracks::upper::Station;

pub(super) fn part(part: Part, rollers: u32) -> String {
    match part {
        Part::UpperHalf => "Moitié haute de la porte\u{a0}: bords droits, charnières serrées",
        Part::LowerHalf => "Moitié basse de la porte, avec le loquet",
        Part::SpringAssembly => {
            "Ensemble du ressort\u{a0}: ressort, arbre, deux tambours, support d’ancrage"
        }
        Part::VerticalTracks => "Deux rails verticaux, avec supports et paliers",
        Part::HorizontalTracks => "Deux rails horizontaux, avec leurs courbes",
        Part::Hangers => "Suspentes des rails horizontaux",
        Part::Rollers => {
            return format!("Roulettes\u{a0}: {rollers}, toutes tournent");
        }
        Part::Cables => "Deux câbles de même longueur, sans brins cassés",
        Part::Hardware => "Boulons, vis, rondelles",
        Part::LatchPlate => "Gâche du loquet pour le seuil",
        Part::SideSeals => "Joints latéraux",
        Part::HeaderSeal => "Joint du linteau",
    }
    .to_owned()
}

pub(super) fn place(place: Place) -> &'static str {
    match place {
        Place::TrackLow => "Écartement, en bas",
        Place::TrackMiddle => "Écartement, au milieu",
        Place::TrackHigh => "Écartement, en haut",
        Place::TrackRising => "Diagonale du bas à gauche au haut à droite",
        Place::TrackFalling => "Diagonale du haut à gauche au bas à droite",
        Place::TrackMarks => "Hauteur des marques du bas à celles du haut",
        Place::UpperFront => "Écartement, à l’avant du fourgon",
        Place::UpperMiddle => "Écartement, à mi-chemin",
        Place::UpperRear => "Écartement, à la porte",
        Place::SquareLeft => "D’une marque à l’autre, à gauche",
        Place::SquareRight => "D’une marque à l’autre, à droite",
        Place::LatchLeft => "Du poteau gauche à la marque du centre",
        Place::LatchRight => "Du poteau droit à la marque du centre",
        Place::Shift => "Jeu latéral complet",
    }
}

pub(super) fn station(station: Station) -> &'static str {
    match station {
        Station::Front => "À l’avant",
        Station::Middle => "À mi-chemin",
        Station::Rear => "À la porte",
    }
}

pub(super) fn fit(fit: Fit) -> &'static str {
    match fit {
        Fit::Passes => "La porte passe.",
        Fit::Tight => {
            "La porte passe, avec moins de 1/2 po de jeu. Les panneaux rebondissent\u{a0}: \
             revérifiez."
        }
        Fit::Strikes => "Arrêt\u{a0}: la porte heurte.",
    }
}

pub(super) fn against(against: Against) -> &'static str {
    match against {
        Against::Header => "Linteau",
        Against::Roof => "Tôle du toit",
        Against::Bow => "Arceau du toit",
    }
}

pub(super) fn figure(figure: Assumed) -> &'static str {
    match figure {
        Assumed::Radius => "Rayon de la courbe, au centre de la roulette",
        Assumed::Rise => "Du dessous du linteau jusqu’où commence la courbe",
        Assumed::Offset => "Du centre de la roulette à la face intérieure du panneau",
        Assumed::Thickness => "Épaisseur du panneau",
        Assumed::Panel => "Hauteur du panneau, de charnière à charnière",
        Assumed::Gap => "De la porte fermée au linteau, rempli par le joint",
        Assumed::BowWidth => "Largeur d’un arceau",
    }
}

pub(super) fn check(check: Check) -> &'static str {
    match check {
        Check::Spacing => "Rails verticaux\u{a0}: l’écartement varie de",
        Check::Diagonals => "Rails verticaux\u{a0}: les diagonales diffèrent de",
        Check::Shift => "Jeu latéral complet",
        Check::GapLeft => "Jeu entre panneaux et poteau gauche",
        Check::GapRight => "Jeu entre panneaux et poteau droit",
        Check::GapHeader => "Jeu au linteau",
        Check::HingeLeft => "De la charnière de bout au poteau gauche",
        Check::HingeRight => "De la charnière de bout au poteau droit",
        Check::Pull => "Traction qui fait partir la porte fermée",
        Check::Stripes => "Tours d’après les lignes du ressort",
        Check::Fastenings => "Fixations du rail du haut, du côté qui en a le moins",
        Check::Cables => "Les deux câbles sont dans leurs tambours, également tendus",
        Check::SetScrews => "Les vis de pression des tambours et du cône de tension sont serrées",
        Check::Anchor => {
            "Support d’ancrage à 6 1/2 po du support côté rue (pratique courante), bouts de \
             l’arbre égaux"
        }
        Check::Latch => "Le loquet tombe de lui-même et tient",
        Check::Runs => "La porte fait toute sa course, à la main, sans heurter",
        Check::Seals => "Pas de jour autour de la porte fermée",
        Check::Labels => "Les étiquettes d’avertissement sont lisibles",
    }
}
