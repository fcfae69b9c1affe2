//! What the page that hangs the door says and keeps: its lists, its cautions, its file, its link.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test may fail")]

mod hanging;

use hanging::{environment, go, opened, order, press, put, unescaped};
use hangtrue_core::Unit;
use hangtrue_core::order::Order;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Language;
use hangtrue_link::json::Id;
use hangtrue_link::json::order::OrderFile;
use hangtrue_link::record::{Opened, decode};
use hangtrue_page::Event as PageEvent;
use hangtrue_page::hang::{Action, Arrival, Effect, Event, Model, Step, boot, update, view};
use hangtrue_page::text::hang::Hang;

fn speaking(language: Language) -> (Model, &'static Hang) {
    let mut model = opened(Unit::Inch);
    model.environment.language = language;
    (model, Hang::of(language))
}

/// The markup of a text.
fn escaped(text: &str) -> String {
    maud::html! { (text) }.into_string()
}

/// The markup from `from` up to `to`.
fn between<'a>(markup: &'a str, from: &str, to: &str) -> &'a str {
    let rest = markup.split_once(from).unwrap_or_else(|| panic!("no {from}: {markup}")).1;
    rest.split_once(to).unwrap().0
}

#[test]
fn the_tools_are_listed_with_the_parts() {
    for language in Language::ALL {
        let (mut model, words) = speaking(language);
        let screen = go(&mut model, Step::Delivery);
        let heading = [words.delivery.tools_heading, "</h2>"].concat();
        let list = between(&screen, &heading, "</ul>");
        assert_eq!(list.matches("<li>").count(), 8, "{list}");
        for tool in words.delivery.tools {
            assert!(list.contains(&escaped(tool)), "{tool}");
        }
    }
    // What winding takes, what the shims are made of, what the balance is weighed with.
    let tools = Hang::of(Language::English).delivery.tools.join("; ");
    for must in ["winding bars that fit the cone", "Shims: 1/16", "Luggage scale", "Two tapes"] {
        assert!(tools.contains(must), "{must}");
    }
}

#[test]
fn the_upper_tracks_want_four_fastenings_square_and_as_far_apart() {
    for (language, said) in [
        (Language::English, "At least four fastenings a side"),
        (Language::Spanish, "Al menos cuatro fijaciones por lado"),
        (Language::French, "Au moins quatre fixations par côté"),
    ] {
        let (mut model, words) = speaking(language);
        put(&mut model, "built.track-low", "92");
        put(&mut model, "built.track-high", "92");
        put(&mut model, "built.upper-front", "92 1/16");
        put(&mut model, "built.square-right", "60");
        let screen = go(&mut model, Step::Tracks);
        assert!(screen.contains(said), "{language:?}");
        assert!(screen.contains(&escaped(words.tracks.square)));
        assert!(screen.contains(&escaped(words.tracks.as_is)));
    }
}

/// A hand lifts 23 kg at most: at that nothing is said of it, beyond it the door is to be
/// clamped. Without a weight nothing is worked out, and the screen says what is missing.
#[test]
fn a_weight_no_hand_could_hold_and_none_at_all() {
    for language in Language::ALL {
        let (mut model, words) = speaking(language);
        let screen = go(&mut model, Step::Spring);
        assert!(screen.contains(&escaped(words.balance.no_weight)), "{language:?}");
        assert!(!screen.contains("drawing balance"), "no plot without a weight");
        let most = "51 lb";
        let heavy = escaped(&(words.spring.heavy)(most));
        put(&mut model, "weight", "23 kg");
        assert!(!view(&model).contains(&heavy));
        put(&mut model, "weight", "23.1 kg");
        assert!(view(&model).contains(&heavy), "{heavy}");
        assert!(view(&model).contains("drawing balance"));
        // A spring that is hardly wound leaves more to the hand than it may lift.
        put(&mut model, "weight", "100 kg");
        put(&mut model, "turns", "4");
        let over = (words.balance.hand_over)("@", most);
        let over = escaped(over.rsplit('@').next().unwrap());
        assert!(view(&model).contains(&over), "{over}");
    }
}

#[test]
fn a_quarter_turn_and_the_anchor_are_told() {
    // 60 kg on 12 turns: a quarter turn is 60 / 48 kg = 2.76 lb at the cables.
    let mut model = opened(Unit::Inch);
    put(&mut model, "weight", "60 kg");
    let screen = go(&mut model, Step::Spring);
    assert!(screen.contains("A quarter turn more or less changes the lift by 2.8 lb."), "{screen}");
    for (language, ends) in [
        (Language::English, "the shaft's ends equal"),
        (Language::Spanish, "puntas de la flecha"),
        (Language::French, "bouts de l’arbre"),
    ] {
        let (mut model, _) = speaking(language);
        let screen = go(&mut model, Step::Spring);
        let work = between(&screen, "<ol class=\"work\" start=\"7\">", "</ol>");
        let step = work.split("<li>").find(|step| step.contains("6 1/2")).unwrap();
        assert!(step.contains(&escaped(ends)), "{step}");
    }
}

/// Each part that is replaced has its caution first, then its steps, then when to stop.
#[test]
fn replacing_a_part_begins_with_its_caution_and_ends_with_when_to_stop() {
    for language in Language::ALL {
        let (mut model, words) = speaking(language);
        let screen = go(&mut model, Step::Care);
        let guides: Vec<&str> = screen.split("<details").skip(1).collect();
        assert_eq!(guides.len(), words.care.guides.len());
        for (markup, guide) in guides.iter().zip(&words.care.guides) {
            let at = |text: &str| markup.find(&escaped(text)).unwrap_or_else(|| panic!("{text}"));
            let mut order = vec![at(guide.title), at(guide.caution)];
            order.extend(guide.steps.iter().map(|step| at(step)));
            order.extend([at(words.care.stop), at(guide.stop)]);
            assert!(order.is_sorted() && guide.steps.len() >= 3, "{}", guide.title);
        }
    }
}

#[test]
fn what_is_oiled_and_what_never_is() {
    for (language, seals, tracks) in [
        (Language::English, "Never oil the seals", "No grease in the tracks"),
        (Language::Spanish, "Nunca aceite los sellos", "Sin grasa en los rieles"),
        (Language::French, "N’huilez jamais les joints", "Pas de graisse dans les rails"),
    ] {
        let (mut model, _) = speaking(language);
        let screen = go(&mut model, Step::Care);
        assert!(screen.contains(seals) && screen.contains(tracks), "{language:?}");
    }
}

/// The record opens at what is due, with the sizes that parts are ordered by: 92 and 90 in,
/// seals of 91 and 93 in (one part in a hundred longer, to the next quarter), eight panels.
#[test]
fn the_record_says_what_to_order() {
    let mut model = opened(Unit::Inch);
    put(&mut model, "serial", "HT-7");
    let link = hangtrue_link::record::url("https://d.example/hang.html", &model.record).unwrap();
    let fragment = link.split('#').nth(1).unwrap();
    let arrival = Arrival { href: &link, fragment, ..Arrival::default() };
    let (model, _) = boot(environment(), arrival);
    assert_eq!(model.step, Step::Care);
    let screen = view(&model);
    for said in ["92 in × 90 in", "8 panels", "18 rollers", "two of 91 in", "one of 93 in"] {
        assert!(screen.contains(said), "{said}: {screen}");
    }
}

fn link_of(screen: &str) -> String {
    between(screen, "class=\"url\" href=\"", "\"").to_owned()
}

#[test]
fn each_service_makes_a_link_that_has_it() {
    let mut model = opened(Unit::Inch);
    let before = link_of(&go(&mut model, Step::Record));
    put(&mut model, "service.work", "cables");
    put(&mut model, "service.note", "both, 1/8 in");
    press(&mut model, &Action::AddService);
    let after = link_of(&view(&model));
    assert_ne!(before, after);
    let services = |link: &str| match decode(link.split('#').nth(1).unwrap()) {
        Ok(Opened::Record(record)) => record.services.len(),
        other => panic!("{other:?}"),
    };
    assert_eq!((services(&before), services(&after)), (0, 1));
}

/// The record's file: as it was saved it opens, cut off it is told, and of a newer version too.
#[test]
fn a_file_that_is_damaged_or_newer_is_told_and_opens_nothing() {
    let mut model = opened(Unit::Inch);
    put(&mut model, "serial", "HT-7");
    put(&mut model, "hung", "2026-06-01");
    let screen = go(&mut model, Step::Record);
    let file = unescaped(between(&screen, "href=\"data:application/json,", "\""));
    let open = |text: &str| {
        let mut other = Model::new(environment());
        put(&mut other, "paste", text);
        press(&mut other, &Action::Open);
        other
    };
    assert_eq!(open(&file).record, model.record);
    for bad in [
        &file[..file.len() / 2],
        &file.replace("record/1", "record/2"),
        &file.replace("2026-06-01", "2026-02-31"),
        "{}",
    ] {
        let other = open(bad);
        assert!(!other.has_order() && view(&other).contains("role=\"alert\""), "{bad}");
    }
    assert!(view(&open(&file.replace("record/1", "record/2"))).contains("record/2"));
}

/// An order's file is told from a record's by its format, not by what somebody wrote in it.
#[test]
fn an_orders_file_that_speaks_of_records_is_an_order() {
    let note = "Sticker: \"hangtrue-record/1\"".to_owned();
    let order = Order { note, ..order(Unit::Inch) };
    let report = hangtrue_core::check_order(&order, &Profile::default());
    let file = OrderFile::new(Id::None, &order, &report).text();
    let mut model = Model::new(environment());
    put(&mut model, "paste", &file);
    press(&mut model, &Action::Open);
    assert_eq!((model.fault, model.record.order.note), (None, order.note));
}

/// What was begun is never lost to a link that is opened over it, nor to another door.
#[test]
fn a_door_that_makes_room_for_another_is_set_aside_and_taken_up_again() {
    let mut model = opened(Unit::Inch);
    put(&mut model, "serial", "HT-7");
    go(&mut model, Step::Tracks);
    let first = model.record.clone();
    let other = Order { vehicle: "unit 28".to_owned(), ..order(Unit::Millimetre) };
    let payload = hangtrue_link::encode(&other).unwrap();
    let link = ["https://dealer.example/hang.html#", &payload].concat();
    let effects = update(&mut model, Event::Page(PageEvent::Open(link.clone())));
    let aside = effects.iter().find_map(|effect| match effect {
        Effect::SetAside(number, draft) => Some((*number, draft.clone())),
        _ => None,
    });
    let aside = aside.unwrap();
    assert_eq!((aside.0, model.record.order.vehicle.as_str()), (1, "unit 28"));
    assert!(view(&model).contains("Go on with unit 27 · HT-7"), "{}", view(&model));
    // The device brings it back another day, and it goes on where it was.
    let arrival = Arrival { aside: &[aside], ..Arrival::default() };
    let (mut later, _) = boot(environment(), arrival);
    assert!(view(&later).contains("Go on with unit 27 · HT-7"));
    let effects = press(&mut later, &Action::TakeUp(1));
    assert!(
        effects.contains(&Effect::DropAside(1)) && effects.contains(&Effect::Show(Step::Tracks))
    );
    assert_eq!((&later.record, later.step), (&first, Step::Tracks));
    // In the first tab the two change places, and another door makes room for a third.
    let effects = press(&mut model, &Action::TakeUp(1));
    assert!(matches!(&effects[..2], [Effect::DropAside(1), Effect::SetAside(1, _)]), "{effects:?}");
    assert_eq!((&model.record, model.aside.len()), (&first, 1));
    let effects = press(&mut model, &Action::Restart);
    assert!(matches!(effects[0], Effect::SetAside(2, _)) && effects.contains(&Effect::Forget));
    assert!(!model.has_order() && view(&model).contains("Go on with unit 28"));
    assert_eq!(press(&mut model, &Action::DropAside(1)), [Effect::DropAside(1)]);
    assert!(!view(&model).contains("unit 28") && view(&model).contains("unit 27"));
    // The same record again sets nothing aside.
    press(&mut model, &Action::TakeUp(2));
    let record = hangtrue_link::record::url("https://d.example/hang.html", &model.record).unwrap();
    let effects = update(&mut model, Event::Page(PageEvent::Open(record)));
    assert!(!effects.iter().any(|effect| matches!(effect, Effect::SetAside(..))), "{effects:?}");
}
