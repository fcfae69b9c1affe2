//! The readings of a file, place by place: the same in surveys and in orders.

use hangtrue_core::{Spot, Survey};

use super::error::{Fault, FileError};
use super::text::Value;
use super::walk::At;

/// What a place may hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Places {
    /// A reading, or a list of repeats.
    Texts,
    /// The same, and readings that were struck: `{"text":"92 1/4","struck":true}`.
    Struck,
}

/// Adds every reading of the object at `readings` to `survey`.
pub(super) fn read(
    readings: &At<'_, '_>,
    places: Places,
    survey: &mut Survey,
) -> Result<(), FileError> {
    let names = ["width", "height", "header", "bow", "diagonal", "loop", "post"];
    let groups = readings.object(names)?;
    for (name, group) in names.into_iter().zip(groups) {
        let Some(group) = group else { continue };
        let group = readings.child(name, group);
        let spots = || Spot::ALL.into_iter().filter(|spot| spot.group().key() == name);
        let mut names = [""; 3];
        for (slot, spot) in names.iter_mut().zip(spots()) {
            *slot = spot.place();
        }
        let values = match names {
            [first, second, ""] => {
                let [first, second] = group.object([first, second])?;
                [first, second, None]
            }
            three => group.object(three)?,
        };
        for (spot, value) in spots().zip(values) {
            let Some(value) = value else { continue };
            read_place(&group.child(spot.place(), value), places, spot, survey)?;
        }
    }
    Ok(())
}

/// One reading, or a list of repeats at the same marked spot.
fn read_place(
    place: &At<'_, '_>,
    places: Places,
    spot: Spot,
    survey: &mut Survey,
) -> Result<(), FileError> {
    let Value::List(repeats) = &place.node.value else {
        return read_entry(place, places, spot, survey);
    };
    for (index, node) in repeats.iter().enumerate() {
        let index = index.to_string();
        read_entry(&place.child(&index, node), places, spot, survey)?;
    }
    Ok(())
}

fn read_entry(
    at: &At<'_, '_>,
    places: Places,
    spot: Spot,
    survey: &mut Survey,
) -> Result<(), FileError> {
    if places == Places::Struck && matches!(at.node.value, Value::Object(_)) {
        let [text, struck] = at.object(["text", "struck"])?;
        let text = text.ok_or_else(|| at.error(Fault::Missing { key: "text" }))?;
        survey.add(spot, reading(&at.child("text", text))?);
        if let Some(struck) = struck {
            let struck = at.child("struck", struck).bool()?;
            if let Some(entry) = survey.entries_mut(spot).last_mut() {
                entry.struck = struck;
            }
        }
        return Ok(());
    }
    survey.add(spot, reading(at)?);
    Ok(())
}

fn reading<'n>(at: &At<'n, '_>) -> Result<&'n str, FileError> {
    match &at.node.value {
        Value::Text(text) => Ok(text.as_ref()),
        Value::Number(number) => Err(at.error(Fault::NumberForText { number: number.to_string() })),
        _ => Err(at.error(Fault::Reading { found: at.node.into() })),
    }
}
