//! Orders to send: invented ones by name, and any order at all.

#![allow(dead_code, reason = "each test uses its part")]

use hangtrue_core::check::Verdict;
use hangtrue_core::order::{Answer, Confirmed, Date, Order};
use hangtrue_core::{Spot, Survey, Unit};
use proptest::prelude::*;

/// A survey of `readings`.
pub(crate) fn survey(unit: Unit, readings: &[(Spot, &str)]) -> Survey {
    let mut survey = Survey::new(unit);
    survey.prepared = true;
    for (spot, text) in readings {
        survey.add(*spot, text);
    }
    survey
}

const FOUR: [(Spot, &str); 4] = [
    (Spot::WidthMiddle, "92 3/16"),
    (Spot::HeightCenter, "101 1/2"),
    (Spot::HeaderCenter, "9 1/2"),
    (Spot::BowFirst, "1 1/4"),
];

const ELEVEN: [(Spot, &str); 11] = [
    (Spot::WidthLow, "92 1/4"),
    (Spot::WidthMiddle, "92 3/16"),
    (Spot::WidthHigh, "92 1/4"),
    (Spot::HeightLeft, "101 1/2"),
    (Spot::HeightCenter, "101 9/16"),
    (Spot::HeightRight, "101 1/2"),
    (Spot::HeaderCenter, "9 1/2"),
    (Spot::BowFirst, "1 1/4"),
    (Spot::DiagonalRising, "137"),
    (Spot::DiagonalFalling, "137 1/16"),
    (Spot::LoopSillToBow, "109 3/4"),
];

/// An order of eleven readings as they are usually sent.
pub(crate) fn demo() -> Order {
    Order {
        survey: survey(Unit::Inch, &ELEVEN),
        claimed: Verdict::Clear,
        old_door_in: Some(false),
        vehicle: "unit 27".to_owned(),
        profile: Some(("Demo Doors".to_owned(), 4)),
        language: "en".to_owned(),
        date: Some(Date { year: 2026, month: 11, day: 25 }),
        ..Order::default()
    }
}

/// The orders of `tests/vectors/link-v1.csv`, by name.
pub(crate) fn golden() -> Vec<(&'static str, Order)> {
    let english = || Order { language: "en".to_owned(), ..Order::default() };
    let mut struck = survey(Unit::Inch, &FOUR);
    struck.add(Spot::WidthMiddle, "92 1/4");
    struck.entries_mut(Spot::WidthMiddle)[0].struck = true;
    struck.prepared = false;
    let words = survey(
        Unit::Inch,
        &[
            (Spot::WidthLow, "ninety six and a quarter"),
            (Spot::WidthMiddle, "96¼\""),
            (Spot::WidthHigh, "8' 0 1/4\""),
            (Spot::HeightLeft, "961/4"),
            (Spot::HeaderLeft, "240,5 mm"),
            (Spot::HeaderCenter, "9.5"),
            (Spot::BowFirst, ""),
            (Spot::BowSecond, "  1 1/4  "),
            (Spot::PostLeft, "2 37/64"),
            (Spot::PostRight, "2 8/16"),
        ],
    );
    let metric = survey(
        Unit::Millimetre,
        &[
            (Spot::WidthLow, "2286"),
            (Spot::WidthMiddle, "2285.5"),
            (Spot::HeightCenter, "2261 mm"),
            (Spot::HeaderCenter, "24.2 cm"),
            (Spot::BowFirst, "32"),
            (Spot::LoopSillToRoof, "2.503 m"),
        ],
    );
    vec![
        ("nothing", Order::default()),
        ("four-numbers", Order { survey: survey(Unit::Inch, &FOUR), ..english() }),
        ("eleven-readings", demo()),
        (
            "re-read",
            Order {
                survey: struck,
                claimed: Verdict::Recheck,
                confirmed: vec![
                    Confirmed { rule: "unusual-bow".to_owned(), spot: Some(Spot::BowFirst) },
                    Confirmed { rule: "spread".to_owned(), spot: None },
                    Confirmed { rule: "of a later day".to_owned(), spot: Some(Spot::PostRight) },
                ],
                old_door_in: Some(true),
                ..english()
            },
        ),
        ("any-spelling", Order { survey: words, claimed: Verdict::Stop, ..english() }),
        ("metric", Order { survey: metric, language: "es".to_owned(), ..Order::default() }),
        (
            "every-field",
            Order {
                vehicle: "Flatbed Nº 7 — “ÄÖÜ”".to_owned(),
                note: "Dock side is bent.\nCall before 9; ask for the shop, not the office."
                    .to_owned(),
                contact: "yard@carrier.example".to_owned(),
                answers: vec![
                    Answer { question: "side-seals".to_owned(), answer: "yes".to_owned() },
                    Answer { question: "clip-offset".to_owned(), answer: "1 1/2 in".to_owned() },
                ],
                profile: Some((String::new(), u32::MAX)),
                language: "fr-CA".to_owned(),
                date: Some(Date { year: 2255, month: 12, day: 31 }),
                ..demo()
            },
        ),
    ]
}

/// A text as people type it, or anything at all.
fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => "[ -~]{0,24}",
        1 => "\\PC{0,24}",
        1 => any::<String>(),
        1 => "[a-z ]{200,300}",
    ]
}

fn typed() -> impl Strategy<Value = String> {
    prop_oneof![
        6 => (0..260_u32, 0..16_u32).prop_map(|(whole, part)| format!("{whole} {part}/16")),
        4 => (0..5000_u32).prop_map(|whole| whole.to_string()),
        2 => "[0-9]{1,3}[ -][0-9]{1,2}/(2|4|8|16|32|64)( in|\")?",
        2 => "[0-9]{1,4}[.,][0-9]{1,5}( mm|mm| cm| m)?",
        2 => "[0-9]' [0-9]{1,2}( [0-9]/[0-9])?\"",
        1 => text(),
    ]
}

prop_compose! {
    fn any_survey()(
        metric in any::<bool>(),
        prepared in any::<bool>(),
        entries in prop::collection::vec((0..18_usize, typed(), any::<bool>()), 0..30),
    ) -> Survey {
        let mut survey = Survey::new(if metric { Unit::Millimetre } else { Unit::Inch });
        survey.prepared = prepared;
        for (spot, text, struck) in entries {
            let spot = Spot::ALL[spot];
            survey.add(spot, &text);
            survey.entries_mut(spot).last_mut().unwrap().struck = struck;
        }
        survey
    }
}

fn confirmed() -> impl Strategy<Value = Confirmed> {
    (prop_oneof!["spread", "narrow-post", "[a-z-]{0,20}"], prop::option::of(0..18_usize))
        .prop_map(|(rule, spot)| Confirmed { rule, spot: spot.map(|spot| Spot::ALL[spot]) })
}

fn date() -> impl Strategy<Value = Date> {
    (2000..=2255_u16, 1..=12_u8, 1..=31_u8).prop_map(|(year, month, day)| Date { year, month, day })
}

prop_compose! {
    /// Any order that a link can carry, each field from nothing to its limits.
    pub(crate) fn any_order()(
        survey in any_survey(),
        claimed in prop::sample::select(vec![Verdict::Clear, Verdict::Recheck, Verdict::Stop]),
        confirmed in prop::collection::vec(confirmed(), 0..20),
        old_door_in in any::<Option<bool>>(),
        (vehicle, note, contact) in (text(), text(), text()),
        answers in prop::collection::vec((text(), text()), 0..4),
        profile in prop::option::of((text(), any::<u32>())),
        language in prop_oneof!["en", "es", "fr", "", "[a-z]{2}-[A-Z]{2}"],
        date in prop::option::of(date()),
    ) -> Order {
        let answers = answers
            .into_iter()
            .map(|(question, answer)| Answer { question, answer })
            .collect();
        Order { survey, claimed, confirmed, old_door_in, vehicle, note, contact, answers, profile, language, date }
    }
}
