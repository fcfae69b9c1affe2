//! A profile filled in, opened, changed; the form against the schema.

use std::collections::BTreeSet;

use super::*;
use crate::event::Event;
use hangtrue_core::Spot;
use hangtrue_core::say::Speaker;

#[path = "../../../core/tests/say/properties.rs"]
mod properties;

const SCHEMA: &str = include_str!("../../../../tests/goldens/schema/profile.json");
const PRAIRIE: &str = include_str!("../../../../demo/profiles/prairie.json");
const BOREAL: &str = include_str!("../../../../demo/profiles/boreal.json");

fn model() -> Model {
    let snippet = "src=\"embed/a.js\" script-src HOST".to_owned();
    let base = "https://d.example/doors/builder.html".to_owned();
    let environment = Environment { base, ..Environment::default() };
    Model::new(environment, &Given { schema: SCHEMA.to_owned(), snippet })
}

fn fill(model: &mut Model, name: &str, value: &str) -> Vec<Effect> {
    update(model, Event::Input { name: name.into(), value: value.into() })
}

fn press(model: &mut Model, code: &str) -> Vec<Effect> {
    update(model, Event::Press(code.into()))
}

#[test]
fn a_name_is_all_that_a_profile_needs() {
    let mut model = model();
    assert_eq!(model.fault().map(|fault| fault.fault.code()), Some("missing-key"));
    let effects = fill(&mut model, "name", "Demo Doors");
    assert_eq!(model.fault(), None);
    let [Effect::Show(file), Effect::AskBeforeLeaving(true)] = effects.as_slice() else {
        panic!("{effects:?}")
    };
    assert_eq!(file, r#"{"format":"hangtrue-profile/1","revision":1,"name":"Demo Doors"}"#);
}

/// The browser asks before what was filled in is left, until it has been downloaded.
#[test]
fn what_is_not_downloaded_is_not_left_without_a_question() {
    let mut model = model();
    fill(&mut model, "name", "Demo Doors");
    assert!(!fill(&mut model, "name", "Demo").contains(&Effect::AskBeforeLeaving(true)));
    // The lines for a webmaster are not the profile.
    assert_eq!(press(&mut model, "downloaded:snippet.html"), []);
    assert_eq!(press(&mut model, "downloaded:profile.json"), [Effect::AskBeforeLeaving(false)]);
    assert!(fill(&mut model, "name", "Demo Doors").contains(&Effect::AskBeforeLeaving(true)));
    // A file that is opened is still where it was.
    let opened = update(&mut model, Event::Open(PRAIRIE.into()));
    assert!(opened.contains(&Effect::AskBeforeLeaving(false)), "{opened:?}");
    assert!(fill(&mut model, "name", "").contains(&Effect::AskBeforeLeaving(true)));
}

/// A dealer who chooses a closing reading reads what the person with the tape will read.
#[test]
fn a_place_is_named_as_the_walk_names_it() {
    for language in Language::ALL {
        let mut model = model();
        model.environment.language = language;
        press(&mut model, "fold:closing");
        let shown = view(&model);
        let speaker = Speaker { language, ..Speaker::default() };
        for spot in [Spot::DiagonalRising, Spot::LoopSillToBow] {
            let name = ["<span>", speaker.spot(spot), "</span>"].concat();
            assert!(shown.contains(&name), "{name}: {shown}");
        }
    }
}

#[test]
fn every_field_puts_its_kind_and_what_is_emptied_goes() {
    let mut model = model();
    fill(&mut model, "name", "Demo Doors");
    fill(&mut model, "limits.width.most", "96 in");
    fill(&mut model, "limits.width.reason", "panels");
    fill(&mut model, "limits.width.stop", "true");
    fill(&mut model, "costs.miss", "1800");
    fill(&mut model, "costs.minute", "0.75");
    press(&mut model, "toggle:closing:loop.sill_to_bow");
    press(&mut model, "add:doors");
    fill(&mut model, "doors.0.key", "rail");
    fill(&mut model, "doors.0.name", "Rail");
    press(&mut model, "split:doors.0.name");
    fill(&mut model, "doors.0.name.es", "Riel");
    assert_eq!(model.fault(), None);
    let profile = model.profile.clone().unwrap();
    assert!(profile.rulings[0].stop && profile.costs.miss == 1800.0);
    assert_eq!(profile.doors[0].name.in_language("es"), "Riel");
    press(&mut model, "join:doors.0.name");
    assert_eq!(model.profile.clone().unwrap().doors[0].name.in_language("es"), "Rail");
    for name in [
        "limits.width.most",
        "limits.width.reason",
        "limits.width.stop",
        "costs.miss",
        "costs.minute",
    ] {
        fill(&mut model, name, "");
    }
    press(&mut model, "toggle:closing:loop.sill_to_bow");
    press(&mut model, "remove:doors.0");
    let file = model.file();
    for gone in ["limits", "costs", "closing", "doors"] {
        assert!(!file.contains(gone), "{file}");
    }
}

#[test]
fn a_blank_form_is_not_wrong_until_something_is_typed() {
    let mut model = model();
    let stop = "summary stop";
    let blank = view(&model);
    assert!(blank.contains("Type your business") && !blank.contains(stop), "{blank}");
    assert!(!blank.contains("download="), "it has no name yet");
    update(&mut model, Event::Open("no json".to_owned()));
    assert!(!view(&model).contains("has no &quot;name") && model.unread.is_some());
    fill(&mut model, "unit", "mm");
    assert!(view(&model).contains(stop) && !view(&model).contains("download="));
    fill(&mut model, "unit", "");
    assert!(view(&model).contains(stop), "what is taken back was typed");
}

#[test]
fn lengths_to_choose_are_written_as_people_write_them() {
    for (language, shown) in [
        (Language::English, "<span>1/16 in</span>"),
        (Language::Spanish, "<span>1/16\u{a0}pulg</span>"),
        (Language::French, "<span>1/16\u{a0}po</span>"),
    ] {
        let mut model = model();
        press(&mut model, &["speak:", language.key()].concat());
        let markup = view(&model);
        assert!(markup.contains(shown) && markup.contains("value=\"1/16 in\""), "{language:?}");
    }
}

#[test]
fn a_pair_of_colors_too_close_is_refused_with_its_ratio() {
    let mut model = model();
    fill(&mut model, "name", "Demo Doors");
    for (name, value) in
        [("ink", "#777777"), ("paper", "#ffffff"), ("accent", "#ffc914"), ("on_accent", "#000000")]
    {
        fill(&mut model, &["colors.light.", name].concat(), value);
    }
    assert_eq!(model.fault().map(|fault| fault.fault.code()), Some("low-contrast"));
    press(&mut model, "go:colors.light");
    let markup = view(&model);
    assert!(markup.contains("4.47 to 1") && !markup.contains("download="), "{markup}");
    let effects = fill(&mut model, "colors.light.ink", "#767676");
    assert!(matches!(effects.as_slice(), [Effect::Show(_)]) && view(&model).contains("download="));
}

#[test]
fn an_opened_profile_is_edited_and_keeps_what_no_field_shows() {
    for file in [PRAIRIE, BOREAL] {
        let mut model = model();
        update(&mut model, Event::Open(file.to_owned()));
        assert_eq!(model.fault(), None);
        let same = json::parse(file).unwrap().into_owned();
        assert_eq!(json::parse(&model.file()).unwrap(), same, "untouched, it is the same file");
        let before = parse(file).unwrap();
        fill(&mut model, "revision", "99");
        let after = model.profile.clone().unwrap();
        assert_eq!(after, Profile { revision: 99, ..before });
    }
    let mut model = model();
    let strange =
        r#"{"format":"hangtrue-profile/1","name":"D","revision":1,"strange":[1.50,{"a":null}]}"#;
    update(&mut model, Event::Open(strange.to_owned()));
    assert_eq!(model.fault().map(|fault| fault.fault.code()), Some("unknown-key"));
    fill(&mut model, "unit", "mm");
    assert!(model.file().contains("1.50") && model.file().contains("\"mm\""));
    update(&mut model, Event::Open("no json".to_owned()));
    assert!(model.unread.is_some() && model.file().contains("strange"));
}

/// A key of the format that is new has its field without a line written for it.
#[test]
fn the_form_has_every_key_of_the_schema_and_a_new_one_by_itself() {
    let mut model = model();
    update(&mut model, Event::Open(PRAIRIE.to_owned()));
    for group in
        ["limits.repeat", "doors.1.track", "questions.0.choices", "colors.dark", "contact", "texts"]
    {
        press(&mut model, &["go:", group].concat());
    }
    let markup = view(&model);
    let schema = json::parse(SCHEMA).unwrap();
    let json::Value::Object(keys) = &schema.get("properties").unwrap().value else { panic!() };
    for key in keys.iter().map(|entry| &entry.key).filter(|key| *key != "format") {
        let named = [format!("id=\"{key}\""), format!("name=\"{key}\"")];
        assert!(named.iter().any(|named| markup.contains(named)), "{key} has no field");
    }
    for path in [
        "limits.repeat.reason",
        "doors.1.track.slope",
        "questions.0.choices.2.label.es",
        "colors.dark.stop",
        "contact.sms",
        "texts.send",
    ] {
        assert!(markup.contains(&format!("name=\"{path}\"")), "{path}");
    }
    let new =
        SCHEMA.replace("\"take\": {", "\"insurance_years\": {\"type\":\"integer\"},\n\"take\": {");
    assert_ne!(new, SCHEMA);
    let mut model =
        Model::new(Environment::default(), &Given { schema: new, snippet: String::new() });
    assert!(view(&model).contains("Insurance years"));
    fill(&mut model, "insurance_years", "3");
    assert!(model.file().contains("\"insurance_years\": 3"));
}

#[test]
fn the_lines_name_the_address_and_the_fault_its_field() {
    let mut model = model();
    assert_eq!(
        model.snippet(),
        "src=\"https://d.example/doors/embed/a.js\" script-src https://d.example"
    );
    fill(&mut model, "name", "D");
    fill(&mut model, "limits.height.least", "9 ft");
    fill(&mut model, "limits.height.most", "8 ft");
    fill(&mut model, "limits.height.reason", "r");
    assert_eq!(model.fault().map(|fault| fault.place.as_str()), Some("limits.height"));
    assert!(view(&model).contains("data-act=\"go:limits.height\""));
    let effects = press(&mut model, "go:limits.height");
    assert_eq!(effects, [Effect::Page(crate::Effect::Focus("limits.height".into()))]);
}

#[test]
fn no_press_and_no_path_makes_it_panic() {
    let mut model = model();
    for code in [
        "add:",
        "remove:",
        "remove:doors",
        "remove:doors.7",
        "toggle:x",
        "split:name",
        "join:zzz.1",
        "split:doors.0.9",
        "add:name",
        "go:",
        ":",
        "toggle:name:x",
    ] {
        press(&mut model, code);
        fill(&mut model, code, code);
        let _ = view(&model);
    }
}

/// What the schema says and every key, in each language; and nothing that it no longer says.
#[test]
fn each_language_has_every_text_of_the_schema_and_no_other() {
    fn collect(node: &Node<'_>, texts: &mut BTreeSet<String>, keys: &mut BTreeSet<String>) {
        match &node.value {
            json::Value::Object(entries) => {
                if let Some(text) = node.get("description").and_then(Node::as_text) {
                    texts.insert(text.to_owned());
                }
                if let Some(json::Value::Object(own)) = node.get("properties").map(|own| &own.value)
                {
                    keys.extend(own.iter().map(|entry| entry.key.clone().into_owned()));
                }
                if let Some(json::Value::List(all)) = node.get("enum").map(|all| &all.value) {
                    let words = all.iter().filter_map(Node::as_text);
                    // A number with a unit, and the format, are the same in every language.
                    let words = words.filter(|word| word.len() > 2 && !word.contains([' ', '/']));
                    keys.extend(words.map(str::to_owned));
                }
                entries.iter().for_each(|entry| collect(&entry.node, texts, keys));
            }
            json::Value::List(items) => items.iter().for_each(|item| collect(item, texts, keys)),
            _ => {}
        }
    }
    let (mut texts, mut keys) = (BTreeSet::new(), BTreeSet::new());
    collect(&json::parse(SCHEMA).unwrap(), &mut texts, &mut keys);
    keys.remove("format");
    keys.extend(["in", "mm"].map(str::to_owned));
    // The walk's own names.
    keys.retain(|key| Spot::from_key(key).is_none());
    // English has the key itself for a label, or better words; a value that can be chosen and
    // is no word by itself has better words.
    let known: Vec<_> = text::of(Language::English).labels.iter().map(|(key, _)| *key).collect();
    assert!(known.iter().all(|key| keys.contains(*key)), "{known:?}");
    for key in keys.iter().filter(|key| key.contains(['.', '-'])) {
        assert!(known.contains(&key.as_str()), "{key}");
    }
    for language in [Language::Spanish, Language::French] {
        let words = text::of(language);
        for (table, expected) in [(words.about, &texts), (words.labels, &keys)] {
            let known: BTreeSet<String> = table.iter().map(|(key, _)| (*key).to_owned()).collect();
            assert_eq!(known.len(), table.len(), "{language:?}: one twice");
            let missing: Vec<_> = expected.difference(&known).collect();
            let needless: Vec<_> = known.difference(expected).collect();
            assert!(
                missing.is_empty() && needless.is_empty(),
                "{language:?}: {missing:?} {needless:?}"
            );
            for (_, said) in table {
                properties::well_set(said, language);
            }
        }
        for (english, said) in words.about {
            // A text's own examples, and what an e-mail address or a mark is called.
            properties::alike(english, said, language);
        }
    }
}

/// The whole form in a language, with an error in it; what is chosen stays chosen.
#[test]
fn the_form_speaks_each_language_and_keeps_what_is_in_it() {
    let mut model = model();
    update(&mut model, Event::Open(PRAIRIE.to_owned()));
    let file = model.file();
    for (key, heading, problem) in [
        ("es", "Perfil de un distribuidor", "2.81"),
        ("fr", "Profil d’un distributeur", "2,81"),
        ("en", "A dealer's profile", "2.81"),
    ] {
        let effects = press(&mut model, &["speak:", key].concat());
        let [
            Effect::Page(crate::Effect::Speak(language, title)),
            Effect::Page(crate::Effect::Remember(_)),
        ] = effects.as_slice()
        else {
            panic!("{effects:?}")
        };
        assert!(language.key() == key && title.contains(heading), "{title}");
        assert_eq!(model.file(), file, "a language changes nothing in the profile");
        fill(&mut model, "colors.light.ink", "#8a9a8c");
        let markup = view(&model);
        assert!(markup.contains(heading) && markup.contains(problem), "{key}: {markup}");
        fill(&mut model, "colors.light.ink", "#1d2b1f");
    }
}
