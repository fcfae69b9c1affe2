//! The builder's own words. Those beside its fields are the schema's.
//!
//! It is a page for webmasters, in English like the schema it is made from.

/// The language that a text is in when it is first given by language.
pub(super) const FIRST: &str = "en";

pub(super) const HEADING: &str = "A dealer's profile";
pub(super) const LEDE: &str = "Your limits, doors, questions, texts and colors. Whoever measures \
    on your page goes by them. Nothing you type here leaves this device.";
pub(super) const OPEN: &str = "Open a profile you have";
pub(super) const FINE: &str = "The profile can be used.";
pub(super) const DOWNLOAD: &str = "Download the profile";
pub(super) const SNIPPET: &str = "Download the lines for your page";
pub(super) const LINES: &str = "For your webmaster";
pub(super) const NOT_YET: &str = "It can be downloaded once this is mended:";
pub(super) const GO: &str = "Go there";
pub(super) const ADD: &str = "Add one";
pub(super) const REMOVE: &str = "Remove";
pub(super) const NONE: &str = "Leave out";
pub(super) const YES: &str = "Yes";
pub(super) const NO: &str = "No";
pub(super) const BY_LANGUAGE: &str = "One text a language";
pub(super) const ONE_TEXT: &str = "One text for all";
pub(super) const FILLED: &str = "filled in";
pub(super) const NEEDED: &str = "needed";

/// A key as a label: `drum_circumference` is "Drum circumference".
pub(super) fn label(key: &str) -> String {
    let mut label = key.replace(['_', '-'], " ");
    if let Some(first) = label.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    label
}

/// The name of a language.
pub(super) fn language(key: &str) -> &str {
    match key {
        "en" => "English",
        "es" => "Spanish",
        "fr" => "French",
        key => key,
    }
}
