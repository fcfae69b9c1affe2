//! A reading that is typed: what follows each key, and what once the typing rests.

mod events;

use events::event;
use hangtrue_page::core::Spot;
use hangtrue_page::core::judge::Judgement;
use hangtrue_page::{Effect, Environment, Event, Model, Step, update, view};
use proptest::prelude::*;

fn type_in(model: &mut Model, name: &str, value: &str) {
    update(model, Event::Input { name: name.into(), value: value.into() });
}

/// Two widths of which the lower slipped by a foot; Continue has told of it.
fn doubted() -> Model {
    let mut model = Model::new(Environment::default());
    for (spot, text) in [
        (Spot::WidthMiddle, "92 3/16"),
        (Spot::WidthLow, "80 3/16"),
        (Spot::HeightCenter, "101 1/2"),
        (Spot::HeaderLeft, "9 1/2"),
        (Spot::BowFirst, "1 1/4"),
    ] {
        model.order.survey.set(spot, 0, text);
    }
    model.step = Step::Width;
    update(&mut model, Event::Press("next".into()));
    assert!(told(&model).contains("80 3/16 in"), "{}", told(&model));
    model
}

/// The summary of what stands against going on.
fn told(model: &Model) -> String {
    let screen = view(model);
    let summary = screen.split("id=\"problems\"").nth(1);
    summary.and_then(|rest| rest.split("</section>").next()).unwrap_or_default().to_owned()
}

/// As it would be drawn if the judge were asked now.
fn asked_anew(model: &Model) -> String {
    view(&Model { held: Default::default(), ..model.clone() })
}

#[test]
fn a_reading_that_is_typed_is_not_doubted_until_that_rests() {
    let mut model = doubted();
    for text in ["8", "80", "80 1", "80 1/8"] {
        type_in(&mut model, "width.low", text);
        assert!(!told(&model).contains("does not fit"), "{text}: {}", told(&model));
    }
    assert_ne!(view(&model), asked_anew(&model));
    update(&mut model, Event::Settled);
    assert!(told(&model).contains("low reads 80 1/8 in, which does not fit"), "{}", told(&model));
    assert_eq!(view(&model), asked_anew(&model));
}

#[test]
fn while_another_is_typed_what_the_judge_said_stands() {
    let mut model = doubted();
    for text in ["9", "92", "92 1", "80 1/8"] {
        type_in(&mut model, "width.middle", text);
        assert!(told(&model).contains("low reads 80 3/16 in, which does not fit"), "{text}");
    }
    update(&mut model, Event::Settled);
    assert_eq!(told(&model), "");
}

#[test]
fn the_rules_are_asked_at_each_key() {
    let mut model = doubted();
    type_in(&mut model, "width.low", "920 1/8");
    let stopped = told(&model);
    assert!(stopped.contains("920 1/8 in"), "{stopped}");
    type_in(&mut model, "width.low", "92 1/8");
    assert!(!told(&model).contains("920 1/8 in"));
}

/// What it is made to have said is shown: so nobody asked it.
#[test]
fn the_judge_is_not_asked_at_a_key() {
    let typed = Event::Input { name: "width.middle".into(), value: "92 1/8".into() };
    let slid = Event::Slide { name: "width.middle".into(), marks: 1 };
    let pressed = ["eighths:3", "nudge:1587500"].map(|code| Event::Press(code.into()));
    for event in [typed, slid].into_iter().chain(pressed) {
        let mut model = doubted();
        update(&mut model, Event::Focus("width.middle".into()));
        model.held.judgement = Some(Judgement::default());
        let before = model.order.survey.clone();
        update(&mut model, event.clone());
        assert_ne!(model.order.survey, before, "{event:?}");
        assert!(!told(&model).contains("does not fit"), "{event:?}");
        update(&mut model, Event::Settled);
        assert!(told(&model).contains("does not fit"), "{event:?}");
    }
}

/// What stands from `begin` to the next `end` on the screen.
fn part<'a>(screen: &'a str, begin: &str, end: &str) -> &'a str {
    let from = screen.split_once(begin).map(|(_, rest)| rest).unwrap_or_default();
    from.split_once(end).map(|(part, _)| part).unwrap_or_default()
}

#[test]
fn the_frame_is_drawn_anew_once_the_typing_rests() {
    let mut model = Model::new(Environment::default());
    model.step = Step::Width;
    update(&mut model, Event::Focus("width.low".into()));
    let picture =
        |model: &Model| part(&view(model), "figure class=\"picture\"", "</figure>").to_owned();
    let before = picture(&model);
    for text in ["6", "60"] {
        type_in(&mut model, "width.low", text);
        assert_eq!(picture(&model), before, "{text}");
    }
    update(&mut model, Event::Settled);
    assert!(picture(&model).contains("60 in"), "{}", picture(&model));
}

#[test]
fn halfway_through_a_fraction_the_tape_stays_where_it_was() {
    let mut model = Model::new(Environment::default());
    model.step = Step::Width;
    update(&mut model, Event::Focus("width.low".into()));
    let tape = |model: &Model| part(&view(model), "aria-valuetext=\"", "\"").to_owned();
    for (text, shown) in [
        ("9", "9 in"),
        ("92 ", "92 in"),
        ("92 3", "92 in"),
        ("92 3/", "92 in"),
        ("92 3/16", "92 3/16 in"),
        ("", ""),
        ("no", ""),
    ] {
        type_in(&mut model, "width.low", text);
        assert_eq!(tape(&model), shown, "{text}");
        if text.is_empty() {
            update(&mut model, Event::Settled);
        }
    }
    type_in(&mut model, "width.low", "92");
    type_in(&mut model, "width.low", "92 3/");
    update(&mut model, Event::Settled);
    assert_eq!(tape(&model), "");
}

#[test]
fn the_tape_of_another_field_is_not_shown() {
    let mut model = Model::new(Environment::default());
    model.step = Step::Width;
    let tape = |model: &Model| part(&view(model), "aria-valuetext=\"", "\"").to_owned();
    for text in ["92", "92 1/"] {
        type_in(&mut model, "width.low", text);
        assert_eq!(tape(&model), "92 in");
    }
    // Filled without being gone to first, as a browser does.
    type_in(&mut model, "width.middle", "93 3/");
    assert_eq!(tape(&model), "");
}

#[test]
fn continue_goes_by_what_is_typed_now() {
    let mut model = doubted();
    type_in(&mut model, "width.low", "92 1/8");
    update(&mut model, Event::Press("next".into()));
    assert_eq!(model.step, Step::Height);
}

#[test]
fn what_is_no_longer_found_is_no_longer_confirmed_once_the_typing_rests() {
    let mut model = doubted();
    update(&mut model, Event::Press("confirm:slip:width.low".into()));
    assert_eq!(model.order.confirmed.len(), 1);
    type_in(&mut model, "width.middle", "80 3/16");
    assert_eq!(model.order.confirmed.len(), 1);
    let effects = update(&mut model, Event::Settled);
    assert_eq!(model.order.confirmed, []);
    assert!(matches!(effects.as_slice(), [Effect::Save(_)]), "the draft says so: {effects:?}");
}

/// An order that was confirmed by other rules is not changed, and not kept, for being looked at.
#[test]
fn where_nothing_was_typed_what_was_confirmed_stands() {
    let mut model = doubted();
    update(&mut model, Event::Press("confirm:slip:width.low".into()));
    model.order.survey.set(Spot::WidthLow, 0, "92 1/8");
    let effects = update(&mut model, Event::Focus("width.middle".into()));
    assert_eq!(model.order.confirmed.len(), 1);
    assert!(!effects.iter().any(|effect| matches!(effect, Effect::Save(_))), "{effects:?}");
}

/// A judge that doubts nothing may still ask for a reading.
#[test]
fn what_the_judge_asks_for_is_shown_though_it_doubts_nothing() {
    let mut model = Model::new(Environment::default());
    update(&mut model, Event::Navigate("/check".into()));
    let before = view(&model);
    assert!(before.contains("Read the post-to-post width, middle"), "{before}");
    update(&mut model, Event::Press("next".into()));
    assert!(view(&model).contains("Read the post-to-post width, middle"), "{}", view(&model));
    assert_eq!(view(&model), asked_anew(&model));
}

proptest! {
    /// Whatever happens: unless a reading is being typed, the screen is as if the judge had been
    /// asked for it, and only what is found is confirmed.
    #[test]
    fn when_the_typing_rests_nothing_is_left_of_what_the_judge_said_before(
        events in prop::collection::vec(event(), 0..24)
    ) {
        let mut model = Model::new(Environment::default());
        for event in events {
            update(&mut model, event);
            let mut rested = model.clone();
            update(&mut rested, Event::Settled);
            prop_assert_eq!(view(&rested), asked_anew(&rested));
            for confirmed in &rested.order.confirmed {
                let found = rested.report().findings;
                prop_assert!(found.iter().any(|finding| finding.rule == confirmed.rule));
            }
        }
    }
}

/// Who confirmed that two readings are so far apart has not confirmed that they are further apart.
#[test]
fn what_is_found_of_other_numbers_is_not_confirmed() {
    let spread = |model: &Model| {
        let found = model.report().findings;
        found.into_iter().find(|finding| finding.rule == "spread").map(|finding| finding.message)
    };
    let mut model = doubted();
    for (name, text) in [("width.low", "92"), ("bow.first", "3/4"), ("bow.third", "2 1/4")] {
        type_in(&mut model, name, text);
    }
    model.step = Step::Check;
    let key = "confirm:spread:bow.third";
    update(&mut model, Event::Press(key.into()));
    let before = spread(&model).unwrap();
    assert_eq!(model.order.confirmed.len(), 1, "{:?}", model.report().findings);
    update(&mut model, Event::Input { name: "prepared".into(), value: "yes".into() });
    update(&mut model, Event::Settled);
    assert_eq!(model.order.confirmed.len(), 1, "what was found is the same");
    type_in(&mut model, "bow.first", "1/2");
    update(&mut model, Event::Settled);
    assert!(spread(&model).is_some_and(|now| now != before));
    assert_eq!(model.order.confirmed, []);
    update(&mut model, Event::Press(key.into()));
    assert_eq!(model.order.confirmed.len(), 1);
    update(&mut model, Event::Press(key.into()));
    assert_eq!(model.order.confirmed, []);
}

/// Nor once the page was closed in between: what the draft has as confirmed was said of its numbers.
#[test]
fn what_was_confirmed_before_the_page_was_opened_holds_for_those_numbers() {
    let mut first = doubted();
    for (name, text) in [("width.low", "92"), ("bow.first", "3/4"), ("bow.third", "2 1/4")] {
        type_in(&mut first, name, text);
    }
    first.step = Step::Check;
    update(&mut first, Event::Press("confirm:spread:bow.third".into()));
    let kept = first.order.confirmed.clone();
    assert_eq!(kept.len(), 1);

    let mut model = Model { order: first.order, ..Model::new(Environment::default()) };
    update(&mut model, Event::Navigate("/bow".into()));
    type_in(&mut model, "header.left", "9 1/4");
    update(&mut model, Event::Settled);
    assert_eq!(model.order.confirmed, kept, "what was found is the same");
    type_in(&mut model, "bow.first", "1/2");
    update(&mut model, Event::Settled);
    assert!(model.report().findings.iter().any(|finding| finding.rule == "spread"));
    assert_eq!(model.order.confirmed, []);
}
