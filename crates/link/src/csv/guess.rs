//! What a column's name speaks of.

use super::What;
use super::header::Header;
use hangtrue_core::{Dimension, Spot};

/// Words of a place near the sill.
const LOWER: [&str; 4] = ["low", "lower", "bottom", "btm"];
/// Words of a place near the header.
const UPPER: [&str; 3] = ["high", "upper", "top"];
/// Words of a place between two others.
const MIDDLE: [&str; 5] = ["middle", "mid", "center", "centre", "ctr"];
const LEFT: [&str; 2] = ["left", "l"];
const RIGHT: [&str; 2] = ["right", "r"];

const WIDE: [&str; 4] = ["width", "wide", "w", "wd"];
const TALL: [&str; 5] = ["height", "tall", "h", "ht", "hgt"];
const HEADER: [&str; 4] = ["header", "hdr", "headroom", "lintel"];
const SILL: [&str; 3] = ["sill", "floor", "threshold"];
const BOW: [&str; 4] = ["bow", "bows", "roofbow", "roofbows"];
const POST: [&str; 4] = ["post", "posts", "jamb", "jambs"];
/// Words of the vehicle, whose width and height are not its opening's.
const VEHICLE: [&str; 4] = ["truck", "trailer", "vehicle", "body"];
const OUTSIDE: [&str; 5] = ["overall", "outside", "outer", "exterior", "total"];

/// What a column of this name holds; ignored where the name does not say.
pub(super) fn what(header: &Header) -> What {
    match reading(header) {
        // How many there are is no length, and no id either.
        Some(_) if is_count(header) => What::Ignored,
        Some(spot) => What::Reading(spot),
        // The width of a truck does not name the truck.
        None if header.any(&["width", "wide", "height", "tall"]) => What::Ignored,
        None => other(header).unwrap_or_default(),
    }
}

/// Names that are equal but for places and numbers are of one series.
const PLACES: [&[&str]; 6] =
    [&LOWER, &UPPER, &MIDDLE, &LEFT, &RIGHT, &["front", "rear", "at", "again", "repeat"]];

/// What is left of a name without its place and number.
pub(super) fn series(header: &Header) -> String {
    header.unnumbered(|word| PLACES.iter().any(|places| places.contains(&word)))
}

/// Whether it says how many there are: `# of bows`. Before a number it says which: `Bow #2`.
fn is_count(header: &Header) -> bool {
    let sign = header.number_sign || header.any(&["no", "number", "num", "nr", "n", "\u{ba}"]);
    let unnumbered = header.number().is_none();
    header.any(&["count", "counts", "qty", "quantity", "many"])
        || sign && (unnumbered || header.has("of"))
        // The plural alone is as likely to be their number.
        || header.any(&["bows", "roofbows"]) && !header.has("depth") && unnumbered
}

/// The place a name speaks of. What is measured is decided before what it is measured at:
/// `Height at left post` is a height, `Width at sill` a width.
fn reading(header: &Header) -> Option<Spot> {
    if header.any(&["diagonal", "diag", "diagonals"]) {
        let falling = header.any(&["falling", "down"]) || header.number() == Some(1);
        let falling = falling || header.before(&UPPER, &LOWER);
        return Some(if falling { Spot::DiagonalFalling } else { Spot::DiagonalRising });
    }
    let (wide, tall) = (header.any(&WIDE) || header.pair("p", "2"), header.any(&TALL));
    let (sill, lintel) = (header.any(&SILL), header.any(&HEADER));
    let (bow, roof) = (header.any(&BOW), header.has("roof"));
    let post = header.any(&POST);
    let posts = header.count("post") > 1 || header.count("jamb") > 1;
    let across = post && (posts || header.has("between"));
    if header.has("loop") || (sill && (bow || roof) && !wide) {
        return Some(if bow { Spot::LoopSillToBow } else { Spot::LoopSillToRoof });
    }
    let opening = across || sill || lintel || header.any(&["opening", "door"]);
    let outside = header.any(&OUTSIDE) || header.any(&VEHICLE) && !opening;
    if wide {
        let unclear = tall || bow || roof || outside;
        return if unclear { None } else { width(header, post && !across) };
    }
    if bow {
        // From the header to a bow is neither's depth, nor is what lies between bows.
        let unclear = header.before(&HEADER, &BOW) || header.any(&["spacing", "between"]);
        return if unclear { None } else { place(header, Dimension::Bow) };
    }
    if tall {
        // A "header height" may be either, and a roof is above the header: nobody guesses it.
        // A "floor height" may be the floor's above the ground.
        let floor =
            sill && !lintel && (header.joined(&SILL, &TALL) || header.belongs_to(&SILL, &[]));
        let unclear = (lintel && !sill) || floor || roof || across || outside;
        return if unclear { None } else { place(header, Dimension::Height) };
    }
    if sill {
        return place(header, Dimension::Height);
    }
    if lintel {
        return if across { None } else { place(header, Dimension::Header) };
    }
    if across { place(header, Dimension::Width) } else { side(header).filter(|_| post) }
}

/// The place of a name with a width word; `of_post` where it speaks of one post.
fn width(header: &Header, of_post: bool) -> Option<Spot> {
    if of_post {
        // At a post it may be the opening's, or the post's own.
        return side(header).filter(|_| !header.has("at"));
    }
    let (sill, lintel) = (header.any(&SILL), header.any(&HEADER));
    if sill || lintel {
        // A "header width" may be that of the header, and a floor is wider than its door.
        let at_sill = header.before(&WIDE, &SILL) && (!header.has("floor") || header.has("at"));
        let at_header = header.before(&WIDE, &HEADER);
        // The "width of the header" is the header's own; the "bottom of the header" is a place.
        if [&HEADER[..], &SILL].iter().any(|whose| header.belongs_to(whose, &[&LOWER, &UPPER])) {
            return None;
        }
        return match (sill, lintel) {
            (true, false) if at_sill => Some(Spot::WidthLow),
            (false, true) if at_header => Some(Spot::WidthHigh),
            _ => None,
        };
    }
    // The left of two leaves is not the opening.
    let leaf = header.any(&["left", "right"]) && !header.any(&POST);
    if leaf { None } else { place(header, Dimension::Width) }
}

/// The post on the one side that is named.
fn side(header: &Header) -> Option<Spot> {
    match (header.any(&LEFT), header.any(&RIGHT)) {
        (true, false) => Some(Spot::PostLeft),
        (false, true) => Some(Spot::PostRight),
        _ => None,
    }
}

/// The place within a dimension; the one that is always taken where none is named.
fn place(header: &Header, dimension: Dimension) -> Option<Spot> {
    let [first, second, third] = dimension.spots();
    let names: [&[&str]; 3] = match dimension {
        Dimension::Width => [&LOWER, &MIDDLE, &UPPER],
        Dimension::Height | Dimension::Header => [&LEFT, &MIDDLE, &RIGHT],
        Dimension::Bow => [&["front"], &[], &["rear"]],
    };
    let named = names.iter().position(|names| header.any(names));
    match named.or_else(|| header.number()) {
        Some(0) => Some(first),
        Some(1) => Some(second),
        Some(_) => Some(third),
        None if dimension == Dimension::Bow => Some(first),
        None => Some(second),
    }
}

fn other(header: &Header) -> Option<What> {
    let numbered = header.number_sign || header.any(&["no", "number", "num", "id", "nr"]);
    if header.any(&["link", "url", "href", "payload"]) {
        return Some(What::Link);
    }
    if header.is(&["unit", "units", "uom", "measure"]) && !numbered || header.pair("unit", "of") {
        return Some(What::Unit);
    }
    if header
        .any(&["truck", "trailer", "vehicle", "plate", "vin", "fleet", "body", "unit", "tractor"])
    {
        return Some(What::Vehicle);
    }
    if header.any(&["prepared", "preparation", "built", "ready"]) {
        return Some(What::Prepared);
    }
    if header.any(&["note", "notes", "comment", "comments", "remark", "remarks", "memo"]) {
        return Some(What::Note);
    }
    if header.any(&["contact", "customer", "phone", "tel", "telephone", "email", "mail", "caller"])
    {
        return Some(What::Contact);
    }
    let ids =
        ["id", "order", "po", "ref", "reference", "job", "ticket", "wo", "quote", "row", "key"];
    (numbered || header.any(&ids)).then_some(What::Id)
}

#[cfg(test)]
mod tests;
