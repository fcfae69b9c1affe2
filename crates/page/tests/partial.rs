//! The first screens, before the second module is there.

mod events;

use events::event;
use hangtrue_page::core::length::is_plain;
use hangtrue_page::core::say::Language;
use hangtrue_page::core::{Entry, Length, Spot, Unit};
use hangtrue_page::{Effect, Environment, Event, Model, Step, boot_partial, update, view};
use proptest::prelude::*;

fn model() -> Model {
    let base = "https://dealer.example/door/".into();
    boot_partial(Environment { base, ..Environment::default() }).0
}

fn type_in(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    update(model, Event::Input { name: name.into(), value: value.into() })
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Press(code.into()))
}

fn to_the_bow(model: &mut Model) {
    press(model, "next");
    type_in(model, "prepared", "yes");
    press(model, "next");
    for (name, value) in
        [("width.middle", "92 3/16"), ("height.center", "101 1/2"), ("header.center", "9 1/2")]
    {
        type_in(model, name, value);
        press(model, "next");
    }
    assert_eq!(model.step, Step::Bow);
    type_in(model, "bow.first", "1 1/4");
}

#[test]
fn the_four_dimensions_are_taken_judged_by_rules_and_kept() {
    let mut model = model();
    to_the_bow(&mut model);
    let kept = type_in(&mut model, "bow.first", "1 3/8");
    assert!(kept.iter().any(|effect| matches!(effect, Effect::Save(_))), "{kept:?}");
}

#[test]
fn what_stands_against_a_reading_is_told_once_the_second_module_is_there() {
    let mut model = model();
    to_the_bow(&mut model);
    press(&mut model, "back");
    update(&mut model, Event::Navigate("/height".into()));
    type_in(&mut model, "height.center", "912");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Height);
    assert!(view(&model).contains("on its way"));
    update(&mut model, Event::Whole);
    assert_eq!(model.step, Step::Height);
    assert!(view(&model).contains("id=\"problems\""), "{}", view(&model));
}

#[test]
fn words_are_read_once_the_second_module_is_there() {
    let mut model = model();
    to_the_bow(&mut model);
    update(&mut model, Event::Navigate("/header".into()));
    let kept = type_in(&mut model, "header.center", "nine and a half");
    assert!(kept.iter().any(|effect| matches!(effect, Effect::Save(_))), "{kept:?}");
    // Neither a key, the tape nor another unit has it read before.
    press(&mut model, "nudge:1587500");
    update(&mut model, Event::Slide { name: "header.center".into(), marks: 1 });
    type_in(&mut model, "unit", "mm");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Header);
    let screen = view(&model);
    assert!(screen.contains("value=\"nine and a half\""), "{screen}");
    update(&mut model, Event::Whole);
    assert_eq!(model.step, Step::Bow, "{:?}", model.order.survey);
    let read = model.order.survey.lengths(Spot::HeaderCenter).next();
    // The key and the tape came behind it, each by a sixteenth.
    assert_eq!(read, Some(Length::from_sixteenths(9 * 16 + 10)));
    assert_eq!(model.order.survey.unit, Unit::Millimetre);
}

#[test]
fn what_needs_the_second_module_waits_says_so_and_then_happens_once() {
    let mut model = model();
    to_the_bow(&mut model);
    assert_eq!(press(&mut model, "next"), []);
    assert_eq!(press(&mut model, "next"), []);
    assert_eq!(model.step, Step::Bow);
    assert!(view(&model).contains("on its way"));
    update(&mut model, Event::Missing);
    assert!(view(&model).contains("has not come yet"));
    let effects = update(&mut model, Event::Whole);
    assert!(effects.iter().any(|effect| matches!(effect, Effect::Push(_))), "{effects:?}");
    assert_eq!(model.step, Step::Proof);
    assert!(!view(&model).contains("class=\"notice\""));
}

#[test]
fn of_what_is_asked_for_meanwhile_the_last_holds() {
    let mut model = model();
    to_the_bow(&mut model);
    press(&mut model, "next");
    press(&mut model, "go:width");
    update(&mut model, Event::Whole);
    assert_eq!(model.step, Step::Width);
}

#[test]
fn another_language_waits() {
    let mut model = model();
    press(&mut model, "speak:fr");
    assert_eq!(model.environment.language, Language::English);
    update(&mut model, Event::Whole);
    assert_eq!(model.environment.language, Language::French);
}

proptest! {
    /// Every function of the second module says in a debug build when it is called too early.
    #[test]
    fn nothing_calls_the_second_module_before_it_is_there(
        events in prop::collection::vec(event(), 0..24)
    ) {
        let mut model = model();
        for event in events {
            update(&mut model, event);
            prop_assert!(model.environment.partial);
            prop_assert!(model.step.is_first());
            prop_assert_eq!(model.environment.language, Language::English);
            for spot in Spot::ALL {
                for entry in model.order.survey.entries(spot) {
                    prop_assert!(is_plain(&entry.text) || *entry == Entry::unread(&entry.text));
                }
            }
            let _ = view(&model);
        }
        update(&mut model, Event::Whole);
        prop_assert!(model.waiting.is_empty());
        let _ = view(&model);
    }
}
