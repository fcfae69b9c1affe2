//! What follows from the door and the fields: each asked of the core.

use super::model::Model;
use hangtrue_core::check::Report;
use hangtrue_core::hang::inspection::Against;
use hangtrue_core::hang::overhead::{Room, Track};
use hangtrue_core::hang::spring::{
    Advice, Balance, Behaves, DRUMS, Height, PRELOADS, Pull, Turns, Wire, contradict,
    from_behaviour, from_pulls,
};
use hangtrue_core::hang::weight::{NoWeight, Weight};
use hangtrue_core::length::{ReadError, read};
use hangtrue_core::order::Numbers;
use hangtrue_core::{Dimension, Length, Spot, Survey, check};

/// A number such as `12`, `12.25`, `12,25` or `12 1/4`.
pub(super) fn number(text: &str) -> Option<f64> {
    // No exponents, no signs, no words for infinity.
    let plain = |text: &str| {
        let text = text.replace(',', ".");
        let fine = !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit() || b == b'.');
        if fine { text.parse::<f64>().ok() } else { None }
    };
    let text = text.trim();
    let Some((over, under)) = text.split_once('/') else { return plain(text) };
    let (whole, over) = over.rsplit_once(' ').unwrap_or(("0", over));
    let [whole, over, under] = [plain(whole.trim())?, plain(over)?, plain(under)?];
    // `121/4` has lost the space of 12 1/4.
    let proper = [whole, over, under].iter().all(|part| part.fract() == 0.0) && over < under;
    proper.then(|| whole + over / under)
}

/// Turns as they are said: `12`, `12 1/4`.
pub(super) fn turns_text(turns: f64) -> String {
    #[expect(clippy::cast_possible_truncation, reason = "a float cast saturates")]
    let quarters = (turns * 4.0).round() as i64;
    let (whole, rest) = (quarters.div_euclid(4), quarters.rem_euclid(4));
    let part = ["", "1/4", "1/2", "3/4"].get(usize::try_from(rest).unwrap_or(0));
    match (whole, part.copied().unwrap_or("")) {
        (whole, "") => whole.to_string(),
        (0, part) => part.to_owned(),
        (whole, part) => [&whole.to_string(), " ", part].concat(),
    }
}

impl Model {
    /// What the order is found to be.
    pub(super) fn report(&self) -> Report {
        let order = &self.record.order;
        check(&order.survey, &self.profile.chosen(&order.answers))
    }

    /// The four numbers of the order.
    pub(super) fn numbers(&self) -> Numbers {
        self.report().numbers
    }

    /// The ordered sill-to-header height.
    pub(super) fn height(&self) -> Option<Length> {
        self.numbers().ordered(Dimension::Height)
    }

    /// What is read in a field; none where it is blank.
    pub(super) fn read(&self, name: &str) -> Option<Result<Length, ReadError>> {
        let text = self.fields.get(name);
        (!text.trim().is_empty()).then(|| read(text, self.unit()))
    }

    /// Whether nothing is typed in a field.
    pub(super) fn is_blank(&self, name: &str) -> bool {
        self.fields.get(name).trim().is_empty()
    }

    /// The length in a field.
    pub(super) fn length(&self, name: &str) -> Option<Length> {
        self.read(name)?.ok()
    }

    /// The weight in a field; none where it is blank.
    pub(super) fn weight(&self, name: &str) -> Option<Result<Weight, NoWeight>> {
        match Weight::read(self.fields.get(name), self.scale()) {
            Err(NoWeight::Empty) => None,
            other => Some(other),
        }
    }

    /// The frame as it was measured again.
    pub(super) fn built(&self) -> Survey {
        let mut survey = Survey::new(self.unit());
        survey.prepared = true;
        for spot in Spot::ALL {
            let text = self.fields.get(&["again.", &spot.key()].concat());
            if !text.trim().is_empty() {
                survey.add(spot, text);
            }
        }
        survey
    }

    /// The room overhead, by the profile's door line and what is typed over it.
    pub(super) fn room(&self) -> Option<Room> {
        let typed = Track {
            radius: self.length("radius"),
            rise: self.length("rise"),
            slope: number(self.fields.get("slope")),
            offset: self.length("offset"),
            thickness: self.length("thickness"),
            panel: self.length("panel"),
            gap: self.length("gap"),
        };
        let door = self.profile.door(&self.record.order.answers);
        let known = door.map_or_else(Track::default, Track::of);
        let room = Room::of(&self.numbers(), known.under(typed))?;
        let [first, spacing, width] = BOWS.map(|name| self.length(name));
        Some(room.with_bows(first, spacing, width))
    }

    /// How far the slider has the door open.
    pub(super) fn lift(&self, room: &Room) -> Length {
        let share = number(self.fields.get("open")).unwrap_or(0.0);
        Length::from_mm_f64(room.height.to_mm() * share / 100.0)
    }

    /// Turns for the door's height.
    pub(super) fn turns(&self) -> Option<Turns> {
        let mut door = self.profile.door(&self.record.order.answers).cloned().unwrap_or_default();
        // What was typed and is not understood is not the usual: nobody winds by that.
        if !self.is_blank("drum") {
            door.drum_circumference =
                Some(self.length("drum").filter(|drum| DRUMS.contains(drum))?);
        }
        if !self.is_blank("preload") {
            let turns = number(self.fields.get("preload"));
            door.preload_turns = Some(turns.filter(|turns| PRELOADS.contains(turns))?);
        }
        Some(Turns::of(self.height()?, Some(&door)))
    }

    /// What the door weighs: as typed, else by its area where the profile has a weight.
    pub(super) fn door_weight(&self) -> Option<Weight> {
        if let Some(typed) = self.weight("weight") {
            return typed.ok();
        }
        let grams = self.profile.door(&self.record.order.answers)?.panel.weight?;
        let numbers = self.numbers();
        let area = |dimension| numbers.ordered(dimension).map(|length| length.to_mm() / 1e3);
        let square = area(Dimension::Width)? * area(Dimension::Height)?;
        Some(Weight::from_kg_f64(square * f64::from(grams) / 1e3))
    }

    /// The door and a spring that suits it, wound as it is noted, else as it should be.
    pub(super) fn balance(&self) -> Option<Balance> {
        let ideal = Balance::ideal(self.door_weight()?, self.turns()?);
        let wound = self.record.turns.map_or(ideal.turns.to_wind(), |turns| turns.turns());
        Some(ideal.wound(wound))
    }

    /// The spring by its own measures.
    pub(super) fn wire(&self) -> Option<Wire> {
        let coils = number(self.fields.get("coils"))?;
        Wire::measured(self.length("wire")?, self.length("coil")?, coils)
    }

    /// What was weighed at two heights of a door that travels by so much.
    fn pulls(&self, travel: Length) -> [Pull; 2] {
        let weighed = |name: &str| self.weight(name).and_then(Result::ok);
        [("low", 0.0), ("half", 0.5)].map(|(name, share)| Pull {
            lift: Length::from_mm_f64(travel.to_mm() * share),
            up: weighed(&["pull.up.", name].concat()),
            down: weighed(&["pull.down.", name].concat()),
        })
    }

    /// Whether what was weighed contradicts itself, whatever the door.
    pub(super) fn pulls_contradict(&self) -> bool {
        contradict(&self.pulls(Length::ZERO))
    }

    /// What a balance test asks for: by the scale where something was weighed, else by what
    /// the door does. Nothing where what was weighed contradicts itself.
    pub(super) fn advice(&self) -> Option<Advice> {
        let balance = self.balance()?;
        let room = self.room()?;
        let pulls = self.pulls(balance.turns.travel);
        if contradict(&pulls) {
            return None;
        }
        from_pulls(&balance, &room.curtain(), &pulls)
            .or_else(|| from_behaviour(&balance, self.behaviour()))
    }

    /// What the door does at three heights.
    pub(super) fn behaviour(&self) -> [Option<Behaves>; 3] {
        Height::ALL.map(|height| match self.fields.get(behaves(height)) {
            "drops" => Some(Behaves::Drops),
            "stays" => Some(Behaves::Stays),
            "rises" => Some(Behaves::Rises),
            _ => None,
        })
    }

    /// What the inspection is held against.
    pub(super) fn against(&self) -> Against {
        Against { wound: self.record.turns.map(|turns| turns.turns()) }
    }

    /// A weight, as the page writes it.
    pub(super) fn told_weight(&self, weight: Weight) -> String {
        let value = weight.in_scale(self.scale());
        let places = if value.abs() < 10.0 { 1 } else { 0 };
        [&self.speaker().decimal(value, places), " ", self.scale().key()].concat()
    }

    /// A length worked out, to what a tape shows.
    pub(super) fn told(&self, length: Length) -> String {
        self.speaker().length(length.round_to(self.unit().step()))
    }
}

/// The fields of where the bows hang: the first, from one to the next, how wide.
pub(super) const BOWS: [&str; 3] = ["bow.first", "bow.spacing", "bow.width"];

/// The name of the choice of what the door does at a height.
pub(super) const fn behaves(height: Height) -> &'static str {
    match height {
        Height::Low => "does.low",
        Height::Middle => "does.middle",
        Height::High => "does.high",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn turns_are_said_in_quarters_and_numbers_are_plain() {
        for (turns, text) in [(12.0, "12"), (12.25, "12 1/4"), (0.5, "1/2"), (13.1, "13")] {
            assert_eq!(turns_text(turns), text);
        }
        for text in ["12,25", "12.25", "12 1/4", " 12  2/8 "] {
            assert_eq!(number(text), Some(12.25), "{text}");
        }
        assert_eq!(number("3/4"), Some(0.75));
        for text in [
            "",
            "1e3",
            "-1",
            "inf",
            "1.2.3",
            "twelve",
            "1/0",
            "12 1/4 1/4",
            "/",
            "121/4",
            "12 5/4",
            "12.5 1/4",
        ] {
            assert_eq!(number(text), None, "{text}");
        }
    }
}
