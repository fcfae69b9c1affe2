//! A door being hung, for the tests of its page.

#![allow(dead_code, reason = "each test crate takes what it needs")]

use hangtrue_core::check::Verdict;
use hangtrue_core::order::{Date, Order};
use hangtrue_core::{Spot, Survey, Unit};
use hangtrue_page::hang::{Action, Arrival, Effect, Event, Model, Step, boot, update, view};
use hangtrue_page::{Environment, Event as PageEvent};

pub(crate) const TODAY: Date = Date { year: 2026, month: 12, day: 1 };

pub(crate) fn environment() -> Environment {
    let base = "https://dealer.example/doors/hang.html".to_owned();
    Environment { base, today: Some(TODAY), ..Environment::default() }
}

/// An order of 92 by 90 in, with 9 in of header and bows of 1 1/4 in.
pub(crate) fn order(unit: Unit) -> Order {
    let mut survey = Survey::new(unit);
    survey.prepared = true;
    let texts = match unit {
        Unit::Inch => ["92", "90", "9", "1 1/4"],
        Unit::Millimetre => ["2336.8", "2286", "228.6", "31.75"],
    };
    let spots = [Spot::WidthMiddle, Spot::HeightCenter, Spot::HeaderCenter, Spot::BowFirst];
    for (spot, text) in spots.into_iter().zip(texts) {
        survey.add(spot, text);
    }
    Order {
        survey,
        claimed: Verdict::Clear,
        vehicle: "unit 27".to_owned(),
        language: "en".to_owned(),
        ..Order::default()
    }
}

pub(crate) fn opened(unit: Unit) -> Model {
    let payload = hangtrue_link::encode(&order(unit)).unwrap();
    let fragment = payload.clone();
    let href = format!("https://dealer.example/doors/hang.html#{payload}");
    let (model, effects) = boot(
        environment(),
        Arrival { href: &href, fragment: &fragment, draft: None, ..Arrival::default() },
    );
    // The order leaves the address.
    assert!(effects.contains(&Effect::Replace(Step::Order)), "{effects:?}");
    assert!(model.has_order());
    model
}

pub(crate) fn go(model: &mut Model, step: Step) -> String {
    update(model, Event::Page(PageEvent::Navigate(["/", step.slug()].concat())));
    view(model)
}

pub(crate) fn put(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    let (name, value) = (name.to_owned(), value.to_owned());
    update(model, Event::Page(PageEvent::Input { name, value }))
}

pub(crate) fn press(model: &mut Model, action: &Action) -> Vec<Effect> {
    update(model, Event::Page(PageEvent::Press(action.code())))
}

/// Percent escapes undone.
pub(crate) fn unescaped(text: &str) -> String {
    let mut parts = text.split('%');
    let mut bytes = parts.next().unwrap().as_bytes().to_vec();
    for part in parts {
        let (hex, rest) = part.split_at(2);
        bytes.push(u8::from_str_radix(hex, 16).unwrap());
        bytes.extend(rest.bytes());
    }
    String::from_utf8(bytes).unwrap()
}
