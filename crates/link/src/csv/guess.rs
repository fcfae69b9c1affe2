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

/// What a column of this name holds; ignored where the name does not say.
pub(super) fn what(header: &Header) -> What {
    match reading(header) {
        // How many there are is no length, and no id either.
        Some(_) if is_count(header) => What::Ignored,
        Some(spot) => What::Reading(spot),
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
    if wide {
        let unclear = tall || bow || roof;
        return if unclear { None } else { width(header, post && !across) };
    }
    if bow {
        // From the header to a bow is neither's depth.
        return if header.before(&HEADER, &BOW) { None } else { place(header, Dimension::Bow) };
    }
    if tall {
        // A "header height" may be either, and a roof is above the header: nobody guesses it.
        let unclear = (lintel && !sill) || roof || across;
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
mod tests {
    use super::super::Column;
    use super::*;
    use Spot::*;
    use What::Reading;

    #[test]
    fn names_that_people_give_columns() {
        let cases: &[(What, &[&str])] = &[
            (
                Reading(WidthMiddle),
                &[
                    "Width",
                    "WIDTH",
                    "width_in",
                    "Width (mm)",
                    "W",
                    "Opening width",
                    "Post to Post",
                    "post-to-post width",
                    "post_to_post_width_inches",
                    "postToPostWidth",
                    "Between posts",
                    "Width middle",
                    "width.middle",
                    "Width 2",
                    "P2P",
                    "Clear Width\"",
                    "left post to right post",
                ],
            ),
            (Reading(WidthLow), &["width.low", "Width bottom", "width1", "Width (low) in"]),
            (Reading(WidthHigh), &["Width top", "width_high", "WIDTH3", "3rd width"]),
            (
                Reading(HeightCenter),
                &[
                    "Height",
                    "Sill to header",
                    "sill-to-header height (in)",
                    "sillToHeader_mm",
                    "H",
                    "Door height",
                    "floor to header",
                    "HT",
                ],
            ),
            (Reading(HeightLeft), &["Height left", "height L", "Sill to header 1"]),
            (
                Reading(HeaderCenter),
                &[
                    "Header",
                    "Header depth",
                    "Hdr Depth",
                    "hdr_depth_in",
                    "Headroom",
                    "header.center",
                ],
            ),
            (Reading(HeaderRight), &["Header depth right", "hdr R"]),
            (
                Reading(BowFirst),
                &["Bow", "Roof bow", "roof-bow depth", "RoofBow", "roofBowDepthMm", "bow 1"],
            ),
            (Reading(BowSecond), &["Second bow", "bow2"]),
            (Reading(DiagonalRising), &["Diagonal", "diag 1", "diagonal.rising", "Diagonal (in)"]),
            (Reading(DiagonalFalling), &["Diagonal 2", "diagonal_falling"]),
            (Reading(LoopSillToBow), &["Sill to bow", "loop.sill_to_bow", "sillToBowIn"]),
            (Reading(LoopSillToRoof), &["Sill to roof", "loop.sill_to_roof", "floor to roof skin"]),
            (Reading(PostLeft), &["Left post", "post.left", "Post width left"]),
            (Reading(PostRight), &["Right post", "PostRight"]),
            (What::Unit, &["Unit", "units", "UOM", "Unit of measure"]),
            (What::Id, &["ID", "Order", "Order #", "order_no", "PO", "Job number", "#", "Ref."]),
            (What::Vehicle, &["Truck", "Unit #", "unit no.", "Trailer ID", "Plate", "VIN"]),
            (What::Prepared, &["Prepared", "frame prepared"]),
            (What::Note, &["Notes", "Comment", "remarks"]),
            (What::Contact, &["Contact", "Customer", "Phone"]),
            (What::Link, &["Link", "Order link", "URL"]),
            (What::Ignored, &["", "Color", "Header height", "Price", "Shipped"]),
        ];
        for (expected, names) in cases {
            for name in *names {
                assert_eq!(Column::guess(name).what, *expected, "{name:?}");
            }
        }
    }

    #[test]
    fn what_is_measured_goes_before_where() {
        let cases: &[(What, &[&str])] = &[
            (
                Reading(HeightLeft),
                &[
                    "Height at left post",
                    "Left post height",
                    "Sill to header at left post",
                    "Altura poste izquierdo",
                    "Hauteur au poteau gauche",
                ],
            ),
            (Reading(HeightCenter), &["Height at center", "Hauteur au centre", "Height at sill"]),
            (
                Reading(HeightRight),
                &["height_at_right_post_in", "Altura en el poste derecho", "Right jamb height"],
            ),
            (Reading(HeaderLeft), &["Header at left post", "Linteau au poteau gauche"]),
            (Reading(HeaderRight), &["Header depth, right post", "Dintel en el poste derecho"]),
            (
                Reading(WidthLow),
                &[
                    "Width at sill",
                    "Post-to-post width at sill (in)",
                    "Width at floor",
                    "Width, top of sill",
                    "Largeur au seuil",
                    "Ancho en el umbral",
                ],
            ),
            (
                Reading(WidthHigh),
                &[
                    "Width at header",
                    "Width, bottom of header",
                    "Largeur au linteau",
                    "Ancho en el dintel",
                ],
            ),
            (
                Reading(WidthMiddle),
                &["Ancho entre postes", "Largeur entre poteaux", "Jamb to jamb", "Entre postes"],
            ),
            (
                Reading(PostLeft),
                &["Left post width", "Ancho del poste izq.", "Largeur du poteau gauche", "L post"],
            ),
            (Reading(PostRight), &["Width right post", "Montant droit"]),
            (Reading(BowFirst), &["Bow depth at header", "Bow depth at left post"]),
            (
                What::Ignored,
                &[
                    // The width of which, the height of what?
                    "Width x height",
                    "Post width",
                    "Width at left post",
                    "Header width",
                    "Sill width",
                    "Floor width",
                    "Largeur du plancher",
                    "Left width",
                    "Bow width",
                    "Roof height",
                    "Height to roof",
                    "Header to bow",
                    "Left and right post",
                    "Sill to header width",
                    "Posts",
                ],
            ),
        ];
        for (expected, names) in cases {
            for name in *names {
                assert_eq!(Column::guess(name).what, *expected, "{name:?}");
            }
        }
    }

    #[test]
    fn how_many_there_are_is_no_reading_and_no_id() {
        for name in [
            "# of bows",
            "#bows",
            "Bow #",
            "Bow count",
            "Bow qty",
            "Number of bows",
            "No. of roof bows",
            "How many bows",
            "Bows",
            "Post count",
            "Cantidad de arcos",
            "N.º de arcos",
            "Nº de arcos",
            "Número de arcos",
            "Arcos",
            "Nombre d’arceaux",
            "N° d'arceaux",
            "Nbre arceaux",
        ] {
            assert_eq!(Column::guess(name).what, What::Ignored, "{name:?}");
        }
        for (name, spot) in [
            ("Bow #2", BowSecond),
            ("Bow no. 1", BowFirst),
            ("Width number 3", WidthHigh),
            ("Depth of bows", BowFirst),
            ("Profundidad de los arcos", BowFirst),
        ] {
            assert_eq!(Column::guess(name).what, Reading(spot), "{name:?}");
        }
    }
}
