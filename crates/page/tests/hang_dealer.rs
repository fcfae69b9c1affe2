//! Hanging the door by a dealer's rules: what the door line, the answers and the intervals
//! change.

#![allow(clippy::unwrap_used, reason = "a test may fail")]

use hangtrue_core::hang::overhead::{Fit, Room, Track, sweep};
use hangtrue_core::order::{Answer, Date, Order};
use hangtrue_core::profile::Profile;
use hangtrue_core::{Dimension, Length, Spot, Survey, Unit, check};
use hangtrue_link::json::profile::parse;
use hangtrue_page::hang::{Arrival, Event, Model, Step, boot, update, view};
use hangtrue_page::{Environment, Event as PageEvent};

const PRAIRIE: &str = include_str!("../../../demo/profiles/prairie.json");

fn survey(header: &str, bow: &str) -> Survey {
    let mut survey = Survey::new(Unit::Inch);
    survey.prepared = true;
    for (spot, text) in [
        (Spot::WidthMiddle, "92"),
        (Spot::HeightCenter, "90"),
        (Spot::HeaderCenter, header),
        (Spot::BowFirst, bow),
    ] {
        survey.add(spot, text);
    }
    survey
}

fn opened(rules: Result<Profile, String>, door: &str) -> Model {
    let answer = |question: &str, answer: &str| Answer {
        question: question.to_owned(),
        answer: answer.to_owned(),
    };
    let order = Order {
        survey: survey("12 1/2", "1"),
        answers: vec![
            answer("door", door),
            answer("side-seal", "bulb"),
            answer("clip-offset", "4"),
            answer("grab-rail", "yes"),
        ],
        ..Order::default()
    };
    let payload = hangtrue_link::encode(&order).unwrap();
    let environment = Environment {
        today: Some(Date { year: 2026, month: 12, day: 1 }),
        base: "https://d.example/hang.html?profile=p.json".to_owned(),
        ..Environment::default()
    };
    let href = ["https://d.example/hang.html?profile=p.json#", &payload].concat();
    let arrival = Arrival { href: &href, fragment: &payload, draft: None, ..Arrival::default() };
    let (mut model, _) = boot(environment, arrival);
    model.rule_by(rules);
    model
}

fn go(model: &mut Model, step: Step) -> String {
    update(model, Event::Page(PageEvent::Navigate(["/", step.slug()].concat())));
    view(model)
}

fn put(model: &mut Model, name: &str, value: &str) {
    let (name, value) = (name.to_owned(), value.to_owned());
    update(model, Event::Page(PageEvent::Input { name, value }));
}

#[test]
fn the_door_line_of_the_order_is_the_door_that_is_hung() {
    let mut model = opened(Ok(parse(PRAIRIE).unwrap()), "high-lift");
    let markup = view(&model);
    assert!(markup.contains("Rules of Prairie Door Works, revision 4"), "{markup}");
    // What was ordered, in the dealer's words.
    let markup = go(&mut model, Step::Delivery);
    for said in ["High Lift 900", "Which side seals?", "Bulb seal", "<b>4 in</b>", "<b>Yes</b>"] {
        assert!(markup.contains(said), "{said}: {markup}");
    }
    // Its track and panels: nothing that the profile says is assumed, and it passes.
    let markup = go(&mut model, Step::Overhead);
    assert!(markup.contains("The door passes."), "{markup}");
    assert!(!markup.contains("3 in if you know no better"), "{markup}");
    // Its drum (318 mm, as a tape shows it), and its weight by area: 92 by 90 in are 5.342 m²
    // (92 × 90 × 0.0254²), at 9.8 kg/m² 52.35 kg, 115 lb.
    let markup = go(&mut model, Step::Spring);
    assert!(markup.contains("115 lb") && markup.contains("12 1/2 in"), "{markup}");
    // A drum that no door has is told, and no turns are: nobody winds by another than was typed.
    put(&mut model, "drum", "1");
    let markup = view(&model);
    assert!(markup.contains("nothing below 3 in") && !markup.contains("in of door"), "{markup}");
    put(&mut model, "drum", "");
    assert!(view(&model).contains("12 1/2 in of door"));
    // The other line is another door: 2.15 lb/ft² × 57.5 ft² = 124 lb.
    let mut rail = opened(Ok(parse(PRAIRIE).unwrap()), "rail");
    let markup = go(&mut rail, Step::Spring);
    assert!(markup.contains("124 lb"), "{markup}");
}

/// The hyphen of a day: no line ends within it.
const UNBROKEN: char = '\u{2011}';

#[test]
fn the_dealers_intervals_say_what_is_due() {
    // Hung on 1 December: oil after two months by the profile, three by ours.
    for (rules, day) in
        [(parse(PRAIRIE).unwrap(), "2027-02-01"), (Profile::default(), "2027-03-01")]
    {
        let mut model = opened(Ok(rules), "rail");
        put(&mut model, "hung", "2026-12-01");
        let markup = go(&mut model, Step::Care);
        assert!(markup.replace(UNBROKEN, "-").contains(day), "{day}: {markup}");
    }
    // Twenty openings a day: the cables after 300 of them, fifteen days.
    let mut model = opened(Ok(parse(PRAIRIE).unwrap()), "rail");
    put(&mut model, "hung", "2026-12-01");
    put(&mut model, "per-day", "20");
    assert!(go(&mut model, Step::Care).replace(UNBROKEN, "-").contains("2026-12-16"));
}

/// The record names its dealer's rules and holds none of their intervals: where they are not at
/// hand that is said, and where they are, in whatever revision, theirs hold.
#[test]
fn a_record_without_its_dealers_rules_says_whose_intervals_these_are() {
    for (rules, told) in [(Profile::default(), true), (parse(PRAIRIE).unwrap(), false)] {
        let mut model = opened(Ok(rules), "rail");
        model.record.order.profile = Some(("Prairie Door Works".to_owned(), 3));
        put(&mut model, "hung", "2026-12-01");
        let markup = go(&mut model, Step::Care);
        let said = markup.contains("ordered under: Rules of Prairie Door Works, revision 3");
        assert_eq!(said, told, "{markup}");
        let day = if told { "2027-03-01" } else { "2027-02-01" };
        assert!(markup.replace(UNBROKEN, "-").contains(day));
    }
}

#[test]
fn rules_that_cannot_be_read_are_told_and_ours_hold() {
    let mut model = opened(Err("p.json: 404".to_owned()), "rail");
    let markup = view(&model);
    assert!(markup.contains("id=\"rules\"") && markup.contains("p.json: 404"), "{markup}");
    // What was answered is shown as the order has it.
    assert!(go(&mut model, Step::Delivery).contains("bulb"));
}

/// A demo that fits nowhere shows nothing: each line passes under the least header that it
/// asks for, with the bows that its dealer takes as usual.
#[test]
fn every_door_line_of_the_demos_passes_under_its_own_least_header() {
    let profile = parse(PRAIRIE).unwrap();
    assert_eq!(profile.doors.len(), 2);
    for door in &profile.doors {
        let header = door.header_least.unwrap().canonical(Unit::Inch);
        let numbers = check(&survey(&header, "0"), &profile).numbers;
        let mut room = Room::of(&numbers, Track::of(door)).unwrap();
        assert_eq!(numbers.ordered(Dimension::Header), door.header_least);
        room.bow = None;
        let swept = sweep(&room);
        assert_eq!(swept.fit(), Fit::Passes, "{}: {:?}", door.key, swept.tight);
        // And not for want of trying: three quarters of an inch less, and it is tight.
        room.header -= Length::from_sixteenths(12);
        assert_ne!(sweep(&room).fit(), Fit::Passes, "{}", door.key);
    }
}
