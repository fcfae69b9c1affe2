//! The address of a screen, as it stands behind the page's `#`.

use crate::field::Field;
use crate::step::Step;
use hangtrue_core::short::cut_first;

/// The counter desk's address: a page of its own, [`DESK_PAGE`].
pub(crate) const DESK: &str = "/desk";
/// The file of that page.
pub(crate) const DESK_PAGE: &str = "desk.html";
/// The walk by a dealer's rules, which its query names.
pub(crate) const DEALER_PAGE: &str = "dealer.html";

/// The file of the page that hangs the door.
pub(crate) const HANG_PAGE: &str = "hang.html";

/// The address of a record on that page, beside this one.
pub(crate) fn record(payload: &str) -> String {
    [HANG_PAGE, "#", payload].concat()
}

/// A screen, and on the screen of one more reading, which one: so that Back and a
/// reload come to that reading again.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Address {
    /// The screen.
    pub step: Step,
    /// The reading that [`Step::Proof`] asks for.
    pub proof: Option<Field>,
}

impl Address {
    /// The address of a screen that asks for no one reading.
    #[must_use]
    pub const fn of(step: Step) -> Self {
        Self { step, proof: None }
    }

    /// As text: `/width`, `/proof/loop.sill_to_bow`. Its `/` tells it from an order,
    /// which has none.
    #[must_use]
    pub fn text(self) -> String {
        match self.proof {
            Some(field) => ["/", self.step.slug(), "/", &field.name()].concat(),
            None => ["/", self.step.slug()].concat(),
        }
    }

    /// The address of a text; none for anything that [`Self::text`] does not write.
    #[must_use]
    pub fn from_text(text: &str) -> Option<Self> {
        let path = text.strip_prefix('/')?;
        let (slug, rest) = match cut_first(path, "/") {
            Some((slug, rest)) => (slug, Some(rest)),
            None => (path, None),
        };
        let step = Step::from_slug(slug)?;
        let proof = match rest {
            Some(name) => Some(Field::from_name(name)?),
            None => None,
        };
        (proof.is_some() == (step == Step::Proof)).then_some(Self { step, proof })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use hangtrue_core::Spot;

    #[test]
    fn every_address_is_read_back_and_nothing_else_is_one() {
        for step in Step::WALK.into_iter().chain(Step::ASIDE) {
            let field = Field { spot: Spot::LoopSillToBow, index: 1 };
            let proof = (step == Step::Proof).then_some(field);
            let address = Address { step, proof };
            assert_eq!(Address::from_text(&address.text()), Some(address));
        }
        for text in ["", "/", "width", "/proof", "/width/width.low", "/proof/x", "/nowhere"] {
            assert_eq!(Address::from_text(text), None, "{text}");
        }
    }
}
