//! What is said of one of many, as data and as the cells of a table.

use super::{Item, Unread};
use crate::json::Id;
use hangtrue_core::check::{Report, Verdict};
use hangtrue_core::finding::RuleCode;
use hangtrue_core::judge::SlipKind;
use hangtrue_core::order::Order;
use hangtrue_core::say::{Language, Message, Speaker};
use hangtrue_core::{Dimension, Length, Spot, Unit};

/// The columns of an answer, in their order.
///
/// `verdict` is `clear`, `recheck`, `stop`, or `unread` where it is no order. `findings`
/// are the codes of the findings, worst first, with spaces between. `suspect`, `slip` and
/// `meant` are the judge's likeliest answer, given where there is an alarm; `meant` only
/// where it is sure. `ask` is the reading to take next. `says` is the first finding, or
/// why it is no order, in words.
pub const ANSWER_COLUMNS: [&str; 15] = [
    "line", "id", "vehicle", "verdict", "unit", "width", "height", "header", "bow", "findings",
    "suspect", "slip", "meant", "ask", "says",
];

/// What is said of one of many.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The line it begins on, from 1.
    pub line: usize,
    /// What the sender calls it; may be empty.
    pub id: String,
    /// Which truck; may be empty.
    pub vehicle: String,
    /// The verdict; none where it is no order.
    pub verdict: Option<Verdict>,
    /// The unit it is written in.
    pub unit: Unit,
    /// The ordered numbers, in the order of [`Dimension::ALL`].
    pub numbers: [Option<Length>; 4],
    /// The codes of its findings, worst first, each once.
    pub findings: Vec<RuleCode>,
    /// What the judge thinks went wrong, where there is an alarm.
    pub likeliest: Option<Likeliest>,
    /// The reading to take next.
    pub ask: Option<Spot>,
    /// What is said first.
    pub says: Says,
}

/// The judge's likeliest answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Likeliest {
    /// The most suspect reading.
    pub spot: Spot,
    /// What happened to it.
    pub slip: SlipKind,
    /// What it probably meant, where that is sure.
    pub meant: Option<Length>,
    /// Posterior probability that it slipped, 0 to 1.
    pub posterior: f64,
}

/// What is said first, as data.
#[derive(Clone, Debug, PartialEq)]
pub enum Says {
    /// Nothing was found.
    Nothing,
    /// The first finding.
    Finding(Message),
    /// It is no order.
    Unread(Unread),
}

impl Answer {
    /// The answer to `item`; `report` is the check of its order, where it is one.
    #[must_use]
    pub fn new(item: &Item, report: Option<&Report>) -> Self {
        match (&item.order, report) {
            (Ok(order), Some(report)) => Self::order(item.line, &item.id, order, report),
            (Err(unread), _) => {
                Self { says: Says::Unread(unread.clone()), ..Self::blank(item.line, &item.id) }
            }
            (Ok(_), None) => Self::blank(item.line, &item.id),
        }
    }

    /// The answer to an order, of which `report` is the check.
    #[must_use]
    pub fn order(line: usize, id: &Id, order: &Order, report: &Report) -> Self {
        let mut findings: Vec<RuleCode> = Vec::new();
        for finding in &report.findings {
            if !findings.contains(&finding.rule) {
                findings.push(finding.rule);
            }
        }
        let judgement = &report.judgement;
        let likely = judgement.likely.first().filter(|_| judgement.alarm);
        let first = report.findings.first();
        Self {
            vehicle: order.vehicle.clone(),
            verdict: Some(report.verdict),
            unit: order.survey.unit,
            numbers: Dimension::ALL.map(|dimension| report.numbers.ordered(dimension)),
            findings,
            likeliest: likely.map(|likely| Likeliest {
                spot: likely.spot,
                slip: likely.slip,
                meant: likely.value,
                posterior: likely.posterior,
            }),
            ask: judgement.next.first().map(|next| next.spot),
            says: first.map_or(Says::Nothing, |finding| Says::Finding(finding.message.clone())),
            ..Self::blank(line, id)
        }
    }

    fn blank(line: usize, id: &Id) -> Self {
        Self {
            line,
            id: id.text(),
            vehicle: String::new(),
            verdict: None,
            unit: Unit::default(),
            numbers: [None; 4],
            findings: Vec::new(),
            likeliest: None,
            ask: None,
            says: Says::Nothing,
        }
    }

    /// What is said first, in words: lengths in the unit of the order.
    #[must_use]
    pub fn says(&self, language: Language) -> String {
        match &self.says {
            Says::Nothing => String::new(),
            Says::Finding(message) => Speaker { language, unit: self.unit }.say(message),
            Says::Unread(unread) => crate::say::unread(language, unread),
        }
    }

    /// The cells of [`ANSWER_COLUMNS`].
    #[must_use]
    pub fn cells(&self, language: Language) -> [String; 15] {
        let length = |length: Option<Length>| {
            length.map(|length| length.text(self.unit)).unwrap_or_default()
        };
        let [width, height, header, bow] = self.numbers.map(length);
        let unit = if self.verdict.is_some() { self.unit.key() } else { "" };
        [
            self.line.to_string(),
            self.id.clone(),
            self.vehicle.clone(),
            self.verdict.map_or("unread", Verdict::key).to_owned(),
            unit.to_owned(),
            width,
            height,
            header,
            bow,
            self.findings.join(" "),
            self.likeliest.map(|likeliest| likeliest.spot.key()).unwrap_or_default(),
            self.likeliest.map_or("", |likeliest| likeliest.slip.key()).to_owned(),
            length(self.likeliest.and_then(|likeliest| likeliest.meant)),
            self.ask.map(Spot::key).unwrap_or_default(),
            self.says(language),
        ]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::csv::{Sheet, line};
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
            let item = Item::from(sheet.next(text, &mut mark).unwrap());
            let report = item.check(&Profile::default());
            Answer::new(&item, report.as_ref()).cells(Language::English)
        };
        let clear = next();
        assert_eq!(cell(&clear, "verdict"), "clear");
        assert_eq!(cell(&clear, "width"), "92 3/16 in");
        assert!(line(&clear).contains("\"'=cmd()\""));
        let stop = next();
        assert_eq!(cell(&stop, "verdict"), "stop");
        assert!(cell(&stop, "findings").contains("bow-fills-header"));
        let unread = next();
        assert_eq!((cell(&unread, "line"), cell(&unread, "id")), ("4", "c"));
        assert_eq!((cell(&unread, "verdict"), cell(&unread, "unit")), ("unread", ""));
        assert!(!cell(&unread, "says").is_empty());
    }
}
