//! The page in each language: the whole walk, the desk, the paper; the same numbers in each,
//! and nothing left over from another.

#![allow(clippy::unwrap_used, missing_docs)]

use hangtrue_core::judge::{SlipKind, Why};
use hangtrue_core::say::Language;
use hangtrue_core::{Dimension, Length, Spot};
use hangtrue_page::desk::ask::Ask;
use hangtrue_page::text::desk::Desk;
use hangtrue_page::text::hang::Hang;
use hangtrue_page::text::{Later, Text};
use hangtrue_page::{Effect, Environment, Event, Model, Step, desk, update, view};

#[path = "../../core/tests/say/properties.rs"]
mod properties;

use properties::{alike, well_set};

const OTHERS: [Language; 2] = [Language::Spanish, Language::French];

/// Words that are the same in two languages, and right in both.
const SAME: [&str; 9] =
    ["abc", "123", "w", "No", "Date", "Dimension", "Options", "Signature", "Balance"];

/// Every constant text of a catalogue, in its order: what stands between quotation marks when
/// it prints itself.
fn constants(debug: &str) -> Vec<String> {
    let mut all = Vec::new();
    let mut rest = debug;
    while let Some((_, text)) = rest.split_once('"') {
        let end = text
            .char_indices()
            .find(|(at, letter)| *letter == '"' && !text[..*at].ends_with('\\'))
            .map_or(text.len(), |(at, _)| at);
        all.push(text[..end].replace("\\\"", "\"").replace("\\u{a0}", "\u{a0}"));
        rest = &text[end + 1..];
    }
    all
}

fn catalogues_agree(catalogue: impl Fn(Language) -> String) {
    let english = constants(&catalogue(Language::English));
    for language in OTHERS {
        let other = constants(&catalogue(language));
        assert_eq!(english.len(), other.len());
        for (source, said) in english.iter().zip(&other) {
            // Colons and quotation marks, each language's own.
            if !source.chars().any(char::is_alphanumeric) {
                continue;
            }
            well_set(said.trim(), language);
            if !SAME.contains(&said.as_str()) {
                alike(source, said, language);
            }
        }
    }
}

#[test]
fn every_constant_is_said_in_every_language() {
    catalogues_agree(|language| format!("{:?}", Text::of(language)));
    catalogues_agree(|language| format!("{:?}", Later::of(language)));
    catalogues_agree(|language| format!("{:?}", Desk::of(language)));
    catalogues_agree(|language| {
        format!("{:?}", Hang::of(language)).replace("language: English", "")
    });
    for dimension in Dimension::ALL {
        catalogues_agree(|language| format!("{:?}", (Text::of(language).dimension)(dimension)));
    }
    for spot in Spot::ALL {
        catalogues_agree(|language| format!("{:?}", (Text::of(language).place)(spot)));
    }
}

/// The text of a screen: what stands between its tags, and in the attributes that are read.
fn texts(markup: &str) -> Vec<String> {
    let mut all = Vec::new();
    for piece in markup.split('<').skip(1) {
        let (tag, text) = piece.split_once('>').unwrap();
        if let Some((_, label)) = tag.split_once("aria-label=\"") {
            all.push(label.split('"').next().unwrap().to_owned());
        }
        all.push(text.replace("&quot;", "\"").replace("&amp;", "&").replace("&lt;", "<"));
    }
    all.retain(|text| text.chars().any(char::is_alphanumeric));
    all
}

/// The pieces of a screen that may be the same in two languages: names, units, numbers, a
/// link, letters and the spelling words of ICAO.
fn own(text: &str) -> bool {
    let words = ["Hangtrue", "English", "Español", "Français", "in", "mm", "po", "pulg", "lb"];
    let letters = text.chars().all(|letter| letter.is_ascii_uppercase());
    let spelled = text.trim().split(", ").count() > 3;
    words.contains(&text.trim())
        || SAME.contains(&text)
        || letters
        || spelled
        || text.chars().any(|letter| letter.is_ascii_digit())
        || text.starts_with("https://")
}

fn alike_screens(english: &Model, other: &Model) {
    let (source, said) = (view(english), view(other));
    let language = other.environment.language;
    let (source, said) = (texts(&source), texts(&said));
    assert_eq!(source.len(), said.len(), "{:?}: {source:#?} / {said:#?}", other.step);
    for (source, said) in source.iter().zip(&said) {
        if !own(source) {
            assert_ne!(source, said, "{language:?} at {:?}", other.step);
        }
        // A link and a spoken code hold digits of their own.
        let digits = |text: &str| text.chars().filter(char::is_ascii_digit).collect::<String>();
        if !source.contains("https://") {
            assert_eq!(digits(source), digits(said), "{language:?}: {source} / {said}");
        }
    }
}

fn model(language: Language) -> Model {
    let base = "https://d.example/".to_owned();
    Model::new(Environment { base, language, ..Environment::default() })
}

/// Both models through the same events, compared after each.
fn both(events: &[Event], language: Language) -> (Model, Model) {
    let (mut english, mut other) = (model(Language::English), model(language));
    alike_screens(&english, &other);
    for event in events {
        update(&mut english, event.clone());
        update(&mut other, event.clone());
        assert_eq!(english.step, other.step);
        alike_screens(&english, &other);
    }
    (english, other)
}

fn press(code: &str) -> Event {
    Event::Press(code.to_owned())
}

fn typed(name: &str, value: &str) -> Event {
    Event::Input { name: name.to_owned(), value: value.to_owned() }
}

/// The whole walk, with everything that can be said on the way: a text that is no reading, a
/// shallow header, a narrow post, a bent frame, a reading that does not fit.
fn walk() -> Vec<Event> {
    let mut events = vec![
        press("next"),
        typed("old-door", "yes"),
        typed("prepared", "no"),
        typed("post.left", "1 1/2"),
        press("next"),
        press("next"),
        press("next"),
        typed("width.low", "961/4"),
        press("next"),
        typed("width.low", "92 1/4"),
        typed("width.middle", "92 3/16"),
        typed("width.high", "93 1/4"),
        press("next"),
        press("next"),
        typed("height.center", "101 1/2"),
        press("next"),
        typed("header.center", "5"),
        press("next"),
        press("next"),
        typed("bow.first", "1 1/4"),
        press("next"),
        press("next"),
    ];
    events.extend([press("skip"), press("skip"), press("skip"), press("skip"), press("skip")]);
    events.extend([press("go:check"), press("next"), press("go:send"), press("go:voice")]);
    events
}

#[test]
fn the_whole_walk_says_the_same_in_every_language() {
    for language in OTHERS {
        let (_, other) = both(&walk(), language);
        assert_eq!(other.step, Step::Voice);
        // An order that can be sent: the link, the voice, the code, the paper.
        let mut clear = vec![press("next"), typed("prepared", "yes"), press("next")];
        for (name, value) in [
            ("width.middle", "92 3/16"),
            ("height.center", "101 1/2"),
            ("header.center", "9 1/2"),
            ("bow.first", "1 1/4"),
        ] {
            clear.extend([typed(name, value), press("next")]);
        }
        clear.extend(vec![press("skip"); 8]);
        clear.extend([press("go:send"), typed("note", "7"), press("go:scan"), press("go:voice")]);
        let (english, other) = both(&clear, language);
        assert!(english.against(&english.report()).is_empty());
        // The dealer sees it in the dealer's language, whatever the writer's was.
        let link = hangtrue_link::url("https://d.example/", &other.sent(other.report().verdict));
        let (sender, reader) = both(&[Event::Open(link.unwrap())], language);
        assert_eq!(sender.step, Step::Opened);
        assert_eq!(sender.opened, reader.opened);
        assert_eq!(reader.opened.unwrap().unwrap().language, language.key());
        let _ = both(&[Event::Open("https://d.example/#1ABC".to_owned())], language);
    }
}

#[test]
fn a_change_in_the_middle_loses_nothing() {
    let mut model = model(Language::English);
    for event in &walk()[..11] {
        update(&mut model, event.clone());
    }
    update(&mut model, Event::Focus("width.middle".to_owned()));
    let before = model.clone();
    for language in [Language::French, Language::Spanish, Language::English] {
        let effects = update(&mut model, press(&["speak:", language.key()].concat()));
        assert!(matches!(&effects[..], [Effect::Speak(to, title), Effect::Remember(kept)]
            if *to == language && *kept == language && !title.is_empty()));
        assert_eq!(model.environment.language, language);
        assert!(view(&model).contains("value=\"92 1/4\""));
    }
    assert_eq!(model, before);
}

/// A key and a suggestion write as the language does.
#[test]
fn what_a_button_types_is_written_as_people_write() {
    let mut model = model(Language::French);
    update(&mut model, typed("unit", "mm"));
    update(&mut model, press("go:width"));
    update(&mut model, typed("width.low", "2443,5"));
    update(&mut model, Event::Focus("width.low".to_owned()));
    update(&mut model, press("nudge:1000000"));
    assert_eq!(model.order.survey.entries(Spot::WidthLow)[0].text, "2444,5");
    update(&mut model, typed("width.low", "96 1/4"));
    update(&mut model, press("next"));
    let screen = view(&model);
    assert!(screen.contains("data-act=\"use:width.low:96 1/4 po\""), "{screen}");
    update(&mut model, press("use:width.low:96 1/4 po"));
    let read = model.order.survey.entries(Spot::WidthLow)[0].read.clone();
    assert_eq!(read, Ok(Length::from_sixteenths(1540)));
}

#[test]
fn the_desk_says_the_same_in_every_language() {
    for language in OTHERS {
        let make = |language| {
            let environment = Environment { language, ..Environment::default() };
            desk::boot(environment, "").0
        };
        let (mut english, mut other) = (make(Language::English), make(language));
        for event in [
            typed("width.middle", "961/4"),
            typed("width.middle", "92 3/16"),
            typed("height.center", "101 1/2"),
            typed("header.center", "5"),
            typed("bow.first", "1 1/4"),
            typed("heard", "Alfa Bravo"),
            press("stands"),
        ] {
            desk::update(&mut english, event.clone().into());
            desk::update(&mut other, event.into());
            let (source, said) = (texts(&desk::view(&english)), texts(&desk::view(&other)));
            assert_eq!(source.len(), said.len(), "{source:#?} / {said:#?}");
            for (source, said) in source.iter().zip(&said).filter(|(source, _)| !own(source)) {
                assert_ne!(source, said);
            }
        }
        let effects = desk::update(&mut other, Event::Press("speak:en".to_owned()).into());
        assert_eq!(effects.len(), 2);
        assert_eq!(desk::view(&other), desk::view(&english));
    }
}

#[test]
fn every_question_is_put_in_every_language() {
    let (first, second) = (Length::from_sixteenths(1531), Length::from_sixteenths(1547));
    let (spot, value) = (Spot::WidthMiddle, first);
    let mut asks = vec![
        Ask::SayAgain { spot, text: "961/4".to_owned() },
        Ask::Digits { spot, value },
        Ask::BetweenPosts(value),
        Ask::ToHeader(value),
        Ask::RoofOrBow { header: value, bow: None },
        Ask::BowFrom(value),
        Ask::Build(value),
        Ask::Unusual { spot, value },
        Ask::ReadAgain(vec![spot]),
        Ask::ReadAgain(vec![spot, Spot::HeaderLeft]),
        Ask::Nothing,
    ];
    for dimension in Dimension::ALL {
        asks.push(Ask::Say(dimension));
        let (first_value, second_value) = (first, second);
        let width = Dimension::Width;
        asks.push(Ask::Which { first: width, first_value, second: dimension, second_value });
    }
    asks.push(Ask::Required(spot));
    for why in [Why::Settles, Why::Again, Why::ChecksOne, Why::ChecksSeveral, Why::Missing] {
        asks.push(Ask::Take { spot, why, checks: vec![Dimension::Width, Dimension::Bow] });
    }
    for slip in [SlipKind::Digit, SlipKind::Units, SlipKind::SixteenthsEighths, SlipKind::Other] {
        asks.push(Ask::Meant { spot, said: first, meant: second, slip });
    }
    asks.push(Ask::Misheard { spot, said: first, meant: second });
    for ask in asks {
        // A new kind of question has to be thought of above.
        match &ask {
            Ask::SayAgain { .. }
            | Ask::Say(_)
            | Ask::Digits { .. }
            | Ask::Which { .. }
            | Ask::BetweenPosts(_)
            | Ask::ToHeader(_)
            | Ask::RoofOrBow { .. }
            | Ask::BowFrom(_)
            | Ask::Build(_)
            | Ask::Meant { .. }
            | Ask::Misheard { .. }
            | Ask::ReadAgain(_)
            | Ask::Unusual { .. }
            | Ask::Take { .. }
            | Ask::Required(_)
            | Ask::Nothing => {}
        }
        let say = |language| {
            let speaker = hangtrue_core::say::Speaker { language, ..Default::default() };
            (Desk::of(language).ask)(&ask, speaker)
        };
        for language in OTHERS {
            alike(&say(Language::English), &say(language), language);
            well_set(&say(language), language);
        }
    }
}

/// Every screen of hanging a door, with something typed in every field that can be typed in.
#[test]
fn hanging_a_door_says_the_same_in_every_language() {
    use hangtrue_page::hang;
    let order = {
        let mut model = model(Language::English);
        for (name, value) in [
            ("width.middle", "92"),
            ("height.center", "90"),
            ("header.center", "9"),
            ("bow.first", "1 1/4"),
        ] {
            update(&mut model, typed(name, value));
        }
        hangtrue_link::url("https://d.example/hang.html", &model.order).unwrap()
    };
    let begin = |language| {
        let environment = Environment { language, ..Environment::default() };
        let (_, fragment) = order.split_once('#').unwrap();
        hang::boot(environment, hang::Arrival { href: &order, fragment, ..Default::default() }).0
    };
    for language in OTHERS {
        let (mut english, mut other) = (begin(Language::English), begin(language));
        for step in hang::Step::ALL {
            let to = Event::Navigate(["/", step.slug()].concat());
            hang::update(&mut english, hang::Event::Page(to.clone()));
            hang::update(&mut other, hang::Event::Page(to));
            for round in 0..2 {
                let (source, said) = (hang::view(&english), hang::view(&other));
                let fields = source.split("name=\"").skip(1);
                let fields: Vec<String> =
                    fields.map(|rest| rest.split('"').next().unwrap().to_owned()).collect();
                let (source, said) = (texts(&source), texts(&said));
                assert_eq!(source.len(), said.len(), "{step:?}: {source:#?} / {said:#?}");
                for (source, said) in source.iter().zip(&said).filter(|(source, _)| !own(source)) {
                    assert_ne!(source, said, "{language:?} at {step:?}");
                }
                for name in fields.iter().filter(|name| round == 0 && *name != "unit") {
                    hang::update(&mut english, hang::Event::Page(typed(name, "12 1/4")));
                    hang::update(&mut other, hang::Event::Page(typed(name, "12 1/4")));
                }
            }
        }
    }
}
