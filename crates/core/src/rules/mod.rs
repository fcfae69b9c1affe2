//! What cannot be, and what is questioned: one rule, one file, one code, its tests.
//!
//! A rule looks at the whole survey and returns everything it finds; it never ends
//! the check. The code is the file's name with dashes, and stands in files and links.

mod bow_fills_header;
mod closing;
mod exchanged_header_bow;
mod exchanged_width_height;
mod header_to_bow;
mod missing;
mod narrow_post;
mod no_such_opening;
mod not_positive;
mod repeats;
mod room_under_bow;
mod shallow_header;
mod spread;
mod too_tall;
mod too_wide;
mod unreadable;
mod unusual_bow;
mod unusual_opening;
mod wide_post;

#[cfg(test)]
mod stops;
#[cfg(test)]
pub(crate) mod testing;

use crate::finding::{Finding, RuleCode, Severity};
use crate::frame::Preparation;
use crate::length::Length;
use crate::order::Numbers;
use crate::profile::Profile;
use crate::say::Message;
use crate::spot::{Dimension, Spot};
use crate::survey::Survey;

/// What a rule sees.
#[derive(Clone, Copy, Debug)]
pub struct Context<'a> {
    /// The readings.
    pub survey: &'a Survey,
    /// The rules as they hold for the chosen door line.
    pub profile: &'a Profile,
    /// What has to be built.
    pub preparation: &'a Preparation,
    /// The numbers as the order would say them.
    pub numbers: &'a Numbers,
}

impl Context<'_> {
    /// The tightest reading of `dimension` as it will be once the frame is built.
    fn built(&self, dimension: Dimension) -> Option<(Spot, Length)> {
        let (spot, found) = self.survey.tightest(dimension)?;
        Some((spot, found + self.preparation.change(dimension)))
    }
}

/// One rule.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Its name in files and links.
    pub code: RuleCode,
    /// What it finds.
    pub check: fn(&Context<'_>) -> Vec<Finding>,
}

/// Every rule, in the order their findings are told.
pub const RULES: [Rule; 19] = [
    unreadable::RULE,
    missing::RULE,
    closing::RULE,
    not_positive::RULE,
    exchanged_width_height::RULE,
    exchanged_header_bow::RULE,
    too_wide::RULE,
    too_tall::RULE,
    no_such_opening::RULE,
    bow_fills_header::RULE,
    spread::RULE,
    repeats::RULE,
    header_to_bow::RULE,
    room_under_bow::RULE,
    unusual_opening::RULE,
    unusual_bow::RULE,
    shallow_header::RULE,
    narrow_post::RULE,
    wide_post::RULE,
];

/// What every rule finds, in the order of [`RULES`].
#[must_use]
pub fn run(context: &Context<'_>) -> Vec<Finding> {
    RULES.iter().flat_map(|rule| (rule.check)(context)).collect()
}

impl Rule {
    /// A finding of this rule.
    fn finds(
        &self,
        severity: Severity,
        spots: Vec<Spot>,
        message: impl Into<Message>,
        hints: Vec<Message>,
    ) -> Finding {
        Finding { severity, rule: self.code, spots, message: message.into(), hints }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rules_code_is_its_files_name() {
        let source = include_str!("mod.rs");
        for rule in RULES {
            let module = rule.code.replace('-', "_");
            assert!(source.contains(&format!("\nmod {module};")), "{}", rule.code);
            assert!(source.contains(&format!("\n    {module}::RULE,")), "{}", rule.code);
        }
    }
}
