//! The trade's names, in French (Canada).

use crate::spot::{Dimension, Spot};

pub(crate) const fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "largeur de poteau à poteau",
        Dimension::Height => "hauteur du seuil au linteau",
        Dimension::Header => "profondeur du linteau",
        Dimension::Bow => "profondeur de l’arceau du toit",
    }
}

/// With its article: `la largeur de poteau à poteau`. All four are feminine.
pub(crate) fn the_dimension(dimension: Dimension) -> String {
    ["la ", self::dimension(dimension)].concat()
}

pub(crate) const fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "en bas",
        Spot::WidthMiddle => "au milieu",
        Spot::WidthHigh => "en haut",
        Spot::HeightLeft | Spot::HeaderLeft => "à gauche",
        Spot::HeightCenter | Spot::HeaderCenter => "au centre",
        Spot::HeightRight | Spot::HeaderRight => "à droite",
        Spot::BowFirst => "premier arceau",
        Spot::BowSecond => "deuxième arceau",
        Spot::BowThird => "troisième arceau",
        Spot::DiagonalRising => "du bas à gauche au haut à droite",
        Spot::DiagonalFalling => "du haut à gauche au bas à droite",
        Spot::LoopSillToRoof => "du seuil à la tôle du toit",
        Spot::LoopSillToBow => "du seuil à l’arceau",
        Spot::PostLeft => "poteau gauche",
        Spot::PostRight => "poteau droit",
    }
}

/// To stand within a sentence.
pub(crate) const fn spot(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "largeur de poteau à poteau, en bas",
        Spot::WidthMiddle => "largeur de poteau à poteau, au milieu",
        Spot::WidthHigh => "largeur de poteau à poteau, en haut",
        Spot::HeightLeft => "hauteur du seuil au linteau, à gauche",
        Spot::HeightCenter => "hauteur du seuil au linteau, au centre",
        Spot::HeightRight => "hauteur du seuil au linteau, à droite",
        Spot::HeaderLeft => "profondeur du linteau, à gauche",
        Spot::HeaderCenter => "profondeur du linteau, au centre",
        Spot::HeaderRight => "profondeur du linteau, à droite",
        Spot::BowFirst => "profondeur de l’arceau du toit, premier arceau",
        Spot::BowSecond => "profondeur de l’arceau du toit, deuxième arceau",
        Spot::BowThird => "profondeur de l’arceau du toit, troisième arceau",
        Spot::DiagonalRising => "diagonale du bas à gauche au haut à droite",
        Spot::DiagonalFalling => "diagonale du haut à gauche au bas à droite",
        Spot::LoopSillToRoof => "distance du seuil à la tôle du toit",
        Spot::LoopSillToBow => "distance du seuil au dessous de l’arceau",
        Spot::PostLeft => "largeur du poteau gauche",
        Spot::PostRight => "largeur du poteau droit",
    }
}

/// With its article: `la profondeur du linteau, au centre`. All are feminine.
pub(crate) fn the_spot(spot: Spot) -> String {
    ["la ", self::spot(spot)].concat()
}
