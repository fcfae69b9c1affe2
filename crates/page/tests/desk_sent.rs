//! What was sent, beside what is said, without a browser.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may fail")]

use hangtrue_page::core::order::{Date, Order};
use hangtrue_page::core::{Dimension, Spot, check};
use hangtrue_page::desk::{Action, Effect, Event, Model, Trouble, boot, update, view};
use hangtrue_page::link::code::{Said, characters, small, spaced};
use hangtrue_page::link::{LinkError, url};
use hangtrue_page::{Effect as PageEffect, Environment, Event as PageEvent};

const BASE: &str = "https://dealer.example/door/";
const SOUND: [&str; 4] = ["92 3/16", "101 1/2", "9 1/2", "1 1/4"];

fn model() -> Model {
    boot(Environment { base: [BASE, "desk.html"].concat(), ..Default::default() }, "").0
}

fn input(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    let event = PageEvent::Input { name: name.into(), value: value.into() };
    update(model, Event::Page(event))
}

/// The same, with the button that the desk presses by itself.
fn type_in(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    let effects = input(model, name, value);
    match effects.as_slice() {
        [Effect::Press(action)] => press(model, &action.code()),
        _ => effects,
    }
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Page(PageEvent::Press(code.into())))
}

fn say(model: &mut Model, numbers: [&str; 4]) {
    for (dimension, text) in Dimension::ALL.into_iter().zip(numbers) {
        type_in(model, &dimension.main_spot().key(), text);
    }
}

/// An invented order of the four numbers.
fn sent(numbers: [&str; 4]) -> Order {
    let mut order = Order { vehicle: "Unit 7, blue box".into(), ..Order::default() };
    for (dimension, text) in Dimension::ALL.into_iter().zip(numbers) {
        order.survey.add(dimension.main_spot(), text);
    }
    order.claimed = check(&order.survey, &Default::default()).verdict;
    order.date = Some(Date { year: 2026, month: 2, day: 3 });
    order
}

fn link(order: &Order) -> String {
    url(BASE, order).unwrap()
}

/// The texts of the cells of a row, by the class of the row.
fn rows<'a>(shown: &'a str, class: &str) -> Vec<&'a str> {
    let start = ["<tr class=\"", class, "\""].concat();
    shown.split(start.as_str()).skip(1).filter_map(|rest| rest.split("</tr>").next()).collect()
}

/// Whoever corrects a cell of an exported table means it.
#[test]
fn a_table_of_one_row_is_held_against_its_link() {
    let link = link(&sent(SOUND));
    let open = |width: &str| {
        let mut model = model();
        type_in(&mut model, "paste", &format!("id,width,link\r\nA-17,{width},{link}\r\n"));
        press(&mut model, &Action::Open.code());
        (model.sent.len(), model.trouble)
    };
    let (opened, trouble) = open("96 in");
    assert_eq!(opened, 0);
    assert!(matches!(trouble, Some(Trouble::Table(fault)) if fault.code() == "differs-from-link"));
    assert_eq!(open("92 3/16 in").0, 1);
}

/// A correction that quotes what it corrects is not taken for either, in whatever lines.
#[test]
fn two_different_orders_in_one_text_are_opened_as_none() {
    let wrong = sent(SOUND);
    let right = sent(["93 3/16", "101 1/2", "9 1/2", "1 1/4"]);
    let [wrong, right] = [link(&wrong), link(&right)];
    let told = "There are two order links in this text, and they differ.";
    for text in [
        format!("First order, now wrong: {wrong} Corrected: {right}"),
        format!("Hello, Kim,\nthe first was {wrong},\nand now, please:\n{right}\nThanks,\nLee"),
    ] {
        let mut model = model();
        type_in(&mut model, "paste", &text);
        press(&mut model, &Action::Open.code());
        assert_eq!(model.trouble, Some(Trouble::Link(LinkError::Several)), "{text}");
        assert!(view(&model).contains(told), "{text}");
    }
    let mut model = model();
    type_in(&mut model, "paste", &format!("See {right}\n> {right}\n> bye"));
    assert!(model.sent.len() == 1 && model.trouble.is_none());
}

#[test]
fn whatever_an_order_comes_as_is_opened_as_it_is_pasted() {
    let order = sent(SOUND);
    let mail = format!("> Here is the order:\r\n> {}.\r\n> Thanks", link(&order));
    let thirty = spaced(&small(&order).unwrap());
    let file = r#"{"format":"hangtrue-order/1","id":"A-17","unit":"in","verdict":"clear",
        "readings":{"width":{"middle":"92 3/16"},"height":{"center":"101 1/2"},
        "header":{"center":"9 1/2"},"bow":{"first":"1 1/4"}}}"#;
    let table = "id,width,height,header,bow\r\nA-17,92 3/16,101 1/2,9 1/2,1 1/4\r\n";
    for text in [link(&order).as_str(), &mail, &thirty, file, table] {
        let mut model = model();
        let effects = type_in(&mut model, "paste", text);
        assert_eq!(effects, [Effect::focus("sent-0")], "{text}");
        assert!(model.paste.is_empty());
        // Who presses Open all the same is shown what is open.
        assert_eq!(press(&mut model, "open"), [Effect::focus("sent-0")]);
        assert_eq!(model.trouble, None);
        let [opened] = model.sent.as_slice() else { panic!("{text}: {:?}", model.trouble) };
        let report = opened.report(&model.profile);
        for dimension in Dimension::ALL {
            let expected = check(&order.survey, &model.profile).numbers.ordered(dimension);
            assert_eq!(report.numbers.ordered(dimension), expected, "{text}");
        }
    }
}

#[test]
fn what_is_opened_by_itself_stands_in_the_box_before_the_box_is_emptied() {
    let (mut model, link) = (model(), link(&sent(SOUND)));
    assert_eq!(input(&mut model, "paste", &link), [Effect::Press(Action::Open)]);
    assert!(model.sent.is_empty() && view(&model).contains(&[">", &link, "</textarea>"].concat()));
    press(&mut model, "open");
    assert!(model.sent.len() == 1 && !view(&model).contains(&[">", &link, "<"].concat()));
    // Without an order an empty box is told.
    press(&mut model, "close:0");
    assert_eq!(press(&mut model, "open"), [Effect::focus("paste")]);
    assert_eq!(model.trouble, Some(Trouble::Nothing));
}

#[test]
fn what_is_being_typed_is_not_opened_before_it_is_whole() {
    let mut model = model();
    for end in 1.."92 3/16, 101 1/2, 9 1/2, 1 1/4".len() {
        type_in(&mut model, "paste", &"92 3/16, 101 1/2, 9 1/2, 1 1/4"[..end]);
        assert!(model.sent.is_empty() && model.trouble.is_none());
    }
    type_in(&mut model, "paste", "92 3/16, 101 1/2, 9 1/2, 1 1/4");
    press(&mut model, "open");
    assert_eq!(model.sent.len(), 1);
}

#[test]
fn what_is_no_order_says_what_to_ask_for_and_changes_nothing() {
    let order = sent(SOUND);
    let whole = link(&order);
    for (text, expected) in [
        ("see you on Friday", Trouble::Nothing),
        (&whole[..whole.len() - 3], Trouble::Link(LinkError::Cut { found: 0, missing: 0 })),
    ] {
        let mut model = model();
        type_in(&mut model, "paste", text);
        assert!(model.sent.is_empty());
        assert_eq!(press(&mut model, "open"), [Effect::focus("paste")]);
        let trouble = model.trouble.clone().unwrap();
        assert_eq!(
            std::mem::discriminant(&trouble),
            std::mem::discriminant(&expected),
            "{trouble:?}"
        );
        assert_eq!(model.paste, text, "it stays to be mended");
        assert!(view(&model).contains("summary stop"));
    }
    let mut model = model();
    type_in(&mut model, "paste", &"x".repeat(300 * 1024));
    assert!(matches!(model.trouble, Some(Trouble::TooLong { .. })) && model.paste.is_empty());
}

#[test]
fn what_was_misheard_stands_first_with_the_likely_slip() {
    let mut model = model();
    type_in(&mut model, "paste", &link(&sent(SOUND)));
    say(&mut model, ["92 3/16", "101 1/2", "5 1/2", "1 1/4"]);
    let shown = view(&model);
    assert!(shown.contains("Phoned and sent differ"));
    let [apart] = rows(&shown, "apart")[..] else { panic!("other rows apart") };
    assert!(apart.contains("Header depth") && apart.contains("−4 in"), "{apart}");
    assert!(apart.contains("The two sound alike."), "{apart}");
    assert!(shown.find("class=\"apart\"") < shown.find("class=\"same\""));
    say(&mut model, SOUND);
    assert!(view(&model).contains("All four numbers are as they were sent."));
}

#[test]
fn two_orders_of_one_truck_are_compared_reading_by_reading() {
    let mut model = model();
    type_in(&mut model, "paste", &link(&sent(SOUND)));
    let mut second = sent(["92 3/16", "101 1/2", "9 1/2", "1 1/4"]);
    second.survey.set(Spot::WidthMiddle, 0, "93 3/16");
    second.survey.add(Spot::WidthLow, "92 1/4");
    assert_eq!(type_in(&mut model, "paste", &link(&second)), [Effect::focus("sent-1")]);
    // The same again is no third.
    assert_eq!(type_in(&mut model, "paste", &link(&sent(SOUND))), [Effect::focus("sent-0")]);
    assert_eq!(model.sent.len(), 2);
    let shown = view(&model);
    // What is ordered, and a reading.
    let [number, apart] = rows(&shown, "apart")[..] else { panic!("other rows apart") };
    assert!(number.contains("Post-to-post width<") && number.contains("−1/16 in"), "{number}");
    assert!(apart.contains("−1 in") && apart.contains("one-inch mark"), "{apart}");
    assert_eq!(rows(&shown, "one-only").len(), 1);
    // A third takes the place of the second; the first can be put away.
    let third = sent(["90", "101 1/2", "9 1/2", "1 1/4"]);
    type_in(&mut model, "paste", &link(&third));
    assert_eq!(model.sent.len(), 2);
    press(&mut model, "close:0");
    assert_eq!(model.sent.iter().map(|sent| &sent.order).collect::<Vec<_>>(), [&third]);
    press(&mut model, "close:9");
    press(&mut model, "fresh");
    assert!(model.sent.is_empty());
}

/// No reading of one stands beside a reading of the other: the numbers tell them apart.
#[test]
fn two_orders_that_were_read_at_other_places_are_not_said_to_agree() {
    let mut model = model();
    type_in(&mut model, "paste", &link(&sent(SOUND)));
    let mut elsewhere = Order::default();
    elsewhere.survey.prepared = true;
    for (spot, text) in [
        (Spot::WidthLow, "95"),
        (Spot::HeightLeft, "98"),
        (Spot::HeaderLeft, "10"),
        (Spot::BowSecond, "2"),
    ] {
        elsewhere.survey.add(spot, text);
    }
    type_in(&mut model, "paste", &link(&elsewhere));
    let shown = view(&model);
    assert_eq!(rows(&shown, "apart").len(), 4);
    assert!(shown.contains("The two orders differ."));
    assert!(!shown.contains("No reading stands apart."));
}

#[test]
fn the_six_characters_name_the_number_and_change_nothing_by_themselves() {
    let mut model = model();
    let order = sent(SOUND);
    let report = check(&order.survey, &model.profile);
    let letters = characters(&Said::of(&report, order.survey.unit)).unwrap();
    say(&mut model, SOUND);
    type_in(&mut model, "heard", &letters);
    assert!(view(&model).contains("The six characters agree"));

    type_in(&mut model, "header.center", "5 1/2");
    let shown = view(&model);
    assert!(shown.contains(
        "Header depth was probably misheard: 5 1/2 in was typed, it was probably 9 1/2 in."
    ));
    assert_eq!(model.phone.typed(hangtrue_page::desk::FIELDS[2]), "5 1/2");
    // Only the clerk's press changes it.
    press(&mut model, "use:header.center:9 1/2 in");
    assert!(view(&model).contains("The six characters agree"));

    type_in(&mut model, "built", "yes");
    assert!(view(&model).contains("The unit or the frame was misheard"));
    type_in(&mut model, "built", "no");
    type_in(&mut model, "heard", &letters[..4]);
    assert!(view(&model).contains("4 of 6 characters."));
    type_in(&mut model, "heard", "öl");
    assert!(view(&model).contains("neither letters and digits nor a spelling word"));
}

#[test]
fn a_number_known_to_be_misheard_is_asked_for_first_and_makes_no_order_unseen() {
    let mut model = model();
    let order = sent(SOUND);
    let report = check(&order.survey, &model.profile);
    let letters = characters(&Said::of(&report, order.survey.unit)).unwrap();
    say(&mut model, ["92 3/16", "101 5/16", "9 1/2", "1 1/4"]);
    assert!(view(&model).contains("class=\"verdict clear\""));
    type_in(&mut model, "heard", &letters);
    let shown = view(&model);
    let asked = "Ask for the sill-to-header height again: 101 5/16 in was typed, by the check \
                 characters it was 101 1/2 in.";
    assert!(shown.contains(asked) && !shown.contains("class=\"verdict clear\""), "{shown}");
    assert_eq!(press(&mut model, "keep"), [Effect::focus("heard")]);
    assert!(model.sent.is_empty());
    // Who presses again has looked.
    press(&mut model, "keep");
    assert_eq!(model.sent.len(), 1);
}

/// The order of a frame that is still to be built says so, and is not held against itself.
#[test]
fn what_was_phoned_for_after_building_says_so_in_the_order() {
    let mut model = model();
    say(&mut model, SOUND);
    press(&mut model, "keep");
    assert!(model.sent[0].order.note.is_empty());
    assert!(!view(&model).contains("All four numbers are as they were sent."));
    press(&mut model, "fresh");
    say(&mut model, SOUND);
    type_in(&mut model, "built", "yes");
    press(&mut model, "keep");
    assert!(model.sent[0].order.note.contains("measure again before a door is cut"));
}

#[test]
fn the_numbers_are_read_back_digit_by_digit() {
    let mut model = model();
    assert!(view(&model).contains("read them back digit by digit"));
    say(&mut model, SOUND);
    let shown = view(&model);
    assert!(shown.contains("Post-to-post width: nine two and three sixteenths."));
    assert!(!shown.contains("check characters:"), "those are the caller's to say");
}

#[test]
fn the_sheet_is_the_opened_orders_and_the_button_prints_it() {
    let mut model = model();
    assert!(!view(&model).contains("class=\"paper\""));
    type_in(&mut model, "paste", &link(&sent(SOUND)));
    let second = sent(["90 1/2", "101 1/2", "9 1/2", "1 1/4"]);
    type_in(&mut model, "paste", &link(&second));
    let paper = |model: &Model| view(model).split("class=\"paper\"").nth(1).unwrap().to_owned();
    assert!(paper(&model).contains("90 1/2 in"));
    assert_eq!(press(&mut model, "print:0"), [Effect::Page(PageEffect::Print)]);
    assert!(!paper(&model).contains("90 1/2 in") && paper(&model).contains("92 3/16 in"));
    assert_eq!(view(&model).matches("class=\"paper\"").count(), 1);
}

#[test]
fn the_record_of_a_hung_door_is_pointed_to_the_page_that_reads_it() {
    let record = hangtrue_page::core::hang::record::Record {
        order: sent(SOUND),
        serial: "HT-0042".into(),
        ..Default::default()
    };
    let payload = hangtrue_page::link::record::encode(&record).unwrap();
    let mut model = model();
    let message = format!("The sticker says https://dealer.example/door/hang.html#{payload}, ok?");
    type_in(&mut model, "paste", &message);
    press(&mut model, "open");
    assert_eq!(model.trouble, Some(Trouble::Record(payload.clone())));
    assert!(model.sent.is_empty());
    let shown = view(&model);
    assert!(shown.contains("record of a hung door"), "{shown}");
    assert!(shown.contains(&format!("href=\"hang.html#{payload}\"")), "{shown}");
}
