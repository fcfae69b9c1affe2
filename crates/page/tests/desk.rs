//! The counter desk, without a browser.

use hangtrue_page::core::{Dimension, Length, Spot, Unit};
use hangtrue_page::desk::ask::Ask;
use hangtrue_page::desk::{Effect, Event, FIELDS, Model, boot, update, view};
use hangtrue_page::text::desk::Desk;
use hangtrue_page::{Effect as PageEffect, Environment, Event as PageEvent};

fn model() -> Model {
    boot(
        Environment { base: "https://dealer.example/door/desk.html".into(), ..Default::default() },
        "",
    )
    .0
}

fn type_in(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    let event = PageEvent::Input { name: name.into(), value: value.into() };
    update(model, Event::Page(event))
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Page(PageEvent::Press(code.into())))
}

fn focus(model: &mut Model, name: &str) {
    update(model, Event::Page(PageEvent::Focus(name.into())));
}

/// Types the four numbers as they are said.
fn say(model: &mut Model, numbers: [&str; 4]) {
    for (dimension, text) in Dimension::ALL.into_iter().zip(numbers) {
        type_in(model, &dimension.main_spot().key(), text);
    }
}

fn sentence(model: &Model) -> String {
    (Desk::of(model.environment.language).ask)(&model.ask(), model.speaker())
}

/// The reading that the judge would take next.
fn worth_most(model: &Model) -> Option<Spot> {
    model.phone.report(&model.profile).judgement.next.first().map(|next| next.spot)
}

/// An invented truck.
const SOUND: [&str; 4] = ["92 3/16", "101 1/2", "9 1/2", "1 1/4"];

/// The browser asks before a call is left that stands nowhere else: what was said is on paper or in
/// a file, or has gone with the next call.
#[test]
fn a_call_is_not_left_without_a_question() {
    let (asks, rests) = (Effect::AskBeforeLeaving(true), Effect::AskBeforeLeaving(false));
    let mut model = model();
    assert!(type_in(&mut model, "width.middle", "9").contains(&asks));
    assert!(!type_in(&mut model, "width.middle", "92 3/16").contains(&asks));
    say(&mut model, SOUND);
    press(&mut model, "keep");
    assert!(press(&mut model, "print:0").contains(&rests));
    assert!(type_in(&mut model, "bow.first", "2").contains(&asks));
    assert!(press(&mut model, "fresh").contains(&rests));
    // The same numbers once more are on paper already; others are not.
    say(&mut model, SOUND);
    assert!(!model.asks_before_leaving);
    assert!(type_in(&mut model, "bow.first", "2").contains(&asks));
    press(&mut model, "keep");
    assert!(press(&mut model, "save:0:json").contains(&rests));
}

#[test]
fn the_first_field_has_the_focus_and_enter_goes_through_all_four() {
    let (mut model, effects) = boot(Environment::default(), "");
    assert_eq!(effects, [Effect::focus("width.middle")]);
    for (field, text) in FIELDS.into_iter().zip(SOUND) {
        focus(&mut model, &field.name());
        type_in(&mut model, &field.name(), text);
        let effects = press(&mut model, "next");
        let [Effect::Page(PageEffect::Focus(next))] = effects.as_slice() else {
            panic!("{effects:?}")
        };
        let at = FIELDS.iter().position(|f| *f == field).unwrap();
        match FIELDS.get(at + 1) {
            Some(expected) => assert_eq!(*next, expected.name()),
            // Behind the last one stands what is asked for next.
            None => assert_eq!(*next, worth_most(&model).unwrap().key()),
        }
    }
    // Enter comes back to what was left out.
    type_in(&mut model, "height.center", "");
    focus(&mut model, "bow.first");
    type_in(&mut model, "loop.sill_to_bow", "109 3/4");
    assert_eq!(press(&mut model, "next"), [Effect::focus("height.center")]);
}

#[test]
fn words_are_accepted_and_echoed_in_both_units() {
    let mut model = model();
    type_in(&mut model, "width.middle", "ninety-two and three sixteenths");
    let shown = view(&model);
    assert!(shown.contains("92 3/16 in"), "{shown}");
    assert!(shown.contains("</b> ≈ 2341.6 mm"), "{shown}");
}

#[test]
fn the_question_follows_what_is_typed() {
    let mut model = model();
    assert_eq!(
        sentence(&model),
        "Ask for the post-to-post width: between the inner faces of the posts."
    );
    type_in(&mut model, "width.middle", "about so");
    assert_eq!(
        sentence(&model),
        "Ask for the post-to-post width again: “about so” is not a reading."
    );
    say(&mut model, SOUND);
    let spot = worth_most(&model).unwrap();
    assert!(matches!(model.ask(), Ask::Take { spot: asked, .. } if asked == spot));
    assert!(view(&model).contains(&format!(r#"name="{}""#, spot.key())));
}

/// What is typed, and what to ask of it.
#[test]
fn every_finding_is_a_question_that_the_caller_can_answer() {
    let inches = Length::from_inches;
    for (numbers, expected, sentence) in [
        (
            ["92", "101", "7 1/2", "8"],
            Ask::RoofOrBow { header: Length::from_sixteenths(120), bow: Some(inches(8)) },
            "Ask whether the header was measured to the roof or to the bow.",
        ),
        (
            ["108", "101", "9 1/2", "1 1/4"],
            Ask::BetweenPosts(inches(108)),
            "Ask whether 108 in was measured between the posts or over the outside of the body.",
        ),
        (
            ["92", "150", "9 1/2", "1 1/4"],
            Ask::ToHeader(inches(150)),
            "Ask whether 150 in was measured up to the underside of the header or up to the roof.",
        ),
        (
            ["92", "101", "1 1/4", "9 1/2"],
            Ask::Which {
                first: Dimension::Header,
                first_value: Length::from_sixteenths(20),
                second: Dimension::Bow,
                second_value: Length::from_sixteenths(152),
            },
            "Ask which is which: is the header depth 1 1/4 in and the roof-bow depth 9 1/2 in, or \
             the other way round?",
        ),
        (
            ["9", "101", "9 1/2", "1 1/4"],
            Ask::Digits { spot: Spot::WidthMiddle, value: inches(9) },
            "Ask for the post-to-post width digit by digit, and in which unit: 9 in is no opening.",
        ),
        (
            ["92", "101", "6 1/4", "1 1/4"],
            Ask::RoofOrBow {
                header: Length::from_sixteenths(100),
                bow: Some(Length::from_sixteenths(20)),
            },
            "Ask whether the header was measured to the roof or to the bow.",
        ),
        (
            ["92", "101", "5", "1 1/4"],
            Ask::Build(inches(5)),
            "Ask whether the header of 5 in is still to be built down, or stays as it is.",
        ),
    ] {
        let mut model = model();
        say(&mut model, numbers);
        let report = model.phone.report(&model.profile);
        let all = hangtrue_page::desk::ask::all(&model.phone.survey, &report);
        assert!(all.contains(&expected), "{numbers:?}: {all:?}");
        assert_eq!(
            (Desk::of(model.environment.language).ask)(&expected, model.speaker()),
            sentence
        );
    }
}

#[test]
fn what_the_caller_stands_by_is_not_asked_again_until_it_changes() {
    let mut model = model();
    say(&mut model, ["92", "101", "6 1/4", "1 1/4"]);
    let first = model.ask();
    assert!(matches!(first, Ask::RoofOrBow { .. }), "{first:?}");
    press(&mut model, "stands");
    assert!(matches!(model.ask(), Ask::Build(_)), "{:?}", model.ask());
    type_in(&mut model, "header.center", "6");
    assert!(matches!(model.ask(), Ask::RoofOrBow { .. }), "{:?}", model.ask());
}

#[test]
fn numbers_of_the_built_frame_are_taken_as_they_are() {
    let mut model = model();
    say(&mut model, ["92", "101", "6", "1 1/4"]);
    assert!(view(&model).contains("Once the frame is built"));
    type_in(&mut model, "built", "yes");
    say(&mut model, ["92", "100", "7", "1 1/4"]);
    let report = model.phone.report(&model.profile);
    assert!(!report.preparation.needed());
    assert_eq!(report.numbers.ordered(Dimension::Header), Some(Length::from_inches(7)));
}

#[test]
fn a_field_that_is_typed_in_stays_where_it_is() {
    let mut model = model();
    say(&mut model, SOUND);
    // One digit so far: an alarm, perhaps, but the field must not go.
    type_in(&mut model, "loop.sill_to_bow", "1");
    let fields = model.phone.fields(&model.ask());
    assert_eq!(fields.get(4).map(|f| f.spot), Some(Spot::LoopSillToBow));
    type_in(&mut model, "loop.sill_to_bow", "109 3/4");
    let fields = model.phone.fields(&model.ask());
    assert_eq!(fields.get(4).map(|f| f.spot), Some(Spot::LoopSillToBow));
}

#[test]
fn a_new_call_keeps_the_unit_and_nothing_else() {
    let mut model = model();
    type_in(&mut model, "unit", "mm");
    say(&mut model, ["2342", "2578", "241", "32"]);
    let effects = press(&mut model, "fresh");
    assert_eq!(effects, [Effect::focus("width.middle"), Effect::AskBeforeLeaving(false)]);
    assert_eq!(model.phone.survey.unit, Unit::Millimetre);
    assert!(!model.phone.begun());
}

/// A press beside the right button costs no call.
#[test]
fn the_call_before_comes_back() {
    let mut model = model();
    assert!(!model.can_go_back());
    say(&mut model, SOUND);
    type_in(&mut model, "heard", "B5KQ7T");
    press(&mut model, "keep");
    let (was, sent) = (model.phone.clone(), model.sent.clone());
    press(&mut model, "fresh");
    assert!(view(&model).contains("Back to the call before"));
    // Twice: there is nothing in between that would take its place.
    press(&mut model, "fresh");
    // What has been typed of the next call is not given up for it.
    type_in(&mut model, "width.middle", "9");
    assert!(!view(&model).contains("data-act=\"before\""));
    press(&mut model, "before");
    assert_eq!(model.phone.typed(FIELDS[0]), "9");
    type_in(&mut model, "width.middle", "");
    let effects = press(&mut model, "before");
    assert_eq!((&model.phone, &model.sent), (&was, &sent));
    assert_eq!(model.heard, "B5KQ7T");
    assert!(effects.contains(&Effect::AskBeforeLeaving(true)), "{effects:?}");
    assert!(!model.can_go_back());
}

/// Nobody reads back a number that is still in question: on a phone the one is above the other.
#[test]
fn the_question_stands_before_what_is_read_back() {
    let mut model = model();
    say(&mut model, ["92 3/16", "101 1/2", "6 1/4", "1 1/4"]);
    let shown = view(&model);
    assert!(shown.find("question-heading") < shown.find("voice-heading"), "{shown}");
}

#[test]
fn the_live_region_says_the_question_once_the_typing_rests() {
    let mut model = model();
    let effects = type_in(&mut model, "width.middle", "92");
    assert_eq!(effects, [Effect::Page(PageEffect::Settle), Effect::AskBeforeLeaving(true)]);
    assert!(model.spoken.is_empty());
    update(&mut model, Event::Page(PageEvent::Settled));
    assert_eq!(model.spoken, sentence(&model));
}

#[test]
fn nothing_of_a_stranger_is_markup() {
    let mut model = model();
    type_in(&mut model, "width.middle", "<b>92</b>\"");
    let shown = view(&model);
    assert!(shown.contains("&lt;b&gt;92&lt;/b&gt;&quot;"), "{shown}");
    assert!(!shown.contains("<b>92</b>"));
}
