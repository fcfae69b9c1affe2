//! A dealer's own text, in one language or in several.

/// The languages a text can be in.
pub const LANGUAGES: [&str; 3] = ["en", "es", "fr"];

/// A text by language. Written once without a language it is for all of them.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Words(pub Vec<(&'static str, String)>);

impl Words {
    /// The same text for every language.
    #[must_use]
    pub fn plain(text: &str) -> Self {
        Self(vec![("", text.to_owned())])
    }
    /// The text in `language`, else the first there is.
    #[must_use]
    pub fn in_language(&self, language: &str) -> &str {
        let found = self.0.iter().find(|(key, _)| *key == language).or(self.0.first());
        found.map_or("", |(_, text)| text)
    }
    /// Whether there is no text.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.iter().all(|(_, text)| text.is_empty())
    }
}

#[cfg(test)]
mod tests {
    use super::Words;

    #[test]
    fn a_language_that_is_not_there_gets_the_first() {
        let words = Words(vec![("es", "puerta".into()), ("en", "door".into())]);
        assert_eq!(words.in_language("en"), "door");
        assert_eq!(words.in_language("fr"), "puerta");
        assert_eq!(Words::plain("door").in_language("fr"), "door");
        assert_eq!(Words::default().in_language("en"), "");
        assert!(Words::default().is_empty() && Words::plain("").is_empty() && !words.is_empty());
    }
}
