//! The whole check, of readings as no tape gives them.

use hangtrue_core::check::Report;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::{Language, Speaker};
use hangtrue_core::{Severity, Spot, Survey, Unit, check};

/// The first byte says unit and frame; then line by line one byte where, the rest what was
/// typed. Whatever it is, it is judged by its worst finding, and every finding can be said.
pub(crate) fn holds(bytes: &[u8]) {
    let metric = bytes.first().is_some_and(|first| first & 1 == 1);
    let mut survey = Survey::new(if metric { Unit::Millimetre } else { Unit::Inch });
    survey.prepared = bytes.first().is_some_and(|first| first & 2 == 2);
    // A survey of thirty readings is a long one, and the judge takes its time.
    for line in bytes.get(1..).unwrap_or_default().split(|byte| *byte == b'\n').take(30) {
        let Some((place, typed)) = line.split_first() else { continue };
        survey.add(Spot::ALL[usize::from(*place) % Spot::ALL.len()], &super::text(typed));
    }
    let report = check(&survey, &Profile::default());
    let worst = report.findings.iter().map(|finding| finding.severity).max();
    assert_eq!(report.verdict, worst.unwrap_or(Severity::Note).into());
    said(&report);
}

pub(super) fn said(report: &Report) {
    for language in Language::ALL {
        for unit in [Unit::Inch, Unit::Millimetre] {
            let speaker = Speaker { language, unit };
            for finding in &report.findings {
                assert!(!speaker.say(&finding.message).is_empty());
                for hint in &finding.hints {
                    assert!(!speaker.say(hint).is_empty());
                }
            }
        }
    }
}
