//! What the tests of the pictures share: the cases, and an XML reader to look at the result.

// Each test file uses its own part of this.
#![allow(dead_code, unreachable_pub, missing_docs)]
#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing)]

pub mod hang;
pub mod look;

use hangtrue_core::order::{Number, Numbers};
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Dimension, Group, Length, Spot, Survey, Unit};
use hangtrue_draw::{Residual, Sheet, elevation, order, residuals, section, tape};

/// A sheet for an English speaker with lengths in `unit`.
pub fn sheet(id: &str, unit: Unit) -> Sheet<'_> {
    sheet_in(Language::English, id, unit)
}

/// A sheet for a speaker of `language`.
pub fn sheet_in(language: Language, id: &str, unit: Unit) -> Sheet<'_> {
    Sheet { id, speaker: Speaker { language, unit } }
}

/// A survey of whole sixty-fourths of an inch.
pub fn inches(readings: &[(Spot, i64)]) -> Survey {
    survey(Unit::Inch, readings.iter().map(|&(spot, n)| (spot, Length::from_sixty_fourths(n))))
}

/// A survey of whole millimetres.
pub fn millimetres(readings: &[(Spot, i64)]) -> Survey {
    survey(Unit::Millimetre, readings.iter().map(|&(spot, n)| (spot, Length::from_mm(n))))
}

/// A survey of `readings`, their texts left empty: the pictures draw lengths.
pub fn survey(unit: Unit, readings: impl IntoIterator<Item = (Spot, Length)>) -> Survey {
    let mut survey = Survey::new(unit);
    for (spot, length) in readings {
        let entry = hangtrue_core::Entry { text: String::new(), read: Ok(length), struck: false };
        survey.push(spot, entry);
    }
    survey
}

/// An invented van body, fully read.
pub fn full() -> Survey {
    inches(&[
        (Spot::WidthLow, 92 * 64 + 16),
        (Spot::WidthMiddle, 92 * 64 + 12),
        (Spot::WidthHigh, 92 * 64 + 16),
        (Spot::HeightLeft, 101 * 64 + 32),
        (Spot::HeightCenter, 101 * 64 + 36),
        (Spot::HeightRight, 101 * 64 + 44),
        (Spot::HeaderLeft, 9 * 64 + 32),
        (Spot::HeaderCenter, 9 * 64 + 36),
        (Spot::HeaderRight, 9 * 64 + 32),
        (Spot::BowFirst, 64 + 16),
        (Spot::BowSecond, 64 + 20),
        (Spot::BowThird, 64 + 16),
        (Spot::DiagonalRising, 137 * 64 + 12),
        (Spot::DiagonalFalling, 137 * 64 + 4),
        (Spot::LoopSillToRoof, 111 * 64 + 4),
        (Spot::LoopSillToBow, 109 * 64 + 52),
        (Spot::PostLeft, 3 * 64 + 32),
        (Spot::PostRight, 3 * 64 + 40),
    ])
}

/// An invented container-like opening in millimetres.
pub fn metric() -> Survey {
    millimetres(&[
        (Spot::WidthLow, 2286),
        (Spot::WidthMiddle, 2284),
        (Spot::HeightLeft, 2261),
        (Spot::HeightCenter, 2262),
        (Spot::HeightRight, 2263),
        (Spot::HeaderLeft, 241),
        (Spot::BowFirst, 32),
        (Spot::BowSecond, 33),
        (Spot::DiagonalRising, 3215),
        (Spot::LoopSillToRoof, 2502),
        (Spot::PostLeft, 64),
    ])
}

/// The tightest readings of `survey`, as numbers of an order.
pub fn numbers(survey: &Survey) -> Numbers {
    Numbers(Dimension::ALL.map(|dimension| {
        let (spot, as_found) = survey.tightest(dimension)?;
        Some(Number { dimension, as_found, spot, ordered: as_found })
    }))
}

/// `survey` with the residuals `off` at some spots, in sixty-fourths of an inch.
pub fn misfits(survey: &Survey, off: &[(Spot, i64, bool)]) -> Vec<Residual> {
    survey
        .readings()
        .map(|(spot, adjusted)| {
            let (residual, doubtful) = off
                .iter()
                .find(|(other, ..)| *other == spot)
                .map_or((0, false), |&(_, n, doubtful)| (n, doubtful));
            let residual = Length::from_sixty_fourths(residual);
            Residual { spot, reading: adjusted + residual, residual, error: residual, doubtful }
        })
        .collect()
}

/// Every golden: its file name and its picture.
pub fn goldens() -> Vec<(&'static str, String)> {
    pictures(Language::English)
}

/// The same pictures in `language`.
pub fn pictures(language: Language) -> Vec<(&'static str, String)> {
    use Spot::*;
    let fitted = full();
    let (none, full, metric) = (Survey::new(Unit::Inch), full(), metric());
    let (inch, mm) = (Unit::Inch, Unit::Millimetre);
    // The longest readings there are, to see that they find room.
    let long = inches(&Spot::ALL.map(|spot| match spot.group() {
        Group::Bow => (spot, 64 + 60),
        Group::Header => (spot, 10 * 64 + 52),
        Group::Post => (spot, 3 * 64 + 60),
        Group::Width => (spot, 100 * 64 + 60),
        _ => (spot, 111 * 64 + 52),
    }));
    let narrow = inches(&[(WidthLow, 68 * 64), (HeightLeft, 72 * 64), (HeaderLeft, 4 * 64)]);
    let slip = inches(&[(WidthLow, 922 * 64), (HeightLeft, 101 * 64)]);
    let picture = |name, make: &dyn Fn(Sheet<'_>) -> String, unit| {
        (name, make(sheet_in(language, name, unit)))
    };
    let rear = |name, survey: &Survey, asked: &[Spot]| {
        picture(name, &|sheet| elevation(sheet, survey, asked), survey.unit)
    };
    let side = |name, survey: &Survey, asked: &[Spot]| {
        picture(name, &|sheet| section(sheet, survey, asked), survey.unit)
    };
    let reading = |name, unit, length| picture(name, &|sheet| tape(sheet, length), unit);
    let fit = |name, unit, off: &[(Spot, i64, bool)]| {
        picture(name, &|sheet| residuals(sheet, &misfits(&fitted, off)), unit)
    };
    let ordered = |name, survey: &Survey| {
        let numbers = numbers(survey);
        picture(name, &|sheet| order(sheet, survey, &numbers), survey.unit)
    };
    vec![
        fit("residuals-square", inch, &[]),
        fit("residuals-lean", inch, &[(HeightLeft, 3, false)]),
        fit("residuals-width", inch, &[(WidthMiddle, 64, true), (DiagonalRising, -8, false)]),
        fit("residuals-header", inch, &[(HeaderCenter, -80, true), (LoopSillToBow, 30, false)]),
        fit("residuals-two", mm, &[(HeightRight, -130, true), (LoopSillToBow, 75, true)]),
        fit("residuals-bow", mm, &[(BowSecond, 40, true), (DiagonalFalling, 90, true)]),
        ordered("order", &full),
        ordered("order-mm", &metric),
        ordered("order-long", &long),
        ordered("order-empty", &none),
        ordered("order-narrow", &narrow),
        ordered("order-slip", &slip),
        rear("elevation-empty", &none, &[]),
        rear("elevation-empty-width", &none, &[WidthLow]),
        rear("elevation-width-middle", &full, &[WidthMiddle]),
        rear("elevation-widths", &full, &[WidthLow, WidthMiddle, WidthHigh]),
        rear("elevation-height-left", &full, &[HeightLeft]),
        rear("elevation-heights", &full, &[HeightLeft, HeightCenter, HeightRight]),
        rear("elevation-heights-mm", &metric, &[HeightLeft, HeightCenter, HeightRight]),
        rear("elevation-diagonals", &full, &[DiagonalRising, DiagonalFalling]),
        rear("elevation-diagonal-mm", &metric, &[DiagonalFalling]),
        rear("elevation-posts", &full, &[PostLeft, PostRight]),
        rear("elevation-post-mm", &metric, &[PostRight]),
        rear("elevation-narrow", &narrow, &[HeightCenter]),
        rear("elevation-slip", &slip, &[WidthLow]),
        rear("elevation-heights-long", &long, &[HeightLeft, HeightCenter, HeightRight]),
        rear("elevation-diagonals-long", &long, &[DiagonalRising]),
        rear("elevation-posts-long", &long, &[PostLeft]),
        side("section-bows-long", &long, &[BowSecond]),
        side("section-loops-long", &long, &[LoopSillToRoof, LoopSillToBow]),
        side("section-empty", &none, &[]),
        side("section-empty-header", &none, &[HeaderCenter]),
        side("section-header-left", &full, &[HeaderLeft]),
        side("section-header-narrow", &narrow, &[HeaderLeft, HeaderCenter, HeaderRight]),
        side("section-bow-first", &full, &[BowFirst]),
        side("section-bows", &full, &[BowFirst, BowSecond, BowThird]),
        side("section-bows-mm", &metric, &[BowThird]),
        side("section-sill-to-bow", &full, &[LoopSillToBow]),
        side("section-loops", &full, &[LoopSillToRoof, LoopSillToBow]),
        side("section-loop-mm", &metric, &[LoopSillToRoof]),
        picture("hang-room-closed", &|sheet| hang::side(sheet, &hang::room(90, 9, 0.0), 0.0), inch),
        picture("hang-room-half", &|sheet| hang::side(sheet, &hang::room(90, 9, 0.0), 0.5), inch),
        picture("hang-room-open", &|sheet| hang::side(sheet, &hang::room(102, 12, 2.0), 1.0), mm),
        picture("hang-room-struck", &|sheet| hang::side(sheet, &hang::room(72, 7, 1.0), 0.8), inch),
        picture("hang-room-bows", &|sheet| hang::side(sheet, &hang::bows(true), 0.4), inch),
        picture("hang-room-bows-from", &|sheet| hang::side(sheet, &hang::bows(false), 0.4), mm),
        picture("hang-tracks-square", &|sheet| hang::tracks(sheet, [0; 3], [0; 3]), inch),
        picture("hang-tracks-racked", &|sheet| hang::tracks(sheet, [0, 2, 4], [0, 2, 4]), inch),
        picture("hang-tracks-wide", &|sheet| hang::tracks(sheet, [0, -4, -5], [3, 2, 6]), mm),
        picture("hang-balance", &|sheet| hang::forces(sheet, 60, 0.0), inch),
        picture("hang-balance-loose", &|sheet| hang::forces(sheet, 95, -1.5), mm),
        picture("hang-balance-tight", &|sheet| hang::forces(sheet, 30, 1.0), inch),
        reading("tape-inch", inch, Length::from_sixteenths(92 * 16 + 3)),
        reading("tape-foot", inch, Length::from_sixteenths(95 * 16 + 14)),
        reading("tape-inch-in-mm", inch, Length::from_mm(2443)),
        reading("tape-short", inch, Length::from_sixteenths(12)),
        reading("tape-mm", mm, Length::from_mm(2443)),
        reading("tape-metre", mm, Length::from_mm(1996)),
        reading("tape-negative", mm, Length::from_mm(-4)),
    ]
}
