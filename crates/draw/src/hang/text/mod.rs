//! The words in the pictures of a door being hung: one catalogue per language.

mod en;
mod es;
mod fr;

use hangtrue_core::hang::overhead::Against;
use hangtrue_core::say::Language;

/// Every word that these pictures can need, in one language.
pub(crate) struct Words {
    pub(crate) overhead_title: &'static str,
    pub(crate) overhead: &'static str,
    /// How far the door is lifted.
    pub(crate) lifted: fn(&str) -> String,
    /// What is left to what, with its sign taken off.
    pub(crate) left: fn(Against, &str) -> String,
    /// How far it goes through what.
    pub(crate) through: fn(Against, &str) -> String,
    pub(crate) roof: &'static str,
    pub(crate) rear: &'static str,
    pub(crate) inside: &'static str,
    pub(crate) pair_title: &'static str,
    pub(crate) pair: &'static str,
    /// A shim at a fastening: side and height by their place in [`Words::sides`] and
    /// [`Words::levels`], and its thickness.
    pub(crate) shim: fn(&str, &str, &str) -> String,
    pub(crate) no_shim: &'static str,
    pub(crate) sides: [&'static str; 2],
    pub(crate) levels: [&'static str; 3],
    /// How many times larger than the tracks their shifts are drawn.
    pub(crate) exaggerated: fn(&str) -> String,
    pub(crate) balance_title: &'static str,
    pub(crate) balance: &'static str,
    /// The most that the hand lifts, and the most that the spring pulls up beyond what hangs.
    pub(crate) most: fn(&str, &str) -> String,
    pub(crate) hangs: &'static str,
    pub(crate) lifts: &'static str,
    pub(crate) hand: &'static str,
    pub(crate) closed: &'static str,
    pub(crate) open: &'static str,
}

/// The words of `language`.
pub(crate) fn words(language: Language) -> &'static Words {
    match language {
        Language::English => &en::WORDS,
        Language::Spanish => &es::WORDS,
        Language::French => &fr::WORDS,
    }
}
