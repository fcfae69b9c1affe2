//! The screens, in the order of the work.

/// One screen.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// Whose door: the order's link, or its four numbers.
    #[default]
    Order,
    /// What came, and whether the opening is still the one that was ordered for.
    Delivery,
    /// The tracks parallel and square.
    Tracks,
    /// Room under the roof.
    Overhead,
    /// Turns, winding, balance.
    Spring,
    /// Latch, side shift, seals.
    Fit,
    /// The last inspection.
    Inspection,
    /// What is due, and how it is done.
    Care,
    /// The record, its sticker, its link.
    Record,
}

impl Step {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Order,
        Self::Delivery,
        Self::Tracks,
        Self::Overhead,
        Self::Spring,
        Self::Fit,
        Self::Inspection,
        Self::Care,
        Self::Record,
    ];

    /// 0 to 8.
    #[must_use]
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Its name in the page's address, behind `#/`.
    #[must_use]
    pub const fn slug(self) -> &'static str {
        match self {
            Self::Order => "order",
            Self::Delivery => "delivery",
            Self::Tracks => "tracks",
            Self::Overhead => "overhead",
            Self::Spring => "spring",
            Self::Fit => "fit",
            Self::Inspection => "inspection",
            Self::Care => "care",
            Self::Record => "record",
        }
    }

    /// The screen of an address, as `/tracks`.
    #[must_use]
    pub fn from_address(address: &str) -> Option<Self> {
        let slug = address.strip_prefix('/')?;
        Self::ALL.into_iter().find(|step| step.slug() == slug)
    }

    /// The one after it.
    #[must_use]
    pub fn next(self) -> Option<Self> {
        Self::ALL.get(self.index().saturating_add(1)).copied()
    }

    /// The one before it.
    #[must_use]
    pub fn back(self) -> Option<Self> {
        Self::ALL.get(self.index().checked_sub(1)?).copied()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_screen_is_found_by_its_address_and_has_its_neighbours() {
        for (index, step) in Step::ALL.into_iter().enumerate() {
            assert_eq!(step.index(), index);
            assert_eq!(Step::from_address(&["/", step.slug()].concat()), Some(step));
            assert!(step.next().is_none_or(|next| next.back() == Some(step)));
        }
        assert_eq!(Step::from_address("tracks"), None);
        assert_eq!((Step::Order.back(), Step::Record.next()), (None, None));
    }
}
