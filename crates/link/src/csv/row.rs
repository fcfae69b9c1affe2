//! One row as an order.

use super::{Column, Fault, Measure, What};
use hangtrue_core::frame::Preparation;
use hangtrue_core::length::read;
use hangtrue_core::order::{Numbers, Order};
use hangtrue_core::profile::Profile;
use hangtrue_core::{Dimension, Spot, Survey, Unit};

/// Where an order came from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Source {
    /// Readings in cells.
    #[default]
    Cells,
    /// A link.
    Link,
}

/// One row, read as far as it can be.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// The line it begins on, from 1.
    pub line: usize,
    /// What the sender calls it; empty where no column says.
    pub id: String,
    /// Where its order came from.
    pub source: Source,
    /// The order, or why there is none.
    pub order: Result<Order, Fault>,
}

const YES: [&str; 7] = ["yes", "y", "true", "1", "x", "prepared", "built"];
const NO: [&str; 7] = ["no", "n", "false", "0", "", "unprepared", "as found"];
/// What may stand in the two columns that hold words.
const PREPARED: &[&str] = &["yes", "no"];
const UNITS: &[&str] = &["in", "ft", "mm", "cm", "m"];

/// The row of `fields`, in the columns as they were guessed or put right. `unit` is what
/// bare numbers are in where neither the row nor the column says; `profile` is what the
/// numbers of a link's order are taken by.
pub(super) fn row<T: AsRef<str>>(
    line: usize,
    fields: &[T],
    columns: &[Column],
    names: &[String],
    unit: Unit,
    profile: &Profile,
) -> Row {
    let mut row =
        Row { line, id: String::new(), source: Source::Cells, order: Err(Fault::NoReading) };
    for (field, _) in cells(fields, columns, What::Id) {
        field.trim().clone_into(&mut row.id);
    }
    if fields.len() != columns.len() {
        row.order = Err(Fault::Count { found: fields.len(), expected: columns.len() });
        return row;
    }
    let link = cells(fields, columns, What::Link).map(|(field, _)| field.trim());
    if let Some(link) = link.filter(|link| !link.is_empty()).last() {
        row.source = Source::Link;
        let linked = crate::find(link).and_then(|payload| crate::decode(&payload));
        row.order = linked.map_err(Fault::Link).and_then(|linked| {
            let mut beside = fields.iter().zip(columns);
            if !beside
                .any(|(field, column)| is_number(*column) && !field.as_ref().trim().is_empty())
            {
                return Ok(linked);
            }
            let own = order(fields, columns, names, unit)?;
            differing(fields, columns, names, &own, &linked, profile).map_or(Ok(linked), Err)
        });
        return row;
    }
    row.order = order(fields, columns, names, unit);
    row
}

/// Where the cells beside a link say another number than its order: whoever corrected one of
/// them means it.
fn differing<T: AsRef<str>>(
    fields: &[T],
    columns: &[Column],
    names: &[String],
    own: &Order,
    linked: &Order,
    profile: &Profile,
) -> Option<Fault> {
    let chosen = profile.chosen(&linked.answers);
    let preparation = Preparation::of(&linked.survey, &chosen);
    let numbers = Numbers::of(&linked.survey, &chosen, &preparation);
    Dimension::ALL.into_iter().find_map(|dimension| {
        let ordered = numbers.ordered(dimension);
        let spots = dimension.spots();
        let mut entries = spots.into_iter().flat_map(|spot| own.survey.entries(spot));
        // Of several readings the tightest is the number.
        let unread = entries.any(|entry| entry.read.is_err());
        let said = own.survey.tightest(dimension).map(|(_, length)| length);
        let filled = |(field, at): (&str, usize)| {
            let found = field.trim().chars().take(40).collect::<String>();
            let column = names.get(at).cloned().unwrap_or_default();
            let unit = linked.survey.unit;
            (!found.is_empty()).then_some(Fault::Differs { column, found, ordered, unit })
        };
        if !unread && (said.is_none() || said == ordered) {
            return None;
        }
        let mut beside =
            spots.into_iter().flat_map(|spot| cells(fields, columns, What::Reading(spot)));
        beside.find_map(filled)
    })
}

/// Whether it holds one of the four numbers.
fn is_number(column: Column) -> bool {
    matches!(column.what, What::Reading(spot) if spot.dimension().is_some())
}

/// The fields that the columns of this kind hold.
fn cells<'f, T: AsRef<str>>(
    fields: &'f [T],
    columns: &'f [Column],
    what: What,
) -> impl Iterator<Item = (&'f str, usize)> {
    let pairs = fields.iter().zip(columns).enumerate();
    pairs
        .filter(move |(_, (_, column))| column.what == what)
        .map(|(at, (field, _))| (field.as_ref(), at))
}

fn order<T: AsRef<str>>(
    fields: &[T],
    columns: &[Column],
    names: &[String],
    unit: Unit,
) -> Result<Order, Fault> {
    let word = |at: usize, found: &str, known| Fault::Word {
        column: names.get(at).cloned().unwrap_or_default(),
        found: found.chars().take(40).collect(),
        known,
    };
    let mut own = None;
    for (field, at) in cells(fields, columns, What::Unit) {
        let name = field.trim().trim_end_matches('.').to_lowercase();
        if !name.is_empty() {
            let measure = Measure::from_name(&name);
            own = Some(measure.ok_or_else(|| word(at, field, UNITS))?);
        }
    }
    let unit = own.map_or(unit, Measure::unit);
    let mut order = Order { survey: Survey::new(unit), ..Order::default() };
    for (field, at) in cells(fields, columns, What::Prepared) {
        let answer = field.trim().to_lowercase();
        order.survey.prepared = match answer.as_str() {
            yes if YES.contains(&yes) => true,
            no if NO.contains(&no) => false,
            _ => return Err(word(at, field, PREPARED)),
        };
    }
    let mut empty = true;
    for (field, column) in fields.iter().zip(columns) {
        let text = field.as_ref().trim();
        match column.what {
            What::Reading(spot) if !text.is_empty() => {
                add(&mut order.survey, spot, text, column.measure.or(own));
                empty = false;
            }
            What::Vehicle => join(&mut order.vehicle, text),
            What::Note => join(&mut order.note, text),
            What::Contact => join(&mut order.contact, text),
            _ => {}
        }
    }
    if empty { Err(Fault::NoReading) } else { Ok(order) }
}

/// Several columns of one kind are kept one behind the other.
fn join(whole: &mut String, text: &str) {
    if !whole.is_empty() && !text.is_empty() {
        whole.push_str(", ");
    }
    whole.push_str(text);
}

/// Adds a reading; a bare number of another measure gets that behind it, and whatever
/// says its own unit, or is no reading, stays as it is: both are the same in every unit.
fn add(survey: &mut Survey, spot: Spot, text: &str, measure: Option<Measure>) {
    let foreign = measure.filter(|measure| *measure != Measure::from(survey.unit));
    if let Some(measure) = foreign
        && read(text, Unit::Inch) != read(text, Unit::Millimetre)
    {
        survey.add(spot, &[text, " ", measure.symbol()].concat());
    } else {
        survey.add(spot, text);
    }
}
