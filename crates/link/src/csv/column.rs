//! What a column holds: guessed from its name, put right by a person.

use super::{guess, header::Header};
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
        let what = guess::what(&header);
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
