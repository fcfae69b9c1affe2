//! French (Canada).
//!
//! The words of the trade are those of the domain's French catalogue, which lists them.

use super::{Together, Words};
use hangtrue_core::{Dimension, Spot};

pub(super) static WORDS: Words = Words {
    place,
    spot,
    drawn: |length| length,
    reads: |spot, value| [spot, "\u{a0}: ", value, "."].concat(),
    unread: |spot| [spot, "\u{a0}: pas encore mesuré."].concat(),
    off_scale: "hors cadre",
    not_to_scale: "Pas à l’échelle\u{a0}: une mesure s’écarte beaucoup.",
    not_to_scale_short: "pas à l’échelle",
    assumed: "Ce qui est en tirets n’a pas encore de mesure et est dessiné comme d’habitude.",
    elevation_title: "Arrière du fourgon, vu de derrière",
    elevation: "L’ouverture entre les deux poteaux de la porte, le seuil en bas, le linteau en \
                haut. Le ruban va là où est la ligne.",
    section_title: "Linteau et toit, coupés d’arrière en avant, vus de côté",
    section: "Le linteau est à gauche, l’intérieur du fourgon à droite. La tôle du toit passe \
              au-dessus des deux; les arceaux du toit sont dessous, et la porte ouverte se range \
              sous les arceaux. L’ouverture est raccourcie par une coupure.",
    tape_title: "Le ruban à cette mesure",
    tape: |value| ["Une flèche montre ", value, " sur le ruban."].concat(),
    foot: ["pi", "pi"],
    metre: "m",
    roof_skin: "tôle du toit",
    header: "linteau",
    bow: "arceau",
    sill: "seuil",
    open_door: "porte ouverte",
    rear: "arrière",
    inside: "intérieur",
};

pub(super) static TOGETHER: Together = Together {
    dimension,
    dimension_short,
    order_title: "L’ouverture avec les quatre nombres de la commande",
    order: "À gauche, l’arrière du fourgon, vu de derrière, avec largeur et hauteur. À droite, le \
            linteau et un arceau du toit en coupe, avec leurs profondeurs.",
    residuals_title: "Comment les mesures concordent",
    residuals: "Le cadre comme le donnent toutes les mesures ensemble, ses écarts grossis; en \
                tirets, un cadre d’équerre. Un ruban qui ne finit pas au cadre ne concorde pas.",
    leans_left: |value| ["Le haut penche à gauche de ", value, "."].concat(),
    leans_right: |value| ["Le haut penche à droite de ", value, "."].concat(),
    too_much: |spot, value| {
        [spot, "\u{a0}: ", value, " de plus que ce que disent les autres."].concat()
    },
    too_little: |spot, value| {
        [spot, "\u{a0}: ", value, " de moins que ce que disent les autres."].concat()
    },
    all_fit: "Toutes les mesures concordent.",
    exaggerated: |times| ["écarts grossis jusqu’à ", times, " fois"].concat(),
};

fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "bas",
        Spot::WidthMiddle => "milieu",
        Spot::WidthHigh => "haut",
        Spot::HeightLeft => "gauche",
        Spot::HeightCenter | Spot::HeaderCenter => "centre",
        Spot::HeightRight => "droite",
        // In a small picture of the header.
        Spot::HeaderLeft => "g.",
        Spot::HeaderRight => "dr.",
        Spot::BowFirst => "1er arceau",
        Spot::BowSecond => "2e",
        Spot::BowThird => "3e",
        Spot::DiagonalRising => "monte",
        Spot::DiagonalFalling => "baisse",
        Spot::LoopSillToRoof => "jusqu’au toit",
        Spot::LoopSillToBow => "jusqu’à l’arceau",
        Spot::PostLeft => "gauche",
        Spot::PostRight => "droit",
    }
}

fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "Largeur de poteau à poteau",
        Dimension::Height => "Hauteur du seuil au linteau",
        Dimension::Header => "Profondeur du linteau",
        Dimension::Bow => "Profondeur de l’arceau du toit",
    }
}

fn dimension_short(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "largeur",
        Dimension::Height => "hauteur",
        Dimension::Header => "linteau",
        Dimension::Bow => "arceau",
    }
}

fn spot(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "Largeur en bas, près du seuil",
        Spot::WidthMiddle => "Largeur à mi-hauteur",
        Spot::WidthHigh => "Largeur en haut, près du linteau",
        Spot::HeightLeft => "Hauteur au poteau gauche",
        Spot::HeightCenter => "Hauteur au centre",
        Spot::HeightRight => "Hauteur au poteau droit",
        Spot::HeaderLeft => "Profondeur du linteau à gauche",
        Spot::HeaderCenter => "Profondeur du linteau au centre",
        Spot::HeaderRight => "Profondeur du linteau à droite",
        Spot::BowFirst => "Profondeur du premier arceau du toit, derrière la porte",
        Spot::BowSecond => "Profondeur du deuxième arceau du toit",
        Spot::BowThird => "Profondeur du troisième arceau du toit",
        Spot::DiagonalRising => "Diagonale du bas à gauche au haut à droite",
        Spot::DiagonalFalling => "Diagonale du haut à gauche au bas à droite",
        Spot::LoopSillToRoof => "Du seuil tout droit jusqu’à la tôle du toit",
        Spot::LoopSillToBow => "Du seuil tout droit jusqu’au dessous du premier arceau",
        Spot::PostLeft => "Largeur du poteau gauche",
        Spot::PostRight => "Largeur du poteau droit",
    }
}
