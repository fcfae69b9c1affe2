//! What was found in each of many orders: counted, filtered, compared.

use core::cmp::Ordering;
use hangtrue_core::Dimension;
use hangtrue_core::Length;
use hangtrue_core::check::Verdict;
use hangtrue_core::finding::RuleCode;
use hangtrue_core::profile::Profile;
use hangtrue_link::csv::Mark;
use hangtrue_link::list::{Answer, Item};

/// The verdicts as they are written, the worst first; `unread` where there is no order.
pub const VERDICTS: [&str; 4] = ["stop", "unread", "recheck", "clear"];

/// The place of a verdict in [`VERDICTS`].
#[must_use]
pub const fn rank(verdict: Option<Verdict>) -> usize {
    match verdict {
        Some(Verdict::Stop) => 0,
        None => 1,
        Some(Verdict::Recheck) => 2,
        Some(Verdict::Clear) => 3,
    }
}

/// What was found in one order.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// What is said of it.
    pub answer: Answer,
    /// What was read of each number that building changes.
    pub as_found: [Option<Length>; 4],
    /// Where it stands in the source.
    pub mark: Mark,
}

impl Found {
    pub(super) fn new(item: &Item, profile: &Profile, mark: Mark) -> Self {
        let report = item.check(profile);
        let as_found = Dimension::ALL.map(|dimension| {
            let report = report.as_ref()?;
            let built = report.preparation.change(dimension) != Length::ZERO;
            Some(report.numbers.get(dimension)?.as_found).filter(|_| built)
        });
        Self { answer: Answer::new(item, report.as_ref()), as_found, mark }
    }

    /// Its verdict, as a place in [`VERDICTS`].
    #[must_use]
    pub const fn rank(&self) -> usize {
        rank(self.answer.verdict)
    }
}

/// How many of each.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// By verdict, in the order of [`VERDICTS`].
    pub verdicts: [usize; 4],
    /// By finding, in the order they were first met.
    pub rules: Vec<(RuleCode, usize)>,
}

impl Counts {
    pub(super) fn add(&mut self, found: &Found) {
        if let Some(count) = self.verdicts.get_mut(found.rank()) {
            *count = count.saturating_add(1);
        }
        for rule in &found.answer.findings {
            match self.rules.iter_mut().find(|(known, _)| known == rule) {
                Some((_, count)) => *count = count.saturating_add(1),
                None => self.rules.push((rule, 1)),
            }
        }
    }

    /// How many were looked at.
    #[must_use]
    pub fn all(&self) -> usize {
        self.verdicts.iter().sum()
    }
}

/// Which orders are shown; all of them to begin with.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Filter {
    /// Only this verdict, as a place in [`VERDICTS`].
    pub verdict: Option<usize>,
    /// Only with this finding.
    pub rule: Option<String>,
    /// Only with this in what they are called, or in the truck's name; in any case.
    pub text: String,
}

impl Filter {
    /// Whether `found` is shown.
    #[must_use]
    pub fn passes(&self, found: &Found) -> bool {
        let answer = &found.answer;
        let wanted = self.text.trim().to_lowercase();
        let holds = |text: &str| text.to_lowercase().contains(&wanted);
        self.verdict.is_none_or(|verdict| verdict == found.rank())
            && self.rule.as_ref().is_none_or(|rule| answer.findings.iter().any(|it| it == rule))
            && (wanted.is_empty() || holds(&answer.id) || holds(&answer.vehicle))
    }
}

/// In which order they are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Sort {
    /// By what.
    pub by: By,
    /// The other way round.
    pub reversed: bool,
}

/// What they are sorted by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum By {
    /// The worst verdict, then what is most surely a slip, then most findings.
    #[default]
    Worst,
    /// As in the source.
    Line,
    /// What they are called.
    Id,
    /// The smallest number first; what has none last.
    Number(Dimension),
}

impl By {
    /// All of them, in the order of the columns.
    pub const ALL: [Self; 7] = [
        Self::Line,
        Self::Id,
        Self::Worst,
        Self::Number(Dimension::Width),
        Self::Number(Dimension::Height),
        Self::Number(Dimension::Header),
        Self::Number(Dimension::Bow),
    ];

    /// Its name in the markup.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Worst => "worst",
            Self::Line => "line",
            Self::Id => "id",
            Self::Number(dimension) => dimension.key(),
        }
    }

    /// The one of that name.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|by| by.key() == key)
    }
}

impl Sort {
    /// How two of them stand. No two are equal: those that are alike stand as in the source.
    #[must_use]
    pub fn compare(self, a: &Found, b: &Found) -> Ordering {
        let unlike = match self.by {
            By::Worst => a
                .rank()
                .cmp(&b.rank())
                .then_with(|| posterior(b).total_cmp(&posterior(a)))
                .then_with(|| b.answer.findings.len().cmp(&a.answer.findings.len())),
            By::Line => a.mark.at.cmp(&b.mark.at),
            By::Id => a.answer.id.cmp(&b.answer.id),
            By::Number(dimension) => match (number(a, dimension), number(b, dimension)) {
                (Some(a), Some(b)) => a.cmp(&b),
                // Whichever way round, what has none stands last.
                (Some(_), None) => return Ordering::Less,
                (None, Some(_)) => return Ordering::Greater,
                (None, None) => Ordering::Equal,
            },
        };
        let unlike = if self.reversed { unlike.reverse() } else { unlike };
        unlike.then_with(|| a.mark.at.cmp(&b.mark.at))
    }
}

fn posterior(found: &Found) -> f64 {
    found.answer.likeliest.map_or(0.0, |likeliest| likeliest.posterior)
}

fn number(found: &Found, dimension: Dimension) -> Option<Length> {
    found.answer.numbers.get(dimension.index()).copied().flatten()
}
