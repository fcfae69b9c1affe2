//! The rules that orders are checked by.

use std::path::Path;

use hangtrue_core::check::Report;
use hangtrue_core::profile::Profile;
use hangtrue_core::say::Speaker;
use hangtrue_core::{check, check_order};

use crate::command::profile;
use crate::input::Content;

/// A profile, ready for orders and for surveys.
pub(crate) struct Rules {
    whole: Profile,
    /// Without a door line chosen: a survey brings no answers.
    plain: Profile,
}

impl Rules {
    /// The rules in `file`; the built-in ones without one.
    pub(crate) fn of(file: Option<&Path>) -> anyhow::Result<Self> {
        let whole = file.map_or_else(|| Ok(Profile::default()), profile::rules)?;
        let plain = whole.chosen(&[]).into_owned();
        Ok(Self { whole, plain })
    }

    /// The rules, whichever door line is chosen.
    pub(crate) const fn profile(&self) -> &Profile {
        &self.whole
    }

    /// The check of one order.
    pub(crate) fn report(&self, content: &Content) -> Report {
        if content.is_order {
            check_order(&content.order, &self.whole)
        } else {
            check(&content.order.survey, &self.plain)
        }
    }
}

/// Who reads of `content`: English, in its own unit.
pub(crate) fn speaker(content: &Content) -> Speaker {
    Speaker { unit: content.order.survey.unit, ..Speaker::default() }
}
