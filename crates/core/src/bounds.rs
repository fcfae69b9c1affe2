//! Every limit, once: least, most, why, and who says so.
//!
//! A rule compares with a [`Limit`] and its message reads the same one, so the
//! limit that is enforced and the limit that is told cannot differ. A dealer's
//! profile may narrow or widen the *usual* limits; it never touches those that
//! are physical or legal.

use crate::length::Length;

/// Who says that a limit holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Source {
    /// A published text.
    Published(&'static str),
    /// Common practice of the trade, with no published source.
    CommonPractice,
    /// Worked out from other limits, named here.
    Derived(&'static str),
}

/// Why a limit is there; a catalogue turns it into words.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Reason {
    /// The body may not be wider than the law allows, and two posts stand in it.
    LegalWidth,
    /// A vehicle may not be higher than the law allows, and its floor is above the road.
    LegalHeight,
    /// No truck body or trailer has such an opening.
    NoSuchOpening,
    /// Few truck bodies have such an opening.
    UnusualOpening,
    /// The door's upper track and spring need this much above the opening.
    HeaderRoom,
    /// A header this deep is rarely built.
    UnusualHeader,
    /// The vertical track is fastened to the post and needs this much of it.
    PostRoom,
    /// Roof bows are rolled in these depths.
    UsualBow,
    /// What is left under the bows for the door to run in.
    RoomUnderBow,
    /// A frame can be bent so far and still take a door.
    FrameShape,
    /// No frame that takes a door is bent so far.
    BentFrame,
}

/// A least and a most, with the reason and the source. Either end may be open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limit {
    /// The least that is allowed.
    pub least: Option<Length>,
    /// The most that is allowed.
    pub most: Option<Length>,
    /// Why.
    pub reason: Reason,
    /// Who says so.
    pub source: Source,
}

impl Limit {
    /// Whether `length` is inside; both ends are allowed.
    #[must_use]
    pub fn holds(&self, length: Length) -> bool {
        self.least.is_none_or(|least| length >= least)
            && self.most.is_none_or(|most| length <= most)
    }
}

/// One reading may be so much beyond what is there: rounding to the eighth, the hand,
/// the hook. What is just at a usual limit is not questioned for it.
pub const PLAY: Length = Length::from_sixteenths(2);

const fn quarters(n: i64) -> Length {
    Length::from_sixteenths(n.saturating_mul(4))
}

/// The widest a body may be, posts with it: 2.6 m, the metric equivalent of 102 in.
pub const BODY_WIDTH: Limit = Limit {
    least: None,
    most: Some(Length::from_mm(2600)),
    reason: Reason::LegalWidth,
    source: Source::Published("23 CFR 658.15(a): 102 inches or its metric equivalent, 2.6 m"),
};

/// Height and header depth together: the highest vehicle any of the laws we know
/// allows (4.3 m) less the lowest floor a truck body stands on (0.5 m).
///
/// US states set their own limits, such as 13 ft 6 in (Fla. Stat. 316.515);
/// Canada 4.15 m; the European Union 4.00 m (Directive 96/53/EC). The loosest is
/// taken, so that what stops here stands nowhere.
pub const ABOVE_FLOOR: Limit = Limit {
    least: None,
    most: Some(Length::from_mm(3800)),
    reason: Reason::LegalHeight,
    source: Source::Published(
        "NHVIM v3.0 section 16: 4.3 m, less a floor of 0.5 m (common practice, no source)",
    ),
};

/// Post-to-post widths below this are slips, not openings.
pub const WIDTH_POSSIBLE: Limit = Limit {
    least: Some(Length::from_inches(36)),
    most: None,
    reason: Reason::NoSuchOpening,
    source: Source::CommonPractice,
};

/// Post-to-post widths that truck bodies and trailers have.
pub const WIDTH_USUAL: Limit = Limit {
    least: Some(Length::from_inches(54)),
    most: None,
    reason: Reason::UnusualOpening,
    source: Source::CommonPractice,
};

/// Sill-to-header heights below this are slips, not openings.
pub const HEIGHT_POSSIBLE: Limit = Limit {
    least: Some(Length::from_inches(36)),
    most: None,
    reason: Reason::NoSuchOpening,
    source: Source::CommonPractice,
};

/// Sill-to-header heights that truck bodies and trailers have.
pub const HEIGHT_USUAL: Limit = Limit {
    least: Some(Length::from_inches(54)),
    most: Some(Length::from_inches(122)),
    reason: Reason::UnusualOpening,
    source: Source::CommonPractice,
};

/// The header depth a door needs; a shallower header is built down.
pub const HEADER_LEAST: Limit = Limit {
    least: Some(Length::from_inches(7)),
    most: None,
    reason: Reason::HeaderRoom,
    source: Source::CommonPractice,
};

/// Header depths that are built.
pub const HEADER_USUAL: Limit = Limit {
    least: None,
    most: Some(Length::from_inches(24)),
    reason: Reason::UnusualHeader,
    source: Source::CommonPractice,
};

/// Header depths above this are slips, not headers.
pub const HEADER_POSSIBLE: Limit = Limit {
    least: None,
    most: Some(Length::from_inches(48)),
    reason: Reason::NoSuchOpening,
    source: Source::CommonPractice,
};

/// The post width a track needs; a narrower post is built out.
pub const POST_LEAST: Limit = Limit {
    least: Some(quarters(10)),
    most: None,
    reason: Reason::PostRoom,
    source: Source::CommonPractice,
};

/// The depths roof bows are made in.
pub const BOW_USUAL: Limit = Limit {
    least: Some(quarters(3)),
    most: Some(Length::from_inches(2)),
    reason: Reason::UsualBow,
    source: Source::CommonPractice,
};

/// What must be left between the header's underside and the bow's.
pub const UNDER_BOW: Limit = Limit {
    least: Some(Length::from_inches(5)),
    most: None,
    reason: Reason::RoomUnderBow,
    source: Source::Derived("the least header depth, 7 in, less the deepest usual bow, 2 in"),
};

/// Spread of the width, height or header readings of one frame that is not questioned
/// by itself. The judge looks closer: it knows what the other readings say.
pub const SPREAD_USUAL: Limit = Limit {
    least: None,
    most: Some(quarters(6)),
    reason: Reason::FrameShape,
    source: Source::CommonPractice,
};

/// Spread of the bow readings that is not questioned: bows differ by design.
pub const BOW_SPREAD_USUAL: Limit = Limit {
    least: None,
    most: Some(quarters(4)),
    reason: Reason::FrameShape,
    source: Source::CommonPractice,
};

/// Spread that no frame has that can take a door.
pub const SPREAD_POSSIBLE: Limit = Limit {
    least: None,
    most: Some(Length::from_inches(3)),
    reason: Reason::BentFrame,
    source: Source::CommonPractice,
};

/// How far repeats at one marked spot may lie apart: the half inch that someone
/// rounds to. The judge looks closer.
pub const REPEAT_USUAL: Limit = Limit {
    least: None,
    most: Some(quarters(2)),
    reason: Reason::FrameShape,
    source: Source::CommonPractice,
};

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Limit; 16] = [
        BODY_WIDTH,
        ABOVE_FLOOR,
        WIDTH_POSSIBLE,
        WIDTH_USUAL,
        HEIGHT_POSSIBLE,
        HEIGHT_USUAL,
        HEADER_LEAST,
        HEADER_USUAL,
        HEADER_POSSIBLE,
        POST_LEAST,
        BOW_USUAL,
        UNDER_BOW,
        SPREAD_USUAL,
        BOW_SPREAD_USUAL,
        SPREAD_POSSIBLE,
        REPEAT_USUAL,
    ];

    #[test]
    fn every_limit_has_an_end_and_no_limit_is_upside_down() {
        for limit in ALL {
            assert!(limit.least.is_some() || limit.most.is_some(), "{limit:?}");
            if let (Some(least), Some(most)) = (limit.least, limit.most) {
                assert!(least < most, "{limit:?}");
            }
        }
    }

    #[test]
    fn both_ends_are_inside_and_one_nanometre_beyond_is_not() {
        let step = Length::from_nm(1);
        for limit in ALL {
            if let Some(least) = limit.least {
                assert!(limit.holds(least) && !limit.holds(least - step), "{limit:?}");
            }
            if let Some(most) = limit.most {
                assert!(limit.holds(most) && !limit.holds(most + step), "{limit:?}");
            }
        }
    }

    #[test]
    fn what_is_possible_includes_what_is_usual() {
        assert!(WIDTH_POSSIBLE.least < WIDTH_USUAL.least);
        assert!(HEIGHT_POSSIBLE.least < HEIGHT_USUAL.least);
        assert!(HEADER_USUAL.most < HEADER_POSSIBLE.most);
        assert!(SPREAD_USUAL.most < SPREAD_POSSIBLE.most);
        assert_eq!(UNDER_BOW.least, Some(HEADER_LEAST.least.unwrap() - BOW_USUAL.most.unwrap()));
    }
}
