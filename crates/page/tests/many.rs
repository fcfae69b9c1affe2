//! Many orders at once, without a browser.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic, reason = "a test may fail")]

mod listing;

use hangtrue_page::Event as PageEvent;
use hangtrue_page::core::Spot;
use hangtrue_page::core::rules::RULES;
use hangtrue_page::core::say::Language;
use hangtrue_page::desk::many::{By, Counts, Kind, PAGE, Sort, State, VERDICTS, missing};
use hangtrue_page::desk::{Action, Effect, Event, Model, Screen, Trouble, update, view};
use hangtrue_page::link::csv::What;
use hangtrue_page::link::list::ANSWER_COLUMNS;
use hangtrue_page::text::desk::Desk;
use listing::{checked, drop_file, input, list, model, press, saved, shown, take};

/// Five rows: clear, a bow that fills the header, too few fields, no reading, clear again.
const TABLE: &str = "Order #,Truck,Width (in),Sill to header,Header depth,Bow\r\n\
    A-1,Unit 7,92 3/16,101 1/2,9 1/2,1 1/4\r\n\
    A-2,=cmd(),92 3/16,101 1/2,9 1/2,10\r\n\
    A-3,\"two\r\nlines\",92 3/16,101 1/2\r\n\
    A-4,Unit 9,so wide,101 1/2,9 1/2,1 1/4\r\n\
    A-5,unit 12,90,101 1/2,9 1/2,1 1/4\r\n";

#[test]
fn page_and_command_say_the_same_of_the_demo_orders() {
    for (name, text, golden) in [
        (
            "orders.csv",
            include_str!("../../../demo/orders/orders.csv"),
            include_str!("../../../tests/goldens/cli/demo-orders.csv"),
        ),
        (
            "surveys.jsonl",
            include_str!("../../../demo/orders/surveys.jsonl"),
            include_str!("../../../tests/goldens/cli/demo-surveys.csv"),
        ),
        (
            "links.txt",
            include_str!("../../../demo/orders/links.txt"),
            include_str!("../../../tests/goldens/cli/demo-links.csv"),
        ),
        // Rows that cannot be read, and a name that calculates.
        (
            "-",
            "Order #,Truck,Width (in),Sill to header,Header depth,Bow\r\n\
             A-1,Demo 1,92 3/16,101 1/2,9 1/2,1 1/4\r\n\
             A-2,=cmd(),92 3/16,101 1/2,9 1/2,10\r\n\
             A-3,\"two\r\nlines\",92 3/16,101 1/2\r\n\
             ,,,,,\r\n\
             A-4,,so wide,101 1/2,9 1/2,1 1/4\r\n",
            include_str!("../../../tests/goldens/cli/many.csv"),
        ),
    ] {
        let mut model = checked(name, text);
        assert_eq!(list(&model).state, State::Done, "{name}");
        press(&mut model, "list-sort:line");
        assert_eq!(saved(&mut model, "csv"), golden, "{name}");
        let lines = saved(&mut model, "jsonl");
        assert_eq!(lines.lines().count(), list(&model).found.len());
        for (line, found) in lines.lines().zip(&list(&model).found) {
            let value: serde_json::Value = serde_json::from_str(line).unwrap();
            assert_eq!(value.as_object().unwrap().len(), ANSWER_COLUMNS.len());
            assert_eq!(value["line"], found.answer.line);
            assert_eq!(value["findings"].as_array().unwrap().len(), found.answer.findings.len());
            assert_eq!(value["verdict"], VERDICTS[found.rank()]);
        }
    }
}

#[test]
fn worst_stands_first_and_every_column_sorts_both_ways() {
    let mut model = checked("orders.csv", TABLE);
    assert_eq!(list(&model).counts.verdicts, [2, 1, 0, 2]);
    assert_eq!(shown(&model)[2..], ["A-3", "A-1", "A-5"]);
    for (by, order) in [
        ("line", ["A-1", "A-2", "A-3", "A-4", "A-5"]),
        ("id", ["A-1", "A-2", "A-3", "A-4", "A-5"]),
        // What has no width stands last, whichever way round.
        ("width", ["A-5", "A-1", "A-2", "A-3", "A-4"]),
        ("bow", ["A-1", "A-4", "A-5", "A-2", "A-3"]),
    ] {
        press(&mut model, &["list-sort:", by].concat());
        assert_eq!(shown(&model), order, "{by}");
        let ascending = view(&model);
        assert!(ascending.contains("aria-sort=\"ascending\""));
        press(&mut model, &["list-sort:", by].concat());
        assert!(view(&model).contains("aria-sort=\"descending\""));
        match by {
            "width" => assert_eq!(shown(&model), ["A-1", "A-2", "A-5", "A-3", "A-4"]),
            "bow" => assert_eq!(shown(&model)[0], "A-2"),
            _ => assert_eq!(shown(&model), ["A-5", "A-4", "A-3", "A-2", "A-1"]),
        }
    }
    press(&mut model, "list-sort:worst");
    assert_eq!(list(&model).sort, Sort { by: By::Worst, reversed: false });
}

#[test]
fn a_press_on_a_count_shows_those_it_counts() {
    let mut model = checked("orders.csv", TABLE);
    press(&mut model, "list-verdict:clear");
    assert_eq!(shown(&model), ["A-1", "A-5"]);
    press(&mut model, "list-verdict:all");
    for (rule, count) in list(&model).counts.rules.clone() {
        press(&mut model, &["list-rule:", rule].concat());
        assert_eq!(shown(&model).len(), count, "{rule}");
        press(&mut model, &["list-rule:", rule].concat());
        assert_eq!(shown(&model).len(), 5, "a second press shows all again");
    }
    input(&mut model, "list-filter", " UNIT ");
    assert_eq!(shown(&model), ["A-4", "A-1", "A-5"]);
    assert_eq!(model.spoken, "3 orders shown");
    press(&mut model, "list-verdict:clear");
    // What is saved is what is shown.
    let text = saved(&mut model, "csv");
    assert_eq!(text.lines().count(), 3);
    input(&mut model, "list-filter", "no such");
    assert!(view(&model).contains("No order of the list is like this."));
}

#[test]
fn columns_are_guessed_shown_and_put_right_by_hand() {
    let text = "Ref;Breite;Hoehe;Sturz;Bogen\nT-1;2345;2566;24,2;32\n\"=x\";2345;2566;2,5;32\n";
    let mut model = model();
    // Nobody knows what it is before its columns are named: it is opened on its own screen.
    drop_file(&mut model, "orders.txt", text);
    assert!(model.many.list.is_none());
    press(&mut model, "many");
    drop_file(&mut model, "orders.txt", text);
    let Kind::Table(sheet) = &list(&model).source.kind else { panic!("no table") };
    assert_eq!(missing(sheet).len(), 4);
    assert_eq!(sheet.columns[0].what, What::Id);
    let seen = view(&model);
    for piece in ["No column holds the post-to-post width, the sill-to", ">Sturz<", ">24,2<"] {
        assert!(seen.contains(piece), "{piece}");
    }
    for (at, what) in
        ["width.middle", "height.center", "header.center", "bow.first"].into_iter().enumerate()
    {
        input(&mut model, &format!("column:{}", at + 1), what);
    }
    input(&mut model, "measure:3", "cm");
    input(&mut model, "list-unit", "mm");
    // Nonsense changes nothing.
    for (name, value) in [("column:9", "note"), ("column:1", "breadth"), ("column:x", "note")] {
        input(&mut model, name, value);
    }
    let Kind::Table(sheet) = &list(&model).source.kind else { panic!("no table") };
    assert!(missing(sheet).is_empty());
    assert!(matches!(sheet.columns[1].what, What::Reading(Spot::WidthMiddle)));
    press(&mut model, "list-check");
    press(&mut model, "list-sort:line");
    let first = &list(&model).found[0].answer;
    assert_eq!(first.cells(Language::English)[5..9], ["2345 mm", "2566 mm", "242 mm", "32 mm"]);
    // Looked at again and changed: the old answers go once it is checked anew.
    press(&mut model, "list-columns");
    assert_eq!(list(&model).state, State::Columns);
    input(&mut model, "column:0", "ignored");
    press(&mut model, "list-check");
    assert_eq!(shown(&model), ["", ""]);
}

#[test]
fn it_stops_and_goes_on_and_leaves_nothing_out() {
    let rows = TABLE.split_once("\r\n").unwrap().1.repeat(6);
    let text = [TABLE, &rows].concat();
    let whole = checked("orders.csv", &text);
    let mut model = model();
    drop_file(&mut model, "orders.csv", &text);
    update(&mut model, Event::Page(PageEvent::Press("list-check".into())));
    for _ in 0..7 {
        assert!(update(&mut model, Event::Work).contains(&Effect::Work));
    }
    let percent = list(&model).percent();
    assert!(percent > 0 && percent < 50);
    assert!(view(&model).contains("<progress"));
    press(&mut model, "list-stop");
    assert_eq!((list(&model).state, shown(&model).len()), (State::Stopped, 7));
    // A step that was on its way does nothing more.
    assert!(update(&mut model, Event::Work).is_empty());
    assert!(view(&model).contains("Stopped at"));
    press(&mut model, "list-resume");
    assert_eq!(list(&model).state, State::Done);
    assert_eq!(list(&model).found, list(&whole).found);
    assert_eq!(shown(&model), shown(&whole));
    assert!(model.spoken.starts_with("35 orders checked"), "{}", model.spoken);
    press(&mut model, "list-close");
    assert!(model.many.list.is_none() && view(&model).contains("id=\"orders\""));
}

#[test]
fn both_screens_keep_what_they_have() {
    let mut model = model();
    input(&mut model, "width.middle", "92 3/16");
    drop_file(&mut model, "orders.csv", TABLE);
    assert_eq!(model.screen, Screen::Many, "a list is a list wherever it is dropped");
    press(&mut model, "list-check");
    let at = list(&model).found.iter().position(|found| found.answer.id == "A-2").unwrap();
    press(&mut model, &format!("list-look:{at}"));
    assert_eq!((model.screen, model.sent[0].name.as_str()), (Screen::One, "A-2"));
    assert!(view(&model).contains("value=\"92 3/16\""));
    press(&mut model, "many");
    assert_eq!(shown(&model).len(), 5);
    press(&mut model, "fresh");
    assert!(model.many.list.is_some());
    // One order is one, on either screen.
    drop_file(&mut model, "one.json", include_str!("../../../demo/orders/demo-2.json"));
    assert_eq!((model.screen, model.sent.len()), (Screen::One, 1));
}

#[test]
fn a_number_that_building_changes_says_what_was_read() {
    let rows = "id,width,height,header,bow,built\r\n\
        A-1,92 3/16,101 1/2,6 1/2,1 1/4,no\r\nA-2,92 3/16,101 1/2,6 1/2,1 1/4,yes\r\n";
    let model = checked("orders.csv", rows);
    let shown = view(&model);
    let cells: Vec<&str> = shown.split("<td class=\"number\">").skip(1).collect();
    let marked: Vec<_> = (0..cells.len()).filter(|at| cells[*at].contains("<small>")).collect();
    // By default the worst stand first: of the frame that stays as it is nothing is built.
    let built = list(&model).shown.iter().position(|at| *at == 0).unwrap() * 4;
    assert_eq!(marked, [built + 1, built + 2], "{cells:?}");
    assert!(cells[built + 2].starts_with("7 in<small>as found 6 1/2 in</small>"), "{cells:?}");
}

#[test]
fn what_is_no_list_is_told_and_what_is_one_is_not_a_list() {
    let link = include_str!("../../../demo/orders/links.txt").lines().next().unwrap();
    for one in [
        format!("Hello, here it is:\n> {link}\nAs I said, once more:\n{link}\nRegards, me\n"),
        link.to_owned(),
        "id,width,height,header,bow\r\nA-17,92 3/16,101 1/2,9 1/2,1 1/4\r\n".to_owned(),
        include_str!("../../../demo/orders/demo-2.json").to_owned(),
    ] {
        let mut model = model();
        assert_eq!(input(&mut model, "paste", &one), [Effect::Press(Action::Open)]);
        press(&mut model, "open");
        assert_eq!((model.screen, model.sent.len()), (Screen::One, 1), "{one}");
    }
    let mut model = model();
    press(&mut model, "many");
    for (text, trouble) in [("see you on Friday", Trouble::Nothing), (" \n", Trouble::Nothing)] {
        input(&mut model, "orders", text);
        assert_eq!(model.many.paste, text);
        press(&mut model, "list-open");
        assert_eq!(model.many.trouble, Some(trouble));
        assert!(view(&model).contains("There is no list of orders in this."));
    }
    drop_file(&mut model, "a.csv", "a,\"b\"c\n1,2\n");
    assert!(matches!(model.many.trouble, Some(Trouble::Table(_))));
    take(&mut model, PageEvent::File { name: "x".into(), text: None });
    assert_eq!(model.many.trouble, Some(Trouble::NoText));
    // Links beyond doubt are begun with as they are pasted; a table's columns are looked at.
    input(&mut model, "orders", include_str!("../../../demo/orders/links.txt"));
    assert_eq!(list(&model).state, State::Done);
    assert!(model.many.trouble.is_none());
    press(&mut model, "list-close");
    input(&mut model, "orders", TABLE);
    assert_eq!(list(&model).state, State::Columns);
}

#[test]
fn the_document_holds_a_page_of_them_however_many_there_are() {
    let mut model = checked("orders.csv", TABLE);
    let list = model.many.list.as_mut().unwrap();
    let found = list.found.clone();
    list.found = (0..100_000)
        .map(|at| {
            let mut found = found[at % found.len()].clone();
            (found.mark.at, found.answer.line) = (at, at);
            found
        })
        .collect();
    press(&mut model, "list-verdict:all");
    assert_eq!(shown(&model).len(), 100_000);
    let expected = {
        let list = model.many.list.as_ref().unwrap();
        let mut all: Vec<usize> = (0..100_000).collect();
        all.sort_by(|a, b| list.sort.compare(&list.found[*a], &list.found[*b]));
        all
    };
    assert_eq!(model.many.list.as_ref().unwrap().shown, expected);
    let rows = |model: &Model| view(model).matches("data-key=\"found-").count();
    assert_eq!(rows(&model), PAGE);
    assert!(view(&model).contains("1 to 50 of 100000"));
    press(&mut model, "list-page:1999");
    assert_eq!(rows(&model), PAGE);
    assert!(view(&model).contains("99951 to 100000 of 100000"));
    press(&mut model, "list-page:5000");
    assert_eq!(rows(&model), PAGE, "there is no page behind the last");
}

#[test]
fn every_finding_has_a_few_words_in_every_language() {
    let codes = RULES.iter().map(|rule| rule.code).chain(["slip", "answer"]);
    let text = |language| &Desk::of(language).many;
    let english = text(Language::English);
    for code in codes {
        assert!(!(english.rule)(code).is_empty(), "{code}");
        for language in [Language::Spanish, Language::French] {
            assert_ne!((english.rule)(code), (text(language).rule)(code), "{code}");
        }
    }
    let counts = Counts { verdicts: [1, 2, 30, 400], rules: Vec::new() };
    for language in Language::ALL {
        let said = (text(language).summary)(&counts);
        for figure in ["433", "1 ", "2 ", "30 ", "400 "] {
            assert!(said.contains(figure), "{said}");
        }
        assert!((text(language).missing)(&["x1", "x2"]).contains("x2"));
        assert!((text(language).checked)(1, 7).contains('7'));
    }
}
