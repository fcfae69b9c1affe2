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
    update(&mut model, Event::Input { name: "width.low".into(), value: "90".into() });
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
    view(model).split_once("<section class=\"paper\"").expect("a sheet").1.to_owned()
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
            "What these readings cannot show",
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
    assert!(sheet.contains("the link has all of it"));
    assert!(sheet.contains("and 16 more"), "22 readings, 6 in the row");
}

#[test]
fn there_is_no_sheet_while_something_stands_against_the_order() {
    let mut model = ready();
    update(&mut model, Event::Input { name: "width.low".into(), value: "300".into() });
    assert!(!view(&model).contains("class=\"paper\""));
}

#[test]
fn every_way_out_carries_the_line_and_the_link() {
    let mut model = ready();
    let link = link(&model);
    let line = "W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in";
    let message = format!("{line} {link}");
    assert_eq!(press(&mut model, "copy"), [Effect::Copy(message.clone())]);
    assert_eq!(press(&mut model, "copy-link"), [Effect::Copy(link.clone())]);
    let title = "Order for a roll-up door".to_owned();
    let share = Effect::Share { title, text: line.to_owned(), url: link.clone() };
    assert_eq!(press(&mut model, "share"), [share]);
    assert!(message.is_ascii(), "one other letter makes a text message of 160 one of 70");

    let screen = view(&model);
    let body = "W%2092%203%2F16%20H%20101%201%2F2%20header%209%201%2F2%20bow%201%201%2F4%20in";
    let subject = "Order%20for%20a%20roll-up%20door%3A%20Unit%207";
    for start in [
        format!("href=\"mailto:?subject={subject}&amp;body={body}%0D%0A%0D%0Ahttps%3A%2F%2F"),
        format!("href=\"sms:?&amp;body={body}%20https%3A%2F%2F"),
        "href=\"#/scan\"".to_owned(),
        "href=\"#/voice\"".to_owned(),
    ] {
        assert!(screen.contains(&start), "{start}\n{screen}");
    }
}

#[test]
fn the_share_sheet_comes_first_where_there_is_one_and_enter_sends_nothing() {
    let mut model = ready();
    let first = |model: &Model| {
        let screen = view(model);
        let start = screen.find("class=\"primary\"").unwrap();
        screen[start..].split("data-act=\"").nth(1).unwrap().split('"').next().unwrap().to_owned()
    };
    assert_eq!(first(&model), "copy");
    assert!(!view(&model).contains("data-act=\"share\""));
    model.environment.can_share = true;
    assert_eq!(first(&model), "share");
    assert!(view(&model).contains("data-act=\"copy\""));
    assert!(!view(&model).contains("type=\"submit\""));
}

#[test]
fn where_copying_is_not_allowed_the_message_stands_there_to_be_copied_by_hand() {
    let mut model = ready();
    assert!(!view(&model).contains("by-hand"));
    let effects = update(&mut model, Event::Copied(false));
    assert_eq!(effects, [Effect::Focus("by-hand".into())]);
    let hand = format!(
        "tabindex=\"0\"><code>W 92 3/16 H 101 1/2 header 9 1/2 bow 1 1/4 in {}<",
        link(&model)
    );
    assert!(view(&model).contains(&hand));
    update(&mut model, Event::Copied(true));
    assert!(!view(&model).contains("by-hand"));
}

#[test]
fn the_script_says_the_ordered_numbers_and_nothing_else() {
    let mut model = ready();
    model.order.survey.entries_mut(Spot::WidthMiddle)[0].struck = true;
    update(&mut model, Event::Navigate("/voice".into()));
    let screen = view(&model);
    let lines: Vec<&str> = screen
        .split("<li>")
        .skip(1)
        .take(6)
        .map(|line| line.split("</li>").next().unwrap())
        .collect();
    let said = hangtrue_page::link::code::Said::of(&model.report(), model.order.survey.unit);
    let check = hangtrue_page::link::code::characters(&said).unwrap();
    let spelled = hangtrue_page::link::code::spell(&check, Default::default()).join(", ");
    assert_eq!(
        lines,
        [
            "A rear door order, in inches. I say the numbers digit by digit.",
            "Post-to-post width: nine two and three sixteenths.",
            "Sill-to-header height: one zero one and one half.",
            "Header depth: nine and one half.",
            "Roof-bow depth: one and one quarter.",
            &format!("The six check characters: {spelled}."),
        ]
    );
    assert!(screen.contains(&format!("<p class=\"characters\">{check}</p>")));

    // The thirty characters, group by group, are the order.
    let groups: Vec<&str> = screen
        .split("<b class=\"characters\">")
        .skip(1)
        .map(|group| group.split('<').next().unwrap())
        .collect();
    assert_eq!(groups.len(), 6);
    let small = hangtrue_page::link::code::read_small(&groups.join(" ")).unwrap();
    let ordered = |survey| hangtrue_page::core::check(survey, &model.profile).numbers;
    let (heard, sent) = (ordered(&small.order.survey), model.report().numbers);
    for dimension in hangtrue_page::core::Dimension::ALL {
        assert_eq!(heard.ordered(dimension), sent.ordered(dimension));
    }
}

#[test]
fn an_order_too_long_for_thirty_characters_says_so() {
    let mut model = ready();
    update(&mut model, Event::Input { name: "post.left".into(), value: "5 37/64".into() });
    update(&mut model, Event::Navigate("/voice".into()));
    assert!(model.against(&model.report()).is_empty(), "{:?}", model.report().findings);
    let screen = view(&model);
    assert!(screen.contains("does not fit into thirty characters"), "{screen}");
    assert!(screen.contains("The six check characters"));
}

#[test]
fn while_something_stands_against_the_order_there_is_no_way_out() {
    let mut model = ready();
    update(&mut model, Event::Input { name: "width.low".into(), value: "300".into() });
    for screen in ["/send", "/scan", "/voice"] {
        update(&mut model, Event::Navigate(screen.into()));
        let markup = view(&model);
        assert!(markup.contains("href=\"#/check\""), "{screen}: {markup}");
        for way in ["mailto:", "sms:", "class=\"qr\"", "class=\"script\"", "#1"] {
            assert!(!markup.contains(way), "{screen}: {way}");
        }
    }
    for act in ["copy", "copy-link", "share"] {
        assert_eq!(press(&mut model, act), []);
    }
}

#[test]
fn a_link_too_long_for_a_code_is_told_on_screen_and_paper() {
    let mut model = ready();
    model.order.note = "word ".repeat(590);
    update(&mut model, Event::Navigate("/scan".into()));
    let screen = view(&model);
    assert!(screen.contains("too long for a code") && !screen.contains("class=\"qr\""), "{screen}");
    update(&mut model, Event::Navigate("/send".into()));
    assert!(sheet(&model).contains("Too long for a code"));
}

#[test]
fn the_sheet_has_the_code_and_the_check_characters() {
    let model = ready();
    let sheet = sheet(&model);
    let named = format!(
        "<a href=\"{}\" aria-label=\"Scan the code for the whole order.\"><svg",
        link(&model)
    );
    assert!(sheet.contains(&named), "a link in a PDF, with a name");
    let said = hangtrue_page::link::code::Said::of(&model.report(), model.order.survey.unit);
    let check = hangtrue_page::link::code::characters(&said).unwrap();
    assert!(sheet.contains(&format!("<p class=\"characters\">{check}</p>")));
}

#[test]
fn the_sheet_says_when_the_writer_was_shown_another_verdict() {
    let mut model = ready();
    assert!(!sheet(&model).contains("The writer was shown"));
    update(&mut model, Event::Input { name: "width.low".into(), value: "200".into() });
    let mut order = model.order.clone();
    order.claimed = hangtrue_page::core::check::Verdict::Clear;
    let link = hangtrue_page::link::url("https://dealer.example/", &order).unwrap();
    update(&mut model, Event::Open(link));
    let sheet = sheet(&model);
    assert!(sheet.contains("The writer was shown “Clear”"), "{sheet}");
    assert!(sheet.contains("<p class=\"paper-verdict\">Stop</p>"));
}

#[test]
fn the_sheet_has_the_dealers_number_of_an_order_made_under_those_rules() {
    use hangtrue_page::core::profile::Numbering;
    let mut model = ready();
    model.profile.name = "Demo Doors".into();
    model.profile.revision = 4;
    model.profile.numbering = Some(Numbering::parse("PD-{check}").unwrap());
    let link = link(&model);
    update(&mut model, Event::Open(link));
    let said = hangtrue_page::link::code::Said::of(&model.report(), model.order.survey.unit);
    let number = format!("PD-{}", hangtrue_page::link::code::characters(&said).unwrap());
    assert!(sheet(&model).contains(&number));
    model.profile.revision = 5;
    assert!(!sheet(&model).contains(&number), "the writer never saw that number");
}

#[test]
fn the_sheet_names_the_answers_in_the_dealers_words() {
    use hangtrue_page::core::order::Answer;
    use hangtrue_page::core::profile::{Choice, DOOR, Door, Kind, Question, Words};
    let mut model = ready();
    let answer = |question: &str, answer: &str| Answer {
        question: question.to_owned(),
        answer: answer.to_owned(),
    };
    model.order.answers = vec![answer(DOOR, "steel"), answer("lock", "bar"), answer("old", "x")];
    assert!(sheet(&model).contains("Which door? steel; lock: bar; old: x"), "without the profile");
    let label = Words::plain("Locking bar");
    model.profile.questions = vec![Question {
        key: "lock".into(),
        ask: Words::plain("Lock"),
        hint: Words::default(),
        required: false,
        kind: Kind::Choice(vec![Choice { key: "bar".into(), label }]),
    }];
    let steel = Words::plain("Demo steel line");
    model.profile.doors = vec![Door { key: "steel".into(), name: steel, ..Door::default() }];
    assert!(sheet(&model).contains("Which door? Demo steel line; Lock: Locking bar; old: x"));
}

#[test]
fn without_a_link_every_finding_against_it_is_there_with_the_way_to_it() {
    let mut model = ready();
    update(&mut model, Event::Input { name: "width.low".into(), value: "300".into() });
    update(&mut model, Event::Input { name: "bow.first".into(), value: String::new() });
    let report = model.report();
    let against = model.against(&report);
    assert!(against.len() > 1, "{against:?}");
    for step in [Step::Send, Step::Scan, Step::Voice] {
        model.step = step;
        let shown = view(&model);
        for finding in &against {
            let said = maud::html! { (model.speaker().say(&finding.message)) }.into_string();
            assert!(shown.contains(&said), "{said}\n{shown}");
        }
        assert!(shown.contains("data-act=\"change:bow.first\""), "{shown}");
    }
    model.step = Step::Send;
    update(&mut model, Event::Press("change:bow.first".into()));
    assert_eq!(model.step, Step::Bow);
}

#[test]
fn a_text_that_fills_its_field_says_so() {
    let mut model = ready();
    model.step = Step::Send;
    let mut shown = |name: &str, count: usize| {
        let value = "é".repeat(count);
        update(&mut model, Event::Input { name: name.into(), value });
        view(&model)
    };
    for name in ["vehicle", "note", "contact"] {
        assert!(!shown(name, 179).contains(" of 200 characters"));
        let few = shown(name, 185);
        assert!(few.contains("185 of 200 characters") && !few.contains("No more fits"), "{few}");
        let full = shown(name, 200);
        assert!(full.contains("200 of 200 characters") && full.contains("No more fits"), "{full}");
        shown(name, 0);
    }
    assert!(view(&model).contains("<textarea id=\"note\" name=\"note\" rows=\"3\""));
}
