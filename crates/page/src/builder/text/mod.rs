//! The builder's words: its own, and those beside its fields.
//!
//! The form is made from the profile's schema, which speaks English. The other languages
//! are found by the schema's own texts and keys. One that is new is shown in English until
//! it is translated; a test names it.

mod es;
mod fr;

use hangtrue_core::say::Language;

/// The language that a text is in when it is first given by language.
pub(super) const FIRST: &str = "en";

/// Everything the builder says in one language.
#[derive(Debug)]
pub(super) struct Words {
    pub(super) heading: &'static str,
    pub(super) lede: &'static str,
    pub(super) open: &'static str,
    pub(super) fine: &'static str,
    pub(super) download: &'static str,
    pub(super) snippet: &'static str,
    pub(super) lines: &'static str,
    /// While nothing has been typed.
    pub(super) begin: &'static str,
    pub(super) not_yet: &'static str,
    pub(super) go: &'static str,
    pub(super) add: &'static str,
    pub(super) remove: &'static str,
    pub(super) none: &'static str,
    pub(super) yes: &'static str,
    pub(super) no: &'static str,
    pub(super) by_language: &'static str,
    pub(super) one_text: &'static str,
    pub(super) filled: &'static str,
    pub(super) needed: &'static str,
    /// Keys, and values that can be chosen: what the file has, what is shown.
    pub(super) labels: &'static [(&'static str, &'static str)],
    /// What the schema says of a place, and the same in this language.
    pub(super) about: &'static [(&'static str, &'static str)],
}

/// The words of a language.
pub(super) const fn of(language: Language) -> &'static Words {
    match language {
        Language::English => &ENGLISH,
        Language::Spanish => &es::WORDS,
        Language::French => &fr::WORDS,
    }
}

static ENGLISH: Words = Words {
    heading: "A dealer's profile",
    lede: "Your limits, doors, questions, texts and colors. Whoever measures on your page goes \
           by them. Nothing you type here leaves this device.",
    open: "Open a profile you have",
    fine: "The profile can be used.",
    download: "Download the profile",
    snippet: "Download the lines for your page",
    lines: "For your webmaster",
    begin: "Type your business's name: the profile can be downloaded then.",
    not_yet: "It can be downloaded once this is mended:",
    go: "Go there",
    add: "Add one",
    remove: "Remove",
    none: "Leave out",
    yes: "Yes",
    no: "No",
    by_language: "One text a language",
    one_text: "One text for all",
    filled: "filled in",
    needed: "needed",
    labels: &[
        ("number", "Order number"),
        ("take", "Where the number comes from"),
        ("step", "Rounding"),
        ("closing", "Closing readings"),
        ("email", "E-mail"),
        ("sms", "Text messages"),
        ("miss", "A wrong order"),
        ("minute", "One more reading"),
        ("bow", "Roof bow"),
        ("under_bow", "Under the bow"),
        ("bow_spread", "Spread of the bows"),
        ("ask", "Question"),
        ("hint", "Help"),
        ("start", "At the start"),
        ("send", "With the order"),
        ("on_accent", "On the accent"),
        ("cycles", "Openings"),
        ("en", "English"),
        ("es", "Spanish"),
        ("fr", "French"),
        ("in", "inches"),
        ("mm", "millimeters"),
        ("tightest", "the tightest"),
        ("mean", "the mean"),
        ("yes-no", "yes or no"),
    ],
    about: &[],
};

impl Words {
    /// A key as a label: `drum_circumference` is "Drum circumference".
    pub(super) fn label(&self, key: &str) -> String {
        if let Some(known) = find(self.labels, key) {
            return known.to_owned();
        }
        let mut label = key.replace(['_', '-'], " ");
        if let Some(first) = label.get_mut(..1) {
            first.make_ascii_uppercase();
        }
        label
    }

    /// A value that can be chosen, in words; none for a length.
    pub(super) fn choice(&self, key: &str) -> Option<&'static str> {
        find(self.labels, key)
    }

    /// What the schema says of a place.
    pub(super) fn about<'e>(&self, english: &'e str) -> &'e str
    where
        'static: 'e,
    {
        find(self.about, english).unwrap_or(english)
    }
}

fn find(table: &'static [(&'static str, &'static str)], key: &str) -> Option<&'static str> {
    table.iter().find(|(known, _)| *known == key).map(|(_, said)| *said)
}
