//! The whole walk, without a browser.

use hangtrue_page::core::check::Verdict;
use hangtrue_page::core::say::Language;
use hangtrue_page::core::{Dimension, Length, Spot};
use hangtrue_page::model::Unopened;
use hangtrue_page::{Effect, Environment, Event, Model, Step, update, view};

fn model() -> Model {
    Model::new(Environment { base: "https://dealer.example/door/".into(), ..Default::default() })
}

fn type_in(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    update(model, Event::Input { name: name.into(), value: value.into() })
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Press(code.into()))
}

/// The readings of an invented truck, one screen after the other, to the check.
fn to_the_check(model: &mut Model) {
    press(model, "next");
    type_in(model, "prepared", "yes");
    press(model, "next");
    for (step, name, value) in [
        (Step::Width, "width.middle", "92 3/16"),
        (Step::Height, "height.center", "101 1/2"),
        (Step::Header, "header.center", "9 1/2"),
        (Step::Bow, "bow.first", "1 1/4"),
    ] {
        assert_eq!(model.step, step);
        type_in(model, name, value);
        press(model, "next");
    }
    while model.step == Step::Proof {
        press(model, "skip");
    }
    assert_eq!(model.step, Step::Check);
}

#[test]
fn from_the_start_to_an_order_that_opens_as_the_same_order() {
    let mut model = model();
    to_the_check(&mut model);
    press(&mut model, "next");
    assert_eq!(model.step, Step::Send);
    let effects = press(&mut model, "copy-link");
    let [Effect::Copy(url)] = effects.as_slice() else { panic!("{effects:?}") };
    assert!(url.starts_with("https://dealer.example/door/#"), "{url}");
    assert!(view(&model).contains(url.as_str()));

    let mut dealer = Model::new(Environment::default());
    update(&mut dealer, Event::Open(url.clone()));
    assert_eq!(dealer.step, Step::Opened);
    let order = dealer.opened.as_ref().unwrap().as_ref().unwrap();
    assert_eq!(order.survey, model.order.survey);
    assert_eq!(order.claimed, Verdict::Clear);
    for text in ["92 3/16 in", "101 1/2 in", "9 1/2 in", "1 1/4 in"] {
        assert!(view(&dealer).contains(text), "{text}");
    }
}

#[test]
fn continue_is_stopped_by_nothing_typed_and_the_words_are_the_same_twice() {
    let mut model = model();
    press(&mut model, "next");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Width);
    let sentence = "The post-to-post width has not been read.";
    assert!(!view(&model).contains(sentence), "errors wait for Continue");
    let effects = press(&mut model, "next");
    assert_eq!(
        (model.step, effects),
        (Step::Width, vec![Effect::Tremble, Effect::Focus("problems".into())])
    );
    assert_eq!(view(&model).matches(sentence).count(), 2);
}

#[test]
fn a_refused_text_is_kept_and_its_likely_meaning_is_one_press_away() {
    let mut model = model();
    update(&mut model, Event::Navigate("/width".into()));
    type_in(&mut model, "width.low", "961/4");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Width);
    let screen = view(&model);
    assert!(screen.contains(r#"value="961/4""#));
    let code = "use:width.low:96 1/4 in";
    assert!(screen.contains(code));
    press(&mut model, code);
    assert_eq!(
        model.order.survey.lengths(Spot::WidthLow).next(),
        Some(Length::from_sixteenths(1540))
    );
    press(&mut model, "next");
    assert_eq!(model.step, Step::Height);
}

#[test]
fn an_impossible_reading_stops_and_a_questioned_one_passes_the_second_time() {
    let mut model = model();
    update(&mut model, Event::Navigate("/width".into()));
    type_in(&mut model, "width.low", "120");
    press(&mut model, "next");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Width, "a stop is not passed by asking twice");
    type_in(&mut model, "width.low", "50");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Width);
    press(&mut model, "next");
    assert_eq!(model.step, Step::Height);
}

#[test]
fn a_question_must_be_confirmed_before_there_is_a_link_and_typing_takes_it_back() {
    let mut model = model();
    to_the_check(&mut model);
    press(&mut model, "change:bow.first");
    assert_eq!(model.step, Step::Bow);
    type_in(&mut model, "bow.first", "2 1/2");
    press(&mut model, "next");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Check, "a change comes back to where it was asked for");
    assert_eq!(model.report().verdict, Verdict::Recheck);
    press(&mut model, "next");
    assert_eq!(model.step, Step::Check);
    press(&mut model, "confirm:unusual-bow:bow.first");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Send);
    assert_eq!(press(&mut model, "copy").len(), 1);
    type_in(&mut model, "bow.first", "2 5/8");
    assert!(model.order.confirmed.is_empty());
    assert!(press(&mut model, "copy").is_empty(), "no link while a question stands");
    press(&mut model, "confirm:made-up:bow.first");
    assert!(model.order.confirmed.is_empty(), "only what was found can be confirmed");
}

#[test]
fn the_draft_brings_back_the_same_screen_with_the_same_text() {
    let mut model = model();
    update(&mut model, Event::Navigate("/height".into()));
    let effects = type_in(&mut model, "height.left", "8' 5 1/2\"");
    let draft = effects.iter().find_map(|effect| match effect {
        Effect::Save(draft) => Some(draft.clone()),
        _ => None,
    });
    let arrival = hangtrue_page::Arrival { draft: draft.as_deref(), ..Default::default() };
    let (again, _) = hangtrue_page::boot(Environment::default(), arrival);
    assert_eq!(again.step, Step::Height);
    assert_eq!(again.order.survey, model.order.survey);
}

#[test]
fn a_built_down_header_changes_the_order_and_both_numbers_are_told() {
    let mut model = model();
    to_the_check(&mut model);
    press(&mut model, "change:header.center");
    type_in(&mut model, "header.center", "6");
    type_in(&mut model, "prepared", "no");
    press(&mut model, "next");
    let ordered = |d| model.report().numbers.ordered(d).unwrap();
    assert_eq!(ordered(Dimension::Header), Length::from_inches(7));
    assert_eq!(ordered(Dimension::Height), Length::from_sixteenths(100 * 16 + 8));
    let screen = view(&model);
    for text in ["Re-measure after the frame is built", "as found 101 1/2 in", "100 1/2 in"] {
        assert!(screen.contains(text), "{text}");
    }
}

/// Who has a metric tape is warned of what goes wrong on a metric tape.
#[test]
fn each_tape_has_its_own_warnings() {
    let mut model = model();
    let inches = ["1 in mark", "foot mark", "Sixteenths are"];
    let metric = ["10 cm mark", "meter mark too", "3 cm is 30 mm"];
    for (unit, warned, other) in [("in", inches, metric), ("mm", metric, inches)] {
        type_in(&mut model, "unit", unit);
        for (at, step) in ["/width", "/height", "/bow"].into_iter().enumerate() {
            update(&mut model, Event::Navigate(step.into()));
            let screen = view(&model);
            assert!(screen.contains(warned[at]) && !screen.contains(other[at]), "{unit} {step}");
        }
    }
}

#[test]
fn a_change_of_unit_changes_no_reading() {
    let mut model = model();
    to_the_check(&mut model);
    let before: Vec<_> = model.order.survey.readings().collect();
    type_in(&mut model, "unit", "mm");
    assert_eq!(model.order.survey.readings().collect::<Vec<_>>(), before);
    assert!(view(&model).contains("2341"), "92 3/16 in is 2341.6 mm, ordered as 2341 mm");
}

#[test]
fn hostile_text_stays_text() {
    let hostile = r#""><img src=x onerror=alert(1)><script>alert(2)</script>"#;
    for step in Step::WALK {
        let mut model = model();
        for spot in Spot::ALL {
            type_in(&mut model, &spot.key(), hostile);
        }
        for name in ["vehicle", "note", "contact"] {
            type_in(&mut model, name, hostile);
        }
        update(&mut model, Event::Navigate(["/", step.slug()].concat()));
        press(&mut model, "next");
        let screen = view(&model);
        assert!(!screen.contains("<img") && !screen.contains("<script"), "{step:?}");
    }
}

#[test]
fn a_damaged_link_says_so_and_leaves_the_draft_alone() {
    let mut model = model();
    to_the_check(&mut model);
    let before = model.order.clone();
    update(&mut model, Event::Navigate("1GARBAGE".into()));
    assert_eq!(model.step, Step::Opened);
    assert!(matches!(model.opened, Some(Err(_))));
    assert!(view(&model).contains("This link cannot be opened"));
    assert_eq!(model.order, before);
}

#[test]
fn the_record_of_a_hung_door_is_opened_on_its_own_page_and_the_draft_stays() {
    use hangtrue_page::core::hang::record::Record;
    let record = Record { serial: "HT-0042".into(), ..Record::default() };
    let payload = hangtrue_link::record::encode(&record).unwrap();
    for (language, said) in [
        (Language::English, "record of a hung door"),
        (Language::Spanish, "registro de una puerta ya colgada"),
        (Language::French, "fiche d’une porte déjà posée"),
    ] {
        let mut model = model();
        model.environment.language = language;
        to_the_check(&mut model);
        let before = model.order.clone();
        update(&mut model, Event::Navigate(payload.clone()));
        let shown = view(&model);
        assert!(shown.contains(said), "{shown}");
        assert!(shown.contains(&format!("href=\"hang.html#{payload}\"")), "{shown}");
        assert_eq!(model.order, before);
    }
}

#[test]
fn a_reading_agrees_where_another_checks_it_and_nothing_is_found_there() {
    let mut model = model();
    to_the_check(&mut model);
    let agree = |model: &Model| view(model).matches("class=\"state fits\"").count();
    assert_eq!(agree(&model), 0, "each was read once, and nothing checks it");
    type_in(&mut model, "width.low", "92 1/4");
    press(&mut model, "next");
    update(&mut model, Event::Navigate("/check".into()));
    assert_eq!(agree(&model), 2, "two widths");
    type_in(&mut model, "width.low", "94");
    update(&mut model, Event::Settled);
    update(&mut model, Event::Navigate("/check".into()));
    assert_eq!(agree(&model), 0, "they are too far apart");
    // Of two readings half of what lies between them shows in each; told is all of it.
    let screen = view(&model);
    let drawn = screen.split("id=\"residuals-desc\"").nth(1).unwrap_or_default();
    let told = drawn.split("</desc>").next().unwrap_or_default();
    assert!(told.contains("reads 1 13/16 in less than the others say"), "{told}");
}

#[test]
fn what_was_never_read_is_to_be_measured_and_not_read_again() {
    let mut model = model();
    update(&mut model, Event::Navigate("/check".into()));
    let shown = view(&model);
    assert!(!shown.contains("Read again") && !shown.contains("What you read"), "{shown}");
    assert_eq!(shown.matches("Measure now").count(), 4, "{shown}");
    press(&mut model, "change:header.left");
    assert_eq!(model.step, Step::Header);
    // What is typed and no reading is to be read again.
    type_in(&mut model, "header.left", "about nine");
    update(&mut model, Event::Navigate("/check".into()));
    let shown = view(&model);
    assert_eq!(shown.matches("Measure now").count(), 3, "{shown}");
    assert_eq!(shown.matches("Read again").count(), 1, "{shown}");
    assert!(shown.contains("What you read"));
}

/// Whoever corrected a cell of an exported table means it: the link beside it is not opened alone.
#[test]
fn a_table_is_not_opened_by_the_link_in_it() {
    let mut written = model();
    to_the_check(&mut written);
    let link = hangtrue_link::url("https://dealer.example/", &written.order).unwrap();
    let table = |mark: &str| {
        [["id", "width", "link"].join(mark), ["A", "96", &link].join(mark)].join("\r\n")
    };
    let open = |name: &str, text: &str| {
        let mut model = model();
        update(&mut model, Event::File { name: name.to_owned(), text: Some(text.to_owned()) });
        assert!(!view(&model).contains("96 in"));
        model
    };
    for (name, text) in [
        ("a.csv", table(",")),
        ("a.txt", table(",")),
        ("a.txt", ["\u{feff}\n", &table(";")].concat()),
        ("pasted", table("\t")),
        ("A.TSV", link.clone()),
    ] {
        let model = open(name, &text);
        assert_eq!(model.opened, Some(Err(Unopened::File)), "{text}");
        let shown = view(&model);
        assert!(shown.contains("no message with one") && shown.contains("desk.html"), "{shown}");
    }
    for text in [" {\"link\":\"", "\u{feff}[{\"link\":\""] {
        let text = [text, &link, "\"}"].concat();
        assert_eq!(open("a.txt", &text).opened, Some(Err(Unopened::File)), "{text}");
    }
    for text in [
        link.clone(),
        format!("Subject: door, truck 7, rear\n\nW 92, H 101, header 9: {link}\n"),
        format!("Width;height;link\nare all in the link {link}"),
    ] {
        assert!(matches!(open("mail.eml", &text).opened, Some(Ok(_))), "{text}");
    }
}

/// What is to be done stands before the numbers that it is about, with whoever measures and with
/// whoever gets the order; without a way on there is one to the check.
#[test]
fn what_was_found_stands_before_the_numbers() {
    let found = |shown: &str| {
        let at = |text: &str| shown.find(text).unwrap_or_else(|| panic!("no {text} in {shown}"));
        assert!(at("What was found") < at("class=\"numbers\""), "{shown}");
    };
    let mut model = model();
    to_the_check(&mut model);
    type_in(&mut model, "bow.first", "2 1/2");
    found(&view(&model));
    update(&mut model, Event::Navigate("/send".into()));
    assert!(view(&model).contains("<a class=\"button primary\" href=\"#/check\""));
    update(&mut model, Event::Navigate("/check".into()));
    press(&mut model, "confirm:unusual-bow:bow.first");
    press(&mut model, "next");
    let effects = press(&mut model, "copy-link");
    let [Effect::Copy(url)] = effects.as_slice() else { panic!("{effects:?}") };
    let mut dealer = Model::new(Environment::default());
    update(&mut dealer, Event::Open(url.clone()));
    found(&view(&dealer));
}

/// Whoever reads from a ladder is told what to mind before the field, and not behind the button.
#[test]
fn a_dimensions_caution_stands_before_its_readings() {
    let mut model = model();
    for step in ["/width", "/height", "/header", "/bow"] {
        update(&mut model, Event::Navigate(step.into()));
        let shown = view(&model);
        let at = |text: &str| shown.find(text).unwrap_or_else(|| panic!("{step} has no {text}"));
        assert!(at("class=\"caution\"") < at("class=\"readings\""), "{shown}");
    }
}

/// Where a reading was not offered for what it shows, its place is said once, at its field.
#[test]
fn the_place_of_one_more_reading_is_said_once() {
    let mut model = model();
    update(&mut model, Event::Navigate("/proof/diagonal.falling".into()));
    let shown = view(&model);
    assert_eq!(shown.matches("from the high left corner").count(), 1, "{shown}");
}
