//! The whole order, bit by bit, in the order of `SPEC.md`.

use hangtrue_core::check::Verdict;
use hangtrue_core::order::{Answer, Confirmed, Order};
use hangtrue_core::{Spot, Survey, Unit};

use super::{date, reading, rules, text};
use crate::bits::{Reader, Short, Writer};
use crate::error::EncodeError;

/// The spots by number.
const SPOTS: [Spot; 18] = [
    Spot::WidthLow,
    Spot::WidthMiddle,
    Spot::WidthHigh,
    Spot::HeightLeft,
    Spot::HeightCenter,
    Spot::HeightRight,
    Spot::HeaderLeft,
    Spot::HeaderCenter,
    Spot::HeaderRight,
    Spot::BowFirst,
    Spot::BowSecond,
    Spot::BowThird,
    Spot::DiagonalRising,
    Spot::DiagonalFalling,
    Spot::LoopSillToRoof,
    Spot::LoopSillToBow,
    Spot::PostLeft,
    Spot::PostRight,
];
const SPOT_BITS: u32 = 5;

/// The languages by number; any other travels as text.
const LANGUAGES: [&str; 3] = ["en", "es", "fr"];
const LANGUAGE_AS_TEXT: u32 = 3;

fn count(n: usize) -> u32 {
    u32::try_from(n).unwrap_or(u32::MAX)
}

/// The contents of `order`'s payload, as symbols.
pub(crate) fn write(order: &Order) -> Result<Vec<u8>, EncodeError> {
    let mut out = Writer::default();
    let language = LANGUAGES.iter().position(|&known| known == order.language);
    head(order, language, &mut out);
    readings(&order.survey, &mut out);
    if language.is_none() {
        text::write(&order.language, &mut out);
    }
    if let Some(date) = order.date {
        date::write(date, &mut out)?;
    }
    if !order.confirmed.is_empty() {
        out.number(count(order.confirmed.len()));
        for Confirmed { rule, spot } in &order.confirmed {
            rules::write(rule, &mut out);
            let number = spot.and_then(|spot| SPOTS.iter().position(|&known| known == spot));
            out.flag(number.is_some());
            if let Some(number) = number {
                out.put(count(number), SPOT_BITS);
            }
        }
    }
    if let Some((name, revision)) = &order.profile {
        text::write(name, &mut out);
        out.number(*revision);
    }
    for field in [&order.vehicle, &order.note, &order.contact] {
        if !field.is_empty() {
            text::write(field, &mut out);
        }
    }
    if !order.answers.is_empty() {
        out.number(count(order.answers.len()));
        for Answer { question, answer } in &order.answers {
            text::write(question, &mut out);
            text::write(answer, &mut out);
        }
    }
    Ok(out.finish())
}

fn head(order: &Order, language: Option<usize>, out: &mut Writer) {
    out.flag(order.survey.unit == Unit::Millimetre);
    out.flag(order.survey.prepared);
    out.put(
        match order.claimed {
            Verdict::Clear => 0,
            Verdict::Recheck => 1,
            Verdict::Stop => 2,
        },
        2,
    );
    out.put(
        match order.old_door_in {
            None => 0,
            Some(false) => 1,
            Some(true) => 2,
        },
        2,
    );
    out.put(language.map_or(LANGUAGE_AS_TEXT, count), 2);
    for there in [
        order.date.is_some(),
        !order.confirmed.is_empty(),
        order.profile.is_some(),
        !order.vehicle.is_empty(),
        !order.note.is_empty(),
        !order.contact.is_empty(),
        !order.answers.is_empty(),
    ] {
        out.flag(there);
    }
}

fn readings(survey: &Survey, out: &mut Writer) {
    for spot in SPOTS {
        out.flag(!survey.entries(spot).is_empty());
    }
    let mut form = reading::first_form(survey.unit);
    for spot in SPOTS {
        let mut entries = survey.entries(spot).iter().peekable();
        while let Some(entry) = entries.next() {
            reading::write(&entry.text, &mut form, out);
            out.flag(entry.struck);
            out.flag(entries.peek().is_some());
        }
    }
}

/// The order whose contents are `symbols`.
///
/// Only what [`write()`] writes is read: the order is written again, and anything that
/// comes out differently (spare bits that are set, a longer way to say the same, more
/// symbols than needed) is refused. So one order has one payload.
pub(crate) fn read(symbols: &[u8]) -> Result<Order, Short> {
    let order = parse(&mut Reader::new(symbols))?;
    match write(&order) {
        Ok(again) if again == symbols => Ok(order),
        _ => Err(Short),
    }
}

fn parse(from: &mut Reader<'_>) -> Result<Order, Short> {
    let mut order = Order::default();
    let unit = if from.flag()? { Unit::Millimetre } else { Unit::Inch };
    order.survey = Survey::new(unit);
    order.survey.prepared = from.flag()?;
    order.claimed = match from.take(2)? {
        0 => Verdict::Clear,
        1 => Verdict::Recheck,
        2 => Verdict::Stop,
        _ => return Err(Short),
    };
    order.old_door_in = match from.take(2)? {
        0 => None,
        1 => Some(false),
        2 => Some(true),
        _ => return Err(Short),
    };
    let language = from.take(2)?;
    let mut flag = || from.flag();
    let (dated, confirmed, profile) = (flag()?, flag()?, flag()?);
    let (vehicle, note, contact, answers) = (flag()?, flag()?, flag()?, flag()?);

    parse_readings(&mut order.survey, from)?;
    order.language = match LANGUAGES.get(language as usize) {
        Some(&known) => known.to_owned(),
        None => text::read(from)?,
    };
    if dated {
        order.date = Some(date::read(from)?);
    }
    if confirmed {
        for _ in 0..from.number()? {
            let rule = rules::read(from)?;
            let spot = if from.flag()? { Some(spot(from)?) } else { None };
            order.confirmed.push(Confirmed { rule, spot });
        }
    }
    if profile {
        order.profile = Some((text::read(from)?, from.number()?));
    }
    for (there, field) in
        [(vehicle, &mut order.vehicle), (note, &mut order.note), (contact, &mut order.contact)]
    {
        if there {
            *field = text::read(from)?;
        }
    }
    if answers {
        for _ in 0..from.number()? {
            let (question, answer) = (text::read(from)?, text::read(from)?);
            order.answers.push(Answer { question, answer });
        }
    }
    Ok(order)
}

fn spot(from: &mut Reader<'_>) -> Result<Spot, Short> {
    SPOTS.get(from.take(SPOT_BITS)? as usize).copied().ok_or(Short)
}

fn parse_readings(survey: &mut Survey, from: &mut Reader<'_>) -> Result<(), Short> {
    let mut there = [false; SPOTS.len()];
    for there in &mut there {
        *there = from.flag()?;
    }
    let mut form = reading::first_form(survey.unit);
    for (spot, _) in SPOTS.into_iter().zip(there).filter(|(_, there)| *there) {
        loop {
            let text = reading::read(&mut form, from)?;
            survey.add(spot, &text);
            let struck = from.flag()?;
            if let Some(entry) = survey.entries_mut(spot).last_mut() {
                entry.struck = struck;
            }
            if !from.flag()? {
                break;
            }
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use hangtrue_core::order::Date;

    #[test]
    fn one_order_has_one_payload() {
        let order =
            Order { date: Some(Date { year: 2026, month: 2, day: 29 }), ..Order::default() };
        let mut symbols = write(&order).unwrap();
        assert_eq!(read(&symbols), Ok(order));
        symbols.push(0);
        assert_eq!(read(&symbols), Err(Short));
    }

    #[test]
    fn a_day_that_is_none_is_not_written() {
        let dated = |year, month, day| {
            write(&Order { date: Some(Date { year, month, day }), ..Order::default() })
        };
        assert!(dated(2000, 1, 1).is_ok() && dated(2255, 12, 31).is_ok());
        for (year, month, day) in
            [(1999, 1, 1), (2256, 1, 1), (2026, 0, 1), (2026, 13, 1), (2026, 1, 0), (2026, 1, 32)]
        {
            assert_eq!(dated(year, month, day), Err(EncodeError::Date), "{year}-{month}-{day}");
        }
    }
}
