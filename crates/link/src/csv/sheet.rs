//! A table: its columns, and its rows one at a time.

use super::read::{Delimiter, Mark, record};
use super::{Column, Fault, Row, What, row};
use hangtrue_core::length::read;
use hangtrue_core::profile::Profile;
use hangtrue_core::{Dimension, Length, Unit};
use std::borrow::Cow;

/// How a table is read. It does not hold the table: [`Sheet::next`] is given it.
#[derive(Clone, Debug, PartialEq)]
pub struct Sheet {
    /// What stands between its fields.
    pub delimiter: Delimiter,
    /// The columns' names; `1`, `2`, … where the first row is a row like the others.
    pub names: Vec<String>,
    /// What each column holds: guessed, to be put right.
    pub columns: Vec<Column>,
    /// What bare numbers are in where neither row nor column says: guessed, to be put right.
    pub unit: Unit,
    /// What the numbers of a link's order are taken by, to be held against the cells beside
    /// it: the built-in rules, to be put right.
    pub profile: Profile,
    /// Where the rows begin.
    pub start: Mark,
}

impl Sheet {
    /// The table of `text`, with its columns guessed.
    ///
    /// # Errors
    /// When there is nothing in it, or its first row cannot be read.
    pub fn open(text: &str) -> Result<Self, Fault> {
        let mut mark = Mark::start(text);
        let begins = text.get(mark.at..).unwrap_or_default();
        let delimiter = Delimiter::guess(begins.trim_start_matches(['\r', '\n']));
        let (first_at, first) = loop {
            let at = mark;
            match record(text, delimiter, &mut mark) {
                None => return Err(Fault::Empty),
                Some(Err(fault)) => return Err(fault),
                Some(Ok(fields)) if is_blank(&fields) => {}
                Some(Ok(fields)) => break (at, fields),
            }
        };
        let headed = !is_of_readings(&first);
        let (names, columns) = if headed {
            let names: Vec<String> = first.iter().map(|name| name.trim().to_owned()).collect();
            let columns = Column::guess_all(&names);
            (names, columns)
        } else {
            mark = first_at;
            let names = (1..=first.len()).map(|number| number.to_string()).collect();
            (names, as_said(&first))
        };
        let unit = guess_unit(text, delimiter, mark, &columns);
        Ok(Self { delimiter, names, columns, unit, profile: Profile::default(), start: mark })
    }

    /// The row at `mark`, which is moved behind it; [`None`] at the end. `text` is what
    /// the table was opened with.
    #[must_use]
    pub fn next(&self, text: &str, mark: &mut Mark) -> Option<Row> {
        loop {
            let line = mark.line;
            return match record(text, self.delimiter, mark)? {
                Ok(fields) if is_blank(&fields) => continue,
                Ok(fields) => {
                    let Self { columns, names, unit, profile, .. } = self;
                    Some(row::row(line, &fields, columns, names, *unit, profile))
                }
                Err(fault) => Some(Row {
                    line,
                    id: String::new(),
                    source: super::Source::Cells,
                    order: Err(fault),
                }),
            };
        }
    }
}

/// A blank line, or a row of nothing but empty cells, as spreadsheets leave at the end.
fn is_blank(fields: &[Cow<'_, str>]) -> bool {
    fields.iter().all(|field| field.trim().is_empty())
}

/// Whether the first row is a row of readings: at least four cells of it, and more than
/// half of those that are not empty.
fn is_of_readings(fields: &[Cow<'_, str>]) -> bool {
    let filled = fields.iter().filter(|field| !field.trim().is_empty()).count();
    let readings = fields.iter().filter(|field| read(field, Unit::Inch).is_ok()).count();
    readings >= 4 && readings.saturating_mul(2) > filled
}

/// Columns without names: the last four readings are the four numbers in the order they
/// are said, and a column before them is what the sender calls the order.
fn as_said(fields: &[Cow<'_, str>]) -> Vec<Column> {
    let mut columns = vec![Column::default(); fields.len()];
    let readable = fields.iter().enumerate().rev().filter(|(_, f)| read(f, Unit::Inch).is_ok());
    let mut numbers: Vec<usize> = readable.map(|(at, _)| at).take(4).collect();
    numbers.reverse();
    for (at, dimension) in numbers.iter().zip(Dimension::ALL) {
        let [first, middle, _] = dimension.spots();
        let spot = if dimension == Dimension::Bow { first } else { middle };
        if let Some(column) = columns.get_mut(*at) {
            column.what = What::Reading(spot);
        }
    }
    if numbers.first().is_some_and(|first| *first > 0)
        && let Some(column) = columns.first_mut()
    {
        column.what = What::Id;
    }
    columns
}

/// Bare widths and heights above this are millimetres: 300 in are 25 feet.
const MILLIMETRES_FROM: Length = Length::from_inches(300);
/// How many rows are looked at.
const LOOKED_AT: usize = 20;

/// Millimetres where most widths and heights, taken as inches, would be no opening.
fn guess_unit(text: &str, delimiter: Delimiter, mut mark: Mark, columns: &[Column]) -> Unit {
    let (mut inches, mut millimetres) = (0_usize, 0_usize);
    for _ in 0..LOOKED_AT {
        let Some(Ok(fields)) = record(text, delimiter, &mut mark) else { break };
        for (field, column) in fields.iter().zip(columns) {
            let What::Reading(spot) = column.what else { continue };
            let long = matches!(spot.dimension(), Some(Dimension::Width | Dimension::Height));
            if !long || column.measure.is_some() {
                continue;
            }
            let Ok(length) = read(field, Unit::Inch) else { continue };
            if read(field, Unit::Millimetre) == Ok(length) {
                continue; // It says its own unit.
            }
            if length > MILLIMETRES_FROM {
                millimetres = millimetres.saturating_add(1);
            } else {
                inches = inches.saturating_add(1);
            }
        }
    }
    let mut named = columns.iter().filter_map(|column| column.measure).map(super::Measure::unit);
    if inches == 0 && millimetres == 0 {
        return named.next().unwrap_or_default();
    }
    if millimetres > inches { Unit::Millimetre } else { Unit::Inch }
}

#[cfg(test)]
mod tests {
    use super::super::{Measure, Source};
    use super::*;
    use hangtrue_core::{Spot, check};
    use proptest::prelude::*;

    fn rows(text: &str) -> Vec<Row> {
        let sheet = Sheet::open(text).unwrap();
        let mut mark = sheet.start;
        core::iter::from_fn(|| sheet.next(text, &mut mark)).collect()
    }

    fn length(row: &Row, spot: Spot) -> Option<Length> {
        row.order.as_ref().unwrap().survey.lengths(spot).next()
    }

    #[test]
    fn a_spreadsheets_file_is_read() {
        let text = "\u{feff}Order #,Truck,Width (in),Sill to header,Header depth,Bow,Frame prepared,Notes\r\n\
            A-1,Demo 1,92 3/16,\"8' 5 1/2\"\"\",9 1/2,1 1/4,yes,\r\n\
            A-2,,92.5,101.5,9.5,1.25,,\"two\r\nlines\"\r\n\
            ,,,,,,,\r\n";
        let rows = rows(text);
        assert_eq!(rows.len(), 2);
        assert_eq!((rows[0].line, rows[0].id.as_str()), (2, "A-1"));
        assert_eq!(rows[0].order.as_ref().unwrap().vehicle, "Demo 1");
        assert!(rows[0].order.as_ref().unwrap().survey.prepared);
        assert_eq!(length(&rows[0], Spot::HeightCenter), Some(Length::from_sixteenths(1624)));
        assert_eq!(rows[1].order.as_ref().unwrap().note, "two\r\nlines");
        assert_eq!(length(&rows[1], Spot::BowFirst), Some(Length::from_sixteenths(20)));
    }

    #[test]
    fn units_come_from_the_row_the_column_or_the_numbers() {
        let row = |text: &str| rows(text).remove(0);
        let mixed = row("width,height (cm),header mm,bow,unit\n2345,256.6,242,32,mm\n");
        assert_eq!(mixed.order.as_ref().unwrap().survey.unit, Unit::Millimetre);
        assert_eq!(length(&mixed, Spot::HeightCenter), Some(Length::from_mm(2566)));
        assert_eq!(length(&mixed, Spot::HeaderCenter), Some(Length::from_mm(242)));
        // A cell that says its own unit keeps it.
        let own = row("width (mm),height,header,bow\n92 in,8 ft 5 in,9 1/2,1 1/4\n");
        assert_eq!(length(&own, Spot::WidthMiddle), Some(Length::from_inches(92)));
        let bare = Sheet::open("width,height,header,bow\n2345,2566,242,32\n").unwrap();
        assert_eq!(bare.unit, Unit::Millimetre);
        let feet = row("width ft,height ft,header,bow\n8,7.5,9,1\n");
        assert_eq!(length(&feet, Spot::WidthMiddle), Some(Length::from_inches(96)));
        // 7 ft 6 in, or 7 ft 5 in? The reader of lengths refuses it, and so does the check.
        assert_eq!(length(&feet, Spot::HeightCenter), None);
        assert_eq!(Sheet::open("width mm,height,header\n").unwrap().unit, Unit::Millimetre);
    }

    /// `24 1/4` in a column of centimetres is no 24 1/4 in.
    #[test]
    fn what_a_columns_unit_does_not_take_is_not_read_in_another() {
        let row = |text: &str| rows(text).remove(0);
        for unit in ["cm", "mm", "m"] {
            let odd =
                row(&format!("width (in),height (in),header ({unit}),bow (in)\n92,101,24 1/4,1\n"));
            let inches = Length::from_sixteenths(24 * 16 + 4);
            assert_ne!(length(&odd, Spot::HeaderCenter), Some(inches), "{unit}");
        }
        let said = row("width in cm,height in cm,header depth in cm,bow in cm\n234,256,24,3.2\n");
        assert_eq!(length(&said, Spot::HeaderCenter), Some(Length::from_mm(240)));
        assert_eq!(length(&said, Spot::WidthMiddle), Some(Length::from_mm(2340)));
    }

    #[test]
    fn bare_numbers_without_names_are_taken_as_they_are_said() {
        let pasted = rows("92 3/16\t101 1/2\t9 1/2\t1 1/4\nA\tb\tc\td\n");
        assert_eq!(length(&pasted[0], Spot::HeaderCenter), Some(Length::from_sixteenths(152)));
        let named = rows("T-4,92,101,9,1\nT-5,93,101,9,1\n");
        assert_eq!((named.len(), named[1].id.as_str()), (2, "T-5"));
        assert_eq!(length(&named[1], Spot::WidthMiddle), Some(Length::from_inches(93)));
    }

    #[test]
    fn a_row_that_is_no_order_says_why_and_the_next_is_read() {
        let text = "id,width,height,header,bow,unit,prepared\n\
            a,92,101,9,1,in\n\
            b,92,101,9,1,ells,yes\n\
            c,92,101,9,1,in,perhaps\n\
            d,,,,,,\n\
            e,92 3/16\",101,9,1,in,no\n\
            f,so wide,101,9,1,in,no\n";
        let faults: Vec<_> = rows(text).into_iter().map(|row| row.order.err()).collect();
        let word = |column: &str, found: &str, known| {
            Some(Fault::Word { column: column.to_owned(), found: found.to_owned(), known })
        };
        assert_eq!(
            faults,
            [
                Some(Fault::Count { found: 6, expected: 7 }),
                word("unit", "ells", &["in", "ft", "mm", "cm", "m"]),
                word("prepared", "perhaps", &["yes", "no"]),
                Some(Fault::NoReading),
                Some(Fault::Inside { column: 2 }),
                None, // An unreadable reading is a finding of the check.
            ]
        );
    }

    #[test]
    fn a_column_of_links_is_opened() {
        let mut order = hangtrue_core::order::Order::default();
        order.survey.add(Spot::WidthMiddle, "92");
        order.vehicle = "Demo 1".to_owned();
        let url = crate::url("https://dealer.example/door/", &order).unwrap();
        let rows = rows(&format!("order,link\nA,{url}\nB,{}\n", url.replace('#', "#7")));
        assert_eq!((rows[0].source, &rows[0].order), (Source::Link, &Ok(order)));
        assert!(matches!(rows[1].order, Err(Fault::Link(_))));
    }

    #[test]
    fn columns_may_be_put_right() {
        let text = "a,b,c,d\nx,101,9,1\n";
        let mut sheet = Sheet::open(text).unwrap();
        sheet.columns[1] =
            Column { what: What::Reading(Spot::HeightLeft), measure: Some(Measure::Inch) };
        let mut mark = sheet.start;
        let row = sheet.next(text, &mut mark).unwrap();
        assert_eq!(length(&row, Spot::HeightLeft), Some(Length::from_inches(101)));
    }

    proptest! {
        #[test]
        fn no_text_makes_it_panic(text in "[a-w0-9/ ,;\t\"\n]{0,80}") {
            if let Ok(sheet) = Sheet::open(&text) {
                let mut mark = sheet.start;
                let mut count = 0;
                while let Some(row) = sheet.next(&text, &mut mark) {
                    if let Ok(order) = row.order {
                        let _ = check(&order.survey, &hangtrue_core::profile::Profile::default());
                    }
                    count += 1;
                    prop_assert!(count <= text.len() + 1);
                }
            }
        }
    }
}
