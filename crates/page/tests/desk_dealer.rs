//! The counter desk by a dealer's rules, without a browser.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may fail")]

use hangtrue_page::core::{Dimension, Spot, Unit};
use hangtrue_page::desk::ask::Ask;
use hangtrue_page::desk::{Event, Model, boot, update, view};
use hangtrue_page::link::json::profile::parse;
use hangtrue_page::{Environment, Event as PageEvent};

const PRAIRIE: &str = include_str!("../../../demo/profiles/prairie.json");
const BASE: &str = "https://dealer.example/door/";
/// The reason of the dealer's limit on the width, which is 96 in.
const REASON: &str = "our widest panel covers a 96 in opening";

fn model() -> Model {
    boot(Environment { base: [BASE, "desk.html"].concat(), ..Default::default() }, "").0
}

fn ruled() -> Model {
    let mut model = model();
    model.rule_by(Ok(parse(PRAIRIE).unwrap()), "profile=prairie.json");
    model
}

fn type_in(model: &mut Model, name: &str, value: &str) {
    let event = PageEvent::Input { name: name.into(), value: value.into() };
    update(model, Event::Page(event));
}

/// Says four numbers that only the built-in rules let pass.
fn say(model: &mut Model) {
    for (dimension, text) in Dimension::ALL.into_iter().zip(["97", "101 1/2", "9 1/2", "1 1/4"]) {
        type_in(model, &dimension.main_spot().key(), text);
    }
}

#[test]
fn what_the_dealer_does_not_build_is_said_while_the_caller_is_there() {
    let (mut built_in, mut ruled) = (model(), ruled());
    say(&mut built_in);
    say(&mut ruled);
    assert!(!view(&built_in).contains(REASON));
    assert!(view(&ruled).contains(REASON));
    assert!(view(&ruled).contains("Prairie Door Works"));
}

#[test]
fn the_reading_without_which_no_door_is_made_is_asked_for_behind_the_four() {
    let mut model = ruled();
    assert_eq!(model.ask(), Ask::Say(Dimension::Width));
    for (dimension, text) in Dimension::ALL.into_iter().zip(["92", "101 1/2", "9 1/2", "1 1/4"]) {
        type_in(&mut model, &dimension.main_spot().key(), text);
    }
    assert_eq!(model.ask(), Ask::Required(Spot::LoopSillToBow));
    assert!(view(&model).contains("loop.sill_to_bow"), "its field is there");
    type_in(&mut model, "loop.sill_to_bow", "109 3/4");
    assert_ne!(model.ask(), Ask::Required(Spot::LoopSillToBow));
}

#[test]
fn an_order_kept_there_names_the_rules_and_leads_to_the_page_that_goes_by_them() {
    let mut model = ruled();
    say(&mut model);
    update(&mut model, Event::Page(PageEvent::Press("keep".into())));
    let [sent] = model.sent.as_slice() else { panic!("{} orders", model.sent.len()) };
    assert_eq!(sent.order.profile, Some(("Prairie Door Works".to_owned(), 4)));
    // Its own rules are the desk's: nothing is said of others, but of an order by other rules.
    assert!(!view(&model).contains("Made under"));
    if let Some(sent) = model.sent.first_mut() {
        sent.order.profile = Some(("Prairie Door Works".to_owned(), 3));
    }
    assert!(view(&model).contains("Made under"));
    let link = "https://dealer.example/door/dealer.html?profile=prairie.json#";
    assert!(view(&model).contains(link), "{}", view(&model));
    let mut built_in = self::model();
    say(&mut built_in);
    update(&mut built_in, Event::Page(PageEvent::Press("keep".into())));
    assert_eq!(built_in.sent.first().unwrap().order.profile, None);
}

#[test]
fn the_unit_is_the_dealers_until_something_was_typed() {
    let metric = PRAIRIE.replacen("\"unit\": \"in\"", "\"unit\": \"mm\"", 1);
    let rules = parse(&metric).unwrap();
    let mut fresh = model();
    fresh.rule_by(Ok(rules.clone()), "");
    assert_eq!(fresh.phone.survey.unit, Unit::Millimetre);
    let mut begun = model();
    type_in(&mut begun, "width.middle", "92");
    begun.rule_by(Ok(rules), "");
    assert_eq!(begun.phone.survey.unit, Unit::Inch);
}

#[test]
fn rules_that_cannot_be_read_are_told_and_the_built_in_ones_hold() {
    let mut model = model();
    model.rule_by(Err("it is <not> there".into()), "profile=gone.json");
    assert!(model.profile.is_built_in());
    assert!(view(&model).contains("it is &lt;not&gt; there"));
    assert_eq!(model.environment.base, BASE);
}
