//! The whole record, bit by bit, in the order of `RECORD.md`.

use hangtrue_core::hang::care::{Service, Work};
use hangtrue_core::hang::inspection::{Check, Found, Inspection, Measure};
use hangtrue_core::hang::record::{AsBuilt, Place, QuarterTurns, Record};
use hangtrue_core::hang::weight::Weight;
use hangtrue_core::order::Date;
use hangtrue_core::{Length, Unit};

use crate::bits::{Reader, Short, Writer};
use crate::error::EncodeError;
use crate::v1::{self, date, reading, text};

const PLACES: [Place; 14] = [
    Place::TrackLow,
    Place::TrackMiddle,
    Place::TrackHigh,
    Place::TrackRising,
    Place::TrackFalling,
    Place::TrackMarks,
    Place::UpperFront,
    Place::UpperMiddle,
    Place::UpperRear,
    Place::SquareLeft,
    Place::SquareRight,
    Place::LatchLeft,
    Place::LatchRight,
    Place::Shift,
];

const CHECKS: [Check; 18] = [
    Check::Spacing,
    Check::Diagonals,
    Check::Shift,
    Check::GapLeft,
    Check::GapRight,
    Check::GapHeader,
    Check::HingeLeft,
    Check::HingeRight,
    Check::Pull,
    Check::Stripes,
    Check::Fastenings,
    Check::Cables,
    Check::SetScrews,
    Check::Anchor,
    Check::Latch,
    Check::Runs,
    Check::Seals,
    Check::Labels,
];

const WORKS: [Work; 8] = [
    Work::Lubrication,
    Work::CablesChecked,
    Work::Cables,
    Work::Rollers,
    Work::Panel,
    Work::Spring,
    Work::Tracks,
    Work::Inspected,
];
const WORK_BITS: u32 = 5;

fn count(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}

/// The contents of `record`'s payload, as symbols.
pub(super) fn write(record: &Record) -> Result<Vec<u8>, EncodeError> {
    let mut out = Writer::default();
    let order = v1::write(&record.order)?;
    out.number(count(order.len()));
    for symbol in order {
        out.put(u32::from(symbol), 5);
    }
    for there in [
        !record.built.is_empty(),
        record.weight.is_some(),
        record.turns.is_some(),
        !record.serial.is_empty(),
        record.hung.is_some(),
        record.per_day.is_some(),
        record.inspection.done() > 0,
        !record.services.is_empty(),
    ] {
        out.flag(there);
    }
    if !record.built.is_empty() {
        write_built(&record.built, record.order.survey.unit, &mut out);
    }
    if let Some(weight) = record.weight {
        write_wide(weight.micrograms(), &mut out);
    }
    if let Some(QuarterTurns(quarters)) = record.turns {
        out.number(u32::from(quarters));
    }
    if !record.serial.is_empty() {
        text::write(&record.serial, &mut out);
    }
    if let Some(hung) = record.hung {
        date::write(hung, &mut out)?;
    }
    if let Some(per_day) = record.per_day {
        out.number(u32::from(per_day));
    }
    if record.inspection.done() > 0 {
        write_inspection(&record.inspection, &mut out);
    }
    if !record.services.is_empty() {
        out.number(count(record.services.len()));
        for Service { date, work, note } in &record.services {
            date::write(*date, &mut out)?;
            out.put(count(WORKS.iter().position(|known| known == work).unwrap_or(0)), WORK_BITS);
            out.flag(!note.is_empty());
            if !note.is_empty() {
                text::write(note, &mut out);
            }
        }
    }
    Ok(out.finish())
}

/// The record whose contents are `symbols`: only what [`write()`] writes is read.
pub(super) fn read(symbols: &[u8]) -> Result<Record, Short> {
    let record = parse(&mut Reader::new(symbols))?;
    match write(&record) {
        Ok(again) if again == symbols => Ok(record),
        _ => Err(Short),
    }
}

fn parse(from: &mut Reader<'_>) -> Result<Record, Short> {
    let mut order = Vec::new();
    for _ in 0..from.number()? {
        order.push(u8::try_from(from.take(5)?).map_err(|_| Short)?);
    }
    let mut record = Record { order: v1::read(&order)?, ..Record::default() };
    let mut flag = || from.flag();
    let (built, weight, turns, serial) = (flag()?, flag()?, flag()?, flag()?);
    let (hung, per_day, inspection, services) = (flag()?, flag()?, flag()?, flag()?);
    if built {
        record.built = read_built(record.order.survey.unit, from)?;
    }
    if weight {
        record.weight = Some(read_weight(from)?);
    }
    if turns {
        record.turns = Some(QuarterTurns(u16::try_from(from.number()?).map_err(|_| Short)?));
    }
    if serial {
        record.serial = text::read(from)?;
    }
    if hung {
        record.hung = Some(date::read(from)?);
    }
    if per_day {
        record.per_day = Some(u16::try_from(from.number()?).map_err(|_| Short)?);
    }
    if inspection {
        record.inspection = read_inspection(from)?;
    }
    if services {
        for _ in 0..from.number()? {
            record.services.push(read_service(from)?);
        }
    }
    Ok(record)
}

fn read_service(from: &mut Reader<'_>) -> Result<Service, Short> {
    let date: Date = date::read(from)?;
    let work = *WORKS.get(from.take(WORK_BITS)? as usize).ok_or(Short)?;
    let note = if from.flag()? { text::read(from)? } else { String::new() };
    Ok(Service { date, work, note })
}

fn write_built(built: &AsBuilt, unit: Unit, out: &mut Writer) {
    for place in PLACES {
        out.flag(!built.text(place).is_empty());
    }
    let mut form = reading::first_form(unit);
    for place in PLACES {
        let typed = built.text(place);
        if !typed.is_empty() {
            reading::write(typed, &mut form, out);
        }
    }
}

fn read_built(unit: Unit, from: &mut Reader<'_>) -> Result<AsBuilt, Short> {
    let mut there = [false; PLACES.len()];
    for there in &mut there {
        *there = from.flag()?;
    }
    let mut built = AsBuilt::default();
    let mut form = reading::first_form(unit);
    for (place, _) in PLACES.into_iter().zip(there).filter(|(_, there)| *there) {
        built.set(place, &reading::read(&mut form, from)?);
    }
    Ok(built)
}

fn write_inspection(inspection: &Inspection, out: &mut Writer) {
    for check in CHECKS {
        out.flag(inspection.get(check).is_some());
    }
    for check in CHECKS {
        match inspection.get(check) {
            None => {}
            Some(Found::Length(length)) => write_length(length, out),
            Some(Found::Weight(weight)) => write_wide(weight.micrograms(), out),
            Some(Found::Count(count)) => out.number(count),
            Some(Found::Eye(in_order)) => out.flag(in_order),
        }
    }
}

fn read_inspection(from: &mut Reader<'_>) -> Result<Inspection, Short> {
    let mut there = [false; CHECKS.len()];
    for there in &mut there {
        *there = from.flag()?;
    }
    let mut inspection = Inspection::default();
    for (check, _) in CHECKS.into_iter().zip(there).filter(|(_, there)| *there) {
        let found = match check.measure() {
            Measure::Length => Found::Length(read_length(from)?),
            Measure::Weight => Found::Weight(read_weight(from)?),
            Measure::Count => Found::Count(from.number()?),
            Measure::Eye => Found::Eye(from.flag()?),
        };
        if !found.is_possible() {
            return Err(Short);
        }
        inspection.set(check, Some(found));
    }
    Ok(inspection)
}

/// Units a length is written in, in nanometres: sixteenths and sixty-fourths of an inch,
/// tenths of a millimetre; the first that it is a whole number of. Else nanometres.
const STEPS: [i64; 3] = [1_587_500, 396_875, 100_000];
const AS_NM: u32 = 3;

fn write_length(length: Length, out: &mut Writer) {
    let whole = |step: &i64| {
        let number = length.nm().checked_div(*step)?;
        (length.nm().checked_rem(*step) == Some(0)).then(|| u32::try_from(number).ok()).flatten()
    };
    let found = STEPS.iter().enumerate().find_map(|(at, step)| Some((at, whole(step)?)));
    match found {
        Some((at, number)) => {
            out.put(count(at), 2);
            out.number(number);
        }
        None => {
            out.put(AS_NM, 2);
            write_wide(length.nm(), out);
        }
    }
}

fn read_length(from: &mut Reader<'_>) -> Result<Length, Short> {
    Ok(Length::from_nm(match from.take(2)? {
        AS_NM => read_wide(from)?,
        at => {
            let step = STEPS.get(at as usize).ok_or(Short)?;
            step.saturating_mul(i64::from(from.number()?))
        }
    }))
}

/// A weight; none is less than nought.
fn read_weight(from: &mut Reader<'_>) -> Result<Weight, Short> {
    let micrograms = read_wide(from)?;
    if micrograms < 0 { Err(Short) } else { Ok(Weight::from_micrograms(micrograms)) }
}

/// A whole number of up to 64 bits, as two: the low half, the high half.
fn write_wide(value: i64, out: &mut Writer) {
    let bits = value.cast_unsigned();
    for half in [bits & 0xffff_ffff, bits >> 32] {
        out.number(u32::try_from(half).unwrap_or(u32::MAX));
    }
}

fn read_wide(from: &mut Reader<'_>) -> Result<i64, Short> {
    let low = u64::from(from.number()?);
    let high = u64::from(from.number()?);
    Ok((high << 32 | low).cast_signed())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_and_nothing_behind_it() {
        let symbols = write(&Record::default()).unwrap();
        assert_eq!(read(&symbols), Ok(Record::default()));
        for symbol in [0, 1, 31] {
            assert_eq!(read(&[symbols.as_slice(), &[symbol]].concat()), Err(Short));
        }
    }
}
