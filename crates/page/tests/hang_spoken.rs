//! Hanging the door, as it is heard.

#![allow(clippy::unwrap_used, reason = "a test may fail")]

use hangtrue_core::order::Order;
use hangtrue_core::{Spot, Survey, Unit};
use hangtrue_page::hang::{Arrival, Effect, Event, Model, Step, boot, update, view};
use hangtrue_page::{Effect as PageEffect, Environment, Event as PageEvent};

fn opened() -> Model {
    let mut survey = Survey::new(Unit::Inch);
    survey.prepared = true;
    for (spot, text) in [
        (Spot::WidthMiddle, "92"),
        (Spot::HeightCenter, "90"),
        (Spot::HeaderCenter, "9"),
        (Spot::BowFirst, "1 1/4"),
    ] {
        survey.add(spot, text);
    }
    let payload = hangtrue_link::encode(&Order { survey, ..Order::default() }).unwrap();
    let href = ["https://d.example/hang.html#", &payload].concat();
    boot(
        Environment::default(),
        Arrival { href: &href, fragment: &payload, draft: None, aside: &[] },
    )
    .0
}

fn send(model: &mut Model, event: PageEvent) -> Vec<Effect> {
    update(model, Event::Page(event))
}

fn put(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    send(model, PageEvent::Input { name: name.to_owned(), value: value.to_owned() })
}

/// The live region says what stands under the field that has the focus, in every field of
/// every screen, once typing has stopped; and nothing of a screen that was left.
#[test]
fn the_live_region_says_how_a_field_is_understood() {
    let mut model = opened();
    let mut said = Vec::new();
    for step in Step::ALL {
        send(&mut model, PageEvent::Navigate(["/", step.slug()].concat()));
        let screen = view(&model);
        assert_eq!(model.spoken, "");
        let fields = screen.split("<input id=\"").skip(1);
        for name in fields.filter_map(|field| field.split('"').next()) {
            for text in ["1 1/4", "11/4", "?"] {
                send(&mut model, PageEvent::Focus(name.to_owned()));
                let effects = put(&mut model, name, text);
                assert!(effects.contains(&Effect::Page(PageEffect::Settle)), "{effects:?}");
                send(&mut model, PageEvent::Settled);
                let screen = view(&model);
                let echo = ["id=\"", name, "-echo\">"].concat();
                let shown = screen.split(&echo).nth(1).and_then(|rest| rest.split('<').next());
                assert_eq!(shown.unwrap_or_default(), model.spoken, "{name}: {text}");
                said.push(model.spoken.clone());
            }
            put(&mut model, name, "");
        }
    }
    for wanted in ["1 1/4 in ≈ 31.8 mm", "1 1/4 in?"] {
        assert!(said.iter().any(|said| said == wanted), "{said:?}");
    }
}
