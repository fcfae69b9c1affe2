//! The whole check of a survey: numbers, findings, verdict.

use crate::finding::{Finding, RuleCode, Severity};
use crate::frame::Preparation;
use crate::judge::{self, Judgement, judge};
use crate::order::{Numbers, Order};
use crate::profile::Profile;
use crate::rules::{self, Context};
use crate::say::{AnswerSays, Hint, JudgeSays, Message};
use crate::short::sort;
use crate::survey::Survey;

/// All that can be said of a survey.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Report {
    /// The worst severity among the findings; with nothing but notes it is clear.
    pub verdict: Verdict,
    /// What has to be built before the door fits.
    pub preparation: Preparation,
    /// The four ordered numbers.
    pub numbers: Numbers,
    /// Everything found, worst first.
    pub findings: Vec<Finding>,
    /// What the judge makes of the readings; its findings are among [`Self::findings`].
    pub judgement: Judgement,
}

/// Whether an order may be made.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Verdict {
    /// Nothing stands against it.
    #[default]
    Clear,
    /// Only once a person has confirmed what was found; the order says so.
    Recheck,
    /// No: something cannot be.
    Stop,
}

impl Verdict {
    /// The name in files: `clear`, `recheck`, `stop`.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Clear => "clear",
            Self::Recheck => "recheck",
            Self::Stop => "stop",
        }
    }
}

impl From<Severity> for Verdict {
    fn from(severity: Severity) -> Self {
        match severity {
            Severity::Note => Self::Clear,
            Severity::Recheck => Self::Recheck,
            Severity::Stop => Self::Stop,
        }
    }
}

/// Checks `survey` by every rule and by the judge. Nothing ends the check early; all
/// findings are returned, but for what the judge says better.
#[must_use]
pub fn check(survey: &Survey, profile: &Profile) -> Report {
    weighed(survey, profile, judge(survey, profile))
}

/// Checks `survey` by every rule, and keeps to a judgement that was made of it a moment ago: the
/// judge, which costs most of a check, is not asked again while a reading is typed. Once the reading
/// that it doubts is another, nothing is left of what it said.
#[must_use]
pub fn check_as_judged(survey: &Survey, profile: &Profile, judgement: &Judgement) -> Report {
    let stands = judgement.likely.first().is_none_or(|doubted| {
        let entry = survey.entries(doubted.spot).get(doubted.index);
        entry.is_some_and(|entry| !entry.struck && entry.read == Ok(doubted.read))
    });
    let judgement = if stands { judgement.clone() } else { Judgement::default() };
    weighed(survey, profile, judgement)
}

fn weighed(survey: &Survey, profile: &Profile, judgement: Judgement) -> Report {
    conclude(survey, profile, |ruled| {
        suspect_first(ruled, &judgement);
        // The judge first: among equals it is the one that names the reading.
        let mut findings = judge::findings(&judgement);
        findings.retain(|judged| !told_by_a_limit(judged, ruled));
        ruled.retain(|finding| !told_better(finding, &findings));
        findings.append(ruled);
        *ruled = findings;
        judgement
    })
}

/// Checks `survey` by the rules alone, with the limits of `profile`: the judge is not asked.
#[must_use]
pub fn check_by_rules(survey: &Survey, profile: &Profile) -> Report {
    conclude(survey, profile, |_| Judgement::default())
}

/// The report; `weigh` puts what the judge finds among what the rules find.
fn conclude(
    survey: &Survey,
    profile: &Profile,
    weigh: impl FnOnce(&mut Vec<Finding>) -> Judgement,
) -> Report {
    let preparation = Preparation::of(survey, profile);
    let numbers = Numbers::of(survey, profile, &preparation);
    let context = Context { survey, profile, preparation: &preparation, numbers: &numbers };
    let mut findings = rules::run(&context);
    let judgement = weigh(&mut findings);
    // Stable: within one severity the order of RULES stays.
    sort(&mut findings, |a, b| a.severity > b.severity);
    let worst = findings.first().map_or(Severity::Note, |finding| finding.severity);
    Report { verdict: worst.into(), preparation, numbers, findings, judgement }
}

/// Puts the reading that the judge suspects before the others of each finding it is among:
/// a rule compares a few readings, the judge weighs all.
fn suspect_first(ruled: &mut [Finding], judgement: &Judgement) {
    let Some(suspect) = judgement.likely.first().map(|likely| likely.spot) else { return };
    for finding in ruled {
        let at = finding.spots.iter().position(|spot| *spot == suspect);
        let (Some(at @ 1..), Some(first)) = (at, finding.spots.first().copied()) else { continue };
        finding.spots.swap(0, at);
        for hint in &mut finding.hints {
            if let Message::Hint(Hint::ReadAgain(spot)) = hint {
                *spot = match *spot {
                    spot if spot == first => suspect,
                    spot if spot == suspect => first,
                    other => other,
                };
            }
        }
    }
}

/// The name in files of what is amiss with the answer to a dealer's question.
pub const ANSWER_RULE: RuleCode = "answer";

/// Checks `order` by `profile` as it holds for the chosen door line: its survey, and the
/// answers to the dealer's questions.
#[must_use]
pub fn check_order(order: &Order, profile: &Profile) -> Report {
    answered(check(&order.survey, &profile.chosen(&order.answers)), order, profile)
}

/// The same, with a judgement that was made of it a moment ago: see [`check_as_judged`].
#[must_use]
pub fn check_order_as_judged(order: &Order, profile: &Profile, judgement: &Judgement) -> Report {
    let chosen = profile.chosen(&order.answers);
    answered(check_as_judged(&order.survey, &chosen, judgement), order, profile)
}

fn answered(mut report: Report, order: &Order, profile: &Profile) -> Report {
    for (question, amiss) in profile.amiss(&order.answers, order.survey.unit) {
        let given = order.answers.iter().find(|answer| answer.question == question.key);
        let answer = given.map(|given| given.answer.clone()).unwrap_or_default();
        let (key, ask) = (question.key.clone(), question.ask.clone());
        report.findings.push(Finding {
            severity: Severity::Stop,
            rule: ANSWER_RULE,
            spots: Vec::new(),
            message: AnswerSays { key, ask, answer, amiss }.into(),
            hints: Vec::new(),
        });
        report.verdict = Verdict::Stop;
    }
    // Stable: what the rules stop stays before what a dealer misses.
    sort(&mut report.findings, |a, b| a.severity > b.severity);
    report
}

/// Whether a limit already questions the reading that `judged` suspects. The limit says
/// more plainly what is odd about it; what the judge advises is added there.
fn told_by_a_limit(judged: &Finding, ruled: &mut [Finding]) -> bool {
    let suspect = judged.spots.first();
    let same = |finding: &&mut Finding| {
        finding.severity == Severity::Recheck
            && matches!(finding.rule, "unusual-opening" | "unusual-bow")
            && finding.spots.first() == suspect
    };
    let Some(finding) = ruled.iter_mut().find(same) else { return false };
    // The judge's own "read it again" is the same advice in other data.
    let told = |hint: &Message| match hint {
        Message::Judge(JudgeSays::ReadAgain { spots }) => {
            matches!(spots.as_slice(), [spot] if finding.hints.contains(&Hint::ReadAgain(*spot).into()))
        }
        hint => finding.hints.contains(hint),
    };
    let new = judged.hints.iter().filter(|hint| !told(hint)).cloned();
    let hints: Vec<Message> = new.chain(finding.hints.iter().cloned()).collect();
    finding.hints = hints;
    true
}

/// Whether `finding` says only that readings differ of which the judge has named one.
fn told_better(finding: &Finding, judged: &[Finding]) -> bool {
    let compares = matches!(finding.rule, "spread" | "repeats" | "header-to-bow");
    let suspect = judged.first().and_then(|judged| judged.spots.first());
    compares
        && finding.severity < Severity::Stop
        && suspect.is_some_and(|suspect| finding.spots.contains(suspect))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rules::testing::survey;
    use crate::say::Speaker;
    use crate::{Dimension, Length, Spot, Unit};

    #[test]
    fn of_a_rules_readings_the_judges_suspect_is_told_first() {
        let [first, suspect, third] = [Spot::WidthLow, Spot::WidthMiddle, Spot::WidthHigh];
        let read = survey(&[(suspect, 80 * 16 + 3)]);
        let judgement = judge(&read, &Profile::default());
        assert_eq!(judgement.likely.first().map(|likely| likely.spot), Some(suspect));
        let again =
            |spots: [Spot; 3]| spots.map(|spot| Message::Hint(Hint::ReadAgain(spot))).to_vec();
        let finding = |spots: [Spot; 3]| Finding {
            severity: Severity::Stop,
            rule: "spread",
            spots: spots.to_vec(),
            message: Message::Hint(Hint::Straighten),
            hints: again(spots),
        };
        let mut findings = [finding([first, suspect, third])];
        suspect_first(&mut findings, &judgement);
        assert_eq!(findings, [finding([suspect, first, third])]);
    }

    #[test]
    fn verdicts_are_named_in_files() {
        let keys = [Verdict::Clear, Verdict::Recheck, Verdict::Stop].map(Verdict::key);
        assert_eq!(keys, ["clear", "recheck", "stop"]);
    }

    #[test]
    fn a_sound_survey_is_clear_and_orders_its_tightest_readings() {
        let report = check(&survey(&[]), &Profile::default());
        assert_eq!((report.verdict, report.findings.as_slice()), (Verdict::Clear, &[][..]));
        let ordered = Dimension::ALL.map(|d| report.numbers.ordered(d).unwrap());
        let expected = [92 * 16 + 3, 101 * 16 + 8, 9 * 16 + 8, 20].map(Length::from_sixteenths);
        assert_eq!(ordered, expected);
    }

    #[test]
    fn an_unprepared_header_changes_the_order_and_the_verdict_stays_clear() {
        let mut survey = survey(&[(Spot::HeaderLeft, 6 * 16)]);
        survey.entries_mut(Spot::HeaderCenter).clear();
        survey.entries_mut(Spot::HeaderRight).clear();
        survey.prepared = false;
        let report = check(&survey, &Profile::default());
        assert_eq!(report.verdict, Verdict::Clear);
        let ordered = |dimension| report.numbers.ordered(dimension).unwrap();
        assert_eq!(ordered(Dimension::Header), Length::from_inches(7));
        assert_eq!(ordered(Dimension::Height), Length::from_sixteenths(100 * 16 + 8));
    }

    /// A header depth of 1 in under a bow of 1 1/4: either may be wrong. By itself the rule
    /// doubts the bow; the closing reading says that it is the header.
    #[test]
    fn the_reading_that_the_judge_suspects_stands_first_in_what_a_rule_finds() {
        let mut survey = survey(&[(Spot::HeaderCenter, 16), (Spot::LoopSillToBow, 109 * 16 + 12)]);
        survey.entries_mut(Spot::HeaderLeft).clear();
        survey.entries_mut(Spot::HeaderRight).clear();
        let report = check(&survey, &Profile::default());
        let finding = report.findings.iter().find(|f| f.rule == "bow-fills-header").unwrap();
        assert_eq!(finding.spots, [Spot::HeaderCenter, Spot::BowFirst]);
        let again: Vec<Message> = [Spot::HeaderCenter, Spot::BowFirst]
            .map(|spot| Hint::ReadAgain(spot).into())
            .into_iter()
            .collect();
        assert!(finding.hints.ends_with(&again), "{:?}", finding.hints);
    }

    #[test]
    fn what_the_judge_said_stands_until_the_reading_it_doubts_is_another() {
        let profile = Profile::default();
        let mut survey = survey(&[(Spot::WidthLow, 80 * 16 + 3)]);
        let report = check(&survey, &profile);
        assert_eq!(report.findings.first().unwrap().spots.first(), Some(&Spot::WidthLow));
        let again = |survey: &Survey| check_as_judged(survey, &profile, &report.judgement);
        assert_eq!(again(&survey), report);
        let asked = survey.entries(Spot::WidthLow).to_vec();
        for (text, struck) in [("80 1/8", false), ("80 3/", false), ("80 3/16", true)] {
            survey.set(Spot::WidthLow, 0, text);
            survey.entries_mut(Spot::WidthLow)[0].struck = struck;
            assert_eq!(again(&survey), check_by_rules(&survey, &profile), "{text}");
        }
        let none = Survey::default();
        let asks = check(&none, &profile);
        assert!(asks.judgement.likely.is_empty() && !asks.judgement.next.is_empty());
        assert_eq!(check_as_judged(&none, &profile, &asks.judgement), asks);
        *survey.entries_mut(Spot::WidthLow) = asked;
        survey.set(Spot::WidthMiddle, 0, "92 1/4");
        assert_eq!(again(&survey).judgement, report.judgement);
    }

    /// Door openings of freight containers, minimum, H × W in mm (ISO 668 / ISO 1496-1;
    /// the third from memory): a real opening is not rejected.
    #[test]
    fn a_freight_containers_door_opening_is_clear() {
        for (height, width) in [(2261, 2286), (2134, 2286), (2566, 2286)] {
            let mut survey = Survey::new(Unit::Millimetre);
            survey.prepared = true;
            for (spot, mm) in [
                (Spot::WidthMiddle, width),
                (Spot::HeightCenter, height),
                (Spot::HeaderCenter, 200),
                (Spot::BowFirst, 32),
            ] {
                let read = Ok(Length::from_mm(mm));
                survey.push(spot, crate::Entry { text: mm.to_string(), read, struck: false });
            }
            assert_eq!(check(&survey, &Profile::default()).verdict, Verdict::Clear);
        }
    }

    /// A height that few openings have, and that the tapes beside it do not bear out: the
    /// limit's finding carries the judge's advice, and says nothing twice.
    #[test]
    fn no_finding_gives_the_same_advice_twice() {
        let mut both = 0;
        for inches in 40..140 {
            let mut survey = Survey::new(Unit::Inch);
            survey.prepared = true;
            for (spot, text) in [
                (Spot::WidthMiddle, "92 3/16".to_owned()),
                (Spot::HeightCenter, inches.to_string()),
                (Spot::HeaderCenter, "9 1/2".to_owned()),
                (Spot::BowFirst, "1 1/4".to_owned()),
                (Spot::DiagonalRising, "137 1/16".to_owned()),
                (Spot::LoopSillToBow, "109 3/4".to_owned()),
            ] {
                survey.add(spot, &text);
            }
            for finding in check(&survey, &Profile::default()).findings {
                let mut said: Vec<String> =
                    finding.hints.iter().map(|hint| Speaker::default().say(hint)).collect();
                both += usize::from(
                    finding.rule.starts_with("unusual")
                        && finding.hints.iter().any(|hint| matches!(hint, Message::Judge(_))),
                );
                let count = said.len();
                said.sort();
                said.dedup();
                assert_eq!(said.len(), count, "{inches} in, {}: {said:?}", finding.rule);
            }
        }
        assert!(both > 0, "no survey here has both");
    }

    #[test]
    fn all_findings_are_returned_and_the_worst_stands_first() {
        let report = check(
            &survey(&[(Spot::BowFirst, 40), (Spot::WidthLow, 120 * 16), (Spot::PostLeft, 8)]),
            &Profile::default(),
        );
        assert_eq!(report.verdict, Verdict::Stop);
        let severities: Vec<_> = report.findings.iter().map(|f| f.severity).collect();
        assert!(severities.is_sorted_by(|a, b| a >= b));
        for code in ["too-wide", "spread", "unusual-bow", "narrow-post"] {
            assert!(report.findings.iter().any(|finding| finding.rule == code), "{code}");
        }
    }
}
