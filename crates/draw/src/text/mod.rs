//! The words in the pictures: one catalogue per language.
//!
//! A catalogue is a value of [`Words`] and one of [`Together`], so a word that is missing in one
//! language does not compile.

mod en;
mod es;
mod fr;

use hangtrue_core::say::Language;
use hangtrue_core::{Dimension, Spot};

/// The words of the pictures of one reading, in one language.
pub(crate) struct Words {
    /// Where in its group a spot is, in one or two words: what stands beside the tape.
    pub(crate) place: fn(Spot) -> &'static str,
    /// The whole name of a spot, for who hears the picture instead of seeing it.
    pub(crate) spot: fn(Spot) -> &'static str,
    /// A length as it is lettered in the picture, from how it is written in a sentence.
    pub(crate) drawn: fn(String) -> String,
    /// A spot and its reading, as a sentence.
    pub(crate) reads: fn(&str, &str) -> String,
    /// A spot that has no reading yet, as a sentence.
    pub(crate) unread: fn(&str) -> String,
    /// In place of a reading that would not fit in the picture.
    pub(crate) off_scale: &'static str,
    /// Some part could not be drawn at its own length.
    pub(crate) not_to_scale: &'static str,
    /// The same in two or three words.
    pub(crate) not_to_scale_short: &'static str,
    /// What is still assumed is drawn dashed.
    pub(crate) assumed: &'static str,
    pub(crate) elevation_title: &'static str,
    pub(crate) elevation: &'static str,
    pub(crate) section_title: &'static str,
    pub(crate) section: &'static str,
    pub(crate) tape_title: &'static str,
    /// The tape picture, given its reading.
    pub(crate) tape: fn(&str) -> String,
    /// One foot, several feet: the flags of a tape.
    pub(crate) foot: [&'static str; 2],
    pub(crate) metre: &'static str,
    pub(crate) roof_skin: &'static str,
    pub(crate) header: &'static str,
    pub(crate) bow: &'static str,
    pub(crate) sill: &'static str,
    pub(crate) open_door: &'static str,
    pub(crate) rear: &'static str,
    pub(crate) inside: &'static str,
}

/// The words of the pictures of all readings together: the order, and how they fit.
pub(crate) struct Together {
    /// The whole name of an ordered number.
    pub(crate) dimension: fn(Dimension) -> &'static str,
    /// Its name in one word.
    pub(crate) dimension_short: fn(Dimension) -> &'static str,
    pub(crate) order_title: &'static str,
    pub(crate) order: &'static str,
    pub(crate) residuals_title: &'static str,
    pub(crate) residuals: &'static str,
    /// How far the top of the frame stands off, as a sentence.
    pub(crate) leans_left: fn(&str) -> String,
    pub(crate) leans_right: fn(&str) -> String,
    /// A spot whose tape read more, or less, than the others say, and by how much.
    pub(crate) too_much: fn(&str, &str) -> String,
    pub(crate) too_little: fn(&str, &str) -> String,
    pub(crate) all_fit: &'static str,
    /// How many times larger than the frame its shifts are drawn.
    pub(crate) exaggerated: fn(&str) -> String,
}

/// The words of `language`.
pub(crate) fn words(language: Language) -> &'static Words {
    match language {
        Language::English => &en::WORDS,
        _ => translated(language),
    }
}

/// The words of another language than English. Never inlined: the page may load them after the
/// rest (`crates/xtask/src/split`).
#[inline(never)]
fn translated(language: Language) -> &'static Words {
    match language {
        Language::English => &en::WORDS,
        Language::Spanish => &es::WORDS,
        Language::French => &fr::WORDS,
    }
}

/// The same of the pictures of all readings together.
pub(crate) const fn together(language: Language) -> &'static Together {
    match language {
        Language::English => &en::TOGETHER,
        Language::Spanish => &es::TOGETHER,
        Language::French => &fr::TOGETHER,
    }
}
