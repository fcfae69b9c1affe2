//! An order as text, in English (US).

use core::fmt::Write as _;

use hangtrue_core::check::{Report, Verdict};
use hangtrue_core::order::Order;
use hangtrue_core::say::Speaker;
use hangtrue_core::say::capital;
use hangtrue_core::{Dimension, Length, Spot};

pub(crate) const fn short(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Width => "W",
        Dimension::Height => "H",
        Dimension::Header => "header",
        Dimension::Bow => "bow",
    }
}

pub(crate) fn summary(order: &Order, report: &Report, link: &str, speaker: Speaker) -> String {
    let mut text = String::new();
    // Writing to a `String` cannot fail.
    let _ = write(&mut text, order, report, link, speaker);
    text
}

fn write(
    text: &mut String,
    order: &Order,
    report: &Report,
    link: &str,
    speaker: Speaker,
) -> core::fmt::Result {
    let unit = speaker.unit;
    writeln!(text, "Rear door order")?;
    for (name, value) in
        [("Vehicle", &order.vehicle), ("Contact", &order.contact), ("Note", &order.note)]
    {
        if !value.is_empty() {
            writeln!(text, "{name}: {value}")?;
        }
    }
    if let Some(date) = order.date {
        writeln!(text, "Date: {:04}-{:02}-{:02}", date.year, date.month, date.day)?;
    }
    text.push('\n');
    for dimension in Dimension::ALL {
        let name = capital(speaker.dimension(dimension));
        match report.numbers.get(dimension) {
            None => writeln!(text, "{name}: not read")?,
            Some(number) if report.preparation.change(dimension) != Length::ZERO => writeln!(
                text,
                "{name}: {} after the frame is built (as found: {})",
                number.ordered.text(unit),
                number.as_found.text(unit)
            )?,
            Some(number) => writeln!(text, "{name}: {}", number.ordered.text(unit))?,
        }
    }
    let build = &report.preparation;
    if build.needed() {
        text.push_str("\nBuild the frame first, then re-measure:\n");
        for (what, by) in [
            ("header down by", build.header_down),
            ("left post out by", build.left_out),
            ("right post out by", build.right_out),
        ] {
            if by != Length::ZERO {
                writeln!(text, "- {what} {}", by.text(unit))?;
            }
        }
    }
    writeln!(
        text,
        "\n{}",
        match report.verdict {
            Verdict::Clear => "Nothing stands against this order.",
            Verdict::Recheck => "To recheck before cutting:",
            Verdict::Stop => "This cannot be:",
        }
    )?;
    for finding in &report.findings {
        writeln!(text, "- {}", speaker.say(&finding.message))?;
    }
    text.push_str("\nReadings, as typed:\n");
    for spot in Spot::ALL {
        for entry in order.survey.entries(spot) {
            let struck = if entry.struck { " (replaced by a later reading)" } else { "" };
            writeln!(text, "{}: {}{struck}", capital(speaker.spot(spot)), entry.text)?;
        }
    }
    if !link.is_empty() {
        writeln!(text, "\n{link}")?;
    }
    Ok(())
}
