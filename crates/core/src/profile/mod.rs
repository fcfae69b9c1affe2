//! The rules an order is checked by: the built-in ones, or a dealer's.
//!
//! A profile moves the *usual* limits, asks for more, and says how the order is
//! written. Physical and legal impossibilities are not in here: the rules that stop
//! an order read [`crate::bounds`] themselves, and nobody can switch them off.

mod colour;
mod contact;
mod door;
mod limits;
mod numbering;
mod question;
mod words;

pub use colour::{CONTRAST_LEAST, Colour, Palette, Poor};
pub use contact::{Contact, dialled, is_email, is_page, is_phone};
pub use door::{Door, Panel, Track};
pub use limits::{Beyond, End, Limited, Ruled, Ruling};
pub use numbering::{NumberError, Numbering, Part};
pub use question::{Amiss, Choice, Kind, Question};
pub use words::{LANGUAGES, Words};

use std::borrow::Cow;

use crate::finding::Severity;
use crate::hang::care;
use crate::length::{Length, Unit};
use crate::order::Answer;
use crate::say::Because;
use crate::spot::Spot;

/// The question under which an order keeps the chosen door line.
pub const DOOR: &str = "door";

/// Whether `key` is one that an order needs for itself.
#[must_use]
pub fn is_key_taken(key: &str) -> bool {
    key == DOOR
}

/// How an ordered number is taken from several readings.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Take {
    /// The tightest reading.
    #[default]
    Tightest,
    /// The mean of the places, each place being the mean of its repeats.
    Mean,
}

/// What a miss and a minute cost; only their ratio matters to what is asked next.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Costs {
    /// A door cut to a wrong number, and the truck that waits for the next.
    pub miss: f64,
    /// One more reading.
    pub minute: f64,
}

impl Default for Costs {
    fn default() -> Self {
        Self { miss: 1500.0, minute: 1.0 }
    }
}

/// What a dealer may set. The default is the built-in rules.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Profile {
    /// Who wrote it; empty for the built-in rules.
    pub name: String,
    /// Counts up with every change.
    pub revision: u32,
    /// The unit that fields begin with.
    pub unit: Option<Unit>,
    /// The languages that are offered, as `en`; all of ours if empty.
    pub languages: Vec<String>,
    /// Who gets the order.
    pub contact: Contact,
    /// How the order's own number is made; none if it has none.
    pub numbering: Option<Numbering>,
    /// How an ordered number is taken from several readings.
    pub take: Take,
    /// The step ordered numbers are rounded to, in orders of its own unit.
    pub step: Option<Length>,
    /// Closing readings without which no order is made.
    pub closing: Vec<Spot>,
    /// What a miss and a minute cost.
    pub costs: Costs,
    /// Limits in the place of ours.
    pub rulings: Vec<Ruling>,
    /// Door lines offered.
    pub doors: Vec<Door>,
    /// Questions of the dealer's own.
    pub questions: Vec<Question>,
    /// How often a door is looked after, where it is not as ours.
    pub care: Vec<care::Set>,
    /// Said on the first screen.
    pub start: Words,
    /// Said beside the finished order.
    pub send: Words,
    /// Colours by day.
    pub light: Option<Palette>,
    /// Colours by night.
    pub dark: Option<Palette>,
}

impl Profile {
    /// Whether these are the built-in rules.
    #[must_use]
    pub const fn is_built_in(&self) -> bool {
        self.name.is_empty()
    }

    /// Its name and revision, as an order names the rules it was made under; none for the
    /// built-in ones.
    #[must_use]
    pub fn named(&self) -> Option<(String, u32)> {
        (!self.is_built_in()).then(|| (self.name.clone(), self.revision))
    }

    /// The limit on `what` as it holds here.
    #[must_use]
    pub fn limit(&self, what: Limited) -> Ruled<'_> {
        Ruled::of(what, &self.rulings)
    }

    /// The step to which the numbers of an order in `unit` are rounded. A step that is no
    /// whole number of the unit's own holds only in orders of the other unit: 1/8 in is no
    /// number of millimetres that a saw could be set to.
    #[must_use]
    pub fn step(&self, unit: Unit) -> Length {
        let own = unit.step();
        self.step.filter(|step| step.floor_to(own) == *step).unwrap_or(own)
    }

    /// The door line that `answers` choose; the only one where there is but one.
    #[must_use]
    pub fn door(&self, answers: &[Answer]) -> Option<&Door> {
        if let [only] = self.doors.as_slice() {
            return Some(only);
        }
        let chosen = answers.iter().find(|answer| answer.question == DOOR)?;
        self.doors.iter().find(|door| door.key == chosen.answer)
    }

    /// The rules as they hold for the door line that `answers` choose: the stricter of
    /// the dealer's limit and the door's. Where the dealer refuses, a door that needs more is no
    /// reason to ask only.
    #[must_use]
    pub fn chosen(&self, answers: &[Answer]) -> Cow<'_, Self> {
        let Some(door) = self.door(answers) else { return Cow::Borrowed(self) };
        let mut chosen = self.clone();
        for (what, least) in
            [(Limited::Header, door.header_least), (Limited::Post, door.post_least)]
        {
            let Some(bound) = least.filter(|least| self.limit(what).least() < Some(*least)) else {
                continue;
            };
            let stop = self.limit(what).severity(End::Least) == Severity::Stop;
            chosen.rulings.retain(|ruling| (ruling.what, ruling.end) != (what, End::Least));
            let because = Because::Door(door.name.clone());
            chosen.rulings.push(Ruling { what, end: End::Least, bound, because, stop });
        }
        Cow::Owned(chosen)
    }

    /// What is amiss with `answers`: the question, and what; in the order of the questions.
    #[must_use]
    pub fn amiss(&self, answers: &[Answer], unit: Unit) -> Vec<(&Question, Amiss)> {
        let given = |question: &Question| {
            let found = answers.iter().find(|answer| answer.question == question.key);
            found.map_or("", |answer| answer.answer.as_str())
        };
        let ask = |question| Question::amiss(question, given(question), unit);
        self.questions.iter().filter_map(|q| ask(q).map(|amiss| (q, amiss))).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::check::{check_order, check_order_as_judged};
    use crate::order::Order;
    use crate::say::Message;

    use crate::check::{Verdict, check};
    use crate::rules::testing::survey;
    use crate::say::Speaker;
    use crate::spot::Dimension;

    fn door(key: &str, header: i64) -> Door {
        Door {
            key: key.to_owned(),
            name: Words::plain(key),
            header_least: Some(Length::from_inches(header)),
            ..Door::default()
        }
    }

    fn chosen(key: &str) -> [Answer; 1] {
        [Answer { question: DOOR.to_owned(), answer: key.to_owned() }]
    }

    /// The customer is told whose limit it is and why, and a refusal refuses.
    #[test]
    fn a_dealers_reason_is_told() {
        let reason = Words(vec![("es", "sin rollo".into()), ("en", "No roll is wider.".into())]);
        let because = Because::Dealer { name: "Demo Doors".into(), reason };
        let bound = Length::from_inches(90);
        let ruling = Ruling { what: Limited::Width, end: End::Most, bound, because, stop: true };
        let profile = Profile { rulings: vec![ruling], ..Profile::default() };
        let mut survey = survey(&[]);
        survey.entries_mut(Spot::WidthLow).clear();
        let report = check(&survey, &profile);
        assert_eq!(report.verdict, Verdict::Stop);
        let told = Speaker::default().say(&report.findings[0].message);
        assert!(told.ends_with(": Demo Doors says: No roll is wider."), "{told}");
        assert_eq!(check(&survey, &Profile::default()).verdict, Verdict::Clear);
    }

    #[test]
    fn the_mean_is_ordered_where_a_dealer_takes_the_mean() {
        let survey = survey(&[(Spot::WidthHigh, 92 * 16 + 8)]);
        let width = |take| {
            let profile = Profile { take, ..Profile::default() };
            check(&survey, &profile).numbers.ordered(Dimension::Width)
        };
        assert_eq!(width(Take::Tightest), Some(Length::from_sixteenths(92 * 16 + 3)));
        // 92 4/16, 3/16 and 8/16 make 92 5/16.
        assert_eq!(width(Take::Mean), Some(Length::from_sixteenths(92 * 16 + 5)));
    }

    #[test]
    fn a_step_holds_in_orders_of_its_own_unit() {
        let eighth = Length::from_sixteenths(2);
        let profile = Profile { step: Some(eighth), ..Profile::default() };
        assert_eq!(profile.step(Unit::Inch), eighth);
        assert_eq!(profile.step(Unit::Millimetre), Length::MILLIMETRE);
        let profile = Profile { step: Some(Length::MILLIMETRE), ..Profile::default() };
        assert_eq!(profile.step(Unit::Inch), Length::SIXTEENTH);
    }

    #[test]
    fn a_door_line_raises_the_least_header_and_never_lowers_it() {
        let profile =
            Profile { doors: vec![door("high", 12), door("low", 4)], ..Profile::default() };
        let least =
            |answers: &[Answer]| profile.chosen(answers).limit(Limited::Header).least().unwrap();
        assert_eq!(least(&[]), Length::from_inches(7));
        assert_eq!(least(&chosen("high")), Length::from_inches(12));
        assert_eq!(least(&chosen("low")), Length::from_inches(7));
        assert_eq!(least(&chosen("none such")), Length::from_inches(7));
    }

    #[test]
    fn the_only_door_line_needs_no_choosing() {
        let profile = Profile { doors: vec![door("high", 12)], ..Profile::default() };
        let least = profile.chosen(&[]).limit(Limited::Header).least();
        assert_eq!(least, Some(Length::from_inches(12)));
    }

    #[test]
    fn a_dealers_rules_are_named_and_the_built_in_ones_are_not() {
        assert_eq!(Profile::default().named(), None);
        let ruled = Profile { name: "Example Doors".into(), revision: 4, ..Profile::default() };
        assert_eq!(ruled.named(), Some(("Example Doors".to_owned(), 4)));
        assert!(is_key_taken("door") && !is_key_taken("color"));
    }

    /// Two questions, of which one is answered: the other stands before what is only odd.
    #[test]
    fn what_a_dealer_misses_stops_the_order_and_stands_among_what_stops_it() {
        let ask = |key: &str| Question {
            key: key.into(),
            ask: Words::plain(key),
            hint: Words::default(),
            required: true,
            kind: Kind::YesNo,
        };
        let profile = Profile { questions: vec![ask("lift"), ask("gate")], ..Profile::default() };
        let answer = |question: &str, answer: &str| Answer {
            question: question.into(),
            answer: answer.into(),
        };
        let answers = vec![answer("lift", "yes"), answer("gate", "maybe")];
        let amiss = profile.amiss(&answers, Unit::Inch);
        assert_eq!(amiss.len(), 1);
        assert_eq!((amiss[0].0.key.as_str(), &amiss[0].1), ("gate", &Amiss::NotOffered));
        let survey = survey(&[(Spot::BowFirst, 40), (Spot::WidthLow, 120 * 16)]);
        let order = Order { survey, answers, ..Order::default() };
        let report = check_order(&order, &profile);
        let rules: Vec<_> = report.findings.iter().map(|f| (f.severity, f.rule)).collect();
        let at = rules.iter().position(|one| *one == (Severity::Stop, "answer")).unwrap();
        let stops = rules.iter().filter(|(severity, _)| *severity == Severity::Stop).count();
        assert!(at == stops - 1 && stops > 1 && stops < rules.len(), "{rules:?}");
        assert_eq!(check_order_as_judged(&order, &profile, &report.judgement), report);
        let only = Order { survey: crate::rules::testing::survey(&[]), ..order };
        let report = check_order(&only, &profile);
        assert_eq!((report.verdict, report.findings.len()), (Verdict::Stop, 1));
        let Message::Answer(says) = &report.findings[0].message else { panic!("{report:?}") };
        assert_eq!((says.key.as_str(), says.answer.as_str()), ("gate", "maybe"));
    }

    #[test]
    fn a_door_lines_own_least_takes_the_place_of_that_limit_and_of_no_other() {
        let because = || Because::Door(Words::plain("other"));
        let ruling = |what, inches| {
            let bound = Length::from_inches(inches);
            Ruling { what, end: End::Least, bound, because: because(), stop: true }
        };
        let twelve = Length::from_inches(12);
        let profile = Profile {
            rulings: vec![ruling(Limited::Header, 8), ruling(Limited::Post, 4)],
            doors: vec![Door { header_least: Some(twelve), ..Door::default() }],
            ..Profile::default()
        };
        let chosen = profile.chosen(&[]);
        let left: Vec<_> = chosen.rulings.iter().map(|one| (one.what, one.bound)).collect();
        let four = Length::from_inches(4);
        assert_eq!(left, [(Limited::Post, four), (Limited::Header, twelve)]);
        // A taller door is no way round what the dealer refuses.
        assert_eq!(chosen.limit(Limited::Header).severity(End::Least), Severity::Stop);
        let asks = Profile { rulings: Vec::new(), ..profile.clone() };
        let asked = asks.chosen(&[]).limit(Limited::Header).severity(End::Least);
        assert_eq!(asked, Severity::Recheck);
    }
}
