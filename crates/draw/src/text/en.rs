//! English (US).

use super::{Together, Words};
use hangtrue_core::{Dimension, Spot};

pub(super) static WORDS: Words = Words {
    place,
    spot,
    drawn: |length| length,
    reads: |spot, value| [spot, ": ", value, "."].concat(),
    unread: |spot| [spot, ": not read yet."].concat(),
    off_scale: "off scale",
    not_to_scale: "Not to scale: a reading is far out.",
    not_to_scale_short: "not to scale",
    assumed: "Dashed parts have no reading yet and are drawn as usual.",
    elevation_title: "Rear of the truck body, seen from behind",
    elevation: "The opening between the two door posts, the sill below, the header above. \
                The tape lies where the line is.",
    section_title: "Header and roof, cut from back to front, seen from the side",
    section: "The header is at the left, the inside of the body at the right. The roof skin runs \
              over both; the roof bows hang under it, and the open door lies under the bows. \
              The opening is shortened by a break.",
    tape_title: "The tape at this reading",
    tape: |value| ["An arrow points at ", value, " on the tape."].concat(),
    foot: ["ft", "ft"],
    metre: "m",
    roof_skin: "roof skin",
    header: "header",
    bow: "bow",
    sill: "sill",
    open_door: "open door",
    rear: "rear",
    inside: "inside",
};

pub(super) static TOGETHER: Together = Together {
    dimension,
    dimension_short,
    order_title: "The opening with the four ordered numbers",
    order: "At the left the rear of the truck body, seen from behind, with width and height. \
            At the right the header and a roof bow in section, with their depths.",
    residuals_title: "How the readings fit together",
    residuals: "The frame as all readings together say it is, its lean and bends drawn larger; \
                dashed, a square frame. A tape that does not end at the frame does not fit.",
    leans_left: |value| ["The top leans to the left by ", value, "."].concat(),
    leans_right: |value| ["The top leans to the right by ", value, "."].concat(),
    too_much: |spot, value| [spot, ": reads ", value, " more than the others say."].concat(),
    too_little: |spot, value| [spot, ": reads ", value, " less than the others say."].concat(),
    all_fit: "Every tape fits.",
    exaggerated: |times| ["bends drawn up to ", times, " times too big"].concat(),
};

fn place(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "low",
        Spot::WidthMiddle => "middle",
        Spot::WidthHigh => "high",
        Spot::HeightLeft | Spot::HeaderLeft => "left",
        Spot::HeightCenter | Spot::HeaderCenter => "center",
        Spot::HeightRight | Spot::HeaderRight => "right",
        Spot::BowFirst => "1st bow",
        Spot::BowSecond => "2nd",
        Spot::BowThird => "3rd",
        Spot::DiagonalRising => "rising",
        Spot::DiagonalFalling => "falling",
        Spot::LoopSillToRoof => "to the roof",
        Spot::LoopSillToBow => "to the bow",
        Spot::PostLeft => "left post",
        Spot::PostRight => "right post",
    }
}

fn dimension(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "Post-to-post width",
        Dimension::Height => "Sill-to-header height",
        Dimension::Header => "Header depth",
        Dimension::Bow => "Roof-bow depth",
    }
}

fn dimension_short(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "width",
        Dimension::Height => "height",
        Dimension::Header => "header",
        Dimension::Bow => "bow",
    }
}

fn spot(spot: Spot) -> &'static str {
    match spot {
        Spot::WidthLow => "Width low, near the sill",
        Spot::WidthMiddle => "Width half-way up",
        Spot::WidthHigh => "Width high, near the header",
        Spot::HeightLeft => "Height at the left post",
        Spot::HeightCenter => "Height at the center",
        Spot::HeightRight => "Height at the right post",
        Spot::HeaderLeft => "Header depth at the left",
        Spot::HeaderCenter => "Header depth at the center",
        Spot::HeaderRight => "Header depth at the right",
        Spot::BowFirst => "Depth of the first roof bow inside the door",
        Spot::BowSecond => "Depth of the second roof bow",
        Spot::BowThird => "Depth of the third roof bow",
        Spot::DiagonalRising => "Diagonal from low left to high right",
        Spot::DiagonalFalling => "Diagonal from high left to low right",
        Spot::LoopSillToRoof => "From the sill straight up to the roof skin",
        Spot::LoopSillToBow => "From the sill straight up to the underside of the first bow",
        Spot::PostLeft => "Width of the left post",
        Spot::PostRight => "Width of the right post",
    }
}
