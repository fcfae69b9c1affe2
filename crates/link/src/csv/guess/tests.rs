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
            &["Header", "Header depth", "Hdr Depth", "hdr_depth_in", "Headroom", "header.center"],
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
        (
            Reading(HeightCenter),
            &[
                "Height at center",
                "Hauteur au centre",
                "Height at sill",
                "Altura del umbral al dintel",
                "Body door height",
            ],
        ),
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
                "Truck width at sill",
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
                "Ancho de la puerta en el dintel",
            ],
        ),
        (
            Reading(WidthMiddle),
            &[
                "Ancho entre postes",
                "Largeur entre poteaux",
                "Jamb to jamb",
                "Entre postes",
                "Trailer width between posts",
            ],
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
                "Width of the header",
                "Ancho del dintel",
                "Largeur du linteau",
                "Ancho del dintel en mm",
                "Sill width",
                "Ancho del umbral",
                "Ancho en el poste izquierdo",
                "Floor width",
                "Largeur du plancher",
                "Left width",
                "Bow width",
                "Roof height",
                "Height to roof",
                "Header to bow",
                "Bow spacing",
                "Entre arcos",
                "Floor height",
                "Altura del piso",
                "Hauteur du seuil",
                "Truck width",
                "Overall height (in)",
                "Ancho exterior de la caja",
                "Largeur hors tout",
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
