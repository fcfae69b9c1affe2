//! What a column holds: guessed from its name, put right by a person.

use super::{guess, header::Header};
use hangtrue_core::{Dimension, Group, Spot, Unit};

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
    /// A whole order as a link; the other columns then only name it, and may not say other
    /// numbers.
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
        Self::of(&Header::of(name))
    }

    fn of(header: &Header) -> Self {
        let what = guess::what(header);
        // Where the only word is a unit it is the column of units.
        Self { what, measure: header.measure.filter(|_| matches!(what, What::Reading(_))) }
    }

    /// Guesses for a whole row of names: where two of one series would be the same place, the
    /// later one gets the next free place of its dimension; where none is free it is a repeat.
    ///
    /// Of two other names for one place, `Old width` and `Opening width`, nobody can know which
    /// one is ordered: no column of that dimension is then guessed.
    #[must_use]
    pub fn guess_all<T: AsRef<str>>(names: &[T]) -> Vec<Self> {
        let headers: Vec<Header> = names.iter().map(|name| Header::of(name.as_ref())).collect();
        let mut columns: Vec<Self> = Vec::with_capacity(names.len());
        let unclear = unclear(&headers);
        for header in &headers {
            let mut column = Self::of(header);
            let taken = |what| columns.iter().any(|column| column.what == what);
            match column.what {
                What::Reading(spot) if unclear.contains(&spot.group()) => column = Self::default(),
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

/// The groups in which names of different series speak of one place.
fn unclear(headers: &[Header]) -> Vec<Group> {
    let mut first: Vec<(Spot, String)> = Vec::new();
    let mut unclear: Vec<Group> = Vec::new();
    for header in headers {
        let What::Reading(spot) = guess::what(header) else { continue };
        let series = guess::series(header);
        match first.iter().find(|(of, _)| *of == spot) {
            None => first.push((spot, series)),
            Some((_, known)) if *known == series => {}
            Some(_) => unclear.push(spot.group()),
        }
    }
    unclear
}

#[cfg(test)]
mod tests {
    use super::*;
    use Spot::*;
    use What::Reading;

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

    fn whats(names: &[&str]) -> Vec<What> {
        Column::guess_all(names).into_iter().map(|column| column.what).collect()
    }

    #[test]
    fn two_names_for_one_place_leave_its_dimension_unguessed() {
        assert_eq!(
            whats(&["Old door width", "Height", "Opening width"]),
            [What::Ignored, Reading(HeightCenter), What::Ignored]
        );
        // Nor can the place that only one of them names be told from the other's.
        assert_eq!(whats(&["Width 1", "Width 2", "Old width"]), [What::Ignored; 3]);
        let series = [Reading(WidthMiddle), Reading(WidthLow), Reading(WidthHigh)];
        for names in [
            ["Width", "width (mm)", "WIDTH"],
            ["Width 2", "Width 1", "Width 3"],
            ["Width", "Width at bottom", "Width 2"],
            ["Width middle", "Width middle again", "Width 4"],
        ] {
            assert_eq!(whats(&names), series, "{names:?}");
        }
        assert_eq!(whats(&["Left post", "Width of left post"]), [What::Ignored; 2]);
        let column = &Column::guess_all(&["Old width (in)", "Width (in)"])[0];
        assert_eq!(column.measure, None, "what is ignored has no unit");
    }

    #[test]
    fn the_same_name_again_is_the_next_place_then_a_repeat() {
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
