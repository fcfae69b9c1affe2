//! Reading an order's file, strictly.

use hangtrue_core::check::Verdict;
use hangtrue_core::order::{Answer, Confirmed, Date, Order};
use hangtrue_core::{Spot, Survey};

use super::{FORMAT, MOST};
use crate::json::Id;
use crate::json::error::{Fault, FileError};
use crate::json::readings::{self, Places};
use crate::json::survey;
use crate::json::text::Node;
use crate::json::walk::{self, At, shown};

const KEYS: [&str; 16] = [
    "format",
    "id",
    "unit",
    "prepared",
    "readings",
    "verdict",
    "confirmed",
    "old_door_in",
    "vehicle",
    "note",
    "contact",
    "answers",
    "profile",
    "language",
    "date",
    "order",
];

/// Reads an order.
///
/// # Errors
/// The first thing that is not as the format says, with its place, and with the id as
/// far as it could be made out.
pub fn parse(text: &str) -> Result<(Id, Order), (Id, FileError)> {
    if text.len() > MOST {
        return Err((Id::None, FileError::new(String::new(), Fault::TooLong { most: MOST })));
    }
    let node = walk::document(text).map_err(|error| (Id::None, error))?;
    let id = survey::id(&node);
    match order(&node) {
        Ok(order) => Ok((id, order)),
        Err(error) => Err((id, error)),
    }
}

pub(in crate::json) fn order(node: &Node<'_>) -> Result<Order, FileError> {
    let root = At::root(node);
    let [
        format,
        id,
        unit,
        prepared,
        readings,
        verdict,
        confirmed,
        old_door_in,
        vehicle,
        note,
        contact,
        answers,
        profile,
        language,
        date,
        // What follows from the readings is not read.
        _numbers,
    ] = root.object(KEYS)?;
    let unit = survey::head(&root, FORMAT, [format, id, unit])?;
    let mut order = Order { survey: Survey::new(unit), ..Order::default() };
    if let Some(prepared) = prepared {
        order.survey.prepared = root.child("prepared", prepared).bool()?;
    }
    readings::read(&root.required("readings", readings)?, Places::Struck, &mut order.survey)?;
    if let Some(verdict) = verdict {
        order.claimed =
            root.child("verdict", verdict).choice(&VERDICTS.map(Verdict::key), |key| {
                VERDICTS.into_iter().find(|verdict| verdict.key() == key)
            })?;
    }
    if let Some(list) = confirmed {
        root.child("confirmed", list).each_item(&mut |at| {
            order.confirmed.push(read_confirmed(at)?);
            Ok(())
        })?;
    }
    if let Some(old_door_in) = old_door_in {
        order.old_door_in = Some(root.child("old_door_in", old_door_in).bool()?);
    }
    for (key, value, field) in [
        ("vehicle", vehicle, &mut order.vehicle),
        ("note", note, &mut order.note),
        ("contact", contact, &mut order.contact),
        ("language", language, &mut order.language),
    ] {
        if let Some(value) = value {
            *field = root.child(key, value).text()?.as_ref().to_owned();
        }
    }
    if let Some(list) = answers {
        root.child("answers", list).each_item(&mut |at| {
            let [question, answer] = texts(at, ["question", "answer"])?;
            order.answers.push(Answer { question, answer });
            Ok(())
        })?;
    }
    if let Some(profile) = profile {
        order.profile = Some(read_profile(&root.child("profile", profile))?);
    }
    if let Some(date) = date {
        order.date = Some(read_date(&root.child("date", date))?);
    }
    Ok(order)
}

const VERDICTS: [Verdict; 3] = [Verdict::Clear, Verdict::Recheck, Verdict::Stop];

/// An object of texts that must all be there.
fn texts<const N: usize>(
    at: &At<'_, '_>,
    keys: [&'static str; N],
) -> Result<[String; N], FileError> {
    let values = at.object(keys)?;
    let mut texts = [const { String::new() }; N];
    for ((slot, key), value) in texts.iter_mut().zip(keys).zip(values) {
        at.required(key, value)?.text()?.as_ref().clone_into(slot);
    }
    Ok(texts)
}

fn read_confirmed(at: &At<'_, '_>) -> Result<Confirmed, FileError> {
    let [rule, reading] = at.object(["rule", "reading"])?;
    let rule = at.required("rule", rule)?.text()?.as_ref().to_owned();
    let spot = match reading {
        None => None,
        Some(reading) => {
            let known = Spot::ALL.map(|spot| spot.key());
            let at = at.child("reading", reading);
            let text = at.text()?;
            let spot = known.iter().position(|key| key == text).and_then(|at| Spot::ALL.get(at));
            let known = vec!["a group and a place, as width.low"];
            let fault = || at.error(Fault::Choice { found: shown(text), known });
            Some(*spot.ok_or_else(fault)?)
        }
    };
    Ok(Confirmed { rule, spot })
}

fn read_profile(at: &At<'_, '_>) -> Result<(String, u32), FileError> {
    let [name, revision] = at.object(["name", "revision"])?;
    let (name, revision) = (at.required("name", name)?, at.required("revision", revision)?);
    Ok((name.text()?.as_ref().to_owned(), revision.whole()?))
}

pub(in crate::json) fn read_date(at: &At<'_, '_>) -> Result<Date, FileError> {
    let text = at.text()?;
    Date::from_text(text).ok_or_else(|| at.error(Fault::Date { found: shown(text) }))
}
