//! Every sentence this crate can say: data elsewhere, words in one catalogue per language.

#[cfg(feature = "json")]
mod en;

#[cfg(feature = "json")]
use hangtrue_core::say::Language;

/// What is wrong with a file, and where.
#[cfg(feature = "json")]
#[must_use]
pub fn file(language: Language, error: &crate::json::FileError) -> String {
    match language {
        Language::English => en::file::say(error),
    }
}
