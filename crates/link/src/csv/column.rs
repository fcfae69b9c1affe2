//! What a column holds: guessed from its name, put right by a person.

use super::header::Header;
use hangtrue_core::{Dimension, Spot, Unit};

/// What a column holds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum What {
    /// Nothing that is read here.
    #[default]
    Ignored,
    /// What the sender calls the order.
    Id,
    /// A reading.
    Reading(Spot),
    /// The unit of the row's bare numbers.
    Unit,
    /// Whether the frame is as it will stay.
    Prepared,
    /// Which truck.
    Vehicle,
    /// A note.
    Note,
    /// How to reach the sender.
    Contact,
    /// A whole order as a link; the other columns then only name it.
    Link,
}

impl What {
    /// Those that are no reading, in the order they are offered.
    pub const OTHERS: [Self; 8] = [
        Self::Ignored,
        Self::Id,
        Self::Unit,
        Self::Prepared,
        Self::Vehicle,
        Self::Note,
        Self::Contact,
        Self::Link,
    ];

    /// Its name in files; a reading's is its place, `width.low`.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Reading(spot) => spot.key(),
            Self::Ignored => "ignored".to_owned(),
            Self::Id => "id".to_owned(),
            Self::Unit => "unit".to_owned(),
            Self::Prepared => "prepared".to_owned(),
            Self::Vehicle => "vehicle".to_owned(),
            Self::Note => "note".to_owned(),
            Self::Contact => "contact".to_owned(),
            Self::Link => "link".to_owned(),
        }
    }

    /// What has that name.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        let reading = || Spot::from_key(key).map(Self::Reading);
        Self::OTHERS.into_iter().find(|what| what.key() == key).or_else(reading)
    }
}

/// What a bare number in a column is measured in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// Inches.
    Inch,
    /// Feet.
    Foot,
    /// Millimetres.
    Millimetre,
    /// Centimetres.
    Centimetre,
    /// Metres.
    Metre,
}

impl Measure {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 5] =
        [Self::Inch, Self::Foot, Self::Millimetre, Self::Centimetre, Self::Metre];

    /// The measure of a name, in lower case.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        Some(match name {
            "in" | "inch" | "inches" | "ins" | "\"" => Self::Inch,
            "ft" | "foot" | "feet" => Self::Foot,
            "mm" | "millimeter" | "millimeters" | "millimetre" | "millimetres" => Self::Millimetre,
            "cm" | "centimeter" | "centimeters" | "centimetre" | "centimetres" => Self::Centimetre,
            "m" | "meter" | "meters" | "metre" | "metres" => Self::Metre,
            _ => return None,
        })
    }

    /// As it is written behind a number.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Foot => "ft",
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Metre => "m",
        }
    }

    /// The unit an order of such numbers is written in.
    #[must_use]
    pub const fn unit(self) -> Unit {
        match self {
            Self::Inch | Self::Foot => Unit::Inch,
            Self::Millimetre | Self::Centimetre | Self::Metre => Unit::Millimetre,
        }
    }
}

impl From<Unit> for Measure {
    fn from(unit: Unit) -> Self {
        match unit {
            Unit::Inch => Self::Inch,
            Unit::Millimetre => Self::Millimetre,
        }
    }
}

/// One column.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Column {
    /// What it holds.
    pub what: What,
    /// What its bare numbers are measured in, where its name says so.
    pub measure: Option<Measure>,
}

impl Column {
    /// What a column of this name holds; ignored where the name does not say.
    ///
    /// Names in English, Spanish or French, in any case, with any separators, with or without
    /// a unit: `Width (in)`, `sillToHeader_mm`, `Hdr Depth`, `width.low`, `Altura izq.`.
    #[must_use]
    pub fn guess(name: &str) -> Self {
        let header = Header::of(name);
        let what = reading(&header).map(What::Reading).or_else(|| other(&header));
        let what = what.unwrap_or_default();
        // Where the only word is a unit it is the column of units.
        Self { what, measure: header.measure.filter(|_| matches!(what, What::Reading(_))) }
    }

    /// Guesses for a whole row of names: where two would be the same place, the later one
    /// gets the next free place of its dimension; where none is free it is a repeat.
    #[must_use]
    pub fn guess_all<T: AsRef<str>>(names: &[T]) -> Vec<Self> {
        let mut columns: Vec<Self> = Vec::with_capacity(names.len());
        for name in names {
            let mut column = Self::guess(name.as_ref());
            let taken = |what| columns.iter().any(|column| column.what == what);
            match column.what {
                What::Reading(spot) if taken(column.what) => {
                    let spots = spot.dimension().map(Dimension::spots);
                    let mut free = spots.into_iter().flatten().map(What::Reading);
                    if let Some(what) = free.find(|what| !taken(*what)) {
                        column.what = what;
                    }
                }
                // The first id is the id; a second would only overwrite it.
                What::Ignored | What::Reading(_) | What::Note | What::Contact => {}
                what if taken(what) => column.what = What::Ignored,
                _ => {}
            }
            columns.push(column);
        }
        columns
    }
}

const LOWER: [&str; 4] = ["low", "lower", "bottom", "btm"];
const UPPER: [&str; 3] = ["high", "upper", "top"];

/// The place a name speaks of.
fn reading(header: &Header) -> Option<Spot> {
    if header.any(&["diagonal", "diag", "diagonals"]) {
        let falling = header.any(&["falling", "down"]) || header.number() == Some(1);
        let falling = falling || header.before(&UPPER, &LOWER);
        return Some(if falling { Spot::DiagonalFalling } else { Spot::DiagonalRising });
    }
    let sill = header.any(&["sill", "floor", "threshold"]);
    let bow = header.any(&["bow", "bows", "roofbow"]);
    if header.has("loop") || (sill && header.any(&["bow", "roof"])) {
        return Some(if bow { Spot::LoopSillToBow } else { Spot::LoopSillToRoof });
    }
    if sill {
        return place(header, Dimension::Height);
    }
    if bow {
        return place(header, Dimension::Bow);
    }
    let post = header.any(&["post", "posts", "jamb"]);
    if post && header.count("post") < 2 && !header.has("between") && !header.has("posts") {
        if header.any(&["left", "l"]) {
            return Some(Spot::PostLeft);
        }
        if header.any(&["right", "r"]) {
            return Some(Spot::PostRight);
        }
    }
    if post || header.any(&["width", "wide", "w", "wd"]) || header.pair("p", "2") {
        return place(header, Dimension::Width);
    }
    let headers = ["header", "hdr", "headroom", "lintel"];
    if header.any(&["height", "tall", "h", "ht", "hgt"]) {
        // A "header height" may be either: nobody guesses it.
        return if header.any(&headers) { None } else { place(header, Dimension::Height) };
    }
    if header.any(&headers) {
        return place(header, Dimension::Header);
    }
    None
}

/// The place within a dimension; the one that is always taken where none is named.
fn place(header: &Header, dimension: Dimension) -> Option<Spot> {
    let [first, second, third] = dimension.spots();
    let names: [&[&str]; 3] = match dimension {
        Dimension::Width => [&LOWER, &["middle", "mid", "center", "centre"], &UPPER],
        Dimension::Height | Dimension::Header => {
            [&["left", "l"], &["center", "centre", "middle", "mid", "ctr"], &["right", "r"]]
        }
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
    fn a_unit_in_the_name_is_the_columns() {
        assert_eq!(Column::guess("Width (mm)").measure, Some(Measure::Millimetre));
        assert_eq!(Column::guess("height_ft").measure, Some(Measure::Foot));
        assert_eq!(Column::guess("Bow").measure, None);
        assert_eq!(Column::guess("Notes in").measure, None);
        // An inch mark stands behind something.
        assert_eq!(Column::guess("Width\"").measure, Some(Measure::Inch));
        assert_eq!(Column::guess("\"Width").measure, None);
    }

    #[test]
    fn a_measure_has_many_names() {
        for (measure, names) in [
            (Measure::Inch, &["in", "inch", "inches", "ins", "\""][..]),
            (Measure::Foot, &["ft", "foot", "feet"]),
            (Measure::Millimetre, &["mm", "millimeter", "millimetres"]),
            (Measure::Centimetre, &["cm", "centimetre", "centimeters"]),
            (Measure::Metre, &["m", "meter", "metres"]),
        ] {
            assert_eq!(Measure::from_name(measure.symbol()), Some(measure));
            for name in names {
                assert_eq!(Measure::from_name(name), Some(measure), "{name}");
            }
        }
        assert_eq!(Measure::from_name("yd"), None);
    }

    #[test]
    fn the_same_name_again_is_the_next_place_then_a_repeat() {
        let whats = |names: &[&str]| -> Vec<What> {
            Column::guess_all(names).into_iter().map(|column| column.what).collect()
        };
        assert_eq!(
            whats(&["ID", "Width", "Width", "Width", "Width", "Order"]),
            [
                What::Id,
                Reading(WidthMiddle),
                Reading(WidthLow),
                Reading(WidthHigh),
                Reading(WidthMiddle),
                What::Ignored
            ]
        );
        assert_eq!(whats(&["Note", "Remarks"]), [What::Note, What::Note]);
        assert_eq!(whats(&["Phone", "Customer"]), [What::Contact, What::Contact]);
        assert_eq!(
            whats(&["Diagonal", "Diagonal"]),
            [Reading(DiagonalRising), Reading(DiagonalRising)]
        );
    }

    #[test]
    fn every_kind_of_column_is_found_by_its_name_in_files() {
        let all = What::OTHERS.into_iter().chain(Spot::ALL.map(Reading));
        for what in all {
            assert_eq!(What::from_key(&what.key()), Some(what));
            // A file that names its columns so needs no guess.
            assert_eq!(Column::guess(&what.key()).what, what, "{what:?}");
        }
    }
}
