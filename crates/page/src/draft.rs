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
use hangtrue_core::frame::Preparation;
use hangtrue_core::order::{Date, Numbers, Order};
use hangtrue_core::profile::Profile;
use hangtrue_core::short::cut_first;
use hangtrue_core::{Dimension, Length, Survey, Unit};

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
    /// The unit it is written in.
    pub unit: Unit,
    /// What the order says of each of the four dimensions, where anything was read.
    pub numbers: [Option<Length>; 4],
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

/// What the list shows of the draft kept under `id`; `profile` holds the rules of the page.
#[must_use]
pub fn listed(id: u32, text: &str, profile: &Profile) -> Listed {
    let told = Draft::read(text).map(|Draft { day, order, .. }| {
        let (survey, profile) = (&order.survey, &profile.chosen(&order.answers));
        let numbers = Numbers::of(survey, profile, &Preparation::of(survey, profile));
        Told {
            unit: survey.unit,
            numbers: Dimension::ALL.map(|dimension| numbers.ordered(dimension)),
            vehicle: order.vehicle,
            day,
        }
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
        assert_eq!(listed(4, first, &Profile::default()).told.unwrap().day, None);
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
            assert_eq!(listed(1, text, &Profile::default()).told, Err(why));
        }
    }

    #[test]
    fn the_list_tells_one_truck_from_another() {
        let mut model = model();
        model.order.survey.set(Spot::WidthMiddle, 0, "92 1/4");
        model.order.survey.set(Spot::WidthHigh, 0, "92 1/8");
        model.order.survey.set(Spot::HeaderLeft, 0, "6");
        model.order.survey.set(Spot::BowFirst, 0, "1 1/4");
        model.order.survey.set(Spot::BowSecond, 0, "1 1/2");
        let told = listed(3, &text(&model), &model.profile).told.unwrap();
        assert_eq!((told.vehicle.as_str(), told.day), ("Unit 7", model.environment.today));
        // What the order says: the tightest, and of a header that is too shallow what is built.
        let says = Dimension::ALL.map(|dimension| model.report().numbers.ordered(dimension));
        let [width, header, bow] = [1474, 112, 24].map(|n| Some(Length::from_sixteenths(n)));
        assert_eq!((told.numbers, told.numbers), (says, [width, None, header, bow]));
    }
}
