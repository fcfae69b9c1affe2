//! The walk under a dealer's own rules.

#![allow(clippy::unwrap_used, clippy::panic)]

use hangtrue_page::core::check::Verdict;
use hangtrue_page::core::profile::{Kind, Question};
use hangtrue_page::core::{Dimension, Length, Unit};
use hangtrue_page::link::json::profile::parse;
use hangtrue_page::{Effect, Environment, Event, Model, Step, update, view};

const PRAIRIE: &str = include_str!("../../../demo/profiles/prairie.json");
const BOREAL: &str = include_str!("../../../demo/profiles/boreal.json");

fn model(profile: &str) -> Model {
    let mut model =
        Model::new(Environment { base: "https://d.example/".into(), ..Default::default() });
    model.rule_by(Ok(parse(profile).unwrap()));
    model
}

fn type_in(model: &mut Model, name: &str, value: &str) {
    update(model, Event::Input { name: name.into(), value: value.into() });
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Press(code.into()))
}

/// The readings of an invented truck, up to the first screen after the bows.
fn to_the_proof(model: &mut Model) {
    press(model, "next");
    type_in(model, "prepared", "yes");
    press(model, "next");
    for (name, value) in [
        ("width.middle", "92 3/16 in"),
        ("height.center", "101 1/2 in"),
        ("header.center", "9 1/2 in"),
        ("bow.first", "1 1/4 in"),
    ] {
        type_in(model, name, value);
        press(model, "next");
    }
}

#[test]
fn the_walk_shows_who_rules_and_asks_what_they_ask() {
    let mut model = model(PRAIRIE);
    let start = view(&model);
    for text in ["Rules of Prairie Door Works, revision 4", "Measure once the old track is off."] {
        assert!(start.contains(text), "{text}");
    }
    to_the_proof(&mut model);
    // The closing reading that the dealer wants comes first.
    assert_eq!(model.step, Step::Proof);
    assert_eq!(model.proof.unwrap().name(), "loop.sill_to_bow");
    type_in(&mut model, "loop.sill_to_bow", "109 3/4");
    press(&mut model, "next");
    while model.step == Step::Proof {
        press(&mut model, "skip");
    }
    assert_eq!(model.step, Step::Questions);
    press(&mut model, "next");
    assert_eq!(model.step, Step::Questions, "a required answer is missing");
    let sentence = "“Which side seals?” has not been answered.";
    assert_eq!(view(&model).matches(sentence).count(), 2, "at the field and in the summary");
    type_in(&mut model, "answer:side-seal", "bulb");
    type_in(&mut model, "answer:clip-offset", "12");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Questions, "12 in is more than the dealer's 8 in");
    type_in(&mut model, "answer:clip-offset", "3 1/2");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Check);
    assert!(view(&model).contains("Bulb seal"));
    press(&mut model, "next");
    assert_eq!(model.step, Step::Send);
    let screen = view(&model);
    assert!(screen.contains("We confirm every order by telephone before we cut."));
    for text in [
        "mailto:orders@prairie-doors.example?subject=",
        "sms:+15550100142",
        "tel:+15550100140",
        "https://prairie-doors.example/incoming/#",
        "Order number PD--",
    ] {
        assert!(screen.contains(text), "{text}");
    }
    let sent = model.sent(Verdict::Clear);
    assert_eq!(sent.profile, Some(("Prairie Door Works".to_owned(), 4)));
    let answers: Vec<_> = sent.answers.iter().map(|a| (&*a.question, &*a.answer)).collect();
    assert_eq!(answers, [("side-seal", "bulb"), ("clip-offset", "3 1/2")]);
    // 92 3/16 in, rounded to the dealer's eighths.
    let width = model.report().numbers.ordered(Dimension::Width);
    assert_eq!(width, Some(Length::from_sixteenths(92 * 16 + 2)));
}

#[test]
fn what_a_dealer_forces_cannot_be_left_out_and_changes_come_back() {
    let mut model = model(PRAIRIE);
    to_the_proof(&mut model);
    while model.step == Step::Proof {
        press(&mut model, "skip");
    }
    type_in(&mut model, "answer:side-seal", "none");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Check);
    assert_eq!(model.report().verdict, Verdict::Stop);
    assert!(view(&model).contains("Prairie Door Works asks for one more reading"));
    press(&mut model, "change:loop.sill_to_bow");
    type_in(&mut model, "loop.sill_to_bow", "109 3/4");
    press(&mut model, "next");
    assert_eq!((model.step, model.report().verdict), (Step::Check, Verdict::Clear));
    let effects = press(&mut model, "answer:side-seal");
    assert_eq!(model.step, Step::Questions);
    assert!(effects.contains(&Effect::Focus("answer:side-seal".into())));
    press(&mut model, "next");
    assert_eq!(model.step, Step::Check);
}

#[test]
fn a_refused_width_says_whose_limit_it_is() {
    let mut model = model(PRAIRIE);
    update(&mut model, Event::Navigate("/width".into()));
    type_in(&mut model, "width.middle", "96 1/2");
    press(&mut model, "next");
    press(&mut model, "next");
    assert_eq!(model.step, Step::Width);
    let reason = "Prairie Door Works says: our widest panel covers a 96 in opening.";
    assert!(view(&model).contains(reason));
}

#[test]
fn a_chosen_door_raises_what_the_frame_must_have() {
    let mut model = model(PRAIRIE);
    press(&mut model, "next");
    let screen = view(&model);
    for text in ["Rail 700", "High Lift 900", "Not decided yet", "7 1/2 in"] {
        assert!(screen.contains(text), "{text}");
    }
    let theirs = "Rules of Prairie Door Works, revision 4: posts at least 2 1/2 in \
                  (common practice) wide";
    assert!(screen.contains(theirs));
    type_in(&mut model, "answer:door", "high-lift");
    let asked = "posts at least 3 in wide, and a header at least 11 in deep";
    assert!(view(&model).contains(asked));
    type_in(&mut model, "header.center", "9 1/2");
    let report = model.report();
    assert_eq!(report.preparation.header_down, Length::from_sixteenths(24));
    update(&mut model, Event::Navigate("/check".into()));
    assert!(view(&model).contains("High Lift 900 needs it"));
}

/// A dealer who has moved neither limit leaves common practice what it is.
#[test]
fn a_limit_that_no_dealer_moved_is_not_called_theirs() {
    let mut model = model(
        r#"{"format":"hangtrue-profile/1","name":"D","revision":1,
        "limits":{"width":{"most":"96 in","reason":"r"},"post":{"most":"9 in","reason":"r"}}}"#,
    );
    press(&mut model, "next");
    let screen = view(&model);
    assert!(screen.contains("Common practice: posts") && !screen.contains("1: posts"));
}

#[test]
fn of_two_minimums_the_one_that_no_dealer_moved_is_not_called_theirs() {
    let mut model = model(
        r#"{"format":"hangtrue-profile/1","name":"D","revision":1,
        "limits":{"header":{"least":"10 in","reason":"r"}}}"#,
    );
    press(&mut model, "next");
    let told = "revision 1: posts at least 2 1/2 in (common practice) wide, and a header at \
                least 10 in deep";
    assert!(view(&model).contains(told));
}

#[test]
fn rules_that_cannot_be_read_leave_the_built_in_ones_and_say_so() {
    let mut model = Model::new(Environment::default());
    model.rule_by(Err("limits.width has no \"reason\".".into()));
    let start = view(&model);
    assert!(start.contains("could not be read, so the built-in rules are used"));
    assert!(start.contains("limits.width has no &quot;reason&quot;."));
    to_the_proof(&mut model);
    while model.step == Step::Proof {
        press(&mut model, "skip");
    }
    assert_eq!((model.step, model.report().verdict), (Step::Check, Verdict::Clear));
    assert_eq!(model.sent(Verdict::Clear).profile, None);
}

#[test]
fn another_unit_and_the_mean() {
    let mut model = model(BOREAL);
    assert_eq!(model.order.survey.unit, Unit::Millimetre);
    for (name, value) in [("width.low", "2340"), ("width.middle", "2343"), ("width.high", "2349")] {
        type_in(&mut model, name, value);
    }
    let width = model.report().numbers.ordered(Dimension::Width);
    assert_eq!(width, Some(Length::from_mm(2344)));
    update(&mut model, Event::Navigate("/check".into()));
    assert!(view(&model).contains("the mean of 3 readings, 2344 mm; the tightest, low: 2340 mm"));
    press(&mut model, "restart");
    assert_eq!(model.profile.name, "Portes Boréal", "a new survey is under the same rules");
}

/// Whatever a profile says is text on the screen, never markup.
#[test]
fn hostile_texts_stay_text() {
    let hostile = r#"\"><img src=x onerror=alert(1)><script>alert(2)</script>"#;
    let profile = [
        r#"{"format":"hangtrue-profile/1","name":"N"#,
        hostile,
        r#"","revision":1,"texts":{"start":"S"#,
        hostile,
        r#"","send":"E"#,
        hostile,
        r#""},"limits":{"width":{"most":"60 in","reason":"R"#,
        hostile,
        r#""}},"doors":[{"key":"a","name":"D"#,
        hostile,
        r#"","note":"N"#,
        hostile,
        r#""},{"key":"b","name":"B"}],"questions":[{"key":"q","ask":"A"#,
        hostile,
        r#"","hint":"H"#,
        hostile,
        r#"","required":true,"kind":"choice","choices":[{"key":"x","label":"L"#,
        hostile,
        r#""},{"key":"y","label":"Y"}]}]}"#,
    ];
    let mut model = model(&profile.concat());
    type_in(&mut model, "width.low", "92");
    for step in Step::WALK {
        update(&mut model, Event::Navigate(["/", step.slug()].concat()));
        press(&mut model, "next");
        let screen = view(&model);
        assert!(!screen.contains("<img") && !screen.contains("<script"), "{step:?}");
    }
}

/// A lift of 30 in is no 30 mm because the readings go on in millimetres.
#[test]
fn another_unit_changes_no_answer() {
    let mut model = model(PRAIRIE);
    let profile = model.profile.clone();
    let length = |question: &&Question| matches!(question.kind, Kind::Length { .. });
    let key = &profile.questions.iter().find(length).unwrap().key;
    let name = ["answer:", key].concat();
    for (typed, kept) in
        [("30", "30 in"), ("30 1/2 in", "30 1/2 in"), ("750 mm", "750 mm"), ("so", "so")]
    {
        type_in(&mut model, "unit", "in");
        type_in(&mut model, &name, typed);
        type_in(&mut model, "answer:tail-lights", "30");
        type_in(&mut model, "unit", "mm");
        assert_eq!(model.answer(key), kept);
        assert_eq!(model.answer("tail-lights"), "30", "it is no length");
        type_in(&mut model, "unit", "in");
        assert_eq!(model.answer(key), kept);
    }
}

/// A bare number is in the order's unit, and its reader may think in the other.
#[test]
fn a_length_that_was_answered_is_shown_with_its_unit() {
    let mut model = model(PRAIRIE);
    to_the_proof(&mut model);
    type_in(&mut model, "answer:clip-offset", "4");
    type_in(&mut model, "answer:grab-rail", "yes");
    update(&mut model, Event::Navigate("/check".into()));
    let shown = view(&model);
    assert!(shown.contains("<span class=\"typed\">4 in</span>"), "{shown}");
    let link = hangtrue_page::link::url("https://d.example/", &model.order).unwrap();
    let mut reader = self::model(PRAIRIE);
    update(&mut reader, Event::Open(link));
    let shown = view(&reader);
    assert!(shown.contains("<span class=\"typed\">4 in</span>"), "{shown}");
    let on_paper = "from the roof skin? 4 in; Is there a grab rail on the left post? Yes";
    assert!(shown.contains(on_paper), "{shown}");
}
