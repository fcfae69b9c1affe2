//! The trade's names, in English (US).

use crate::spot::{Dimension, Spot};

pub(crate) const fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "post-to-post width",
        Dimension::Height => "sill-to-header height",
        Dimension::Header => "header depth",
        Dimension::Bow => "roof-bow depth",
    }
}

pub(crate) const fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "low",
        Spot::WidthMiddle => "middle",
        Spot::WidthHigh => "high",
        Spot::HeightLeft | Spot::HeaderLeft => "left",
        Spot::HeightCenter | Spot::HeaderCenter => "center",
        Spot::HeightRight | Spot::HeaderRight => "right",
        Spot::BowFirst => "first bow",
        Spot::BowSecond => "second bow",
        Spot::BowThird => "third bow",
        Spot::DiagonalRising => "low left to high right",
        Spot::DiagonalFalling => "high left to low right",
        Spot::LoopSillToRoof => "sill to roof skin",
        Spot::LoopSillToBow => "sill to bow",
        Spot::PostLeft => "left post",
        Spot::PostRight => "right post",
    }
}

/// To stand within a sentence.
pub(crate) const fn spot(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "post-to-post width, low",
        Spot::WidthMiddle => "post-to-post width, middle",
        Spot::WidthHigh => "post-to-post width, high",
        Spot::HeightLeft => "sill-to-header height, left",
        Spot::HeightCenter => "sill-to-header height, center",
        Spot::HeightRight => "sill-to-header height, right",
        Spot::HeaderLeft => "header depth, left",
        Spot::HeaderCenter => "header depth, center",
        Spot::HeaderRight => "header depth, right",
        Spot::BowFirst => "roof-bow depth, first bow",
        Spot::BowSecond => "roof-bow depth, second bow",
        Spot::BowThird => "roof-bow depth, third bow",
        Spot::DiagonalRising => "diagonal from low left to high right",
        Spot::DiagonalFalling => "diagonal from high left to low right",
        Spot::LoopSillToRoof => "sill to roof skin",
        Spot::LoopSillToBow => "sill to underside of the bow",
        Spot::PostLeft => "left post width",
        Spot::PostRight => "right post width",
    }
}
