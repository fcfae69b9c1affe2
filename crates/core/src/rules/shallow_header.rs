//! A header under the least depth is built down, and the order changes with it.

use super::{Context, Rule, exchanged_header_bow};
use crate::finding::{Finding, Severity};
use crate::length::Length;
use crate::profile::{End, Limited};
use crate::say::{Hint, RuleSays};
use crate::spot::Dimension;

pub(super) const RULE: Rule = Rule { code: "shallow-header", check };

fn check(context: &Context<'_>) -> Vec<Finding> {
    let Some((spot, value)) = context.survey.tightest(Dimension::Header) else {
        return Vec::new();
    };
    let limit = context.profile.limit(Limited::Header);
    let Some(least) = limit.least() else { return Vec::new() };
    if value >= least || value <= Length::ZERO || exchanged_header_bow::explains(context) {
        return Vec::new();
    }
    // Of a frame said to be prepared, a shallow header is a contradiction to look at;
    // of one as found, it is simply work to be done.
    let (severity, hint) = if context.survey.prepared {
        if limit.about_holds(value) {
            return Vec::new(); // built down to the least, and read to a mark
        }
        (limit.severity(End::Least), Hint::ReadAgain(spot))
    } else {
        (Severity::Note, Hint::BuildDown(context.preparation.header_down))
    };
    let because = limit.because(End::Least);
    let says = RuleSays::ShallowHeader { value, least, because };
    vec![RULE.finds(severity, vec![spot], says, Hint::list([hint]))]
}

#[cfg(test)]
mod tests {
    use crate::Spot;
    use crate::rules::testing::{found, survey};

    #[test]
    fn seven_inches_is_enough() {
        let with = |header| survey(&[(Spot::HeaderLeft, header)]);
        assert!(found(&with(7 * 16 - 2), "shallow-header").is_empty());
        assert_eq!(found(&with(7 * 16 - 3), "shallow-header"), ["recheck header.left"]);
        let mut as_found = with(7 * 16 - 1);
        as_found.prepared = false;
        assert_eq!(found(&as_found, "shallow-header"), ["note header.left"]);
    }

    #[test]
    fn deep_enough_nothing_and_exchanged_are_no_shallow_headers() {
        let all = [Spot::HeaderLeft, Spot::HeaderCenter, Spot::HeaderRight];
        let with = |header, bow| {
            let headers = all.map(|spot| (spot, header));
            let mut s = survey(&[&headers[..], &[(Spot::BowFirst, bow)]].concat());
            s.prepared = false;
            found(&s, "shallow-header").len()
        };
        assert_eq!(with(7 * 16 - 1, 20), 1);
        assert_eq!(with(7 * 16, 20), 0);
        assert_eq!(with(9 * 16, 20), 0);
        assert_eq!(with(0, 20), 0, "told as not positive");
        assert_eq!(with(20, 9 * 16), 0, "told as exchanged");
    }
}
