//! What to ask the caller next: one question, from what was found and from what one
//! more reading is worth.
//!
//! A clerk has no tape and no truck. So every finding is turned into a question that
//! the person beside the truck can answer.

use hangtrue_core::bounds::HEADER_LEAST;
use hangtrue_core::check::Report;
use hangtrue_core::judge::{SlipKind, Why};
use hangtrue_core::{Dimension, Length, Spot, Survey};

/// One question, with the caller's own numbers in it.
#[derive(Clone, Debug, PartialEq)]
pub enum Ask {
    /// What was typed is no reading.
    SayAgain {
        /// Where.
        spot: Spot,
        /// What was typed.
        text: String,
    },
    /// A number that was not said yet.
    Say(Dimension),
    /// A number that no opening has: digit by digit, with its unit.
    Digits {
        /// Where.
        spot: Spot,
        /// As it was understood.
        value: Length,
    },
    /// Two numbers that look exchanged: which is which.
    Which {
        /// One dimension.
        first: Dimension,
        /// What was typed for it.
        first_value: Length,
        /// The other.
        second: Dimension,
        /// What was typed for it.
        second_value: Length,
    },
    /// Wider than any body: between the posts, or over the outside.
    BetweenPosts(Length),
    /// Height and header together too tall: to the header, or to the roof.
    ToHeader(Length),
    /// A header that may have been measured to the bow instead of the roof.
    RoofOrBow {
        /// The header depth.
        header: Length,
        /// The roof-bow depth.
        bow: Option<Length>,
    },
    /// A bow of a depth that is not made.
    BowFrom(Length),
    /// A header too shallow: is it still to be built down?
    Build(Length),
    /// A reading that was probably another.
    Meant {
        /// Where.
        spot: Spot,
        /// What was typed.
        said: Length,
        /// What it probably was.
        meant: Length,
        /// What probably went wrong.
        slip: SlipKind,
    },
    /// A number that the check characters say was another.
    Misheard {
        /// Where.
        spot: Spot,
        /// What was typed.
        said: Length,
        /// What it was by the characters.
        meant: Length,
    },
    /// Readings that do not fit together: read again.
    ReadAgain(Vec<Spot>),
    /// A size that few openings have.
    Unusual {
        /// Where.
        spot: Spot,
        /// What was typed.
        value: Length,
    },
    /// One more reading, and what it checks.
    Take {
        /// Where.
        spot: Spot,
        /// Why.
        why: Why,
        /// The ordered numbers that it checks.
        checks: Vec<Dimension>,
    },
    /// A reading without which the dealer makes no door.
    Required(Spot),
    /// Nothing more.
    Nothing,
}

/// Every question, the most pressing first.
#[must_use]
pub fn all(survey: &Survey, report: &Report) -> Vec<Ask> {
    let mut asks: Vec<Ask> = Vec::new();
    let mut put = |ask: Option<Ask>| asks.extend(ask);
    for spot in Spot::ALL {
        for entry in survey.entries(spot).iter().filter(|e| !e.struck && !e.is_blank()) {
            if entry.read.is_err() {
                put(Some(Ask::SayAgain { spot, text: entry.text.clone() }));
            }
        }
    }
    let value = |spot: Spot| survey.lengths(spot).next();
    let read = |dimension| survey.tightest(dimension).map(|(_, length)| length);
    for finding in &report.findings {
        let Some(spot) = finding.spots.first().copied() else { continue };
        put(match finding.rule {
            "slip" => judged(report, survey),
            "exchanged-width-height" => which(survey, Dimension::Width, Dimension::Height),
            "exchanged-header-bow" => which(survey, Dimension::Header, Dimension::Bow),
            "too-wide" => value(spot).map(Ask::BetweenPosts),
            "too-tall" => read(Dimension::Height).map(Ask::ToHeader),
            "bow-fills-header" | "room-under-bow" | "header-to-bow" => {
                read(Dimension::Header).map(|header| roof_or_bow(survey, header))
            }
            "unusual-bow" => value(spot).map(Ask::BowFrom),
            "no-such-opening" | "not-positive" => {
                value(spot).map(|value| Ask::Digits { spot, value })
            }
            "unusual-opening" => value(spot).map(|value| Ask::Unusual { spot, value }),
            "shallow-header" => read(Dimension::Header).map(|header| shallow(survey, header)),
            "spread" | "repeats" => Some(Ask::ReadAgain(finding.spots.clone())),
            _ => None,
        });
    }
    for dimension in Dimension::ALL {
        let blank = dimension.spots().iter().all(|spot| survey.entries(*spot).is_empty());
        if blank {
            put(Some(Ask::Say(dimension)));
        }
    }
    // Only once the four are said.
    for finding in report.findings.iter().filter(|finding| finding.rule == "closing") {
        put(finding.spots.first().copied().map(Ask::Required));
    }
    // A shallow header that was not measured to the bow is built down, or is prepared.
    if let Some(header) = report.numbers.get(Dimension::Header)
        && report.preparation.header_down > Length::ZERO
    {
        put(Some(Ask::Build(header.as_found)));
    }
    for next in report.judgement.next.iter().filter(|next| !matches!(next.why, Why::Missing)) {
        let checks = next.checks.clone();
        put(Some(Ask::Take { spot: next.spot, why: next.why, checks }));
    }
    asks
}

/// What the judge suspects, as a question.
fn judged(report: &Report, survey: &Survey) -> Option<Ask> {
    let likely = report.judgement.likely.first()?;
    let entry = survey.entries(likely.spot).get(likely.index)?;
    let said = entry.read.as_ref().ok().copied()?;
    Some(match likely.value {
        Some(meant) => Ask::Meant { spot: likely.spot, said, meant, slip: likely.slip },
        None => Ask::ReadAgain(likely.spots.clone()),
    })
}

fn which(survey: &Survey, first: Dimension, second: Dimension) -> Option<Ask> {
    let value = |dimension| survey.tightest(dimension).map(|(_, length)| length);
    let (first_value, second_value) = (value(first)?, value(second)?);
    Some(Ask::Which { first, first_value, second, second_value })
}

fn roof_or_bow(survey: &Survey, header: Length) -> Ask {
    Ask::RoofOrBow { header, bow: survey.tightest(Dimension::Bow).map(|(_, bow)| bow) }
}

/// A shallow header may stop at the bow; where even the bow does not make it deep
/// enough, it is shallow.
fn shallow(survey: &Survey, header: Length) -> Ask {
    match survey.tightest(Dimension::Bow) {
        Some((_, bow)) if HEADER_LEAST.holds(header + bow) => roof_or_bow(survey, header),
        _ => Ask::Build(header),
    }
}

/// The dimension that `spot` speaks for on the telephone, where it is said without
/// its place.
#[must_use]
pub fn said_as(spot: Spot) -> Option<Dimension> {
    spot.dimension().filter(|dimension| dimension.main_spot() == spot)
}
