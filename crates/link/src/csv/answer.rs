//! What was found in each row, as a table again.

use super::Row;
use hangtrue_core::Dimension;
use hangtrue_core::check::Report;
use hangtrue_core::say::Speaker;

/// The columns of an answer, in their order.
///
/// `verdict` is `clear`, `recheck`, `stop`, or `unread` where the row is no order.
/// `findings` are the codes of the findings, worst first, with spaces between. `suspect`,
/// `slip` and `meant` are the judge's likeliest answer, given where there is an alarm;
/// `meant` only where it is sure. `ask` is the reading to take next. `says` is the first
/// finding, or what is wrong with the row, in words.
pub const ANSWER_COLUMNS: [&str; 15] = [
    "line", "id", "vehicle", "verdict", "unit", "width", "height", "header", "bow", "findings",
    "suspect", "slip", "meant", "ask", "says",
];

/// The answer to `row`; `report` is the check of its order, where it is one.
#[must_use]
pub fn answer(row: &Row, report: Option<&Report>, speaker: Speaker) -> [String; 15] {
    let mut cells: [String; 15] = Default::default();
    let [line, id, vehicle, verdict, unit, width, height, header, bow, codes, rest @ ..] =
        &mut cells;
    let [suspect, slip, meant, ask, says] = rest;
    *line = row.line.to_string();
    row.id.clone_into(id);
    "unread".clone_into(verdict);
    let order = match &row.order {
        Ok(order) => order,
        Err(fault) => {
            *says = crate::say::table(speaker.language, fault);
            return cells;
        }
    };
    order.vehicle.clone_into(vehicle);
    order.survey.unit.key().clone_into(unit);
    let Some(report) = report else { return cells };
    report.verdict.key().clone_into(verdict);
    for (cell, dimension) in [width, height, header, bow].into_iter().zip(Dimension::ALL) {
        let ordered = report.numbers.ordered(dimension);
        *cell = ordered.map(|length| length.text(order.survey.unit)).unwrap_or_default();
    }
    let mut found: Vec<&str> = Vec::new();
    for finding in &report.findings {
        if !found.contains(&finding.rule) {
            found.push(finding.rule);
        }
    }
    *codes = found.join(" ");
    if report.judgement.alarm
        && let Some(likely) = report.judgement.likely.first()
    {
        *suspect = likely.spot.key();
        likely.slip.key().clone_into(slip);
        *meant = likely.value.map(|value| value.text(order.survey.unit)).unwrap_or_default();
    }
    *ask = report.judgement.next.first().map(|next| next.spot.key()).unwrap_or_default();
    let first = report.findings.first();
    *says = first.map(|finding| speaker.say(&finding.message)).unwrap_or_default();
    cells
}

#[cfg(test)]
mod tests {
    use super::super::{ANSWER_COLUMNS, Sheet};
    use super::*;
    use hangtrue_core::check;
    use hangtrue_core::profile::Profile;

    fn cell<'a>(answer: &'a [String; 15], name: &str) -> &'a str {
        &answer[ANSWER_COLUMNS.iter().position(|column| *column == name).unwrap()]
    }

    #[test]
    fn a_row_is_answered_whether_it_is_an_order_or_not() {
        let text = "id,truck,width,height,header,bow\n\
            a,=cmd(),92 3/16,101 1/2,9 1/2,1 1/4\n\
            b,,92 3/16,101 1/2,9 1/2,10\n\
            c,,,,,\n";
        let sheet = Sheet::open(text).unwrap();
        let mut mark = sheet.start;
        let mut next = || {
            let row = sheet.next(text, &mut mark).unwrap();
            let report =
                row.order.as_ref().ok().map(|order| check(&order.survey, &Profile::default()));
            answer(&row, report.as_ref(), Speaker::default())
        };
        let clear = next();
        assert_eq!(cell(&clear, "verdict"), "clear");
        assert_eq!(cell(&clear, "width"), "92 3/16 in");
        assert!(super::super::line(&clear).contains("\"'=cmd()\""));
        let stop = next();
        assert_eq!(cell(&stop, "verdict"), "stop");
        assert!(cell(&stop, "findings").contains("bow-fills-header"));
        let unread = next();
        assert_eq!((cell(&unread, "line"), cell(&unread, "id")), ("4", "c"));
        assert_eq!(cell(&unread, "verdict"), "unread");
        assert!(!cell(&unread, "says").is_empty());
    }
}
