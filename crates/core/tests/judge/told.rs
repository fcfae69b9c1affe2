//! A judgement in words and numbers, as the golden holds it.

use hangtrue_core::check::Report;
use hangtrue_core::judge::{AdjustedReading, Judgement, Likely, Next};
use hangtrue_core::{Length, Unit};

/// Four digits that count.
fn figure(value: f64) -> String {
    format!("{value:.3e}")
}

fn length(value: Option<Length>, unit: Unit) -> String {
    value.map_or_else(|| "–".to_owned(), |value| value.text(unit))
}

fn likely(likely: &Likely, unit: Unit) -> String {
    let spots: Vec<_> = likely.spots.iter().map(|spot| spot.key()).collect();
    format!(
        "{} {} at {}~{}, {} for {}{} {}",
        figure(likely.posterior),
        likely.slip.key(),
        spots.join("+"),
        likely.index,
        likely.read.text(unit),
        likely.guess.text(unit),
        if likely.value.is_some() { ", sure" } else { "" },
        figure(likely.guess_posterior),
    )
}

fn next(next: &Next) -> String {
    let checks: Vec<_> = next.checks.iter().map(|dimension| dimension.key()).collect();
    let again = if next.repeat { " again" } else { "" };
    let (why, worth) = (next.why.key(), figure(next.worth));
    format!("{}{again} {worth} {why} {}", next.spot.key(), checks.join("+"))
}

fn adjusted(reading: &AdjustedReading) -> String {
    let least = reading.least_detectable;
    format!(
        "{}~{} {:.3} ± {:.3} mm, residual {:.3}, redundancy {:.4}, w {:.3}, least {}",
        reading.spot.key(),
        reading.index,
        reading.value,
        reading.sigma,
        reading.residual,
        reading.redundancy,
        reading.w,
        least.map_or_else(|| "–".to_owned(), |least| format!("{least:.2}")),
    )
}

fn verdict(judgement: &Judgement) -> String {
    let alarm = if judgement.alarm { " alarm" } else { "" };
    [&figure(judgement.wrong), alarm].concat()
}

/// How likely something is wrong, what most of all, what to read next, what is found: one line.
pub(crate) fn short(report: &Report, unit: Unit) -> String {
    let judgement = &report.judgement;
    let first = judgement.likely.first().map(|one| likely(one, unit));
    let then = judgement.next.first().map(next);
    let found = report.findings.iter().map(|finding| {
        let spots: Vec<_> = finding.spots.iter().map(|spot| spot.key()).collect();
        let (severity, hints) = (finding.severity, finding.hints.len());
        format!("{severity:?} {} at {}, {hints} hints", finding.rule, spots.join("+"))
    });
    let parts = [Some(verdict(judgement)), first, then];
    parts.into_iter().flatten().chain(found).collect::<Vec<_>>().join("; ")
}

/// All of it, a line each.
pub(crate) fn all(judgement: &Judgement, unit: Unit) -> String {
    let unseen = judgement.unseen.map(|least| length(least, unit));
    let states =
        judgement.states.iter().map(|(spot, state)| format!("{} {}", spot.key(), state.key()));
    let sizes = judgement.sizes.iter();
    let mut lines = vec![
        format!("wrong {}", verdict(judgement)),
        ["unseen ", &unseen.join(", ")].concat(),
        ["states ", &states.collect::<Vec<_>>().join(", ")].concat(),
    ];
    lines.extend(judgement.likely.iter().map(|one| ["likely ", &likely(one, unit)].concat()));
    lines.extend(judgement.next.iter().map(|one| ["next ", &next(one)].concat()));
    lines.extend(judgement.adjusted.iter().map(adjusted));
    lines
        .extend(sizes.map(|s| format!("{} {:.3} ± {:.3} mm", s.dimension.key(), s.value, s.sigma)));
    lines.join("\n")
}
