//! The screens of the walk, in their order.

use hangtrue_core::{Dimension, Spot};

/// One screen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// What to bring, the unit, the cautions.
    #[default]
    Start,
    /// Whether the frame can take a door: old door, posts, preparation.
    Frame,
    /// Post-to-post width.
    Width,
    /// Sill-to-header height.
    Height,
    /// Header depth.
    Header,
    /// Roof-bow depth.
    Bow,
    /// One more reading that checks the others.
    Proof,
    /// The dealer's own questions; left out where there are none.
    Questions,
    /// All readings, all findings, what the order will say.
    Check,
    /// The order and its link.
    Send,
    /// An order that somebody sent.
    Opened,
    /// The order's link as a picture, to be scanned from this screen.
    Scan,
    /// What to read aloud over the telephone.
    Voice,
    /// The drafts that this device keeps.
    Drafts,
}

impl Step {
    /// The walk from first to last; an opened order is not part of it.
    pub const WALK: [Self; 10] = [
        Self::Start,
        Self::Frame,
        Self::Width,
        Self::Height,
        Self::Header,
        Self::Bow,
        Self::Proof,
        Self::Questions,
        Self::Check,
        Self::Send,
    ];

    /// The screens beside the walk.
    pub const ASIDE: [Self; 4] = [Self::Opened, Self::Scan, Self::Voice, Self::Drafts];

    /// Whether it is one of the first, which need no second module: see [`crate::rest`].
    #[must_use]
    pub const fn is_first(self) -> bool {
        matches!(self, Self::Start | Self::Frame) || self.dimension().is_some()
    }

    /// Its name in the page's address, behind `#/`.
    #[must_use]
    pub const fn slug(self) -> &'static str {
        match self {
            Self::Start => "start",
            Self::Frame => "frame",
            Self::Width => "width",
            Self::Height => "height",
            Self::Header => "header",
            Self::Bow => "bow",
            Self::Proof => "proof",
            Self::Questions => "questions",
            Self::Check => "check",
            Self::Send => "send",
            Self::Opened => "opened",
            Self::Scan => "scan",
            Self::Voice => "voice",
            Self::Drafts => "drafts",
        }
    }

    /// The screen of a name in the address.
    #[must_use]
    pub fn from_slug(slug: &str) -> Option<Self> {
        Self::WALK.into_iter().chain(Self::ASIDE).find(|step| step.slug() == slug)
    }

    /// The dimension it asks for, if it asks for one.
    #[must_use]
    pub const fn dimension(self) -> Option<Dimension> {
        match self {
            Self::Width => Some(Dimension::Width),
            Self::Height => Some(Dimension::Height),
            Self::Header => Some(Dimension::Header),
            Self::Bow => Some(Dimension::Bow),
            _ => None,
        }
    }

    /// The screen that asks for `spot`.
    #[must_use]
    pub const fn of(spot: Spot) -> Self {
        match spot.dimension() {
            Some(Dimension::Width) => Self::Width,
            Some(Dimension::Height) => Self::Height,
            Some(Dimension::Header) => Self::Header,
            Some(Dimension::Bow) => Self::Bow,
            None => match spot {
                Spot::PostLeft | Spot::PostRight => Self::Frame,
                _ => Self::Proof,
            },
        }
    }

    /// The spots it has a field for.
    #[must_use]
    pub fn spots(self) -> Vec<Spot> {
        match self {
            Self::Frame => vec![Spot::PostLeft, Spot::PostRight],
            _ => self.dimension().map_or_else(Vec::new, |dimension| dimension.spots().into()),
        }
    }

    /// The one after it in the walk.
    #[must_use]
    pub fn next(self) -> Option<Self> {
        self.neighbour(1)
    }

    /// The one before it in the walk.
    #[must_use]
    pub fn back(self) -> Option<Self> {
        self.neighbour(-1)
    }

    fn neighbour(self, by: isize) -> Option<Self> {
        let here = Self::WALK.iter().position(|step| *step == self)?;
        Self::WALK.get(here.checked_add_signed(by)?).copied()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_screen_is_found_by_its_slug_and_every_field_is_on_one() {
        for step in Step::WALK.into_iter().chain(Step::ASIDE) {
            assert_eq!(Step::from_slug(step.slug()), Some(step));
            assert!(step.spots().into_iter().all(|spot| Step::of(spot) == step));
        }
        assert_eq!(Step::Start.back(), None);
        assert_eq!(Step::Send.next(), None);
        for step in Step::ASIDE {
            assert_eq!((step.next(), step.back()), (None, None));
        }
    }
}
