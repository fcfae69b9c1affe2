//! The drafts on the device, and the trouble there may be with them; without a browser.

use hangtrue_page::draft::Unopened;
use hangtrue_page::event::Trouble;
use hangtrue_page::{Arrival, Effect, Environment, Event, Model, Step, boot, update, view};

fn type_in(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    update(model, Event::Input { name: name.into(), value: value.into() })
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Press(code.into()))
}

/// What the browser is asked to keep, if it is.
fn saved(effects: &[Effect]) -> Option<&str> {
    effects.iter().find_map(|effect| match effect {
        Effect::Save(text) => Some(text.as_str()),
        _ => None,
    })
}

fn arrive(draft: &str) -> (Model, Vec<Effect>) {
    boot(Environment::default(), Arrival { draft: Some(draft), ..Arrival::default() })
}

#[test]
fn every_keystroke_is_kept_and_comes_back_on_the_same_screen() {
    let mut model = Model::default();
    press(&mut model, "next");
    press(&mut model, "go:width");
    for so_far in ["9", "92", "92 ", "92 3", "92 3/", "92 3/16"] {
        let effects = type_in(&mut model, "width.low", so_far);
        let (back, _) = arrive(saved(&effects).unwrap());
        assert_eq!((back.step, back.order), (Step::Width, model.order.clone()));
    }
    // And what was deleted again is not there any more.
    let effects = type_in(&mut model, "width.low", "");
    assert_eq!(arrive(saved(&effects).unwrap()).0.order, model.order);
}

#[test]
fn a_survey_with_nothing_in_it_is_not_kept() {
    let mut model = Model::default();
    for code in ["next", "go:width", "go:drafts"] {
        assert_eq!(saved(&press(&mut model, code)), None);
    }
}

#[test]
fn another_opening_leaves_the_first_in_the_list() {
    let mut model = Model::default();
    let text = saved(&type_in(&mut model, "width.low", "92")).unwrap().to_owned();
    let effects = press(&mut model, "restart");
    assert!(effects.contains(&Effect::Fresh) && effects.contains(&Effect::List), "{effects:?}");
    assert!(!effects.iter().any(|effect| matches!(effect, Effect::Forget(_))));
    assert!(!model.has_draft());
    update(&mut model, Event::Drafts(vec![(1, text.clone())]));
    assert!(view(&model).contains("1 survey on this device"));
    // It is opened again.
    assert_eq!(press(&mut model, "open-draft:1"), [Effect::Load(Some(1))]);
    update(&mut model, Event::Loaded(text));
    assert!(model.has_draft());
}

#[test]
fn deleting_asks_first_and_then_deletes() {
    let mut model = Model::default();
    let text = saved(&type_in(&mut model, "vehicle", "Unit 7")).unwrap().to_owned();
    update(&mut model, Event::Drafts(vec![(4, text), (5, "9 of a newer build".into())]));
    press(&mut model, "go:drafts");
    assert_eq!(model.drafts.first().unwrap().told, Err(Unopened::Newer));
    let page = view(&model);
    assert!(page.contains("Unit 7") && page.contains("newer version"), "{page}");
    assert_eq!(press(&mut model, "delete-indeed"), [], "nothing was asked");
    press(&mut model, "delete:4");
    assert!(view(&model).contains("cannot be brought back"));
    press(&mut model, "spare");
    assert_eq!(press(&mut model, "delete-indeed"), []);
    press(&mut model, "delete:4");
    assert!(press(&mut model, "delete-indeed").contains(&Effect::Forget(4)));
    // One that is not there cannot be asked about.
    press(&mut model, "delete:9");
    assert_eq!(press(&mut model, "delete-indeed"), []);
}

#[test]
fn a_draft_of_a_newer_build_is_left_alone_and_told() {
    let (model, effects) = arrive("3 something to come");
    assert!(effects.contains(&Effect::Fresh) && !model.has_draft());
    assert!(view(&model).contains("newer version"));
}

#[test]
fn every_trouble_is_told_until_it_has_been_read() {
    for trouble in [
        Trouble::Full,
        Trouble::Blocked,
        Trouble::Emptied,
        Trouble::Newer,
        Trouble::Changed,
        Trouble::Split,
        Trouble::Gone,
    ] {
        let mut model = Model::default();
        let without = view(&model);
        update(&mut model, Event::Trouble(trouble));
        assert_ne!(view(&model), without, "{trouble:?}");
        press(&mut model, "noted");
        assert_eq!(view(&model), without, "{trouble:?}");
    }
}

#[test]
fn the_tape_moves_its_field_and_only_a_reading() {
    let mut model = Model::default();
    type_in(&mut model, "width.low", "92 3/16");
    let slide = |name: &str, marks| Event::Slide { name: name.into(), marks };
    let effects = update(&mut model, slide("width.low", 5));
    assert!(saved(&effects).is_some());
    assert_eq!(model.order.survey.entries(hangtrue_page::core::Spot::WidthLow)[0].text, "92 1/2");
    for name in ["width.high", "no such field"] {
        assert_eq!(update(&mut model, slide(name, 1)), []);
    }
}

#[test]
fn the_list_says_the_orders_numbers_by_name_in_the_drafts_own_unit() {
    let mut model = Model::default();
    for (name, value) in [("unit", "mm"), ("width.low", "2345"), ("width.middle", "2341")] {
        type_in(&mut model, name, value);
    }
    let text = saved(&type_in(&mut model, "height.left", "2580")).unwrap().to_owned();
    let mut model = Model::default();
    update(&mut model, Event::Drafts(vec![(1, text), (2, "no draft".into())]));
    update(&mut model, Event::Navigate("/drafts".into()));
    let shown = view(&model);
    for told in ["Width</span> 2341 mm", "Height</span> 2580 mm", "Header</span> –", "Bow</span> –"]
    {
        assert!(shown.contains(told), "{told}\n{shown}");
    }
    assert!(!shown.contains("2345") && shown.contains("cannot be"), "{shown}");
}
