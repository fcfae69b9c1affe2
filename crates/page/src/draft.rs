//! The draft as text: the day, the screen it was left at, and the order as a link's payload.
//!
//! The payload is the one released format there is, so a draft of an older build opens in a
//! newer one. In front stands a number, so that a draft of a newer build is known for one and
//! left alone.
//!
//! 1: `/width PAYLOAD`, without a number. 2: `2 2026-11-25 /width PAYLOAD`; `-` for no day.

use crate::address::Address;
use crate::effect::Effect;
use crate::model::Model;
use crate::step::Step;
use hangtrue_core::order::{Date, Order};
use hangtrue_core::short::cut_first;
use hangtrue_core::{Dimension, Length, Survey};

/// The format that is written.
const FORMAT: u32 = 2;

/// A draft as it was kept.
struct Draft {
    day: Option<Date>,
    address: Address,
    order: Order,
}

/// Why a kept text is not opened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unopened {
    /// A newer build of the page wrote it.
    Newer,
    /// It is no draft.
    Damaged,
}

/// A draft in the list of those this device keeps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// The number it is kept under.
    pub id: u32,
    /// What is known of it; nothing of one that cannot be opened.
    pub told: Result<Told, Unopened>,
}

/// What tells one draft from another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// Which truck, as the writer calls it; may be empty.
    pub vehicle: String,
    /// The day it was last written, by the device.
    pub day: Option<Date>,
    /// The first reading of each of the four dimensions, where there is one.
    pub read: [Option<Length>; 4],
}

/// Asks the browser to keep the draft of `model`, once there is anything to keep. A text
/// too long for a link leaves the draft as it was.
#[must_use]
pub fn keep(model: &mut Model) -> Option<Effect> {
    let blank = Order { survey: Survey::new(model.order.survey.unit), ..Order::default() };
    // The list of drafts is no place in a draft.
    if model.step == Step::Drafts || (!model.kept && model.order == blank) {
        return None;
    }
    model.kept = true;
    let payload = hangtrue_link::encode(&model.order).ok()?;
    let day = model.environment.today.map_or_else(|| "-".to_owned(), Date::text);
    Some(Effect::Save(["2 ", &day, " ", &model.address().text(), " ", &payload].concat()))
}

/// Puts a kept draft back into `model`. A text that is not opened changes nothing.
///
/// # Errors
/// Why it is not.
pub fn restore(model: &mut Model, text: &str) -> Result<(), Unopened> {
    let draft = Draft::read(text)?;
    model.order = draft.order;
    model.kept = true;
    model.step = draft.address.step;
    model.proof = draft.address.proof;
    Ok(())
}

/// What the list shows of the draft kept under `id`.
#[must_use]
pub fn listed(id: u32, text: &str) -> Listed {
    let told = Draft::read(text).map(|draft| Told {
        read: Dimension::ALL
            .map(|dimension| draft.order.survey.of(dimension).next().map(|(_, length)| length)),
        vehicle: draft.order.vehicle,
        day: draft.day,
    });
    Listed { id, told }
}

impl Draft {
    fn read(text: &str) -> Result<Self, Unopened> {
        let (day, rest) = if text.starts_with('/') {
            (None, text)
        } else {
            let (format, rest) = cut_first(text, " ").ok_or(Unopened::Damaged)?;
            let format: u32 = format.parse().map_err(|_| Unopened::Damaged)?;
            if format > FORMAT {
                return Err(Unopened::Newer);
            }
            let (day, rest) = cut_first(rest, " ").ok_or(Unopened::Damaged)?;
            (Date::from_text(day), rest)
        };
        let (address, payload) = cut_first(rest, " ").ok_or(Unopened::Damaged)?;
        let address = Address::from_text(address).ok_or(Unopened::Damaged)?;
        let order = hangtrue_link::decode(payload).map_err(|_| Unopened::Damaged)?;
        Ok(Self { day, address, order })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Environment;
    use hangtrue_core::Spot;

    fn model() -> Model {
        let today = Some(Date { year: 2026, month: 3, day: 9 });
        let mut model = Model::new(Environment { today, ..Environment::default() });
        model.order.vehicle = "Unit 7".into();
        model.order.survey.set(Spot::HeightLeft, 0, "101 1/");
        model.order.survey.set(Spot::WidthLow, 0, "92 3/16");
        model.step = Step::Height;
        model
    }

    fn text(model: &Model) -> String {
        let Some(Effect::Save(text)) = keep(&mut model.clone()) else { panic!("not kept") };
        text
    }

    #[test]
    fn a_draft_comes_back_as_it_was_left() {
        let (left, mut back) = (model(), Model::new(Environment::default()));
        let text = text(&left);
        assert!(text.starts_with("2 2026-03-09 /height "), "{text}");
        assert_eq!(restore(&mut back, &text), Ok(()));
        assert_eq!((&back.order, back.step), (&left.order, left.step));
    }

    #[test]
    fn a_draft_of_the_first_build_opens() {
        let text = text(&model());
        let first = text.strip_prefix("2 2026-03-09 ").unwrap();
        let mut back = Model::new(Environment::default());
        assert_eq!(restore(&mut back, first), Ok(()));
        assert_eq!(back.order, model().order);
        assert_eq!(listed(4, first).told.unwrap().day, None);
    }

    #[test]
    fn one_of_a_newer_build_and_a_damaged_one_change_nothing() {
        let text = text(&model());
        let cut = &text[..text.len() - 3];
        for (text, why) in [
            ("3 whatever comes then", Unopened::Newer),
            ("", Unopened::Damaged),
            ("draft", Unopened::Damaged),
            (cut, Unopened::Damaged),
        ] {
            let mut model = model();
            assert_eq!(restore(&mut model, text), Err(why), "{text}");
            assert_eq!(model, self::model());
            assert_eq!(listed(1, text).told, Err(why));
        }
    }

    #[test]
    fn the_list_tells_one_truck_from_another() {
        let told = listed(3, &text(&model())).told.unwrap();
        assert_eq!((told.vehicle.as_str(), told.day), ("Unit 7", model().environment.today));
        let width = told.read.first().copied().flatten();
        assert_eq!(width, Some(Length::from_sixteenths(1475)));
        assert!(told.read.iter().skip(1).all(Option::is_none));
    }
}
