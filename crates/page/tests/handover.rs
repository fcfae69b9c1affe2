//! Handing an order over: each way out, the print sheet, and an order that was sent.

#![allow(clippy::unwrap_used, clippy::expect_used, reason = "a test may fail")]

use hangtrue_page::core::Spot;
use hangtrue_page::{Effect, Environment, Event, Model, Step, update, view};

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Press(code.into()))
}

/// An order of an invented truck, ready to be sent.
fn ready() -> Model {
    let base = "https://dealer.example/door/".into();
    let mut model = Model::new(Environment { base, ..Environment::default() });
    for (name, value) in [
        ("prepared", "yes"),
        ("width.low", "92 3/16"),
        ("width.middle", "92 1/4"),
        ("height.center", "101 1/2"),
        ("header.center", "9 1/2"),
        ("bow.first", "1 1/4"),
        ("vehicle", "Unit 7"),
        ("note", "Ring before noon"),
    ] {
        update(&mut model, Event::Input { name: name.into(), value: value.into() });
    }
    update(&mut model, Event::Navigate("/send".into()));
    assert!(model.against(&model.report()).is_empty(), "{:?}", model.report().findings);
    model
}

fn link(model: &Model) -> String {
    let order = model.sent(model.report().verdict);
    hangtrue_page::link::url(&model.environment.base, &order).unwrap()
}

#[test]
fn an_opened_order_takes_the_place_of_a_draft_only_after_a_second_answer() {
    let sent = link(&ready());
    let mut model = ready();
    let name = "width.low".to_owned();
    update(&mut model, Event::Input { name, value: "90".into() });
    let mine = model.order.clone();
    update(&mut model, Event::Open(sent));
    assert_eq!((model.step, &model.order), (Step::Opened, &mine));
    press(&mut model, "replace");
    assert_eq!(model.order, mine, "no answer without the question");

    for _ in 0..3 {
        let effects = press(&mut model, "adopt");
        assert_eq!(effects, [Effect::Focus("replace".into())], "the same press never answers");
        assert_eq!((model.step, &model.order), (Step::Opened, &mine));
        assert!(view(&model).contains("90 in × 101 1/2 in"), "what would be lost is named");
    }
    press(&mut model, "keep");
    assert_eq!((model.step, &model.order), (Step::Opened, &mine));
    assert!(!view(&model).contains("data-act=\"replace\""));
    press(&mut model, "replace");
    assert_eq!(model.order, mine, "the question was taken back");

    press(&mut model, "adopt");
    let effects = press(&mut model, "replace");
    assert_eq!(model.step, Step::Check);
    assert_eq!(model.order.survey, ready().order.survey);
    assert!(effects.iter().any(|effect| matches!(effect, Effect::Save(_))), "{effects:?}");
}

#[test]
fn without_a_draft_or_with_the_same_one_there_is_nothing_to_ask() {
    let sent = ready();
    for mut model in [Model::default(), ready()] {
        update(&mut model, Event::Open(link(&sent)));
        press(&mut model, "adopt");
        assert_eq!(model.step, Step::Check);
        assert_eq!(model.order.survey, sent.order.survey);
    }
}

/// The print sheet within the screen's markup.
fn sheet(model: &Model) -> String {
    let screen = view(model);
    let start = screen.find("<section class=\"paper\"").expect("a sheet");
    screen[start..].to_owned()
}

#[test]
fn the_sheet_has_every_number_reading_and_blank_from_both_screens() {
    let model = ready();
    let mut dealer = Model::default();
    update(&mut dealer, Event::Open(link(&model)));
    for model in [model, dealer] {
        let sheet = sheet(&model);
        for text in [
            "92 3/16 in",
            "92 1/4 in",
            "101 1/2 in",
            "9 1/2 in",
            "1 1/4 in",
            "Unit 7",
            "Ring before noon",
            "Frame as it will stay",
            "What could not be seen",
            "Signature",
        ] {
            assert!(sheet.contains(text), "{text}\n{sheet}");
        }
        assert_eq!(sheet.matches("<td class=\"paper-blank\"></td>").count(), 4);
    }
}

#[test]
fn the_sheet_strikes_a_struck_reading_and_tells_what_is_to_be_built() {
    let mut model = ready();
    for (name, value) in [("prepared", "no"), ("header.center", "6")] {
        update(&mut model, Event::Input { name: name.into(), value: value.into() });
    }
    model.order.survey.entries_mut(Spot::WidthMiddle)[0].struck = true;
    let sent = link(&model);
    update(&mut model, Event::Open(sent));
    let sheet = sheet(&model);
    for text in [
        "<del>92 1/4</del>",
        "Header down by 1 in",
        "as found 6 in",
        "100 1/2 in",
        "licensed practice",
    ] {
        assert!(sheet.contains(text), "{text}\n{sheet}");
    }
}

#[test]
fn what_has_no_room_on_the_sheet_is_cut_and_the_sheet_says_so() {
    let mut model = ready();
    let note = "all of this is said twice ".repeat(60);
    update(&mut model, Event::Input { name: "note".into(), value: note.clone() });
    for _ in 0..20 {
        model.order.survey.add(Spot::WidthLow, "92 3/16");
    }
    let sent = link(&model);
    update(&mut model, Event::Open(sent));
    let sheet = sheet(&model);
    assert!(!sheet.contains(note.trim()) && sheet.contains("…"), "{sheet}");
    assert!(sheet.contains("cut short here"));
    assert!(sheet.contains("and 16 more"), "22 readings, 6 in the row");
}

#[test]
fn there_is_no_sheet_while_something_stands_against_the_order() {
    let mut model = ready();
    update(&mut model, Event::Input { name: "width.low".into(), value: "300".into() });
    assert!(!view(&model).contains("class=\"paper\""));
}
