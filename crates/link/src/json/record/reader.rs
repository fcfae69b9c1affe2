//! Reading a record's file, strictly.

use hangtrue_core::hang::care::{Service, Work, is_day};
use hangtrue_core::hang::inspection::{Check, Found, Inspection, Measure};
use hangtrue_core::hang::record::{AsBuilt, Place, QuarterTurns, Record};
use hangtrue_core::hang::weight::Weight;
use hangtrue_core::length::read;
use hangtrue_core::order::Date;
use hangtrue_core::{Length, Unit};

use super::{FORMAT, KEYS, MOST};
use crate::json::error::{Fault, FileError, NodeKind};
use crate::json::order;
use crate::json::text::Value;
use crate::json::walk::{self, At, shown};

/// Reads a record.
///
/// # Errors
/// The first thing that is not as the format says, with its place.
pub fn parse(text: &str) -> Result<Record, FileError> {
    if text.len() > MOST {
        return Err(FileError::new(String::new(), Fault::TooLong { most: MOST }));
    }
    let node = walk::document(text)?;
    let root = At::root(&node);
    let [format, ordered, serial, hung, per_day, weight, turns, readings, inspection, services] =
        root.object(KEYS)?;
    root.format(format, FORMAT)?;
    let order = order::read(root.required("order", ordered)?.node).map_err(within)?;
    let unit = order.survey.unit;
    let mut record = Record { order, ..Record::default() };
    if let Some(serial) = serial {
        root.child("serial", serial).text()?.as_ref().clone_into(&mut record.serial);
    }
    if let Some(hung) = hung {
        record.hung = Some(day(&root.child("hung", hung))?);
    }
    if let Some(per_day) = per_day {
        record.per_day = Some(small(&root.child("per_day", per_day))?);
    }
    if let Some(weight) = weight {
        record.weight = Some(micrograms(&root.child("weight_micrograms", weight))?);
    }
    if let Some(turns) = turns {
        record.turns = Some(QuarterTurns(small(&root.child("quarter_turns", turns))?));
    }
    if let Some(readings) = readings {
        record.built = built(&root.child("readings", readings))?;
    }
    if let Some(inspection) = inspection {
        record.inspection = inspected(&root.child("inspection", inspection), unit)?;
    }
    if let Some(services) = services {
        root.child("services", services).each_item(&mut |at| {
            record.services.push(service(at)?);
            Ok(())
        })?;
    }
    Ok(record)
}

/// A fault of the order, told from where the record begins.
fn within(error: FileError) -> FileError {
    let dot = if error.place.is_empty() { "" } else { "." };
    FileError { place: ["order", dot, &error.place].concat(), ..error }
}

fn small(at: &At<'_, '_>) -> Result<u16, FileError> {
    let whole = at.whole()?;
    u16::try_from(whole).map_err(|_| at.error(unknown(&whole.to_string(), "0 to 65535")))
}

/// A day of the calendar: what is due is counted from it.
fn day(at: &At<'_, '_>) -> Result<Date, FileError> {
    let date = order::read_date(at)?;
    let none = || at.error(Fault::Date { found: shown(&date.text()) });
    is_day(date).then_some(date).ok_or_else(none)
}

fn unknown(found: &str, known: &'static str) -> Fault {
    Fault::Choice { found: shown(found), known: vec![known] }
}

fn micrograms(at: &At<'_, '_>) -> Result<Weight, FileError> {
    let Value::Number(number) = &at.node.value else {
        let found = at.node.into();
        return Err(at.error(Fault::Kind { expected: NodeKind::Number, found }));
    };
    let whole = number.as_u64().and_then(|whole| i64::try_from(whole).ok());
    let whole = whole.ok_or_else(|| at.error(unknown(number.as_str(), "whole micrograms")))?;
    Ok(Weight::from_micrograms(whole))
}

fn built(at: &At<'_, '_>) -> Result<AsBuilt, FileError> {
    let mut built = AsBuilt::default();
    for (place, node) in Place::ALL.into_iter().zip(at.object(Place::ALL.map(Place::key))?) {
        if let Some(node) = node {
            built.set(place, at.child(place.key(), node).text()?);
        }
    }
    Ok(built)
}

fn inspected(at: &At<'_, '_>, unit: Unit) -> Result<Inspection, FileError> {
    let mut inspection = Inspection::default();
    for (check, node) in Check::ALL.into_iter().zip(at.object(Check::ALL.map(Check::key))?) {
        let Some(node) = node else { continue };
        let at = at.child(check.key(), node);
        let found = match check.measure() {
            Measure::Length => Found::Length(length(&at, unit)?),
            Measure::Weight => Found::Weight(micrograms(&at)?),
            Measure::Count => Found::Count(at.whole()?),
            Measure::Eye => Found::Eye(at.bool()?),
        };
        inspection.set(check, Some(found));
    }
    Ok(inspection)
}

fn length(at: &At<'_, '_>, unit: Unit) -> Result<Length, FileError> {
    let text = at.text()?;
    let length = read(text, unit).ok().filter(|length| Found::Length(*length).is_possible());
    length.ok_or_else(|| at.error(unknown(text, "a length, as 3/8 in")))
}

fn service(at: &At<'_, '_>) -> Result<Service, FileError> {
    let [date, work, note] = at.object(["date", "work", "note"])?;
    let (date, work) = (at.required("date", date)?, at.required("work", work)?);
    let date = day(&date)?;
    let work = work.choice(&Work::ALL.map(Work::key), Work::from_key)?;
    let note = match note {
        Some(note) => at.child("note", note).text()?.as_ref().to_owned(),
        None => String::new(),
    };
    Ok(Service { date, work, note })
}
