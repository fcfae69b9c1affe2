//! Limits in the place of ours, each with the dealer's reason.

use crate::bounds::{
    BOW_SPREAD_USUAL, BOW_USUAL, HEADER_LEAST, HEADER_USUAL, HEIGHT_USUAL, Limit, PLAY, POST_LEAST,
    REPEAT_USUAL, SPREAD_USUAL, UNDER_BOW, WIDTH_USUAL,
};
use crate::finding::Severity;
use crate::length::Length;
use crate::say::Because;

/// What a dealer may limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Limited {
    /// Post-to-post width.
    Width,
    /// Sill-to-header height.
    Height,
    /// Header depth; the least is what a shallower header is built down to.
    Header,
    /// Roof-bow depth.
    Bow,
    /// Post width; the least is what a narrower post is built out to.
    Post,
    /// What is left between the header's underside and the bow's.
    UnderBow,
    /// How far the width, height or header readings may lie apart.
    Spread,
    /// How far the bow readings may lie apart.
    BowSpread,
    /// How far repeats at one marked spot may lie apart.
    Repeat,
}

impl Limited {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Width,
        Self::Height,
        Self::Header,
        Self::Bow,
        Self::Post,
        Self::UnderBow,
        Self::Spread,
        Self::BowSpread,
        Self::Repeat,
    ];

    /// Its name in files.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Width => "width",
            Self::Height => "height",
            Self::Header => "header",
            Self::Bow => "bow",
            Self::Post => "post",
            Self::UnderBow => "under_bow",
            Self::Spread => "spread",
            Self::BowSpread => "bow_spread",
            Self::Repeat => "repeat",
        }
    }

    /// Our own limits: one whose least holds, and one whose most does.
    #[must_use]
    pub const fn built_in(self) -> [Limit; 2] {
        match self {
            Self::Width => [WIDTH_USUAL; 2],
            Self::Height => [HEIGHT_USUAL; 2],
            Self::Header => [HEADER_LEAST, HEADER_USUAL],
            Self::Bow => [BOW_USUAL; 2],
            Self::Post => [POST_LEAST; 2],
            Self::UnderBow => [UNDER_BOW; 2],
            Self::Spread => [SPREAD_USUAL; 2],
            Self::BowSpread => [BOW_SPREAD_USUAL; 2],
            Self::Repeat => [REPEAT_USUAL; 2],
        }
    }
}

/// One end of a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum End {
    /// What is less is beyond.
    Least,
    /// What is more is beyond.
    Most,
}

/// One end of a limit, set by a dealer or a door line in the place of ours.
#[derive(Clone, Debug, PartialEq)]
pub struct Ruling {
    /// What is limited.
    pub what: Limited,
    /// At which end.
    pub end: End,
    /// Where; the bound itself is inside.
    pub bound: Length,
    /// Why, as the customer is told.
    pub because: Because,
    /// Whether an order beyond it is refused; else it is asked about.
    pub stop: bool,
}

/// A limit as it holds: ours, or the ruling in its place.
#[derive(Clone, Copy, Debug)]
pub struct Ruled<'a> {
    built_in: [Limit; 2],
    rulings: [Option<&'a Ruling>; 2],
}

/// A value beyond a limit.
#[derive(Clone, Debug, PartialEq)]
pub struct Beyond {
    /// The end it is beyond.
    pub bound: Length,
    /// Above the most, or below the least.
    pub above: bool,
    /// Why the limit is there.
    pub because: Because,
    /// How far the finding goes.
    pub severity: Severity,
}

impl<'a> Ruled<'a> {
    pub(super) fn of(what: Limited, rulings: &'a [Ruling]) -> Self {
        let find = |end| rulings.iter().find(|ruling| (ruling.what, ruling.end) == (what, end));
        Self { built_in: what.built_in(), rulings: [find(End::Least), find(End::Most)] }
    }

    /// The least that is allowed.
    #[must_use]
    pub fn least(&self) -> Option<Length> {
        let [ours, _] = self.built_in;
        let [ruling, _] = self.rulings;
        ruling.map(|ruling| ruling.bound).or(ours.least)
    }

    /// The most that is allowed.
    #[must_use]
    pub fn most(&self) -> Option<Length> {
        let [_, ours] = self.built_in;
        let [_, ruling] = self.rulings;
        ruling.map(|ruling| ruling.bound).or(ours.most)
    }

    /// Whether `length` is inside; both ends are allowed.
    #[must_use]
    pub fn holds(&self, length: Length) -> bool {
        beyond(self.least(), self.most(), length).is_none()
    }

    /// Whether `length`, as one tape reads it, may be inside: no more than [`PLAY`] beyond
    /// an end of ours. An end that a dealer set is taken at its word.
    #[must_use]
    pub fn about_holds(&self, length: Length) -> bool {
        let [least, most] = self.rulings.map(|set| if set.is_some() { Length::ZERO } else { PLAY });
        beyond(self.least().map(|l| l - least), self.most().map(|m| m + most), length).is_none()
    }

    /// Why the limit is there, at that end.
    #[must_use]
    pub fn because(&self, end: End) -> Because {
        let [least, most] = self.rulings;
        let [below, above] = self.built_in;
        match end {
            End::Least => least.map_or(Because::Known(below.reason), |r| r.because.clone()),
            End::Most => most.map_or(Because::Known(above.reason), |r| r.because.clone()),
        }
    }

    /// Whether `length` is beyond, and which end.
    #[must_use]
    pub fn beyond(&self, length: Length) -> Option<Beyond> {
        let (bound, end) = beyond(self.least(), self.most(), length)?;
        let above = end == End::Most;
        Some(Beyond { bound, above, because: self.because(end), severity: self.severity(end) })
    }

    /// How far a finding at that end goes: a question, unless the dealer refuses.
    #[must_use]
    pub fn severity(&self, end: End) -> Severity {
        let [least, most] = self.rulings;
        let ruling = if end == End::Least { least } else { most };
        match ruling {
            Some(ruling) if ruling.stop => Severity::Stop,
            _ => Severity::Recheck,
        }
    }
}

/// The end that `length` is beyond.
pub(super) fn beyond(
    least: Option<Length>,
    most: Option<Length>,
    length: Length,
) -> Option<(Length, End)> {
    match (least, most) {
        (Some(least), _) if length < least => Some((least, End::Least)),
        (_, Some(most)) if length > most => Some((most, End::Most)),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bounds::Reason;
    use crate::profile::Words;

    #[test]
    fn limits_are_named_in_files_and_a_ruling_stops_where_it_says_so() {
        let keys = Limited::ALL.map(Limited::key).join(" ");
        assert_eq!(keys, "width height header bow post under_bow spread bow_spread repeat");
        let because = Because::Dealer { name: "Demo".into(), reason: Words::plain("no panels") };
        for (stop, severity) in [(false, Severity::Recheck), (true, Severity::Stop)] {
            let (bound, because) = (Length::from_inches(60), because.clone());
            let rulings = [Ruling { what: Limited::Height, end: End::Most, bound, because, stop }];
            let ruled = Ruled::of(Limited::Height, &rulings);
            assert_eq!(ruled.severity(End::Most), severity);
            assert_eq!(ruled.severity(End::Least), Severity::Recheck);
        }
    }

    #[test]
    fn an_end_that_is_not_set_stays_ours_with_our_reason() {
        let because = Because::Dealer { name: "Demo".into(), reason: Words::plain("no panels") };
        let bound = Length::from_inches(60);
        let ruling = Ruling { what: Limited::Height, end: End::Least, bound, because, stop: true };
        let rulings = [ruling];
        let limit = Ruled::of(Limited::Height, &rulings);
        assert_eq!((limit.least(), limit.most()), (Some(bound), HEIGHT_USUAL.most));
        let below = limit.beyond(Length::from_inches(59)).unwrap();
        assert_eq!((below.severity, below.above), (Severity::Stop, false));
        assert!(matches!(below.because, Because::Dealer { .. }));
        let above = limit.beyond(Length::from_inches(130)).unwrap();
        assert_eq!(above.because, Because::Known(Reason::UnusualOpening));
        assert_eq!(above.severity, Severity::Recheck);
        assert!(limit.holds(bound) && limit.beyond(bound).is_none());
        assert!(Ruled::of(Limited::Width, &rulings).least() == WIDTH_USUAL.least);
    }
}
