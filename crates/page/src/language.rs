//! Which language the page speaks: the one that was chosen here, else the browser's.

use crate::text::Text;
use hangtrue_core::say::Language;

/// The language that was `remembered`, else the first of the `preferred` tags (BCP 47, as
/// `navigator.languages` has them) that there is a catalogue for, else English.
#[must_use]
pub fn language(remembered: Option<&str>, preferred: impl IntoIterator<Item = String>) -> Language {
    let remembered = remembered.and_then(Language::from_key);
    let browsers = || preferred.into_iter().find_map(|tag| Language::from_key(&tag));
    remembered.or_else(browsers).unwrap_or_default()
}

/// The title of a document whose heading is `heading`; empty for the walk's own.
#[must_use]
pub(crate) fn title(language: Language, heading: &str) -> String {
    if heading.is_empty() {
        return Text::of(language).title.to_owned();
    }
    ["Hangtrue", Text::of(language).colon, heading].concat()
}

#[cfg(test)]
mod tests {
    use super::language;
    use hangtrue_core::say::Language;

    #[test]
    fn what_was_chosen_wins_then_the_browser_in_its_order() {
        let chosen = |remembered, preferred: &[&str]| {
            language(remembered, preferred.iter().map(|tag| (*tag).to_owned()))
        };
        assert_eq!(chosen(Some("fr"), &["es-MX"]), Language::French);
        assert_eq!(chosen(None, &["de-CH", "fr-CA", "en"]), Language::French);
        assert_eq!(chosen(Some("tlh"), &["es-US"]), Language::Spanish);
        assert_eq!(chosen(None, &["de"]), Language::English);
        assert_eq!(chosen(None, &[]), Language::English);
    }
}
