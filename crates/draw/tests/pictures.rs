//! What holds of every picture, whatever was read.

#![allow(clippy::unwrap_used)]

mod support;

use hangtrue_core::say::Language;
use hangtrue_core::{Entry, Length, Spot, Survey, Unit};
use hangtrue_draw::{Residual, elevation, order, residuals, section, tape, tape_unit};
use proptest::prelude::*;
use support::look::look;
use support::{sheet, sheet_in};

/// A length: sensible, small, huge, negative.
fn length() -> impl Strategy<Value = Length> {
    prop_oneof![
        4 => (0..13_000_i64).prop_map(Length::from_sixty_fourths),
        2 => (0..6_000_i64).prop_map(Length::from_mm),
        1 => (-1_000_000_i64..1_000_000).prop_map(Length::from_nm),
        1 => any::<i64>().prop_map(Length::from_nm),
        1 => prop_oneof![Just(i64::MIN), Just(i64::MAX), Just(0), Just(-1)]
            .prop_map(Length::from_nm),
    ]
}

fn unit() -> impl Strategy<Value = Unit> {
    prop_oneof![Just(Unit::Inch), Just(Unit::Millimetre)]
}

fn spot() -> impl Strategy<Value = Spot> {
    proptest::sample::select(&Spot::ALL[..])
}

/// Any survey: empty, wild, with texts that say nothing and readings struck through.
fn any_survey() -> impl Strategy<Value = Survey> {
    let entry = (spot(), prop_oneof![5 => length().prop_map(Ok), 1 => ".{0,12}".prop_map(Err)]);
    (unit(), proptest::collection::vec((entry, any::<bool>()), 0..24)).prop_map(
        |(unit, entries)| {
            let mut survey = Survey::new(unit);
            for ((spot, reading), struck) in entries {
                match reading {
                    Ok(length) => {
                        let text = String::new();
                        survey.push(spot, Entry { text, read: Ok(length), struck });
                    }
                    Err(text) => survey.add(spot, &text),
                }
            }
            survey
        },
    )
}

fn stays_inside(svg: &str, id: &str) -> Result<(), TestCaseError> {
    let look = look(svg, id);
    prop_assert!(!look.title.is_empty() && !look.description.is_empty());
    prop_assert!(look.outside().is_empty(), "outside: {:#?}", look.outside());
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(400) })]

    #[test]
    fn any_survey_gives_whole_pictures(
        survey in any_survey(),
        asked in proptest::collection::vec(spot(), 0..4),
        language in proptest::sample::select(&Language::ALL[..]),
    ) {
        let sheet = sheet_in(language, "any", survey.unit);
        stays_inside(&elevation(sheet, &survey, &asked), "any")?;
        stays_inside(&section(sheet, &survey, &asked), "any")?;
        stays_inside(&order(sheet, &survey, &support::numbers(&survey)), "any")?;
    }

    /// A reading on a tape of the other system is lettered too, if need be without its unit.
    #[test]
    fn a_reading_of_a_truck_is_lettered(
        mm in 300..4_000_i64,
        sixteenths in 192..2_500_i64,
        in_inches in any::<bool>(),
        unit in unit(),
        language in proptest::sample::select(&Language::ALL[..]),
    ) {
        let read = if in_inches { Length::from_sixteenths(sixteenths) } else { Length::from_mm(mm) };
        let survey = support::survey(unit, [(Spot::WidthMiddle, read)]);
        let svg = elevation(sheet_in(language, "any", unit), &survey, &[Spot::WidthMiddle]);
        for off_scale in ["off scale", "no cabe", "hors cadre"] {
            prop_assert!(!svg.contains(&[">", off_scale].concat()), "{read:?}");
        }
    }

    #[test]
    fn any_residuals_give_a_whole_picture(
        all in proptest::collection::vec(
            (spot(), length(), length(), length(), any::<bool>()),
            0..24,
        ),
        unit in unit(),
        language in proptest::sample::select(&Language::ALL[..]),
    ) {
        let all: Vec<Residual> = all
            .into_iter()
            .map(|(spot, reading, residual, error, doubtful)| Residual {
                spot, reading, residual, error, doubtful,
            })
            .collect();
        stays_inside(&residuals(sheet_in(language, "any", unit), &all), "any")?;
    }

    #[test]
    fn any_reading_gives_a_whole_tape(length in length(), unit in unit()) {
        stays_inside(&tape(sheet("any", unit), length), "any")?;
    }

    #[test]
    fn any_id_is_escaped(id in ".{0,20}") {
        // A control character cannot stand in XML at all; it is replaced.
        let seen: String =
            id.chars().map(|c| if c.is_control() || c > '\u{fffd}' && c < '\u{10000}' { '\u{fffd}' } else { c }).collect();
        look(&tape(sheet(&id, Unit::Inch), Length::INCH), &seen);
    }

    /// Each mark lies where its length is: the marks are counted from the picture alone.
    #[test]
    fn marks_are_at_their_lengths(sixty_fourths in 64..12_800_i64, unit in unit()) {
        let reading = Length::from_sixty_fourths(sixty_fourths);
        let svg = tape(sheet("any", unit), reading);
        let step = unit.step().nm() as f64;
        let per_unit = tape_unit(unit).nm() as f64;
        let document = roxmltree::Document::parse(&svg).unwrap();
        let mut marks = 0;
        for path in document.descendants().filter(|node| {
            node.attribute("class").is_some_and(|class| class.starts_with("mark"))
        }) {
            for mark in path.attribute("d").unwrap().split('M').skip(1) {
                let x: f64 = mark.split(' ').next().unwrap().parse().unwrap();
                let length = reading.nm() as f64 + (x - 140.0) * per_unit;
                let off = length / step - (length / step).round();
                // Rounded to a hundredth of a unit.
                prop_assert!((off * step / per_unit).abs() <= 0.0051, "{x} is off by {off}");
                marks += 1;
            }
        }
        let expected = 280.0 * per_unit / step;
        prop_assert!((f64::from(marks) - expected).abs() <= 1.0, "{marks} of {expected}");
    }
}

#[test]
fn the_arrow_is_on_the_mark_of_a_reading_that_is_a_mark() {
    for (unit, reading) in
        [(Unit::Inch, Length::from_sixteenths(1475)), (Unit::Millimetre, Length::from_mm(2443))]
    {
        assert!(tape(sheet("t", unit), reading).contains("M140 34v"));
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(60) })]

    /// Whatever door is hung under whatever roof, the picture stays whole.
    #[test]
    fn any_door_gives_whole_pictures(
        inches in prop::array::uniform4(1_i64..140),
        sixteenths in prop::array::uniform4(0_i64..400),
        slope in 0.0_f64..20.0,
        open in -0.5_f64..1.5,
        tracks in prop::array::uniform2(prop::array::uniform3(-40_i64..40)),
        forces in (1_i64..400, -8.0_f64..8.0),
        bows in (prop::option::of(0_i64..9000), prop::option::of(1_i64..3000)),
        unit in unit(),
    ) {
        let sheet = sheet("any", unit);
        let [height, header, panel, radius] = inches;
        let [rise, offset, thickness, gap] = sixteenths.map(Length::from_sixteenths);
        let mut room = support::hang::room(height.max(24), header, slope);
        room.panel = Length::from_inches(panel.clamp(3, 24));
        room.radius = Length::from_inches(radius);
        (room.rise, room.offset, room.thickness, room.gap) = (rise, offset, thickness, gap);
        let (first, spacing) = bows;
        let room = room.with_bows(first.map(Length::from_mm), spacing.map(Length::from_mm), None);
        stays_inside(&support::hang::side(sheet, &room, open), "any")?;
        let [left, right] = tracks;
        stays_inside(&support::hang::tracks(sheet, left, right), "any")?;
        let (kg, more) = forces;
        stays_inside(&support::hang::forces(sheet, kg, more), "any")?;
    }
}
