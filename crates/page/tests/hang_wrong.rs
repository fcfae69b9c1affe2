//! Hanging the door, where something is wrong: a spring wound too tight, readings that
//! contradict each other, slips of the pen.

#![allow(clippy::unwrap_used, reason = "a test may fail")]

mod hanging;

use hanging::{go, opened, order, press, put};
use hangtrue_core::hang::record::Place;
use hangtrue_core::say::Language;
use hangtrue_core::{Spot, Unit};
use hangtrue_page::hang::{Action, Model, Step, view};

fn speaking(language: Language) -> Model {
    let mut model = opened(Unit::Inch);
    model.environment.language = language;
    model
}

fn escaped(text: &str) -> String {
    maud::html! { (text) }.into_string()
}

#[track_caller]
fn says(model: &Model, text: &str, said: bool) {
    let screen = view(model);
    assert_eq!(screen.contains(&escaped(text)), said, "{text}: {screen}");
}

/// A spring wound too tight pulls the door up, and one wound too little leaves it to the
/// hand: each is told as what it is, and both where both happen.
#[test]
fn a_spring_wound_too_tight_is_no_door_too_heavy_to_lift() {
    for (language, heavy, flies, clamps, hold, over) in [
        (
            Language::English,
            "the hand would lift",
            "more than the door weighs there: the door flies up when it is unclamped",
            "Leave the clamps on",
            "hold the door back",
            "that one person should hold",
        ),
        (
            Language::Spanish,
            "la mano levantaría",
            "más de lo que la puerta pesa ahí: la puerta sube de golpe al quitar las prensas",
            "Deje puestas las prensas",
            "detenga la puerta",
            "que una persona debe detener",
        ),
        (
            Language::French,
            "la main lèverait",
            "de plus que ce que la porte pèse là\u{a0}: la porte monte d’un coup quand on enlève \
             les serres",
            "Laissez les serres en place",
            "retenez la porte",
            "qu’une personne devrait retenir",
        ),
    ] {
        let mut model = speaking(language);
        go(&mut model, Step::Spring);
        put(&mut model, "weight", "150 lb");
        put(&mut model, "turns", "20");
        for (text, said) in [(heavy, false), (flies, true), (clamps, true), (hold, false)] {
            says(&model, text, said);
        }
        // As the page asks for: half-way the spring pulls up, and a hand holds that.
        put(&mut model, "turns", "12");
        for (text, said) in [(heavy, false), (flies, false), (clamps, false), (hold, true)] {
            says(&model, text, said);
        }
        put(&mut model, "turns", "4");
        for (text, said) in [(heavy, true), (flies, false), (hold, false)] {
            says(&model, text, said);
        }
        // A light door flies up with less than a person can hold; not within its friction.
        put(&mut model, "weight", "60 lb");
        put(&mut model, "turns", "16");
        for (text, said) in [(heavy, false), (flies, true), (clamps, true), (hold, false)] {
            says(&model, text, said);
        }
        put(&mut model, "turns", "12 1/2");
        for (text, said) in [(heavy, false), (flies, false), (clamps, false), (hold, true)] {
            says(&model, text, said);
        }
        put(&mut model, "weight", "400 kg");
        put(&mut model, "turns", "11");
        for (text, said) in [(heavy, true), (over, true), (flies, false), (hold, false)] {
            says(&model, text, said);
        }
        // A heavy door wound as the page asks for flies up only once it is lifted.
        put(&mut model, "turns", "12");
        for (text, said) in [(heavy, false), (over, true), (flies, false), (clamps, false)] {
            says(&model, text, said);
        }
    }
}

/// The drawing says in words which way the greatest force goes.
#[test]
fn the_drawing_of_the_balance_says_that_the_spring_pulls_up() {
    for (language, said) in [
        (Language::English, "and the spring pulls up with 132 lb more than hangs there."),
        (Language::Spanish, "y el resorte jala hacia arriba con 132 lb más de lo que ahí cuelga."),
        (
            Language::French,
            "et le ressort tire vers le haut avec 132 lb de plus que ce qui y pend.",
        ),
    ] {
        let mut model = speaking(language);
        put(&mut model, "weight", "150 lb");
        put(&mut model, "turns", "20");
        go(&mut model, Step::Spring);
        says(&model, said, true);
    }
}

/// An order says what has to be built before the door fits: its box stands on the first screen,
/// and the caution in it before the work.
#[test]
fn what_has_to_be_built_stands_with_the_numbers() {
    for (language, heading, caution, work) in [
        (Language::English, "To be built", "Cutting and welding", "header"),
        (Language::Spanish, "Por hacer en el marco", "Cortar y soldar", "dintel"),
        (Language::French, "À faire sur le cadre", "Couper et souder", "linteau"),
    ] {
        let built = |prepared: bool| {
            let mut order = order(Unit::Inch);
            order.survey.prepared = prepared;
            order.survey.set(Spot::HeaderCenter, 0, "6");
            let mut model = speaking(language);
            model.take_order(order);
            let screen = go(&mut model, Step::Order);
            screen.split("<section class=\"build\">").nth(1).map(str::to_owned)
        };
        let found = built(false).unwrap();
        let found = found.split("</section>").next().unwrap();
        assert!(found.contains(heading), "{found}");
        let (caution, work) = (found.find(caution).unwrap(), found.find(work).unwrap());
        assert!(caution < work, "{found}");
        assert_eq!(found.matches("class=\"caution\"").count(), 1);
        assert_eq!(built(true), None);
    }
}

/// Where the readings contradict each other nothing is worked out from them.
#[test]
fn readings_that_contradict_each_other_shim_nothing() {
    let mut model = opened(Unit::Inch);
    go(&mut model, Step::Tracks);
    for (place, text) in [
        ("track-low", "90"),
        ("track-middle", "90 1/4"),
        ("track-high", "90 3/8"),
        ("track-rising", "120 1/2"),
        ("track-falling", "121"),
        ("upper-front", "91"),
    ] {
        put(&mut model, &["built.", place].concat(), text);
    }
    let worked = ["Shims behind", "drawing pair", "inside the limit", "will stand", "left in"];
    for text in worked {
        says(&model, text, true);
    }
    put(&mut model, "built.track-marks", "80");
    says(&model, "These readings contradict each other.", true);
    for text in worked {
        says(&model, text, false);
    }
}

/// It is said where the legs of the triangle start, whose track is off, and that a reading far
/// off is looked at first.
#[test]
fn square_is_measured_from_where_the_straight_tracks_would_meet() {
    for (language, from, right, far) in [
        (
            Language::English,
            "the point where the two would meet",
            "Right: 2.0° off: it points too far up.",
            "Left: 35.9° off",
        ),
        (
            Language::Spanish,
            "el punto donde los dos se encontrarían",
            "Derecha: 2.0° fuera: apunta demasiado hacia arriba.",
            "Izquierda: 35.9° fuera",
        ),
        (
            Language::French,
            "le point où les deux se rencontreraient",
            "Droite\u{a0}: 2,0° d’écart\u{a0}: il pointe trop vers le haut.",
            "Gauche\u{a0}: 35,9° d’écart",
        ),
    ] {
        let mut model = speaking(language);
        go(&mut model, Step::Tracks);
        put(&mut model, "built.square-left", "75");
        put(&mut model, "built.square-right", "61");
        for text in [from, right, far] {
            says(&model, text, true);
        }
        // The one that is far off is no fact to bend by.
        let bend = right.rsplit(": ").next().unwrap();
        assert_eq!(view(&model).matches(&escaped(bend)).count(), 1);
        put(&mut model, "built.square-left", "60");
        put(&mut model, "built.square-right", "");
        let side = far.split_once(':').unwrap().0;
        let words = hangtrue_page::text::hang::Hang::of(language);
        let colon = if language == Language::French { "\u{a0}: " } else { ": " };
        says(&model, &[side.trim_end(), colon, words.tracks.square].concat(), true);
    }
}

/// A number that is out of reach is told at its field as a text that is no number is, with the
/// limit, and nothing is worked out as if it had not been typed.
#[test]
fn a_number_out_of_reach_is_told_at_its_field() {
    for (name, slip, fine, limit) in [
        ("turns", "125", "12 1/2", "0 or above 100"),
        ("preload", "30", "20", "0 or above 20"),
        ("drum", "1", "10", "3 in or above 60 in"),
    ] {
        let mut model = opened(Unit::Inch);
        put(&mut model, "weight", "150 lb");
        go(&mut model, Step::Spring);
        put(&mut model, name, fine);
        assert!(!view(&model).contains("aria-invalid"), "{name}");
        put(&mut model, name, slip);
        let screen = view(&model);
        let field = screen.split(&["data-key=\"", name, "\""].concat()).nth(1).unwrap();
        let field = field.split("</div>").collect::<Vec<_>>()[..2].concat();
        assert!(field.contains("aria-invalid") && field.contains(limit), "{field}");
    }
    // The balance of a spring wound nobody knows how far is not drawn.
    let mut model = opened(Unit::Inch);
    go(&mut model, Step::Spring);
    put(&mut model, "weight", "150 lb");
    for (turns, drawn) in [("12", true), ("125", false), ("twelve", false), ("", true)] {
        put(&mut model, "turns", turns);
        assert_eq!(view(&model).contains("drawing balance"), drawn, "{turns}");
    }
}

/// Friction makes raising the harder of the two: pulls the other way round are no turns.
#[test]
fn pulls_that_contradict_each_other_ask_for_no_turns() {
    for (language, said, turns) in [
        (Language::English, "These pulls contradict each other; read them again.", "Turns to add"),
        (Language::Spanish, "Estos jalones se contradicen; mídalos otra vez.", "Vueltas por dar"),
        (
            Language::French,
            "Ces tractions se contredisent; mesurez-les de nouveau.",
            "Tours à ajouter",
        ),
    ] {
        let mut model = speaking(language);
        go(&mut model, Step::Spring);
        put(&mut model, "weight", "150 lb");
        put(&mut model, "pull.up.half", "25");
        put(&mut model, "pull.down.half", "15");
        says(&model, turns, true);
        says(&model, said, false);
        put(&mut model, "pull.up.half", "15");
        put(&mut model, "pull.down.half", "25");
        // Nor does what the door does give any beside them.
        put(&mut model, "does.low", "drops");
        says(&model, turns, false);
        says(&model, said, true);
        // Within what the scale may be off, they may be the same.
        put(&mut model, "pull.down.half", "16");
        says(&model, said, false);
    }
}

/// What was typed in inches and pounds is that in every unit: in its field, in the record, and in
/// what follows from it.
#[test]
fn another_unit_changes_no_reading_and_no_weight() {
    let mut model = speaking(Language::English);
    let typed = [
        ("order.width", "92"),
        ("order.height", "90"),
        ("order.header", "9"),
        ("order.bow", "1 1/4"),
        ("weight", "132"),
        ("drum", "12 1/2"),
        ("pull.up.low", "20"),
        ("pull.down.low", "14 lb"),
        ("check.hinge-left", "1/4"),
        ("built.track-low", "92 1/4"),
        ("again.width.middle", "92 1/8"),
        ("radius", "about 4"),
        ("preload", "3"),
    ];
    for (name, value) in typed {
        put(&mut model, name, value);
    }
    let before = model.record.clone();
    put(&mut model, "unit", "mm");
    for (name, text) in [
        ("order.width", "92 in"),
        ("weight", "132 lb"),
        ("drum", "12 1/2 in"),
        ("pull.up.low", "20 lb"),
        ("pull.down.low", "14 lb"),
        ("again.width.middle", "92 1/8 in"),
        ("radius", "about 4"),
        ("preload", "3"),
    ] {
        assert_eq!(model.fields.get(name), text, "{name}");
    }
    let place = Place::TrackLow;
    assert_eq!(model.record.built.text(place), "92 1/4 in");
    assert_eq!(model.record.weight, before.weight);
    assert_eq!(model.record.inspection, before.inspection);
    let told = go(&mut model, Step::Spring);
    assert!(told.contains("60 kg") && told.contains("318 mm"), "{told}");
    put(&mut model, "unit", "in");
    assert_eq!(model.fields.get("weight"), "132 lb");
    assert_eq!(model.record.built.read(place, Unit::Inch), before.built.read(place, Unit::Inch));
}

/// Nobody winds a spring by the usual figures in place of those that were typed and not read.
#[test]
fn what_is_typed_and_not_understood_is_not_the_usual() {
    for (name, wrong) in [
        ("weight", "heavy"),
        ("drum", "about 12"),
        ("drum", "12"),
        ("preload", "lots"),
        ("preload", "31/4"),
        ("turns", "121/4"),
    ] {
        let mut model = opened(Unit::Inch);
        if name != "weight" {
            put(&mut model, "weight", "132");
        }
        put(&mut model, name, wrong);
        let shown = go(&mut model, Step::Spring);
        let count = shown.contains("class=\"value\"");
        match (name, wrong) {
            ("drum", "12") => assert!(count && shown.contains("id=\"balance-desc\""), "{shown}"),
            _ => {
                assert!(!shown.contains("id=\"balance-desc\""), "{name} {wrong}: {shown}");
                assert_eq!(count, matches!(name, "weight" | "turns"), "{name}: {shown}");
                assert!(shown.contains("class=\"verdict-line stop\""), "{name}: {shown}");
            }
        }
    }
}

/// Nor does a door pass by the usual figures in place of those.
#[test]
fn a_door_passes_by_what_was_typed_or_by_nothing() {
    let mut model = opened(Unit::Inch);
    assert!(go(&mut model, Step::Overhead).contains("The door passes."));
    for (name, wrong) in
        [("radius", "tight"), ("panel", "12 14"), ("slope", "45"), ("slope", "a little")]
    {
        put(&mut model, name, wrong);
        let shown = view(&model);
        assert!(!shown.contains("The door passes."), "{name} {wrong}: {shown}");
        assert!(shown.contains("class=\"verdict-line stop\""), "{name} {wrong}: {shown}");
        put(&mut model, name, "");
        assert!(view(&model).contains("The door passes."), "{name}");
    }
}

#[test]
fn a_day_to_come_and_a_count_beyond_are_told_and_not_noted() {
    let mut model = opened(Unit::Inch);
    put(&mut model, "hung", "2062-11-01");
    put(&mut model, "per-day", "70000");
    let shown = go(&mut model, Step::Care);
    assert_eq!((model.record.hung, model.record.per_day), (None, None));
    assert!(shown.contains("nothing below 2000-01-01 or above 2026-12-01 is taken"), "{shown}");
    assert!(shown.contains("nothing below 0 or above 65535 is taken"), "{shown}");
    put(&mut model, "per-day", "99999999999999999999");
    assert!(go(&mut model, Step::Care).contains("above 65535"));
    put(&mut model, "service.work", "lubrication");
    put(&mut model, "service.date", "2062-11-01");
    press(&mut model, &Action::AddService);
    assert!(model.record.services.is_empty());
    for (name, value) in
        [("service.date", "2026-11-30"), ("hung", "2026-12-01"), ("per-day", "65535")]
    {
        put(&mut model, name, value);
    }
    press(&mut model, &Action::AddService);
    assert_eq!(model.record.services.len(), 1);
    assert_eq!((model.record.hung, model.record.per_day), (Some(hanging::TODAY), Some(65535)));
    assert!(!go(&mut model, Step::Care).contains("is taken"));
}
